// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/parts.hpp"

#include <QButtonGroup>
#include <QComboBox>
#include <QEvent>
#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace quarterstep
{

namespace
{
/// Gives columns their share at each new width of the table, which owns it.
class SharedWidth final : public QObject
{
  public:
    SharedWidth(QTableView& view, std::vector<std::pair<int, int>> shares, int leastCharacters)
        : QObject(&view), view_(view), shares_(std::move(shares)), leastCharacters_(leastCharacters)
    {
        auto* header = view.horizontalHeader();
        header->setStretchLastSection(false);
        view.viewport()->installEventFilter(this);
        connect(view.model(), &QAbstractItemModel::modelReset, this, &SharedWidth::share);
        const auto hidden = [this](int, int before, int now) {
            if (before == 0 || now == 0) // or shown; not moved by hand
                share();
        };
        connect(header, &QHeaderView::sectionResized, this, hidden,
                Qt::QueuedConnection); // it is not hidden yet when it says so
        share();
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::Resize)
            share();
        return QObject::eventFilter(watched, event);
    }

  private:
    void share()
    {
        int left = view_.viewport()->width();
        for (int column = 0; column < view_.model()->columnCount(); ++column)
            left -= view_.columnWidth(column);
        int all = 0;
        for (const auto& [column, part] : shares_) {
            left += view_.columnWidth(column);
            all += view_.isColumnHidden(column) ? 0 : part;
        }
        const int least = leastCharacters_ * view_.fontMetrics().averageCharWidth();
        for (const auto& [column, part] : shares_) {
            if (view_.isColumnHidden(column))
                continue;
            const int heading = view_.horizontalHeader()->sectionSizeHint(column);
            const int words = column == shares_.back().first ? least : 0;
            const int width = std::max({heading, words, left * part / all});
            view_.setColumnWidth(column, width);
            left -= width;
            all -= part;
        }
    }

    QTableView& view_;
    std::vector<std::pair<int, int>> shares_;
    int leastCharacters_;
};

/// Gives rows the height of their words whenever columns or words are others; the table owns it.
class RowsAsHigh final : public QObject
{
  public:
    explicit RowsAsHigh(QTableView& view) : QObject(&view), view_(view)
    {
        view.setWordWrap(true);
        connect(view.horizontalHeader(), &QHeaderView::sectionResized, this, [this] { wrapSoon(); });
        connect(view.model(), &QAbstractItemModel::modelReset, this, [this] { wrapSoon(); });
    }

  private:
    /// Once for all columns that are changed together.
    void wrapSoon()
    {
        if (std::exchange(waiting_, true))
            return;
        QTimer::singleShot(0, this, [this] {
            waiting_ = false;
            wrap();
        });
    }

    void wrap()
    {
        constexpr int rowGap = 6;     // pixels between the words of two rows
        constexpr int mostRows = 200; // of a longer list each row has one line
        auto* header = view_.verticalHeader();
        header->setMinimumSectionSize(header->defaultSectionSize());
        if (view_.model()->rowCount() > mostRows)
            return;
        view_.resizeRowsToContents();
        for (int row = 0; row < view_.model()->rowCount(); ++row)
            if (const int height = view_.rowHeight(row); height > header->minimumSectionSize() * 3 / 2)
                view_.setRowHeight(row, height + rowGap);
    }

    QTableView& view_;
    bool waiting_ = false;
};
} // namespace

QFrame* framed(const QString& name, const QString& title, QVBoxLayout*& column)
{
    auto* box = new QFrame;
    box->setObjectName(name);
    box->setProperty("panel", true);
    column = new QVBoxLayout(box);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(4);
    if (!title.isEmpty()) {
        auto* heading = new QLabel(title, box);
        heading->setProperty("role", QStringLiteral("heading"));
        column->addWidget(heading);
    }
    return box;
}

QTableView* tableOf(QAbstractItemModel* model, const QString& name, const QString& accessible)
{
    auto* view = new QTableView;
    view->setModel(model);
    view->setObjectName(name);
    view->setAccessibleName(accessible);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setShowGrid(false);
    view->setTabKeyNavigation(false);
    view->setAlternatingRowColors(true);
    view->verticalHeader()->hide();
    view->verticalHeader()->setDefaultSectionSize(view->fontMetrics().height() + 8);
    view->horizontalHeader()->setHighlightSections(false);
    view->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    view->setWordWrap(false);
    // A list with nothing in it has nothing to scroll to.
    const auto scroll = [view] {
        view->setHorizontalScrollBarPolicy(view->model()->rowCount() > 0 ? Qt::ScrollBarAsNeeded
                                                                         : Qt::ScrollBarAlwaysOff);
    };
    QObject::connect(model, &QAbstractItemModel::modelReset, view, scroll);
    QObject::connect(model, &QAbstractItemModel::rowsInserted, view, scroll);
    QObject::connect(model, &QAbstractItemModel::rowsRemoved, view, scroll);
    scroll();
    return view;
}

