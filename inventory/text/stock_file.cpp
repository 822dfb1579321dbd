// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/stock_file.hpp"

#include "inventory/text/stock_line_reader.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <limits>
#include <unordered_map>

namespace quarterstep
{

namespace
{

constexpr const char* stockFormat = "quarterstep stock 1";
constexpr std::size_t hashDigits = 8;

/// A value that is spliced later: its text must stand in the file as it is read.
ByteSpan plainSpan(YamlDocument& document, const YamlValue& value)
{
    const std::string_view text = document.source().text();
    if (value.plain && text.substr(value.begin, value.text.size()) == value.text)
        return {value.begin, value.begin + value.text.size()};
    document.tell(
        Severity::error, value, "written-not-plain",
        {QS_SAY("core", "write this value without quotes, or delete the whole `written` entry"), {}});
    return {};
}

void readWritten(YamlMap& top, StockFile& file)
{
    const YamlValue* value = top.has("written") ? top.need("written") : nullptr;
    if (!value)
        return;
    YamlDocument& document = top.document();
    YamlMap written(document, *value, {"after", "counts"});
    const YamlValue* after = written.need("after");
    const YamlValue* counts = written.need("counts");
    const auto position =
        after ? document.wholeNumber(*after, 0, std::numeric_limits<std::int64_t>::max()) : std::nullopt;
    if (position) {
        file.writtenAfter = *position;
        file.afterSpan = plainSpan(document, *after);
    }
    if (!counts)
        return;
    const auto isHash = [](const std::string& text) {
        return text.size() == hashDigits && text.find_first_not_of("0123456789abcdef") == std::string::npos;
    };
    if (!isHash(counts->text)) {
        document.tell(
            Severity::error, *counts, "counts-hash",
            {QS_SAY("core", "the value of `counts` is 8 digits of 0-9 and a-f put in by the program; "
                            "delete the whole `written` entry if it was damaged"),
             {}});
        return;
    }
    file.countsHash = counts->text;
    file.hashSpan = plainSpan(document, *counts);
}

void readLines(YamlMap& top, StockFile& file)
{
    const YamlValue* value = top.need("lines");
    if (!value)
        return;
    YamlDocument& document = top.document();
    if (value->kind != YamlValue::Kind::list) {
        document.tell(
            Severity::error, *value, "lines-not-a-list",
            {QS_SAY("core", "`lines` is a list; begin each line with a dash, or write lines: []"), {}});
        return;
    }
    std::unordered_map<std::string, int> firstLine;
    std::unordered_map<std::string, int> firstCode;
    for (const auto& item : value->items) {
        auto read = readStockLine(document, item);
        YamlValue where;
        where.begin = read.nameBegin;
        const int row = document.at(where).line;
        const auto [first, isNew] = firstLine.emplace(read.line.name, row);
        if (!isNew && !read.line.name.empty())
            document.tell(
                Severity::error, where, "line-twice",
                {QS_SAY("core", "the line \"%1\" stands in the file already, in line %2; give this one "
                                "another name or add the counts together"),
                 {shown(read.line.name), std::to_string(first->second)}});
        if (const auto& code = read.line.code; !code.empty())
            if (const auto [coded, newCode] = firstCode.emplace(code, row); !newCode)
                document.tell(Severity::error, where, "code-twice",
                              {QS_SAY("core", "the code %1 stands in the file already, in line %2; each line "
                                              "has a code of its own"),
                               {code, std::to_string(coded->second)}});
        file.lines.push_back(std::move(read.line));
        file.countSpans.push_back(read.count);
    }
}

/// Where `written` goes when it is not there yet.
void findLinesKey(YamlMap& top, StockFile& file)
{
    YamlDocument& document = top.document();
    file.flowFile = top.value().flow;
    for (const auto& key : top.value().keys) {
        if (key.text != "lines")
            continue;
        const std::size_t begin = document.source().lineBegin(key.begin);
        file.linesKeyBegin = file.flowFile ? key.begin : begin;
        const std::string_view text = document.source().text();
        const std::string_view before = text.substr(begin, key.begin - begin);
        const std::size_t last =
            key.begin == 0 ? std::string_view::npos : text.find_last_not_of(" \t\r\n", key.begin - 1);
        const bool explicitKey = last != std::string_view::npos && text[last] == '?';
        if (file.flowFile ? explicitKey : before.find_first_not_of(' ') != std::string_view::npos)
            document.tell(Severity::error, key, "lines-place",
                          {QS_SAY("core", "put `lines:` at the beginning of a line of its own"), {}});
        return;
    }
}

/// Spans count bytes of the file, byte order mark included.
void moveSpans(StockFile& file, std::size_t by)
{
    const auto move = [by](ByteSpan& span) {
        if (span.end == 0)
            return;
        span.begin += by;
        span.end += by;
    };
    std::for_each(file.countSpans.begin(), file.countSpans.end(), move);
    move(file.afterSpan);
    move(file.hashSpan);
    file.linesKeyBegin += by;
}

void readTop(YamlDocument& document, StockFile& file)
{
    YamlMap top(document, document.root(), {"format", "site", "ledger", "written", "lines"});
    if (!top.isMap())
        return;
    const YamlValue* format = top.need("format");
    if (format && format->text != stockFormat)
        document.tell(Severity::error, *format, "format-unknown",
                      {QS_SAY("core", "this is not a stock file of this program; the first key should read "
                                      "format: %1"),
                       {stockFormat}});
    if (const YamlValue* site = top.need("site")) {
        file.site = document.text(*site).value_or("");
        if (site->kind == YamlValue::Kind::scalar && site->text.empty())
            document.tell(Severity::error, *site, "site-empty",
                          {QS_SAY("core", "the site has no name; write the camp or box"), {}});
    }
    file.ledger = top.text("ledger").value_or(file.ledger);
    readWritten(top, file);
    readLines(top, file);
    findLinesKey(top, file);
}

} // namespace

Reading<StockFile> readStockFile(const std::string& path)
{
    return readWholeFile(path, readStockText);
}

Reading<StockFile> readStockText(std::string bytes, const std::string& name)
{
    Reading<StockFile> reading;
    reading.value.bytes = bytes;
    YamlDocument document(std::move(bytes), name);
    if (document.readable()) {
        readTop(document, reading.value);
        moveSpans(reading.value, document.source().markBytes());
    }
    reading.findings = document.takeFindings();
    return reading;
}

} // namespace quarterstep
