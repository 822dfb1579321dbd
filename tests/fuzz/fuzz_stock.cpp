// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as stock.yaml: no crash, no hang; what is read can be written back, and only counts and position
// change by that.
#include "inventory/text/stock_file.hpp"

#include "tests/fuzz/checks.hpp"

using namespace quarterstep;
using fuzz::require;

namespace
{

std::string withoutDigitsOfCounts(const StockFile& file)
{
    std::string text = file.bytes;
    for (auto span = file.countSpans.rbegin(); span != file.countSpans.rend(); ++span)
        text.replace(span->begin, span->end - span->begin, "#");
    return text;
}

/// The position of `written` is part of the file from the second writing on, so that spans can be compared.
void checkWriteBack(const StockFile& file)
{
    std::vector<int> same;
    std::vector<int> other;
    for (const auto& line : file.lines) {
        require(line.onHand >= 0, "a count is not negative");
        same.push_back(line.onHand);
        other.push_back(line.onHand == 9 ? 10 : 9);
    }
    const auto first = readStockText(spliceCounts(file, same, 7), "stock.yaml");
    require(first.usable(), "what was written back is read");
    require(first.value.writtenAfter == 7 && first.value.lines.size() == file.lines.size(),
            "with its position and its lines");
    require(first.value.countsHash == countsHash(file.lines), "the hash is that of the counts");
    const auto second = readStockText(spliceCounts(first.value, other, 7), "stock.yaml");
    require(second.usable(), "other counts are read back");
    for (std::size_t i = 0; i < other.size(); ++i)
        require(second.value.lines[i].onHand == other[i] && second.value.lines[i].name == file.lines[i].name,
                "each count at its line");
    const auto third = readStockText(spliceCounts(second.value, same, 7), "stock.yaml");
    require(third.usable() && third.value.bytes == first.value.bytes, "and back again, byte by byte");
    require(withoutDigitsOfCounts(first.value).size() == withoutDigitsOfCounts(second.value).size(),
            "nothing but digits changes");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(data, data + size);
    const auto reading = readStockText(text, "stock.yaml");
    fuzz::checkFindings(reading.findings, fuzz::lineCount(text));
    if (reading.usable())
        checkWriteBack(reading.value);
    return 0;
}
