// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/json_text.hpp"

#include "inventory/exchange/json_strings.hpp"

namespace quarterstep
{

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
                                                        : jsonUnquoted(quoted) == name)
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
               : jsonUnquoted(std::string_view(document_->source_->text())
                                  .substr(node.nameBegin, node.nameEnd - node.nameBegin));
}

std::string JsonValue::text() const
{
    return kind() == JsonKind::text ? jsonUnquoted(raw()) : std::string(raw());
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

} // namespace quarterstep
