// SPDX-License-Identifier: GPL-3.0-or-later
// The only place that knows the bar code library.
#include "app/paper/render/bar_code.hpp"

#include "core/fitting/line_code.hpp"

#include <zint.h>

#include <algorithm>
#include <memory>

namespace quarterstep
{
namespace
{

constexpr int quietCode128 = 10; ///< modules, ISO/IEC 15417
constexpr int quietEan = 11;     ///< modules on the left, the wider side, ISO/IEC 15420

struct Symbol {
    zint_symbol* raw = ZBarcode_Create();
    Symbol() = default;
    Symbol(const Symbol&) = delete;
    Symbol& operator=(const Symbol&) = delete;
    ~Symbol() { ZBarcode_Delete(raw); }
};

bool plainAscii(const std::string& text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c <= '~'; });
}

} // namespace

BarCode barCodeOf(const std::string& text)
{
    BarCode code;
    const Symbol symbol;
    if (text.empty() || !plainAscii(text) || symbol.raw == nullptr)
        return code;
    const bool digits = text.size() == 13 && codeDigits(text) == text;
    if (digits && !parseLineCode(text))
        return code;
    symbol.raw->symbology = digits ? BARCODE_EANX : BARCODE_CODE128;
    std::vector<unsigned char> bytes(text.begin(), text.end());
    if (ZBarcode_Encode(symbol.raw, bytes.data(), static_cast<int>(bytes.size())) >= ZINT_ERROR)
        return code;
    code.quietModules = digits ? quietEan : quietCode128;
    for (int at = 0; at < symbol.raw->width;
         ++at) // one row; eight modules a byte, the first in the lowest bit
        code.modules.push_back((symbol.raw->encoded_data[0][at >> 3] >> (at & 7) & 1) != 0);
    return code;
}

} // namespace quarterstep
