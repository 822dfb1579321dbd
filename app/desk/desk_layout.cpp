// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the window and where they stand; what they do is in desk_window.cpp.
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/place_table.hpp"
#include "app/desk/shell/camp_notes.hpp"
#include "app/desk/shell/focus_in_sight.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/desk/shell/wrap_layout.hpp"

#include <QAction>
#include <QButtonGroup>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace quarterstep
{

/// A page that scrolls where the letters are large and the screen is small; empty until it is wanted.
QScrollArea* DeskWindow::page(const char* name)
{
    auto* area = new QScrollArea(pages_);
    area->setObjectName(QLatin1String(name));
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    pages_->addWidget(area);
    return area;
}

void DeskWindow::buildPages()
{
    auto* whole = new QWidget(this);
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(10, 6, 10, 10);
    column->setSpacing(6);
    openingPage_ = page("openingScroll");
    for (const auto& row : placeTable)
        placePages_ << page(row.page);
    traysPage_ = page("traysScroll");
    exchangeScroll_ = page("exchangeScroll");
    settingsScroll_ = page("settingsScroll");
    column->addWidget(buildHeader());
    column->addWidget(practice_);
    column->addWidget(work_);
    column->addWidget(messages_);
    column->addWidget(notes_);
    column->addWidget(pins_);
    column->addWidget(pages_, 1);
    setCentralWidget(whole);
    keepFocusInSight(*this);
}

QAction* DeskWindow::command(const QString& text, const QKeySequence& keys, void (DeskWindow::*run)())
{
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, run);
    addAction(action);
    return action;
}

/// A button for an action; keys go to the action, which acts at once.
QPushButton* DeskWindow::commandButton(const char* name, const QString& tooltip, QAction* action)
{
    auto* button = new QPushButton(action->text(), this);
    button->setObjectName(QLatin1String(name));
    button->setToolTip(
        QStringLiteral("%1 (%2)").arg(tooltip, action->shortcut().toString(QKeySequence::NativeText)));
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    return button;
}

QWidget* DeskWindow::buildHeader()
{
    auto* header = new QWidget(this);
    header->setObjectName(QStringLiteral("deskHeader"));
    auto* row = new WrapLayout(header);
    row->setContentsMargins(4, 0, 0, 0);
    row->setSpacing(8);
    site_ = new QLabel(header);
    site_->setObjectName(QStringLiteral("siteLabel"));
    site_->setProperty("role", QStringLiteral("title"));
    sample_ = new QLabel(tr("SAMPLE: invented people, nothing here counts"), header);
    sample_->setObjectName(QStringLiteral("sampleLabel"));
    sample_->setProperty("role", QStringLiteral("badge"));
    summary_ = new QLabel(header);
    summary_->setObjectName(QStringLiteral("summaryLabel"));
    summary_->setProperty("role", QStringLiteral("hint"));
    row->addWidget(site_);
    row->addWidget(sample_);
    row->mayGo(); // the name of the site and the title of the window say SAMPLE too
    buildPlaceButtons(*row);
    row->addWidget(summary_);
    row->mayGo();
    row->endHere();
    exchangeButton_ = commandButton(
        "exchangeButton",
        tr("Brings prescriptions in from files, instruments or the clipboard, and sends them out"),
        command(tr("Bring in…"), QKeySequence(Qt::CTRL | Qt::Key_I), &DeskWindow::showExchange));
    row->addWidget(exchangeButton_);
    row->addWidget(commandButton("openFolderButton", tr("Opens another camp, the sample, or starts one"),
                                 command(tr("Camps…"), QKeySequence::Open, &DeskWindow::showOpening)));
    row->addWidget(commandButton(
        "settingsButton", tr("Look, language, printer, camp, PINs"),
        command(tr("Settings"), QKeySequence(Qt::CTRL | Qt::Key_Comma), &DeskWindow::showSettings)));
    row->addWidget(commandButton("helpButton", tr("The manual, at the page for where you are"),
                                 command(tr("Help"), QKeySequence(Qt::Key_F1), &DeskWindow::showHelp)));
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

void DeskWindow::buildPlaceButtons(WrapLayout& row)
{
    placeButtons_ = new QButtonGroup(this);
    for (const auto& each : placeTable) {
        const int place = static_cast<int>(placeButtons_->buttons().size());
        auto* action = new QAction(tr(each.words), this);
        action->setShortcut(QKeySequence(Qt::ALT | Qt::Key(Qt::Key_1 + place)));
        connect(action, &QAction::triggered, this, [this, place] { showPlace(static_cast<Place>(place)); });
        addAction(action);
        auto* button = commandButton(each.button, tr(each.tooltip), action);
        row.addWidget(button);
        button->setCheckable(true);
        placeButtons_->addButton(button, place);
    }
}

/// What has a key and no button in the head of the window.
void DeskWindow::buildActions()
{
    newPerson_ = command(tr("New person"), QKeySequence::New, &DeskWindow::newPerson);
    loadPeople_ = command(tr("Load people…"), QKeySequence(Qt::CTRL | Qt::Key_L), &DeskWindow::askTable);
    command(tr("Every key of the window"), QKeySequence(Qt::SHIFT | Qt::Key_F1), &DeskWindow::showKeys);
    command(tr("Next look: light, dark, sun"), QKeySequence(Qt::Key_F7), &DeskWindow::takeNextLook);
    command(tr("Larger letters"), QKeySequence::ZoomIn, &DeskWindow::largerText)
        ->setShortcuts({QKeySequence(QKeySequence::ZoomIn), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
    command(tr("Smaller letters"), QKeySequence::ZoomOut, &DeskWindow::smallerText);
    command(tr("Usual letters"), QKeySequence(Qt::CTRL | Qt::Key_0), &DeskWindow::usualText);
    command(tr("Power plane as a table"), QKeySequence(Qt::CTRL | Qt::Key_T), &DeskWindow::togglePlaneTable);
    auto* leave = new QAction(tr("Leave"), this);
    leave->setShortcut(Qt::CTRL | Qt::Key_Q);
    connect(leave, &QAction::triggered, this, &QWidget::close);
    addAction(leave);
}

} // namespace quarterstep
