// SPDX-License-Identifier: GPL-3.0-or-later
// A whole table handed over in order: first pairs first, then second pairs.
#include "app/session/unserved.hpp"

#include "inventory/text/record_text.hpp"

#include <algorithm>
#include <map>

namespace quarterstep
{

namespace
{

std::vector<std::pair<std::string, int>> countsOf(const std::vector<StockLine>& stock)
{
    std::vector<std::pair<std::string, int>> counts;
    counts.reserve(stock.size());
    for (const auto& line : stock)
        counts.emplace_back(line.name, line.onHand);
    return counts;
}

/// One place in the queue: a person's purpose, answered twice (with the day's start for "ran out", and in
/// turn).
struct Turn {
    const PersonRecord* person = nullptr;
    std::size_t which = 0; ///< index into recommend(person)
    bool second = false;
};

/// Stock as it would be: counts go down in a dry run without any ledger.
void takeParts(std::vector<StockLine>& stock, const std::vector<Part>& parts)
{
    for (const auto& part : parts)
        --stock[part.line].onHand;
}

constexpr int shortRetries = 3;

class Day
{
  public:
    Day(Camp& camp, const MatchOptions& options, const std::string& actor, bool dryRun)
        : camp_(camp), options_(options), actor_(actor), dryRun_(dryRun), atStart_(camp.stock()),
          planned_(camp.stock())
    {
    }

    /// Serves one turn. A second pair is held back when its lines are the last that somebody on trial waits
    /// for.
    BatchAnswer serve(const Turn& turn)
    {
        for (int again = 0; again < shortRetries; ++again)
            try {
                return serveOnce(turn);
            } catch (const Error& error) {
                if (error.finding().code != "stock-short")
                    throw;
                camp_.refresh(); // another station took the last one: answer again from what is left
            }
        return serveOnce(turn);
    }

    [[nodiscard]] const std::vector<StockLine>& stock() const { return dryRun_ ? planned_ : camp_.stock(); }

  private:
    BatchAnswer serveOnce(const Turn& turn)
    {
        BatchAnswer answer;
        answer.recommendation = recommend(*turn.person, stock(), camp_.rules(), indexed())[turn.which];
        answer.recommendation.secondPair = turn.second;
        if (handedOverToday(camp_, *turn.person, answer.recommendation.purpose)) {
            answer.givenBefore = true;
            return answer;
        }
        if (answer.recommendation.verdict != Verdict::stock) {
            answer.ranOut = answer.recommendation.reasonKey == "stock_out" && hadAtStart(turn);
            rememberWaiting(answer.recommendation);
            enterWithout(turn, answer);
            return answer;
        }
        const auto parts = answer.recommendation.candidates.ranked.front().parts;
        if (turn.second && camp_.rules().settings.holdBackSecondPair && waitedFor(parts)) {
            answer.heldBack = true;
            enterWithout(turn, answer);
            return answer;
        }
        for (const auto& part : parts)
            answer.lines.push_back(stock()[part.line].name);
        if (dryRun_) {
            takeParts(planned_, parts);
            return answer;
        }
        post(turn, answer, parts);
        return answer;
    }

    void post(const Turn& turn, BatchAnswer& answer, const std::vector<Part>& parts)
    {
        HandOver given;
        given.recommendation = &answer.recommendation;
        given.parts = parts;
        given.actor = actor_;
        given.finalAsWritten = finalsAsWritten(*turn.person);
        given.record = recordText(*turn.person);
        answer.entry = camp_.post(entryFor(camp_, given));
    }

    void enterWithout(const Turn& turn, BatchAnswer& answer)
    {
        if (dryRun_)
            return;
        auto entry = unservedEntry(camp_, *turn.person, answer.recommendation, answer.heldBack);
        answer.wentWithout = saidBefore(camp_, entry);
        if (!answer.wentWithout.empty())
            return;
        entry.actor = actor_;
        answer.wentWithout = camp_.post(std::move(entry)).id;
    }

    void rememberWaiting(const Recommendation& answer)
    {
        if (answer.reasonKey == "on_trial")
            for (const auto& part : answer.candidates.ranked.front().parts)
                ++waiting_[part.line];
    }

    [[nodiscard]] bool waitedFor(const std::vector<Part>& parts) const
    {
        return std::any_of(parts.begin(), parts.end(), [&](const Part& part) {
            const auto waiting = waiting_.find(part.line);
            return waiting != waiting_.end() && stock()[part.line].available() <= waiting->second;
        });
    }

    /// Planned or now: the camp's lines but for their counts.
    [[nodiscard]] MatchOptions indexed() const
    {
        auto options = options_;
        options.candidates.index = &camp_.index();
        return options;
    }

    [[nodiscard]] bool hadAtStart(const Turn& turn) const
    {
        // Somebody may have changed the file since.
        const bool sameLines = sameToTheEye(atStart_, camp_.stock());
        return recommend(*turn.person, atStart_, camp_.rules(), sameLines ? indexed() : options_)[turn.which]
                   .verdict == Verdict::stock;
    }

    Camp& camp_;
    const MatchOptions& options_;
    std::string actor_;
    bool dryRun_;
    std::vector<StockLine> atStart_;
    std::vector<StockLine> planned_;
    std::map<std::size_t, int> waiting_; ///< line -> people on trial who wait for one
};

} // namespace

BatchResult dispenseTable(Camp& camp, const std::vector<PersonRecord>& people, const MatchOptions& options,
                          const std::string& actor, bool dryRun)
{
    BatchResult result;
    result.before = countsOf(camp.stock());
    std::vector<Turn> turns;
    auto indexed = options;
    indexed.candidates.index = &camp.index();
    for (const auto& person : people) {
        const auto answers = recommend(person, camp.stock(), camp.rules(), indexed);
        for (std::size_t which = 0; which < answers.size(); ++which)
            turns.push_back({&person, which, answers[which].secondPair});
    }
    result.answers.resize(turns.size());
    Day day(camp, options, actor, dryRun);
    try {
        std::optional<Camp::WriteBackPause> pause; // stock.yaml is written once, at the end
        if (!dryRun)
            pause.emplace(camp);
        for (const bool second : {false, true})
            for (std::size_t i = 0; i < turns.size(); ++i)
                if (turns[i].second == second)
                    result.answers[i] = day.serve(turns[i]);
    } catch (const Error& error) {
        result.stopped = error; // what was posted stands, and is told
        std::erase_if(result.answers,
                      [](const BatchAnswer& answer) { return answer.recommendation.person.empty(); });
    }
    result.after = countsOf(day.stock());
    return result;
}

} // namespace quarterstep
