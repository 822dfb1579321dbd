// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan of the waiting line says: who gets which pair and why, who goes without and why.
#pragma once

#include "app/session/jobs.hpp"
#include "core/planning/waiting_line.hpp"

#include <map>
#include <memory>

namespace quarterstep
{

/// Why somebody gets this pair and no other.
enum class WhyThisPair {
    told,       ///< was told before; not planned again
    byHand,     ///< picked by somebody, with a reason
    best,       ///< nothing in the box is better for this person
    asGood,     ///< loses no more than the best; others need that one more
    promised,   ///< the better pair was promised to somebody else before
    neededMore, ///< the better pair goes to somebody for whom nothing else will do
    sharedOut ///< the better pair goes to somebody else, so that most are served and all together lose least
};

struct Assignment {
    std::string person;
    Purpose purpose = Purpose::distance;
    std::vector<Part> parts;
    double lossLogMar = 0.0; ///< 0 for who was told before by a list: not judged again
    double prism = 0.0;      ///< Δ, base in positive
    bool caution = false;
    bool told = false; ///< or picked by hand: stays whatever is planned
    WhyThisPair why = WhyThisPair::best;
    double moreLossLogMar = 0.0; ///< than the better pair, where that goes to somebody else
    std::string goesTo;          ///< who gets the better pair
    bool noneLeft = false;       ///< told, but the pieces have gone since: look before saying it again
    std::string reason;          ///< typed, when picked by hand
    Sentence sentence;           ///< of the why
};

/// In the line and without a pair. reasonKey as in `match`, "others_served" or "stock_out".
struct Unserved {
    std::string person;
    Purpose purpose = Purpose::distance;
    std::string reasonKey;
    std::vector<std::string> goesTo; ///< who gets what would have done, at most three
    Sentence sentence;
};

/// What one more piece of lines that are the same to the eye would change.
struct LinePrice {
    std::vector<std::string> lines;
    int available = 0;
    int wantedBy = 0; ///< people of the line for whom it would do
    OneMore oneMore;
};

struct LineAnswer {
    std::vector<Assignment> assignments; ///< in the order of arrival
    std::vector<Unserved> unserved;
    std::vector<NotInLine> others; ///< not in the line: nothing needed, incomplete, clinic first
    int people = 0;                ///< persons and purposes in the line, those told included
    int served = 0;
    int servedFirstCome = 0; ///< if each took the best that is left, in the order of arrival
    double lossLogMar = 0.0;
    double lossFirstCome = 0.0;
    Proof proof;
    std::vector<LinePrice> prices;     ///< when asked for: where one more would help, most first
    std::vector<double> programPrices; ///< of the linear program, for PlanOptions::pricesBefore
};

/// A pair that somebody was told about or that was picked by hand.
struct Promise {
    std::vector<Part> parts;
    std::string reason; ///< picked by hand; empty: told as planned
    double lossLogMar = 0.0;
    double prism = 0.0;
    bool caution = false;
    bool allThere = true; ///< false: a part is no line of the box any more
};

/// The line as it stands. `promised`: by place in the line.
struct LineStanding {
    std::span<const StockLine> stock;
    const Resources* resources = nullptr;
    std::vector<const Waiting*> line;
    std::map<std::size_t, Promise> promised;
    std::vector<std::shared_ptr<const Waiting>> added; ///< of the line: told, and not in the line by today's
                                                       ///< judgement
    bool secondPairsLast = true;                       ///< under first come, first served
};

/// Plans for all who were promised nothing, with what the promises leave. `others` stays empty.
[[nodiscard]] LineAnswer answerLine(const LineStanding& standing, const PlanOptions& options, const Job& job);

} // namespace quarterstep
