// SPDX-License-Identifier: GPL-3.0-or-later
// The places and pages of the window: each is made when it is first wanted, or after the camp was opened,
// when nobody waits.
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/opening/opening_page.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/opening/tray_page.hpp"
#include "app/desk/place_table.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/settings/settings_page.hpp"
#include "app/desk/shell/camp_notes.hpp"
#include "app/desk/shell/draft_keeper.hpp"
#include "app/desk/shell/pin_guard.hpp"

#include <QPushButton>
#include <QScrollArea>
#include <QTimer>

#include <algorithm>

namespace quarterstep
{

namespace
{
template <class Place>
DeskPlace* made(const DeskParts& parts, QWidget* parent)
{
    return new Place(parts, parent);
}

constexpr int makeAfterMs = 1000; ///< a camp was opened: its first page is painted and looked at by then
constexpr int restMs = 200;       ///< between one place and the next

void fill(QScrollArea& page, QWidget* inside, const QString& keyPart, const QString& topic)
{
    inside->setProperty("keyPart", keyPart);
    inside->setProperty("helpTopic", topic);
    page.setWidget(inside);
}
} // namespace

const PlaceRow placeTable[] = {
    {"dispenseScroll", "dispensePlaceButton", QT_TRANSLATE_NOOP("quarterstep::DeskWindow", "Dispense"),
     QT_TRANSLATE_NOOP("quarterstep::DeskWindow", "Who is served, and with what"), "matching",
     made<DispensePlace>},
    {"stockScroll", "stockPlaceButton", QT_TRANSLATE_NOOP("quarterstep::DeskWindow", "Stock"),
     QT_TRANSLATE_NOOP("quarterstep::DeskWindow", "What lies in the box, and what happened to it"), "files",
     made<StockPlace>},
    {"auditScroll", "auditPlaceButton", QT_TRANSLATE_NOOP("quarterstep::DeskWindow", "Audit"),
     QT_TRANSLATE_NOOP("quarterstep::DeskWindow", "Which pairs went wrong, and what slip did it"), "audit",
     made<AuditPlace>}};

DeskPlace& DeskWindow::place(Place which)
{
    const auto at = static_cast<std::size_t>(which);
    if (places_[at])
        return *places_[at];
    const auto& row = placeTable[at];
    auto& page = *placePages_[static_cast<int>(at)];
    // Made where it will stand: moved there, every part of it would be dressed in the style once more.
    auto* place = row.make({*messages_, *pins_, *work_}, page.viewport());
    places_[at] = place;
    fill(page, place, tr(row.words), QLatin1String(row.topic));
    connect(place, &DeskPlace::campChanged, this, [this, place] { campMoved(place); });
    if (which == Place::dispense)
        madeDispense();
    if (which == Place::stock)
        stock().setPrinter(person_.printer);
    nameKeysAndHelp();
    givePlacesRoom();
    if (camp_)
        place->take(&*camp_);
    return *place;
}

DispensePlace& DeskWindow::dispense()
{
    return static_cast<DispensePlace&>(place(Place::dispense));
}

StockPlace& DeskWindow::stock()
{
    return static_cast<StockPlace&>(place(Place::stock));
}

AuditPlace& DeskWindow::audit()
{
    return static_cast<AuditPlace&>(place(Place::audit));
}

DraftKeeper& DeskWindow::draft()
{
    (void)dispense();
    return *draft_;
}

void DeskWindow::madeDispense()
{
    dispense().setPrinter(person_.printer);
    dispense().addCommands(commandButton("newPersonButton", tr("Empties the card"), newPerson_),
                           commandButton("loadPeopleButton",
                                         tr("Puts the people of a prescription table into the waiting list"),
                                         loadPeople_));
    draft_ = new DraftKeeper(*findChild<QWidget*>(QStringLiteral("prescriptionCard")), this);
    const auto* line = &dispense().line();
    connect(line, &LinePanel::lineChanged, draft_,
            [this, line] { draft_->keepBeside(bytesOfLine(line->kept(), QDate::currentDate())); });
}

OpeningPage& DeskWindow::opening()
{
    if (opening_)
        return *opening_;
    opening_ = new OpeningPage;
    fill(*openingPage_, opening_, tr("Choosing a camp"), QStringLiteral("desk"));
    connect(opening_, &OpeningPage::sampleWanted, this, [this] { openSample(false, false); });
    connect(opening_, &OpeningPage::sampleAfreshWanted, this, [this] { openSample(true, false); });
    connect(opening_, &OpeningPage::practiceWanted, this, [this] { openSample(false, true); });
    connect(opening_, &OpeningPage::ownWanted, this, &DeskWindow::showTrays);
    connect(opening_, &OpeningPage::folderWanted, this,
            [this](const QString& folder) { openCampLater(folder); });
    connect(opening_, &OpeningPage::askFolderWanted, this, &DeskWindow::askFolder);
    connect(opening_, &OpeningPage::backWanted, this, &DeskWindow::showWork);
    return *opening_;
}

TrayPage& DeskWindow::trays()
{
    if (trays_)
        return *trays_;
    trays_ = new TrayPage(*messages_);
    fill(*traysPage_, trays_, tr("Starting a camp"), QStringLiteral("desk"));
    connect(trays_, &TrayPage::backWanted, this, &DeskWindow::showOpening);
    connect(trays_, &TrayPage::campMade, this, &DeskWindow::openCamp);
    return *trays_;
}

ExchangePage& DeskWindow::exchange()
{
    if (exchange_)
        return *exchange_;
    exchange_ = new ExchangePage(*messages_, *work_, dispense());
    fill(*exchangeScroll_, exchange_, tr("Bringing in and sending out"), QStringLiteral("exchange"));
    connect(exchange_, &ExchangePage::backWanted, this, &DeskWindow::showWork);
    connect(exchange_, &ExchangePage::peopleCame, this, [this] { showPlace(Place::dispense); });
    if (camp_)
        exchange_->take(&*camp_);
    return *exchange_;
}

SettingsPage& DeskWindow::settingsPage()
{
    if (settingsPage_)
        return *settingsPage_;
    settingsPage_ = new SettingsPage(*messages_);
    fill(*settingsScroll_, settingsPage_, tr("Settings"), QStringLiteral("desk"));
    connect(settingsPage_, &SettingsPage::preferencesChosen, this, &DeskWindow::takePreferences);
    connect(settingsPage_, &SettingsPage::campSettingsChosen, this, &DeskWindow::takeCampSettings);
    return *settingsPage_;
}

/// Fields whose keys stand in their tooltips, and parts that have a page of the manual of their own.
void DeskWindow::nameKeysAndHelp()
{
    for (const auto* name : {"rightEyeEdit", "leftEyeEdit"})
        if (auto* widget = findChild<QWidget*>(QLatin1String(name)))
            widget->setProperty("keysInTooltip", true);
    const std::pair<const char*, const char*> topics[] = {
        {"cardFrame", "notation"}, {"handOverFrame", "desk"}, {"stockWorkFrame", "durability"}};
    for (const auto& [name, topic] : topics)
        if (auto* widget = findChild<QWidget*>(QLatin1String(name)))
            widget->setProperty("helpTopic", QLatin1String(topic));
}

void DeskWindow::campMoved(const DeskPlace* by)
{
    for (auto* place : places_)
        if (place && place != by)
            place->campMoved();
    if (by == places_.front()) {
        settleDraft();
        practice_->stockMoved();
    }
    notes_->take(camp_ ? &*camp_ : nullptr);
    showCamp();
}

/// Dispense comes last: what it has to say of the camp stays in sight.
void DeskWindow::takeInPlaces(Camp* camp)
{
    pins_->take(camp);
    notes_->take(camp);
    for (auto place = places_.rbegin(); place != places_.rend(); ++place)
        if (*place)
            (*place)->take(camp);
    if (exchange_)
        exchange_->take(camp);
    if (camp)
        QTimer::singleShot(makeAfterMs, this, &DeskWindow::makeNextPlace);
}

/// One at a time while nobody waits: whoever goes there later sees it within a frame.
void DeskWindow::makeNextPlace()
{
    const auto next = std::find(places_.begin(), places_.end(), nullptr);
    if (!camp_ || next == places_.end())
        return;
    (void)place(static_cast<Place>(next - places_.begin()));
    QTimer::singleShot(restMs, this, &DeskWindow::makeNextPlace);
}

} // namespace quarterstep
