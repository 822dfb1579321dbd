// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_window.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/session/wording.hpp"

#include <QAction>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace quarterstep
{

DeskWindow::DeskWindow(QWidget* parent)
    : QMainWindow(parent), messages_(new MessageBar), dispense_(new DispensePlace(*messages_)),
      stock_(new StockPlace(*messages_)), audit_(new AuditPlace(*messages_)), pages_(new QStackedWidget)
{
    setObjectName(QStringLiteral("deskWindow"));
    setWindowTitle(tr("Quarterstep"));
    auto* whole = new QWidget(this);
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(10, 6, 10, 10);
    column->setSpacing(6);
    pages_->addWidget(buildEmptyState());
    pages_->addWidget(dispense_);
    pages_->addWidget(stock_);
    pages_->addWidget(audit_);
    column->addWidget(buildHeader());
    column->addWidget(messages_);
    column->addWidget(pages_, 1);
    setCentralWidget(whole);
    connect(dispense_, &DispensePlace::campChanged, this, [this] {
        stock_->refresh();
        audit_->campMoved();
        showCamp();
    });
    connect(stock_, &StockPlace::campChanged, this, [this] {
        dispense_->refresh();
        audit_->campMoved();
        showCamp();
    });
    auto* twin = new QAction(tr("Power plane as a table"), this);
    twin->setShortcut(Qt::CTRL | Qt::Key_T);
    connect(twin, &QAction::triggered, dispense_, &DispensePlace::togglePlaneTable);
    auto* leave = new QAction(tr("Leave"), this);
    leave->setShortcut(QKeySequence::Quit);
    connect(leave, &QAction::triggered, this, &QWidget::close);
    addActions({twin, leave});
    showCamp();
}

/// A button and the action behind it; keys go to the action, which acts at once.
QPushButton* DeskWindow::command(QHBoxLayout& row, const QString& name, const QString& text,
                                 const QString& tooltip, const QKeySequence& keys, void (DeskWindow::*run)())
{
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, run);
    addAction(action);
    auto* button = new QPushButton(text, this);
    button->setObjectName(name);
    button->setToolTip(QStringLiteral("%1 (%2)").arg(tooltip, keys.toString(QKeySequence::NativeText)));
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    row.addWidget(button);
    return button;
}

QWidget* DeskWindow::buildHeader()
{
    auto* header = new QWidget(this);
    auto* row = new QHBoxLayout(header);
    row->setContentsMargins(4, 0, 0, 0);
    site_ = new QLabel(header);
    site_->setObjectName(QStringLiteral("siteLabel"));
    site_->setProperty("role", QStringLiteral("heading"));
    auto large = font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    site_->setFont(large);
    summary_ = new QLabel(header);
    summary_->setObjectName(QStringLiteral("summaryLabel"));
    summary_->setProperty("role", QStringLiteral("hint"));
    row->addWidget(site_);
    row->addSpacing(12);
    buildPlaceButtons(*row);
    row->addSpacing(12);
    row->addWidget(summary_, 1);
    newPersonButton_ = command(*row, QStringLiteral("newPersonButton"), tr("New person"),
                               tr("Empties the card"), QKeySequence::New, &DeskWindow::newPerson);
    tableButton_ = command(*row, QStringLiteral("loadPeopleButton"), tr("Load people…"),
                           tr("Puts the people of a prescription table into the waiting list"),
                           QKeySequence(Qt::CTRL | Qt::Key_L), &DeskWindow::askTable);
    command(*row, QStringLiteral("openFolderButton"), tr("Open camp…"), tr("Opens a camp folder"),
            QKeySequence::Open, &DeskWindow::askFolder);
    theme_ = new QComboBox(header);
    theme_->setObjectName(QStringLiteral("themeBox"));
    theme_->setAccessibleName(tr("Look of the window"));
    theme_->setToolTip(tr("Light, dark, or sun: black on white and large, for outdoors"));
    theme_->addItems({tr("Light"), tr("Dark"), tr("Sun")});
    theme_->setCurrentIndex(static_cast<int>(themeNow()));
    connect(theme_, &QComboBox::activated, this, &DeskWindow::takeTheme);
    row->addWidget(theme_);
    return header;
}

