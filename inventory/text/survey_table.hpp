// SPDX-License-Identifier: GPL-3.0-or-later
// A public refraction survey as a table: sphere, cylinder and axis in columns of their own, plus cylinders,
// objective readings only. Columns as in the vision examination of the National Health and Nutrition
// Examination Survey (National Center for Health Statistics, Hyattsville, Maryland; public domain;
// statistical reporting and analysis only). Acuities are the denominator of 20/x; 666 stands for worse than
// 20/200 and is given logMAR 1.1, a floor value by our own convention.
#pragma once

#include "core/fitting/prescription.hpp"
#include "inventory/text/csv.hpp"

#include <map>

namespace quarterstep
{

/// Columns of a row by name.
using CellsByName = std::map<std::string, CsvCell>;

/// Whether a header is that of such a survey.
[[nodiscard]] bool isSurveyHeader(const std::vector<std::string>& names);
/// Whether the survey importer knows a column.
[[nodiscard]] bool isSurveyColumn(const std::string& name);

/// Reads one row: person "survey-id", purpose distance, source objective, no cycloplegia. An eye without all
/// three numbers is not measured (note survey-eye-missing); a row without any eye is an error
/// (survey-no-eye).
[[nodiscard]] PersonRecord readSurveyRow(const CellsByName& cells, const Position& row,
                                         std::vector<Finding>& findings);

} // namespace quarterstep
