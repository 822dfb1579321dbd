// SPDX-License-Identifier: GPL-3.0-or-later
// A laboratory order as a file of records, in the syntax of the Data Communication Standard of the Vision
// Council (successor of ISO 16284:2006): LABEL=right;left, ? for what is not known, decimal point, ASCII, CR
// LF. The standard itself was not read: syntax and labels are those of public files, meanings are from memory
// where the table says so.
#pragma once

#include "core/fitting/laboratory_order.hpp"
#include "core/fitting/stock_line.hpp"
#include "inventory/exchange/exchange.hpp"

#include <span>

namespace quarterstep
{

/// A label of the standard or, beginning with _, one of ours.
struct OrderLabel {
    const char* label;
    bool perEye;
    const char* meaning;    ///< for the help
    const char* confidence; ///< "seen": the label stands in several public files; "from memory"; "ours"
};
[[nodiscard]] std::span<const OrderLabel> orderLabels();

/// An order on its way out or in.
struct OrderFile {
    std::string job;
    LaboratoryOrder order;
    FrameData frame; ///< boxed sizes in mm; 0 = not known
    RulesStamp rules;
};

/// Both eyes leave in one cylinder form: that of the order, minus where as written would mix them. Errors:
/// order-text (job or person that plain ASCII cannot say). Cautions: order-incomplete (what must be measured
/// before), order-form, order-text (other words, blanks in place of what cannot be said).
[[nodiscard]] Reading<std::string> writeOrderFile(const OrderFile& file);

/// Reads what writeOrderFile writes, and any file of that syntax as far as the labels are known. Errors:
/// order-line-end, order-line, order-label, order-label-twice, order-value, order-ascii. Notes:
/// order-label-unknown.
[[nodiscard]] Reading<OrderFile> readOrderFile(const std::string& bytes, const std::string& name);

} // namespace quarterstep
