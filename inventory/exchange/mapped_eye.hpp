// SPDX-License-Identifier: GPL-3.0-or-later
// One eye of a row whose parts stand in columns of their own, and numbers whose sign was left out.
#pragma once

#include "inventory/exchange/mapped_header.hpp"

namespace quarterstep
{

/// What is filled while a row is read.
struct MappedRow {
    const CsvRow* csv = nullptr;
    PersonRecord record;
    PartPlaces places;
    TableRow row;

    void refuse(const Position& place, const Complaint& complaint);
};

/// A power with the sign that the map gives to numbers without one; counts it.
[[nodiscard]] std::string signedSphere(const std::string& text, MappedTable& table);
/// Whether the cell is written with the other decimal mark than the map says; notes a decimal comma.
[[nodiscard]] bool wrongMark(const std::string& text, MappedTable& table);
[[nodiscard]] Complaint markComplaint(const std::string& text);
/// Reads the parts of one eye as one text, as any eye is read, where the table has them.
void takeEyeParts(Eye eye, const MappedHeader& header, MappedTable& table, MappedRow& row);

} // namespace quarterstep
