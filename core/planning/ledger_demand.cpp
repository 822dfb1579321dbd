// SPDX-License-Identifier: GPL-3.0-or-later
// The demand that a ledger shows: who was served, and who went without.
#include "core/planning/demand.hpp"

#include "core/fitting/stock_index.hpp"
#include "core/fitting/words.hpp"
#include "core/optics/notation.hpp"
#include "core/record/judgement.hpp"
#include "core/record/life.hpp"
#include "core/record/stock_figures.hpp"

#include <algorithm>
#include <charconv>
#include <set>

namespace quarterstep
{

namespace
{

constexpr double mostRaised = 4.0; ///< a line that was hardly ever there says little about its demand

/// A whole number of thousandths, as entries hold them; empty when the field is not there.
std::optional<double> thousandthsOf(const Entry& entry, const char* name)
{
    const auto text = fieldNamed(entry, name);
    long value = 0;
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || failed != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return static_cast<double>(value) / 1000.0;
}

/// "R -1.00 L -1.25" into both eyes.
bool readFinal(const std::string& text, PersonRecord& record)
{
    const auto left = text.find(" L ");
    if (text.rfind("R ", 0) != 0 || left == std::string::npos)
        return false;
    const auto rightEye = parseEye(text.substr(2, left - 2), Eye::right);
    const auto leftEye = parseEye(text.substr(left + 3), Eye::left);
    if (!rightEye || !leftEye)
        return false;
    record.eyes.right.final = rightEye.value();
    record.eyes.left.final = leftEye.value();
    return true;
}

/// The rules of the entry tell the age that decided them.
double ageBy(const std::string& profile)
{
    if (profile.rfind("school", 0) == 0)
        return 11.0;
    return profile == "adult-near" ? 54.0 : 35.0;
}

/// Why somebody left without a pair from the box; empty for entries that say nothing of demand.
std::optional<Unmet> causeOf(const Entry& entry)
{
    switch (entry.kind) {
    case EntryKind::handedOver:
        return Unmet::served;
    case EntryKind::ordered:
        return Unmet::ordered;
    case EntryKind::declined:
        return Unmet::declined;
    case EntryKind::incomplete:
        return Unmet::incomplete;
    case EntryKind::notServed: {
        const auto why = fieldNamed(entry, "why");
        return why == "stock_out" ? Unmet::stockOut : why == "held_back" ? Unmet::heldBack : Unmet::notInBox;
    }
    default:
        return std::nullopt;
    }
}

const char* wordOf(Unmet cause)
{
    constexpr const char* words[] = {"served",  "stock_out", "held_back", "not_in_box",
                                     "ordered", "declined",  "incomplete"};
    return words[static_cast<std::size_t>(cause)];
}

/// The same need: whoever went without and was served later is one of the people, not two.
using NeedKey = std::tuple<std::string, std::string, std::string>;

NeedKey keyOf(const Entry& entry)
{
    return {entry.person, fieldNamed(entry, "purpose"), fieldNamed(entry, "final")};
}

class LedgerDemand
{
  public:
    LedgerDemand(std::span<const Entry> entries, const std::string& site, std::span<const StockLine> stock,
                 std::int64_t offsetMs, const RecordReader& recordOf)
        : stock_(stock), recordOf_(recordOf)
    {
        for (std::size_t i = 0; i < stock.size(); ++i)
            byName_.emplace(stock[i].name, i);
        const auto gone = takenBack(entries);
        std::vector<const Entry*> here;
        for (const auto& entry : entries)
            if (entry.site == site && gone.count(entry.id) == 0 && causeOf(entry))
                here.push_back(&entry);
        std::map<NeedKey, std::pair<Unmet, std::size_t>>
            last; // the cause that counts, and whose entry says it
        for (std::size_t i = 0; i < here.size(); ++i)
            settle(*here[i], i, last);
        findRaised(stockFigures(entries, site, stock, {offsetMs, 100}), last);
        for (std::size_t i = 0; i < here.size(); ++i) {
            const auto cause = *causeOf(*here[i]);
            if (cause == Unmet::served || here[i]->person.empty() || last.at(keyOf(*here[i])).second == i)
                add(*here[i], cause);
        }
    }

    Demand demand;

  private:
    /// Served counts before all else, and every hand-over counts; else what was said last.
    static void settle(const Entry& entry, std::size_t place,
                       std::map<NeedKey, std::pair<Unmet, std::size_t>>& last)
    {
        const std::pair now{*causeOf(entry), place};
        const auto [found, isNew] = last.emplace(keyOf(entry), now);
        if (!isNew && (now.first == Unmet::served || found->second.first != Unmet::served))
            found->second = now;
    }

