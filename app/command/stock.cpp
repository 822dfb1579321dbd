// SPDX-License-Identifier: GPL-3.0-or-later
// stock: the lines of a camp with their counts, and the state of the ledger.
#include "app/command/stock.hpp"

#include "app/command/answers.hpp"
#include "app/command/kept_work.hpp"
#include "app/command/output.hpp"
#include "app/session/wording.hpp"
#include "core/record/stock_figures.hpp"
#include "inventory/text/numbers.hpp"

#include <QCoreApplication>

namespace quarterstep
{
namespace
{

int campPeopleOf(const CommandLine& line)
{
    if (!line.has("--camp-people"))
        return FiguresOptions{}.campPeople;
    const auto number = parseWholeNumber(line.value("--camp-people"), 1, 100'000);
    if (!number)
        refuseUsage("option-value", number.complaint().sentence);
    return static_cast<int>(number.value());
}

/// What the stock verb shows of an open camp.
struct StockView {
    const Camp* camp = nullptr;
    std::optional<ChainCheck> chain;
    StockFigures figures;
    std::vector<Hold> holds;
    int campPeople = 100;
};

QJsonValue jsonCount(const std::optional<int>& count)
{
    return count ? QJsonValue(*count) : QJsonValue(QJsonValue::Null);
}

QJsonValue jsonShare(int part, int whole)
{
    return whole == 0 ? QJsonValue(QJsonValue::Null) : jsonNumber(double(part) / whole);
}

QJsonObject jsonLine(const StockLine& line, const LineFigures& figures)
{
    return {{"line", jsonText(line.name)},
            {"kind", jsonWord(line.kind)},
            {"on_hand", line.onHand},
            {"available", line.available()},
            {"held", line.held},
            {"quarantined", line.quarantined},
            {"bin", jsonTextOrNull(line.bin)},
            {"keep_least", jsonCount(line.keepLeast)},
            {"keep_most", jsonCount(line.keepMost)},
            {"reorder", figures.reorder},
            {"issued", figures.issued},
            {"days_of_stock", jsonNumber(figures.daysOfStock)},
            {"camps_of_stock", jsonNumber(figures.campsOfStock)}};
}

QJsonObject jsonFigures(const CampFigures& camp, int campPeople)
{
    return {{"days", camp.days},
            {"people", camp.people},
            {"camp_people", campPeople},
            {"hand_overs", camp.handOvers},
            {"returned_share", jsonShare(camp.returned, camp.handOvers)},
            {"stock_out_share", jsonShare(camp.linesOut, camp.lines)},
            {"to_plan_share", jsonShare(camp.linesToPlan, camp.linesPlanned)},
            {"to_reorder", camp.linesToReorder},
            {"count_accuracy", jsonShare(camp.countedRight, camp.counted)}};
}

QJsonObject jsonStock(const StockView& view)
{
    const auto& camp = *view.camp;
    QJsonArray lines;
    for (std::size_t i = 0; i < camp.stock().size(); ++i)
        lines.append(jsonLine(camp.stock()[i], view.figures.lines[i]));
    QJsonArray edited;
    for (const auto& each : camp.edited())
        edited.append(QJsonObject{
            {"line", jsonText(each.line)}, {"in_file", each.inFile}, {"in_ledger", each.inLedger}});
    QJsonValue ledger(QJsonValue::Null);
    if (const auto& chain = view.chain)
        ledger = QJsonObject{{"entries", static_cast<qint64>(chain->entries)},
                             {"checked", static_cast<qint64>(chain->checked)},
                             {"chain_ok", chain->ok},
                             {"first_bad", chain->firstBad ? QJsonValue(static_cast<qint64>(*chain->firstBad))
                                                           : QJsonValue(QJsonValue::Null)}};
    QJsonArray holds;
    for (const auto& hold : view.holds)
        holds.append(QJsonObject{{"entry", jsonText(hold.entry)},
                                 {"line", jsonText(hold.line)},
                                 {"quantity", hold.quantity},
                                 {"person", jsonTextOrNull(hold.person)},
                                 {"until", jsonTextOrNull(hold.until)}});
    return {{"site", jsonText(camp.site())},
            {"lines", lines},
            {"holds", holds},
            {"edited", edited},
            {"ledger", ledger},
            {"figures", jsonFigures(view.figures.camp, view.campPeople)}};
}

QString lineWords(const StockLine& line, const LineFigures& figures)
{
    QString text = QStringLiteral("%1  %2  ").arg(ltr(line.name), -24).arg(say(line.kind), -11) +
                   commandWords(QT_TRANSLATE_NOOP("command", "on hand %1  available %2"))
                       .arg(line.onHand, 4)
                       .arg(line.available(), 4);
    const auto add = [&text](const QString& words) { text += QStringLiteral("  ") + words; };
    if (!line.bin.empty())
        add(commandWords(QT_TRANSLATE_NOOP("command", "bin %1")).arg(ltr(line.bin)));
    if (line.held > 0)
        add(commandWords(QT_TRANSLATE_NOOP("command", "held %1")).arg(line.held));
    if (line.quarantined > 0)
        add(commandWords(QT_TRANSLATE_NOOP("command", "in quarantine %1")).arg(line.quarantined));
    if (figures.reorder > 0)
        add(commandWords(QT_TRANSLATE_NOOP("command", "reorder %1")).arg(figures.reorder));
    if (figures.daysOfStock)
        add(commandWords(QT_TRANSLATE_NOOP("command", "lasts %1 days, %2 camps"))
                .arg(*figures.daysOfStock, 0, 'f', 1)
                .arg(figures.campsOfStock.value_or(0.0), 0, 'f', 1));
    return text;
}

QString partOf(int part, int whole)
{
    return QStringLiteral("%1/%2").arg(part).arg(whole);
}

void showFigures(const StockView& view, Output& out)
{
    const auto& camp = view.figures.camp;
    auto text = commandWords(QT_TRANSLATE_NOOP("command", "lines out of stock %1, to reorder %2"))
                    .arg(partOf(camp.linesOut, camp.lines))
                    .arg(camp.linesToReorder);
    if (camp.linesPlanned > 0)
        text += QStringLiteral(", ") + commandWords(QT_TRANSLATE_NOOP("command", "within their levels %1"))
                                           .arg(partOf(camp.linesToPlan, camp.linesPlanned));
    if (camp.counted > 0)
        text += QStringLiteral(", ") + commandWords(QT_TRANSLATE_NOOP("command", "counted as in the book %1"))
                                           .arg(partOf(camp.countedRight, camp.counted));
    out.line(text);
    if (camp.days > 0)
        out.line(
            commandWords(QT_TRANSLATE_NOOP("command", "days with hand-overs %1, hand-overs %2, people seen "
                                                      "%3, came back %4; people at a camp %5"))
                .arg(camp.days)
                .arg(camp.handOvers)
                .arg(camp.people)
                .arg(camp.returned)
                .arg(view.campPeople));
}

void showStock(const StockView& view, Output& out)
{
    const auto& camp = *view.camp;
    const auto& chain = view.chain;
    out.line(QString::fromStdString(camp.site()));
    for (std::size_t i = 0; i < camp.stock().size(); ++i)
        out.line(lineWords(camp.stock()[i], view.figures.lines[i]));
    showFigures(view, out);
    for (const auto& hold : view.holds)
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "held: %1 of %2 for %3, until %4"))
                     .arg(hold.quantity)
                     .arg(ltr(hold.line), hold.person.empty() ? QStringLiteral("-") : ltr(hold.person),
                          hold.until.empty() ? QStringLiteral("-") : QString::fromStdString(hold.until)));
    if (!chain) {
        out.line(commandWords(QT_TRANSLATE_NOOP("command", "no ledger yet")));
        return;
    }
    const char* words = QT_TRANSLATE_NOOP("command", "ledger: %1 entries, not in order");
    if (chain->ok && chain->checked == chain->entries)
        words = QT_TRANSLATE_NOOP("command", "ledger: %1 entries, all in order");
    else if (chain->ok)
        words =
            QT_TRANSLATE_NOOP("command", "ledger: %1 entries, the last %2 in order; --check reads them all");
    const auto text = commandWords(words).arg(chain->entries);
    out.line(text.contains(QLatin1String("%2")) ? text.arg(chain->checked) : text);
}

