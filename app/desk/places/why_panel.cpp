// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/why_panel.hpp"

#include "app/desk/models/bars_model.hpp"
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/models/cross_model.hpp"
#include "app/desk/places/bars_part.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/bars_view.hpp"
#include "app/desk/plots/cross_view.hpp"
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"
#include "core/fitting/reasons.hpp"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <cmath>

namespace quarterstep
{

namespace
{
QString clearWords(const std::optional<Range>& clear)
{
    if (!clear)
        return {};
    const auto centimetres = [](double mm) { return ltr(QString::number(std::lround(mm / 10.0))); };
    return std::isinf(clear->most) ? WhyPanel::tr("Clear from %1 cm on.").arg(centimetres(clear->least))
                                   : WhyPanel::tr("Clear from %1 to %2 cm.")
                                         .arg(centimetres(clear->least), centimetres(clear->most));
}

/// Every word of the sentence that is a figure or a name keeps its direction.
QString whySentence(const Comparison& comparison, const Candidate& first, const Candidate& second)
{
    auto words = say(comparison.sentence);
    if (comparison.step != RankStep::outsideLimit)
        return words;
    const auto& lower = comparison.firstAbove ? second : first;
    if (const auto* failing = lower.fit.firstWith(Band::fails))
        words += QLatin1Char('\n') + say(failingSentence(*failing));
    return words;
}
} // namespace

WhyPanel::WhyPanel(QWidget* parent)
    : QWidget(parent), criteria_(new CriteriaModel(this)), cross_(new CrossModel(this)),
      bars_(new BarsModel(this)),
      frame_(new PagesFrame(QStringLiteral("whyFrame"), QStringLiteral("whyTabs"), tr("Why this pair"), this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(frame_);
    frame_->addPage(tr("Why"), buildCriteria(), tr("Why this pair"));
    frame_->addPage(tr("Cross"), buildCross());
    frame_->addPage(tr("Above"), buildAbove(), tr("Above another"));
    crossTable_ = new QPushButton(tr("Table"), frame_);
    crossTable_->setObjectName(QStringLiteral("crossTableButton"));
    crossTable_->setCheckable(true);
    crossTable_->setToolTip(tr("Shows the same values as a table"));
    crossTable_->hide();
    frame_->addBeside(crossTable_);
    connect(crossTable_, &QPushButton::toggled, this, [this](bool on) {
        for (auto* pages : {crossPages_, barsPages_})
            pages->setCurrentIndex(on ? 1 : 0);
        crossTable_->setText(on ? tr("Picture") : tr("Table"));
    });
    connect(frame_, &PagesFrame::pageShown, this,
            [this](int page) { crossTable_->setVisible(page != criteriaPage); });
    clear();
}

QWidget* WhyPanel::buildCriteria()
{
    auto* view = tableOf(criteria_, QStringLiteral("criteriaView"), tr("Why: criteria of the chosen pair"));
    view->setToolTip(tr("Measured values and limits, each with its unit and source"));
    giveWidths(*view, {23, 8, 7, 6, 21}); // criterion, value, limit, unit, band
    view->horizontalHeader()->setMinimumSectionSize(view->fontMetrics().averageCharWidth() * 4);
    return view;
}

QWidget* WhyPanel::buildCross()
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    crossPages_ = new QStackedWidget(page);
    crossView_ = new CrossView;
    crossPages_->addWidget(crossView_);
    auto* table = tableOf(cross_, QStringLiteral("crossTable"), tr("Optical crosses as a table"));
    table->setToolTip(tr("Powers in dioptres along their meridians, degrees"));
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    crossPages_->addWidget(table);
    clear_ = hinted({}, QStringLiteral("clearRangeLabel"));
    column->addWidget(crossPages_, 1);
    column->addWidget(clear_);
    return page;
}

QWidget* WhyPanel::buildAbove()
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    auto* words = hinted(tr("The chosen pair and"), QStringLiteral("otherPairHint"));
    other_ = new QComboBox(page);
    other_->setObjectName(QStringLiteral("otherPairBox"));
    other_->setAccessibleName(tr("Pair to compare with"));
    other_->setToolTip(tr("The other pair of the list that the chosen one is compared with"));
    other_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    words->setBuddy(other_);
    sentence_ = new QLabel(page);
    sentence_->setObjectName(QStringLiteral("aboveLabel"));
    sentence_->setWordWrap(true);
    sentence_->setAlignment(Qt::AlignLeading | Qt::AlignTop);
    words->setWordWrap(false);
    auto* row = new QHBoxLayout;
    row->addWidget(words);
    row->addWidget(other_, 1);
    column->addLayout(row);
    column->addWidget(sentence_);
    barsPages_ = new QStackedWidget(page);
    barsView_ = new BarsView(QStringLiteral("aboveBars"));
    barsPages_->addWidget(scrollAround(barsView_, QStringLiteral("aboveScroll"), 2));
    barsPages_->addWidget(barsTableOf(bars_, QStringLiteral("aboveTable")));
    column->addWidget(barsPages_, 1);
    connect(other_, &QComboBox::currentIndexChanged, this, &WhyPanel::compare);
    return page;
}

