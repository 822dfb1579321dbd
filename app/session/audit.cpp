// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/audit.hpp"
#include "app/session/slip_window.hpp"
#include "app/session/stock_then.hpp"
#include "core/fitting/stock_index.hpp"
#include "core/fitting/words.hpp"
#include "core/record/judgement.hpp"
#include "inventory/text/rules_archive.hpp"

#include <algorithm>
#include <thread>
#include <unordered_map>

namespace quarterstep
{

namespace
{

/// A pair read again afterwards counts instead of what was read when it went, with the record at hand.
std::shared_ptr<const LaterWitness> besideOf(const LaterWitness& later, const LaterWitness* atOnce)
{
    auto both = std::make_shared<LaterWitness>(later);
    for (const Eye eye : bothEyes)
        if (atOnce != nullptr && !later.pair.right && !later.pair.left)
            both->pair.of(eye) = atOnce->pair.of(eye);
    return both;
}

constexpr std::size_t batchSize = 1024; ///< entries in memory at a time

class Replay
{
  public:
    Replay(const Camp& camp, const AuditOptions& options, const AuditEars& ears)
        : camp_(camp), options_(options), ears_(ears), takenBack_(camp.ledger().takenBackIds()),
          index_(camp.stock()), now_(camp.stock(), index_, camp.site()),
          watch_(options.settings.thresholds, options.nowMs, takenBack_),
          window_(options.settings.slips, camp.rules().settings, now_.box(camp.site()), lines_,
                  options.settings.thresholds.duplicateDays,
                  [this](JudgedHandOver& judged, const SlipAnswer& slips) { tellJudged(judged, slips); })
    {
        rules_[camp.rules().hash] = camp.rules();
        for (int i = 0; i < std::max(1, options.threads); ++i)
            workers_.emplace_back(camp.stock(), index_, camp.site());
    }

    AuditSummary run()
    {
        const auto entries = camp_.ledger().position();
        summary_.chain = camp_.ledger().checkChain(
            [&](std::int64_t checked) { tellFar(options_.job, checked, 2 * entries); });
        if (summary_.chain.ok) // beyond a break nothing is a witness
            readLineHistory();
        const auto end = summary_.chain.badPosition;
        camp_.ledger().eachStored(0, [&](StoredEntry stored) {
            if (end && stored.position >= *end)
                return false;
            batch_.push_back(std::move(stored));
            if (batch_.size() == batchSize) {
                judgeBatch();
                tellFar(options_.job, entries + summary_.entries, 2 * entries);
            }
            return true;
        });
        judgeBatch();
        window_.finish();
        takeRates();
        watch_.finish(sink());
        return summary_;
    }

  private:
    void readLineHistory()
    {
        for (const auto& entry :
             camp_.ledger().entriesOfKinds({EntryKind::counted, EntryKind::returned, EntryKind::exchanged,
                                            EntryKind::quarantined, EntryKind::writtenOff}))
            if (entry.site == camp_.site() && takenBack_.count(entry.id) == 0)
                lines_.take(entry);
    }

    /// One entry of a batch on its way.
    struct Step {
        std::optional<Entry> entry;
        std::optional<JudgedHandOver> judged;
    };

    [[nodiscard]] FindingSink sink()
    {
        return [this](AuditFinding finding) {
            ++summary_.byClass[finding.kind];
            if (ears_.finding)
                ears_.finding(std::move(finding));
        };
    }

    /// Runs `act(worker, first, last)` over parts of the batch, one a thread.
    template <class Act>
    void inParts(const Act& act)
    {
        const std::size_t parts = workers_.size();
        std::vector<std::thread> threads;
        for (std::size_t part = 1; part < parts; ++part)
            threads.emplace_back(
                [&, part] { act(part, batch_.size() * part / parts, batch_.size() * (part + 1) / parts); });
        act(std::size_t{0}, std::size_t{0}, batch_.size() / parts);
        for (auto& thread : threads)
            thread.join();
    }

    void judgeBatch()
    {
        steps_.assign(batch_.size(), {});
        inParts([&](std::size_t, std::size_t first, std::size_t last) {
            for (auto i = first; i < last; ++i)
                steps_[i].entry = entryFrom(batch_[i]);
        });
        std::size_t part = 0;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            for (; part < workers_.size() && i == batch_.size() * part / workers_.size(); ++part)
                workers_[part].takeCounts(now_);
            if (!steps_[i].entry)
                continue;
            keepRules(*steps_[i].entry);
            now_.move(*steps_[i].entry);
        }
        inParts([&](std::size_t worker, std::size_t first, std::size_t last) {
            for (auto i = first; i < last; ++i)
                if (steps_[i].entry)
                    judgeStep(steps_[i], workers_[worker]);
        });
        for (auto& step : steps_)
            if (step.entry)
                tell(step);
        batch_.clear();
    }

