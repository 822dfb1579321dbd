// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of transfers and where they stand; what they do is in transfer_panel.cpp.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/cells_model.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/transfer_panel.hpp"
#include "app/desk/shell/folding_row.hpp"

#include <QAction>
#include <QComboBox>
#include <QFormLayout>
#include <QFrame>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

TransferPanel::TransferPanel(MessageBar& messages, PinGuard& pins, QWidget* parent)
    : QWidget(parent), messages_(messages), pins_(pins), flyingRows_(new CellsModel(this)),
      rows_(new CellsModel(this))
{
    setObjectName(QStringLiteral("transferPanel"));
    auto* parts = new FoldingRow;
    parts->add(buildFlying());
    parts->add(buildForm());
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(parts);
    restyle();
    clear();
}

QWidget* TransferPanel::buildFlying()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("flyingFrame"), tr("In the air"), column);
    flyingWords_ = hinted({}, QStringLiteral("flyingWords"));
    column->addWidget(flyingWords_);
    flyingView_ = tableOf(flyingRows_, QStringLiteral("flyingView"), tr("Transfers in the air"));
    flyingView_->setToolTip(tr("What was sent and not yet taken in; Enter takes the chosen one in"));
    flyingView_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    flyingView_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(flyingView_, 1);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    takeButton_ = new QPushButton(tr("Take in as sent"));
    takeButton_->setObjectName(QStringLiteral("takeAsSentButton"));
    takeButton_->setToolTip(tr("Fills the list beside with what was sent, to be counted and entered"));
    row->addWidget(takeButton_);
    column->addLayout(row);
    connect(takeButton_, &QPushButton::clicked, this, &TransferPanel::takeAsSent);
    connect(flyingView_, &QTableView::activated, this, &TransferPanel::takeAsSent);
    connect(flyingView_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        const auto* chosen = chosenFlying();
        takeButton_->setEnabled(chosen && chosen->site != camp_->site());
    });
    return box;
}

QLineEdit* TransferPanel::field(QFormLayout& form, const QString& name, const QString& label,
                                const QString& tooltip)
{
    auto* edit = new QLineEdit;
    edit->setObjectName(name);
    edit->setAccessibleName(label);
    edit->setToolTip(tooltip);
    form.addRow(label, edit);
    return edit;
}

QWidget* TransferPanel::buildForm()
{
    QVBoxLayout* column = nullptr;
    auto* box = framed(QStringLiteral("transferFrame"), tr("Send or take in"), column);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setVerticalSpacing(4);
    form->setHorizontalSpacing(8);
    way_ = new QComboBox;
    way_->setObjectName(QStringLiteral("transferWayBox"));
    way_->setAccessibleName(tr("What happens"));
    way_->setToolTip(tr("Whether pieces leave this site or come to it"));
    way_->addItems({tr("Send to another site"), tr("Take in from another site")});
    form->addRow(tr("What happens"), way_);
    site_ = field(*form, QStringLiteral("transferSiteEdit"), tr("To"),
                  tr("The other site, as it is called in its stock.yaml"));
    siteLabel_ = qobject_cast<QLabel*>(form->labelForField(site_));
    column->addLayout(form);
    buildLineRow(*column);
    view_ = tableOf(rows_, QStringLiteral("transferView"), tr("Lines of this transfer"));
    view_->setToolTip(tr("What goes or comes; choose a row to change its number"));
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(view_, 1);
    auto* more = new QFormLayout;
    more->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    more->setVerticalSpacing(4);
    more->setHorizontalSpacing(8);
    note_ = field(*more, QStringLiteral("transferNoteEdit"), tr("Note"), tr("Kept with the entry"));
    initials_ = field(*more, QStringLiteral("transferInitialsEdit"), tr("Your initials"),
                      tr("Who enters this; stays for the next entry"));
    column->addLayout(more);
    complaint_ = new QLabel;
    complaint_->setObjectName(QStringLiteral("transferComplaint"));
    complaint_->setProperty("role", QStringLiteral("complaint"));
    complaint_->setWordWrap(true);
    column->addWidget(complaint_);
    buildButtons(*column);
    connect(way_, &QComboBox::currentIndexChanged, this, &TransferPanel::showWay);
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { chooseRow(current.row()); });
    return box;
}

