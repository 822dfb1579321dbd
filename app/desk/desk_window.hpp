// SPDX-License-Identifier: GPL-3.0-or-later
// The window of the desk: which camp is open, messages, the places, and what is there in every place:
// opening, settings, help, keys, look and size of the letters. Without a camp it offers ways to begin.
#pragma once

#include "app/desk/settings/preferences.hpp"
#include "app/desk/theme.hpp"
#include "app/session/camp.hpp"
#include "inventory/text/camp_settings.hpp"

#include <QMainWindow>
#include <QMap>

#include <array>
#include <future>

class QAction;
class QButtonGroup;
class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace quarterstep
{

class AuditPlace;
class CampNotes;
class DeskPlace;
class DispensePlace;
class DraftKeeper;
class ExchangePage;
class HelpWindow;
class KeySheet;
class LongWork;
class MessageBar;
class OpeningPage;
class PinGuard;
class PracticeStrip;
class SettingsPage;
class StockPlace;
class TrayPage;
class WrapLayout;

class DeskWindow final : public QMainWindow
{
    Q_OBJECT

  public:
    /// Whether the parts are made with the window, or afterwards by `build`: a window without parts is
    /// painted at once, and nothing but `show`, `build` and geometry may be asked of it.
    enum class Parts { now, later };
    explicit DeskWindow(Parts parts = Parts::now, QWidget* parent = nullptr);
    ~DeskWindow() override;
    /// @param campComes a camp is opened next: the first place is shown and waits for it
    void build(bool campComes = false);
    [[nodiscard]] bool built() const { return pages_ != nullptr; }

    /// Opens a camp folder at once; what goes wrong is said in the window. Returns whether it is open.
    bool openCamp(const QString& folder);
    /// The same with the files read on another thread while the window is alive; ends with campOpened.
    /// `early`: they are being read already.
    void openCampLater(const QString& folder, std::future<CampFiles> early = {});
    /// Neither reads nor keeps which camps were opened: for pictures.
    void forgetCamps();
    /// The folder of the open camp, empty without one.
    [[nodiscard]] QString campFolder() const;
    /// The places, in the order of their buttons and keys.
    enum class Place { dispense, stock, audit };
    void showPlace(Place place);
    /// Loads a person of the waiting list; false when there is none of that code.
    bool choosePerson(const QString& code);
    [[nodiscard]] MessageBar& messages() { return *messages_; }
    /// A place or page is made when it is first asked for.
    [[nodiscard]] DispensePlace& dispense();
    [[nodiscard]] StockPlace& stock();
    [[nodiscard]] AuditPlace& audit();
    [[nodiscard]] PinGuard& pins() { return *pins_; }
    [[nodiscard]] ExchangePage& exchange();
    [[nodiscard]] PracticeStrip& practice() { return *practice_; }
    [[nodiscard]] LongWork& work() { return *work_; }
    [[nodiscard]] DraftKeeper& draft();

  public Q_SLOTS:
    void showOpening();
    void showTrays(const QString& folder);
    void showSettings();
    /// What comes in from elsewhere and what goes out.
    void showExchange();
    void showHelp();
    void showKeys();
    /// Opens the sample; with practice, tells a hand-over step by step.
    void openSample(bool afresh, bool withPractice);
    /// Puts on a look and a size of the letters, and keeps them.
    void takePreferences(const Preferences& preferences);

  Q_SIGNALS:
    void campOpened(bool opened);
    void languageChosen(const QString& language);

  private:
    // desk_layout.cpp
    void buildPages();
    QWidget* buildHeader();
    void buildPlaceButtons(WrapLayout& row);
    void buildActions();
    QAction* command(const QString& text, const QKeySequence& keys, void (DeskWindow::*run)());
    QPushButton* commandButton(const char* name, const QString& tooltip, QAction* action);
    QScrollArea* page(const char* name);

    // desk_places.cpp
    DeskPlace& place(Place which);
    OpeningPage& opening();
    TrayPage& trays();
    SettingsPage& settingsPage();
    void madeDispense();
    void nameKeysAndHelp();
    void campMoved(const DeskPlace* by);
    void takeInPlaces(Camp* camp);
    void makeNextPlace();

    // desk_opening.cpp, desk_window.cpp
    void takeOnce(CampFiles& files, const QString& folder);
    void take(CampFiles files);
    void keepCamps();
    void afterOpening();
    void settlePlace(void (Camp::*settle)());
    void tellNotOpened(const QString& folder, const std::vector<Finding>& findings, const Finding& first);
    void bringDraftBack();
    void settleDraft();
    void readSettings();
    void takeCampSettings(const CampSettings& settings);
    void keepCampSettings(const CampSettings& settings);
    void showSettingsAgain();
    void askFolder();
    void askTable();
    void newPerson();
    void showCamp();
    void tellCamp();
    void togglePlaneTable();
    void showPage(QWidget* page);
    void showWork();
    void takeTheme(int index);
    void takeNextLook();
    void scaleText(int steps);
    void largerText() { scaleText(1); }
    void smallerText() { scaleText(-1); }
    void usualText();
    void givePlacesRoom();
    void restyle(const Preferences& before);

    Preferences person_;
    bool remembers_ = true;                                 ///< which camps were opened
    bool campsDue_ = false;                                 ///< they are not in the file yet
    bool campComes_ = false;                                ///< the first camp is being read
    std::pair<QString, QMap<QString, QString>> earlyDraft_; ///< of a camp that is being read, with its folder
    CampSettings settings_;
    std::optional<Camp> camp_; ///< before the places that show it
    std::string lastGiven_;    ///< the last hand-over of the ledger that was looked at
    MessageBar* messages_ = nullptr;
    CampNotes* notes_ = nullptr;
    LongWork* work_ = nullptr;
    PinGuard* pins_ = nullptr;
    std::array<DeskPlace*, 3> places_{}; ///< null: not made yet; likewise the pages below
    OpeningPage* opening_ = nullptr;
    TrayPage* trays_ = nullptr;
    ExchangePage* exchange_ = nullptr;
    SettingsPage* settingsPage_ = nullptr;
    PracticeStrip* practice_ = nullptr;
    DraftKeeper* draft_ = nullptr; ///< made with the card it keeps
    HelpWindow* help_ = nullptr;   ///< made when first asked for
    KeySheet* keys_ = nullptr;
    QButtonGroup* placeButtons_ = nullptr;
    QStackedWidget* pages_ = nullptr;
    QList<QScrollArea*> placePages_; ///< in the order of the places
    QScrollArea* openingPage_ = nullptr;
    QScrollArea* traysPage_ = nullptr;
    QScrollArea* settingsScroll_ = nullptr;
    QScrollArea* exchangeScroll_ = nullptr;
    QWidget* before_ = nullptr; ///< the page to go back to from settings and opening
    QLabel* site_ = nullptr;
    QLabel* sample_ = nullptr;
    QLabel* summary_ = nullptr;
    QAction* newPerson_ = nullptr;
    QAction* loadPeople_ = nullptr;
    QPushButton* exchangeButton_ = nullptr;
    QComboBox* theme_ = nullptr;
    std::future<void> looksAtEntries_; ///< goes first: it speaks to the window
};

} // namespace quarterstep
