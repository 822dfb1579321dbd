// SPDX-License-Identifier: GPL-3.0-or-later
// A lot of hand-overs judged by a sample of it: plans worked out for risks that are asked for, their
// operating curve also for small lots, the draw in its order with spares, and the decision with its
// arithmetic. Plans of this kind: Dodge HF, Romig HG, Sampling Inspection Tables, 1944; in health work
// Robertson SE, Valadez JJ, Soc Sci Med 2006;63:1625-1634.
#pragma once

#include "core/auditing/sampling.hpp"
#include "core/finding.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace quarterstep
{

/// A plan and what it promises.
struct LotPlan {
    SamplingPlan plan;
    double fine = 0.05; ///< share of failures that is as good as it gets in practice
    double bad = 0.25;  ///< share that must not pass
    PlanRisks risks;    ///< of a large lot
};

inline constexpr int largestSample = 2000;

/// The smallest sample at which both risks are no larger than asked for; empty when none up to largestSample
/// is, or where the shares are not 0 <= fine < bad <= 1.
[[nodiscard]] std::optional<LotPlan> smallestPlan(double fine, double bad, const PlanRisks& atMost);
/// The plan of a sample with its risks; `allowed` empty: the number that makes the larger risk smallest.
[[nodiscard]] LotPlan planOf(int sample, std::optional<int> allowed, double fine, double bad);

/// P(accepted) for a lot of this size that holds `failing` failures: hypergeometric. Nobody drawn twice.
/// Asserts 0 <= failing <= lot and sample <= lot.
[[nodiscard]] double acceptedInLot(const SamplingPlan& plan, int lot, int failing);

/// One point of the operating curve.
struct OperatingPoint {
    double share = 0.0;       ///< of failures in the lot
    double accepted = 0.0;    ///< probability, large lot
    std::optional<double> of; ///< the same for this lot, where its size is known
};
/// At 0, `step`, 2 `step` … up to `most`. With a lot, its failures are rounded to whole ones.
[[nodiscard]] std::vector<OperatingPoint>
operatingCurve(const SamplingPlan& plan, std::optional<int> lot = {}, double step = 0.05, double most = 0.5);

/// Places in the order in which they were drawn: the first `sample` are read, the rest stand in for those
/// that cannot be found. Every place of the lot is as likely as any other; the same for the same seed on
/// every machine.
[[nodiscard]] std::vector<std::size_t> drawnInOrder(std::size_t lot, std::size_t count, std::uint64_t seed);

/// What came of one row of a worksheet.
enum class RowOutcome {
    unread,    ///< not yet, or the pair could not be found
    good,      ///< reads as recorded and fits the record
    offRecord, ///< does not read as recorded
    outside    ///< reads as recorded, and is outside a limit without a reason
};

enum class LotDecision { accepted, refused, open };
[[nodiscard]] const char* wordOf(LotDecision decision); ///< stable, in the ledger

struct LotCount {
    int read = 0; ///< of those that count: the first `sample` that were read
    int failed = 0;
    int spareRead = 0; ///< read beyond the sample; not counted
};
/// Rows in the order of the draw; an unread one is stood in for by the next.
[[nodiscard]] LotCount countRows(std::span<const RowOutcome> rows, const SamplingPlan& plan);
/// Refused as soon as more failed than are allowed; accepted as soon as that cannot happen any more; open
/// while pairs are still to be read.
[[nodiscard]] LotDecision decide(const LotCount& count, const SamplingPlan& plan);
/// The arithmetic in words.
[[nodiscard]] Sentence decisionSentence(const LotCount& count, const SamplingPlan& plan);

} // namespace quarterstep