namespace
{
/// Letters of its longest line.
qsizetype lettersOf(const QString& cell)
{
    qsizetype most = 0;
    for (const auto& line : QStringView(cell).split(QLatin1Char('\n')))
        most = std::max(most, line.size());
    return most;
}
} // namespace

void fitColumns(QTableView& table)
{
    constexpr std::size_t measured = 12; // the letters of a font differ less than words do
    const auto& model = *table.model();
    for (int column = 0; column < model.columnCount(); ++column) {
        std::vector<std::pair<qsizetype, QModelIndex>> cells;
        for (int row = 0; row < model.rowCount(); ++row) {
            const auto cell = model.index(row, column);
            cells.emplace_back(lettersOf(cell.data().toString()), cell);
        }
        const auto end = cells.begin() + static_cast<std::ptrdiff_t>(std::min(measured, cells.size()));
        std::partial_sort(cells.begin(), end, cells.end(),
                          [](const auto& a, const auto& b) { return a.first > b.first; });
        int widest = table.horizontalHeader()->sectionSizeHint(column);
        for (auto at = cells.begin(); at != end; ++at)
            widest =
                std::max(widest, table.sizeHintForIndex(at->second).width() + (table.showGrid() ? 1 : 0));
        table.setColumnWidth(column, widest);
    }
}

void giveWidths(QTableView& table, std::initializer_list<int> characters)
{
    auto* header = table.horizontalHeader();
    header->setSectionResizeMode(QHeaderView::Interactive);
    int at = 0;
    for (const int width : characters) {
        const int heading = header->sectionSizeHint(at); // which is not cut
        table.setColumnWidth(at++, std::max(width * table.fontMetrics().averageCharWidth(), heading));
    }
    header->setStretchLastSection(true);
}

QComboBox* boxNamed(const QString& name, const QString& accessible, const QString& tooltip)
{
    auto* box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(accessible);
    box->setToolTip(tooltip);
    box->setSizeAdjustPolicy(
        QComboBox::AdjustToMinimumContentsLengthWithIcon); // long items do not widen the page
    box->setMinimumContentsLength(8);
    return box;
}

QSpinBox* countBox(const QString& name, const QString& spoken, const QString& tooltip, int least, int most,
                   int value)
{
    auto* box = new QSpinBox;
    box->setObjectName(name);
    box->setAccessibleName(spoken);
    box->setToolTip(tooltip);
    box->setLocale(QLocale::c());
    box->setMinimumHeight(leastField);
    box->setRange(least, most);
    box->setValue(value);
    return box;
}

QButtonGroup* oneOf(QWidget* owner, QLayout& row,
                    std::initializer_list<std::tuple<QString, QString, QString>> choices)
{
    auto* group = new QButtonGroup(owner);
    for (const auto& [name, words, tooltip] : choices) {
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        button->setCheckable(true);
        button->setChecked(group->buttons().isEmpty());
        group->addButton(button, static_cast<int>(group->buttons().size()));
        row.addWidget(button);
    }
    return group;
}

QList<QPushButton*> buttonsIn(QLayout& row, QWidget* owner, const std::vector<Act>& acts)
{
    QList<QPushButton*> buttons;
    for (const auto& [name, words, tooltip, run] : acts) {
        auto* button = new QPushButton(words);
        button->setObjectName(QLatin1String(name));
        button->setToolTip(tooltip);
        QObject::connect(button, &QPushButton::clicked, owner, run);
        buttons << button;
        row.addWidget(button);
    }
    return buttons;
}

void giveRoom(QTableView& view, int lines)
{
    view.setMinimumHeight((view.fontMetrics().height() + 8) * lines);
}

void shareWidth(QTableView& view, std::vector<std::pair<int, int>> shares, int leastCharacters)
{
    new SharedWidth(view, std::move(shares), leastCharacters);
}

void wrapRows(QTableView& view)
{
    new RowsAsHigh(view);
}

void giveLines(QTableView& view, int lines)
{
    view.verticalHeader()->setDefaultSectionSize(view.fontMetrics().height() * lines + 8);
    view.setWordWrap(lines > 1);
}

QLabel* hinted(const QString& text, const QString& name)
{
    auto* label = new QLabel(text);
    label->setObjectName(name);
    label->setProperty("role", QStringLiteral("hint"));
    label->setWordWrap(true);
    return label;
}

} // namespace quarterstep
