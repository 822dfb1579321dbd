// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/stock_reading.hpp"

#include "app/desk/models/lines_model.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/places/transfer_panel.hpp"
#include "app/session/keeping.hpp"

#include <QDateTime>

#include <optional>
#include <utility>

namespace quarterstep
{

/// Entries never change, and whoever saw one has seen all that arrived before it.
void readOn(const Ledger& ledger, StockRead& read)
{
    std::vector<Entry> more;
    std::int64_t end = 0;
    do { // again where one arrived in between: it would be read twice
        end = ledger.position();
        more = ledger.entriesAfter(read.readTo);
    } while (end != ledger.position());
    read.readTo = end;
    for (auto& entry : more) {
        entry.texts.clear(); // records and reasons: no figure asks for them
        read.entries.push_back(std::move(entry));
    }
}

StockCounts countsOf(const StockRead& read, const std::string& site, const std::vector<StockLine>& stock)
{
    FiguresOptions options;
    options.offsetMs = localOffsetMs(QDateTime::currentMSecsSinceEpoch());
    return {stockFigures(read.entries, site, stock, options), binsToCount(read.entries, site, stock)};
}

void StockPlace::readCounts()
{
    stale_ = false;
    if (!camp_) {
        counts_ = {};
    } else if (camp_->hasLedger() && camp_->ledger().position() > shortLedger) {
        return readBeside();
    } else {
        if (camp_->hasLedger())
            readOn(camp_->ledger(), *read_);
        counts_ = countsOf(*read_, camp_->site(), camp_->stock());
    }
    showCounts();
}

/// A long ledger on a thread of its own, by a reader of its own; the lines stand there meanwhile with what
/// was known before. What changes while it is read is read after it.
void StockPlace::readBeside()
{
    if (counts_.figures.lines.empty())
        counts_ = countsOf({}, camp_->site(), camp_->stock());
    showCounts();
    again_ = reading_;
    if (std::exchange(reading_, true))
        return;
    reader_ =
        std::async(std::launch::async, [this, read = read_, at = camp_->ledgerAt(), site = camp_->site(),
                                        folder = camp_->folder(), stock = camp_->stock()] {
            std::optional<StockCounts> counts;
            try {
                readOn(Ledger::open(at, Ledger::Mode::readOnly, folder), *read);
                counts = countsOf(*read, site, stock);
            } catch (const std::exception&) { // told when somebody works with the ledger
            }
            QMetaObject::invokeMethod(
                this, [this, read, counts] { readingEnded(read, counts); }, Qt::QueuedConnection);
        });
}

void StockPlace::readingEnded(const std::shared_ptr<StockRead>& read,
                              const std::optional<StockCounts>& counts)
{
    reading_ = false;
    const bool ours = camp_ != nullptr && read == read_; // no other camp was opened meanwhile
    if (ours && counts)
        counts_ = *counts;
    if (std::exchange(again_, false))
        refresh();
    else if (ours)
        showCounts();
}

void StockPlace::showCounts()
{
    drawn_ = {};
    lines_->show(camp_ ? camp_->stock() : std::vector<StockLine>{}, counts_.figures);
    drawViews();
    showFigures();
    showSpot();
    transfer_->refresh();
    showEdits();
    showLine(line_);
}

} // namespace quarterstep
