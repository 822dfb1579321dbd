// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/paper_job.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace quarterstep
{

const PaperSize* sizeNamed(const std::string& word)
{
    static constexpr std::array<std::pair<const char*, PaperSize>, 6> sizes{{{"a4", PaperSize::a4},
                                                                             {"a5", PaperSize::a5},
                                                                             {"a6", PaperSize::a6},
                                                                             {"roll-80", PaperSize::roll80},
                                                                             {"roll-58", PaperSize::roll58},
                                                                             {"label", PaperSize::label}}};
    const auto* found =
        std::find_if(sizes.begin(), sizes.end(), [&](const auto& each) { return word == each.first; });
    return found == sizes.end() ? nullptr : &found->second;
}

PaperSize usualSize(PaperKind kind)
{
    switch (kind) {
    case PaperKind::note:
    case PaperKind::collection:
    case PaperKind::guardianNote:
    case PaperKind::teacherNote:
        return PaperSize::a6;
    case PaperKind::laboratoryOrder:
    case PaperKind::letter:
        return PaperSize::a5;
    default:
        return PaperSize::a4;
    }
}

} // namespace quarterstep
