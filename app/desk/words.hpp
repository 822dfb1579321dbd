// SPDX-License-Identifier: GPL-3.0-or-later
// How the desk words a candidate: what to pull, what is left in each eye, how it is judged and why.
// Words only; every number comes from the fit.
#pragma once

#include "core/fitting/candidates.hpp"

#include <QCoreApplication>
#include <QString>

namespace quarterstep
{

class DeskWords
{
    Q_DECLARE_TR_FUNCTIONS(DeskWords)

  public:
    /// A size in two decimals, without sign: "0.25".
    [[nodiscard]] static QString size(double value);
    /// "+2.00", or both powers when they differ, kept left-to-right.
    [[nodiscard]] static QString powers(const Supply& supply);
    /// Where to fetch every part: "N+200 bin C4", or sides and bins of prefabricated parts.
    [[nodiscard]] static QString pull(const std::vector<Part>& parts, std::span<const StockLine> stock);
    /// How many times these parts can still be given.
    [[nodiscard]] static int available(const std::vector<Part>& parts, std::span<const StockLine> stock);
    /// What the pair leaves in one eye: "0.25 too plus, cylinder 0.50"; "not judged" without a fit.
    [[nodiscard]] static QString residual(const std::optional<EyeFit>& eye, Purpose purpose);
    [[nodiscard]] static QString prism(const Fit& fit);
    /// Suggested / Fits with caution / On trial: type the acuity / Outside limit.
    [[nodiscard]] static QString verdict(const Fit& fit);
    /// The same after the pair was tried on with the acuity typed: accepted, or not.
    [[nodiscard]] static QString triedVerdict(const Fit& fit);
    /// The first criterion in the band that decides; empty when everything fits.
    [[nodiscard]] static QString reason(const Fit& fit);
    /// "D", "Δ", "mm" … for a criterion's unit.
    [[nodiscard]] static QString unit(Criterion criterion);
};

} // namespace quarterstep
