// SPDX-License-Identifier: GPL-3.0-or-later
// The labels of an order and what stands behind them.
#include "inventory/exchange/order_file.hpp"

#include <array>

namespace quarterstep
{

std::span<const OrderLabel> orderLabels()
{
    static constexpr std::array labels{
        OrderLabel{"JOB", false, "the order's id, first", "seen"},
        OrderLabel{"DO", false, "eyes to make: B both", "seen"},
        OrderLabel{"CLIENT", false, "the wearer: the camp code", "seen"},
        OrderLabel{"SPH", true, "sphere, D", "seen"},
        OrderLabel{"CYL", true, "cylinder, D, one form for both eyes", "seen"},
        OrderLabel{"AX", true, "axis, degrees (ISO 8429)", "seen"},
        OrderLabel{"ADD", true, "addition, D", "seen"},
        OrderLabel{"PRVM", true, "prescribed prism, its size in prism dioptres", "seen"},
        OrderLabel{"PRVA", true, "its base, degrees 0 to 360 (ISO 8429)", "seen"},
        OrderLabel{"IPD", true, "far centration distance of each eye, mm", "seen"},
        OrderLabel{"NPD", true, "near centration distance of each eye, mm", "seen"},
        OrderLabel{"OCHT", true, "height of the optical centre above the lowest point, mm", "seen"},
        OrderLabel{"SEGHT", true, "height of the segment above the lowest point, mm", "seen"},
        OrderLabel{"LTYPE", true, "kind of lens: SV single vision, BI bifocal", "from memory"},
        OrderLabel{"HBOX", true, "boxed width, mm", "seen"},
        OrderLabel{"VBOX", true, "boxed height, mm", "seen"},
        OrderLabel{"DBL", false, "distance between lenses, mm", "seen"},
        OrderLabel{"BVD", true, "vertex distance of the refraction, mm", "from memory"},
        OrderLabel{"_PURPOSE", false, "distance, near, intermediate or bifocal", "ours"},
        OrderLabel{"_WORKMM", false, "working distance, mm", "ours"},
        OrderLabel{"_RXDATE", false, "date of the prescription", "ours"},
        OrderLabel{"_FRAME", false, "the frame in words", "ours"},
        OrderLabel{"_SIZE", false, "size class of the frame", "ours"},
        OrderLabel{"_FELLOW", false, "the lens made as its fellow: R or L", "ours"},
        OrderLabel{"_PROFILE", false, "profile of the rules and its version", "ours"},
        OrderLabel{"_RULES", false, "hash of all rules", "ours"},
    };
    return labels;
}

} // namespace quarterstep
