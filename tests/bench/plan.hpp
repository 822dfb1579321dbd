// SPDX-License-Identifier: GPL-3.0-or-later
// What the bench measures and what it must reach. Baseline and measured code run in one process, their
// repetitions interleaved at random, and every figure is a median of processor times, so that a busy machine
// moves both alike: the ratios can be trusted, the nanoseconds less.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace quarterstep::bench
{

/// Median nanoseconds of one piece of work, by name of the measurement.
using Medians = std::map<std::string, double>;

enum class Bound { atLeast, atMost };

/// A figure made of medians, and what it must keep to.
struct Budget {
    std::string name;
    std::function<double(const Medians&)> value;
    Bound bound = Bound::atLeast;
    double limit = 0.0;
};

class Plan
{
  public:
    /// The short form runs everything once on small data: it shows that the bench still works, and judges
    /// nothing.
    Plan(bool shortForm, std::string filter) : shortForm_(shortForm), filter_(std::move(filter)) {}

    [[nodiscard]] bool shortForm() const { return shortForm_; }
    /// `full`, or `small` in the short form.
    [[nodiscard]] std::size_t size(std::size_t full, std::size_t small) const
    {
        return shortForm_ ? small : full;
    }

    /// `work` does `pieces` pieces of work a call.
    void measure(const std::string& name, double pieces, std::function<void()> work);
    /// How many times faster `measured` is than `baseline`.
    void atLeastTimesFaster(const std::string& name, const std::string& baseline, const std::string& measured,
                            double limit);
    void keep(Budget budget) { budgets_.push_back(std::move(budget)); }
    /// Two ways to the same answer gave different answers: told, and the run fails.
    void disagree(const std::string& what) { disagreements_.push_back(what); }
    /// A fact that stands beside the figures.
    void note(const std::string& text) { notes_.push_back(text); }

    /// Whether a group (the first word of a name, up to its slash) is asked for.
    [[nodiscard]] bool wants(const std::string& group) const
    {
        return filter_.empty() || filter_.substr(0, filter_.find('/')) == group;
    }
    /// The same for one measurement that is made while planning.
    [[nodiscard]] bool wantsNamed(const std::string& name) const
    {
        return name.find(filter_) != std::string::npos;
    }
    /// Runs what was planned (only names that contain the filter), prints medians and budgets. 0 when all are
    /// kept, 1 otherwise.
    [[nodiscard]] int run();

  private:
    struct Measurement {
        std::string name;
        double pieces = 1.0;
        std::function<void()> work;
    };

    [[nodiscard]] Medians measured() const;
    [[nodiscard]] bool judged(const Medians& medians) const;

    bool shortForm_;
    std::string filter_;
    std::vector<Measurement> measurements_;
    std::vector<Budget> budgets_;
    std::vector<std::string> disagreements_;
    std::vector<std::string> notes_;
};

void planOptics(Plan& plan);
void planScans(Plan& plan);
void planPlanning(Plan& plan);
void planSearch(Plan& plan);
/// Measured at once, by the clock on the wall: a commit waits for the disk, which takes no processor time.
void planLedger(Plan& plan);
/// The same on a server, beside its own client program.
void planShared(Plan& plan);
/// Measured at once, by the clock on the wall as well.
void planAudit(Plan& plan);
void planExchange(Plan& plan);
/// Whatever the plan wants.
inline void planGroup(Plan& plan)
{
    if (plan.wants("optics"))
        planOptics(plan);
    if (plan.wants("scan"))
        planScans(plan);
    if (plan.wants("planning"))
        planPlanning(plan);
    planSearch(plan);
    if (plan.wants("exchange"))
        planExchange(plan);
    if (plan.wants("ledger"))
        planLedger(plan);
    if (plan.wants("shared"))
        planShared(plan);
    if (plan.wants("audit"))
        planAudit(plan);
}

} // namespace quarterstep::bench
