// SPDX-License-Identifier: GPL-3.0-or-later
// The places of the window, in the order of DeskWindow::Place, of their buttons and of their keys Alt+1 …
#pragma once

class QWidget;

namespace quarterstep
{

class DeskPlace;
struct DeskParts;

struct PlaceRow {
    const char* page;   ///< object name of the page
    const char* button; ///< object name of the button
    const char* words;  ///< in the context of the window, as the tooltip
    const char* tooltip;
    const char* topic; ///< its page of the manual
    DeskPlace* (*make)(const DeskParts& parts, QWidget* parent);
};

extern const PlaceRow placeTable[3];

} // namespace quarterstep
