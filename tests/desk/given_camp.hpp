// SPDX-License-Identifier: GPL-3.0-or-later
// A camp in which something was handed over, and its place Audit, for tests of the audit.
#pragma once

#include "tests/desk/camp_folder.hpp"

namespace quarterstep
{

/// P-1 needs -1.25 twice and is given D-125, and then -4.00 lenses of the box; each entry's id.
struct GivenCamp {
    GivenCamp();
    /// A pair, or both lenses of one power in the frame.
    static std::string give(Camp& camp, const PersonRecord& person, const std::string& line,
                            const std::string& reason);

    /// Changes words that stand beside the chain under their hash, behind the program's back.
    void changeWords() const;

    CampFolder folder;
    std::string good;
    std::string off;
};

/// A window with that camp at the place Audit, the audit done.
struct AuditDesk : GivenCamp {
    AuditDesk();
    [[nodiscard]] QString label(const char* name);

    DeskWindow window;
};

} // namespace quarterstep
