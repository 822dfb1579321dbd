// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever gets the keyboard is brought into sight. An area that scrolls does so by itself for keys that stay
// inside of it, not for those that come in from beside it.
#pragma once

class QWidget;

namespace quarterstep
{

/// For everything in this window, as long as it lives.
void keepFocusInSight(QWidget& window);

} // namespace quarterstep
