// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/findings_model.hpp"

#include "app/desk/theme.hpp"
#include "app/session/audit_report.hpp"
#include "app/session/slip_words.hpp"
#include "app/session/wording.hpp"

#include <QBrush>
#include <QDateTime>
#include <QFont>
#include <QStringList>

namespace quarterstep
{

void FindingsModel::show(std::vector<AuditCase> cases)
{
    std::vector<FindingRow> rows;
    for (std::size_t at = 0; at < cases.size(); ++at) {
        const auto& findings = cases[at].judged.findings;
        bool any = false;
        for (std::size_t finding = 0; finding < findings.size(); ++finding)
            if (!isOnlyCounted(findings[finding].kind)) {
                rows.push_back({at, finding});
                any = true;
            }
        if (!any && cases[at].told)
            rows.push_back({at, findings.size()});
    }
    setRows({}); // nobody asks for a case of before
    cases_ = std::move(cases);
    setRows(std::move(rows));
}

const AuditCase& FindingsModel::caseAt(int row) const
{
    return cases_[at(row).at];
}

int FindingsModel::rowOf(const std::string& entry) const
{
    for (int row = 0; row < rowCount(); ++row)
        if (caseAt(row).entry() == entry)
            return row;
    return -1;
}

int FindingsModel::rowOfPerson(const QString& person) const
{
    for (int row = 0; row < rowCount(); ++row)
        if (QString::fromStdString(caseAt(row).judged.facts.person) == person)
            return row;
    return -1;
}

const AuditFinding* FindingsModel::findingOf(const FindingRow& row) const
{
    const auto& findings = cases_[row.at].judged.findings;
    return row.finding < findings.size() ? &findings[row.finding] : nullptr;
}

QString FindingsModel::shown(const FindingRow& row, int column) const
{
    const auto& one = cases_[row.at];
    const auto& facts = one.judged.facts;
    const auto* finding = findingOf(row);
    switch (column) {
    case dayColumn:
        return facts.atMs == 0 ? QString()
                               : ltr(QDateTime::fromMSecsSinceEpoch(facts.atMs)
                                         .toString(QStringLiteral("yyyy-MM-dd HH:mm")));
    case personColumn:
        return facts.person.empty() ? QString() : ltr(facts.person);
    case purposeColumn:
        return facts.atMs == 0 ? QString() : say(facts.purpose);
    case pairColumn: {
        QStringList lines;
        for (const auto& line : one.given)
            lines << QString::fromStdString(line);
        return lines.isEmpty() ? QString() : ltr(lines.join(QStringLiteral(" + ")));
    }
    case classColumn:
        return finding == nullptr ? tr("a slip is likely")
                                  : say(Sentence{quarterstep::infoOf(finding->kind).words, {}});
    case detailColumn:
        return finding == nullptr ? (one.told ? say(one.told->detail) : QString()) : say(finding->detail);
    default:
        return one.told ? QStringLiteral("%1 · %2").arg(ltr(QString::number(one.told->probability, 'f', 2)),
                                                        slipWords(*one.told))
                        : QString();
    }
}

QVariant FindingsModel::cell(const FindingRow& row, int column, int role) const
{
    const auto* finding = findingOf(row);
    const bool counts = finding != nullptr && quarterstep::infoOf(finding->kind).mismatch;
    switch (role) {
    case Qt::DisplayRole:
        return shown(row, column);
    case Qt::ToolTipRole:
        return finding != nullptr && column == classColumn
                   ? say(Sentence{quarterstep::infoOf(finding->kind).next, {}})
                   : shown(row, column);
    case Qt::AccessibleTextRole:
        return shown(row, column);
    case Qt::FontRole:
        if (counts && column == classColumn) {
            QFont bold;
            bold.setBold(true);
            return bold;
        }
        return {};
    case Qt::ForegroundRole:
        return counts && column == classColumn ? QVariant(QBrush(coloursOf(themeNow()).caution)) : QVariant();
    case rawRole:
        return column == dayColumn ? QVariant(static_cast<qlonglong>(cases_[row.at].judged.facts.atMs))
                                   : QVariant(shown(row, column));
    case classRole:
        return finding == nullptr ? -1 : static_cast<int>(finding->kind);
    default:
        return {};
    }
}

QString FindingsModel::title(int column) const
{
    switch (column) {
    case dayColumn:
        return tr("When");
    case personColumn:
        return tr("Person");
    case purposeColumn:
        return tr("Purpose");
    case pairColumn:
        return tr("Pair given");
    case classColumn:
        return tr("What");
    case detailColumn:
        return tr("In detail");
    case slipColumn:
        return tr("Likeliest slip");
    default:
        return {};
    }
}

} // namespace quarterstep
