// SPDX-License-Identifier: GPL-3.0-or-later
// Why not, as bars: from the cost of one pair to that of another step by step, how much of each limit a pair
// uses up, and of 100 hand-overs those that went wrong by their first reason. The table beside the picture
// shows the same rows.
#pragma once

#include "app/session/audit_cases.hpp"
#include "core/fitting/cost_parts.hpp"

#include <QString>

#include <vector>

namespace quarterstep
{

struct ShareBar {
    enum class Kind {
        whole, ///< of a pair, or of all
        more,  ///< a step that adds
        less,  ///< a step that takes away
        within,
        beyond ///< a limit that is passed
    };
    QString name;
    QString figure; ///< with its sign or unit
    QString words;  ///< what the figure is made of
    double from = 0.0;
    double to = 0.0;
    Kind kind = Kind::whole;
    bool operator==(const ShareBar&) const = default;
};

struct ShareBars {
    std::vector<ShareBar> bars;
    double most = 1.0;  ///< the end of the scale
    double mark = 0.0;  ///< a line across all bars: the limit; 0: none
    bool steps = false; ///< each bar begins where the one before ends
    QString unit;
    QString whyNot; ///< why there is no picture; empty: there is
};

/// From the cost of `first` to that of `second`, logMAR. Without a first pair from nothing.
[[nodiscard]] ShareBars costBars(const Need& need, const Fit* first, const QString& firstName,
                                 const Fit& second, const QString& secondName);
/// Every criterion of a pair that has a limit: how much of it is used up, most first. 100 % is the limit of
/// the band told; what is beyond twice the limit is drawn as twice.
[[nodiscard]] ShareBars limitBars(const Fit& fit);
/// Of 100 hand-overs judged: those at odds by their first reason, and those that agree.
[[nodiscard]] ShareBars reasonBars(const std::vector<FirstReason>& reasons, std::int64_t judged);

/// "adds", "takes away", "inside", "outside" or "whole".
[[nodiscard]] QString kindOfBar(ShareBar::Kind kind);

} // namespace quarterstep
