// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/tray_writer.hpp"

#include "inventory/text/source_text.hpp"

#include <cmath>

namespace quarterstep
{

namespace
{

/// A, B … Z, AA, AB …
QString letterOf(int tray)
{
    QString letters;
    for (int left = tray; left >= 0; left = left / 26 - 1)
        letters.prepend(QChar(QLatin1Char(static_cast<char>('A' + left % 26))));
    return letters;
}

/// "+200", "-050", "000": hundredths with the sign, as labels have them.
QString codeOf(Dioptres power)
{
    const long hundredths = std::lround(power.value() * 100.0);
    const auto digits = QString::number(std::abs(hundredths)).rightJustified(3, QLatin1Char('0'));
    return (hundredths > 0 ? QStringLiteral("+") : hundredths < 0 ? QStringLiteral("-") : QString()) + digits;
}

} // namespace

QString yamlQuoted(QString text)
{
    text.replace(QLatin1Char('\\'), QStringLiteral("\\\\")).replace(QLatin1Char('"'), QStringLiteral("\\\""));
    return QLatin1Char('"') + text.simplified() + QLatin1Char('"');
}

void TrayWriter::tell(const TrayRow& row, int column, const char* code, Sentence sentence)
{
    Finding finding;
    finding.position = {"tray", row.number, column};
    finding.code = code;
    finding.sentence = std::move(sentence);
    findings_.push_back(std::move(finding));
}

std::optional<TrayCounts> TrayWriter::countsOf(const TrayRow& row)
{
    static const QRegularExpression form(
        QStringLiteral("^\\s*([0-9]{1,6})(?:\\s+each)?((?:\\s+(?:centres|bin|round)\\s+\\S+)*)\\s*$"));
    const auto found = form.match(row.rest);
    if (!found.hasMatch()) {
        tell(row, row.restColumn, "tray-count",
             {QS_SAY("core", "after the colon stands how many lie in each bin, then centres, bin or round: "
                             "write for example \": 10 centres 62 bin A\""),
              {}});
        return {};
    }
    TrayCounts counts;
    counts.count = found.captured(1).toInt();
    static const QRegularExpression pairs(QStringLiteral("(centres|bin|round)\\s+(\\S+)"));
    for (auto each = pairs.globalMatch(found.captured(2)); each.hasNext();) {
        const auto pair = each.next();
        auto& place = pair.captured(1) == QLatin1String("centres") ? counts.centres
                      : pair.captured(1) == QLatin1String("bin")   ? counts.bin
                                                                   : counts.shape;
        place = pair.captured(2);
    }
    static const QRegularExpression number(QStringLiteral("^[0-9]{1,3}([.][0-9]{1,2})?$"));
    for (const auto& text : {counts.centres, counts.shape})
        if (!text.isEmpty() && !number.match(text).hasMatch()) {
            tell(row, row.restColumn, "tray-count",
                 {QS_SAY("core", "%1 is not a size in millimetres; write for example 62"),
                  {shown(text.toStdString())}});
            return {};
        }
    return counts;
}

std::optional<LensPower> TrayWriter::powerAt(const TrayRow& row, const QString& text, qsizetype offset)
{
    const auto parsed = parseLensPower(text.trimmed().toStdString());
    if (!parsed) {
        tell(row, row.whatColumn + static_cast<int>(offset) + parsed.complaint().offset, "tray-power",
             parsed.complaint().sentence);
        return {};
    }
    const bool lens = row.kind == QLatin1String("lens");
    if (!parsed.value().axisGiven && !lens) {
        tell(row, row.whatColumn + static_cast<int>(offset), "tray-power",
             {QS_SAY("core", "a ready-made pair with a cylinder needs its axis; write for example "
                             "-1.00 -0.50 x 90"),
              {}});
        return {};
    }
    return parsed.value();
}

std::vector<LensPower> TrayWriter::rangeOf(const TrayRow& row, const QRegularExpressionMatch& found)
{
    const auto from = powerAt(row, found.captured(1), found.capturedStart(1));
    const auto to = powerAt(row, found.captured(2), found.capturedStart(2));
    if (!from || !to)
        return {};
    const double step = found.captured(3).isEmpty() ? 0.25 : found.captured(3).toDouble();
    const double first = from->power.sphere.value();
    const double last = to->power.sphere.value();
    const double steps = step > 0.0 ? std::abs(last - first) / step : -1.0;
    const bool whole = steps >= 0.0 && std::abs(steps - std::round(steps)) < 1e-6;
    const bool spheres = from->power.cylinder == Dioptres{} && to->power.cylinder == Dioptres{};
    if (!whole || !spheres || steps > 400.0) {
        tell(row, row.whatColumn, "tray-range",
             {QS_SAY("core", "from %1 to %2 is no whole number of steps of %3; write spheres and a step that "
                             "meets the last one"),
              {writePower(from->power), writePower(to->power), QString::number(step, 'f', 2).toStdString()}});
        return {};
    }
    std::vector<LensPower> powers;
    for (int i = 0; i <= static_cast<int>(std::lround(steps)); ++i)
        powers.push_back({sphereOf(first + i * (last < first ? -step : step)), true});
    return powers;
}

std::vector<LensPower> TrayWriter::powersOf(const TrayRow& row)
{
    static const QRegularExpression range(
        QStringLiteral("^(\\S.*?)\\s+to\\s+(\\S.*?)(?:\\s+by\\s+([0-9]+(?:[.][0-9]+)?))?\\s*$"));
    if (const auto found = range.match(row.what); found.hasMatch())
        return rangeOf(row, found);
    std::vector<LensPower> powers;
    qsizetype offset = 0;
    for (const auto& text : row.what.split(QLatin1Char(','))) {
        const auto spaces = text.size() - QStringView(text).trimmed().size();
        if (const auto power = powerAt(row, text, offset + (offset > 0 ? spaces : 0)))
            powers.push_back(*power);
        offset += text.size() + 1;
    }
    return powers;
}

void TrayWriter::add(const TrayRow& row, const QString& name, const QString& keys)
{
    if (!names_.insert(name).second) {
        tell(row, row.whatColumn, "tray-twice",
             {QS_SAY("core", "%1 stands in an earlier tray already; put the counts together, or give the two "
                             "different centres"),
              {name.toStdString()}});
        return;
    }
    text_ += "  - {line: " + name.toStdString() + ", " + keys.toStdString() + "}\n";
}

void TrayWriter::addFrame(const TrayRow& row, const TrayCounts& counts, const QString& bin)
{
    static const QRegularExpression size(QStringLiteral("^([0-9]{2})-([0-9]{1,2})$"));
    const auto found = size.match(row.what.trimmed());
    if (!found.hasMatch())
        return tell(row, row.whatColumn, "tray-form",
                    {QS_SAY("core", "a frame is given by its lens and bridge in millimetres; write for "
                                    "example frame 44-18: 12"),
                     {}});
    const auto shape = counts.shape.isEmpty() ? found.captured(1) : counts.shape;
    add(row, QStringLiteral("F-") + found.captured(1) + found.captured(2),
        QStringLiteral("kind: frame, takes: [round %1], frame: {lens: %2, bridge: %3}, bin: %4, on hand: %5")
            .arg(shape, found.captured(1), found.captured(2), yamlQuoted(bin),
                 QString::number(counts.count)));
}

void TrayWriter::addPowers(const TrayRow& row, const TrayCounts& counts, const QString& bin)
{
    const auto powers = powersOf(row);
    const bool lens = row.kind == QLatin1String("lens");
    const QString prefix = lens                 ? QStringLiteral("L")
                           : row.kind.isEmpty() ? QStringLiteral("R")
                                                : row.kind.left(1).toUpper();
    int place = 0;
    for (const auto& power : powers) {
        const bool sphere = power.power.cylinder == Dioptres{};
        auto name =
            prefix +
            (codeOf(power.power.sphere).startsWith(QLatin1Char('0')) ? QStringLiteral("-") : QString()) +
            codeOf(power.power.sphere);
        if (!sphere)
            name += codeOf(power.power.cylinder) +
                    (power.axisGiven ? QStringLiteral("x%1").arg(power.power.axis.value()) : QString());
        if (!counts.centres.isEmpty())
            name += QLatin1Char('-') + counts.centres;
        auto written = QString::fromStdString(power.axisGiven ? writePower(power.power)
                                                              : writeDioptres(power.power.sphere) + " " +
                                                                    writeDioptres(power.power.cylinder));
        if (!sphere)
            written = QLatin1Char('"') + written + QLatin1Char('"');
        auto keys = QStringLiteral("kind: %1, power: %2")
                        .arg(lens ? QStringLiteral("lens") : QStringLiteral("ready-made"), written);
        if (!lens && !row.kind.isEmpty())
            keys += QStringLiteral(", use: ") + row.kind;
        if (lens)
            keys += QStringLiteral(", shape: round %1, side: either%2")
                        .arg(counts.shape.isEmpty() ? QStringLiteral("44") : counts.shape,
                             power.axisGiven ? QString() : QStringLiteral(", axis: any"));
        else if (!counts.centres.isEmpty())
            keys += QStringLiteral(", centres: %1, centres from: label").arg(counts.centres);
        const auto own = powers.size() > 1 ? bin + QString::number(++place) : bin;
        add(row, name,
            keys + QStringLiteral(", bin: %1, on hand: %2").arg(yamlQuoted(own)).arg(counts.count));
    }
}

void TrayWriter::take(const TrayRow& row)
{
    const int tray = trays_++;
    const auto counts = countsOf(row);
    if (!counts)
        return;
    const auto bin = counts->bin.isEmpty() ? letterOf(tray) : counts->bin;
    if (row.kind == QLatin1String("frame"))
        addFrame(row, *counts, bin);
    else if (row.kind == QLatin1String("other"))
        add(row, yamlQuoted(row.what),
            QStringLiteral("kind: other, bin: %1, on hand: %2").arg(yamlQuoted(bin)).arg(counts->count));
    else
        addPowers(row, *counts, bin);
}

} // namespace quarterstep
