// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the desk, one after the other, and what is looked at on each by the tests that walk over
// them.
#pragma once

#include "tests/desk/given_camp.hpp"

#include <QRect>
#include <QTranslator>

#include <functional>
#include <string>
#include <vector>

namespace quarterstep
{

struct WalkedPage {
    const char* name;
    std::function<void(DeskWindow&)> show;
};

/// In the window itself; wants the camp of AuditDesk.
[[nodiscard]] const std::vector<WalkedPage>& pagesOfDesk();
/// Help and keys stand in windows of their own, named like the page.
[[nodiscard]] const std::vector<WalkedPage>& otherWindows();

/// The window speaks a language, as the program makes it speak.
struct Speaking {
    explicit Speaking(const char* language);
    ~Speaking();
    QTranslator translator;
};

/// Parts of Qt's own widgets (scroll bars, spin arrows, the views of combo boxes) are named by Qt.
[[nodiscard]] bool ours(const QWidget& widget);
/// Class and name, for messages.
[[nodiscard]] std::string called(const QWidget& widget);
/// What Tab reaches on the page that is shown, in the order of Tab, the header of the window left out.
[[nodiscard]] std::vector<QWidget*> tabOrder(QWidget& window);
[[nodiscard]] QRect placeOf(const QWidget& widget, const QWidget& window);
/// Fails the case where this order, as it stands in the window now, is not the order of reading: each panel
/// from its beginning to its end, none twice.
void readsInOrder(const std::vector<QWidget*>& order, const QWidget& window, const std::string& page);

/// Contrast of two colours, WCAG 2.2: from 1 to 21.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace quarterstep
