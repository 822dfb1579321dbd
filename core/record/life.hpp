// SPDX-License-Identifier: GPL-3.0-or-later
// What entries say together: which still stand, which transfers are in the air, what is held
// for whom, how far each order is.
#pragma once

#include "core/record/entry.hpp"

#include <set>
#include <span>

namespace quarterstep
{

/// Ids of the entries that a later one took back.
[[nodiscard]] std::set<std::string> takenBack(std::span<const Entry> entries);

/// Entries `transferred-out` that no standing `transferred-in` answers (field "sent"), in their order.
[[nodiscard]] std::vector<Entry> inTheAir(std::span<const Entry> entries);

/// Pieces kept for somebody.
struct Hold {
    std::string entry; ///< that holds them
    std::string site;
    std::string line;
    std::string person; ///< may be empty
    std::string until;  ///< ISO date, may be empty
    int quantity = 0;
};

/// What is still held, oldest first. An entry that lets pieces go lets those of its person go first, then the
/// oldest.
[[nodiscard]] std::vector<Hold> holdsIn(std::span<const Entry> entries);

enum class OrderState { ordered, arrived, checked, delivered, notCollected };

/// The word of a state, that of the entry which leads there ("arrived").
[[nodiscard]] const char* wordOf(OrderState state);

struct Order {
    std::string id; ///< of its entry `ordered`
    std::string person;
    std::string site;
    OrderState state = OrderState::ordered;
    int remakes = 0;
    std::vector<Movement> held; ///< frames kept for it; they leave with it
    std::int64_t orderedMs = 0;
    std::int64_t changedMs = 0;
    std::string lastEntry;

    [[nodiscard]] bool open() const
    {
        return state != OrderState::delivered && state != OrderState::notCollected;
    }
};

/// Every order that was not taken back, oldest first. Steps that were taken back do not count.
[[nodiscard]] std::vector<Order> ordersIn(std::span<const Entry> entries);

/// Whether a step may follow: arrived after ordered; checked after arrived; delivered after checked; not
/// collected after checked; remade after arrived, checked or delivered, which leads back to ordered.
[[nodiscard]] bool mayFollow(const Order& order, EntryKind step);

} // namespace quarterstep
