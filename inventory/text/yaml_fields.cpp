// SPDX-License-Identifier: GPL-3.0-or-later
// Reading the values of a YAML tree: maps by their known keys, scalars by what they should be.
#include "inventory/text/yaml_map.hpp"

#include "inventory/text/numbers.hpp"

#include <algorithm>
#include <unordered_map>

namespace quarterstep
{

namespace
{

/// Edits (insert, delete, change a letter) between two short words.
std::size_t editsBetween(const std::string& a, const std::string& b)
{
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
        }
    }
    return row[b.size()];
}

/// The way the words are commonly written otherwise: "on_hand", "On hand", "on-hand".
std::string folded(std::string word)
{
    for (char& c : word) {
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
        if (c == '_' || c == '-')
            c = ' ';
    }
    return word;
}

} // namespace

std::string nearestWord(const std::string& word, std::span<const char* const> words)
{
    constexpr std::size_t longest = 40;
    constexpr std::size_t mostEdits = 2;
    if (word.size() > longest)
        return {};
    std::string best;
    std::size_t fewest = mostEdits + 1;
    for (const char* known : words) {
        const std::string candidate = known;
        const std::size_t edits = editsBetween(folded(word), folded(candidate));
        if (edits < fewest && edits * 2 < candidate.size()) {
            fewest = edits;
            best = candidate;
        }
    }
    return best;
}

std::string listed(std::span<const char* const> words)
{
    std::string result;
    for (const char* word : words)
        result += (result.empty() ? "" : ", ") + std::string(word);
    return result;
}

Position YamlDocument::at(const YamlValue& value, int offset) const
{
    std::size_t byte = value.begin;
    const bool quoted = value.kind == YamlValue::Kind::scalar && !value.plain;
    if (offset <= 0)
        return source_.at(byte);
    Position position = source_.at(byte);
    position.column += offset + (quoted ? 1 : 0);
    return position;
}

void YamlDocument::tell(Severity severity, const YamlValue& where, std::string code, Sentence sentence,
                        int offset)
{
    findings_.push_back({severity, at(where, offset), std::move(code), std::move(sentence)});
}

void YamlDocument::tell(const YamlValue& where, const Complaint& complaint)
{
    tell(Severity::error, where, complaint.code, complaint.sentence, complaint.offset);
}

std::vector<Finding> YamlDocument::takeFindings()
{
    sortByPlace(findings_);
    return std::exchange(findings_, {});
}

std::optional<std::string> YamlDocument::text(const YamlValue& value)
{
    if (value.kind != YamlValue::Kind::scalar) {
        tell(Severity::error, value, "not-a-text",
             {QS_SAY("core", "a single value is expected here, not a list or a map"), {}});
        return std::nullopt;
    }
    const bool control = std::any_of(value.text.begin(), value.text.end(), [](char c) {
        return static_cast<unsigned char>(c) < 0x20U || c == 0x7F;
    });
    if (control) {
        tell(Severity::error, value, "text-several-lines",
             {QS_SAY("core", "\"%1\" holds a line break or a control character; write it on one line"),
              {shown(value.text)}});
        return std::nullopt;
    }
    return value.text;
}

std::optional<long> YamlDocument::wholeNumber(const YamlValue& value, long least, long most)
{
    const auto written = text(value);
    if (!written)
        return std::nullopt;
    const auto parsed = parseWholeNumber(*written, least, most);
    if (!parsed) {
        tell(value, parsed.complaint());
        return std::nullopt;
    }
    return parsed.value();
}

std::optional<double> YamlDocument::number(const YamlValue& value, double least, double most)
{
    const auto written = text(value);
    if (!written)
        return std::nullopt;
    const auto parsed = parseNumber(*written, least, most);
    if (!parsed) {
        tell(value, parsed.complaint());
        return std::nullopt;
    }
    return parsed.value();
}

std::optional<long> YamlDocument::thousandths(const YamlValue& value, double least, double most)
{
    const auto written = text(value);
    if (!written)
        return std::nullopt;
    const auto parsed = parseThousandths(*written, least, most);
    if (!parsed) {
        tell(value, parsed.complaint());
        return std::nullopt;
    }
    return parsed.value();
}

std::optional<bool> YamlDocument::yesNo(const YamlValue& value)
{
    const auto index = word(value, {"yes", "no", "true", "false"});
    if (!index)
        return std::nullopt;
    return *index % 2 == 0;
}

