// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/plan.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdio>

namespace quarterstep::bench
{

namespace
{

/// Keeps the times of every repetition; prints nothing.
class TimesByName : public benchmark::BenchmarkReporter
{
  public:
    bool ReportContext(const Context& /*context*/) override { return true; }

    void ReportRuns(const std::vector<Run>& runs) override
    {
        for (const auto& run : runs)
            if (run.run_type == Run::RT_Iteration)
                times_[run.run_name.function_name].push_back(run.GetAdjustedCPUTime());
    }

    [[nodiscard]] double medianOf(const std::string& name) const
    {
        auto times = times_.at(name);
        const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
        std::nth_element(times.begin(), middle, times.end());
        return *middle;
    }

  private:
    std::map<std::string, std::vector<double>> times_;
};

/// Options of the library, given as it wants them: an argument vector that may be written to.
void setUp(bool shortForm)
{
    std::vector<std::string> words{"bench", "--benchmark_enable_random_interleaving=true"};
    words.emplace_back(shortForm ? "--benchmark_repetitions=1" : "--benchmark_repetitions=9");
    words.emplace_back(shortForm ? "--benchmark_min_time=0" : "--benchmark_min_time=0.05");
    std::vector<char*> arguments;
    arguments.reserve(words.size());
    for (auto& word : words)
        arguments.push_back(word.data());
    int count = static_cast<int>(arguments.size());
    benchmark::Initialize(&count, arguments.data());
}

} // namespace

void Plan::measure(const std::string& name, double pieces, std::function<void()> work)
{
    measurements_.push_back({name, pieces, std::move(work)});
}

void Plan::atLeastTimesFaster(const std::string& name, const std::string& baseline,
                              const std::string& measured, double limit)
{
    keep({name, [=](const Medians& medians) { return medians.at(baseline) / medians.at(measured); },
          Bound::atLeast, limit});
}

Medians Plan::measured() const
{
    setUp(shortForm_);
    for (const auto& measurement : measurements_)
        benchmark::RegisterBenchmark(measurement.name.c_str(), [&measurement](benchmark::State& state) {
            for ([[maybe_unused]] auto turn : state)
                measurement.work();
        });
    TimesByName times;
    benchmark::RunSpecifiedBenchmarks(&times);
    Medians medians;
    for (const auto& measurement : measurements_)
        medians[measurement.name] = times.medianOf(measurement.name) / measurement.pieces;
    benchmark::ClearRegisteredBenchmarks();
    return medians;
}

bool Plan::judged(const Medians& medians) const
{
    bool all = true;
    for (const auto& budget : budgets_) {
        const double value = budget.value(medians);
        const bool atLeast = budget.bound == Bound::atLeast;
        const bool kept = atLeast ? value >= budget.limit : value <= budget.limit;
        std::printf("ratio %s %.3g %s %.3g%s\n", budget.name.c_str(), value, atLeast ? "at-least" : "at-most",
                    budget.limit, kept || shortForm_ ? "" : " MISSED");
        all = all && kept;
    }
    return all;
}

int Plan::run()
{
    const auto leftOut = [&](const auto& one) { return one.name.find(filter_) == std::string::npos; };
    std::erase_if(measurements_, leftOut);
    std::erase_if(budgets_, leftOut);
    const auto medians = measured();
    for (const auto& [name, nanoseconds] : medians)
        std::printf("time %s %.4g ns\n", name.c_str(), nanoseconds);
    for (const auto& text : notes_)
        std::printf("note %s\n", text.c_str());
    const bool kept = judged(medians) || shortForm_;
    for (const auto& what : disagreements_)
        std::printf("disagrees %s\n", what.c_str());
    return kept && disagreements_.empty() ? 0 : 1;
}

} // namespace quarterstep::bench