void TransferPanel::buildLineRow(QVBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    line_ = new QLineEdit;
    line_->setObjectName(QStringLiteral("transferLineEdit"));
    line_->setAccessibleName(tr("Line"));
    line_->setPlaceholderText(tr("Line, typed or scanned"));
    line_->setToolTip(tr("Name of a line, or the digits of its label; Enter goes on to the pieces"));
    row->addWidget(line_, 1);
    pieces_ = new QSpinBox;
    pieces_->setObjectName(QStringLiteral("transferPiecesBox"));
    pieces_->setAccessibleName(tr("Pieces"));
    pieces_->setToolTip(tr("How many pieces; 0 takes the line out of the list"));
    pieces_->setLocale(QLocale::c());
    pieces_->setMinimumHeight(line_->sizeHint().height());
    pieces_->setRange(0, static_cast<int>(mostPieces));
    pieces_->setValue(1);
    row->addWidget(pieces_);
    auto* add = new QPushButton(tr("Into the list"));
    add->setObjectName(QStringLiteral("transferAddButton"));
    add->setToolTip(tr("Puts line and pieces into the list (Enter in the pieces)"));
    row->addWidget(add);
    column.addLayout(row);
    lineWords_ = hinted({}, QStringLiteral("transferLineWords"));
    column.addWidget(lineWords_);
    connect(add, &QPushButton::clicked, this, &TransferPanel::addRow);
    connect(line_, &QLineEdit::textChanged, this, &TransferPanel::tellLine);
    connect(line_, &QLineEdit::returnPressed, this, [this] {
        pieces_->setFocus();
        pieces_->selectAll();
    });
    auto* enterRow = new QAction(this);
    enterRow->setShortcuts({QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)});
    enterRow->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    pieces_->addAction(enterRow);
    connect(enterRow, &QAction::triggered, this, &TransferPanel::addRow);
}

void TransferPanel::buildButtons(QVBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    const auto button = [this, row](const QString& words, const char* name, const QString& tooltip,
                                    const QKeySequence& key) {
        auto* made = new QPushButton(words);
        made->setObjectName(QLatin1String(name));
        made->setToolTip(tooltip);
        row->addWidget(made);
        auto* action = new QAction(words, this);
        action->setShortcut(key);
        addAction(action);
        connect(made, &QPushButton::clicked, action, &QAction::trigger);
        return std::pair{made, action};
    };
    const auto [undoButton, undo] =
        button(tr("Take back"), "transferUndoButton", tr("Takes the last entry of this place back (Ctrl+Z)"),
               QKeySequence::Undo);
    const auto [clearButton, empty] =
        button(tr("Empty the list"), "transferClearButton", tr("Begins anew; nothing is entered (Ctrl+E)"),
               QKeySequence(Qt::CTRL | Qt::Key_E));
    const auto [enterButton, post] =
        button(tr("Enter in the ledger"), "transferEnterButton",
               tr("Writes the list into the ledger (Ctrl+Enter)"), QKeySequence(Qt::CTRL | Qt::Key_Return));
    enterButton->setProperty("primary", true);
    undoButton_ = undoButton;
    enterButton_ = enterButton;
    undo_ = undo;
    connect(undo, &QAction::triggered, this, &TransferPanel::undoWanted);
    connect(empty, &QAction::triggered, this, &TransferPanel::clear);
    connect(post, &QAction::triggered, this, &TransferPanel::enter);
    column.addLayout(row);
    setUndo(false);
}

} // namespace quarterstep
