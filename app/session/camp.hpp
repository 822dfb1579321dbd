// SPDX-License-Identifier: GPL-3.0-or-later
// An open camp folder: stock.yaml, rules.yaml and ledger.sqlite together. The desk and every verb work
// through it.
#pragma once

#include "core/fitting/recommendation.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"

namespace quarterstep
{

class Camp
{
  public:
    /// Opens a folder. readWrite makes the ledger when missing and heals stock.yaml after a crash.
    /// Throws Error with every finding kept in `findings` of the thrown CampNotOpened.
    [[nodiscard]] static Camp open(const std::string& folder, Ledger::Mode mode);

    [[nodiscard]] const std::string& folder() const { return folder_; }
    [[nodiscard]] const std::string& site() const { return file_.site; }
    /// Lines with on hand, held and quarantined as the ledger has them now.
    [[nodiscard]] const std::vector<StockLine>& stock() const { return file_.lines; }
    [[nodiscard]] const FittingRules& rules() const { return rules_; }
    [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }
    [[nodiscard]] const std::vector<EditedCount>& edited() const { return edited_; }
    [[nodiscard]] bool hasLedger() const { return ledger_.has_value(); }
    [[nodiscard]] Ledger& ledger() { return *ledger_; }
    [[nodiscard]] const Ledger& ledger() const { return *ledger_; }

    /// Posts an entry, writes stock.yaml back and refreshes the counts.
    Entry post(Entry entry);
    /// Reads balances again (another station or verb may have written).
    void refresh();
    /// Index of a line by name.
    [[nodiscard]] std::optional<std::size_t> lineNamed(const std::string& name) const;

  private:
    void take(WriteBackResult result);
    void takeBalances();

    std::string folder_;
    StockFile file_;
    FittingRules rules_;
    std::optional<Ledger> ledger_;
    std::vector<Finding> findings_;
    std::vector<EditedCount> edited_;
};

/// Thrown by Camp::open: everything found in the folder's files.
class CampNotOpened : public Error
{
  public:
    explicit CampNotOpened(std::vector<Finding> findings);
    [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }

  private:
    std::vector<Finding> findings_;
};

} // namespace quarterstep
