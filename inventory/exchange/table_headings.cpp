// SPDX-License-Identifier: GPL-3.0-or-later
// Headings are read word by word; one word that is not known, as in "old OD sph", and the heading is not
// understood: the power of another pair is no prescription.
#include "inventory/exchange/table_map.hpp"

#include "core/joined.hpp"
#include "inventory/text/source_text.hpp"
#include "inventory/text/table_columns.hpp"

#include <algorithm>
#include <array>

namespace quarterstep
{

namespace
{

struct Word {
    const char* word;
    const char* means;
};

constexpr std::array sideWords{Word{"right", "right"}, Word{"od", "right"},  Word{"re", "right"},
                               Word{"rt", "right"},    Word{"r", "right"},   Word{"left", "left"},
                               Word{"os", "left"},     Word{"le", "left"},   Word{"lt", "left"},
                               Word{"l", "left"},      Word{"both", "both"}, Word{"ou", "both"}};
constexpr std::array partWords{
    Word{"sphere", "sphere"}, Word{"sph", "sphere"},      Word{"cylinder", "cylinder"},
    Word{"cyl", "cylinder"},  Word{"axis", "axis"},       Word{"ax", "axis"},
    Word{"prism", "prism"},   Word{"base", "base"},       Word{"addition", "add"},
    Word{"add", "add"},       Word{"pd", "pd"},           Word{"ipd", "pd"},
    Word{"mpd", "pd"},        Word{"npd", "near pd"},     Word{"dpd", "pd"},
    Word{"rx", "eye"},        Word{"prescription", "eye"}};
/// One letter means a part only as a word of its own.
constexpr std::array letterWords{Word{"s", "sphere"}, Word{"c", "cylinder"}, Word{"x", "axis"}};
constexpr std::array fillers{"eye",      "power", "d",   "dpt",     "diopters",
                             "dioptres", "mm",    "deg", "degrees", "value"};
constexpr std::array wholeHeadings{Word{"id", "person"},
                                   Word{"code", "person"},
                                   Word{"patient", "person"},
                                   Word{"patient id", "person"},
                                   Word{"person id", "person"},
                                   Word{"person code", "person"},
                                   Word{"camp code", "person"},
                                   Word{"patient code", "person"},
                                   Word{"mrn", "person"},
                                   Word{"date", "written_on"},
                                   Word{"rx date", "written_on"},
                                   Word{"date written", "written_on"},
                                   Word{"exam date", "written_on"},
                                   Word{"gender", "sex"},
                                   Word{"optometrist", "prescriber"},
                                   Word{"prescribed by", "prescriber"},
                                   Word{"vertex", "vertex_mm"},
                                   Word{"bvd", "vertex_mm"},
                                   Word{"pupillary distance", "pd_mm"}};

template <class Words>
std::string meaningOf(const std::string& word, const Words& words)
{
    for (const auto& each : words)
        if (word == each.word)
            return each.means;
    return {};
}

std::vector<std::string> wordsOf(const std::string& heading)
{
    std::vector<std::string> words;
    bool inside = false;
    for (const char c : lowered(heading)) {
        const bool part =
            (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (part && !inside)
            words.emplace_back();
        if (part)
            words.back() += c;
        inside = part;
    }
    return words;
}

/// What the words of a heading add up to.
struct Meaning {
    std::string side;
    std::string part;
    bool near = false;
    bool well = true;

    void addSide(const std::string& word)
    {
        well = well && side.empty();
        side = word;
    }
    void addPart(const std::string& word)
    {
        well = well && part.empty();
        part = word;
    }

    void add(const std::string& word)
    {
        if (const auto means = meaningOf(word, sideWords); !means.empty())
            addSide(means);
        else if (const auto part_ = meaningOf(word, partWords); !part_.empty())
            addPart(part_);
        else if (const auto letter = meaningOf(word, letterWords); !letter.empty())
            addPart(letter);
        else if (word == "near")
            near = true;
        else if (!isFiller(word) && !takeTogether(word))
            well = false;
    }

    static bool isFiller(const std::string& word)
    {
        return word == "distance" || word == "far" || word == "pupillary" ||
               std::find(fillers.begin(), fillers.end(), word) != fillers.end();
    }

    /// "odsph", "rcyl", "sphod": a side and a part written as one word.
    bool takeTogether(const std::string& word)
    {
        for (const auto& each : sideWords) {
            const std::string name = each.word;
            if (word.size() <= name.size())
                continue;
            const bool before = word.compare(0, name.size(), name) == 0;
            const bool behind = word.compare(word.size() - name.size(), name.size(), name) == 0;
            for (const auto& rest : {before ? word.substr(name.size()) : std::string(),
                                     behind ? word.substr(0, word.size() - name.size()) : std::string()})
                if (const auto means = meaningOf(rest, partWords); !means.empty() && means != "eye") {
                    addSide(each.means);
                    addPart(means);
                    return true;
                }
        }
        return false;
    }

    [[nodiscard]] std::string target() const
    {
        const bool oneEye = side == "right" || side == "left";
        if (!well || (near && part != "pd" && part != "add" && part != "near pd"))
            return {};
        if (part == "add")
            return oneEye ? "add_" + side : "add";
        if (part == "near pd" || (part == "pd" && near))
            return oneEye ? "" : "near_pd_mm";
        if (part == "pd")
            return oneEye ? "pd_" + side + "_mm" : "pd_mm";
        if (!oneEye)
            return {};
        return part.empty() || part == "eye" ? side : side + " " + part;
    }
};

} // namespace

std::string targetOfHeading(const std::string& heading)
{
    const auto words = wordsOf(heading);
    if (words.empty())
        return {};
    if (const auto column = joined(words, "_"); columnNamed(column) != nullptr)
        return column;
    if (const auto whole = meaningOf(joined(words, " "), wholeHeadings); !whole.empty())
        return whole;
    Meaning meaning;
    for (const auto& word : words)
        meaning.add(word);
    return meaning.target();
}

} // namespace quarterstep
