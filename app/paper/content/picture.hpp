// SPDX-License-Identifier: GPL-3.0-or-later
// A picture as values, in millimetres: lines, marks and words with what they stand for. `svgOf` writes it
// into a page, `render` paints it onto paper. Every picture has a table twin with the same figures, in words;
// its data marks carry the very texts of the table. Axes run left to right in every language. Shape tells
// what colour tells.
#pragma once

#include "core/auditing/charts.hpp"
#include "core/auditing/lot.hpp"

#include <QPointF>
#include <QString>
#include <QStringList>

#include <vector>

namespace quarterstep
{

enum class PictureRole {
    axis,
    centre,
    alert, ///< dashed
    alarm, ///< solid, heavy
    plain, ///< a dot
    early, ///< beyond the alert: a square
    beyond ///< beyond the alarm: a diamond
};

struct PicturePart {
    enum class Kind { path, mark, words };
    Kind kind = Kind::path;
    PictureRole role = PictureRole::axis;
    std::vector<QPointF> points; ///< mm from the top left corner
    QString text;                ///< words
    int anchor = -1;             ///< -1 begins there, 0 centred, 1 ends there
    QStringList row;             ///< marks: their row of the table
};

struct Picture {
    QString title;
    QString says; ///< in one sentence, for who cannot see it
    double width = 170.0;
    double height = 62.0;
    std::vector<PicturePart> parts;
};

/// A picture with its table; the first row names the columns.
struct PictureTwin {
    Picture picture;
    std::vector<QStringList> rows;
    std::vector<int> widths; ///< shares of the columns
};

inline constexpr double usualHeight = 62.0; ///< mm, at a width of 170
[[nodiscard]] PictureTwin funnelTwin(const FunnelChart& chart, const QString& title, const QString& names,
                                     double height = usualHeight);
[[nodiscard]] PictureTwin runsTwin(const GSeries& series, const QString& title);
[[nodiscard]] PictureTwin pChartTwin(const PChart& chart, const QString& title, double height = usualHeight);
[[nodiscard]] PictureTwin curveTwin(const std::vector<OperatingPoint>& curve, const LotPlan& plan,
                                    const QString& title);

/// As an element of a page; classes: axis centre alert alarm plain early beyond.
[[nodiscard]] QString svgOf(const Picture& picture);

/// "4.2 %", in an isolate.
[[nodiscard]] QString shareWords(double share);

} // namespace quarterstep
