// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/bringing/meaning_words.hpp"

#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{

namespace
{
struct Meaning {
    const char* target;
    const char* words;
};

constexpr Meaning meanings[] = {{"-", QT_TRANSLATE_NOOP("BringIn", "kept, not used")},
                                {"person", QT_TRANSLATE_NOOP("BringIn", "Code of the person")},
                                {"right", QT_TRANSLATE_NOOP("BringIn", "Right eye, all in one cell")},
                                {"right sphere", QT_TRANSLATE_NOOP("BringIn", "Right eye: sphere")},
                                {"right cylinder", QT_TRANSLATE_NOOP("BringIn", "Right eye: cylinder")},
                                {"right axis", QT_TRANSLATE_NOOP("BringIn", "Right eye: axis")},
                                {"right prism", QT_TRANSLATE_NOOP("BringIn", "Right eye: prism")},
                                {"right base", QT_TRANSLATE_NOOP("BringIn", "Right eye: base of the prism")},
                                {"left", QT_TRANSLATE_NOOP("BringIn", "Left eye, all in one cell")},
                                {"left sphere", QT_TRANSLATE_NOOP("BringIn", "Left eye: sphere")},
                                {"left cylinder", QT_TRANSLATE_NOOP("BringIn", "Left eye: cylinder")},
                                {"left axis", QT_TRANSLATE_NOOP("BringIn", "Left eye: axis")},
                                {"left prism", QT_TRANSLATE_NOOP("BringIn", "Left eye: prism")},
                                {"left base", QT_TRANSLATE_NOOP("BringIn", "Left eye: base of the prism")},
                                {"age", QT_TRANSLATE_NOOP("BringIn", "Age in years")},
                                {"add", QT_TRANSLATE_NOOP("BringIn", "Addition of both eyes")},
                                {"add_right", QT_TRANSLATE_NOOP("BringIn", "Right eye: addition")},
                                {"add_left", QT_TRANSLATE_NOOP("BringIn", "Left eye: addition")},
                                {"pd_mm", QT_TRANSLATE_NOOP("BringIn", "PD, mm")},
                                {"pd_right_mm", QT_TRANSLATE_NOOP("BringIn", "Right eye: PD, mm")},
                                {"pd_left_mm", QT_TRANSLATE_NOOP("BringIn", "Left eye: PD, mm")},
                                {"near_pd_mm", QT_TRANSLATE_NOOP("BringIn", "Near PD, mm")},
                                {"prescriber", QT_TRANSLATE_NOOP("BringIn", "Prescriber")},
                                {"written_on", QT_TRANSLATE_NOOP("BringIn", "Day it was written")}};
} // namespace

QString meaningWords(const std::string& target)
{
    for (const auto& each : meanings)
        if (target == each.target)
            return QCoreApplication::translate("BringIn", each.words);
    return ltr(target);
}

} // namespace quarterstep