std::optional<std::size_t> YamlDocument::word(const YamlValue& value,
                                              std::initializer_list<const char*> words)
{
    const auto written = text(value);
    if (!written)
        return std::nullopt;
    const auto found = std::find(words.begin(), words.end(), *written);
    if (found != words.end())
        return static_cast<std::size_t>(found - words.begin());
    tell(Severity::error, value, "unknown-word",
         {QS_SAY("core", "\"%1\" is not one of the words allowed here; write one of: %2"),
          {shown(*written), listed({words.begin(), words.size()})}});
    return std::nullopt;
}

YamlMap::YamlMap(YamlDocument& document, const YamlValue& value, std::initializer_list<const char*> known)
    : YamlMap(document, value, std::span<const char* const>(known.begin(), known.size()))
{
}

YamlMap::YamlMap(YamlDocument& document, const YamlValue& value, std::span<const char* const> known)
    : document_(document), value_(value)
{
    if (isMap())
        checkKeys(known);
    else
        document_.tell(Severity::error, value_, "not-a-map",
                       {QS_SAY("core", "keys with values are expected here, such as: %1"), {listed(known)}});
}

void YamlMap::checkKeys(std::span<const char* const> known)
{
    std::unordered_map<std::string, std::size_t> first;
    for (std::size_t i = 0; i < value_.keys.size(); ++i) {
        const YamlValue& key = value_.keys[i];
        const auto [place, isNew] = first.emplace(key.text, i);
        if (!isNew) {
            document_.tell(
                Severity::error, key, "key-twice",
                {QS_SAY("core", "\"%1\" is written twice; the first stands in line %2; keep one"),
                 {shown(key.text), std::to_string(document_.at(value_.keys[place->second]).line)}});
            continue;
        }
        if (std::find(known.begin(), known.end(), key.text) != known.end())
            continue;
        const std::string near = nearestWord(key.text, known);
        if (near.empty())
            document_.tell(Severity::error, key, "unknown-key",
                           {QS_SAY("core", "the key \"%1\" is not known here; known are: %2"),
                            {shown(key.text), listed(known)}});
        else
            document_.tell(Severity::error, key, "unknown-key",
                           {QS_SAY("core", "the key \"%1\" is not known here; did you mean \"%2\"?"),
                            {shown(key.text), near}});
    }
}

std::optional<std::size_t> YamlMap::indexOf(const char* key) const
{
    for (std::size_t i = 0; i < value_.keys.size(); ++i)
        if (value_.keys[i].text == key)
            return i;
    return std::nullopt;
}

const YamlValue* YamlMap::find(const char* key) const
{
    const auto index = indexOf(key);
    if (!index || value_.items[*index].kind == YamlValue::Kind::empty)
        return nullptr;
    return &value_.items[*index];
}

const YamlValue* YamlMap::need(const char* key)
{
    if (!isMap())
        return nullptr;
    const auto index = indexOf(key);
    if (!index)
        document_.tell(Severity::error, value_, "key-missing",
                       {QS_SAY("core", "the key \"%1\" is missing here; add it"), {key}});
    else if (value_.items[*index].kind == YamlValue::Kind::empty)
        document_.tell(Severity::error, value_.keys[*index], "value-missing",
                       {QS_SAY("core", "\"%1\" has no value; write one after the colon"), {key}});
    return find(key);
}

std::optional<std::string> YamlMap::text(const char* key)
{
    const YamlValue* value = find(key);
    return value ? document_.text(*value) : std::nullopt;
}

std::optional<long> YamlMap::wholeNumber(const char* key, long least, long most)
{
    const YamlValue* value = find(key);
    return value ? document_.wholeNumber(*value, least, most) : std::nullopt;
}

std::optional<double> YamlMap::number(const char* key, double least, double most)
{
    const YamlValue* value = find(key);
    return value ? document_.number(*value, least, most) : std::nullopt;
}

std::optional<bool> YamlMap::yesNo(const char* key)
{
    const YamlValue* value = find(key);
    return value ? document_.yesNo(*value) : std::nullopt;
}

std::optional<std::size_t> YamlMap::word(const char* key, std::initializer_list<const char*> words)
{
    const YamlValue* value = find(key);
    return value ? document_.word(*value, words) : std::nullopt;
}

} // namespace quarterstep
