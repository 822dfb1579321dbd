// SPDX-License-Identifier: GPL-3.0-or-later
// One chart of the audit on a paper of its own, with its numbers below it.
#pragma once

#include "app/paper/content/paper.hpp"
#include "app/paper/content/picture.hpp"

namespace quarterstep
{

struct ChartOnPaper {
    QString title;
    QString whyNot; ///< why there is no picture; empty: there is
    PictureTwin twin;
};

[[nodiscard]] Paper auditChartPaper(ChartOnPaper chart, const PaperSource& source);

/// A picture, then its table.
void addTwin(PictureTwin twin, std::vector<Block>& blocks);

} // namespace quarterstep
