// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/brought_rows_model.hpp"

#include "app/desk/bringing/meaning_words.hpp"
#include "app/session/wording.hpp"

#include <QStringList>

#include <algorithm>

namespace quarterstep
{

BroughtRowsModel::BroughtRowsModel(QObject* parent) : QAbstractTableModel(parent) {}

void BroughtRowsModel::show(std::shared_ptr<const BroughtIn> read)
{
    beginResetModel();
    read_ = std::move(read);
    endResetModel();
}

void BroughtRowsModel::showOnlyTold(bool only)
{
    beginResetModel();
    onlyTold_ = only;
    endResetModel();
}

const TableRow* BroughtRowsModel::rowAt(int row) const
{
    if (row < 0 || row >= rowCount())
        return nullptr;
    const auto at = static_cast<std::size_t>(row);
    return &read_->rows[onlyTold_ ? read_->told[at] : at];
}

int BroughtRowsModel::rowCount(const QModelIndex& parent) const
{
    if (parent.isValid() || !read_)
        return 0;
    return static_cast<int>(onlyTold_ ? read_->told.size() : read_->rows.size());
}

int BroughtRowsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QString BroughtRowsModel::stateOf(const TableRow& row)
{
    if (!row.record)
        return tr("left out");
    const bool caution = std::any_of(row.findings.begin(), row.findings.end(), [](const Finding& finding) {
        return finding.severity == Severity::caution;
    });
    return caution ? tr("taken, with a caution") : tr("taken");
}

/// Errors stand before the rest: they are why a row is left out.
QString BroughtRowsModel::foundIn(const TableRow& row)
{
    QStringList words;
    for (const auto severity : {Severity::error, Severity::caution, Severity::note})
        for (const auto& finding : row.findings)
            if (finding.severity == severity)
                words << say(finding.sentence);
    return words.join(QStringLiteral(" · "));
}

QVariant BroughtRowsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = *rowAt(index.row());
    if (role == Qt::ToolTipRole)
        return foundIn(row).replace(QStringLiteral(" · "), QStringLiteral("\n"));
    if (role == Qt::AccessibleTextRole)
        return QStringLiteral("%1 %2").arg(QString::fromStdString(row.person), stateOf(row));
    const bool raw = role == rawRole;
    if (!raw && role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case lineColumn:
        return row.line > 0 ? QVariant(row.line) : QVariant();
    case personColumn:
        return raw ? QString::fromStdString(row.person) : ltr(row.person);
    case stateColumn:
        return raw ? QVariant(row.record.has_value()) : QVariant(stateOf(row));
    case readingColumn:
        return row.record ? readingWords(*row.record) : QString();
    default:
        return foundIn(row);
    }
}

QVariant BroughtRowsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case lineColumn:
        return tr("Row");
    case personColumn:
        return tr("Person");
    case stateColumn:
        return tr("Brought in?");
    case readingColumn:
        return tr("Read as");
    case foundColumn:
        return tr("What was found");
    default:
        return {};
    }
}

} // namespace quarterstep
