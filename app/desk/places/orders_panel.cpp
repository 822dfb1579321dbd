// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/orders_panel.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/orders_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/entry_words.hpp"
#include "app/session/keeping.hpp"
#include "app/session/wording.hpp"

#include <QGridLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

namespace quarterstep
{

OrdersPanel::OrdersPanel(const DeskParts& parts, QWidget* parent)
    : QWidget(parent), messages_(parts.messages), pins_(parts.pins), orders_(new OrdersModel(this)),
      find_(new QLineEdit(this)), note_(new QLineEdit(this))
{
    setObjectName(QStringLiteral("ordersPanel"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(4);
    find_->setObjectName(QStringLiteral("orderFindEdit"));
    find_->setAccessibleName(tr("Find an order by the code of the person"));
    find_->setToolTip(tr("Part of a camp code; empty shows the open orders"));
    find_->setPlaceholderText(tr("Code"));
    find_->setClearButtonEnabled(false);
    view_ = tableOf(orders_, QStringLiteral("ordersView"), tr("Custom orders"));
    view_->setToolTip(tr("Custom orders, newest change first"));
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    note_->setObjectName(QStringLiteral("orderNoteEdit"));
    note_->setAccessibleName(tr("Reason or note for this step"));
    note_->setToolTip(tr("Kept with the step; making again needs a reason"));
    note_->setPlaceholderText(tr("Reason or note"));
    grid->addWidget(find_, 0, 0, 1, 3);
    grid->addWidget(view_, 1, 0, 1, 3);
    grid->addWidget(note_, 2, 0, 1, 3);
    grid->setRowStretch(1, 1);
    buildSteps(*grid);
    setTabOrder(view_, note_);
    connect(find_, &QLineEdit::textChanged, this, &OrdersPanel::refresh);
    connect(note_, &QLineEdit::textChanged, this, &OrdersPanel::judgeSteps);
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &OrdersPanel::judgeSteps);
    judgeSteps();
}

/// The list lets go of its model after this part is gone.
OrdersPanel::~OrdersPanel()
{
    view_->selectionModel()->disconnect(this);
}

void OrdersPanel::buildSteps(QGridLayout& grid)
{
    const std::tuple<EntryKind, QString, QString, QString> steps[] = {
        {EntryKind::orderArrived, QStringLiteral("orderArrivedButton"), tr("Arrived"),
         tr("It came from the laboratory")},
        {EntryKind::orderChecked, QStringLiteral("orderCheckedButton"), tr("Checked"),
         tr("Power, axis and centres were read and agree with the order")},
        {EntryKind::delivered, QStringLiteral("orderCollectedButton"), tr("Collected"),
         tr("The person has it and was checked with it on")},
        {EntryKind::remade, QStringLiteral("orderRemadeButton"), tr("Make again"),
         tr("Back to the laboratory; a reason is needed")},
        {EntryKind::notCollected, QStringLiteral("orderNotCollectedButton"), tr("Not collected"),
         tr("The person did not come for it")}};
    int place = 0;
    for (const auto& [kind, name, text, tooltip] : steps) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        connect(button, &QPushButton::clicked, this, [this, step = kind] { take(step); });
        steps_.emplace_back(kind, button);
        grid.addWidget(button, 3 + place / 3, place % 3);
        ++place;
    }
    file_ = new QPushButton(tr("Laboratory file"), this);
    file_->setObjectName(QStringLiteral("orderFileButton"));
    file_->setToolTip(tr("Writes the order as a file for the laboratory into the folder papers"));
    connect(file_, &QPushButton::clicked, this, &OrdersPanel::wantFile);
    grid.addWidget(file_, 3 + place / 3, place % 3);
}

void OrdersPanel::take(Camp* camp)
{
    camp_ = camp;
    find_->clear();
    note_->clear();
    refresh();
}

void OrdersPanel::refresh()
{
    const auto* chosen = orders_->orderAt(view_->currentIndex().row());
    const auto id = chosen ? chosen->id : std::string();
    std::vector<Order> orders;
    if (camp_ && camp_->hasLedger()) {
        orders = ordersOf(camp_->ledger());
        std::erase_if(orders, [site = camp_->site()](const Order& order) { return order.site != site; });
    }
    orders_->show(std::move(orders), find_->text().trimmed());
    const int row = orders_->rowOf(id);
    if (row >= 0 || orders_->rowCount() == 1)
        view_->setCurrentIndex(orders_->index(std::max(0, row), 0));
    judgeSteps();
}

void OrdersPanel::find()
{
    find_->setFocus();
    find_->selectAll();
}

void OrdersPanel::judgeSteps()
{
    const auto* order = orders_->orderAt(view_->currentIndex().row());
    for (const auto& [step, button] : steps_)
        button->setEnabled(order && mayFollow(*order, step) &&
                           (step != EntryKind::remade || !note_->text().trimmed().isEmpty()));
    file_->setEnabled(order != nullptr);
}

void OrdersPanel::wantFile()
{
    if (const auto* order = orders_->orderAt(view_->currentIndex().row()))
        Q_EMIT fileWanted(QString::fromStdString(order->id));
}

void OrdersPanel::take(EntryKind step)
{
    const auto* order = orders_->orderAt(view_->currentIndex().row());
    if (!order || !camp_)
        return;
    pins_.run(roleAskedBy("order"), [this, chosen = *order, step] { enter(chosen, step); });
}

void OrdersPanel::enter(const Order& chosen, EntryKind step)
{
    runCommand(messages_, [this, &chosen, step] {
        SingleWork words;
        words.actor = actor_;
        (step == EntryKind::remade ? words.reason : words.note) = note_->text().trimmed().toStdString();
        const auto work = carryOut(*camp_, {orderStep(*camp_, chosen.id, step, words)}, false);
        note_->clear();
        messages_.showDone(tr("%1: %2.").arg(ltr(chosen.person), kindWords(step)));
        refresh();
        Q_EMIT moved(QString::fromStdString(chosen.person), QString::fromStdString(work.entries.front().id),
                     kindWords(step));
    });
}

} // namespace quarterstep
