// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/finding_list_model.hpp"

#include "app/session/wording.hpp"

namespace quarterstep
{

namespace
{
QString severityWords(Severity severity)
{
    switch (severity) {
    case Severity::note:
        return FindingListModel::tr("note");
    case Severity::caution:
        return FindingListModel::tr("caution");
    case Severity::error:
        break;
    }
    return FindingListModel::tr("error");
}

/// "12:5", "12" without a column, "" without a place.
QString placeWords(const Position& place)
{
    if (place.line <= 0)
        return {};
    const auto line = QString::number(place.line);
    return ltr(place.column > 0 ? line + QLatin1Char(':') + QString::number(place.column) : line);
}
} // namespace

FindingListModel::FindingListModel(QObject* parent) : QAbstractTableModel(parent) {}

void FindingListModel::show(std::vector<Finding> findings)
{
    beginResetModel();
    findings_ = std::move(findings);
    endResetModel();
}

int FindingListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(findings_.size());
}

int FindingListModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant FindingListModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& finding = findings_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
        return say(finding);
    const bool raw = role == rawRole;
    if (!raw && role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case severityColumn:
        return raw ? QVariant(static_cast<int>(finding.severity)) : QVariant(severityWords(finding.severity));
    case placeColumn:
        return raw ? QVariant(finding.position.line) : QVariant(placeWords(finding.position));
    case sentenceColumn:
        return say(finding.sentence);
    default:
        return raw ? QString::fromStdString(finding.code) : ltr(finding.code);
    }
}

QVariant FindingListModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case severityColumn:
        return tr("Kind");
    case placeColumn:
        return tr("Where");
    case sentenceColumn:
        return tr("Finding");
    case codeColumn:
        return tr("Code");
    default:
        return {};
    }
}

} // namespace quarterstep
