// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of values onto paper: the same lines, marks and words as in a page for a browser, in black.
#pragma once

#include <QRectF>

class QPainter;

namespace quarterstep
{

struct Picture;

/// `place` in units of the page, which the painter has already; the picture fills its width.
void paintPicture(QPainter& painter, const Picture& picture, const QRectF& place);

} // namespace quarterstep
