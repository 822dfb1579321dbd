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
        chanceColumn,
        verdictColumn,
        reasonColumn,
        columnCount_
    };
    enum Role {
        rawRole = Qt::UserRole, ///< numbers: mean error of an eye, prism; text elsewhere
        bandRole,               ///< Band as int
        firstMissRole,          ///< true on the first pair outside a limit
        availableRole,          ///< how many can still be given
        alikeRole,              ///< how many other lines have the same optics
        pointedRole             ///< whether this pair is pointed at in the power plane
    };

    explicit PairsModel(QObject* parent = nullptr);

    /// `stock` is copied; candidates index into it.
    void show(const Recommendation& recommendation, std::span<const StockLine> stock);
    void clear();
    [[nodiscard]] const Candidate* candidateAt(int row) const;
    /// How the pair is judged: as found, or with the acuity that was typed with it on the face.
    [[nodiscard]] const Fit& fitAt(int row) const;
    /// The pair was tried on; empty puts the first judgement back.
    void setTried(int row, std::optional<Fit> fit);
    /// Marks the pair pointed at elsewhere; -1 for none.
    void pointAt(int row);
    [[nodiscard]] int rankedCount() const { return ranked_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// A pair can be dragged to a person of the waiting line.
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QStringList mimeTypes() const override;
    [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;

  private:
    [[nodiscard]] QString shown(int row, int column) const;
    [[nodiscard]] QVariant raw(const Candidate& candidate, int column) const;
    [[nodiscard]] QString sentence(int row) const;
    [[nodiscard]] QString tooltip(const Candidate& candidate) const;

    std::vector<Candidate> candidates_;
    std::vector<StockLine> stock_;
    Purpose purpose_ = Purpose::distance;
    int ranked_ = 0;
    int tried_ = -1;
    int pointed_ = -1;
    std::optional<Fit> triedFit_;
};

} // namespace quarterstep
