// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/answer_panel.hpp"

#include "app/desk/shell/folding_row.hpp"
#include "app/session/wording.hpp"

#include <QLabel>
#include <QTabBar>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr int leastForReason = 50; ///< characters beside the verdict

/// The first letter large, where the script has such.
QString headline(QString words)
{
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QString notesOf(const Recommendation& recommendation)
{
    QStringList lines;
    for (const auto& need : recommendation.needs)
        if (!(need == recommendation.reason)) // said above already
            lines << AnswerPanel::tr("Needed: %1").arg(say(need));
    if (recommendation.referral != Referral::no)
        lines << AnswerPanel::tr("Referral: %1, %2")
                     .arg(say(recommendation.referral), say(recommendation.urgency));
    if (recommendation.recheck)
        lines << AnswerPanel::tr("Measure again before handing over.");
    for (const auto& flag : recommendation.flags)
        lines << QStringLiteral("\u25B8 ") + say(flag.sentence);
    return lines.join(QLatin1Char('\n'));
}
} // namespace

AnswerPanel::AnswerPanel(QWidget* parent)
    : QFrame(parent), purposes_(new QTabBar(this)), verdict_(new QLabel(this)), reason_(new QLabel(this)),
      notes_(new QLabel(this))
{
    setObjectName(QStringLiteral("answerFrame"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(2);
    purposes_->setObjectName(QStringLiteral("purposeTabs"));
    purposes_->setAccessibleName(tr("Purpose shown"));
    purposes_->setToolTip(tr("Each purpose is judged alone"));
    purposes_->setExpanding(false);
    purposes_->setDrawBase(false);
    verdict_->setObjectName(QStringLiteral("verdictLabel"));
    verdict_->setProperty("role", QStringLiteral("heading"));
    auto large = font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    verdict_->setFont(large);
    reason_->setObjectName(QStringLiteral("reasonLabel"));
    notes_->setObjectName(QStringLiteral("notesLabel"));
    for (auto* label : {verdict_, reason_, notes_})
        label->setWordWrap(true);
    auto* said = new FoldingRow(this);
    said->add(verdict_, 0);
    said->add(reason_, 1, leastForReason * fontMetrics().averageCharWidth());
    column->addWidget(purposes_);
    column->addWidget(said);
    column->addWidget(notes_);
    connect(purposes_, &QTabBar::currentChanged, this, &AnswerPanel::showOne);
    clear({});
}

void AnswerPanel::show(const std::vector<Recommendation>& recommendations)
{
    recommendations_ = recommendations;
    {
        const QSignalBlocker quiet(purposes_);
        while (purposes_->count() > 0)
            purposes_->removeTab(0);
        for (const auto& recommendation : recommendations_)
            purposes_->addTab(say(recommendation.purpose));
        purposes_->setVisible(recommendations_.size() > 1);
    }
    showOne(0);
}

void AnswerPanel::choose(int index)
{
    purposes_->setCurrentIndex(index);
}

void AnswerPanel::clear(const QString& hint)
{
    recommendations_.clear();
    purposes_->hide();
    verdict_->hide();
    notes_->hide();
    reason_->setText(hint);
}

QString AnswerPanel::text() const
{
    return QStringList{verdict_->text(), reason_->text(), notes_->text()}.join(QLatin1Char('\n'));
}

void AnswerPanel::showOne(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= recommendations_.size())
        return;
    const auto& recommendation = recommendations_[static_cast<std::size_t>(index)];
    verdict_->setText(headline(say(recommendation.verdict)));
    verdict_->show();
    reason_->setText(
        recommendation.reason.empty()
            ? tr("Rules: %1").arg(ltr(recommendation.profile))
            : tr("%1  (rules: %2)").arg(say(recommendation.reason), ltr(recommendation.profile)));
    const auto notes = notesOf(recommendation);
    notes_->setText(notes);
    notes_->setVisible(!notes.isEmpty());
    Q_EMIT answerChosen(index);
}

} // namespace quarterstep
