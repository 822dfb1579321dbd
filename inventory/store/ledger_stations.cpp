// SPDX-License-Identifier: GPL-3.0-or-later
// Which station writes here, and at which place.
#include "inventory/store/ledger_inside.hpp"

namespace quarterstep
{

void Ledger::Inside::bringUp()
{
    if (!older)
        return;
    migratedFrom = connection->engine().bringUp(*connection);
    older = false;
    inserts.emplace(*connection);
}

void Ledger::Inside::readStation()
{
    const auto own = connection->engine().station(*connection, folder, mode == Mode::readWrite);
    stationKey = own.key;
    stationId = own.id;
    moved = own.moved;
}

void Ledger::Inside::claim(bool asSecondStation)
{
    if (mode == Mode::readOnly)
        requireWritable();
    bringUp();
    const bool was = std::exchange(moved, false);
    try {
        LedgerTransaction transaction(*this);
        engine().claim(*connection, asSecondStation);
        transaction.commit();
    } catch (...) {
        moved = was;
        throw;
    }
    readStation();
}

void Ledger::claimPlace()
{
    inside_->claim(false);
}

void Ledger::becomeSecondStation()
{
    inside_->claim(true);
}

const std::string& Ledger::migratedFrom() const
{
    return inside_->migratedFrom;
}

std::string Ledger::station() const
{
    return idText(inside_->stationId);
}

void Ledger::copyTo(const std::string& target) const
{
    inside_->engine().copyTo(inside_->live(), target);
}

void Ledger::moveTo(const std::string& location)
{
    const auto here = position();
    StoreEngine::of(location)->takeOver(inside_->live());
    LedgerTransaction transaction(*inside_);
    inside_->requirePosition(here);
    inside_->engine().leave(inside_->live());
    transaction.commit();
}

} // namespace quarterstep
