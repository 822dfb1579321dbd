// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/prescription_card.hpp"

#include "app/desk/card/eye_field.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/prescription_table.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace quarterstep
{

namespace
{
const CardFieldInfo& infoOf(CardField field)
{
    return cardFields()[static_cast<std::size_t>(field)];
}

constexpr Purpose offeredPurposes[] = {Purpose::unstated,     Purpose::distance, Purpose::near,
                                       Purpose::intermediate, Purpose::bifocal,  Purpose::both};
constexpr int columns = 4;
} // namespace

PrescriptionCard::PrescriptionCard(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("prescriptionCard"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    for (int column = 0; column < columns; ++column)
        grid->setColumnStretch(column, 1);
    buildIdentity(*grid);
    buildEyes(*grid);
    buildMeasures(*grid);
    buildSigns(*grid);
    grid->setRowStretch(grid->rowCount(), 1);
    setTabOrder(row(CardField::age).edit, purpose_);
    setTabOrder(purpose_, row(CardField::right).edit);
}

/// A field that goes with the card loses the focus and says so: nobody is there to hear it any more.
PrescriptionCard::~PrescriptionCard()
{
    for (const auto& line : rows_)
        line.edit->disconnect(this);
}

void PrescriptionCard::makeField(CardField field, QWidget* parent)
{
    const auto& info = infoOf(field);
    auto* edit = field == CardField::right  ? new EyeField(Eye::right, parent)
                 : field == CardField::left ? new EyeField(Eye::left, parent)
                                            : new QLineEdit(parent);
    edit->setObjectName(QLatin1String(info.objectName));
    edit->setToolTip(tooltipOf(info));
    if (info.leftToRight) {
        edit->setLayoutDirection(Qt::LeftToRight);
        edit->setAlignment(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter);
    }
    edit->setMinimumWidth(edit->fontMetrics().averageCharWidth() * 5);
    connect(edit, &QLineEdit::returnPressed, this, &PrescriptionCard::suggestWanted);
    connect(edit, &QLineEdit::textEdited, this, [this, field] { checkEye(field, false); });
    connect(edit, &QLineEdit::editingFinished, this, [this, field] { checkEye(field, true); });
    row(field).edit = edit;
}

QLabel* PrescriptionCard::makeComplaint(CardField field)
{
    auto* complaint = new QLabel(this);
    complaint->setObjectName(QLatin1String(infoOf(field).objectName) + QStringLiteral("Complaint"));
    complaint->setProperty("role", QStringLiteral("complaint"));
    complaint->setWordWrap(true);
    complaint->hide();
    row(field).complaint = complaint;
    return complaint;
}

/// A small label above its field.
QWidget* PrescriptionCard::labelled(CardField field, QWidget* parent)
{
    auto* box = new QWidget(parent);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    auto* label = new QLabel(labelOf(infoOf(field)), box);
    label->setProperty("role", QStringLiteral("hint"));
    makeField(field, box);
    label->setBuddy(row(field).edit);
    row(field).edit->setAccessibleName(labelOf(infoOf(field)));
    column->addWidget(label);
    column->addWidget(row(field).edit);
    return box;
}

void PrescriptionCard::buildIdentity(QGridLayout& grid)
{
    grid.addWidget(labelled(CardField::person, this), 0, 0, 1, 2);
    grid.addWidget(labelled(CardField::age, this), 0, 2);
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    auto* label = new QLabel(tr("Wanted for"), box);
    label->setProperty("role", QStringLiteral("hint"));
    purpose_ = new QComboBox(box);
    purpose_->setObjectName(QStringLiteral("purposeBox"));
    purpose_->setToolTip(tr("What the spectacles are for; left open, the prescription decides"));
    for (const auto purpose : offeredPurposes)
        purpose_->addItem(purpose == Purpose::unstated ? tr("open") : say(purpose),
                          static_cast<int>(purpose));
    purpose_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    purpose_->setMinimumContentsLength(4);
    label->setBuddy(purpose_);
    purpose_->setAccessibleName(tr("Wanted for"));
    column->addWidget(label);
    column->addWidget(purpose_);
    grid.addWidget(box, 0, 3);
    grid.addWidget(makeComplaint(CardField::person), 1, 0, 1, columns);
    grid.addWidget(makeComplaint(CardField::age), 2, 0, 1, columns);
}

void PrescriptionCard::buildEyes(QGridLayout& grid)
{
    int line = 3;
    for (const auto field : {CardField::right, CardField::left}) {
        makeField(field, this);
        auto* label = new QLabel(labelOf(infoOf(field)), this);
        label->setProperty("role", QStringLiteral("heading"));
        label->setBuddy(row(field).edit);
        row(field).edit->setAccessibleName(field == CardField::right ? tr("Right eye, prescription")
                                                                     : tr("Left eye, prescription"));
        auto larger = row(field).edit->font();
        larger.setPointSizeF(larger.pointSizeF() * 1.2);
        row(field).edit->setFont(larger);
        grid.addWidget(label, line, 0);
        grid.addWidget(row(field).edit, line, 1, 1, columns - 1);
        grid.addWidget(makeComplaint(field), line + 1, 0, 1, columns);
        line += 2;
    }
}

void PrescriptionCard::buildMeasures(QGridLayout& grid)
{
    const std::vector<std::vector<std::pair<CardField, int>>> lines{
        {{CardField::addition, 2}, {CardField::distancePd, 1}, {CardField::nearPd, 1}},
        {{CardField::nearRight, 2}, {CardField::nearLeft, 2}},
        {{CardField::unaidedRight, 1},
         {CardField::unaidedLeft, 1},
         {CardField::bestRight, 1},
         {CardField::bestLeft, 1}},
        {{CardField::prescriber, 4}}};
    for (const auto& line : lines) {
        const int at = grid.rowCount();
        int column = 0;
        int below = at + 1;
        for (const auto& [field, span] : line) {
            grid.addWidget(labelled(field, this), at, column, 1, span);
            grid.addWidget(makeComplaint(field), below++, 0, 1, columns);
            column += span;
        }
    }
}

void PrescriptionCard::buildSigns(QGridLayout& grid)
{
    const std::pair<Sign, QString> words[] = {{Sign::pain, tr("Pain")},
                                              {Sign::suddenLoss, tr("Sudden loss of sight")},
                                              {Sign::redEye, tr("Red eye")},
                                              {Sign::flashesOrFloaters, tr("New flashes or floaters")},
                                              {Sign::doubleVision, tr("Double vision")},
                                              {Sign::whitePupil, tr("White pupil")},
                                              {Sign::squint, tr("Squint")},
                                              {Sign::cycloplegiaWanted, tr("Drops asked for")},
                                              {Sign::distortion, tr("Lines look bent")},
                                              {Sign::fieldLoss, tr("Part of the view missing")},
                                              {Sign::halos, tr("Halos around lights")}};
    auto* label = new QLabel(tr("Signs seen or told"), this);
    label->setProperty("role", QStringLiteral("hint"));
    const int at = grid.rowCount();
    grid.addWidget(label, at, 0, 1, columns);
    auto* boxes = new QGridLayout;
    boxes->setVerticalSpacing(2);
    int place = 0;
    for (const auto& [sign, text] : words) {
        auto* box = new QCheckBox(text, this);
        box->setObjectName(QStringLiteral("signBox%1").arg(static_cast<int>(sign)));
        box->setToolTip(tr("Tick when this was seen or told; it decides about a letter to the clinic"));
        connect(box, &QCheckBox::toggled, this, &PrescriptionCard::edited);
        signs_.emplace_back(sign, box);
        boxes->addWidget(box, place / 2, place % 2);
        ++place;
    }
    boxes->setColumnStretch(1, 1);
    grid.addLayout(boxes, at + 1, 0, 1, columns);
}

void PrescriptionCard::showComplaint(Row& row, const QString& text)
{
    row.complaint->setText(text);
    row.complaint->setVisible(!text.isEmpty());
    row.edit->setProperty("complained", !text.isEmpty());
    row.edit->setAccessibleDescription(text);
    style()->unpolish(row.edit);
    style()->polish(row.edit);
}

/// While typing a complaint only goes away; it comes when the field is left.
void PrescriptionCard::checkEye(CardField field, bool alsoComplain)
{
    if (!alsoComplain)
        Q_EMIT edited();
    auto& line = row(field);
    const auto* eye = qobject_cast<EyeField*>(line.edit);
    const auto complaint = eye ? eye->complaint() : QString();
    if (eye ? complaint.isEmpty() || alsoComplain : !alsoComplain)
        showComplaint(line, complaint);
}

void PrescriptionCard::load(const PersonRecord& record)
{
    base_ = record;
    for (const auto& info : cardFields()) {
        auto& line = row(info.field);
        line.loaded = info.textOf(record);
        line.edit->setText(line.loaded);
        line.edit->setCursorPosition(0);
        showComplaint(line, {});
    }
    purpose_->setCurrentIndex(std::max(0, purpose_->findData(static_cast<int>(record.purpose))));
    for (const auto& [sign, box] : signs_) {
        const QSignalBlocker quiet(box);
        box->setChecked(std::find(record.signs.begin(), record.signs.end(), sign) != record.signs.end());
    }
}

void PrescriptionCard::clear()
{
    load(PersonRecord{});
    row(CardField::person).edit->setFocus();
}

std::optional<PersonRecord> PrescriptionCard::read()
{
    auto record = base_;
    bool good = true;
    QLineEdit* first = nullptr;
    for (const auto& info : cardFields()) {
        auto& line = row(info.field);
        const auto text = line.edit->text().trimmed();
        const bool needed = info.field <= CardField::left && info.field != CardField::age;
        if (text == line.loaded && !(needed && text.isEmpty()))
            continue;
        QString complaint;
        if (needed && text.isEmpty())
            complaint = tr("%1 is empty; a person, the right and the left eye are needed").arg(labelOf(info));
        else if (const auto found = setField(record, info.column, text.toStdString()))
            complaint = say(found->sentence);
        showComplaint(line, complaint);
        good = good && complaint.isEmpty();
        if (!complaint.isEmpty() && !first)
            first = line.edit;
    }
    if (first)
        first->setFocus();
    record.purpose = static_cast<Purpose>(purpose_->currentData().toInt());
    record.signs.clear();
    for (const auto& [sign, box] : signs_)
        if (box->isChecked())
            record.signs.push_back(sign);
    return good ? std::optional(record) : std::nullopt;
}

void PrescriptionCard::focusRightEye()
{
    row(CardField::right).edit->setFocus();
    row(CardField::right).edit->selectAll();
}

} // namespace quarterstep
