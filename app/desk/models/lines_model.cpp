// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/lines_model.hpp"

#include "app/desk/models/bin_order.hpp"
#include "app/desk/theme.hpp"
#include "app/session/wording.hpp"

#include <QBrush>
#include <QFont>
#include <QStringList>

namespace quarterstep
{

StockLevel levelOf(const StockLine& line)
{
    const int available = line.available();
    if (available <= 0)
        return StockLevel::out;
    if (line.keepLeast && available < *line.keepLeast)
        return StockLevel::low;
    return line.keepMost && available > *line.keepMost ? StockLevel::plenty : StockLevel::enough;
}

QString levelWords(StockLevel level)
{
    switch (level) {
    case StockLevel::out:
        return LinesModel::tr("none left");
    case StockLevel::low:
        return LinesModel::tr("below least");
    case StockLevel::enough:
        return LinesModel::tr("enough");
    case StockLevel::plenty:
        break;
    }
    return LinesModel::tr("above most");
}

QString linePowers(const StockLine& line)
{
    if (line.kind != LineKind::readyMade && line.kind != LineKind::lens)
        return {};
    auto text = QString::fromStdString(writePower(line.power.right));
    if (!line.equalPowers())
        text = QStringLiteral("R %1  L %2").arg(text, QString::fromStdString(writePower(line.power.left)));
    if (line.bifocalAddition)
        text += QStringLiteral(" ADD %1").arg(dioptres(line.bifocalAddition->value()));
    return ltr(text);
}

LinesModel::LinesModel(QObject* parent) : QAbstractTableModel(parent) {}

void LinesModel::show(std::vector<StockLine> stock, StockFigures figures)
{
    const bool sameLines =
        stock.size() == stock_.size() &&
        std::equal(stock.begin(), stock.end(), stock_.begin(),
                   [](const StockLine& a, const StockLine& b) { return a.name == b.name; });
    if (!sameLines)
        beginResetModel();
    stock_ = std::move(stock);
    figures_ = std::move(figures);
    figures_.lines.resize(stock_.size());
    bins_.clear();
    for (const auto& line : stock_)
        bins_.push_back(binSortKey(line.bin));
    if (!sameLines)
        endResetModel();
    else if (!stock_.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount_ - 1));
}

int LinesModel::rowOf(const std::string& name) const
{
    for (std::size_t row = 0; row < stock_.size(); ++row)
        if (stock_[row].name == name)
            return static_cast<int>(row);
    return -1;
}

int LinesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(stock_.size());
}

int LinesModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant LinesModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& line = lineAt(index.row());
    const auto level = levelOf(line);
    const bool standsOut =
        index.column() == levelColumn && (level == StockLevel::out || level == StockLevel::low);
    switch (role) {
    case Qt::DisplayRole:
        return shown(index);
    case Qt::ToolTipRole:
        return tooltip(index.row());
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1 %2").arg(QString::fromStdString(line.name),
                                           shown(this->index(index.row(), levelColumn)));
    case Qt::TextAlignmentRole:
        if (index.column() == onHandColumn || index.column() == availableColumn ||
            index.column() == campsColumn)
            return QVariant::fromValue(Qt::Alignment(Qt::AlignTrailing | Qt::AlignVCenter));
        return {};
    case Qt::ForegroundRole:
        return standsOut ? QVariant(QBrush(coloursOf(themeNow()).caution)) : QVariant();
    case Qt::FontRole:
        if (standsOut) {
            QFont bold;
            bold.setBold(true);
            return bold;
        }
        return {};
    case rawRole:
        return raw(index);
    default:
        return {};
    }
}

QString LinesModel::shown(const QModelIndex& index) const
{
    const auto& line = lineAt(index.row());
    const auto& figures = figures_.lines[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case binColumn:
        return line.bin.empty() ? QString() : ltr(line.bin);
    case lineColumn:
        return ltr(line.name);
    case powerColumn:
        return line.kind == LineKind::readyMade || line.kind == LineKind::lens ? linePowers(line)
                                                                               : say(line.kind);
    case onHandColumn:
        return QString::number(line.onHand);
    case availableColumn:
        return QString::number(line.available());
    case asideColumn: {
        QStringList words;
        if (line.held > 0)
            words << tr("held %1").arg(line.held);
        if (line.quarantined > 0)
            words << tr("in quarantine %1").arg(line.quarantined);
        return words.join(QStringLiteral(", "));
    }
    case levelColumn:
        return levelWords(levelOf(line));
    default:
        return figures.campsOfStock ? QString::number(*figures.campsOfStock, 'f', 1) : QString();
    }
}

QVariant LinesModel::raw(const QModelIndex& index) const
{
    const auto& line = lineAt(index.row());
    const auto& figures = figures_.lines[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case binColumn:
        return bins_[static_cast<std::size_t>(index.row())];
    case lineColumn:
        return QString::fromStdString(line.name);
    case powerColumn:
        return toPowerVector(line.power.right).m;
    case onHandColumn:
        return line.onHand;
    case availableColumn:
        return line.available();
    case asideColumn:
        return line.held + line.quarantined;
    case levelColumn:
        return static_cast<int>(levelOf(line));
    default:
        return figures.campsOfStock ? QVariant(*figures.campsOfStock) : QVariant();
    }
}

QString LinesModel::tooltip(int row) const
{
    const auto& line = lineAt(row);
    const auto& figures = figures_.lines[static_cast<std::size_t>(row)];
    QStringList words{say(line.kind)};
    if (line.keepLeast || line.keepMost)
        words << tr("keep at least %1, at most %2")
                     .arg(line.keepLeast ? QString::number(*line.keepLeast) : QStringLiteral("-"),
                          line.keepMost ? QString::number(*line.keepMost) : QStringLiteral("-"));
    if (figures.reorder > 0)
        words << tr("reorder %n", nullptr, figures.reorder);
    if (figures.daysOfStock && line.available() > 0)
        words << tr("lasts %1 camp days as used so far").arg(QString::number(*figures.daysOfStock, 'f', 1));
    return words.join(QLatin1Char('\n'));
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::ToolTipRole && section == campsColumn)
        return tr("How many camps of 100 people the available pieces last, as used so far");
    if (role == Qt::TextAlignmentRole && !stock_.empty()) // a heading stands over its figures
        return index(0, section).data(role);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case binColumn:
        return tr("Bin");
    case lineColumn:
        return tr("Line");
    case powerColumn:
        return tr("Power");
    case onHandColumn:
        return tr("On hand");
    case availableColumn:
        return tr("Available");
    case asideColumn:
        return tr("Kept aside");
    case levelColumn:
        return tr("Level");
    case campsColumn:
        return tr("Camps");
    default:
        return {};
    }
}

} // namespace quarterstep
