// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/line_answer.hpp"

#include "app/session/shelf.hpp"

#include <algorithm>
#include <set>

namespace quarterstep
{

namespace
{

/// Who holds what after planning: what explains why somebody does not.
class Explainer
{
  public:
    /// `given`: what each of the line holds, in groups of lines; empty = nothing.
    Explainer(const LineStanding& standing, const std::vector<int>& there,
              std::vector<std::vector<std::uint32_t>> given, std::vector<int> left)
        : standing_(standing), there_(there), given_(std::move(given)), left_(std::move(left)),
          holders_(there.size())
    {
        for (std::size_t i = 0; i < given_.size(); ++i)
            for (const auto resource : given_[i])
                holders_[resource].push_back(i);
    }

    void explain(std::size_t place, const Choice& choice, Assignment& assignment) const
    {
        const auto& choices = standing_.line[place]->choices;
        assignment.why = WhyThisPair::best;
        assignment.sentence = {QS_SAY("core", "nothing in the box is better for this person"), {}};
        const Choice* better = nullptr;
        for (const auto& other : choices)
            if (other.loss < (better != nullptr ? better->loss : choice.loss) && isFree(other, there_))
                better = &other;
        if (better == nullptr) {
            const auto earlier = std::find_if(choices.begin(), choices.end(), [&](const Choice& other) {
                return &other == &choice || (other.loss == choice.loss && isFree(other, there_));
            });
            if (&*earlier == &choice)
                return;
            assignment.why = WhyThisPair::asGood;
            assignment.sentence = {
                QS_SAY("core", "loses no more than the best for this person; others need that one more"), {}};
            return;
        }
        const auto holder = holderOf(*better);
        if (!holder)
            return;
        constexpr double unit = 1e-4; // logMAR
        assignment.moreLossLogMar = unit * (choice.loss - better->loss);
        assignment.goesTo = standing_.line[*holder]->person;
        const std::vector<std::string> named{nameOf(*better), assignment.goesTo};
        if (standing_.promised.count(*holder) > 0) {
            assignment.why = WhyThisPair::promised;
            assignment.sentence = {QS_SAY("core", "%1 was promised to %2 before"), named};
        } else if (hasNothingElse(*holder, *better)) {
            assignment.why = WhyThisPair::neededMore;
            assignment.sentence = {QS_SAY("core", "%1 goes to %2, for whom nothing else will do"), named};
        } else {
            assignment.why = WhyThisPair::sharedOut;
            assignment.sentence = {
                QS_SAY("core", "%1 goes to %2, so that most are served and all together lose least"), named};
        }
    }

    [[nodiscard]] Unserved unserved(std::size_t place) const
    {
        constexpr std::size_t named = 3;
        const auto& one = *standing_.line[place];
        Unserved without{one.person, one.purpose, one.reasonKey, {}, one.reason};
        if (one.choices.empty())
            return without;
        std::set<std::string> goesTo;
        bool any = false;
        for (const auto& choice : one.choices) {
            if (!isFree(choice, there_))
                continue;
            any = true;
            if (const auto holder = anyHolderOf(choice))
                goesTo.insert(standing_.line[*holder]->person);
            if (goesTo.size() == named)
                break;
        }
        without.goesTo.assign(goesTo.begin(), goesTo.end());
        without.reasonKey = any ? "others_served" : "stock_out";
        std::string names;
        for (const auto& name : without.goesTo)
            names += (names.empty() ? "" : ", ") + name;
        if (!any)
            without.sentence = {QS_SAY("core", "nothing that would do is left"), {}};
        else if (names.empty())
            without.sentence = {QS_SAY("core", "what would do goes to others"), {}};
        else
            without.sentence = {QS_SAY("core", "what would do goes to %1"), {names}};
        return without;
    }

  private:
    [[nodiscard]] std::optional<std::size_t> anyHolderOf(const Choice& choice) const
    {
        for (const auto resource : choice.used())
            if (left_[resource] <= 0 && !holders_[resource].empty())
                return holders_[resource].front();
        return std::nullopt;
    }

    /// Somebody who holds a part of which nothing is left: whoever has nothing else first.
    [[nodiscard]] std::optional<std::size_t> holderOf(const Choice& choice) const
    {
        std::optional<std::size_t> found;
        for (const auto resource : choice.used()) {
            if (left_[resource] > 0)
                continue;
            for (const auto holder : holders_[resource]) {
                if (hasNothingElse(holder, choice))
                    return holder;
                if (!found)
                    found = holder;
            }
        }
        return found;
    }

    [[nodiscard]] bool hasNothingElse(std::size_t holder, const Choice& wanted) const
    {
        const auto& choices = standing_.line[holder]->choices;
        return std::all_of(choices.begin(), choices.end(), [&](const Choice& choice) {
            return !isFree(choice, there_) ||
                   std::any_of(choice.used().begin(), choice.used().end(), [&](auto resource) {
                       return left_[resource] <= 0 && std::find(wanted.used().begin(), wanted.used().end(),
                                                                resource) != wanted.used().end();
                   });
        });
    }

    /// The first line of the part that ran out.
    [[nodiscard]] std::string nameOf(const Choice& choice) const
    {
        for (const auto resource : choice.used())
            if (left_[resource] <= 0)
                return standing_.stock[standing_.resources->all()[resource].lines.front()].name;
        return {};
    }

