// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/bringing/send_out_panel.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/finding_list_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/session/wording.hpp"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
/// In the order of the choice, with the ending of their files.
constexpr std::pair<ExchangeFormat, const char*> formatsOut[] = {{ExchangeFormat::fhir, "json"},
                                                                 {ExchangeFormat::table, "csv"},
                                                                 {ExchangeFormat::jsonLines, "jsonl"},
                                                                 {ExchangeFormat::dicom, "dcm"}};
} // namespace

SendOutPanel::SendOutPanel(MessageBar& messages, LongWork& work, QWidget* parent)
    : QWidget(parent), messages_(messages), work_(work), findings_(new FindingListModel(this))
{
    setObjectName(QStringLiteral("sendOutPanel"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    format_ = boxNamed(QStringLiteral("sendFormatBox"), tr("As"),
                       tr("An open standard, or a table that any program takes"));
    format_->addItems({tr("HL7 FHIR (JSON, R4 and R5)"), tr("Table (CSV)"), tr("Lines of JSON"),
                       tr("DICOM (Subjective Refraction)")});
    who_ = boxNamed(QStringLiteral("sendWhoBox"), tr("Whom"),
                    tr("Everybody in the list, or the person on the card"));
    who_->addItems({tr("Everybody in the list"), tr("The person on the card")});
    for (auto* box : {format_, who_}) {
        constexpr int characters = 32; // of the longest choice
        box->setMinimumContentsLength(characters);
    }
    form->addRow(format_->accessibleName(), format_);
    form->addRow(who_->accessibleName(), who_);
    column->addLayout(form);
    counted_ = hinted({}, QStringLiteral("sendCounted"));
    column->addWidget(counted_);
    QVBoxLayout* inside = nullptr;
    auto* frame =
        framed(QStringLiteral("sendFindingsFrame"), tr("What stays here, or leaves otherwise"), inside);
    hint_ = hinted(tr("Check first, or write; then it stands here."), QStringLiteral("sendFindingsHint"));
    inside->addWidget(hint_);
    auto* view = view_ =
        tableOf(findings_, QStringLiteral("sendFindingsView"), tr("What stays here, or leaves otherwise"));
    view->setToolTip(tr("What stays here, or leaves otherwise"));
    giveWidths(*view, {10, 8, 40, 20});
    shareWidth(*view, {{FindingListModel::sentenceColumn, 1}});
    giveLines(*view, 2);
    inside->addWidget(view, 1);
    inside->addStretch(0);
    column->addWidget(frame, 1);
    buildEnd(*column);
    for (auto* box : {format_, who_})
        connect(box, &QComboBox::currentIndexChanged, this, &SendOutPanel::refresh);
}

void SendOutPanel::buildEnd(QBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    const auto write = tr("Asks for a name and writes; symptoms and the guardian stay here");
    const auto made = buttonsIn(
        *row, this,
        {{"sendOutBackButton", tr("Back"), tr("To the place before"), [this] { Q_EMIT backWanted(); }},
         {"sendCheckButton", tr("Check first"), tr("Shows what stays here; nothing is written"),
          [this] { check(); }},
         {"sendOutButton", {}, write, [this] { askPath(); }}});
    row->insertStretch(1, 1);
    check_ = made[1];
    write_ = made[2];
    write_->setProperty("primary", true);
    column.addLayout(row);
}

void SendOutPanel::begin(const Camp* camp, SendOutPeople people)
{
    camp_ = camp;
    people_ = std::move(people);
    tell({});
    refresh();
}

/// Only one of both, so that the buttons below stay in sight where the letters are large.
void SendOutPanel::tell(std::vector<Finding> findings)
{
    view_->setVisible(!findings.empty());
    hint_->setVisible(findings.empty());
    findings_->show(std::move(findings));
}

ExchangeFormat SendOutPanel::format() const
{
    return formatsOut[std::max(0, format_->currentIndex())].first;
}

bool SendOutPanel::fileEach() const
{
    return format() == ExchangeFormat::dicom && who_->currentIndex() == 0;
}

std::vector<PersonRecord> SendOutPanel::chosen() const
{
    if (!camp_)
        return {};
    if (who_->currentIndex() == 0)
        return people_.ofList();
    const auto person = people_.ofCard();
    return person ? std::vector{*person} : std::vector<PersonRecord>{};
}

int SendOutPanel::count() const
{
    if (!camp_)
        return 0;
    return who_->currentIndex() == 0 ? people_.inList() : people_.ofCard() ? 1 : 0;
}

void SendOutPanel::refresh()
{
    const int people = count();
    auto words = people == 0 ? tr("Nobody is there to be sent out.")
                             : tr("%n prescription(s), each with the profile, version and hash of the rules "
                                  "of this camp",
                                  nullptr, people);
    if (people > 0 && fileEach())
        words += QStringLiteral("; ") + tr("one file a person, in a folder");
    counted_->setText(words);
    write_->setText(fileEach() ? tr("Write the files…") : tr("Write the file…"));
    for (auto* button : {check_, write_})
        button->setEnabled(people > 0 && !busy_);
}

void SendOutPanel::askPath()
{
    const auto* ending = formatsOut[std::max(0, format_->currentIndex())].second;
    const auto path =
        fileEach() ? QFileDialog::getExistingDirectory(this, tr("Folder for the files"), QDir::homePath())
                   : QFileDialog::getSaveFileName(
                         this, tr("Write the file"),
                         QStringLiteral("%1/prescriptions.%2").arg(QDir::homePath(), QLatin1String(ending)));
    if (!path.isEmpty())
        writeTo(path);
}

void SendOutPanel::writeTo(const QString& path)
{
    if (camp_)
        run({format(), path.toStdString(), fileEach(), camp_->folder(), false});
}

void SendOutPanel::check()
{
    if (camp_)
        run({format(), {}, fileEach(), camp_->folder(), true});
}

void SendOutPanel::run(const SendOut& wanted)
{
    auto persons = chosen();
    if (persons.empty() || busy_)
        return;
    const auto count = persons.size();
    const auto sent = std::make_shared<SentOut>();
    const auto work = [sent, wanted, rules = camp_->rules(), people = std::move(persons)](const Job& job) {
        *sent = sendOut(wanted, rules, people, job);
    };
    busy_ = true;
    work_.start(wanted.dryRun ? tr("Checking…") : tr("Writing…"), work,
                [this, wanted, count, sent](const std::exception_ptr& problem, bool stopped) {
                    ended(wanted, count, *sent, problem, stopped);
                });
    refresh();
}

void SendOutPanel::ended(const SendOut& wanted, std::size_t count, const SentOut& sent,
                         const std::exception_ptr& problem, bool stopped)
{
    busy_ = false;
    tell(sent.findings);
    runCommand(messages_, [&] {
        if (stopped && sent.files == 0)
            return messages_.showDone(tr("Stopped. Nothing was written."));
        if (problem)
            std::rethrow_exception(problem);
        for (const auto& finding : sent.findings)
            if (finding.severity == Severity::error)
                throw Error(finding, 3);
        const int people = static_cast<int>(count);
        messages_.showDone(
            wanted.dryRun ? tr("%n prescription(s) can leave; nothing was written.", nullptr, people)
                          : tr("%n prescription(s) are in %1.", nullptr, people)
                                .arg(ltr(QDir::toNativeSeparators(QString::fromStdString(wanted.path)))));
    });
    refresh();
}

} // namespace quarterstep
