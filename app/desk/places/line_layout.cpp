// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the waiting line and where they stand; what they do is in line_panel.cpp.
#include "app/desk/models/line_model.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/parts.hpp"

#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QThread>

namespace quarterstep
{

LinePanel::LinePanel(MessageBar& messages, QWidget* parent)
    : QWidget(parent), messages_(messages), model_(new LineModel(this)),
      summary_(hinted({}, QStringLiteral("lineSummary"))), reason_(new QLineEdit(this))
{
    setObjectName(QStringLiteral("linePanel"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(4);
    view_ = tableOf(model_, QStringLiteral("lineView"), tr("Waiting line"));
    view_->setToolTip(tr("Who gets which pair and why. Drop a pair on a person to pick it by hand"));
    view_->setDragEnabled(true);
    view_->setAcceptDrops(true);
    view_->setDragDropMode(QAbstractItemView::DragDrop);
    view_->setDragDropOverwriteMode(true);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    grid->addWidget(summary_, 0, 0, 1, 3);
    grid->addWidget(view_, 1, 0, 1, 3);
    reason_->setObjectName(QStringLiteral("lineReasonEdit"));
    reason_->setAccessibleName(tr("Reason for a pair picked by hand"));
    reason_->setPlaceholderText(tr("Reason, for a pair by hand"));
    reason_->setToolTip(tr("Why this person gets another pair than planned; kept with the promise"));
    grid->addWidget(reason_, 2, 0, 1, 3);
    grid->setRowStretch(1, 1);
    buildCommands(*grid);
    setTabOrder(view_, reason_);
    connect(reason_, &QLineEdit::returnPressed, this, &LinePanel::completeOffer);
    connect(model_, &LineModel::partsDropped, this, [this](int row, const std::vector<Part>& parts) {
        view_->setCurrentIndex(model_->index(row, 0));
        offer(parts);
    });
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        judge();
        if (const auto* row = chosenRow())
            Q_EMIT rowChosen(QString::fromStdString(row->person), static_cast<int>(row->purpose), row->parts);
    });
    tellResult();
}

void LinePanel::buildCommands(QGridLayout& grid)
{
    const auto button = [this, &grid](const char* name, const QString& text, const QString& tooltip, int row,
                                      int column) {
        auto* made = new QPushButton(text, this);
        made->setObjectName(QLatin1String(name));
        made->setToolTip(tooltip);
        grid.addWidget(made, row, column);
        return made;
    };
    auto* all =
        button("lineAllButton", tr("All arrive"), tr("Everybody of the table who has nothing yet"), 3, 0);
    auto* one = button("lineOneButton", tr("Card arrives"), tr("The person on the card (Ctrl+J)"), 3, 1);
    plan_ = button("linePlanButton", tr("Plan again"), tr("Plans anew, or stops planning"), 3, 2);
    promise_ =
        button("linePromiseButton", tr("Promise"), tr("The person was told: no plan takes it back"), 4, 0);
    pick_ = button("linePickButton", tr("Give chosen pair"),
                   tr("The pair chosen in the list, by hand and with a reason (Ctrl+G)"), 4, 1);
    gone_ = button("lineGoneButton", tr("Gone"), tr("The person left the line"), 4, 2);
    connect(all, &QPushButton::clicked, this, &LinePanel::allWanted);
    connect(one, &QPushButton::clicked, this, &LinePanel::oneWanted);
    connect(promise_, &QPushButton::clicked, this, &LinePanel::promise);
    connect(pick_, &QPushButton::clicked, this, &LinePanel::chosenPairWanted);
    connect(gone_, &QPushButton::clicked, this, &LinePanel::gone);
    connect(plan_, &QPushButton::clicked, this, [this] {
        if (isPlanning())
            cancelled_ = true;
        else
            plan();
    });
}

} // namespace quarterstep