    void keepRules(const Entry& entry)
    {
        const auto text = entry.fields.find("rules");
        const auto hash = fieldNamed(entry, "rules_hash");
        if (text == entry.fields.end() || rules_.count(hash) > 0)
            return;
        auto read = readCanonicalRules(text->second);
        if (read && read->hash == hash)
            rules_[hash] = std::move(*read);
    }

    void judgeStep(Step& step, StockThen& stock) const
    {
        const auto& entry = *step.entry;
        if (entry.kind == EntryKind::handedOver && takenBack_.count(entry.id) == 0) {
            auto facts = factsOf(entry);
            if (const auto later = options_.later.find(entry.id); later != options_.later.end())
                facts.later = besideOf(*later->second, facts.later.get());
            const FittingRules* rules = rulesOf(facts);
            step.judged =
                judgeAgain(std::move(facts), rules, stock.box(entry.site), options_.settings.thresholds);
        }
        stock.move(entry);
    }

    /// The rules of the time, or today's where another profile was asked for.
    [[nodiscard]] const FittingRules* rulesOf(HandOverFacts& facts) const
    {
        if (!options_.profile.empty()) {
            facts.profile = options_.profile;
            facts.verdict.clear(); // what was stored is no answer to this question
            facts.costThousandths.reset();
            facts.horizontalThousandths.reset();
            return &camp_.rules();
        }
        const auto found = rules_.find(facts.rulesHash);
        return found == rules_.end() ? nullptr : &found->second;
    }

    void tell(Step& step)
    {
        ++summary_.entries;
        watch_.take(*step.entry, sink());
        if (!step.judged)
            return;
        ++summary_.handOvers;
        summary_.judged += step.judged->fit ? 1 : 0;
        watch_.takeJudged(*step.judged);
        window_.take(std::move(*step.judged));
    }

    /// A slip that is likely in a record that its own pair fits is a finding of its own.
    void tellJudged(JudgedHandOver& judged, const SlipAnswer& slips)
    {
        if (const auto* told = slips.told(options_.settings.slips); told != nullptr && !judged.mismatch())
            judged.findings.push_back({judged.facts.entry, classOf(told->kind()), told->detail});
        summary_.mismatches += judged.mismatch() ? 1 : 0;
        if (judged.fit)
            count(judged);
        for (const auto& finding : judged.findings)
            ++summary_.byClass[finding.kind];
        if (ears_.judged)
            ears_.judged(judged, slips);
    }

    /// Where the record itself is wrong, by its numbers or by its line, and where it is the pair.
    [[nodiscard]] static AuditClass classOf(SlipKind kind)
    {
        if (infoOf(kind).entry || kind == SlipKind::recordedTwice || kind == SlipKind::otherLineScanned)
            return AuditClass::witnessAgainstRecord;
        const bool pair = kind == SlipKind::lineOffLabel || kind == SlipKind::returnedWrongBin ||
                          kind == SlipKind::axisTurnedMounting;
        return pair ? AuditClass::offLabel : AuditClass::betterPairInBox;
    }

    void count(const JudgedHandOver& judged)
    {
        const auto& facts = judged.facts;
        const auto add = [&](const char* by, const std::string& name) {
            auto& tally = tallies_[{by, name}];
            ++tally.judged;
            tally.mismatches += judged.mismatch() ? 1 : 0;
        };
        add("all", "");
        add("site", facts.site);
        if (!facts.actor.empty())
            add("actor", facts.actor);
        add("week", mondayOf(facts.atMs));
        add("profile", facts.profile);
        add("purpose", wordOf(facts.purpose));
        add("kind", facts.supply && facts.supply->bifocalAddition ? "bifocal"
                    : facts.movements.size() == 1                 ? "ready-made"
                                                                  : "lenses in a frame");
    }

    void takeRates()
    {
        const auto share = tallies_[{"all", ""}].share();
        for (const auto& [key, tally] : tallies_)
            if (tally.judged > 0)
                summary_.rates.push_back(
                    {key.first, key.second, tally, exactLimits(tally), funnelOf(tally, share)});
        std::stable_partition(summary_.rates.begin(), summary_.rates.end(),
                              [](const AuditRate& rate) { return rate.by == "all"; });
    }

    const Camp& camp_;
    const AuditOptions& options_;
    const AuditEars& ears_;
    std::set<std::string> takenBack_;
    StockIndex index_;
    StockThen now_;
    std::vector<StockThen> workers_;
    std::map<std::string, FittingRules> rules_;
    LedgerWatch watch_;
    LineHistory lines_;
    SlipWindow window_;
    AuditSummary summary_;
    std::map<std::pair<std::string, std::string>, Tally> tallies_; ///< by what, and name
    std::vector<StoredEntry> batch_;
    std::vector<Step> steps_;
};

} // namespace

AuditSummary auditCamp(const Camp& camp, const AuditOptions& options, const AuditEars& ears)
{
    return Replay(camp, options, ears).run();
}

} // namespace quarterstep
