// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/settings/settings_page.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/shell/folding_row.hpp"
#include "app/paper/render/printer.hpp"
#include "app/session/camp.hpp"
#include "app/session/pins.hpp"
#include "app/session/wording.hpp"
#include "app/translations/catalogue.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace quarterstep
{

namespace
{
void chooseData(QComboBox& box, const QVariant& data)
{
    box.setCurrentIndex(std::max(0, box.findData(data)));
}

QString roleWords(Role role)
{
    switch (role) {
    case Role::optician:
        return SettingsPage::tr("Optician: hands over, orders");
    case Role::keeper:
        return SettingsPage::tr("Keeper: counts, receives, moves stock");
    case Role::supervisor:
        break;
    }
    return SettingsPage::tr("Supervisor: settings of the camp, lots, names, exports, PINs");
}

/// A form whose labels stand above their fields: no width is lost where letters are large.
QFormLayout* formIn(QVBoxLayout& column)
{
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setVerticalSpacing(6);
    column.addLayout(form);
    return form;
}
} // namespace

SettingsPage::SettingsPage(MessageBar& messages, QWidget* parent) : QWidget(parent), messages_(messages)
{
    setObjectName(QStringLiteral("settingsPage"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new FoldingRow(this);
    for (auto* part : {buildPerson(), buildCamp(), buildPins()})
        row->add(part);
    column->addWidget(row);
    column->addStretch(1);
    setFocusProxy(look_);
}

QComboBox* SettingsPage::choice(QFormLayout& form, const char* name, const QString& label,
                                const QString& tooltip)
{
    auto* box = new QComboBox(this);
    box->setObjectName(QLatin1String(name));
    box->setAccessibleName(label);
    box->setToolTip(tooltip);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(10);
    form.addRow(label, box);
    return box;
}

QLineEdit* SettingsPage::secret(QFormLayout& form, const char* name, const QString& label,
                                const QString& tooltip)
{
    auto* edit = new QLineEdit(this);
    edit->setObjectName(QLatin1String(name));
    edit->setAccessibleName(label);
    edit->setToolTip(tooltip);
    edit->setEchoMode(QLineEdit::Password);
    edit->setMaxLength(static_cast<int>(longestPin));
    form.addRow(label, edit);
    return edit;
}

QFrame* SettingsPage::buildPerson()
{
    QVBoxLayout* column = nullptr;
    auto* frame = framed(QStringLiteral("personFrame"), tr("This laptop"), column);
    column->addWidget(hinted(tr("Kept for you on this laptop."), QStringLiteral("personHint")));
    auto* form = formIn(*column);
    look_ = choice(*form, "lookBox", tr("Look"),
                   tr("Light, dark, or sun: black on white and large, for outdoors"));
    look_->addItem(tr("Light"), static_cast<int>(Theme::light));
    look_->addItem(tr("Dark"), static_cast<int>(Theme::dark));
    look_->addItem(tr("Sun"), static_cast<int>(Theme::sun));
    scale_ = choice(*form, "textScaleBox", tr("Size of the letters"),
                    tr("In per cent of the usual; also Ctrl++ and Ctrl+-"));
    for (int scale = leastTextScale; scale <= mostTextScale; scale += textScaleStep)
        scale_->addItem(ltr(tr("%1 %").arg(scale)), scale);
    language_ = choice(*form, "languageBox", tr("Language"), tr("Language of the window, at once"));
    printer_ = choice(*form, "printerBox", tr("Printer"), tr("Printer for cards and letters of this laptop"));
    fillLanguages();
    for (auto* box : {look_, scale_, language_, printer_})
        connect(box, &QComboBox::activated, this, &SettingsPage::takePerson);
    column->addStretch(1);
    return frame;
}

QFrame* SettingsPage::buildCamp()
{
    QVBoxLayout* column = nullptr;
    campFrame_ = framed(QStringLiteral("campFrame"), tr("This camp"), column);
    column->addWidget(
        hinted(tr("Kept in the camp folder, for everybody who opens it."), QStringLiteral("campHint")));
    auto* form = formIn(*column);
    cylinder_ =
        choice(*form, "cylinderBox", tr("Cylinders are written"),
               tr("Form in which pairs and orders show a cylinder; typed prescriptions stay as typed"));
    cylinder_->addItem(tr("minus"), static_cast<int>(ShownCylinder::minus));
    cylinder_->addItem(tr("plus"), static_cast<int>(ShownCylinder::plus));
    acuity_ = choice(*form, "acuityBox", tr("Acuities are shown"),
                     tr("Notation on the card; the record keeps what was typed"));
    const std::pair<QString, ShownAcuity> notations[] = {
        {tr("as recorded"), ShownAcuity::asRecorded},
        {ltr(QStringLiteral("6/9")), ShownAcuity::metres},
        {ltr(QStringLiteral("20/30")), ShownAcuity::feet},
        {tr("decimal"), ShownAcuity::decimal},
        {ltr(QStringLiteral("logMAR")), ShownAcuity::logMar}};
    for (const auto& [words, notation] : notations)
        acuity_->addItem(words, static_cast<int>(notation));
    profile_ = choice(*form, "profileBox", tr("Judged by"),
                      tr("Profile of limits for everybody; by itself the desk chooses by age and purpose"));
    profile_->setMinimumContentsLength(20); // its usual choice is told in a whole sentence
    for (auto* box : {cylinder_, acuity_, profile_})
        connect(box, &QComboBox::activated, this, &SettingsPage::takeCamp);
    column->addStretch(1);
    return campFrame_;
}

QFrame* SettingsPage::buildPins()
{
    QVBoxLayout* column = nullptr;
    pinFrame_ = framed(QStringLiteral("pinFrame"), tr("PINs"), column);
    column->addWidget(hinted(
        tr("A guard against slips, no lock. Asked for here and at the command line. Kept with the ledger."),
        QStringLiteral("pinHint")));
    pinState_ = hinted({}, QStringLiteral("pinState"));
    column->addWidget(pinState_);
    auto* form = formIn(*column);
    role_ = choice(*form, "roleBox", tr("Role"), tr("Whose PIN is set or taken away"));
    role_->setMinimumContentsLength(18); // what each may do is told beside its name
    for (const auto role : allRoles)
        role_->addItem(roleWords(role), static_cast<int>(role));
    oldPin_ = secret(*form, "oldPinEdit", tr("PIN that is needed now"),
                     tr("The supervisor's PIN when there is one, else the present one of this role"));
    newPin_ = secret(*form, "newPinEdit", tr("New PIN"),
                     tr("%1 to %2 characters").arg(shortestPin).arg(longestPin));
    auto* buttons = new QHBoxLayout;
    const std::tuple<const char*, QString, QString, bool> commands[] = {
        {"removePinButton", tr("Take the PIN away"), tr("This role is asked for no PIN any more"), true},
        {"setPinButton", tr("Set the PIN"), tr("This role is asked for this PIN from now on"), false}};
    for (const auto& [name, words, tooltip, remove] : commands) {
        auto* button = new QPushButton(words, pinFrame_);
        button->setObjectName(QLatin1String(name));
        button->setToolTip(tooltip);
        connect(button, &QPushButton::clicked, this, [this, remove = remove] { changePin(remove); });
        buttons->addWidget(button);
    }
    column->addLayout(buttons);
    column->addStretch(1);
    return pinFrame_;
}

void SettingsPage::fillLanguages()
{
    language_->addItem(tr("as the system"), QString());
    for (const auto& language : languagesOfDesk())
        language_->addItem(QString::fromUtf8(language.name), QString::fromLatin1(language.code));
}

/// Asked anew each time: a printer comes and goes with its cable.
void SettingsPage::fillPrinters()
{
    printer_->clear();
    printer_->addItem(tr("none chosen"), QString());
    for (const auto& name : printersHere())
        printer_->addItem(QString::fromStdString(name), QString::fromStdString(name));
    if (!person_.printer.isEmpty() && printer_->findData(person_.printer) < 0)
        printer_->addItem(tr("%1 (not here now)").arg(person_.printer), person_.printer);
}

void SettingsPage::fillProfiles()
{
    profile_->clear();
    profile_->addItem(tr("chosen by age and purpose"), QString());
    if (camp_)
        for (const auto& profile : camp_->rules().profiles)
            profile_->addItem(ltr(QString::fromStdString(profile.name)),
                              QString::fromStdString(profile.name));
}

void SettingsPage::show(const Preferences& person, const CampSettings& settings, Camp* camp)
{
    person_ = person;
    settings_ = settings;
    camp_ = camp;
    fillPrinters();
    fillProfiles();
    chooseData(*look_, static_cast<int>(person.theme));
    chooseData(*scale_, person.textScale);
    chooseData(*language_, person.language);
    chooseData(*printer_, person.printer);
    chooseData(*cylinder_, static_cast<int>(settings.cylinder));
    chooseData(*acuity_, static_cast<int>(settings.acuity));
    chooseData(*profile_, QString::fromStdString(settings.profile));
    campFrame_->setVisible(camp);
    pinFrame_->setVisible(camp && camp->hasLedger());
    showPins();
}

void SettingsPage::takePerson()
{
    person_.theme = static_cast<Theme>(look_->currentData().toInt());
    person_.textScale = scale_->currentData().toInt();
    person_.language = language_->currentData().toString();
    person_.printer = printer_->currentData().toString();
    Q_EMIT preferencesChosen(person_);
}

void SettingsPage::takeCamp()
{
    settings_.cylinder = static_cast<ShownCylinder>(cylinder_->currentData().toInt());
    settings_.acuity = static_cast<ShownAcuity>(acuity_->currentData().toInt());
    settings_.profile = profile_->currentData().toString().toStdString();
    Q_EMIT campSettingsChosen(settings_);
}

void SettingsPage::showPins()
{
    QStringList set;
    if (camp_ && camp_->hasLedger())
        for (const auto role : allRoles)
            if (hasPin(camp_->ledger(), role))
                set << roleWords(role).section(QLatin1Char(':'), 0, 0);
    pinState_->setText(set.isEmpty() ? tr("No role has a PIN.")
                                     : tr("With a PIN: %1").arg(set.join(tr(", "))));
}

void SettingsPage::changePin(bool remove)
{
    const auto role = static_cast<Role>(role_->currentData().toInt());
    runCommand(messages_, [this, role, remove] {
        auto& ledger = camp_->ledger();
        if (const auto guard = roleChangingPinOf(ledger, role); hasPin(ledger, guard))
            requireFit(ledger, guard, oldPin_->text().toStdString());
        if (remove)
            removePin(ledger, role);
        else
            setPin(ledger, role, newPin_->text().toStdString());
        messages_.showDone(remove ? tr("The PIN was taken away.") : tr("The PIN was set."));
    });
    oldPin_->clear();
    newPin_->clear();
    showPins();
}

} // namespace quarterstep
