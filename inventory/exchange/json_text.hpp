// SPDX-License-Identifier: GPL-3.0-or-later
// JSON (RFC 8259) with the place of every value and numbers as written. A name that stands twice in one
// object, a lone surrogate and more than 64 levels are refused: readers that let them pass do so in silence.
#pragma once

#include "inventory/text/source_text.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace quarterstep
{

enum class JsonKind : std::uint8_t { nothing, null, boolean, number, text, array, object };

class JsonDocument;

/// A value inside a document, or nothing. As long as the document and its source live.
class JsonValue
{
  public:
    JsonValue() = default;
    JsonValue(const JsonDocument* document, std::uint32_t node) : document_(document), node_(node) {}

    [[nodiscard]] explicit operator bool() const { return document_ != nullptr; }
    [[nodiscard]] JsonKind kind() const;
    /// Member of an object by name; nothing when there is none, or this is no object.
    [[nodiscard]] JsonValue member(std::string_view name) const;
    /// Items of an array or members of an object, in their order; empty for anything else.
    [[nodiscard]] std::vector<JsonValue> children() const;
    /// Name of this member of an object.
    [[nodiscard]] std::string name() const;
    /// Content of a text; anything else as written; "" for nothing.
    [[nodiscard]] std::string text() const;
    /// The bytes of the value in its source.
    [[nodiscard]] std::string_view raw() const;
    [[nodiscard]] Position place() const;

  private:
    const JsonDocument* document_ = nullptr;
    std::uint32_t node_ = 0;
};

class JsonDocument
{
  public:
    /// One value between two offsets of the source. Errors: json-syntax, json-name-twice, json-too-deep,
    /// json-surrogate.
    [[nodiscard]] static Reading<JsonDocument> parse(const SourceText& source, std::size_t begin = 0,
                                                     std::size_t end = std::string::npos);
    /// Nothing when the document was not read.
    [[nodiscard]] JsonValue root() const { return nodes_.empty() ? JsonValue{} : JsonValue{this, 0}; }

  private:
    friend class JsonValue;
    friend class JsonParser;
    struct Node {
        JsonKind kind = JsonKind::nothing;
        std::uint32_t begin = 0;
        std::uint32_t end = 0;
        std::uint32_t nameBegin = 0; ///< with its quotes; equal ends: no name
        std::uint32_t nameEnd = 0;
        std::uint32_t firstChild = 0; ///< 0: none
        std::uint32_t next = 0;       ///< 0: last
    };

    const SourceText* source_ = nullptr;
    std::vector<Node> nodes_;
};

/// A text in quotes, with what JSON wants escaped. Bytes that are no UTF-8 are not looked at.
[[nodiscard]] std::string jsonQuoted(std::string_view text);
/// `"name":value` behind a comma unless the object has just begun.
void addJsonMember(std::string& object, std::string_view name, std::string_view value);

} // namespace quarterstep
