// SPDX-License-Identifier: GPL-3.0-or-later
// Own code beside the libraries there are: those of Debian give the place of an error or the tree of values,
// none the place and the written form of every value, which findings (line:column) and kept elements need.
#include "inventory/exchange/json_strings.hpp"
#include "inventory/exchange/json_text.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

constexpr int deepest = 64;

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
        while (good() && takeChild(depth, node, object, children)) {
        }
        if (good())
            ++at_;
        if (object)
            checkNames(children);
        return kind;
    }

    /// False when it was the last, or is none.
    bool takeChild(int depth, std::size_t node, bool object, std::vector<std::uint32_t>& children)
    {
        std::size_t nameBegin = 0;
        std::size_t nameEnd = 0;
        if (object && !takeName(nameBegin, nameEnd))
            return false;
        const auto child = offset(document_.nodes_.size());
        (children.empty() ? document_.nodes_[node].firstChild : document_.nodes_[children.back()].next) =
            child;
        children.push_back(child);
        takeValue(depth + 1, nameBegin, nameEnd);
        skipBlanks();
        if (here() == (object ? '}' : ']') || !good())
            return false;
        if (here() != ',') {
            refuse(at_, object ? QS_SAY("core", "a comma or } belongs here")
                               : QS_SAY("core", "a comma or ] belongs here"));
            return false;
        }
        ++at_;
        skipBlanks();
        return true;
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
                jsonUnquoted(std::string_view(text_).substr(node.nameBegin, node.nameEnd - node.nameBegin)),
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
        if (letter != 'u' && jsonEscaped(letter) == '\0') {
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
            jsonFourDigits(std::string_view(text_).substr(at_, std::min<std::size_t>(end_ - at_, 4)));
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

} // namespace quarterstep
