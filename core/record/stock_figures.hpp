// SPDX-License-Identifier: GPL-3.0-or-later
// What the keeper wants to know: what to reorder, how long stock lasts, and the usual figures of supply.
// Consumption is what was handed over, without what was taken back, over the days on which the line was
// there: a day without stock says nothing about demand (correction for stock-outs as in The Logistics
// Handbook, USAID DELIVER). A camp is a number of people seen, since calendar months are the wrong clock for
// camps.
#pragma once

#include "core/fitting/stock_line.hpp"
#include "core/record/entry.hpp"

#include <memory>
#include <set>
#include <span>

namespace quarterstep
{

struct FiguresOptions {
    std::int64_t offsetMs = 0; ///< of local time from UTC, for what a day is
    int campPeople = 100;      ///< people seen at one camp
};

struct LineFigures {
    int issued = 0;                     ///< pieces handed over
    int daysInStock = 0;                ///< of the days on which anything was handed over
    std::optional<double> daysOfStock;  ///< available over what a day takes; empty when nothing was issued
    std::optional<double> campsOfStock; ///< available over what a camp takes
    int reorder = 0; ///< pieces up to keep.most (or least) when fewer than keep.least are available, else 0
};

struct CampFigures {
    int days = 0;      ///< with a hand-over
    int people = 0;    ///< seen on those days, one per person and day
    int handOvers = 0; ///< standing
    int returned = 0;  ///< entries `returned` and `exchanged`
    int lines = 0;
    int linesOut = 0;     ///< none available
    int linesPlanned = 0; ///< with keep levels
    int linesToPlan = 0;  ///< available within them
    int linesToReorder = 0;
    int counted = 0;      ///< lines on sheets counted by two
    int countedRight = 0; ///< of these, without a difference
};

struct StockFigures {
    CampFigures camp;
    std::vector<LineFigures> lines; ///< one for each line of the stock
};

/// Takes entries one after the other, so that a long ledger need not be in memory.
class FiguresReplay
{
  public:
    /// @param gone  ids of the entries that were taken back
    FiguresReplay(std::set<std::string> gone, std::string site, std::int64_t offsetMs);
    FiguresReplay(FiguresReplay&&) noexcept;
    FiguresReplay& operator=(FiguresReplay&&) noexcept;
    ~FiguresReplay();
    /// In the order of arrival; entries of other sites are left out.
    void take(const Entry& entry);
    [[nodiscard]] StockFigures figures(std::span<const StockLine> stock, int campPeople) const;

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

/// @param entries  in the order of arrival; only those of `site` count
[[nodiscard]] StockFigures stockFigures(std::span<const Entry> entries, const std::string& site,
                                        std::span<const StockLine> stock, const FiguresOptions& options = {});

} // namespace quarterstep
