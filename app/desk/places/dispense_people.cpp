// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense and the people of its list: a table, what was brought in, and what the ledger says they
// were given. Long lists come in pieces, between which the window goes on.
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/given_before.hpp"
#include "app/desk/places/line_panel.hpp"

#include <QDate>
#include <QLabel>
#include <QTableView>
#include <QTimer>

#include <algorithm>

namespace quarterstep
{

namespace
{
constexpr int peopleAtOnce = 100; ///< a few ms of work
} // namespace

void DispensePlace::loadPeople(const std::string& path)
{
    const auto reading =
        readPrescriptionTable(path, QDate::currentDate().toString(Qt::ISODate).toStdString());
    for (const auto& finding : reading.findings)
        if (finding.severity == Severity::error)
            throw Error(finding, 3);
    arriving_.clear();
    askedFor_ = 0;
    waiting_->setRows(reading.value.rows);
    waitingHint_->setText(tr("The table has no rows. Type a prescription below."));
    arrive();
}

void DispensePlace::addPeople(std::shared_ptr<const std::vector<TableRow>> rows)
{
    if (!camp_ || !rows)
        return;
    auto known = waitingCodes();
    arriving_.push_back({std::move(rows), 0, std::move(known)});
    arrive();
}

/// One piece now, the others when the window has nothing else to do.
void DispensePlace::arrive()
{
    if (!arriving_.empty()) {
        auto& [rows, next, known] = arriving_.front();
        std::vector<TableRow> piece;
        for (; next < rows->size() && piece.size() < peopleAtOnce; ++next)
            if (const auto& row = (*rows)[next]; row.record && known.insert(row.person).second)
                piece.push_back(row);
        if (next >= rows->size())
            arriving_.erase(arriving_.begin());
        waiting_->addRows(std::move(piece));
    }
    const bool any = waiting_->rowCount() > 0;
    waitingHint_->setVisible(!any);
    waitingView_->setVisible(any);
    if (askLedger() || !arriving_.empty())
        QTimer::singleShot(0, this, [this] {
            if (camp_ && (askedFor_ < waiting_->rowCount() || !arriving_.empty()))
                arrive();
        });
}

/// Asks for the next piece of the list; returns whether some are left.
bool DispensePlace::askLedger()
{
    const int end = std::min(waiting_->rowCount(), askedFor_ + peopleAtOnce);
    if (!camp_ || !camp_->hasLedger())
        askedFor_ = waiting_->rowCount();
    for (; askedFor_ < end; ++askedFor_) {
        const auto& person = waiting_->rowAt(askedFor_).person;
        if (const auto entries = camp_->ledger().entriesOfPerson(person); !entries.empty())
            waiting_->setOutcome(person, outcomeOf(entries));
    }
    return askedFor_ < waiting_->rowCount();
}

std::set<std::string> DispensePlace::waitingCodes() const
{
    std::set<std::string> codes;
    for (int row = 0; row < waiting_->rowCount(); ++row)
        codes.insert(waiting_->rowAt(row).person);
    for (const auto& coming : arriving_)
        for (const auto& row : *coming.rows)
            codes.insert(row.person);
    return codes;
}

std::vector<PersonRecord> DispensePlace::people() const
{
    std::vector<PersonRecord> people;
    for (int row = 0; row < waiting_->rowCount(); ++row)
        if (const auto& record = waiting_->rowAt(row).record)
            people.push_back(*record);
    return people;
}

int DispensePlace::peopleCount() const
{
    int count = 0;
    for (int row = 0; row < waiting_->rowCount(); ++row)
        count += waiting_->rowAt(row).record ? 1 : 0;
    return count;
}

const PersonRecord* DispensePlace::recordOf(const std::string& person) const
{
    if (record_ && record_->person == person)
        return &*record_;
    const int row = waiting_->rowOf(person);
    if (row >= 0 && waiting_->rowAt(row).record)
        return &*waiting_->rowAt(row).record;
    return line_->recordOf(person);
}

bool DispensePlace::choosePerson(const std::string& code)
{
    const int row = waiting_->rowOf(code);
    if (row < 0)
        return false;
    waitingView_->setCurrentIndex(waiting_->index(row, 0));
    return waiting_->stateAt(row) != WaitingModel::State::unreadable;
}

} // namespace quarterstep
