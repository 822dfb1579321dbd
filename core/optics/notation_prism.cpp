// SPDX-License-Identifier: GPL-3.0-or-later
// Prescribed prism and addition as written. Base in words or in degrees of ISO 8429, 0 to 360.
#include "core/optics/notation_parts.hpp"

#include <array>

namespace quarterstep
{
namespace
{

constexpr double largestPrism = 30.0; ///< prism dioptres in one lens

struct BaseWord {
    std::string_view word;
    double in;
    double up;
};

constexpr std::array baseWords{
    BaseWord{"base in", 1, 0},    BaseWord{"base out", -1, 0}, BaseWord{"base up", 0, 1},
    BaseWord{"base down", 0, -1}, BaseWord{"bi", 1, 0},        BaseWord{"bo", -1, 0},
    BaseWord{"bu", 0, 1},         BaseWord{"bd", 0, -1},
};

void takePrismSign(TextReader& head)
{
    if (!head.take(U'\u0394') && !head.takeWord("prism"))
        (void)head.takeWord("pd");
}

} // namespace

/// Looks ahead: a number, perhaps with the sign of the prism dioptre, and a base.
bool PartsReader::prismNext()
{
    const auto start = head.mark();
    const bool word = head.takeWord("prism");
    if (!head.take(U'+'))
        head.take(U'-');
    bool next = head.takeNumber().has_value();
    if (next) {
        const auto afterNumber = head.mark();
        takePrismSign(head);
        next = word || head.mark() != afterNumber || head.takeWord("base");
        for (const auto& base : baseWords)
            next = next || head.takeWord(base.word);
    }
    head.goBack(start);
    return next;
}

bool PartsReader::takeBase(double amount, Eye eye, EyePrism& sum, bool& horizontal, bool& vertical)
{
    head.skipBlanks();
    const int offset = head.offset();
    for (const auto& base : baseWords) {
        if (!head.takeWord(base.word))
            continue;
        bool& taken = base.in != 0.0 ? horizontal : vertical;
        if (taken)
            return refuse(
                "prism-base",
                {QS_SAY("core", "two prisms lie in one direction; write their sum once, as 1.5 base in"), {}},
                offset);
        taken = true;
        sum.in += amount * base.in;
        sum.up += amount * base.up;
        return true;
    }
    if (head.takeWord("base")) {
        const auto degrees = head.takeNumber();
        if (degrees && degrees->value <= 360.0 && !horizontal && !vertical) {
            head.take(U'\u00B0');
            horizontal = vertical = true;
            sum = prismFromBase(amount, degrees->value, eye);
            return true;
        }
    }
    return refuse(
        "prism-base",
        {QS_SAY("core", "the base of the prism is not read; write base in, out, up or down, or base 0..360"),
         {}},
        offset);
}

std::optional<EyePrism> PartsReader::takePrism(Eye eye)
{
    EyePrism sum;
    bool horizontal = false;
    bool vertical = false;
    while (true) {
        const auto start = head.mark();
        if (!head.take(U'/') && !head.take(U',') && !head.take(U'&'))
            (void)head.takeWord("and");
        if (!prismNext()) {
            head.goBack(start);
            break;
        }
        (void)head.takeWord("prism");
        head.skipBlanks();
        const int offset = head.offset();
        const bool minus = head.take(U'-');
        if (!minus)
            head.take(U'+');
        const auto amount = head.takeNumber();
        if (minus || amount->value > largestPrism) {
            refuse("prism-amount",
                   {QS_SAY("core",
                           "prism %1 is not between 0 and %2; write its size and its base, as 2 base in"),
                    {(minus ? "-" : "") + amount->digits, writeShort(largestPrism, 0)}},
                   offset);
            return std::nullopt;
        }
        takePrismSign(head);
        if (!takeBase(amount->value, eye, sum, horizontal, vertical))
            return std::nullopt;
    }
    if (!horizontal && !vertical)
        return std::nullopt;
    return sum;
}

std::optional<Dioptres> PartsReader::takeAddition()
{
    const auto start = head.mark();
    if (!head.take(U'/'))
        head.take(U',');
    if (!head.takeWord("addition") && !head.takeWord("add")) {
        head.goBack(start);
        return std::nullopt;
    }
    head.take(U':');
    const auto addition = takeDioptres(Role::addition);
    if (addition && !head.takeWord("ds"))
        (void)head.takeWord("d");
    return addition;
}

} // namespace quarterstep
