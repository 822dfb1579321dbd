// SPDX-License-Identifier: GPL-3.0-or-later
// What the ledger says of one hand-over, as values the audit judges again.
#pragma once

#include "core/fitting/fit.hpp"
#include "core/record/entry.hpp"

#include <memory>

namespace quarterstep
{

/// What was measured or read beside the record: after the hand-over, by somebody who had not seen it, and the
/// focimeter reading of the pair as it went. Each part may be missing.
struct LaterWitness {
    PerEye<std::optional<SpheroCylinder>> pair;  ///< focimeter reading of the pair given
    PerEye<std::optional<SpheroCylinder>> final; ///< the card read again
    PerEye<std::optional<Dioptres>> addition;    ///< of the card
    std::optional<double> distancePd;            ///< of the card, both eyes together, mm
};

struct HandOverFacts {
    std::string entry; ///< id
    std::int64_t number = 0;
    std::int64_t atMs = 0;
    std::string site;
    std::string actor;
    std::string person;
    Purpose purpose = Purpose::distance;
    std::string profile;
    std::string rulesHash;
    std::vector<Movement> movements;
    std::string verdict;                       ///< as stored: "fits" "caution" "on-trial" "outside"
    std::optional<long> costThousandths;       ///< as stored, logMAR
    std::optional<long> horizontalThousandths; ///< as stored, prism dioptres
    std::string checks;                        ///< as stored; "none"
    std::string referral;                      ///< as stored: "no" "with" "before"
    bool reasonGiven = false;
    std::optional<PersonRecord> record;        ///< empty: forgotten, or written before records were kept
    std::optional<Supply> supply;              ///< the pair as it was judged
    std::optional<TrialAcuity> acuity;         ///< typed with the pair on the face
    std::shared_ptr<const LaterWitness> later; ///< null: nothing was read
};

} // namespace quarterstep
