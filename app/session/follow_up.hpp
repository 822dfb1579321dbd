// SPDX-License-Identifier: GPL-3.0-or-later
// Persons seen again: entered, counted, and who is due. One entry `followed-up` a look.
#pragma once

#include "app/session/audit.hpp"
#include "core/auditing/effective_coverage.hpp"
#include "core/auditing/follow_up.hpp"

namespace quarterstep
{

struct FollowUpLook {
    std::string person;
    Wear wear = Wear::worn;
    PerEye<std::string> acuity; ///< with the pair, as written; may be empty
    std::string note;
    std::string actor;
};
/// The entry of a look. Throws Error person-no-pair (3: nothing stands as handed over to this person).
[[nodiscard]] Entry followUpEntry(const Camp& camp, const FollowUpLook& look);

/// What the ledger says of follow-up: one pass, nothing kept but a row a person.
struct FollowUpFacts {
    std::vector<Wearer> wearers; ///< persons with a pair that stands and was not brought back, by code
    std::vector<SeenAgain> seen;
};
[[nodiscard]] FollowUpFacts followUpFacts(const Camp& camp);

/// How people came, and how they left, by the records of the ledger (app/help/audit.md).
struct CoverageOfCamp {
    int people = 0; ///< with a record in the ledger, served or not
    EffectiveCoverage before;
    EffectiveCoverage after; ///< by acuity with the pair, at the hand-over or when seen again; who does not
                             ///< wear it counts as without
};
[[nodiscard]] CoverageOfCamp coverageOfCamp(const Camp& camp);

} // namespace quarterstep
