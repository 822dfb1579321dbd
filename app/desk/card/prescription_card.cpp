// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/prescription_card.hpp"

#include "app/desk/card/eye_field.hpp"
#include "app/desk/card/power_fields.hpp"
#include "app/desk/card/readings_words.hpp"
#include "app/session/wording.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QStyle>

#include <algorithm>

namespace quarterstep
{

/// A field that goes with the card loses the focus and says so: nobody is there to hear it any more.
PrescriptionCard::~PrescriptionCard()
{
    for (auto* part : findChildren<QWidget*>())
        part->disconnect(this);
}

EyeField* PrescriptionCard::eyeField(CardField field)
{
    return qobject_cast<EyeField*>(row(field).edit);
}

void PrescriptionCard::showComplaint(Row& row, const QString& text)
{
    if (row.complaint->text() == text)
        return;
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
    const auto* eye = eyeField(field);
    const auto complaint = eye ? eye->complaint() : QString();
    const bool refusedOnly =
        eye && alsoComplain && line.edit->text().isEmpty(); // what was refused stays said
    if (refusedOnly)
        return;
    if (eye ? complaint.isEmpty() || alsoComplain : !alsoComplain)
        showComplaint(line, complaint);
    if (!alsoComplain)
        return;
    if (eye) {
        auto* back = readBack_.of(eye->eye());
        const auto words = readBack(line.edit->text(), eye->eye());
        back->setText(words);
        back->setVisible(!words.isEmpty() && words != ltr(line.edit->text().trimmed()));
    }
    tellReadings();
}

/// How steady the readings are, beside the final as it stands in the fields now.
void PrescriptionCard::tellReadings()
{
    QStringList words;
    for (const auto& [typed, final, eye] :
         {std::tuple{CardField::objectiveRight, CardField::right, Eye::right},
          std::tuple{CardField::objectiveLeft, CardField::left, Eye::left}})
        if (const auto said = steadinessWords(row(typed).edit->text(), row(final).edit->text(), eye);
            !said.isEmpty())
            words << said;
    readings_->setText(words.join(QLatin1Char('\n')));
    readings_->setVisible(!words.isEmpty());
}

void PrescriptionCard::takeOtherEye(CardField field)
{
    const auto other = field == CardField::left ? CardField::right : CardField::left;
    row(field).edit->setText(row(other).edit->text());
    checkEye(field, false);
}

bool PrescriptionCard::threeFields() const
{
    return formButton_->isChecked();
}

void PrescriptionCard::setThreeFields(bool on)
{
    formButton_->setChecked(on);
    showEyeForms();
}

/// An eye that is more than sphere, cylinder and axis keeps its text.
void PrescriptionCard::showEyeForms()
{
    for (const auto field : {CardField::right, CardField::left}) {
        auto* edit = eyeField(field);
        auto* three = three_.of(edit->eye());
        const bool inThree = threeFields() && three->show(edit->text());
        three->setVisible(inThree);
        edit->setVisible(!inThree);
    }
    QWidget* before = purpose_;
    for (const auto eye : bothEyes) {
        auto* edit = row(eye == Eye::right ? CardField::right : CardField::left).edit;
        setTabOrder(before, edit);
        setTabOrder(edit, three_.of(eye)->first());
        before = three_.of(eye)->last();
    }
    setTabOrder(before, row(CardField::distancePd).edit);
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
    for (const auto eye : bothEyes)
        readBack_.of(eye)->hide();
    showEyeForms();
    tellReadings();
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
        const bool missing = isNeeded(info.field) && text.isEmpty();
        if (text == line.loaded && !missing)
            continue;
        QString complaint;
        if (missing)
            complaint = tr("%1 is empty; a person, the right and the left eye are needed").arg(labelOf(info));
        else if (const auto found = takeField(record, info, text))
            complaint = say(found->sentence);
        showComplaint(line, complaint);
        good = good && complaint.isEmpty();
        if (!complaint.isEmpty() && !first)
            first = line.edit;
    }
    if (first && first->isHidden())
        three_.of(first == row(CardField::right).edit ? Eye::right : Eye::left)->setFocus();
    else if (first)
        first->setFocus();
    record.purpose = static_cast<Purpose>(purpose_->currentData().toInt());
    record.signs.clear();
    for (const auto& [sign, box] : signs_)
        if (box->isChecked())
            record.signs.push_back(sign);
    return good ? std::optional(record) : std::nullopt;
}

QString PrescriptionCard::onlyPerson()
{
    for (const auto& info : cardFields())
        if (info.field != CardField::person && !row(info.field).edit->text().trimmed().isEmpty())
            return {};
    return row(CardField::person).edit->text().trimmed();
}

void PrescriptionCard::focusRightEye()
{
    if (threeFields()) {
        three_.right->setFocus();
        return;
    }
    row(CardField::right).edit->setFocus();
    row(CardField::right).edit->selectAll();
}

} // namespace quarterstep
