// SPDX-License-Identifier: GPL-3.0-or-later
// What only the course of events shows: hand-overs repeated, orders that wait, letters not written,
// corrections and count differences. Takes the entries one by one in the order of the ledger and holds only
// what is open.
#pragma once

#include "core/auditing/mismatch.hpp"

#include <deque>
#include <map>
#include <set>

namespace quarterstep
{

class LedgerWatch
{
  public:
    /// @param nowMs      entries later than this are from the future
    /// @param takenBack  ids of entries that a later one took back: they are not watched
    LedgerWatch(const AuditThresholds& thresholds, std::int64_t nowMs, const std::set<std::string>& takenBack)
        : thresholds_(thresholds), nowMs_(nowMs), takenBack_(takenBack)
    {
    }

    void take(const Entry& entry, const FindingSink& sink);
    /// A hand-over once it is judged, in the order of the ledger.
    void takeJudged(const JudgedHandOver& judged);
    /// What is still open at the end.
    void finish(const FindingSink& sink);

  private:
    struct Given {
        std::string entry;
        std::int64_t atMs = 0;
    };
    struct OpenOrder {
        std::string person;
        std::int64_t changedMs = 0;
        bool checked = false;
    };
    struct Letter {
        std::string entry;
        std::int64_t atMs = 0;
    };
    struct Lined {
        std::string entry;
        std::string line;
        std::int64_t atMs = 0;
    };

    void takeHandOver(const Entry& entry, const FindingSink& sink);
    void takeCorrection(const Entry& entry, const FindingSink& sink);
    void takeCount(const Entry& entry, const FindingSink& sink);
    void takeQuarantine(const Entry& entry, const FindingSink& sink);
    void forgetOld(std::int64_t nowMs);
    [[nodiscard]] bool longAgo(std::int64_t atMs, double days) const;

    AuditThresholds thresholds_;
    std::int64_t nowMs_;
    const std::set<std::string>& takenBack_;
    std::map<std::string, Given> given_; ///< "person\tpurpose" -> the newest
    std::deque<std::pair<std::int64_t, std::string>> givenInTime_;
    std::deque<Lined> lined_; ///< lines handed over lately
    std::map<std::string, OpenOrder> orders_;
    std::map<std::string, Letter> letters_; ///< person -> first hand-over with an unwritten letter
    std::map<std::string, Letter> interim_; ///< person -> hand-over outside limits that waits for an order
    std::map<std::pair<std::int64_t, std::string>, int> corrections_; ///< day and actor
};

} // namespace quarterstep