    const LineStanding& standing_;
    const std::vector<int>& there_;
    std::vector<std::vector<std::uint32_t>> given_;
    std::vector<int> left_;
    std::vector<std::vector<std::size_t>> holders_;
};

Assignment promisedAssignment(const Waiting& entry, const Promise& promise, Shelf& shelf)
{
    Assignment given;
    given.person = entry.person;
    given.purpose = entry.purpose;
    given.parts = promise.parts;
    given.lossLogMar = promise.lossLogMar;
    given.prism = promise.prism;
    given.caution = promise.caution;
    given.told = true;
    given.reason = promise.reason;
    given.why = promise.reason.empty() ? WhyThisPair::told : WhyThisPair::byHand;
    given.noneLeft = !promise.allThere;
    for (const auto& part : promise.parts)
        if (!shelf.take(part.line))
            given.noneLeft = true;
    if (given.noneLeft)
        given.sentence = {QS_SAY("core", "told before, but none is left now"), {}};
    else if (promise.reason.empty())
        given.sentence = {QS_SAY("core", "told before; not planned again"), {}};
    else
        given.sentence = {QS_SAY("core", "picked by hand: %1"), {promise.reason}};
    return given;
}

Assignment plannedAssignment(const Waiting& entry, const Choice& choice, Shelf& shelf)
{
    Assignment given;
    given.person = entry.person;
    given.purpose = entry.purpose;
    given.lossLogMar = static_cast<double>(choice.lossLogMar);
    given.prism = static_cast<double>(choice.prism);
    given.caution = choice.caution;
    for (std::size_t i = 0; i < choice.parts; ++i)
        given.parts.push_back({shelf.takeOne(choice.resources.at(i)), sideOf(i, choice.parts)});
    return given;
}

std::vector<LinePrice> pricesOf(const LinePlan& plan, const std::vector<Waiting>& line,
                                const LineStanding& standing, const std::vector<int>& available)
{
    std::vector<int> wanted(available.size(), 0);
    for (const auto& entry : line) {
        std::set<std::uint32_t> used;
        for (const auto& choice : entry.choices)
            used.insert(choice.used().begin(), choice.used().end());
        for (const auto resource : used)
            ++wanted[resource];
    }
    std::vector<LinePrice> prices;
    for (std::size_t i = 0; i < plan.oneMore.size(); ++i) {
        if (plan.oneMore[i].served < 1e-6 && plan.oneMore[i].lossLogMar < 0.005)
            continue;
        LinePrice price{{}, available[i], wanted[i], plan.oneMore[i]};
        for (const auto one : standing.resources->all()[i].lines)
            price.lines.push_back(standing.stock[one].name);
        prices.push_back(std::move(price));
    }
    std::stable_sort(prices.begin(), prices.end(), [](const LinePrice& a, const LinePrice& b) {
        return std::pair(a.oneMore.served, a.oneMore.lossLogMar) >
               std::pair(b.oneMore.served, b.oneMore.lossLogMar);
    });
    return prices;
}

void answerFirstCome(const LineStanding& standing, const std::vector<int>& there, LineAnswer& answer)
{
    std::vector<Waiting> all;
    all.reserve(standing.line.size());
    for (const auto* one : standing.line)
        all.push_back(*one);
    const auto firstCome = firstComeLine(all, there, standing.secondPairsLast);
    answer.servedFirstCome = firstCome.served;
    answer.lossFirstCome = firstCome.lossLogMar;
}

} // namespace

LineAnswer answerLine(const LineStanding& standing, const PlanOptions& options, const Job& job)
{
    LineAnswer answer;
    answer.people = static_cast<int>(standing.line.size());
    Shelf shelf(standing.stock, *standing.resources);
    const auto there = shelf.ofResources();
    answerFirstCome(standing, there, answer);
    std::map<std::size_t, Assignment> given; // by place in the line
    std::vector<std::vector<std::uint32_t>> held(standing.line.size());
    for (const auto& [place, promise] : standing.promised) {
        given.emplace(place, promisedAssignment(*standing.line[place], promise, shelf));
        for (const auto& part : promise.parts)
            held[place].push_back(standing.resources->of(part.line));
    }
    std::vector<Waiting> open;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < standing.line.size(); ++i)
        if (standing.promised.count(i) == 0) {
            places.push_back(i);
            open.push_back(*standing.line[i]);
        }
    const auto available = shelf.ofResources();
    const auto plan = planLine(open, available, options);
    throwIfStopped(job);
    std::map<std::size_t, const Choice*> choices;
    for (std::size_t i = 0; i < open.size(); ++i)
        if (const auto which = plan.choiceOf[i]; which != nothingGiven) {
            const auto& choice = standing.line[places[i]]->choices[static_cast<std::size_t>(which)];
            given.emplace(places[i], plannedAssignment(open[i], choice, shelf));
            choices.emplace(places[i], &choice);
            held[places[i]].assign(choice.used().begin(), choice.used().end());
        }
    const Explainer explainer(standing, there, std::move(held), shelf.ofResources());
    for (const auto& [place, choice] : choices)
        explainer.explain(place, *choice, given.at(place));
    for (const auto place : places)
        if (given.count(place) == 0)
            answer.unserved.push_back(explainer.unserved(place));
    answer.lossLogMar = plan.lossLogMar;
    answer.proof = plan.proof;
    answer.programPrices = plan.prices;
    answer.proof.bound += static_cast<double>(standing.promised.size());
    answer.proof.reached += static_cast<double>(standing.promised.size());
    answer.served = static_cast<int>(given.size());
    for (auto& [place, assignment] : given)
        answer.assignments.push_back(std::move(assignment));
    if (options.gains)
        answer.prices = pricesOf(plan, open, standing, available);
    return answer;
}

} // namespace quarterstep
