// SPDX-License-Identifier: GPL-3.0-or-later
// The widgets of the place Dispense and where they stand; what they do is in dispense_place.cpp.
#include "app/desk/card/prescription_card.hpp"
#include "app/desk/card/reader_card.hpp"
#include "app/desk/delegates/pair_delegate.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "app/desk/places/answer_panel.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/hand_over_panel.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/orders_panel.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/plane_panel.hpp"
#include "app/desk/places/why_panel.hpp"
#include "app/desk/settings/preferences.hpp"
#include "app/desk/shell/folding_splitter.hpp"
#include "app/desk/theme.hpp"

#include <QHeaderView>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
/// Beside each other in these shares of the width, below each other where letters are too large for that.
QSplitter* columnsOf(const QString& name, std::initializer_list<std::pair<QWidget*, int>> parts)
{
    auto* columns = new FoldingSplitter;
    columns->setObjectName(name);
    QList<int> shares;
    for (const auto& [part, share] : parts) {
        columns->add(part, share, 0);
        shares << share;
    }
    columns->setSizes(shares);
    return columns;
}
} // namespace

QWidget* DispensePlace::buildPeople()
{
    people_ = new PagesFrame(QStringLiteral("waitingFrame"), QStringLiteral("peopleTabs"),
                             tr("Who is served: people of the table, or custom orders"));
    auto* table = new QWidget;
    auto* column = new QVBoxLayout(table);
    column->setContentsMargins(0, 0, 0, 0);
    waitingView_ = tableOf(waiting_, QStringLiteral("waitingView"), tr("People of the table"));
    waitingView_->setToolTip(tr("Choose a person: the card fills and pairs are suggested"));
    waitingView_->horizontalHeader()->setResizeContentsPrecision(0); // what is seen: lists can be long
    waitingView_->horizontalHeader()->setSectionResizeMode(WaitingModel::personColumn,
                                                           QHeaderView::ResizeToContents);
    waitingView_->horizontalHeader()->setSectionResizeMode(WaitingModel::ageColumn,
                                                           QHeaderView::ResizeToContents);
    waitingView_->horizontalHeader()->setSectionResizeMode(WaitingModel::stateColumn, QHeaderView::Stretch);
    waitingHint_ = hinted({}, QStringLiteral("waitingHint"));
    column->addWidget(waitingHint_);
    column->addWidget(waitingView_, 1);
    line_ = new LinePanel(messages_);
    orders_ = new OrdersPanel(parts_);
    people_->addPage(tr("People"), table);
    people_->addPage(tr("Line"), line_);
    people_->addPage(tr("Orders"), orders_);
    return people_;
}

QWidget* DispensePlace::buildCards()
{
    auto* frame = new QFrame;
    frame->setObjectName(QStringLiteral("cardBox"));
    auto* whole = new QVBoxLayout(frame);
    whole->setContentsMargins(0, 0, 0, 0);
    cards_ = new PagesFrame(QStringLiteral("cardFrame"), QStringLiteral("cardTabs"),
                            tr("The whole prescription, or the short way for plain readers"));
    card_ = new PrescriptionCard;
    cardScroll_ = new QScrollArea;
    cardScroll_->setObjectName(QStringLiteral("cardScroll"));
    cardScroll_->setWidgetResizable(true);
    cardScroll_->viewport()->setObjectName(QStringLiteral("cardViewport"));
    cardScroll_->setFrameShape(QFrame::NoFrame);
    cardScroll_->setFocusPolicy(Qt::NoFocus);
    cardScroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    cardScroll_->setWidget(card_);
    reader_ = new ReaderCard;
    cards_->addPage(tr("Prescription"), cardScroll_);
    cards_->addPage(tr("Plain reader"), reader_);
    auto* suggestButton = new QPushButton(tr("Suggest pairs"));
    suggestButton->setObjectName(QStringLiteral("suggestButton"));
    suggestButton->setProperty("primary", true);
    suggestButton->setToolTip(tr("Searches the stock for this prescription (Enter in any field)"));
    connect(suggestButton, &QPushButton::clicked, this, &DispensePlace::suggest);
    cards_->layout()->addWidget(suggestButton);
    connect(cards_, &PagesFrame::pageShown, this, [this](int page) {
        if (page == 1 && reader_->isEmpty())
            newReader();
    });
    whole->addWidget(cards_);
    return frame;
}

