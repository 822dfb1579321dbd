// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/waiting_model.hpp"

#include "app/session/wording.hpp"

#include <QStringList>

#include <algorithm>
#include <iterator>

namespace quarterstep
{

WaitingModel::WaitingModel(QObject* parent) : QAbstractTableModel(parent) {}

void WaitingModel::setRows(std::vector<TableRow> rows)
{
    beginResetModel();
    rows_ = std::move(rows);
    outcomes_.assign(rows_.size(), {});
    endResetModel();
}

void WaitingModel::addRows(std::vector<TableRow> rows)
{
    if (rows.empty())
        return;
    beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(rows.size()) - 1);
    std::move(rows.begin(), rows.end(), std::back_inserter(rows_));
    outcomes_.resize(rows_.size());
    endInsertRows();
}

WaitingModel::State WaitingModel::stateAt(int row) const
{
    if (!rowAt(row).record)
        return State::unreadable;
    return outcomes_[static_cast<std::size_t>(row)].state;
}

int WaitingModel::rowOf(const std::string& person) const
{
    for (std::size_t row = 0; row < rows_.size(); ++row)
        if (rows_[row].person == person)
            return static_cast<int>(row);
    return -1;
}

void WaitingModel::setOutcome(const std::string& person, const Outcome& outcome)
{
    const int row = rowOf(person);
    if (row < 0)
        return;
    outcomes_[static_cast<std::size_t>(row)] = outcome;
    const auto changed = index(row, stateColumn);
    Q_EMIT dataChanged(changed, changed);
}

int WaitingModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int WaitingModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant WaitingModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = rowAt(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return shown(index);
    case Qt::ToolTipRole:
        return tooltip(index.row());
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1 %2").arg(QString::fromStdString(row.person),
                                           shown(this->index(index.row(), stateColumn)));
    case rawRole:
        if (index.column() == ageColumn)
            return row.record && row.record->age ? QVariant(*row.record->age) : QVariant();
        return index.column() == personColumn ? QVariant(QString::fromStdString(row.person))
                                              : QVariant(static_cast<int>(stateAt(index.row())));
    default:
        return {};
    }
}

QString WaitingModel::shown(const QModelIndex& index) const
{
    const auto& row = rowAt(index.row());
    switch (index.column()) {
    case personColumn:
        return row.person.empty() ? tr("row %1").arg(row.line) : ltr(row.person);
    case ageColumn:
        return row.record && row.record->age ? QString::number(*row.record->age, 'g', 4) : QString();
    default:
        break;
    }
    const auto& words = outcomes_[static_cast<std::size_t>(index.row())].words;
    switch (stateAt(index.row())) {
    case State::unreadable:
        return tr("cannot be read");
    case State::given:
        return tr("given %1").arg(words);
    case State::settled:
        return words;
    case State::waiting:
        break;
    }
    return words.isEmpty() ? tr("waiting") : tr("waiting") + QStringLiteral(" · ") + words;
}

QString WaitingModel::tooltip(int row) const
{
    const auto& at = rowAt(row);
    QStringList lines;
    if (at.record)
        lines << tr("Right %1").arg(ltr(at.record->eyes.right.final.asWritten))
              << tr("Left %1").arg(ltr(at.record->eyes.left.final.asWritten));
    for (const auto& finding : at.findings)
        lines << say(finding);
    return lines.join(QLatin1Char('\n'));
}

QVariant WaitingModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case personColumn:
        return tr("Person");
    case ageColumn:
        return tr("Age");
    case stateColumn:
        return tr("State");
    default:
        return {};
    }
}

} // namespace quarterstep