    /// Lines that lay empty on some days. Whoever is known to have gone without for want of stock is among
    /// those who did not get such a line: only the rest is added.
    void findRaised(const StockFigures& figures, const std::map<NeedKey, std::pair<Unmet, std::size_t>>& last)
    {
        double missed = 0.0;
        for (std::size_t i = 0; i < stock_.size(); ++i) {
            const auto& line = figures.lines[i];
            if (line.issued <= 0 || line.daysInStock <= 0 || line.daysInStock >= figures.camp.days)
                continue;
            const double factor =
                std::min(mostRaised, static_cast<double>(figures.camp.days) / line.daysInStock);
            demand.raised[stock_[i].name] = factor;
            missed += (factor - 1.0) * line.issued;
        }
        double known = 0.0;
        for (const auto& [key, one] : last)
            known += one.first == Unmet::stockOut ? 1.0 : 0.0;
        const double rest = missed > 0.0 ? std::max(0.0, 1.0 - known / missed) : 0.0;
        for (auto& [name, factor] : demand.raised)
            factor = 1.0 + (factor - 1.0) * rest;
        std::erase_if(demand.raised, [](const auto& one) { return one.second <= 1.0; });
    }

    void add(const Entry& entry, Unmet cause)
    {
        demand.seen += 1.0;
        if (cause != Unmet::served)
            ++demand.unmet[wordOf(cause)];
        DemandPerson one;
        one.cause = cause;
        if (auto kept = recordOf_ ? recordOf_(entry) : std::nullopt) {
            one.record = std::move(*kept);
            ++demand.records;
        } else if (!readFields(entry, one.record)) {
            ++demand.unread;
            return;
        }
        one.record.person = entry.person;
        one.record.purpose = purposeNamed(fieldNamed(entry, "purpose")).value_or(Purpose::distance);
        if (one.record.prescriber.empty())
            one.record.prescriber = "ledger";
        takeFromPair(entry, one);
        demand.people.push_back(std::move(one));
    }

    /// What the entry itself holds, where the words of the record are gone or were never kept.
    static bool readFields(const Entry& entry, PersonRecord& record)
    {
        record.purpose = purposeNamed(fieldNamed(entry, "purpose")).value_or(Purpose::distance);
        const auto age = fieldNamed(entry, "age_years");
        int years = 0;
        const bool known =
            std::from_chars(age.data(), age.data() + age.size(), years).ec == std::errc() && !age.empty();
        record.age = known ? years : ageBy(fieldNamed(entry, "profile"));
        record.vertexMm = 12.0;
        if (!readFinal(fieldNamed(entry, "final"), record))
            return false;
        if (const auto addition = thousandthsOf(entry, "add_right_thousandths"))
            record.eyes.right.addition = Dioptres{*addition};
        if (const auto addition = thousandthsOf(entry, "add_left_thousandths"))
            record.eyes.left.addition = Dioptres{*addition};
        if (const auto pd = thousandthsOf(entry, "pd_thousandths"))
            (record.purpose == Purpose::near ? record.nearPd : record.distancePd) = pd;
        return true;
    }

    /// A near power or PD that is nowhere else: those of the pair that was found acceptable stand for them.
    void takeFromPair(const Entry& entry, DemandPerson& one)
    {
        for (const auto& movement : entry.movements) {
            const auto found = byName_.find(movement.line);
            if (found == byName_.end() || movement.delta >= 0)
                continue;
            const auto& line = stock_[found->second];
            if (const auto raised = demand.raised.find(line.name); raised != demand.raised.end())
                one.weight = std::max(one.weight, raised->second);
            const bool monocular = one.record.eyes.right.monocularPd && one.record.eyes.left.monocularPd;
            if (line.kind != LineKind::lens && !one.record.nearPd && !one.record.distancePd && !monocular)
                (one.record.purpose == Purpose::near ? one.record.nearPd : one.record.distancePd) =
                    centresOf(line);
            if (line.kind == LineKind::frame)
                continue;
            for (const Eye eye : bothEyes)
                if (line.kind == LineKind::readyMade ||
                    movement.part == (eye == Eye::right ? "right" : "left"))
                    takePower(line, eye, one.record);
        }
    }

    static void takePower(const StockLine& line, Eye eye, PersonRecord& person)
    {
        auto& record = person.eyes.of(eye);
        if (record.addition || record.nearPower)
            return;
        if (person.purpose == Purpose::near || person.purpose == Purpose::intermediate)
            record.nearPower = line.power.of(eye);
        else if (person.purpose == Purpose::bifocal)
            record.addition = line.bifocalAddition;
    }

    std::span<const StockLine> stock_;
    const RecordReader& recordOf_;
    std::map<std::string, std::size_t> byName_;
};

} // namespace

Demand demandOfLedger(std::span<const Entry> entries, const std::string& site,
                      std::span<const StockLine> stock, std::int64_t offsetMs, const RecordReader& recordOf)
{
    return LedgerDemand(entries, site, stock, offsetMs, recordOf).demand;
}

} // namespace quarterstep
