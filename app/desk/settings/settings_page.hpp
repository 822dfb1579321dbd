// SPDX-License-Identifier: GPL-3.0-or-later
// Settings: what belongs to the person at this laptop, what belongs to the camp, and the PINs of its roles.
// Everything takes effect at once.
#pragma once

#include "app/desk/settings/preferences.hpp"
#include "inventory/text/camp_settings.hpp"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QFrame;
class QLabel;
class QLineEdit;

namespace quarterstep
{

class Camp;
class MessageBar;

class SettingsPage final : public QWidget
{
    Q_OBJECT

  public:
    explicit SettingsPage(MessageBar& messages, QWidget* parent = nullptr);

    /// Shows what is set now. The camp, null for none, must live as long as it is shown.
    void show(const Preferences& person, const CampSettings& settings, Camp* camp);

  Q_SIGNALS:
    void preferencesChosen(const Preferences& preferences);
    void campSettingsChosen(const CampSettings& settings);

  private:
    QFrame* buildPerson();
    QFrame* buildCamp();
    QFrame* buildPins();
    QComboBox* choice(QFormLayout& form, const char* name, const QString& label, const QString& tooltip);
    QLineEdit* secret(QFormLayout& form, const char* name, const QString& label, const QString& tooltip);
    void fillLanguages();
    void fillPrinters();
    void fillProfiles();
    void takePerson();
    void takeCamp();
    void changePin(bool remove);
    void showPins();

    MessageBar& messages_;
    Preferences person_;
    CampSettings settings_;
    Camp* camp_ = nullptr;
    QComboBox* look_ = nullptr;
    QComboBox* scale_ = nullptr;
    QComboBox* language_ = nullptr;
    QComboBox* printer_ = nullptr;
    QFrame* campFrame_ = nullptr;
    QComboBox* cylinder_ = nullptr;
    QComboBox* acuity_ = nullptr;
    QComboBox* profile_ = nullptr;
    QFrame* pinFrame_ = nullptr;
    QLabel* pinState_ = nullptr;
    QComboBox* role_ = nullptr;
    QLineEdit* oldPin_ = nullptr;
    QLineEdit* newPin_ = nullptr;
};

} // namespace quarterstep
