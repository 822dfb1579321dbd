// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/mapped_eye.hpp"

#include "core/optics/notation.hpp"
#include "inventory/text/csv_writing.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

/// Begins with a digit or a point after blanks: a number that nobody gave a sign.
bool withoutSign(const std::string& text)
{
    const auto first = text.find_first_not_of(' ');
    if (first == std::string::npos || std::string("0123456789.,").find(text[first]) == std::string::npos)
        return false;
    return text.find_first_of("123456789") != std::string::npos; // zero needs none
}

/// Text put together from cells, which knows where each part came from.
struct Composed {
    std::string text;
    std::vector<std::pair<int, Position>> parts; ///< offset in characters, place of the cell

    void add(const std::string& between, const std::string& part, const Position& place)
    {
        if (part.empty())
            return;
        text += between;
        parts.emplace_back(static_cast<int>(charactersIn(text)), place);
        text += part;
    }
    [[nodiscard]] Position placeOf(int offset, Position otherwise) const
    {
        for (const auto& [begin, place] : parts)
            if (begin <= offset)
                otherwise = place;
        return otherwise;
    }
};

std::string withSign(const std::string& text, Unsigned meaning)
{
    return (meaning == Unsigned::plus ? "+" : meaning == Unsigned::minus ? "-" : "") + text;
}

std::string signedCylinder(const std::string& text, MappedTable& table)
{
    if (!withoutSign(text)) {
        ++(text.find('-') == std::string::npos && text.find("\u2212") == std::string::npos
               ? table.plusCylinders
               : table.minusCylinders);
        return text;
    }
    ++table.unsignedCylinders;
    return withSign(text, table.map.cylinders);
}

/// Cells that say there is no cylinder: empty, a dash, "DS", "sph", zero.
bool isCylinder(const std::string& text)
{
    const auto word = lowered(text);
    return !(word.empty() || word == "-" || word == "--" || word == "ds" || word == "sph" ||
             word.find_first_not_of("0.,+-") == std::string::npos);
}

std::string plainAxis(std::string text)
{
    const auto begin = text.find_first_of("0123456789");
    text = begin == std::string::npos ? text : text.substr(begin);
    const auto zeros = std::min(text.find_first_not_of('0'), text.empty() ? 0 : text.size() - 1);
    return text.substr(zeros); // "090"
}

/// Cells of one eye.
class EyeParts
{
  public:
    EyeParts(const std::string& side, const MappedHeader& header, MappedTable& table, MappedRow& row)
        : side_(side), header_(header), table_(table), row_(row), place_(row.csv->end)
    {
    }

    /// Position of the sphere; the text stays empty when no part is filled.
    Position compose(Composed& all)
    {
        const auto sphere = number("sphere");
        const auto spherePlace = place_;
        all.add("", signedSphere(sphere, table_), place_);
        const auto cylinder = number("cylinder");
        const bool toric = isCylinder(cylinder);
        all.add(" ", toric ? signedCylinder(cylinder, table_) : "", place_);
        const auto axis = part("axis");
        if (toric) // without a cylinder an axis means nothing
            all.add(" x ", plainAxis(axis), place_);
        const auto prism = number("prism");
        all.add(" ", prism.find_first_of("123456789") == std::string::npos ? "" : prism, place_);
        const auto base = part("base");
        const auto word = lowered(base);
        const bool oneWord =
            word == "bi" || word == "bo" || word == "bu" || word == "bd" || word.compare(0, 4, "base") == 0;
        all.add(oneWord ? " " : " base ", prism.empty() ? "" : base, place_);
        return spherePlace;
    }
    [[nodiscard]] bool good() const { return good_; }

  private:
    std::string part(const char* name)
    {
        const auto* cell = header_.cellOf(*row_.csv, side_ + " " + name);
        if (cell == nullptr)
            return {};
        place_ = cell->place;
        return unguarded(cell->text);
    }

    std::string number(const char* name)
    {
        auto text = part(name);
        if (wrongMark(text, table_)) {
            row_.refuse(place_, markComplaint(text));
            good_ = false;
        }
        return text;
    }

    std::string side_;
    const MappedHeader& header_;
    MappedTable& table_;
    MappedRow& row_;
    Position place_;
    bool good_ = true;
};

} // namespace

void MappedRow::refuse(const Position& place, const Complaint& complaint)
{
    row.findings.push_back({Severity::error, place, complaint.code, complaint.sentence});
}

std::string signedSphere(const std::string& text, MappedTable& table)
{
    if (!withoutSign(text))
        return text;
    ++table.unsignedSpheres;
    return withSign(text, table.map.spheres);
}

bool wrongMark(const std::string& text, MappedTable& table)
{
    const auto isDigit = [&](std::size_t at) {
        return at < text.size() && text[at] >= '0' && text[at] <= '9';
    };
    bool comma = false;
    bool point = false;
    for (std::size_t at = 0; at < text.size(); ++at)
        if ((text[at] == ',' || text[at] == '.') && isDigit(at + 1))
            (text[at] == ',' ? comma : point) = true;
    table.commaDecimals = table.commaDecimals || comma;
    return (comma && table.map.decimal == DecimalMark::point) ||
           (point && table.map.decimal == DecimalMark::comma);
}

Complaint markComplaint(const std::string& text)
{
    return {"decimal-mark",
            {QS_SAY("core", "\"%1\" has the other decimal mark than the map says"), {shown(text)}},
            0};
}

void takeEyeParts(Eye eye, const MappedHeader& header, MappedTable& table, MappedRow& row)
{
    const std::string side = eye == Eye::right ? "right" : "left";
    if (!header.has(side + " sphere"))
        return;
    Composed all;
    EyeParts parts(side, header, table, row);
    const auto spherePlace = parts.compose(all);
    if (all.text.empty())
        return;
    row.places[side] = spherePlace;
    if (!parts.good())
        return;
    const auto parsed = parseEye(all.text, eye);
    if (!parsed)
        return row.refuse(all.placeOf(parsed.complaint().offset, spherePlace), parsed.complaint());
    auto& target = row.record.eyes.of(eye);
    target.final = parsed.value();
    target.final.asWritten = eyeWords(parsed.value(), eye); // with points, in one cell
    if (parsed.value().addition)
        target.addition = parsed.value().addition;
}

} // namespace quarterstep
