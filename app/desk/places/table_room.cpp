// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/table_room.hpp"

#include "app/desk/places/parts.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>

#include <algorithm>

namespace quarterstep
{

namespace
{
/// Says the greatest height of a table anew whenever its rows or its letters change; the table owns it.
class HeldHeight final : public QObject
{
  public:
    HeldHeight(QTableView& view, int leastRows) : QObject(&view), view_(view), leastRows_(leastRows)
    {
        auto* model = view.model();
        connect(model, &QAbstractItemModel::modelReset, this, &HeldHeight::hold);
        connect(model, &QAbstractItemModel::rowsInserted, this, &HeldHeight::hold);
        connect(model, &QAbstractItemModel::rowsRemoved, this, &HeldHeight::hold);
        view.installEventFilter(this);
        hold();
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange ||
            event->type() == QEvent::Show)
            hold();
        return QObject::eventFilter(watched, event);
    }

  private:
    void hold()
    {
        const int row =
            std::max(view_.verticalHeader()->defaultSectionSize(), view_.fontMetrics().height() + 8);
        const int rows = std::max(leastRows_, view_.model()->rowCount());
        const int around = view_.horizontalHeader()->sizeHint().height() + 2 * view_.frameWidth() + row / 2;
        constexpr int enough = 1'000; // rows; beyond it every screen is full
        view_.setMaximumHeight(around + row * std::min(rows, enough));
    }

    QTableView& view_;
    int leastRows_;
};

/// Gives rows their lines at each new width of the column and with other letters; the table owns it.
class WrappedRows final : public QObject
{
  public:
    WrappedRows(QTableView& view, int column, int characters, int least)
        : QObject(&view), view_(view), column_(column), characters_(characters), least_(least)
    {
        connect(view.horizontalHeader(), &QHeaderView::sectionResized, this, &WrappedRows::wrap);
        view.installEventFilter(this);
        wrap();
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        const bool done = QObject::eventFilter(watched, event);
        if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
            wrap();
        return done;
    }

  private:
    void wrap()
    {
        constexpr int most = 5; // lines; what is longer stands in the tooltip
        const int width = std::max(1, view_.columnWidth(column_));
        const int needed = characters_ * view_.fontMetrics().averageCharWidth();
        const int lines = std::clamp((needed + width - 1) / width, least_, most);
        // Other letters than those of the font itself may be taller: the heading has them, too.
        const auto heading = view_.model()->headerData(column_, Qt::Horizontal).toString();
        const int line = std::max(view_.fontMetrics().height(),
                                  view_.fontMetrics().size(Qt::TextSingleLine, heading).height());
        view_.setWordWrap(lines > 1);
        if (view_.verticalHeader()->defaultSectionSize() != line * lines + 8)
            view_.verticalHeader()->setDefaultSectionSize(line * lines + 8);
    }

    QTableView& view_;
    int column_;
    int characters_;
    int least_;
};
} // namespace

void holdHeight(QTableView& view, int leastRows)
{
    giveRoom(view, std::min(leastRows, 3));
    new HeldHeight(view, leastRows);
}

void keepFit(QTableView& view, const std::vector<int>& columns, int gap)
{
    QObject::connect(view.model(), &QAbstractItemModel::modelReset, &view, [&view, columns, gap] {
        const bool wrapped = view.wordWrap();
        view.setWordWrap(false); // of the words in one line
        for (const int column : columns) {
            view.resizeColumnToContents(column);
            view.setColumnWidth(column,
                                view.columnWidth(column) + gap * view.fontMetrics().averageCharWidth());
        }
        view.setWordWrap(wrapped);
    });
}

void wrapIn(QTableView& view, int column, int characters, int least)
{
    new WrappedRows(view, column, characters, least);
}

} // namespace quarterstep