QWidget* DispensePlace::buildLeft()
{
    auto* left = new QSplitter(Qt::Vertical);
    left->setObjectName(QStringLiteral("leftSplitter"));
    left->addWidget(buildPeople());
    left->addWidget(buildCards());
    left->setStretchFactor(0, 1);
    left->setStretchFactor(1, 0);
    left->setSizes({195, 510});
    left->setChildrenCollapsible(false);
    connect(people_, &PagesFrame::pageShown, left, [left](int page) { // the line needs more room than a card
        left->setSizes(page == peoplePage ? QList<int>{195, 510} : QList<int>{420, 285});
    });
    return left;
}

/// In the look now applied the card is never cut at its side, and no list is too low to work with: where the
/// window is, the page scrolls.
void DispensePlace::fitParts()
{
    card_->ensurePolished();
    const int line = card_->fontMetrics().lineSpacing();
    waitingView_->setMinimumHeight(10 * line);
    cardScroll_->setMinimumHeight(8 * line);
    pairsView_->setMinimumHeight(8 * line); // a pair whose powers need a line each
    constexpr int planeLines = 13;          // the words of its upright axis
    constexpr int largerLines = 16;         // beside larger letters its margins take more
    plane_->setMinimumHeight((textScaleNow() > leastTextScale ? largerLines : planeLines) * line);
    cardScroll_->setMinimumWidth(card_->minimumSizeHint().width() +
                                 cardScroll_->verticalScrollBar()->sizeHint().width());
}

void DispensePlace::addCommands(QWidget* newPerson, QWidget* loadPeople)
{
    cards_->addBeside(newPerson);
    people_->addBeside(loadPeople);
}

QWidget* DispensePlace::buildColumns()
{
    return columnsOf(QStringLiteral("dispenseSplitter"), {{buildLeft(), 342}, {buildAnswer(), 1012}});
}

/// What is recommended and why, over the pairs and what explains them: its sentences are long.
QWidget* DispensePlace::buildAnswer()
{
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    answerPanel_ = new AnswerPanel;
    column->addWidget(answerPanel_);
    column->addWidget(columnsOf(QStringLiteral("pairsSplitter"), {{buildMiddle(), 548}, {buildRight(), 456}}),
                      1);
    return part;
}

QWidget* DispensePlace::buildMiddle()
{
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    pairsView_ = new QListView;
    pairsView_->setObjectName(QStringLiteral("pairsView"));
    pairsView_->setAccessibleName(tr("Pairs to pull"));
    pairsView_->setToolTip(
        tr("Best first: power in dioptres, where to fetch it, what it leaves in each eye, prism"));
    pairsView_->setModel(pairs_);
    pairsView_->setItemDelegate(new PairDelegate(pairsView_));
    pairsView_->setSelectionMode(QAbstractItemView::SingleSelection);
    pairsView_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    pairsView_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    pairsView_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // the height of a pair follows its width
    pairsView_->setMouseTracking(true);
    pairsView_->setDragEnabled(true);
    pairsView_->setDragDropMode(QAbstractItemView::DragOnly);
    pairsView_->setResizeMode(QListView::Adjust);
    pairsView_->viewport()->setAutoFillBackground(false);
    pairsView_->setStyleSheet(QStringLiteral("QListView{background:transparent;}"));
    pairsHint_ = hinted({}, QStringLiteral("pairsHint"));
    pairsHint_->setAlignment(Qt::AlignCenter);
    handOver_ = new HandOverPanel;
    column->addWidget(pairsHint_, 1);
    column->addWidget(pairsView_, 1);
    column->addWidget(handOver_);
    return middle;
}

QWidget* DispensePlace::buildRight()
{
    plane_ = new PlanePanel;
    why_ = new WhyPanel;
    auto* right = new QSplitter(Qt::Vertical);
    right->setObjectName(QStringLiteral("rightSplitter"));
    right->addWidget(plane_);
    right->addWidget(why_);
    right->setStretchFactor(0, 3);
    right->setStretchFactor(1, 2);
    right->setChildrenCollapsible(false);
    return right;
}

} // namespace quarterstep
