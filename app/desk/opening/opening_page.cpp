// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/opening/opening_page.hpp"

#include "app/desk/places/parts.hpp"
#include "app/desk/shell/folding_row.hpp"
#include "app/session/wording.hpp"

#include <QDir>
#include <QFrame>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace quarterstep
{

OpeningPage::OpeningPage(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("emptyState"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 16, 24, 16);
    column->setSpacing(14);
    auto* heading = new QLabel(tr("Which camp?"), this);
    heading->setProperty("role", QStringLiteral("banner"));
    column->addWidget(heading);
    column->addWidget(hinted(tr("A camp is a folder: stock.yaml says what exists and how many; the ledger of "
                                "what was handed over is kept beside it."),
                             QStringLiteral("openingHint")));
    column->addWidget(buildProblems());
    column->addWidget(buildWays());
    column->addStretch(1);
    showProblems({}, {});
}

QPushButton* OpeningPage::button(QVBoxLayout& column, const char* name, const QString& text,
                                 const QString& tooltip)
{
    auto* made = new QPushButton(text, this);
    made->setObjectName(QLatin1String(name));
    made->setToolTip(tooltip);
    column.addWidget(made);
    return made;
}

/// One way to begin: title, what it is for, then its buttons.
QFrame* OpeningPage::way(const QString& title, const QString& words, QVBoxLayout*& column)
{
    auto* frame = framed(QStringLiteral("wayFrame"), title, column);
    column->setSpacing(8);
    column->addWidget(hinted(words, QStringLiteral("wayHint")));
    return frame;
}

QWidget* OpeningPage::buildWays()
{
    auto* box = new FoldingRow(this);
    QVBoxLayout* column = nullptr;

    box->add(way(tr("Look around"),
                 tr("A sample camp of invented people. What you do there stays in a copy of your own."),
                 column));
    practice_ = button(*column, "practiceButton", tr("Practise a hand-over, 3 minutes"),
                       tr("Opens the sample and tells each step beside the work"));
    auto* sample = button(*column, "openSampleButton", tr("Open the sample camp"),
                          tr("Opens your copy of the sample as you left it"));
    auto* afresh = button(*column, "sampleAfreshButton", tr("Begin the sample anew"),
                          tr("Throws away what was done in your copy of the sample"));
    column->addStretch(1);
    connect(practice_, &QPushButton::clicked, this, &OpeningPage::practiceWanted);
    connect(sample, &QPushButton::clicked, this, &OpeningPage::sampleWanted);
    connect(afresh, &QPushButton::clicked, this, &OpeningPage::sampleAfreshWanted);

    box->add(way(tr("Start my own camp"),
                 tr("Describe the trays of your box in a few lines; the desk writes the stock file."),
                 column));
    auto* own = button(*column, "startOwnButton", tr("Describe my trays…"),
                       tr("A page where you type the trays and see the lines they make"));
    column->addStretch(1);
    connect(own, &QPushButton::clicked, this, [this] { Q_EMIT ownWanted({}); });

    box->add(way(tr("Open a camp"), tr("A folder with a stock.yaml, on this laptop or on a stick."), column));
    auto* open =
        button(*column, "emptyOpenButton", tr("Choose a folder…"), tr("Chooses the folder with stock.yaml"));
    open->setProperty("primary", true);
    connect(open, &QPushButton::clicked, this, &OpeningPage::askFolderWanted);
    camps_ = new QVBoxLayout;
    camps_->setSpacing(6);
    column->addLayout(camps_);
    back_ =
        button(*column, "backToCampButton", tr("Back to the open camp"), tr("Leaves everything as it is"));
    connect(back_, &QPushButton::clicked, this, &OpeningPage::backWanted);
    column->addStretch(1);
    return box;
}

QWidget* OpeningPage::buildProblems()
{
    QVBoxLayout* column = nullptr;
    problems_ = framed(QStringLiteral("problemsFrame"), {}, column);
    problemsHeading_ = new QLabel(problems_);
    problemsHeading_->setObjectName(QStringLiteral("problemsHeading"));
    problemsHeading_->setProperty("role", QStringLiteral("heading"));
    problemsHeading_->setWordWrap(true);
    problemsText_ = new QPlainTextEdit(problems_);
    problemsText_->setObjectName(QStringLiteral("problemsText"));
    problemsText_->setAccessibleName(tr("What was found, with file, line and column"));
    problemsText_->setToolTip(tr("File, line and column of everything found; can be copied"));
    problemsText_->setReadOnly(true);
    problemsText_->setTabChangesFocus(true);
    problemsText_->setLayoutDirection(layoutDirection());
    problemsWayOut_ = new QLabel(problems_);
    problemsWayOut_->setObjectName(QStringLiteral("problemsWayOut"));
    problemsWayOut_->setWordWrap(true);
    column->addWidget(problemsHeading_);
    column->addWidget(problemsText_);
    column->addWidget(problemsWayOut_);
    startHere_ = button(*column, "startHereButton", tr("Start a camp in this folder…"),
                        tr("Describe the trays; the stock file is written into this folder"));
    connect(startHere_, &QPushButton::clicked, this, [this] { Q_EMIT ownWanted(problemFolder_); });
    return problems_;
}

void OpeningPage::showProblems(const QString& folder, const std::vector<Finding>& findings)
{
    problemFolder_ = folder;
    problems_->setVisible(!findings.empty());
    // The first one: Tab goes to a page by its proxy, and what stands before it would be left out.
    setFocusProxy(findings.empty() ? static_cast<QWidget*>(practice_) : problemsText_);
    if (findings.empty())
        return;
    QStringList lines;
    bool noStock = false;
    for (const auto& finding : findings) {
        lines << say(finding);
        noStock = noStock || (finding.code == "file-missing" && QDir(folder).exists());
    }
    problemsHeading_->setText(tr("%1 was not opened").arg(ltr(QDir::toNativeSeparators(folder))));
    problemsText_->setPlainText(lines.join(QLatin1Char('\n')));
    const int shown = static_cast<int>(std::clamp<qsizetype>(lines.size(), 2, 8));
    problemsText_->setFixedHeight(problemsText_->fontMetrics().lineSpacing() * (shown + 1) + 12);
    startHere_->setVisible(noStock);
    problemsWayOut_->setText(
        noStock ? tr("This folder has no stock.yaml. Choose the folder that has one, or start a camp here.")
                : tr("Mend the file at the line and column named, with any text editor, and open the folder "
                     "again. Nothing was written."));
}

void OpeningPage::showCamps(const QStringList& folders, bool oneIsOpen)
{
    while (auto* item = camps_->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // it may be the very button that was pressed
        delete item;
    }
    int number = 0;
    auto* before = findChild<QWidget*>(QStringLiteral("emptyOpenButton"));
    for (const auto& folder : folders) {
        const auto name = QDir(folder).dirName();
        auto* open = new QPushButton(tr("Open %1").arg(ltr(name)), this);
        open->setObjectName(QStringLiteral("recentCamp%1").arg(number++));
        open->setToolTip(QDir::toNativeSeparators(folder));
        connect(open, &QPushButton::clicked, this, [this, folder] { Q_EMIT folderWanted(folder); });
        camps_->addWidget(open);
        setTabOrder(before, open);
        before = open;
    }
    setTabOrder(before, back_);
    back_->setVisible(oneIsOpen);
}

} // namespace quarterstep
