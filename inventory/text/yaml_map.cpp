// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that sees yaml-cpp. The tree is built from the parser's events, so that aliases, anchors,
// tags and depth are refused before anything is made of them. Marks count bytes from 0 in the text without
// its mark.
#include "inventory/text/yaml_map.hpp"

#include <sstream>
#include <yaml-cpp/anchor.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/yaml.h>

namespace quarterstep
{

namespace
{

/// Ends the parse; the finding is already told.
struct Stop {
};

std::size_t offsetOf(const YAML::Mark& mark)
{
    return mark.pos < 0 ? 0U : static_cast<std::size_t>(mark.pos);
}

class TreeBuilder : public YAML::EventHandler
{
  public:
    explicit TreeBuilder(YamlDocument& document) : document_(document) {}

    [[nodiscard]] YamlValue takeRoot() { return std::move(root_); }
    [[nodiscard]] bool refused() const { return refused_; }

    void OnDocumentStart(const YAML::Mark& mark) override
    {
        if (++documents_ < 2)
            return;
        refuse(mark, "yaml-two-documents",
               {QS_SAY("core", "a second document begins here; keep one document in the file"), {}});
        throw Stop{};
    }
    void OnDocumentEnd() override {}

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override
    {
        attach(begin(YamlValue::Kind::empty, mark, "?", anchor));
    }
    void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override
    {
        refuse(mark, "yaml-alias",
               {QS_SAY("core", "an alias (*name) is not read here; write the value out"), {}});
        YamlValue value;
        value.begin = offsetOf(mark);
        attach(std::move(value));
    }
    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& text) override
    {
        YamlValue value = begin(YamlValue::Kind::scalar, mark, tag, anchor);
        value.text = text;
        value.plain = tag == "?";
        if (!value.plain && !quoteIsClosed(value.begin))
            refuse(mark, "yaml-quote-open",
                   {QS_SAY("core", "this quote is never closed; close it on the same line"), {}});
        attach(std::move(value));
    }
    void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override
    {
        open(begin(YamlValue::Kind::list, mark, tag, anchor), style);
    }
    void OnSequenceEnd() override { close(); }
    void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override
    {
        open(begin(YamlValue::Kind::map, mark, tag, anchor), style);
    }
    void OnMapEnd() override { close(); }

  private:
    void refuse(const YAML::Mark& mark, const char* code, Sentence sentence)
    {
        YamlValue where;
        where.begin = offsetOf(mark);
        refused_ = true;
        document_.tell(Severity::error, where, code, std::move(sentence));
    }

    YamlValue begin(YamlValue::Kind kind, const YAML::Mark& mark, const std::string& tag,
                    YAML::anchor_t anchor)
    {
        YamlValue value;
        value.kind = kind;
        value.begin = offsetOf(mark);
        const std::string& text = document_.source().text();
        const bool exclamation = value.begin < text.size() && text[value.begin] == '!';
        if (anchor != 0)
            refuse(mark, "yaml-anchor",
                   {QS_SAY("core", "an anchor (&name) is not read here; delete it"), {}});
        if (exclamation || (!tag.empty() && tag != "?" && tag != "!"))
            refuse(mark, "yaml-tag", {QS_SAY("core", "a tag (!name) is not read here; delete it"), {}});
        return value;
    }

    /// The parser takes a quote that runs to the end of the file for a whole value.
    [[nodiscard]] bool quoteIsClosed(std::size_t begin) const
    {
        const std::string& text = document_.source().text();
        const char quote = begin < text.size() ? text[begin] : ' ';
        if (quote != '"' && quote != '\'')
            return true; // a block scalar
        for (std::size_t at = begin + 1; at < text.size(); ++at) {
            if (text[at] == '\\' && quote == '"')
                ++at;
            else if (text[at] == quote && quote == '\'' && at + 1 < text.size() && text[at + 1] == quote)
                ++at;
            else if (text[at] == quote)
                return true;
        }
        return false;
    }

    void open(YamlValue value, YAML::EmitterStyle::value style)
    {
        value.flow = style == YAML::EmitterStyle::Flow;
        if (stack_.size() >= static_cast<std::size_t>(deepestYaml)) {
            YAML::Mark mark;
            mark.pos = static_cast<int>(value.begin);
            refuse(mark, "yaml-depth",
                   {QS_SAY("core", "the nesting is deeper than %1; this is not such a file"),
                    {std::to_string(deepestYaml)}});
            throw Stop{};
        }
        stack_.push_back(std::move(value));
    }

    void close()
    {
        YamlValue value = std::move(stack_.back());
        stack_.pop_back();
        attach(std::move(value));
    }

    void attach(YamlValue value)
    {
        if (stack_.empty()) {
            root_ = std::move(value);
            return;
        }
        YamlValue& parent = stack_.back();
        const bool isKey = parent.kind == YamlValue::Kind::map && parent.keys.size() == parent.items.size();
        if (isKey && value.kind != YamlValue::Kind::scalar) {
            YAML::Mark mark;
            mark.pos = static_cast<int>(value.begin);
            refuse(mark, "yaml-key", {QS_SAY("core", "a key must be a plain word"), {}});
        }
        (isKey ? parent.keys : parent.items).push_back(std::move(value));
    }

    YamlDocument& document_;
    YamlValue root_;
    std::vector<YamlValue> stack_;
    int documents_ = 0;
    bool refused_ = false;
};

} // namespace

YamlDocument::YamlDocument(std::string bytes, const std::string& name)
{
    auto checked = checkText(std::move(bytes), name);
    const bool good = checked.usable();
    source_ = std::move(checked.value);
    findings_ = std::move(checked.findings);
    if (good)
        parse();
}

void YamlDocument::parse()
{
    std::istringstream stream(source_.text());
    TreeBuilder builder(*this);
    YamlValue where;
    try {
        YAML::Parser parser(stream);
        while (parser.HandleNextDocument(builder))
            continue;
    } catch (const Stop&) {
        return;
    } catch (const YAML::Exception& trouble) {
        where.begin = offsetOf(trouble.mark);
        tell(
            Severity::error, where, "yaml-syntax",
            {QS_SAY("core", "this cannot be read as YAML: %1; look for a missing colon, quote or bracket, or "
                            "a tab in the indentation, here or on the line above"),
             {trouble.msg}});
        return;
    }
    root_ = builder.takeRoot();
    if (root_.kind == YamlValue::Kind::empty && !builder.refused())
        tell(Severity::error, where, "yaml-empty", {QS_SAY("core", "the file is empty"), {}});
    readable_ = !builder.refused() && root_.kind != YamlValue::Kind::empty;
}

} // namespace quarterstep