int showAll(const CommandLine& line, const Camp& camp, Output& out)
{
    StockView view;
    view.camp = &camp;
    view.campPeople = campPeopleOf(line);
    FiguresReplay replay({}, camp.site(), 0);
    if (camp.hasLedger()) {
        const auto& ledger = camp.ledger();
        view.chain = line.has("--check") ? ledger.checkChain() : ledger.checkRecent();
        const auto last = ledger.entriesAfter(ledger.position() - 1);
        replay = FiguresReplay(ledger.takenBackIds(), camp.site(),
                               last.empty() ? 0 : localOffsetMs(last.back().atMs));
        ledger.replay([&](const Entry& entry) { replay.take(entry); });
        view.holds = holdsIn(ledger.entriesHolding());
    }
    view.figures = replay.figures(camp.stock(), view.campPeople);
    std::erase_if(view.holds, [&](const Hold& hold) { return hold.site != camp.site(); });
    if (line.has("--json"))
        out.json(jsonStock(view));
    else
        showStock(view, out);
    const auto& chain = view.chain;
    if (!chain || chain->ok || !line.has("--check")) // without it, opening said so already
        return Exit::done;
    out.tell(Severity::error, Position{}, "chain-broken", brokenChain(*chain));
    return Exit::badData;
}

} // namespace

int runStock(const CommandLine& line, Output& out)
{
    if (const auto exit = placeLedger(line, out))
        return *exit;
    if (const auto exit = settleStock(line, out))
        return *exit;
    const auto camp = Camp::open(line.value("--camp"), Ledger::Mode::readOnly);
    out.tell(camp.findings());
    tellEdits(camp, out);
    return line.has("--line") ? showCard(line, camp, out) : showAll(line, camp, out);
}

} // namespace quarterstep
