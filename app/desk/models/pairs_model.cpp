// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/pairs_model.hpp"

#include "app/desk/models/parts_mime.hpp"
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/fit_chance.hpp"

#include <QStringList>

namespace quarterstep
{

namespace
{
/// "0.87"; the lesser of the two eyes.
QString chanceWords(const Candidate& candidate)
{
    const auto least = leastChance(candidate.chance);
    return least ? ltr(DeskWords::size(*least)) : QString();
}
} // namespace

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
    tried_ = -1;
    pointed_ = -1;
    endResetModel();
}

void PairsModel::clear()
{
    beginResetModel();
    candidates_.clear();
    ranked_ = 0;
    tried_ = -1;
    pointed_ = -1;
    endResetModel();
}

const Fit& PairsModel::fitAt(int row) const
{
    return row == tried_ && triedFit_ ? *triedFit_ : candidates_[static_cast<std::size_t>(row)].fit;
}

void PairsModel::setTried(int row, std::optional<Fit> fit)
{
    const int before = tried_;
    tried_ = fit ? row : -1;
    triedFit_ = std::move(fit);
    for (const int each : {before, row})
        if (each >= 0 && each < rowCount())
            Q_EMIT dataChanged(index(each, 0), index(each, columnCount_ - 1));
}

void PairsModel::pointAt(int row)
{
    const int before = pointed_;
    pointed_ = row;
    for (const int each : {before, row})
        if (before != row && each >= 0 && each < rowCount())
            Q_EMIT dataChanged(index(each, 0), index(each, columnCount_ - 1), {pointedRole});
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
        return shown(index.row(), index.column());
    case Qt::ToolTipRole:
        return tooltip(candidate);
    case Qt::AccessibleTextRole:
        return sentence(index.row());
    case rawRole:
        return raw(candidate, index.column());
    case bandRole:
        return static_cast<int>(fitAt(index.row()).band);
    case firstMissRole:
        return index.row() == ranked_;
    case availableRole:
        return DeskWords::available(candidate.parts, stock_);
    case alikeRole:
        return static_cast<int>(candidate.alike.size());
    case pointedRole:
        return index.row() == pointed_;
    default:
        return {};
    }
}

QString PairsModel::shown(int row, int column) const
{
    const auto& candidate = candidates_[static_cast<std::size_t>(row)];
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
    case chanceColumn:
        return chanceWords(candidate);
    case verdictColumn:
        return row == tried_ ? DeskWords::triedVerdict(fitAt(row)) : DeskWords::verdict(candidate.fit);
    default:
        return DeskWords::reason(fitAt(row));
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
    case chanceColumn: {
        const auto least = leastChance(candidate.chance);
        return least ? QVariant(*least) : QVariant();
    }
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
QString PairsModel::sentence(int row) const
{
    const auto& candidate = candidates_[static_cast<std::size_t>(row)];
    QStringList names;
    for (const auto& part : candidate.parts)
        names << QStringLiteral("%1 %2").arg(QString::fromStdString(stock_[part.line].name),
                                             QString::fromStdString(stock_[part.line].bin));
    return QStringLiteral("%1: %2").arg(shown(row, verdictColumn), names.join(QStringLiteral(", ")));
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
    case chanceColumn:
        return tr("Chance within");
    case verdictColumn:
        return tr("Verdict");
    case reasonColumn:
        return tr("Reason");
    default:
        return {};
    }
}

Qt::ItemFlags PairsModel::flags(const QModelIndex& index) const
{
    const auto flags = QAbstractTableModel::flags(index);
    return index.isValid() ? flags | Qt::ItemIsDragEnabled : flags;
}

QStringList PairsModel::mimeTypes() const
{
    return {partsMimeType()};
}

QMimeData* PairsModel::mimeData(const QModelIndexList& indexes) const
{
    const auto* candidate = indexes.isEmpty() ? nullptr : candidateAt(indexes.front().row());
    return candidate ? partsAsMime(candidate->parts) : nullptr;
}

} // namespace quarterstep
