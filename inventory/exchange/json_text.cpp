// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/json_text.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr int deepest = 64;
constexpr unsigned firstSurrogate = 0xD800;
constexpr unsigned firstLowSurrogate = 0xDC00;
constexpr unsigned behindSurrogates = 0xE000;

void appendUtf8(std::string& text, unsigned code)
{
    const auto put = [&](unsigned byte) { text += static_cast<char>(byte); };
    if (code < 0x80) {
        put(code);
    } else if (code < 0x800) {
        put(0xC0 | (code >> 6));
        put(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        put(0xE0 | (code >> 12));
        put(0x80 | ((code >> 6) & 0x3F));
        put(0x80 | (code & 0x3F));
    } else {
        put(0xF0 | (code >> 18));
        put(0x80 | ((code >> 12) & 0x3F));
        put(0x80 | ((code >> 6) & 0x3F));
        put(0x80 | (code & 0x3F));
    }
}

/// Value of four hexadecimal digits; empty when they are none.
std::optional<unsigned> fourDigits(std::string_view text)
{
    if (text.size() < 4)
        return std::nullopt;
    unsigned value = 0;
    for (const char c : text.substr(0, 4)) {
        const bool letter = (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
        if (!letter && (c < '0' || c > '9'))
            return std::nullopt;
        value = value * 16 + static_cast<unsigned>(letter ? (c | 0x20) - 'a' + 10 : c - '0');
    }
    return value;
}

/// One of the escapes of a single letter.
char escaped(char letter)
{
    constexpr std::string_view letters = "\"\\/bfnrt";
    constexpr std::string_view values = "\"\\/\b\f\n\r\t";
    const auto at = letters.find(letter);
    return at == std::string_view::npos ? '\0' : values[at];
}

/// Content between two quotes whose escapes were checked.
std::string unquoted(std::string_view quoted)
{
    const auto inside = quoted.substr(1, quoted.size() - 2);
    if (inside.find('\\') == std::string_view::npos)
        return std::string(inside);
    std::string text;
    for (std::size_t at = 0; at < inside.size(); ++at) {
        if (inside[at] != '\\') {
            text += inside[at];
            continue;
        }
        const char letter = inside[++at];
        if (letter != 'u') {
            text += escaped(letter);
            continue;
        }
        unsigned code = fourDigits(inside.substr(at + 1)).value_or(0);
        at += 4;
        if (code >= firstSurrogate && code < firstLowSurrogate) {
            const unsigned low = fourDigits(inside.substr(at + 3)).value_or(0);
            code = 0x10000 + ((code - firstSurrogate) << 10) + (low - firstLowSurrogate);
            at += 6;
        }
        appendUtf8(text, code);
    }
    return text;
}

} // namespace

/// Recursive descent over the bytes; the first error ends it.
class JsonParser
{
  public:
    JsonParser(const SourceText& source, std::size_t begin, std::size_t end)
        : source_(source), text_(source.text()), at_(begin), end_(std::min(end, text_.size()))
    {
        document_.source_ = &source;
    }

    Reading<JsonDocument> parse()
    {
        skipBlanks();
        takeValue(0, 0, 0);
        skipBlanks();
        if (reading_.usable() && at_ < end_)
            refuse(at_, QS_SAY("core", "the value has ended here, “%1” is too much"), shown(rest()));
        if (!reading_.usable())
            document_.nodes_.clear();
        reading_.value = std::move(document_);
        return std::move(reading_);
    }

  private:
    [[nodiscard]] std::string_view rest() const
    {
        return std::string_view(text_).substr(at_, std::min<std::size_t>(end_ - at_, 20));
    }
    [[nodiscard]] char here() const { return at_ < end_ ? text_[at_] : '\0'; }
    [[nodiscard]] bool good() const { return reading_.findings.empty(); }

    void tell(std::size_t where, const char* code, Sentence sentence)
    {
        if (good())
            reading_.findings.push_back({Severity::error, source_.at(where), code, std::move(sentence)});
    }
    void refuse(std::size_t where, const char* words, std::string argument = {})
    {
        tell(where, "json-syntax",
             {words, argument.empty() ? std::vector<std::string>{} : std::vector{std::move(argument)}});
    }

    void skipBlanks()
    {
        while (at_ < end_ &&
               (text_[at_] == ' ' || text_[at_] == '\n' || text_[at_] == '\r' || text_[at_] == '\t'))
            ++at_;
    }

    /// Puts the value at the end of the nodes; its name stands between two offsets.
    void takeValue(int depth, std::size_t nameBegin, std::size_t nameEnd)
    {
        const auto node = document_.nodes_.size();
        document_.nodes_.push_back(
            {JsonKind::nothing, offset(at_), 0, offset(nameBegin), offset(nameEnd), 0, 0});
        const char first = here();
        JsonKind kind = JsonKind::number;
        if (depth > deepest)
            tell(at_, "json-too-deep",
                 {QS_SAY("core", "more than %1 levels lie inside one another"), {std::to_string(deepest)}});
        else if (first == '{' || first == '[')
            kind = takeChildren(depth, node, first == '{');
        else if (first == '"')
            kind = takeText();
        else if (first == '-' || (first >= '0' && first <= '9'))
            takeNumber();
        else
            kind = takeWord();
        document_.nodes_[node].kind = kind;
        document_.nodes_[node].end = offset(at_);
    }

    static std::uint32_t offset(std::size_t at) { return static_cast<std::uint32_t>(at); }

    JsonKind takeChildren(int depth, std::size_t node, bool object)
    {
        const char close = object ? '}' : ']';
        const auto kind = object ? JsonKind::object : JsonKind::array;
        ++at_;
        skipBlanks();
        if (here() == close) {
            ++at_;
            return kind;
        }
        std::vector<std::uint32_t> children;
        while (good()) {
            std::size_t nameBegin = 0;
            std::size_t nameEnd = 0;
            if (object && !takeName(nameBegin, nameEnd))
                break;
            const auto child = offset(document_.nodes_.size());
            (children.empty() ? document_.nodes_[node].firstChild : document_.nodes_[children.back()].next) =
                child;
            children.push_back(child);
            takeValue(depth + 1, nameBegin, nameEnd);
            skipBlanks();
            if (here() == close || !good())
                break;
            if (here() != ',') {
                refuse(at_, object ? QS_SAY("core", "a comma or } belongs here")
                                   : QS_SAY("core", "a comma or ] belongs here"));
                break;
            }
            ++at_;
            skipBlanks();
        }
        if (good())
            ++at_;
        if (object)
            checkNames(children);
        return kind;
    }

    bool takeName(std::size_t& begin, std::size_t& end)
    {
        begin = at_;
        if (here() != '"') {
            refuse(at_, QS_SAY("core", "a name in quotes belongs here"));
            return false;
        }
        takeText();
        end = at_;
        skipBlanks();
        if (good() && here() != ':')
            refuse(at_, QS_SAY("core", "a colon belongs here"));
        if (!good())
            return false;
        ++at_;
        skipBlanks();
        return true;
    }

    void checkNames(const std::vector<std::uint32_t>& children)
    {
        std::vector<std::pair<std::string, std::uint32_t>> names;
        names.reserve(children.size());
        for (const auto child : children) {
            const auto& node = document_.nodes_[child];
            names.emplace_back(
                unquoted(std::string_view(text_).substr(node.nameBegin, node.nameEnd - node.nameBegin)),
                child);
        }
        std::sort(names.begin(), names.end());
        for (std::size_t i = 1; i < names.size() && good(); ++i)
            if (names[i].first == names[i - 1].first)
                tell(document_.nodes_[names[i].second].nameBegin, "json-name-twice",
                     {QS_SAY("core", "“%1” stands twice in one object; keep one"), {shown(names[i].first)}});
    }

    JsonKind takeText()
    {
        const auto quote = at_++;
        while (good()) {
            if (at_ >= end_) {
                refuse(quote, QS_SAY("core", "this quote is never closed"));
            } else if (text_[at_] == '"') {
                ++at_;
                break;
            } else if (static_cast<unsigned char>(text_[at_]) < 0x20) {
                refuse(at_, QS_SAY("core", "a line end or tab stands inside a text; write \\n or \\t"));
            } else if (text_[at_] == '\\') {
                takeEscape();
            } else {
                ++at_;
            }
        }
        return JsonKind::text;
    }

    void takeEscape()
    {
        const auto where = at_++;
        const char letter = here();
        if (letter != 'u' && escaped(letter) == '\0') {
            refuse(where, QS_SAY("core", "“\\%1” is no escape of JSON"), shown(std::string(1, letter)));
            return;
        }
        ++at_;
        if (letter != 'u')
            return;
        const auto code = takeHex();
        if (!code)
            return;
        const bool high = *code >= firstSurrogate && *code < firstLowSurrogate;
        std::optional<unsigned> low;
        if (high && end_ - at_ >= 6 && text_[at_] == '\\' && text_[at_ + 1] == 'u') {
            at_ += 2;
            low = takeHex();
        }
        const bool pair = low && *low >= firstLowSurrogate && *low < behindSurrogates;
        if (*code >= firstSurrogate && *code < behindSurrogates && !pair)
            tell(where, "json-surrogate", {QS_SAY("core", "half of a character stands here alone"), {}});
    }

    std::optional<unsigned> takeHex()
    {
        const auto code =
            fourDigits(std::string_view(text_).substr(at_, std::min<std::size_t>(end_ - at_, 4)));
        if (code)
            at_ += 4;
        else
            refuse(at_, QS_SAY("core", "four hexadecimal digits belong here"));
        return code;
    }

    bool takeDigits()
    {
        const auto begin = at_;
        while (here() >= '0' && here() <= '9')
            ++at_;
        return at_ > begin;
    }

    void takeNumber()
    {
        const auto begin = at_;
        at_ += here() == '-' ? 1 : 0;
        const auto first = at_;
        bool well = takeDigits() && (text_[first] != '0' || at_ == first + 1);
        if (well && here() == '.') {
            ++at_;
            well = takeDigits();
        }
        if (well && (here() == 'e' || here() == 'E')) {
            ++at_;
            at_ += here() == '+' || here() == '-' ? 1 : 0;
            well = takeDigits();
        }
        if (!well)
            refuse(begin, QS_SAY("core", "this is no number of JSON; write it as -1.25 or 0.5"));
    }

    JsonKind takeWord()
    {
        for (const auto& [word, kind] : {std::pair<std::string_view, JsonKind>{"true", JsonKind::boolean},
                                         {"false", JsonKind::boolean},
                                         {"null", JsonKind::null}})
            if (std::string_view(text_).substr(at_, std::min(end_ - at_, word.size())) == word) {
                at_ += word.size();
                return kind;
            }
        if (at_ >= end_)
            refuse(at_, QS_SAY("core", "the text ends where a value belongs"));
        else
            refuse(at_, QS_SAY("core", "“%1” is no value of JSON"), shown(rest()));
        return JsonKind::nothing;
    }

    const SourceText& source_;
    const std::string& text_;
    std::size_t at_;
    std::size_t end_;
    JsonDocument document_;
    Reading<JsonDocument> reading_;
};

Reading<JsonDocument> JsonDocument::parse(const SourceText& source, std::size_t begin, std::size_t end)
{
    return JsonParser(source, begin, end).parse();
}

JsonKind JsonValue::kind() const
{
    return document_ == nullptr ? JsonKind::nothing : document_->nodes_[node_].kind;
}

JsonValue JsonValue::member(std::string_view name) const
{
    if (kind() != JsonKind::object)
        return {};
    const auto& nodes = document_->nodes_;
    for (auto child = nodes[node_].firstChild; child != 0; child = nodes[child].next) {
        const auto quoted =
            std::string_view(document_->source_->text())
                .substr(nodes[child].nameBegin, nodes[child].nameEnd - nodes[child].nameBegin);
        if (quoted.find('\\') == std::string_view::npos ? quoted.substr(1, quoted.size() - 2) == name
                                                        : unquoted(quoted) == name)
            return {document_, child};
    }
    return {};
}

std::vector<JsonValue> JsonValue::children() const
{
    std::vector<JsonValue> found;
    if (document_ == nullptr)
        return found;
    for (auto child = document_->nodes_[node_].firstChild; child != 0; child = document_->nodes_[child].next)
        found.emplace_back(document_, child);
    return found;
}

std::string JsonValue::name() const
{
    if (document_ == nullptr)
        return {};
    const auto& node = document_->nodes_[node_];
    return node.nameEnd == node.nameBegin
               ? std::string()
               : unquoted(std::string_view(document_->source_->text())
                              .substr(node.nameBegin, node.nameEnd - node.nameBegin));
}

std::string JsonValue::text() const
{
    return kind() == JsonKind::text ? unquoted(raw()) : std::string(raw());
}

std::string_view JsonValue::raw() const
{
    if (document_ == nullptr)
        return {};
    const auto& node = document_->nodes_[node_];
    return std::string_view(document_->source_->text()).substr(node.begin, node.end - node.begin);
}

Position JsonValue::place() const
{
    return document_ == nullptr ? Position{} : document_->source_->at(document_->nodes_[node_].begin);
}

std::string jsonQuoted(std::string_view text)
{
    constexpr const char* digits = "0123456789abcdef";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            quoted.append(1, '\\').append(1, c);
        else if (byte < 0x20)
            quoted.append("\\u00").append(1, digits[byte >> 4U]).append(1, digits[byte & 0xFU]);
        else
            quoted += c;
    }
    return quoted + "\"";
}

void addJsonMember(std::string& object, std::string_view name, std::string_view value)
{
    if (object.back() != '{')
        object += ',';
    object.append(jsonQuoted(name)).append(1, ':').append(value);
}

} // namespace quarterstep
