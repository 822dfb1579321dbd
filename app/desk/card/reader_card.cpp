// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/card/reader_card.hpp"

#include "app/desk/card/key_guard.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/prescription_table.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>

namespace quarterstep
{

std::optional<double> readerPower(const QString& text)
{
    auto typed = text.trimmed();
    if (typed.startsWith(QLatin1Char('+')))
        typed.remove(0, 1);
    typed.replace(QLatin1Char(','), QLatin1Char('.'));
    bool good = false;
    double power = typed.toDouble(&good);
    if (!good)
        return std::nullopt;
    if (!typed.contains(QLatin1Char('.')))
        power /= typed.size() == 3 ? 100.0 : typed.size() == 2 ? 10.0 : 1.0;
    const double quarters = power * 4.0;
    return power > 0.0 && quarters == static_cast<int>(quarters) ? std::optional(power) : std::nullopt;
}

ReaderCard::ReaderCard(QWidget* parent)
    : QWidget(parent), distance_(new QComboBox(this)), readBack_(new QLabel(this)),
      complaint_(new QLabel(this))
{
    setObjectName(QStringLiteral("readerCard"));
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    age_ = field(QStringLiteral("readerAgeEdit"), tr("Age"),
                 tr("Age in years; unknown age is judged by the strictest rules"),
                 static_cast<int>(FieldForm::years));
    distance_->setObjectName(QStringLiteral("readerDistanceBox"));
    distance_->setAccessibleName(tr("Distance fine?"));
    distance_->setToolTip(tr("Does the person see well far away without spectacles? + is yes, - is no"));
    distance_->addItems({tr("not asked"), tr("yes (+)"), tr("no (-)")});
    distance_->installEventFilter(this);
    connect(distance_, &QComboBox::currentIndexChanged, this, &ReaderCard::changed);
    addRow(tr("Distance fine?"), distance_);
    power_ = field(QStringLiteral("readerPowerEdit"), tr("Near power by trial"),
                   tr("Power with which the person read best, the same in both eyes, dioptres: 2.25 or 225"),
                   static_cast<int>(FieldForm::reader));
    readBack_->setObjectName(QStringLiteral("readerReadBack"));
    readBack_->setProperty("role", QStringLiteral("hint"));
    form->addRow(QString(), readBack_);
    pd_ = field(QStringLiteral("readerPdEdit"), tr("PD near"),
                tr("Distance between the pupils looking near, millimetres; without it the worst that is "
                   "plausible is judged"),
                static_cast<int>(FieldForm::millimetres));
    person_ = field(QStringLiteral("readerPersonEdit"), tr("Person"),
                    tr("Camp code of the person; one is offered, the paper card's may be typed over it"),
                    static_cast<int>(FieldForm::anything));
    complaint_->setObjectName(QStringLiteral("readerComplaint"));
    complaint_->setProperty("role", QStringLiteral("complaint"));
    complaint_->setWordWrap(true);
    complaint_->hide();
    form->addRow(complaint_);
    QWidget* before = age_;
    for (auto* next : std::initializer_list<QWidget*>{distance_, power_, pd_, person_}) {
        setTabOrder(before, next);
        before = next;
    }
}

/// A field that goes with the card loses the focus and says so: nobody is there to hear it any more.
ReaderCard::~ReaderCard()
{
    for (auto* edit : {age_, power_, pd_, person_})
        edit->disconnect(this);
    distance_->removeEventFilter(this);
}

GuardedEdit* ReaderCard::field(const QString& name, const QString& label, const QString& tooltip, int form)
{
    auto* edit = new GuardedEdit(static_cast<FieldForm>(form), this);
    edit->setObjectName(name);
    edit->setAccessibleName(label);
    edit->setToolTip(tooltip);
    edit->setLayoutDirection(Qt::LeftToRight);
    edit->setAlignment(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter);
    connect(edit, &QLineEdit::textEdited, this, &ReaderCard::changed);
    connect(edit, &QLineEdit::returnPressed, this, &ReaderCard::suggestWanted);
    connect(edit, &GuardedEdit::keyRefused, this, [this](const QString& words) { complain(words, nullptr); });
    addRow(label, edit);
    return edit;
}

void ReaderCard::addRow(const QString& label, QWidget* field)
{
    auto* words = new QLabel(label, this);
    words->setBuddy(field);
    static_cast<QFormLayout*>(layout())->addRow(words, field);
}

/// One key answers and goes on: a table at a camp has a number pad.
bool ReaderCard::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != distance_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<const QKeyEvent*>(event);
    if (key->key() == Qt::Key_Plus || key->key() == Qt::Key_Minus) {
        distance_->setCurrentIndex(key->key() == Qt::Key_Plus ? fine : notFine);
        power_->setFocus();
        return true;
    }
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        Q_EMIT suggestWanted();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void ReaderCard::changed()
{
    const auto power = readerPower(power_->text());
    readBack_->setText(power ? tr("%1 in each eye").arg(ltr(dioptres(*power))) : QString());
    complaint_->hide();
    Q_EMIT edited();
}

void ReaderCard::complain(const QString& words, QWidget* at)
{
    complaint_->setText(words);
    complaint_->setVisible(!words.isEmpty());
    if (at)
        at->setFocus();
}

void ReaderCard::clear(const QString& code)
{
    for (auto* edit : {age_, power_, pd_})
        edit->clear();
    person_->setText(code);
    {
        const QSignalBlocker quiet(distance_);
        distance_->setCurrentIndex(notAsked);
    }
    readBack_->clear();
    complaint_->hide();
    age_->setFocus();
}

bool ReaderCard::isEmpty() const
{
    return person_->text().isEmpty();
}

std::optional<PersonRecord> ReaderCard::read()
{
    const auto power = readerPower(power_->text());
    if (distance_->currentIndex() == notAsked)
        complain(tr("Ask first whether the person sees well far away."), distance_);
    else if (distance_->currentIndex() == notFine)
        complain(tr("Then a reader alone is not enough: refract, and use the full card."), distance_);
    else if (!power)
        complain(tr("Type the near power in quarters of a dioptre: 2.25 or 225."), power_);
    else if (person_->text().trimmed().isEmpty())
        complain(tr("A hand-over needs a code for the person."), person_);
    else {
        PersonRecord record;
        const auto trial = dioptres(*power).toStdString();
        record.person = person_->text().trimmed().toStdString();
        record.purpose = Purpose::near;
        for (const auto& [column, text] :
             {std::pair<const char*, std::string>{"age", age_->text().toStdString()},
              {"right", "0.00"},
              {"left", "0.00"},
              {"near_right", trial},
              {"near_left", trial},
              {"near_pd_mm", pd_->text().toStdString()}})
            if (const auto said = setField(record, column, text)) {
                complain(say(said->sentence), nullptr);
                return std::nullopt;
            }
        return record;
    }
    return std::nullopt;
}

} // namespace quarterstep
