// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/text/supplier_list.hpp"

#include "inventory/text/stock_line_reader.hpp"
#include "inventory/text/yaml_map.hpp"

#include <algorithm>
#include <map>

namespace quarterstep
{

namespace
{

constexpr const char* formatWords = "quarterstep supplier 1";
constexpr long mostInPack = 10000;

class ListReader
{
  public:
    ListReader(YamlDocument& document, SupplierList& list) : document_(document), list_(list) {}

    void read()
    {
        YamlMap top(document_, document_.root(),
                    {"format", "supplier", "currency", "lines", "assorted packs"});
        if (!top.isMap())
            return;
        const auto* format = top.need("format");
        if (format != nullptr && document_.text(*format).value_or("") != formatWords)
            document_.tell(Severity::error, *format, "format-unknown",
                           {QS_SAY("core", "write format: %1"), {formatWords}});
        list_.supplier = top.text("supplier").value_or("");
        list_.currency = top.text("currency").value_or("");
        if (const auto* lines = top.need("lines"); lines != nullptr && isList(*lines))
            for (const auto& item : lines->items)
                readLine(item);
        if (const auto* packs = top.find("assorted packs"); packs != nullptr && isList(*packs))
            for (const auto& item : packs->items)
                readPack(item);
    }

  private:
    bool isList(const YamlValue& value)
    {
        if (value.kind == YamlValue::Kind::list)
            return true;
        document_.tell(Severity::error, value, "lines-not-a-list",
                       {QS_SAY("core", "this is a list; begin each item with a dash"), {}});
        return false;
    }

    /// Lines and packs share their names, so that an order list is clear.
    void isNew(const std::string& name, const YamlValue& where)
    {
        const auto row = document_.at(where).line;
        const auto [first, fresh] = firstAt_.emplace(name, row);
        if (!fresh && !name.empty())
            document_.tell(
                Severity::error, where, "line-twice",
                {QS_SAY("core", "“%1” stands in the list already, in line %2; keep one of the two"),
                 {shown(name), std::to_string(first->second)}});
    }

    void readLine(const YamlValue& item)
    {
        auto offered = readOfferedLine(document_, item);
        isNew(offered.line.name, item);
        list_.packs.push_back({offered.line.name,
                               {{offered.line.name, offered.pack}},
                               offered.line.costThousandths.value_or(0) * offered.pack,
                               offered.weight * offered.pack,
                               offered.line.position});
        weightOf_[offered.line.name] = offered.weight;
        list_.lines.push_back(std::move(offered.line));
    }

    void readPack(const YamlValue& item)
    {
        YamlMap map(document_, item, {"pack", "holds", "cost", "note"});
        if (!map.isMap())
            return;
        SuppliedPack pack;
        pack.position = document_.at(item);
        (void)map.text("note");
        if (const auto* name = map.need("pack")) {
            pack.name = document_.text(*name).value_or("");
            isNew(pack.name, *name);
        }
        if (const auto* cost = map.need("cost"))
            pack.cost = document_.thousandths(*cost, 0.0, 1e6).value_or(0);
        if (const auto* holds = map.need("holds"))
            readHolds(*holds, pack);
        list_.packs.push_back(std::move(pack));
    }

    void readHolds(const YamlValue& holds, SuppliedPack& pack)
    {
        if (holds.kind != YamlValue::Kind::map) {
            document_.tell(
                Severity::error, holds, "not-a-map",
                {QS_SAY("core", "write the lines of the pack with their pieces, as {N+200-62M: 2}"), {}});
            return;
        }
        for (std::size_t i = 0; i < holds.items.size(); ++i) {
            const auto& name = holds.keys[i].text;
            const auto count = document_.wholeNumber(holds.items[i], 1, mostInPack);
            if (weightOf_.count(name) == 0)
                document_.tell(
                    Severity::error, holds.keys[i], "pack-line",
                    {QS_SAY("core", "the pack holds \"%1\", which is not among the lines of this list"),
                     {shown(name)}});
            else if (count) {
                pack.holds.emplace_back(name, static_cast<int>(*count));
                pack.weight += weightOf_.at(name) * *count;
            }
        }
    }

    YamlDocument& document_;
    SupplierList& list_;
    std::map<std::string, int> firstAt_;
    std::map<std::string, long> weightOf_;
};

} // namespace

Reading<SupplierList> readSupplierText(std::string bytes, const std::string& name)
{
    Reading<SupplierList> reading;
    YamlDocument document(std::move(bytes), name);
    if (document.readable())
        ListReader(document, reading.value).read();
    reading.findings = document.takeFindings();
    return reading;
}

Reading<SupplierList> readSupplierList(const std::string& path)
{
    return readWholeFile(path, readSupplierText);
}

} // namespace quarterstep
