// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/line_model.hpp"

#include "app/desk/models/parts_mime.hpp"
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"

#include <algorithm>

namespace quarterstep
{

std::vector<LineRow> rowsOf(const LineAnswer& answer, const std::vector<std::string>& arrived)
{
    using State = LineRow::State;
    std::vector<LineRow> rows;
    rows.reserve(answer.assignments.size() + answer.unserved.size() + answer.others.size());
    for (const auto& each : answer.assignments)
        rows.push_back({each.person, each.purpose,
                        !each.reason.empty() ? State::byHand
                        : each.told          ? State::promised
                                             : State::planned,
                        each.parts, each.caution, each.noneLeft, each.reason, each.sentence});
    for (const auto& each : answer.unserved)
        rows.push_back({each.person, each.purpose, State::without, {}, false, false, {}, each.sentence});
    for (const auto& each : answer.others)
        rows.push_back({each.person, each.purpose, State::notInLine, {}, false, false, {}, each.reason});
    std::map<std::string, std::size_t> place;
    for (const auto& person : arrived)
        place.emplace(person, place.size());
    std::stable_sort(rows.begin(), rows.end(), [&place](const LineRow& a, const LineRow& b) {
        const auto at = [&place](const LineRow& row) {
            const auto found = place.find(row.person);
            return found == place.end() ? place.size() : found->second;
        };
        return at(a) < at(b);
    });
    return rows;
}

LineModel::LineModel(QObject* parent) : QAbstractTableModel(parent) {}

void LineModel::show(const LineAnswer& answer, const std::vector<std::string>& arrived,
                     std::span<const StockLine> stock)
{
    beginResetModel();
    rows_ = rowsOf(answer, arrived);
    stock_.assign(stock.begin(), stock.end());
    endResetModel();
}

void LineModel::clear()
{
    show({}, {}, {});
}

const LineRow* LineModel::rowAt(int row) const
{
    return row >= 0 && row < rowCount() ? &rows_[static_cast<std::size_t>(row)] : nullptr;
}

int LineModel::rowOf(const std::string& person, Purpose purpose) const
{
    for (std::size_t row = 0; row < rows_.size(); ++row)
        if (rows_[row].person == person && rows_[row].purpose == purpose)
            return static_cast<int>(row);
    return -1;
}

int LineModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int LineModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QString LineModel::gets(const LineRow& row) const
{
    using State = LineRow::State;
    if (row.state == State::without)
        return tr("none: waits");
    if (row.state == State::notInLine)
        return tr("not in the line");
    auto words = DeskWords::pull(row.parts, stock_);
    if (row.noneLeft)
        words += QStringLiteral("; ") + tr("none left: look before saying it again");
    if (row.caution)
        words += QStringLiteral("; ") + tr("with caution");
    return words;
}

QString LineModel::why(const LineRow& row)
{
    if (row.state == LineRow::State::byHand)
        return tr("by hand: %1").arg(QString::fromStdString(row.reason));
    const auto words = say(row.sentence);
    return row.state == LineRow::State::promised ? tr("promised; %1").arg(words) : words;
}

QVariant LineModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case stateRole:
        return static_cast<int>(row.state);
    case Qt::ToolTipRole:
        return gets(row) + QLatin1Char('\n') + why(row);
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1 %2: %3")
            .arg(QString::fromStdString(row.person), say(row.purpose), gets(row));
    case Qt::DisplayRole:
    case rawRole:
        break;
    default:
        return {};
    }
    const bool raw = role == rawRole;
    switch (index.column()) {
    case personColumn:
        return raw ? QString::fromStdString(row.person) : ltr(row.person);
    case purposeColumn:
        return raw ? QVariant(static_cast<int>(row.purpose)) : QVariant(say(row.purpose));
    case getsColumn: {
        if (!raw)
            return gets(row);
        QStringList names;
        for (const auto& part : row.parts)
            names << (part.line < stock_.size() ? QString::fromStdString(stock_[part.line].name) : QString());
        return names.join(QLatin1Char(','));
    }
    default:
        return raw ? QVariant(static_cast<int>(row.state)) : QVariant(why(row));
    }
}

QVariant LineModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case personColumn:
        return tr("Person");
    case purposeColumn:
        return tr("For");
    case getsColumn:
        return tr("Gets");
    case whyColumn:
        return tr("Why");
    default:
        return {};
    }
}

Qt::ItemFlags LineModel::flags(const QModelIndex& index) const
{
    auto flags = QAbstractTableModel::flags(index);
    if (!index.isValid())
        return flags;
    flags |= Qt::ItemIsDropEnabled;
    return rows_[static_cast<std::size_t>(index.row())].parts.empty() ? flags : flags | Qt::ItemIsDragEnabled;
}

QStringList LineModel::mimeTypes() const
{
    return {partsMimeType()};
}

QMimeData* LineModel::mimeData(const QModelIndexList& indexes) const
{
    const auto* row = indexes.isEmpty() ? nullptr : rowAt(indexes.front().row());
    return row && !row->parts.empty() ? partsAsMime(row->parts) : nullptr;
}

/// Nothing is moved here: whoever listens asks for the reason first.
bool LineModel::dropMimeData(const QMimeData* data, Qt::DropAction, int, int, const QModelIndex& parent)
{
    const auto parts = data ? partsInMime(*data) : std::vector<Part>{};
    if (parts.empty() || !rowAt(parent.row()))
        return false;
    Q_EMIT partsDropped(parent.row(), parts);
    return true;
}

} // namespace quarterstep
