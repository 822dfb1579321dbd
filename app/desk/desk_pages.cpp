// SPDX-License-Identifier: GPL-3.0-or-later
// Which page of the window is shown, help and keys, and how the window looks.
#include "app/desk/desk_window.hpp"
#include "app/desk/guide/help_window.hpp"
#include "app/desk/guide/key_sheet.hpp"
#include "app/desk/opening/opening_page.hpp"
#include "app/desk/opening/tray_page.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/settings/settings_page.hpp"
#include "app/desk/shell/pin_guard.hpp"

#include <QAbstractButton>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QScrollArea>
#include <QStackedWidget>

#include <algorithm>
#include <cmath>

namespace quarterstep
{

void DeskWindow::showPage(QWidget* page)
{
    if (pages_->currentWidget() == page)
        pins_->withdraw();
    else
        pins_->forget();
    pages_->setCurrentWidget(page);
    // What changed on a page while it was hidden may need more room than it had.
    if (auto* area = qobject_cast<QScrollArea*>(page))
        QApplication::postEvent(area, new QEvent(QEvent::LayoutRequest));
    for (auto* button : placeButtons_->buttons()) {
        placeButtons_->setExclusive(false); // on a page that is no place none is chosen
        button->setChecked(page == placePages_.value(placeButtons_->id(button)));
        placeButtons_->setExclusive(true);
    }
}

void DeskWindow::showPlace(Place place)
{
    if (!camp_)
        return;
    (void)this->place(place);
    before_ = placePages_.value(static_cast<int>(place));
    showPage(before_);
}

/// Back to the place that was shown last.
void DeskWindow::showWork()
{
    if (!camp_)
        return showOpening();
    if (!before_)
        return showPlace(Place::dispense);
    showPage(before_);
}

void DeskWindow::showOpening()
{
    auto others = person_.camps;
    others.removeAll(campFolder());
    opening().showCamps(others, camp_.has_value());
    showPage(openingPage_);
    opening().setFocus();
}

void DeskWindow::showTrays(const QString& folder)
{
    trays().begin(folder);
    showPage(traysPage_);
    trays().setFocus();
}

/// The same key leads back.
void DeskWindow::showExchange()
{
    if (!camp_ || pages_->currentWidget() == exchangeScroll_)
        return showWork();
    (void)exchange();
    showPage(exchangeScroll_);
}

/// The same key leads back.
void DeskWindow::showSettings()
{
    if (pages_->currentWidget() == settingsScroll_)
        return showWork();
    settingsPage().show(person_, settings_, camp_ ? &*camp_ : nullptr);
    showPage(settingsScroll_);
    settingsPage().setFocus();
}

/// What is chosen there and not kept is not what is set.
void DeskWindow::showSettingsAgain()
{
    if (pages_->currentWidget() == settingsScroll_)
        settingsPage().show(person_, settings_, camp_ ? &*camp_ : nullptr);
}

void DeskWindow::togglePlaneTable()
{
    if (camp_)
        dispense().togglePlaneTable();
}

void DeskWindow::showHelp()
{
    if (!help_)
        help_ = new HelpWindow(this);
    const auto* focus = QApplication::focusWidget();
    const bool inPage = focus && pages_->currentWidget()->isAncestorOf(focus);
    const auto* page = qobject_cast<QScrollArea*>(pages_->currentWidget());
    help_->showTopic(HelpWindow::topicFor(inPage || !page ? focus : page->widget()));
}

void DeskWindow::showKeys()
{
    for (std::size_t at = 0; at < places_.size(); ++at) // the sheet has the keys of every place
        (void)place(static_cast<Place>(at));
    if (!keys_)
        keys_ = new KeySheet(this);
    keys_->showKeysOf(*this);
}

void DeskWindow::takeTheme(int index)
{
    auto wanted = person_;
    wanted.theme = static_cast<Theme>(index);
    takePreferences(wanted);
}

void DeskWindow::takeNextLook()
{
    takeTheme((static_cast<int>(person_.theme) + 1) % 3);
}

void DeskWindow::scaleText(int steps)
{
    auto wanted = person_;
    wanted.textScale = std::clamp(person_.textScale + steps * textScaleStep, leastTextScale, mostTextScale);
    takePreferences(wanted);
}

void DeskWindow::usualText()
{
    auto wanted = person_;
    wanted.textScale = leastTextScale;
    takePreferences(wanted);
}

void DeskWindow::takePreferences(const Preferences& preferences)
{
    const auto before = person_;
    person_ = preferences;
    person_.camps = before.camps;
    keepPreferences(person_);
    if (places_.front())
        dispense().setPrinter(person_.printer);
    if (places_[static_cast<std::size_t>(Place::stock)])
        stock().setPrinter(person_.printer);
    if (before.theme != person_.theme || before.textScale != person_.textScale)
        restyle(before);
    if (before.language != person_.language)
        Q_EMIT languageChosen(person_.language);
}

/// With larger letters the places keep their proportions and scroll, instead of squeezing their lists; the
/// stock says of each list how many lines it needs.
void DeskWindow::givePlacesRoom()
{
    constexpr int usualHeight = 640;
    for (auto* place : places_)
        if (place && place != places_[static_cast<std::size_t>(Place::stock)])
            place->setMinimumHeight(person_.textScale > leastTextScale ? usualHeight * person_.textScale / 100
                                                                       : 0);
}

/// Letters that are larger or smaller than the usual by design stay so; they are found by their size.
void DeskWindow::restyle(const Preferences& before)
{
    const double usual = pointsOf(before.theme) * before.textScale / 100.0;
    std::vector<std::pair<QWidget*, double>> special;
    for (auto* widget : findChildren<QWidget*>())
        if (const double ratio = widget->font().pointSizeF() / usual; std::abs(ratio - 1.0) > 0.01)
            special.emplace_back(widget, ratio);
    applyTheme(*qApp, person_.theme, person_.textScale);
    const double now = pointsOf(person_.theme) * person_.textScale / 100.0;
    for (const auto& [widget, ratio] : special) {
        auto font = widget->font();
        if (std::abs(font.pointSizeF() / now - ratio) < 0.01)
            continue; // the style sheet has done it
        font.setPointSizeF(now * ratio);
        widget->setFont(font);
    }
    theme_->setCurrentIndex(static_cast<int>(person_.theme));
    givePlacesRoom();
    for (auto* place : places_)
        if (place)
            place->restyle();
    showSettingsAgain();
}

} // namespace quarterstep
