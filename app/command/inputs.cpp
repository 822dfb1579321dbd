// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command/inputs.hpp"

#include "app/command/output.hpp"

#include <QDate>

#include <algorithm>

namespace quarterstep
{
namespace
{

template <class T>
T usableOrEnd(Reading<T> reading, Output& out)
{
    out.tell(reading.findings);
    if (!reading.usable())
        throw FilesNotRead();
    return std::move(reading.value);
}

/// An empty box is not an error, but whoever asks wants to know why nobody is served.
void tellEmptyBox(const std::string& file, const std::vector<StockLine>& stock, Output& out)
{
    const auto matched = [](const StockLine& line) { return line.kind != LineKind::other; };
    if (std::none_of(stock.begin(), stock.end(), matched))
        out.tell(Severity::caution, {file, 0, 0}, "stock-no-lines",
                 {QS_SAY("core", "no line here can be matched: the box holds no pair, lens or frame"), {}});
    else if (std::none_of(stock.begin(), stock.end(),
                          [&](const StockLine& line) { return matched(line) && line.available() > 0; }))
        out.tell(Severity::caution, {file, 0, 0}, "stock-all-out",
                 {QS_SAY("core", "nothing is left in any line: count the box, or take in stock"), {}});
}

} // namespace

Box openBox(const CommandLine& line, Output& out)
{
    const bool camp = line.has("--camp");
    if (camp == line.has("--stock"))
        throw usageError("option-missing",
                         {QS_SAY("core", "`%1` needs either --camp FOLDER or --stock FILE"), {line.verb}});
    if (camp && line.has("--rules"))
        throw usageError("option-missing",
                         {QS_SAY("core", "--rules goes with --stock; a camp folder has its own rules"), {}});
    if (camp) {
        const auto opened = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
        out.tell(opened.findings());
        tellEmptyBox(line.value("--camp"), opened.stock(), out);
        return {opened.stock(), opened.rules()};
    }
    auto stock = readStockFile(line.value("--stock"));
    auto rules = line.has("--rules") ? readRulesFile(line.value("--rules"))
                                     : Reading<FittingRules>{defaultRules(), {}};
    out.tell(stock.findings);
    out.tell(rules.findings);
    if (!stock.usable() || !rules.usable())
        throw FilesNotRead();
    tellEmptyBox(line.value("--stock"), stock.value.lines, out);
    return {std::move(stock.value.lines), std::move(rules.value)};
}

PrescriptionTable readTable(const CommandLine& line, Output& out)
{
    const auto today = QDate::currentDate().toString(Qt::ISODate).toStdString();
    auto table = usableOrEnd(readPrescriptionTable(line.arguments.front(), today), out);
    for (const auto& row : table.rows)
        out.tell(row.findings);
    return table;
}

MatchOptions matchOptions(const CommandLine& line, const FittingRules& rules)
{
    MatchOptions options;
    options.profile = line.value("--profile");
    if (!options.profile.empty() && rules.find(options.profile) == nullptr) {
        std::string names;
        for (const auto& profile : rules.profiles)
            names += (names.empty() ? "" : ", ") + profile.name;
        throw usageError("profile-unknown", {QS_SAY("core", "there is no profile “%1”; there are %2"),
                                             {options.profile, names}});
    }
    options.candidates.everyLine = line.has("--all");
    if (line.has("--all"))
        options.candidates.most = std::numeric_limits<std::size_t>::max();
    return options;
}

CylinderForm cylinderFormOf(const CommandLine& line)
{
    const auto word = line.value("--form");
    if (word.empty() || word == "minus")
        return CylinderForm::minus;
    if (word == "plus")
        return CylinderForm::plus;
    if (word == "as-written")
        return CylinderForm::asWritten;
    throw errorSaying("option-value",
                      {QS_SAY("core", "“%1” is not a form; write minus, plus or as-written"), {word}},
                      Exit::usage);
}

} // namespace quarterstep
