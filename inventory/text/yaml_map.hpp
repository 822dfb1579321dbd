// SPDX-License-Identifier: GPL-3.0-or-later
// YAML as a tree of plain values with places, and maps with known, required and duplicate keys.
// A small, safe part of YAML: one document, no aliases, anchors or tags, depth 32 at most. Scalars stay text;
// the meaning comes from whoever reads them. Everything found is kept with its place, all in one run.
#pragma once

#include "inventory/text/source_text.hpp"

#include <initializer_list>
#include <optional>
#include <span>

namespace quarterstep
{

/// Deepest nesting read.
inline constexpr int deepestYaml = 32;

/// One value. A map has as many `keys` as `items`.
struct YamlValue {
    enum class Kind { empty, scalar, list, map };
    Kind kind = Kind::empty;
    std::string text;      ///< scalar, as YAML reads it
    bool plain = false;    ///< scalar written without quotes
    bool flow = false;     ///< list or map written with brackets
    std::size_t begin = 0; ///< byte of the text without byte order mark; of a quoted scalar: the quote
    std::vector<YamlValue> keys;
    std::vector<YamlValue> items;
};

/// A document and what was found in it.
class YamlDocument
{
  public:
    /// Checks the bytes and parses. Findings: those of checkText, yaml-syntax, yaml-empty,
    /// yaml-two-documents, yaml-alias, yaml-anchor, yaml-tag, yaml-depth, yaml-key, yaml-quote-open.
    YamlDocument(std::string bytes, const std::string& name);

    /// False when there is no tree to read.
    [[nodiscard]] bool readable() const { return readable_; }
    [[nodiscard]] const YamlValue& root() const { return root_; }
    [[nodiscard]] const SourceText& source() const { return source_; }
    /// Place of a value, or of the character `offset` inside a scalar.
    [[nodiscard]] Position at(const YamlValue& value, int offset = 0) const;

    void tell(Severity severity, const YamlValue& where, std::string code, Sentence sentence, int offset = 0);
    void tell(const YamlValue& where, const Complaint& complaint);
    /// Everything found so far, sorted by place; leaves none behind.
    [[nodiscard]] std::vector<Finding> takeFindings();

    // Scalars; a wrong one is told and comes back empty.
    [[nodiscard]] std::optional<std::string> text(const YamlValue& value);
    [[nodiscard]] std::optional<long> wholeNumber(const YamlValue& value, long least, long most);
    [[nodiscard]] std::optional<double> number(const YamlValue& value, double least, double most);
    [[nodiscard]] std::optional<long> thousandths(const YamlValue& value, double least, double most);
    [[nodiscard]] std::optional<bool> yesNo(const YamlValue& value);
    /// One of the words; its index.
    [[nodiscard]] std::optional<std::size_t> word(const YamlValue& value,
                                                  std::initializer_list<const char*> words);

  private:
    void parse();

    SourceText source_;
    YamlValue root_;
    std::vector<Finding> findings_;
    bool readable_ = false;
};

/// A map seen through the keys it may have. Unknown keys (unknown-key, with the nearest known one), keys
/// written twice (key-twice) and values that are no map (not-a-map) are told on construction.
class YamlMap
{
  public:
    YamlMap(YamlDocument& document, const YamlValue& value, std::initializer_list<const char*> known);
    YamlMap(YamlDocument& document, const YamlValue& value, std::span<const char* const> known);

    [[nodiscard]] bool isMap() const { return value_.kind == YamlValue::Kind::map; }
    /// Whether the key is written, with a value or without.
    [[nodiscard]] bool has(const char* key) const { return indexOf(key).has_value(); }
    /// The value of a key, null when absent or empty.
    [[nodiscard]] const YamlValue* find(const char* key) const;
    /// As find, but absence is told (key-missing) at the map, an empty value (value-missing) at the key.
    [[nodiscard]] const YamlValue* need(const char* key);

    // Optional scalars by key: absent or wrong gives empty; wrong is told.
    [[nodiscard]] std::optional<std::string> text(const char* key);
    [[nodiscard]] std::optional<long> wholeNumber(const char* key, long least, long most);
    [[nodiscard]] std::optional<double> number(const char* key, double least, double most);
    [[nodiscard]] std::optional<bool> yesNo(const char* key);
    [[nodiscard]] std::optional<std::size_t> word(const char* key, std::initializer_list<const char*> words);

    [[nodiscard]] YamlDocument& document() { return document_; }
    [[nodiscard]] const YamlValue& value() const { return value_; }

  private:
    [[nodiscard]] std::optional<std::size_t> indexOf(const char* key) const;
    void checkKeys(std::span<const char* const> known);

    YamlDocument& document_;
    const YamlValue& value_;
};

/// The word nearest to `word` by edits (at most two, and fewer than half its letters), or empty.
[[nodiscard]] std::string nearestWord(const std::string& word, std::span<const char* const> words);
/// "a, b, c".
[[nodiscard]] std::string listed(std::span<const char* const> words);

} // namespace quarterstep
