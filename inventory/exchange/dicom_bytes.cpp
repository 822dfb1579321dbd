// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/dicom_bytes.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>

namespace quarterstep
{

namespace
{

// Transfer syntaxes (PS3.5, annex A).
constexpr const char* implicitSyntax = "1.2.840.10008.1.2";
constexpr const char* explicitSyntax = "1.2.840.10008.1.2.1";

std::size_t countOf(const std::string& bytes, const std::string& mark)
{
    std::size_t count = 0;
    for (auto at = bytes.find(mark); at != std::string::npos; at = bytes.find(mark, at + mark.size()))
        ++count;
    return count;
}

class Walker
{
  public:
    explicit Walker(const std::string& bytes) : bytes_(bytes) {}

    bool sound()
    {
        std::size_t at = dicomPreamble + 4;
        std::string syntax;
        std::optional<std::size_t>
            told; // where the meta group ends by its own length: the library goes by that
        while (at + 8 <= bytes_.size() && u16(at) == 2) {
            const auto element = u16(at + 2);
            const auto begin = at;
            if (!oneElement(at, bytes_.size(), false, 0))
                return false;
            if (element == 0x0000 && at - begin == 12)
                told = at + u32(begin + 8);
            if (element == 0x0010)
                syntax = bytes_.substr(begin + 8, at - begin - 8);
        }
        if (told && *told != at)
            return false;
        syntax.resize(std::min(syntax.find('\0'), syntax.size()));
        const bool implicit = syntax == implicitSyntax;
        if (!implicit && syntax != explicitSyntax)
            return false;
        return elements(at, bytes_.size(), implicit, 0, false);
    }

  private:
    static constexpr std::uint32_t undefined = 0xFFFFFFFF;
    static constexpr int deepest = 32;

    [[nodiscard]] std::uint32_t byte(std::size_t at) const { return static_cast<unsigned char>(bytes_[at]); }
    [[nodiscard]] std::uint32_t u16(std::size_t at) const { return byte(at) | (byte(at + 1) << 8U); }
    [[nodiscard]] std::uint32_t u32(std::size_t at) const { return u16(at) | (u16(at + 2) << 16U); }
    [[nodiscard]] bool itemAt(std::size_t at) const { return u16(at) == 0xFFFE && u16(at + 2) == 0xE000; }

    /// Elements up to `end`, or up to the mark that ends an item of undefined length.
    bool elements(std::size_t& at, std::size_t end, bool implicit, int depth, bool untilMark)
    {
        while (at < end) {
            if (end - at < 8)
                return false;
            if (u16(at) == 0xFFFE) {
                const bool mark = untilMark && u16(at + 2) == 0xE00D && u32(at + 4) == 0;
                at += 8;
                return mark;
            }
            if (!oneElement(at, end, implicit, depth))
                return false;
        }
        return !untilMark;
    }

    static bool listed(const std::string& words, const std::string& vr)
    {
        const auto found = words.find(vr);
        return found != std::string::npos && found % 3 == 0;
    }

    bool oneElement(std::size_t& at, std::size_t end, bool implicit, int depth)
    {
        if (depth > deepest || end - at < 8)
            return false;
        static const std::string wide = "OB OD OF OL OV OW SQ SV UC UN UR UT UV ";
        static const std::string narrow = "AE AS AT CS DA DS DT FD FL IS LO LT PN SH SL SS ST TM UI UL US ";
        const auto vr = implicit ? std::string() : bytes_.substr(at + 4, 2) + " ";
        const bool isWide = !implicit && listed(wide, vr);
        if (!implicit && !isWide && !listed(narrow, vr))
            return false;
        if (isWide && end - at < 12)
            return false;
        const auto length = implicit ? u32(at + 4) : isWide ? u32(at + 8) : u16(at + 6);
        at += isWide ? 12 : 8;
        if (length == undefined && (implicit || isWide))
            return items(at, end, implicit || vr == "UN ", depth + 1, true);
        if (length > end - at)
            return false;
        const auto behind = at + length;
        const bool sequence = vr == "SQ " || ((implicit || vr == "UN ") && length >= 8 && itemAt(at));
        if (!sequence) {
            at = behind;
            return true;
        }
        return items(at, behind, implicit || vr == "UN ", depth + 1, false) && at == behind;
    }

    bool items(std::size_t& at, std::size_t end, bool implicit, int depth, bool untilMark)
    {
        while (untilMark || at < end) {
            if (end - at < 8)
                return false;
            const auto length = u32(at + 4);
            const bool mark = u16(at) == 0xFFFE && u16(at + 2) == 0xE0DD;
            const bool item = itemAt(at);
            at += 8;
            if (mark)
                return untilMark && length == 0;
            if (!item || (length != undefined && length > end - at))
                return false;
            const auto behind = length == undefined ? end : at + length;
            if (!elements(at, behind, implicit, depth, length == undefined))
                return false;
        }
        return true;
    }

    const std::string& bytes_;
};

} // namespace

bool isDicom(const std::string& bytes)
{
    return bytes.size() > dicomPreamble + 4 && bytes.compare(dicomPreamble, 4, "DICM") == 0;
}

std::size_t dicomItems(const std::string& bytes)
{
    return countOf(bytes, std::string("\xFE\xFF\x00\xE0", 4)) +
           countOf(bytes, std::string("\xFF\xFE\xE0\x00", 4));
}

bool dicomSound(const std::string& bytes)
{
    return Walker(bytes).sound();
}

} // namespace quarterstep
