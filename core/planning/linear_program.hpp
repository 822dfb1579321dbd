// SPDX-License-Identifier: GPL-3.0-or-later
// A linear program to maximise, grown row by row and column by column and solved again from where it stood
// (primal simplex of GLPK, which linear_program.cpp alone sees); whole-number columns by branch and bound,
// stopped after a number of nodes, never by the clock, so that the same question has the same answer.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace quarterstep
{

struct RowEntry {
    std::size_t row = 0;
    double factor = 0.0;
};

struct ColumnEntry {
    std::size_t column = 0;
    double factor = 0.0;
};

class LinearProgram
{
  public:
    LinearProgram();
    LinearProgram(LinearProgram&&) noexcept;
    LinearProgram& operator=(LinearProgram&&) = delete; // a program stays in the thread that made it
    ~LinearProgram();

    /// Sum of the row <= most. Returns its index.
    std::size_t addRow(double most, const std::vector<ColumnEntry>& entries = {});
    /// 0 <= x <= most (empty: no upper bound). Each row at most once among the entries.
    std::size_t addColumn(double gain, std::optional<double> most, const std::vector<RowEntry>& entries,
                          bool whole = false);
    void setMost(std::size_t row, double most);

    /// Begins from a point that is known: these columns take all of these rows, one each (a column's first
    /// row), everything else is 0.
    void beginAt(const std::vector<std::size_t>& columns, const std::vector<std::size_t>& rows);

    /// False when no optimum was reached (numbers beyond what the solver bears).
    [[nodiscard]] bool solve();
    [[nodiscard]] double best() const;
    [[nodiscard]] double value(std::size_t column) const;
    /// Price of a row, >= 0 up to rounding.
    [[nodiscard]] double price(std::size_t row) const;
    [[nodiscard]] std::size_t columns() const;

    struct Whole {
        std::vector<double> values;
        double best = 0.0;
        bool proved = false; ///< searched to the end
    };
    /// After solve(): branch and bound over the whole columns; empty when no whole point was met in `nodes`.
    [[nodiscard]] std::optional<Whole> solveWhole(int nodes);

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace quarterstep
