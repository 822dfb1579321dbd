// SPDX-License-Identifier: GPL-3.0-or-later
// New counts into the bytes of stock.yaml: one forward pass over the file as read, nothing patched in place.
#include "inventory/text/stock_file.hpp"

#include "inventory/text/yaml_map.hpp"

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

/// A key that goes in directly above `lines:`.
Replacement inserted(const StockFile& file, const std::string& entry)
{
    const ByteSpan place{file.linesKeyBegin, file.linesKeyBegin};
    if (file.flowFile)
        return {place, entry + ", "};
    const std::size_t key = file.bytes.find_first_not_of(' ', file.linesKeyBegin);
    return {place, std::string(key - file.linesKeyBegin, ' ') + entry + lineEnding(file)};
}

std::string hashOf(const std::vector<StockLine>& lines, const std::vector<int>& counts)
{
    std::string rows;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        rows.append(lines[i].name).append(1, '\t');
        rows.append(std::to_string(counts[i])).append(1, '\n');
    }
    const auto hash = QCryptographicHash::hash(QByteArray::fromStdString(rows), QCryptographicHash::Sha256);
    constexpr int digits = 8;
    return hash.toHex().left(digits).toStdString();
}

std::string replaced(const std::string& bytes, std::vector<Replacement> changes)
{
    std::sort(changes.begin(), changes.end(),
              [](const Replacement& a, const Replacement& b) { return a.span.begin < b.span.begin; });
    std::string result;
    std::size_t copied = 0;
    for (const auto& change : changes) {
        result.append(bytes, copied, change.span.begin - copied);
        result += change.text;
        copied = change.span.end;
    }
    return result.append(bytes, copied, std::string::npos);
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

std::string spliceCounts(const StockFile& file, const std::vector<int>& counts, std::int64_t after,
                         const std::vector<int>& hashed)
{
    assert(counts.size() == file.lines.size() && counts.size() == file.countSpans.size() && after >= 0);
    std::vector<Replacement> changes;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] != file.lines[i].onHand)
            changes.push_back({file.countSpans[i], std::to_string(counts[i])});
    const std::string hash = hashOf(file.lines, hashed.empty() ? counts : hashed);
    if (file.afterSpan.end == 0) {
        changes.push_back(
            inserted(file, "written: {after: " + std::to_string(after) + ", counts: " + hash + "}"));
    } else {
        changes.push_back({file.afterSpan, std::to_string(after)});
        changes.push_back({file.hashSpan, hash});
    }
    return replaced(file.bytes, std::move(changes));
}

Reading<std::string> spliceLedger(const StockFile& file, const std::string& name, const std::string& ledger)
{
    YamlDocument document(file.bytes, name);
    const auto& root = document.root();
    const YamlValue* value = nullptr;
    for (std::size_t i = 0; i < root.keys.size(); ++i)
        if (root.keys[i].text == "ledger")
            value = &root.items[i];
    if (value == nullptr)
        return {replaced(file.bytes, {inserted(file, "ledger: " + ledger)}), {}};
    const std::string_view text = document.source().text();
    if (!value->plain || text.substr(value->begin, value->text.size()) != value->text) {
        document.tell(
            Severity::error, *value, "ledger-not-plain",
            {QS_SAY("core", "write this value in one line and without quotes, so that it can be changed"),
             {}});
        return {file.bytes, document.takeFindings()};
    }
    const auto begin = value->begin + document.source().markBytes();
    return {replaced(file.bytes, {{{begin, begin + value->text.size()}, ledger}}), {}};
}

} // namespace quarterstep
