// SPDX-License-Identifier: GPL-3.0-or-later
// Who waits and what the plan gives them: in the order of arrival, each with the reason. A pair dropped on a
// person is offered to them.
#pragma once

#include "app/session/line_answer.hpp"

#include <QAbstractTableModel>

namespace quarterstep
{

/// One person and purpose of the line.
struct LineRow {
    enum class State { planned, promised, byHand, without, notInLine };

    std::string person;
    Purpose purpose = Purpose::distance;
    State state = State::planned;
    std::vector<Part> parts;
    bool caution = false;
    bool noneLeft = false; ///< promised, and the pieces have gone since
    std::string reason;    ///< typed, when picked by hand
    Sentence sentence;     ///< why this pair, or why none
};

class LineModel final : public QAbstractTableModel
{
    Q_OBJECT

  public:
    enum Column { personColumn, purposeColumn, getsColumn, whyColumn, columnCount_ };
    enum Role { rawRole = Qt::UserRole, stateRole }; ///< raw: code, purpose, lines, state as numbers or text

    explicit LineModel(QObject* parent = nullptr);

    /// @param arrived codes in the order of arrival
    void show(const LineAnswer& answer, const std::vector<std::string>& arrived,
              std::span<const StockLine> stock);
    void clear();
    [[nodiscard]] const LineRow* rowAt(int row) const;
    [[nodiscard]] int rowOf(const std::string& person, Purpose purpose) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QStringList mimeTypes() const override;
    [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;
    [[nodiscard]] Qt::DropActions supportedDropActions() const override { return Qt::CopyAction; }
    bool dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                      const QModelIndex& parent) override;

  Q_SIGNALS:
    void partsDropped(int row, const std::vector<quarterstep::Part>& parts);

  private:
    [[nodiscard]] QString gets(const LineRow& row) const;
    [[nodiscard]] static QString why(const LineRow& row);

    std::vector<LineRow> rows_;
    std::vector<StockLine> stock_;
};

/// The rows of an answer, in the order of arrival.
[[nodiscard]] std::vector<LineRow> rowsOf(const LineAnswer& answer, const std::vector<std::string>& arrived);

} // namespace quarterstep
