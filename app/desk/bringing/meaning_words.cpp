// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/bringing/meaning_words.hpp"

#include "app/desk/words.hpp"
#include "app/session/wording.hpp"
#include "inventory/text/record_text.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

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

/// Not to be broken over two lines, unless it is long.
QString inOneLine(QString text)
{
    constexpr int oneLine = 32;
    return text.size() > oneLine ? text : text.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
}

/// What it is and its value, in the direction of its own words, so that no value comes to stand beside other
/// words.
QString partRead(const std::string& name, const std::string& cell)
{
    constexpr char16_t firstStrong = 0x2068; // FSI and PDI, Unicode Standard Annex 9
    constexpr char16_t popped = 0x2069;
    return QChar(firstStrong) + inOneLine(meaningWords(name) + QLatin1Char(' ') + ltr(cell)) + QChar(popped);
}
} // namespace

QString meaningWords(const std::string& target)
{
    for (const auto& each : meanings)
        if (target == each.target)
            return QCoreApplication::translate("BringIn", each.words);
    return ltr(target);
}

QString readingWords(const PersonRecord& person)
{
    const auto cells = recordCells(person);
    const auto cellOf = [&cells](const char* name) {
        const auto found =
            std::find_if(cells.begin(), cells.end(), [name](const auto& each) { return each.first == name; });
        return found == cells.end() ? std::string() : found->second;
    };
    const auto addition = cellOf("add_right") == cellOf("add_left") ? cellOf("add_right") : std::string();
    // Right before left in any language, as it is written on a prescription.
    auto eyes = inOneLine(DeskWords::tr("R %1").arg(ltr(cellOf("right")))) + QStringLiteral("; ") +
                inOneLine(DeskWords::tr("L %1").arg(ltr(cellOf("left"))));
    if (!addition.empty())
        eyes = DeskWords::tr("%1 add %2") // its words are not left behind in the line before
                   .arg(eyes, ltr(addition))
                   .replace(QLatin1Char(' ') + ltr(addition), QChar(QChar::Nbsp) + ltr(addition));
    QStringList parts{ltr(eyes)};
    for (const auto& [name, cell] : cells) {
        const bool told = name == "person" || name == "right" || name == "left" ||
                          (!addition.empty() && (name == "add_right" || name == "add_left"));
        if (!told)
            parts << partRead(name, cell);
    }
    return parts.join(QStringLiteral("; "));
}

} // namespace quarterstep
