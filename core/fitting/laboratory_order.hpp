// SPDX-License-Identifier: GPL-3.0-or-later
// What a laboratory must be told to make a pair, as a value: powers in the form wanted, centration, heights,
// prism, frame, notes, and what still has to be measured. Words of ISO 13666; bases as in ISO 8429.
#pragma once

#include "core/fitting/need.hpp"

namespace quarterstep
{

enum class CylinderForm { minus, plus, asWritten };

struct OrderedLens {
    EyeState state = EyeState::measured; ///< anything else: a lens without a power of its own
    bool followsFellow = false;          ///< balance and the like: the fellow's power, for looks and weight
    SpheroCylinder power;                ///< in the form wanted; for near the whole near power
    std::optional<Dioptres> addition;    ///< bifocal: near portion less distance portion
    EyePrism prism;                      ///< prescribed
    std::optional<double> centration;    ///< mm from the middle of the nose, at the distance of the purpose
    bool centrationHalved = false;       ///< half of the binocular distance, not measured for this eye
    std::optional<double> height;        ///< mm above the lowest point of the lens
};

struct LaboratoryOrder {
    std::string person;
    Purpose purpose = Purpose::distance;
    CylinderForm form = CylinderForm::minus;
    PerEye<OrderedLens> lenses;
    std::optional<double> vertexMm;  ///< of the refraction; powers are as refracted
    std::optional<double> workingMm; ///< near and intermediate
    std::string frame;               ///< as recorded
    std::string frameSize;           ///< small | medium | large or empty
    std::string prescriber;
    std::string writtenOn;
    std::vector<Sentence> notes;
    std::vector<Sentence> missing; ///< to be measured before the order can go
};

/// The order for one purpose. Needs a need (needFor succeeded). Powers are those of the prescription, not
/// converted to another vertex distance.
[[nodiscard]] LaboratoryOrder laboratoryOrder(const PersonRecord& person, const Need& need,
                                              CylinderForm form);

} // namespace quarterstep
