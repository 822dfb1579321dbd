// SPDX-License-Identifier: GPL-3.0-or-later
// Reads tests/check_values/*.csv: worked examples with their expected values, tolerances and sources.
// `arguments` and `expected` hold parts between semicolons; a part may be "name=value".
#pragma once

#include <iosfwd>
#include <map>
#include <string>
#include <vector>

namespace quarterstep::check
{

struct Row {
    std::string id;
    std::string input;
    std::string expected;
    std::string tolerance;
    std::string label;
    std::string function;
    std::vector<std::string> arguments;
    std::string source;
    std::string locator;

    /// Expected parts without names, or by name.
    [[nodiscard]] std::vector<std::string> parts() const;
    [[nodiscard]] std::map<std::string, std::string> named() const;
    /// First number of the tolerance; the one in degrees, or the first where there is none.
    [[nodiscard]] double within() const;
    [[nodiscard]] double withinDegrees() const;
};

/// Id, input and source: what a failure prints.
std::ostream& operator<<(std::ostream& out, const Row& row);

/// All rows of a file of tests/check_values. Throws when the file is missing or a row has the wrong width.
[[nodiscard]] std::vector<Row> rowsOf(const std::string& fileName);
[[nodiscard]] std::vector<Row> rowsOf(const std::string& fileName, const std::string& label);

/// Parts between `separator`, trimmed.
[[nodiscard]] std::vector<std::string> split(const std::string& text, char separator);

} // namespace quarterstep::check
