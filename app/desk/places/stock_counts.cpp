// SPDX-License-Identifier: GPL-3.0-or-later
// Counts that the place Stock asks for: of a bin that was used often, and those that somebody edited in the
// file.
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/stock_place.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/session/wording.hpp"

#include <QAction>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace quarterstep
{

QWidget* StockPlace::buildSpot()
{
    spot_ = new QWidget;
    spot_->setObjectName(QStringLiteral("spotFrame"));
    auto* row = new QHBoxLayout(spot_);
    row->setContentsMargins(0, 0, 0, 0);
    spotWords_ = new QLabel;
    spotWords_->setObjectName(QStringLiteral("spotWords"));
    spotWords_->setProperty("role", QStringLiteral("complaint"));
    spotWords_->setWordWrap(true);
    row->addWidget(spotWords_, 1);
    auto* count = new QAction(tr("Count the bin that was used most"), this);
    count->setShortcut(QKeySequence(Qt::Key_F8));
    connect(count, &QAction::triggered, this, &StockPlace::countBin);
    addAction(count);
    auto* button = new QPushButton(tr("Count it now"));
    button->setObjectName(QStringLiteral("spotCountButton"));
    button->setToolTip(tr("Begins a blind count of this one bin (F8)"));
    connect(button, &QPushButton::clicked, count, &QAction::trigger);
    row->addWidget(button);
    spot_->hide();
    return spot_;
}

/// Counts are asked for one bin at a time; how many pieces the book says is not told.
void StockPlace::showSpot()
{
    spot_->setVisible(!counts_.toCount.empty());
    if (counts_.toCount.empty())
        return;
    const auto& first = counts_.toCount.front();
    auto words = tr("Bin %1 was reached into %n time(s) since it was counted.", nullptr, first.times)
                     .arg(ltr(first.bin));
    if (counts_.toCount.size() > 1)
        words += QLatin1Char(' ') + tr("%n more bin(s) wait for a count.", nullptr,
                                       static_cast<int>(counts_.toCount.size()) - 1);
    spotWords_->setText(words);
}

void StockPlace::countBin()
{
    if (counts_.toCount.empty())
        return;
    const auto bin = counts_.toCount.front();
    showView(asTable);
    work_->start(StockWork::count);
    QStringList names;
    for (const auto& line : bin.lines)
        names << ltr(line);
    chooseLine(bin.lines.front());
    messages_.showDone(tr("Count bin %1: %2. Two persons; what the book says comes afterwards.")
                           .arg(ltr(bin.bin), names.join(QStringLiteral(", "))));
}

QWidget* StockPlace::buildEdits()
{
    QVBoxLayout* column = nullptr;
    edits_ = framed(QStringLiteral("editsFrame"), tr("Counts edited in stock.yaml by hand"), column);
    editsText_ = new QLabel;
    editsText_->setObjectName(QStringLiteral("editsText"));
    editsText_->setWordWrap(true);
    column->addWidget(editsText_);
    editsReason_ = new QLineEdit;
    editsReason_->setObjectName(QStringLiteral("editsReasonEdit"));
    editsReason_->setAccessibleName(tr("Reason"));
    editsReason_->setPlaceholderText(tr("Reason, for taking them over"));
    editsReason_->setToolTip(tr("Why the counts in the file are the right ones; kept with the entry"));
    column->addWidget(editsReason_);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    const std::tuple<QString, QString, QString, bool> ways[] = {
        {QStringLiteral("discardEditsButton"), tr("Put the ledger's counts back"),
         tr("The file gets the counts of the ledger again"), false},
        {QStringLiteral("acceptEditsButton"), tr("Take the file's counts over"),
         tr("The ledger gets an entry with the difference and the reason"), true}};
    for (const auto& [name, words, tooltip, accept] : ways) {
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setToolTip(tooltip);
        connect(button, &QPushButton::clicked, this, [this, accepted = accept] { settleEdits(accepted); });
        row->addWidget(button);
    }
    column->addLayout(row);
    edits_->hide();
    return edits_;
}

void StockPlace::showEdits()
{
    const auto edited = camp_ ? camp_->edited() : decltype(camp_->edited()){};
    edits_->setVisible(!edited.empty());
    QStringList words;
    for (const auto& each : edited)
        words << tr("%1: the file says %2, the ledger %3")
                     .arg(ltr(each.line))
                     .arg(each.inFile)
                     .arg(each.inLedger);
    editsText_->setText(words.join(QLatin1Char('\n')));
}

void StockPlace::settleEdits(bool accept)
{
    if (accept && editsReason_->text().trimmed().isEmpty()) {
        messages_.showError(tr("Write why the counts in the file are the right ones."), {});
        editsReason_->setFocus();
        return;
    }
    pins_.run(roleAskedBy("stock", accept ? "--accept-edits" : "--discard-edits"),
              [this, accept] { carryOutEdits(accept); });
}

void StockPlace::carryOutEdits(bool accept)
{
    runCommand(messages_, [this, accept] {
        const auto edited = camp_->edited();
        if (accept)
            camp_->acceptEdits(edited, editsReason_->text().trimmed().toStdString());
        else
            camp_->discardEdits(edited);
        editsReason_->clear();
        messages_.showDone(
            accept ? tr("%n count(s) taken over from the file.", nullptr, static_cast<int>(edited.size()))
                   : tr("%n count(s) put back to the ledger's.", nullptr, static_cast<int>(edited.size())));
        refresh();
        Q_EMIT campChanged();
    });
}

} // namespace quarterstep
