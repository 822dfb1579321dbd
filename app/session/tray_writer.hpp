// SPDX-License-Identifier: GPL-3.0-or-later
// From typed trays to lines of a stock.yaml; see tray.hpp.
#pragma once

#include "core/finding.hpp"
#include "core/optics/notation.hpp"

#include <QRegularExpression>
#include <QString>

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace quarterstep
{

/// One typed line, taken apart. Columns count from 1.
struct TrayRow {
    int number = 0;
    QString kind; ///< near, distance, intermediate, lens, frame, other or empty
    QString what; ///< powers, size or name
    int whatColumn = 1;
    QString rest; ///< after the colon
    int restColumn = 1;
};

/// What stands after the colon.
struct TrayCounts {
    int count = 0;
    QString centres;
    QString bin;
    QString shape;
};

/// Makes a line of the stock of every power of a tray. Findings: tray-form, tray-power, tray-range,
/// tray-count, tray-twice.
class TrayWriter
{
  public:
    explicit TrayWriter(std::vector<Finding>& findings) : findings_(findings) {}

    void take(const TrayRow& row);
    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] std::size_t lines() const { return names_.size(); }

  private:
    void tell(const TrayRow& row, int column, const char* code, Sentence sentence);
    std::optional<TrayCounts> countsOf(const TrayRow& row);
    std::vector<LensPower> powersOf(const TrayRow& row);
    std::vector<LensPower> rangeOf(const TrayRow& row, const QRegularExpressionMatch& found);
    std::optional<LensPower> powerAt(const TrayRow& row, const QString& text, qsizetype offset);
    void addFrame(const TrayRow& row, const TrayCounts& counts, const QString& bin);
    void addPowers(const TrayRow& row, const TrayCounts& counts, const QString& bin);
    void add(const TrayRow& row, const QString& name, const QString& keys);

    std::vector<Finding>& findings_;
    std::string text_;
    std::set<QString> names_;
    int trays_ = 0;
};

/// In double quotes, as YAML reads it; blanks in a row become one.
[[nodiscard]] QString yamlQuoted(QString text);

} // namespace quarterstep
