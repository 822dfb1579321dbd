// SPDX-License-Identifier: GPL-3.0-or-later
// Where every block of a paper stands: pages of rectangles, in hundredths of a millimetre, before anything is
// painted. Laid out once for every device, so that a picture, a PDF and a printer break lines alike; only
// bars know the dots of the device. Sizes of type: 12 pt is the least for running text that people with poor
// sight read at arm's length, 16 pt large print (guidance on clear and large print of sight charities, from
// memory); paper rolls print 48 of 58 and 72 of 80 mm (common practice).
#pragma once

#include "app/paper/content/paper_job.hpp"

#include <QRectF>
#include <QString>

#include <vector>

namespace quarterstep
{

/// Units of a millimetre: type is laid out at 2540 dots an inch, where hinting and rounding no longer matter.
inline constexpr double unitsPerMm = 100.0;

enum class MarkKind {
    words,
    line,   ///< a thin one
    dashes, ///< cut here
    frame,  ///< an empty box
    bar,    ///< filled
    bars,   ///< a bar code
    picture
};

struct Mark {
    MarkKind kind = MarkKind::words;
    QRectF place; ///< units from the top left corner of the page
    QString text; ///< words
    double points = 12.0;
    bool bold = false;
    Qt::Alignment alignment = Qt::AlignLeft; ///< absolute
    bool rightToLeft = false;
    std::vector<bool> modules; ///< bars: dark or light
    double moduleWidth = 0.0;  ///< bars: units
    bool sideways = false;     ///< bars: along the roll
    std::shared_ptr<const Picture> picture = {};
};

struct Page {
    double width = 0.0; ///< units
    double height = 0.0;
    std::vector<Mark> marks;
};

struct LaidOut {
    std::vector<Page> pages;
    /// Names whose bars do not fit where they should stand; their text stands there alone.
    std::vector<QString> withoutBars;
};

/// Throws Error label-too-small (3) where a label cannot hold its text at half of its usual size.
[[nodiscard]] LaidOut layOut(const PaperJob& job);

} // namespace quarterstep