void WhyPanel::setPage(Page page)
{
    frame_->setPage(page);
}

void WhyPanel::clear()
{
    question_ = {};
    chosen_.reset();
    others_.clear();
    criteria_->clear();
    cross_->clear();
    crossView_->clear();
    clear_->clear();
    other_->clear();
    other_->setEnabled(false);
    showBars({});
    sentence_->setText(tr("Choose a pair: why it stands above or below another is said here."));
}

void WhyPanel::show(const WhyQuestion& question, const Candidate& chosen,
                    const std::vector<const Candidate*>& list)
{
    question_ = question;
    chosen_ = chosen;
    criteria_->show(chosen.fit);
    const auto& need = question_.answer->need;
    const auto explained = need && question_.profile
                               ? explainPair(*need, chosen.parts, question_.stock, *question_.profile,
                                             *question_.settings, nullptr)
                               : std::nullopt;
    const auto crosses = explained ? explained->crosses : PerEye<std::optional<EyeCrosses>>{};
    cross_->show(crosses);
    crossView_->show(crosses);
    const auto words = clearWords(explained ? explained->clear : std::nullopt);
    clear_->setText(words);
    clear_->setVisible(!words.isEmpty());
    const QSignalBlocker quiet(other_);
    other_->clear();
    others_.clear();
    int beside = 0; // the one after the chosen pair, or the one before the last
    for (const auto* each : list) {
        if (each == &chosen) {
            beside = static_cast<int>(others_.size());
            continue;
        }
        others_.push_back(*each);
        other_->addItem(DeskWords::powers(each->supply) + QStringLiteral("  ") +
                        DeskWords::pull(each->parts, question_.stock));
    }
    other_->setEnabled(!others_.empty());
    other_->setCurrentIndex(std::min(beside, static_cast<int>(others_.size()) - 1));
    compare();
}

void WhyPanel::compare()
{
    const int at = other_->currentIndex();
    if (!chosen_ || at < 0 || !question_.answer || !question_.answer->need || !question_.profile) {
        sentence_->setText(tr("There is no other pair to compare with."));
        return showBars({});
    }
    const auto& other = others_[static_cast<std::size_t>(at)];
    const auto comparison =
        whyAbove(*question_.answer->need, question_.stock, *question_.profile, {}, *chosen_, other);
    sentence_->setText(whySentence(comparison, *chosen_, other));
    const auto& upper = comparison.firstAbove ? *chosen_ : other;
    const auto& lower = comparison.firstAbove ? other : *chosen_;
    showBars(costBars(*question_.answer->need, &upper.fit, DeskWords::pull(upper.parts, question_.stock),
                      lower.fit, DeskWords::pull(lower.parts, question_.stock)));
}

/// From the upper pair to the lower one.
void WhyPanel::showBars(const ShareBars& picture)
{
    barsView_->show(picture);
    bars_->show(picture);
}

void WhyPanel::restyle()
{
    crossView_->update();
    barsView_->update();
}

} // namespace quarterstep
