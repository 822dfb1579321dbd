// SPDX-License-Identifier: GPL-3.0-or-later
// The papers: plain values in, blocks out. No paper bears a person's name; a camp code is enough.
#pragma once

#include "app/paper/content/paper.hpp"
#include "app/session/pins.hpp"
#include "core/fitting/recommendation.hpp"

#include <optional>
#include <span>

namespace quarterstep
{

/// The pair a paper speaks of: judged as matching judges it.
struct PaperPair {
    struct Piece {
        PartSide side = PartSide::pair;
        StockLine line;
    };
    std::vector<Piece> pieces;
    Supply supply;
    Fit fit;
    bool handedOver = false; ///< false: suggested
    std::string reason;      ///< why, where the pair is outside a limit
};

/// Judges parts of the stock as matching does. Empty where they make no pair, or nothing can be judged.
[[nodiscard]] std::optional<PaperPair> pairFor(const Recommendation& answer, std::span<const Part> parts,
                                               std::span<const StockLine> stock, const FittingRules& rules,
                                               const TrialAcuity* trial = nullptr);

struct PersonAnswer {
    Recommendation recommendation;
    std::string profileVersion;
    std::optional<PaperPair> pair;    ///< given or suggested
    std::optional<PaperPair> interim; ///< until a custom order comes
};

/// The person's own note, for any verdict; with a referral before or beside it, it says so.
[[nodiscard]] Paper handOverNote(const PersonRecord& person, const PersonAnswer& answer,
                                 const PaperSource& source);
/// To the clinic: what was observed and what is wished, never a diagnosis; a part comes back.
[[nodiscard]] Paper referralLetter(const PersonRecord& person, const PersonAnswer& answer,
                                   const PaperSource& source);
[[nodiscard]] Paper laboratoryOrderPaper(const PersonRecord& person, const PersonAnswer& answer,
                                         const LaboratoryOrder& order, const PaperSource& source);
/// `orderedOn`: ISO date, or empty when nothing is recorded as ordered.
[[nodiscard]] Paper collectionNote(const PersonRecord& person, const PersonAnswer& answer,
                                   const std::string& orderedOn, const PaperSource& source);
[[nodiscard]] Paper guardianNote(const PersonRecord& person, const PersonAnswer& answer,
                                 const PaperSource& source);
/// For the class room: no prescription stands on it.
[[nodiscard]] Paper teacherNote(const PersonRecord& person, const PersonAnswer& answer,
                                const PaperSource& source);

[[nodiscard]] Paper stockLabel(const StockLine& line, const PaperSource& source);
/// A bin and the lines that lie in it.
[[nodiscard]] Paper binLabel(const std::string& bin, std::span<const StockLine> lines,
                             const PaperSource& source);

struct PackingRow {
    std::string box;
    std::string bin;
    std::string line;
    std::string power; ///< as on the label, may be empty
    int quantity = 0;
};
/// A row for a line, its bin and power taken from it where none is given.
[[nodiscard]] PackingRow packingRow(const StockLine& line, std::string box, std::string bin, int quantity);
/// Box by box, in the order of the bins.
[[nodiscard]] Paper packingList(std::vector<PackingRow> rows, const PaperSource& source);

struct CountRow {
    std::string bin;
    std::string line;
};
/// Blind: no quantity of the book stands on it.
[[nodiscard]] Paper countSheetPaper(const std::vector<CountRow>& rows, const PaperSource& source);

struct AuditRow {
    std::string entry; ///< number or short id
    std::string day;
    std::string person;
    std::string purpose; ///< distance, near …
    std::string right;   ///< final as recorded
    std::string left;
    std::string lines;
    std::string profile;         ///< with its version
    std::string labelRight = {}; ///< what the pair should read, for a lot
    std::string labelLeft = {};
};
/// To be filled in at the table; nobody who handed over is named.
[[nodiscard]] Paper auditSheet(const std::vector<AuditRow>& rows, const PaperSource& source);

struct AuditReport;
/// One page for the site where the report hides small counts, else everything for the supervisor.
[[nodiscard]] Paper auditReportPaper(const AuditReport& report, const PaperSource& source);

[[nodiscard]] Paper quickCard(Role role, const PaperSource& source);

} // namespace quarterstep
