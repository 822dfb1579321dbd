// SPDX-License-Identifier: GPL-3.0-or-later
// Blocks turned into pieces: marks that stay together, with the room they take, for a column of a given
// width.
#pragma once

#include "app/paper/render/layout.hpp"

namespace quarterstep
{

/// Sizes of type in points, the rest in millimetres.
struct PaperType {
    double title = 15.0;
    double heading = 12.0;
    double body = 12.0;
    double small = 8.0;
    double power = 40.0;
    double bars = 11.0; ///< height
    double gap = 1.4;   ///< between blocks
    double blank = 9.0; ///< height of a line to write on
};

struct Column {
    double width = 0.0; ///< units
    PaperType type;
    bool rightToLeft = false;
    bool roll = false; ///< as long as it gets: long bars run along it
    int dotsPerInch = 0;
};

struct Piece {
    double gap = 0.0; ///< units above it, unless it is the first
    double height = 0.0;
    std::vector<Mark> marks; ///< places relative to the piece
    bool keepWithNext = false;
    std::ptrdiff_t header = -1; ///< piece to repeat on a new page, or -1
};

struct Pieces {
    std::vector<Piece> pieces;
    std::vector<QString> withoutBars;
};

[[nodiscard]] Pieces piecesOf(const Paper& paper, const Column& column);

/// A words mark of this width, with its height.
[[nodiscard]] Mark wordsMark(const QString& text, double points, bool bold, double width,
                             const Column& column);

} // namespace quarterstep
