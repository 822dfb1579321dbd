// SPDX-License-Identifier: GPL-3.0-or-later
// Sphere, cylinder and axis as written. A value is refused wherever it could mean two things.
#include "core/optics/notation_parts.hpp"

#include "core/optics/angle.hpp"

#include <cmath>

namespace quarterstep
{
namespace
{

using Role = PartsReader::Role;

double largest(Role role)
{
    return role == Role::cylinder   ? largestCylinder
           : role == Role::addition ? largestAddition
                                    : largestSphere;
}

/// The trade drops the last digit of an eighth: .12, .37, .62, .87 stand for .125, .375, .625, .875.
double withEighth(const WrittenNumber& number)
{
    if (number.decimals != 2)
        return number.value;
    const long hundredths = std::lround(number.value * 100.0) % 100;
    const bool eighth = hundredths == 12 || hundredths == 37 || hundredths == 62 || hundredths == 87;
    return eighth ? number.value + 0.005 : number.value;
}

/// Whether a whole number can be one whose decimal point was dropped: 075, 25 (0.25 or 25.00), 50 and more.
bool pointMayBeDropped(const WrittenNumber& number, double most)
{
    const bool leadingZero = number.digits.size() > 1 && number.digits.front() == '0';
    return !number.point &&
           (leadingZero || number.value == 25.0 || number.value >= 50.0 || number.value > most);
}

} // namespace

bool PartsReader::refuse(std::string code, Sentence sentence, int offset)
{
    if (!complaint)
        complaint = Complaint{std::move(code), std::move(sentence), offset};
    return false;
}

bool PartsReader::takeZeroWord()
{
    return head.takeWord("plano") || head.takeWord("plan") || head.takeWord("pl");
}

/// A dash alone in its place, as in "-2.25 / - / -".
bool PartsReader::takeEmptySlot()
{
    const auto start = head.mark();
    if (head.take(U'-')) {
        head.skipBlanks();
        if (head.atEnd() || head.peek() == U'/')
            return true;
    }
    head.goBack(start);
    return false;
}

std::optional<double> PartsReader::checkedSize(const WrittenNumber& number, Role role, int start)
{
    const double most = largest(role);
    const std::string written = quoted(head.between(start, head.offset()));
    const bool minus = head.holds(U'-', start, number.offset);
    if (pointMayBeDropped(number, most)) {
        const std::string small = writeDioptres(Dioptres{(minus ? -1.0 : 1.0) * number.value / 100.0});
        const std::string whole = writeDioptres(Dioptres{(minus ? -1.0 : 1.0) * number.value});
        if (number.value <= most)
            refuse("decimal-point",
                   {QS_SAY("core", "%1 has no decimal point; write %2 or %3"), {written, small, whole}},
                   number.offset);
        else
            refuse("decimal-point", {QS_SAY("core", "%1 has no decimal point; write %2"), {written, small}},
                   number.offset);
        return std::nullopt;
    }
    if (number.value > most) {
        refuse("power-range",
               {QS_SAY("core", "%1 is beyond %2 D; check the figure and write it again"),
                {written, writeShort(most, 0)}},
               number.offset);
        return std::nullopt;
    }
    return withEighth(number);
}

std::optional<Dioptres> PartsReader::takeDioptres(Role role)
{
    if (takeZeroWord())
        return Dioptres{};
    head.skipBlanks();
    const int start = head.offset();
    const auto before = head.mark();
    const bool minus = head.take(U'-');
    const bool plus = !minus && head.take(U'+');
    const auto number = head.takeNumber();
    if (!number) {
        head.goBack(before);
        refuse("number",
               {QS_SAY("core", "no power is read at “%1”; write it as +2.00, -0.75 or 0.00"), {head.rest()}},
               start);
        return std::nullopt;
    }
    const auto size = checkedSize(*number, role, start);
    if (!size)
        return std::nullopt;
    if (*size == 0.0)
        return Dioptres{};
    if (!minus && !plus && role != Role::addition) {
        const bool cylinder = role == Role::cylinder;
        refuse(cylinder ? "cylinder-sign" : "power-sign",
               {cylinder ? QS_SAY("core", "cylinder %1 has no sign; write +%1 or -%1")
                         : QS_SAY("core", "%1 has no sign; write +%1 or -%1"),
                {number->digits}},
               start);
        return std::nullopt;
    }
    if (minus && role == Role::addition) {
        refuse("addition-sign",
               {QS_SAY("core", "addition -%1 is negative; an addition is plus: check it"), {number->digits}},
               start);
        return std::nullopt;
    }
    return Dioptres{minus ? -*size : *size};
}

bool PartsReader::refuseAxisWithoutCylinder()
{
    const auto start = head.mark();
    (void)head.take(U'/');
    head.skipBlanks();
    const int offset = head.offset();
    const bool marked = head.take(U'x') || head.take(U'@') || head.takeWord("axis") || head.takeWord("ax");
    const auto number = head.takeNumber();
    head.skipBlanks();
    const bool bare =
        number && !number->point && number->value >= 1.0 && number->value <= 180.0 && head.atEnd();
    if (number && (marked || bare)) {
        refuse(
            "cylinder-missing",
            {QS_SAY(
                 "core",
                 "axis %1 stands without a cylinder; write sphere, cylinder and axis, as -1.00 -0.50 x %1"),
             {number->digits}},
            offset);
        return true;
    }
    head.goBack(start);
    return false;
}

/// A cylinder follows when a sign, a number or a word for it comes next, and that number is not a prism.
bool PartsReader::cylinderNext()
{
    const auto start = head.mark();
    head.skipBlanks();
    const bool next = head.peek() == U'-' || head.peek() == U'+' || head.digitNext() || head.peek() == U'.';
    const bool prism = next && prismNext();
    head.goBack(start);
    return next && !prism;
}

std::optional<Dioptres> PartsReader::takeSphere()
{
    if (!head.takeWord("sphere"))
        (void)head.takeWord("sph");
    const auto start = head.mark();
    if (takeEmptySlot() && head.take(U'/') && !takeEmptySlot()) {
        head.goBack(start); // "- / -0.75 / 27": no sphere
        (void)takeEmptySlot();
        return Dioptres{};
    }
    head.goBack(start);
    const auto sphere = takeDioptres(Role::sphere);
    if (sphere && !head.takeWord("dsph") && !head.takeWord("ds") && !head.takeWord("sph"))
        (void)head.takeWord("d");
    return sphere;
}

std::optional<Dioptres> PartsReader::takeCylinder()
{
    const auto cylinder = takeDioptres(Role::cylinder);
    if (cylinder && !head.takeWord("dcyl") && !head.takeWord("dc") && !head.takeWord("cyl"))
        (void)head.takeWord("d");
    return cylinder;
}

/// What stands between sphere and cylinder. True when the cylinder's place holds a dash: there is none.
bool PartsReader::takeEmptyCylinder()
{
    const auto start = head.mark();
    const bool separator = head.take(U'/') || head.take(U',') || head.take(U';');
    if (separator && takeEmptySlot()) {
        if (head.take(U'/'))
            (void)takeEmptySlot();
        return true;
    }
    if (!head.takeWord("cylinder") && !head.takeWord("cyl") && separator && !cylinderNext())
        head.goBack(start); // the separator belongs to what follows, an addition or a prism
    return false;
}

std::optional<AxisDegrees> PartsReader::takeAxis()
{
    const auto start = head.mark();
    bool marked = head.take(U'x') || head.take(U'@') || head.take(U'/');
    marked = head.takeWord("axis") || head.takeWord("ax") || marked;
    if (marked && takeEmptySlot())
        return std::nullopt;
    if (prismNext()) {
        head.goBack(start);
        return std::nullopt;
    }
    head.skipBlanks();
    const int offset = head.offset();
    const bool minus = marked && head.take(U'-');
    const auto number = head.takeNumber();
    if (!number) {
        head.goBack(start);
        return std::nullopt;
    }
    if (minus || number->value > 180.0) {
        const std::string written = (minus ? "-" : "") + number->digits;
        const auto same = foldAxis(minus ? -number->value : number->value);
        refuse("axis-range",
               {QS_SAY("core", "axis %1 is outside 1..180 degrees; the same meridian would be %2: check and "
                               "write it again"),
                {written, writeShort(same.value(), 1)}},
               offset);
        return std::nullopt;
    }
    if (!head.take(U'\u00B0') && !head.takeWord("degrees"))
        (void)head.takeWord("deg");
    return foldAxis(number->value);
}

std::optional<SpheroCylinder> PartsReader::takePower(bool axisNeeded, bool& axisGiven)
{
    axisGiven = true;
    const auto sphere = takeSphere();
    if (!sphere)
        return std::nullopt;
    const SpheroCylinder alone{*sphere, Dioptres{}, AxisDegrees{180.0}};
    if (refuseAxisWithoutCylinder())
        return std::nullopt;
    if (takeEmptyCylinder() || !cylinderNext())
        return alone;
    head.skipBlanks();
    const int cylinderOffset = head.offset();
    const auto cylinder = takeCylinder();
    const auto axis = cylinder ? takeAxis() : std::nullopt;
    if (complaint)
        return std::nullopt;
    if (*cylinder == Dioptres{})
        return alone;
    if (!axis && axisNeeded) {
        refuse("axis-missing",
               {QS_SAY("core", "cylinder %1 has no axis; write it with its axis, as %1 x 90"),
                {writeDioptres(*cylinder)}},
               cylinderOffset);
        return std::nullopt;
    }
    axisGiven = axis.has_value();
    return SpheroCylinder{*sphere, *cylinder, axis.value_or(AxisDegrees{180.0})};
}

bool PartsReader::finish()
{
    head.skipBlanks();
    if (complaint)
        return false;
    if (head.atEnd())
        return true;
    return refuse(
        "text-left-over",
        {QS_SAY("core", "“%1” is not part of a prescription that can be read; write it as -1.25 -0.50 x 90"),
         {head.rest()}},
        head.offset());
}

} // namespace quarterstep
