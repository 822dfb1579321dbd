// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/pairs_model.hpp"

#include "app/desk/words.hpp"

#include <QStringList>

namespace quarterstep
{

PairsModel::PairsModel(QObject* parent) : QAbstractTableModel(parent) {}

void PairsModel::show(const Recommendation& recommendation, std::span<const StockLine> stock)
{
    beginResetModel();
    candidates_ = recommendation.candidates.ranked;
    ranked_ = static_cast<int>(candidates_.size());
    const auto& misses = recommendation.candidates.misses;
    candidates_.insert(candidates_.end(), misses.begin(), misses.end());
    stock_.assign(stock.begin(), stock.end());
    purpose_ = recommendation.purpose;
    endResetModel();
}

void PairsModel::clear()
{
    beginResetModel();
    candidates_.clear();
    ranked_ = 0;
    endResetModel();
}

const Candidate* PairsModel::candidateAt(int row) const
{
    return row >= 0 && row < rowCount() ? &candidates_[static_cast<std::size_t>(row)] : nullptr;
}

int PairsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(candidates_.size());
}

int PairsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columnCount_;
}

QVariant PairsModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& candidate = candidates_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return shown(candidate, index.column());
    case Qt::ToolTipRole:
        return tooltip(candidate);
    case Qt::AccessibleTextRole:
        return sentence(candidate);
    case rawRole:
        return raw(candidate, index.column());
    case bandRole:
        return static_cast<int>(candidate.fit.band);
    case firstMissRole:
        return index.row() == ranked_;
    case availableRole:
        return DeskWords::available(candidate.parts, stock_);
    case alikeRole:
        return static_cast<int>(candidate.alike.size());
    default:
        return {};
    }
}

QString PairsModel::shown(const Candidate& candidate, int column) const
{
    switch (column) {
    case powerColumn:
        return DeskWords::powers(candidate.supply);
    case pullColumn:
        return DeskWords::pull(candidate.parts, stock_);
    case rightColumn:
        return DeskWords::residual(candidate.fit.eyes.right, purpose_);
    case leftColumn:
        return DeskWords::residual(candidate.fit.eyes.left, purpose_);
    case prismColumn:
        return DeskWords::prism(candidate.fit);
    case verdictColumn:
        return DeskWords::verdict(candidate.fit);
    default:
        return DeskWords::reason(candidate.fit);
    }
}

QVariant PairsModel::raw(const Candidate& candidate, int column) const
{
    const auto& fit = candidate.fit;
    switch (column) {
    case rightColumn:
        return fit.eyes.right ? QVariant(fit.eyes.right->error.m) : QVariant();
    case leftColumn:
        return fit.eyes.left ? QVariant(fit.eyes.left->error.m) : QVariant();
    case prismColumn:
        return fit.prism.horizontal;
    case pullColumn: {
        QStringList names;
        for (const auto& part : candidate.parts)
            names << QString::fromStdString(stock_[part.line].name);
        return names.join(QLatin1Char(','));
    }
    case powerColumn:
        return QString::fromStdString(writePower(candidate.supply.power.right));
    default:
        return static_cast<int>(fit.band);
    }
}

/// One plain sentence for a screen reader, without marks of direction.
QString PairsModel::sentence(const Candidate& candidate) const
{
    QStringList names;
    for (const auto& part : candidate.parts)
        names << QStringLiteral("%1 %2").arg(QString::fromStdString(stock_[part.line].name),
                                             QString::fromStdString(stock_[part.line].bin));
    return QStringLiteral("%1: %2").arg(DeskWords::verdict(candidate.fit), names.join(QStringLiteral(", ")));
}

QString PairsModel::tooltip(const Candidate& candidate) const
{
    QStringList lines{DeskWords::pull(candidate.parts, stock_)};
    for (const auto& parts : candidate.alike)
        lines << tr("same power: %1").arg(DeskWords::pull(parts, stock_));
    return lines.join(QLatin1Char('\n'));
}

QVariant PairsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case powerColumn:
        return tr("Power (D)");
    case pullColumn:
        return tr("Pull");
    case rightColumn:
        return tr("Right eye (D)");
    case leftColumn:
        return tr("Left eye (D)");
    case prismColumn:
        return tr("Prism (Δ)");
    case verdictColumn:
        return tr("Verdict");
    case reasonColumn:
        return tr("Reason");
    default:
        return {};
    }
}

} // namespace quarterstep
