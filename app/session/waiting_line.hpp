// SPDX-License-Identifier: GPL-3.0-or-later
// The line as it changes: people arrive, are told what they get, leave; the box runs down. Planning again
// never takes back what somebody was told. Nothing is written: handing over stays hand_over.hpp.
//
// A copy is cheap and stands alone: copy the line, plan() the copy on a worker, compare version() with that
// of the line when the answer comes.
#pragma once

#include "app/session/assign.hpp"
#include "app/session/camp.hpp"

#include <memory>
#include <mutex>

namespace quarterstep
{

class WaitingLine
{
  public:
    /// A box with its counts now. `question.told` is not read. Who comes first: see prioritiesOf.
    WaitingLine(std::vector<StockLine> stock, FittingRules rules, LineQuestion question = {});
    /// The box and rules of an open camp, and its choice about second pairs.
    explicit WaitingLine(const Camp& camp);

    /// Arrives: judged now, at the end of the line. A record of the same code and purpose takes the place of
    /// the one before and keeps its place in the line; what that person was told stays.
    void add(const PersonRecord& person);
    /// The same for several, on two threads.
    void addAll(const std::vector<PersonRecord>& people, const Job& job = {});
    /// Leaves, served or not; a promise ends. `purpose` empty: for every purpose. False: was not there.
    bool remove(const std::string& person, std::optional<Purpose> purpose = std::nullopt);
    /// Nobody waits any more.
    void clear();

    /// The box has other counts, or other lines. Promises stay; one whose pieces have gone is told as such by
    /// plan(). Judges again only when a line came (back) into the box.
    void setStock(std::vector<StockLine> stock);

    /// Was told: `given` as plan() answered it stays. Throws Error told-unknown (1) when nobody of that code
    /// waits for that purpose, unknown-line (1) when the box has no such parts.
    void tell(const Assignment& given);
    /// Picked by hand instead of what was planned, and told. Throws also Error reason-missing (1) when the
    /// reason is empty, not-a-pair (1) when the parts make no pair for this person, none-left (1) when a
    /// piece is not there or promised to somebody else. A pair outside a limit may be picked, also for
    /// somebody who is not in the line: the hand-over asks.
    void choose(const std::string& person, Purpose purpose, const std::vector<Part>& parts,
                const std::string& reason);
    /// A person, never a plan, takes a promise back. False: nothing was promised.
    bool takeBack(const std::string& person, Purpose purpose);

    /// Who gets which pair and why. Begins where the plan before ended (that of a copy counts too), so that
    /// planning again is quick; which of equally good plans comes out may depend on it. Throws Error
    /// cancelled.
    [[nodiscard]] LineAnswer plan(const Job& job = {}) const;

    /// All promises as a list that `assign --told` and restore() read.
    [[nodiscard]] std::vector<Told> told() const;
    /// Promises from such a list, for who waits and where the lines are there. Returns those left out.
    std::vector<Told> restore(const std::vector<Told>& told);

    [[nodiscard]] const std::vector<StockLine>& stock() const { return shelf_->stock; }
    [[nodiscard]] std::size_t people() const { return people_.size(); }
    /// Grows with every change.
    [[nodiscard]] std::uint64_t version() const { return version_; }

  private:
    /// Everything that judging needs; shared by copies.
    struct Box {
        explicit Box(std::vector<StockLine> lines);
        std::vector<StockLine> stock;
        Resources resources;
        StockIndex index;
    };
    struct Person {
        PersonRecord record;
        LineEntries entries;
    };
    /// By names, so that it outlives an edited box.
    struct Kept {
        std::string person;
        Purpose purpose = Purpose::distance;
        std::vector<std::string> lines;
        Promise promise; ///< parts are found again by name
    };

    /// Where the plan before ended; shared by copies, which may plan on other threads.
    struct Before {
        std::mutex mutex;
        std::vector<double> prices;
    };

    [[nodiscard]] std::shared_ptr<const Person> judged(const PersonRecord& record) const;
    void judgeAgain(const Job& job);
    void put(std::shared_ptr<const Person> person);
    void mustBeHere(const std::string& person, Purpose purpose) const;
    [[nodiscard]] std::optional<Fit> fitOf(const std::string& person, Purpose purpose,
                                           const std::vector<Part>& parts) const;
    [[nodiscard]] std::vector<Kept>::iterator keptOf(const std::string& person, Purpose purpose);
    [[nodiscard]] std::optional<std::size_t> lineNamed(const std::string& name) const;
    [[nodiscard]] LineStanding standing() const;
    [[nodiscard]] bool areThere(const std::vector<Part>& parts, const std::string& person,
                                Purpose purpose) const;
    void keep(Kept kept);

    std::shared_ptr<const FittingRules> rules_;
    LineQuestion question_;
    std::shared_ptr<const Box> shelf_;
    std::vector<std::shared_ptr<const Person>> people_;
    std::vector<Kept> kept_;
    std::shared_ptr<Before> before_ = std::make_shared<Before>();
    std::uint64_t version_ = 0;
};

} // namespace quarterstep
