// SPDX-License-Identifier: GPL-3.0-or-later
// The pairs for one answer: ranked ones first, then the nearest that fall outside a limit.
#pragma once

#include "core/fitting/recommendation.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

class PairsModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column {
        powerColumn,
        pullColumn,
        rightColumn,
        leftColumn,
        prismColumn,
        verdictColumn,
        reasonColumn,
        columnCount_
    };
    enum Role {
        rawRole = Qt::UserRole, ///< numbers: mean error of an eye, prism; text elsewhere
        bandRole,               ///< Band as int
        firstMissRole,          ///< true on the first pair outside a limit
        availableRole,          ///< how many can still be given
        alikeRole               ///< how many other lines have the same optics
    };

    explicit PairsModel(QObject* parent = nullptr);

    /// `stock` is copied; candidates index into it.
    void show(const Recommendation& recommendation, std::span<const StockLine> stock);
    void clear();
    [[nodiscard]] const Candidate* candidateAt(int row) const;
    [[nodiscard]] int rankedCount() const { return ranked_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    [[nodiscard]] QString shown(const Candidate& candidate, int column) const;
    [[nodiscard]] QVariant raw(const Candidate& candidate, int column) const;
    [[nodiscard]] QString sentence(const Candidate& candidate) const;
    [[nodiscard]] QString tooltip(const Candidate& candidate) const;

    std::vector<Candidate> candidates_;
    std::vector<StockLine> stock_;
    Purpose purpose_ = Purpose::distance;
    int ranked_ = 0;
};

} // namespace quarterstep
