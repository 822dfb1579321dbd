// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of the card and where they stand; what they do is in prescription_card.cpp.
#include "app/desk/card/eye_field.hpp"
#include "app/desk/card/power_fields.hpp"
#include "app/desk/card/prescription_card.hpp"
#include "app/session/wording.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr Purpose offeredPurposes[] = {Purpose::unstated,     Purpose::distance, Purpose::near,
                                       Purpose::intermediate, Purpose::bifocal,  Purpose::both};
constexpr int columns = 4;

const CardFieldInfo& fieldInfo(CardField field)
{
    return cardFields()[static_cast<std::size_t>(field)];
}

QLabel* hint(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("hint"));
    return label;
}
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
    buildPurpose(*grid);
    buildEyes(*grid);
    buildMeasures(*grid, {{{CardField::distancePd, 1}, {CardField::nearPd, 1}, {CardField::addition, 2}},
                          {{CardField::nearRight, 2}, {CardField::nearLeft, 2}},
                          {{CardField::unaidedRight, 1},
                           {CardField::unaidedLeft, 1},
                           {CardField::bestRight, 1},
                           {CardField::bestLeft, 1}},
                          {{CardField::prescriber, 4}}});
    buildSigns(*grid);
    buildMore(*grid);
    grid->setRowStretch(grid->rowCount(), 1);
    setTabOrder(row(CardField::age).edit, purpose_);
    setTabOrder(purpose_, row(CardField::right).edit);
    setThreeFields(false);
}

void PrescriptionCard::makeField(CardField field, QWidget* parent)
{
    const auto& info = fieldInfo(field);
    auto* edit = field == CardField::right  ? new EyeField(Eye::right, parent)
                 : field == CardField::left ? new EyeField(Eye::left, parent)
                                            : new GuardedEdit(info.form, parent);
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
    if (field == CardField::person)
        connect(edit, &QLineEdit::editingFinished, this, &PrescriptionCard::personNamed);
    connect(edit, &GuardedEdit::keyRefused, this,
            [this, field](const QString& words) { showComplaint(row(field), words); });
    row(field).edit = edit;
}

QLabel* PrescriptionCard::makeComplaint(CardField field)
{
    auto* complaint = new QLabel(this);
    complaint->setObjectName(QLatin1String(fieldInfo(field).objectName) + QStringLiteral("Complaint"));
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
    auto* label = hint(labelOf(fieldInfo(field)), box);
    makeField(field, box);
    label->setBuddy(row(field).edit);
    row(field).edit->setAccessibleName(labelOf(fieldInfo(field)));
    column->addWidget(label);
    column->addWidget(row(field).edit);
    return box;
}

void PrescriptionCard::buildIdentity(QGridLayout& grid)
{
    grid.addWidget(labelled(CardField::person, this), 0, 0, 1, 2);
    grid.addWidget(labelled(CardField::age, this), 0, 2);
    grid.addWidget(makeComplaint(CardField::person), 1, 0, 1, columns);
    grid.addWidget(makeComplaint(CardField::age), 2, 0, 1, columns);
}

void PrescriptionCard::buildPurpose(QGridLayout& grid)
{
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    auto* label = hint(tr("Wanted for"), box);
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
}

void PrescriptionCard::buildEyes(QGridLayout& grid)
{
    int line = 3;
    for (const auto field : {CardField::right, CardField::left}) {
        const auto eye = field == CardField::right ? Eye::right : Eye::left;
        makeField(field, this);
        auto* label = new QLabel(labelOf(fieldInfo(field)), this);
        label->setProperty("role", QStringLiteral("heading"));
        label->setBuddy(row(field).edit);
        row(field).edit->setAccessibleName(eye == Eye::right ? tr("Right eye, prescription")
                                                             : tr("Left eye, prescription"));
        auto larger = row(field).edit->font();
        larger.setPointSizeF(larger.pointSizeF() * 1.2);
        row(field).edit->setFont(larger);
        three_.of(eye) = new PowerFields(eye, this);
        three_.of(eye)->setFont(larger);
        connectEye(field, three_.of(eye));
        readBack_.of(eye) = hint({}, this);
        readBack_.of(eye)->setObjectName(eye == Eye::right ? QStringLiteral("rightReadBack")
                                                           : QStringLiteral("leftReadBack"));
        readBack_.of(eye)->hide();
        grid.addWidget(label, line, 0);
        grid.addWidget(row(field).edit, line, 1, 1, columns - 1);
        grid.addWidget(three_.of(eye), line, 1, 1, columns - 1);
        grid.addWidget(readBack_.of(eye), line + 1, 1, 1, columns - 1);
        grid.addWidget(makeComplaint(field), line + 2, 0, 1, columns);
        line += 3;
    }
}

void PrescriptionCard::connectEye(CardField field, PowerFields* three)
{
    connect(eyeField(field), &EyeField::otherEyeWanted, this, [this, field] { takeOtherEye(field); });
    connect(three, &PowerFields::typed, this, [this, field](const QString& text) {
        row(field).edit->setText(text);
        checkEye(field, false);
    });
    connect(three, &PowerFields::keyRefused, this,
            [this, field](const QString& words) { showComplaint(row(field), words); });
    connect(three, &PowerFields::left, this, [this, field] { checkEye(field, true); });
    connect(three, &PowerFields::suggestWanted, this, &PrescriptionCard::suggestWanted);
}

void PrescriptionCard::buildMeasures(QGridLayout& grid, const std::vector<Places>& lines)
{
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
    const int at = grid.rowCount();
    grid.addWidget(hint(tr("Signs seen or told"), this), at, 0, 1, columns);
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

/// What is measured less often: readings of the instrument, the own pair, pinhole, near print, distances.
void PrescriptionCard::buildMore(QGridLayout& grid)
{
    auto* heading = new QLabel(tr("Measured besides"), this);
    heading->setProperty("role", QStringLiteral("heading"));
    grid.addWidget(heading, grid.rowCount(), 0, 1, columns);
    buildMeasures(grid, {{{CardField::objectiveRight, 4}}, {{CardField::objectiveLeft, 4}}});
    readings_ = hint({}, this);
    readings_->setObjectName(QStringLiteral("readingsLabel"));
    readings_->setWordWrap(true);
    readings_->hide();
    grid.addWidget(readings_, grid.rowCount(), 0, 1, columns);
    buildMeasures(grid, {{{CardField::wornRight, 2}, {CardField::wornLeft, 2}},
                         {{CardField::pinholeRight, 1},
                          {CardField::pinholeLeft, 1},
                          {CardField::habitualRight, 1},
                          {CardField::habitualLeft, 1}},
                         {{CardField::nearUnaided, 1},
                          {CardField::nearBest, 1},
                          {CardField::vertex, 1},
                          {CardField::working, 1}},
                         {{CardField::symptoms, 2}, {CardField::guardian, 2}}});
    formButton_ = new QPushButton(tr("Three fields an eye"), this);
    formButton_->setObjectName(QStringLiteral("threeFieldsButton"));
    formButton_->setCheckable(true);
    formButton_->setToolTip(tr("Sphere, cylinder and axis in fields of their own (Ctrl+E)"));
    connect(formButton_, &QPushButton::toggled, this, &PrescriptionCard::showEyeForms);
    const auto* keys = new QShortcut(Qt::CTRL | Qt::Key_E, this);
    connect(keys, &QShortcut::activated, formButton_, &QPushButton::toggle);
    grid.addWidget(formButton_, grid.rowCount(), 0, 1, columns);
}

} // namespace quarterstep
