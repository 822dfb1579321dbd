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

FindingsModel::FindingsModel(QObject* parent) : QAbstractTableModel(parent) {}

void FindingsModel::show(std::vector<AuditCase> cases)
{
    beginResetModel();
    cases_ = std::move(cases);
    rows_.clear();
    for (std::size_t at = 0; at < cases_.size(); ++at) {
        const auto& findings = cases_[at].judged.findings;
        bool any = false;
        for (std::size_t finding = 0; finding < findings.size(); ++finding)
            if (!isOnlyCounted(findings[finding].kind)) {
                rows_.push_back({at, finding});
                any = true;
            }
        if (!any && cases_[at].told)
            rows_.push_back({at, findings.size()});
    }
    endResetModel();
}

const AuditCase& FindingsModel::caseAt(int row) const
{
    return cases_[rows_[static_cast<std::size_t>(row)].at];
}

int FindingsModel::rowOf(const std::string& entry) const
{
    for (std::size_t row = 0; row < rows_.size(); ++row)
        if (cases_[rows_[row].at].entry() == entry)
            return static_cast<int>(row);
    return -1;
}

int FindingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int FindingsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

const AuditFinding* FindingsModel::findingOf(const Row& row) const
{
    const auto& findings = cases_[row.at].judged.findings;
    return row.finding < findings.size() ? &findings[row.finding] : nullptr;
}

QString FindingsModel::shown(const Row& row, int column) const
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

QVariant FindingsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    const auto* finding = findingOf(row);
    const bool counts = finding != nullptr && quarterstep::infoOf(finding->kind).mismatch;
    switch (role) {
    case Qt::DisplayRole:
        return shown(row, index.column());
    case Qt::ToolTipRole:
        return finding != nullptr && index.column() == classColumn
                   ? say(Sentence{quarterstep::infoOf(finding->kind).next, {}})
                   : shown(row, index.column());
    case Qt::AccessibleTextRole:
        return shown(row, index.column());
    case Qt::FontRole:
        if (counts && index.column() == classColumn) {
            QFont bold;
            bold.setBold(true);
            return bold;
        }
        return {};
    case Qt::ForegroundRole:
        return counts && index.column() == classColumn ? QVariant(QBrush(coloursOf(themeNow()).caution))
                                                       : QVariant();
    case rawRole:
        return index.column() == dayColumn
                   ? QVariant(static_cast<qlonglong>(cases_[row.at].judged.facts.atMs))
                   : QVariant(shown(row, index.column()));
    case classRole:
        return finding == nullptr ? -1 : static_cast<int>(finding->kind);
    default:
        return {};
    }
}

QVariant FindingsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
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
