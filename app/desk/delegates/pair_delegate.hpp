// SPDX-License-Identifier: GPL-3.0-or-later
// Paints one pair as a card of three lines: power and verdict, where to fetch it, what it leaves in each eye
// and why.
#pragma once

#include <QStyledItemDelegate>

namespace quarterstep
{

class PairDelegate final : public QStyledItemDelegate
{
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace quarterstep
