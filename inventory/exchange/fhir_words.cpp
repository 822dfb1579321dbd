// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/fhir_words.hpp"

namespace quarterstep
{

std::string fhirPersonOf(const JsonValue& reference)
{
    if (const auto value = reference.member("identifier").member("value").text(); !value.empty())
        return value;
    const auto text = reference.member("reference").text();
    const auto slash = text.find_last_of('/');
    if (!text.empty())
        return slash == std::string::npos ? text : text.substr(slash + 1);
    return reference.member("display").text();
}

std::string fhirPrescriberOf(const JsonValue& reference)
{
    for (const auto& value : {reference.member("display"), reference.member("reference"),
                              reference.member("identifier").member("value")})
        if (const auto text = value.text(); !text.empty())
            return text;
    return {};
}

std::string fhirColumnOf(const std::string& eye, const std::string& element)
{
    std::string column(fhirColumn);
    if (!eye.empty())
        column += eye + ".";
    for (const char c : element) {
        if (c >= 'A' && c <= 'Z')
            column.append(1, '_').append(1, static_cast<char>(c - 'A' + 'a'));
        else
            column.append(c == '_' ? "__" : std::string(1, c));
    }
    return column;
}

std::string fhirElementOf(std::string_view kept)
{
    std::string element;
    for (std::size_t at = 0; at < kept.size(); ++at) {
        if (kept[at] != '_' || at + 1 == kept.size()) {
            element += kept[at];
            continue;
        }
        const char next = kept[++at];
        element += next >= 'a' && next <= 'z' ? static_cast<char>(next - 'a' + 'A') : next;
    }
    return element;
}

std::string jsonCompact(std::string_view raw)
{
    std::string text;
    bool quoted = false;
    for (std::size_t at = 0; at < raw.size(); ++at) {
        const char c = raw[at];
        if (c == '"')
            quoted = !quoted;
        if (quoted || (c != ' ' && c != '\n' && c != '\r' && c != '\t'))
            text += c;
        if (quoted && c == '\\' && at + 1 < raw.size())
            text += raw[++at];
    }
    return text;
}

} // namespace quarterstep
