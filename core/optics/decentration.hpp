// SPDX-License-Identifier: GPL-3.0-or-later
// Prism and decentration both ways: several prisms as one, the decentration that gives a wanted prism, and
// prism at the reading level. The optical centre moved by c gives the prism P = c F, F the power matrix
// (Prentice's rule; Long WF, Am J Optom Physiol Opt 1976;53:27-33). Where F is singular (a plano cylinder, or
// plano) only some prisms can be had.
#pragma once

#include "core/optics/prism.hpp"

#include <vector>

namespace quarterstep
{

/// Prisms lying over one another in one eye, as one: sums of their components (exact; prisms are thin).
[[nodiscard]] EyePrism compounded(const std::vector<EyePrism>& prisms);

/// Where the optical centre is moved to, mm; `in` positive toward the nose, `up` positive up.
struct Decentration {
    double in = 0.0;
    double up = 0.0;
};

/// Prism at the point the centre was moved away from.
[[nodiscard]] EyePrism prismFromDecentration(const PowerMatrix& power, Eye eye, const Decentration& moved);

/// Whether a lens can give a wanted prism by decentration.
struct DecentrationAnswer {
    enum class Kind {
        one,    ///< exactly one decentration gives it
        line,   ///< singular lens: any point of a line gives it; `moved` is the shortest way
        none,   ///< singular lens: it has no power along what is left over; `moved` gives what can be had
        noPower ///< a lens without power gives no prism, however it is moved
    };
    Kind kind = Kind::one;
    Decentration moved;
    EyePrism given;        ///< the prism that `moved` gives
    EyePrism missing;      ///< wanted - given: zero for `one` and `line`
    double distance = 0.0; ///< length of `moved`, mm
};

/// Solves P = c F for c. Singular means a principal power below 0.005 D, which no focimeter tells from zero;
/// the prism of a regular lens is met within 1e-9 prism dioptres. A wanted prism of zero is always met,
/// unmoved.
[[nodiscard]] DecentrationAnswer decentrationFor(const PowerMatrix& power, Eye eye, const EyePrism& wanted);

/// Prism met by the two eyes at the reading level: `below` mm below the optical centres and `nasal` mm nasal
/// of them in each eye (0 when the near centres are used). Sign of the pair as PairPrism.
[[nodiscard]] PairPrism prismAtReadingLevel(const PowerMatrix& right, const PowerMatrix& left, double below,
                                            double nasal);

} // namespace quarterstep
