// SPDX-License-Identifier: GPL-3.0-or-later
// New counts into the bytes of stock.yaml: one forward pass over the file as read, nothing patched in place.
#include "inventory/text/stock_file.hpp"

#include <QCryptographicHash>
#include <algorithm>
#include <cassert>

namespace quarterstep
{

namespace
{

struct Replacement {
    ByteSpan span;
    std::string text;
};

/// The line ending used where `written` goes in, or of the file's first line.
std::string lineEnding(const StockFile& file)
{
    std::size_t end = file.bytes.find('\n', file.linesKeyBegin);
    if (end == std::string::npos)
        end = file.bytes.find('\n');
    return end != std::string::npos && end > 0 && file.bytes[end - 1] == '\r' ? "\r\n" : "\n";
}

Replacement insertedWritten(const StockFile& file, const std::string& after, const std::string& hash)
{
    const std::string entry = "written: {after: " + after + ", counts: " + hash + "}";
    const ByteSpan place{file.linesKeyBegin, file.linesKeyBegin};
    if (file.flowFile)
        return {place, entry + ", "};
    const std::size_t key = file.bytes.find_first_not_of(' ', file.linesKeyBegin);
    return {place, std::string(key - file.linesKeyBegin, ' ') + entry + lineEnding(file)};
}

std::string hashOf(const std::vector<StockLine>& lines, const std::vector<int>& counts)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (std::size_t i = 0; i < lines.size(); ++i)
        hash.addData(QByteArray::fromStdString(lines[i].name + "\t" + std::to_string(counts[i]) + "\n"));
    constexpr int digits = 8;
    return hash.result().toHex().left(digits).toStdString();
}

} // namespace

std::string countsHash(const std::vector<StockLine>& lines)
{
    std::vector<int> counts;
    counts.reserve(lines.size());
    for (const auto& line : lines)
        counts.push_back(line.onHand);
    return hashOf(lines, counts);
}

std::string spliceCounts(const StockFile& file, const std::vector<int>& counts, std::int64_t after)
{
    assert(counts.size() == file.lines.size() && counts.size() == file.countSpans.size() && after >= 0);
    std::vector<Replacement> changes;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] != file.lines[i].onHand)
            changes.push_back({file.countSpans[i], std::to_string(counts[i])});
    const std::string hash = hashOf(file.lines, counts);
    if (file.afterSpan.end == 0) {
        changes.push_back(insertedWritten(file, std::to_string(after), hash));
    } else {
        changes.push_back({file.afterSpan, std::to_string(after)});
        changes.push_back({file.hashSpan, hash});
    }
    std::sort(changes.begin(), changes.end(),
              [](const Replacement& a, const Replacement& b) { return a.span.begin < b.span.begin; });
    std::string result;
    std::size_t copied = 0;
    for (const auto& change : changes) {
        result.append(file.bytes, copied, change.span.begin - copied);
        result += change.text;
        copied = change.span.end;
    }
    return result.append(file.bytes, copied, std::string::npos);
}

} // namespace quarterstep
