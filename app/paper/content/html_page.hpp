// SPDX-License-Identifier: GPL-3.0-or-later
// A paper as a page for a browser: one file, nothing fetched, no script; light and dark as the reader has it;
// the direction of the language, with powers, axes, names and codes as they are written.
#pragma once

#include "app/paper/content/paper.hpp"
#include "app/translations/catalogue.hpp"

namespace quarterstep
{

/// Well-formed as XML and as HTML.
[[nodiscard]] QString htmlPage(const Paper& paper, const Language& language);
/// Escaped, with isolates as elements.
[[nodiscard]] QString htmlText(const QString& text);

} // namespace quarterstep