void DeskWindow::buildPlaceButtons(QHBoxLayout& row)
{
    placeButtons_ = new QButtonGroup(this);
    const std::tuple<QString, QString, QString> places[] = {
        {QStringLiteral("dispensePlaceButton"), tr("Dispense"), tr("Who is served, and with what")},
        {QStringLiteral("stockPlaceButton"), tr("Stock"),
         tr("What lies in the box, and what happened to it")},
        {QStringLiteral("auditPlaceButton"), tr("Audit"),
         tr("Which pairs went wrong, and what slip did it")}};
    for (const auto& [name, words, tooltip] : places) {
        const int place = static_cast<int>(placeButtons_->buttons().size());
        auto* action = new QAction(words, this);
        action->setShortcut(QKeySequence(Qt::ALT | Qt::Key(Qt::Key_1 + place)));
        connect(action, &QAction::triggered, this, [this, place] { showPlace(static_cast<Place>(place)); });
        addAction(action);
        auto* button = new QPushButton(words, this);
        button->setObjectName(name);
        button->setCheckable(true);
        button->setToolTip(
            QStringLiteral("%1 (%2)").arg(tooltip, action->shortcut().toString(QKeySequence::NativeText)));
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        placeButtons_->addButton(button, place);
        row.addWidget(button);
    }
}

void DeskWindow::showPlace(Place place)
{
    if (!camp_)
        return;
    pages_->setCurrentIndex(1 + static_cast<int>(place));
    placeButtons_->button(static_cast<int>(place))->setChecked(true);
}

QWidget* DeskWindow::buildEmptyState()
{
    auto* page = new QWidget(this);
    page->setObjectName(QStringLiteral("emptyState"));
    auto* column = new QVBoxLayout(page);
    auto* heading = new QLabel(tr("Open a camp folder"), page);
    heading->setProperty("role", QStringLiteral("heading"));
    auto large = font();
    large.setPointSizeF(large.pointSizeF() * 2.0);
    heading->setFont(large);
    auto* text =
        new QLabel(tr("A camp folder holds stock.yaml (what exists and how many) and, when there is one, "
                      "rules.yaml and people.csv.\nThe ledger of what was handed over is made in it."),
                   page);
    text->setProperty("role", QStringLiteral("hint"));
    text->setAlignment(Qt::AlignCenter);
    auto* open = new QPushButton(tr("Open a camp folder…"), page);
    open->setObjectName(QStringLiteral("emptyOpenButton"));
    open->setProperty("primary", true);
    open->setToolTip(tr("Chooses the folder with stock.yaml (Ctrl+O)"));
    connect(open, &QPushButton::clicked, this, &DeskWindow::askFolder);
    page->setFocusProxy(open);
    column->addStretch(2);
    for (auto* widget : std::initializer_list<QWidget*>{heading, text, open})
        column->addWidget(widget, 0, Qt::AlignHCenter);
    column->setSpacing(14);
    column->addStretch(3);
    return page;
}

bool DeskWindow::openCamp(const QString& folder)
{
    messages_->dismiss();
    const bool opened = runCommand(*messages_, [this, &folder] {
        auto opening = Camp::open(folder.toStdString(), Ledger::Mode::readWrite);
        dispense_->take(nullptr);
        stock_->take(nullptr);
        audit_->take(nullptr);
        camp_.emplace(std::move(opening));
        stock_->take(&*camp_);
        audit_->take(&*camp_);
        dispense_->take(&*camp_);
    });
    showCamp();
    return opened;
}

bool DeskWindow::choosePerson(const QString& code)
{
    return dispense_->choosePerson(code.toStdString());
}

void DeskWindow::askFolder()
{
    const auto folder = QFileDialog::getExistingDirectory(this, tr("Open a camp folder"));
    if (!folder.isEmpty())
        openCamp(folder);
}

void DeskWindow::askTable()
{
    const auto path =
        QFileDialog::getOpenFileName(this, tr("Load people"), {}, tr("Prescription tables (*.csv)"));
    if (!path.isEmpty())
        runCommand(*messages_, [this, &path] { dispense_->loadPeople(path.toStdString()); });
}

void DeskWindow::newPerson()
{
    if (!camp_)
        return;
    showPlace(Place::dispense);
    dispense_->newPerson();
}

void DeskWindow::showCamp()
{
    const auto* camp = camp_ ? &*camp_ : nullptr;
    if (camp && pages_->currentIndex() == 0)
        showPlace(Place::dispense);
    if (!camp)
        pages_->setCurrentIndex(0);
    for (auto* button : placeButtons_->buttons())
        button->setVisible(camp);
    if (!camp)
        pages_->currentWidget()->setFocus();
    newPersonButton_->setVisible(camp);
    tableButton_->setVisible(camp);
    site_->setText(camp ? ltr(camp->site()) : tr("Quarterstep"));
    int pieces = 0;
    for (const auto& line : camp ? camp->stock() : std::vector<StockLine>{})
        pieces += line.onHand;
    summary_->setText(camp ? tr("%n on hand", nullptr, pieces) : tr("No camp is open"));
    setWindowTitle(camp ? tr("%1: Quarterstep").arg(QString::fromStdString(camp->site()))
                        : tr("Quarterstep"));
}

void DeskWindow::takeTheme(int index)
{
    applyTheme(*qApp, static_cast<Theme>(index));
    dispense_->restyle();
    stock_->restyle();
    audit_->restyle();
}

} // namespace quarterstep
