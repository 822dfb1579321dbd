// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/transfer_panel.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/cells_model.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/entry_words.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/line_code.hpp"

#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>

#include <algorithm>

namespace quarterstep
{

/// The lists let go of their models after this part is gone.
TransferPanel::~TransferPanel()
{
    for (auto* view : {flyingView_, view_})
        view->selectionModel()->disconnect(this);
}

TransferPanel::Way TransferPanel::way() const
{
    return way_->currentIndex() == 1 ? Way::takeIn : Way::send;
}

void TransferPanel::take(Camp* camp)
{
    camp_ = camp;
    initials_->clear();
    clear();
    refresh();
}

void TransferPanel::begin()
{
    site_->setFocus();
}

void TransferPanel::setUndo(bool possible)
{
    undo_->setEnabled(possible);
    undoButton_->setEnabled(possible);
}

void TransferPanel::refresh()
{
    flying_.clear();
    if (camp_ != nullptr && camp_->hasLedger())
        runCommand(messages_, [this] { flying_ = flyingIn(camp_->ledger()); });
    showFlying();
    tellLine();
}

void TransferPanel::showFlying()
{
    MadeTable table{{tr("Sent"), tr("From"), tr("To"), tr("Pieces"), tr("Lines")}, {}};
    int here = 0;
    for (const auto& entry : flying_) {
        QStringList lines;
        int pieces = 0;
        for (const auto& row : rowsSent(entry)) {
            pieces += row.quantity;
            lines << QStringLiteral("%1 %2").arg(row.quantity).arg(ltr(row.line));
        }
        const auto to = QString::fromStdString(sentTo(entry));
        here += sentTo(entry) == camp_->site() ? 1 : 0;
        table.rows.push_back({{ltr(momentWords(entry.atMs)), static_cast<qlonglong>(entry.atMs)},
                              {QString::fromStdString(entry.site), QString::fromStdString(entry.site)},
                              {to, to},
                              {QString::number(pieces), pieces},
                              {lines.join(QStringLiteral(", ")), lines.join(QStringLiteral(", "))}});
    }
    flyingRows_->show(std::move(table));
    flyingWords_->setText(flying_.empty()
                              ? tr("Nothing was sent that is not yet taken in, as far as this ledger knows.")
                              : tr("%n sent and not taken in", nullptr, static_cast<int>(flying_.size())) +
                                    QStringLiteral("  ·  ") + tr("to this site %1").arg(here));
    takeButton_->setEnabled(false);
    for (std::size_t row = 0; row < flying_.size(); ++row)
        if (sentTo(flying_[row]) == camp_->site()) {
            flyingView_->setCurrentIndex(flyingRows_->index(static_cast<int>(row), 0));
            break;
        }
}

const Entry* TransferPanel::chosenFlying() const
{
    const int row = flyingView_->currentIndex().row();
    return row >= 0 && row < static_cast<int>(flying_.size()) ? &flying_[static_cast<std::size_t>(row)]
                                                              : nullptr;
}

void TransferPanel::takeAsSent()
{
    const auto* chosen = chosenFlying();
    if (chosen == nullptr || camp_ == nullptr || chosen->site == camp_->site())
        return;
    const auto entry = *chosen;
    clear();
    way_->setCurrentIndex(static_cast<int>(Way::takeIn));
    site_->setText(QString::fromStdString(entry.site));
    sent_ = entry;
    list_ = rowsSent(entry);
    showRows();
    view_->setFocus();
}

void TransferPanel::clear()
{
    sent_.reset();
    list_.clear();
    for (auto* edit : {line_, site_, note_})
        edit->clear();
    pieces_->setValue(1);
    showWay();
}

void TransferPanel::showWay()
{
    const auto words = way() == Way::send ? tr("To") : tr("From");
    siteLabel_->setText(words);
    site_->setAccessibleName(words);
    if (way() == Way::send)
        sent_.reset();
    showRows();
}

void TransferPanel::showRows()
{
    MadeTable table{{tr("Line"), tr("Bin"), tr("Pieces"), sent_ ? tr("Sent") : tr("Available")}, {}};
    for (const auto& row : list_) {
        const auto index = camp_ ? camp_->lineNamed(row.line) : std::nullopt;
        int other = index ? camp_->stock()[*index].available() : 0;
        if (sent_) {
            other = 0;
            for (const auto& each : rowsSent(*sent_))
                other += each.line == row.line ? each.quantity : 0;
        }
        const auto bin = index ? camp_->stock()[*index].bin : std::string();
        table.rows.push_back({{ltr(row.line), QString::fromStdString(row.line)},
                              {bin.empty() ? QString() : ltr(bin), QString::fromStdString(bin)},
                              {QString::number(row.quantity), row.quantity},
                              {QString::number(other), other}});
    }
    rows_->show(std::move(table));
    enterButton_->setEnabled(!list_.empty());
    QStringList words; // what differs from what was sent is said before it is entered
    if (sent_)
        for (const auto& finding : transferDiffers(*sent_, list_))
            words << say(finding.sentence);
    complain(words.join(QLatin1Char('\n')));
}

void TransferPanel::chooseRow(int row)
{
    if (row < 0 || row >= static_cast<int>(list_.size()))
        return;
    const auto& chosen = list_[static_cast<std::size_t>(row)];
    line_->setText(QString::fromStdString(chosen.line));
    pieces_->setValue(chosen.quantity);
}

/// Which lines have these letters in their name, a few of them: no list opens over the field, so that a
/// scanner's Enter goes where it should.
QStringList TransferPanel::namesWith(const QString& letters) const
{
    constexpr qsizetype most = 6;
    QStringList names;
    for (const auto& line : camp_->stock()) {
        const auto name = QString::fromStdString(line.name);
        if (!name.contains(letters, Qt::CaseInsensitive))
            continue;
        if (names.size() == most)
            return names << QStringLiteral("…");
        names << ltr(name);
    }
    return names;
}

void TransferPanel::tellLine()
{
    const auto typed = line_->text().trimmed().toStdString();
    const auto found =
        camp_ && !typed.empty() ? lineScanned(camp_->stock(), typed) : Parsed<std::size_t>(Complaint{});
    QString words;
    if (found) {
        const auto& line = camp_->stock()[found.value()];
        words = tr("%1: bin %2, available %3")
                    .arg(ltr(line.name), line.bin.empty() ? QStringLiteral("–") : ltr(line.bin))
                    .arg(line.available());
    } else if (camp_ && !typed.empty()) {
        words = namesWith(line_->text().trimmed()).join(QStringLiteral(", "));
    }
    lineWords_->setText(words);
}

void TransferPanel::complain(const QString& words)
{
    complaint_->setText(words);
    complaint_->setVisible(!words.isEmpty());
}

void TransferPanel::addRow()
{
    if (camp_ == nullptr)
        return;
    std::vector<QuantityRow> typed{{line_->text().trimmed().toStdString(), pieces_->value(), {}, {}, {}}};
    if (const auto findings = takeNames(*camp_, typed); !findings.empty()) {
        complain(say(findings.front().sentence));
        line_->setFocus();
        line_->selectAll();
        return;
    }
    const auto& row = typed.front();
    const auto there = std::find_if(list_.begin(), list_.end(),
                                    [&row](const QuantityRow& each) { return each.line == row.line; });
    const bool wasSent = sent_ && std::any_of(sent_->movements.begin(), sent_->movements.end(),
                                              [&](const Movement& each) { return each.line == row.line; });
    if (there == list_.end()) {
        if (row.quantity > 0)
            list_.push_back(row);
    } else if (row.quantity == 0 && !wasSent) {
        list_.erase(there);
    } else {
        there->quantity = row.quantity; // nothing arrived of what was sent stays in sight
    }
    line_->clear();
    pieces_->setValue(1);
    showRows();
    line_->setFocus();
}

QString TransferPanel::missing() const
{
    if (list_.empty())
        return tr("Put lines and pieces into the list first.");
    if (std::all_of(list_.begin(), list_.end(), [](const QuantityRow& row) { return row.quantity == 0; }))
        return tr("Nothing happens with 0 pieces.");
    if (site_->text().trimmed().isEmpty())
        return tr("Name the other site.");
    return {};
}

void TransferPanel::enter()
{
    if (camp_ == nullptr)
        return;
    if (const auto words = missing(); !words.isEmpty())
        return complain(words);
    pins_.run(roleAskedBy("transfer"), [this] { carryOutTransfer(); });
}

void TransferPanel::carryOutTransfer()
{
    runCommand(messages_, [this] {
        const Transfer transfer{initials_->text().trimmed().toStdString(),
                                site_->text().trimmed().toStdString(), note_->text().trimmed().toStdString(),
                                sent_ ? sent_->id : std::string()};
        if (sent_)
            (void)sentEntry(*camp_, sent_->id); // somebody may have taken it in meanwhile
        const auto done = carryOut(
            *camp_, way() == Way::send ? sendTo(*camp_, list_, transfer) : transferIn(list_, transfer),
            false);
        QStringList ids;
        for (const auto& entry : done.entries)
            ids << QString::fromStdString(entry.id);
        const auto words = doneWords(done);
        clear();
        Q_EMIT entered(ids, words);
        line_->setFocus();
    });
}

QString TransferPanel::doneWords(const KeptWork& done) const
{
    int pieces = 0;
    for (const auto& row : list_)
        pieces += row.quantity;
    const auto site = site_->text().trimmed();
    auto words = way() == Way::send ? tr("Sent to %1: %n piece(s)", nullptr, pieces).arg(site)
                                    : tr("Taken in from %1: %n piece(s)", nullptr, pieces).arg(site);
    constexpr std::size_t mostTold = 4;
    for (std::size_t i = 0; i < done.lines.size() && done.lines.size() <= mostTold; ++i)
        words += QStringLiteral(" · ") + tr("%1 on hand %2, was %3")
                                             .arg(ltr(done.lines[i].line))
                                             .arg(done.lines[i].after.onHand)
                                             .arg(done.lines[i].before.onHand);
    return words;
}

void TransferPanel::restyle()
{
    constexpr int leastCharacters = 40;
    constexpr int leastColumn = 8; // headings of an empty list stand apart
    constexpr int leastRows = 5;
    for (auto* view : {flyingView_, view_}) {
        const auto letters = view->fontMetrics();
        view->verticalHeader()->setDefaultSectionSize(letters.height() + 8);
        view->horizontalHeader()->setMinimumSectionSize(leastColumn * letters.averageCharWidth());
        view->setMinimumSize(leastCharacters * letters.averageCharWidth(),
                             leastRows * (letters.height() + 8));
    }
}

} // namespace quarterstep
