// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_case.hpp"

#include "app/desk/models/bars_model.hpp"
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/audit_words.hpp"
#include "app/desk/places/bars_part.hpp"
#include "app/desk/places/pages_frame.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/table_room.hpp"
#include "app/desk/plots/bars_view.hpp"
#include "app/desk/shell/wrap_layout.hpp"
#include "app/session/wording.hpp"

#include <QAbstractTextDocumentLayout>
#include <QButtonGroup>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace quarterstep
{

namespace
{
/// What the bars may show of a hand-over.
enum class WhyNotPicture { betterToGiven, given, limitsOfGiven, limitsOfBetter };

/// It scrolls: it asks for no more than its least height, so that the words above it are seen.
class LowText final : public QTextBrowser
{
  public:
    [[nodiscard]] QSize sizeHint() const override
    {
        return {QTextBrowser::sizeHint().width(), minimumHeight()};
    }
};
} // namespace

AuditCasePanel::AuditCasePanel(QWidget* parent)
    : QFrame(parent), criteria_(new CriteriaModel(this)), bars_(new BarsModel(this))
{
    setObjectName(QStringLiteral("caseFrame"));
    setProperty("panel", true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(4);
    heading_ = new QLabel;
    heading_->setObjectName(QStringLiteral("caseHeading"));
    heading_->setProperty("role", QStringLiteral("heading"));
    heading_->setWordWrap(true);
    column->addWidget(heading_);
    words_ = new QLabel;
    words_->setObjectName(QStringLiteral("caseWords"));
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignLeading | Qt::AlignTop);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    words_->setAccessibleName(AuditPlace::tr("Need, pair and findings"));
    words_->setToolTip(
        AuditPlace::tr("What was needed, what was given, what lay in the box; the text can be copied"));
    wordsScroll_ = scrollAround(words_, QStringLiteral("caseWordsScroll"), 4);
    wordsScroll_->setAccessibleName(AuditPlace::tr("Need, pair and findings"));
    wordsScroll_->setToolTip(words_->toolTip());
    column->addWidget(wordsScroll_, 3); // as high as its words at most
    auto* pages = new PagesFrame(QStringLiteral("casePages"), QStringLiteral("caseTabs"),
                                 tr("Criteria and slips, or the picture of why not"), this);
    pages->layout()->setContentsMargins(0, 0, 0, 0);
    pages->addPage(tr("Criteria and slips"), buildCriteria());
    pages->addPage(tr("Why not"), buildWhyNot());
    column->addWidget(pages, 5);
    show(nullptr);
}

QWidget* AuditCasePanel::buildCriteria()
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    auto* bar = new QWidget;
    auto* row = new WrapLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto* hint = hinted(AuditPlace::tr("Why, criterion by criterion:"), QStringLiteral("criteriaHint"));
    hint->setWordWrap(false);
    row->addWidget(hint);
    row->endHere();
    pairButtons_ = oneOf(this, *row,
                         {{QStringLiteral("criteriaOfGiven"), AuditPlace::tr("Pair given"),
                           AuditPlace::tr("How the pair that was given is judged")},
                          {QStringLiteral("criteriaOfBetter"), AuditPlace::tr("Better pair"),
                           AuditPlace::tr("How the pair that lay in the box is judged")}});
    column->addWidget(bar);
    criteriaView_ =
        tableOf(criteria_, QStringLiteral("caseCriteria"), AuditPlace::tr("Criteria of the pair"));
    criteriaView_->setToolTip(
        AuditPlace::tr("Each criterion with its value, its limit and the source of the limit"));
    using Columns = CriteriaModel;
    keepFit(*criteriaView_,
            {Columns::measuredColumn, Columns::limitColumn, Columns::unitColumn, Columns::bandColumn});
    constexpr int leastCharacters = 12;
    shareWidth(*criteriaView_, {{Columns::nameColumn, 3}, {Columns::sourceColumn, 2}}, leastCharacters);
    constexpr int fullName = 24; // characters
    wrapIn(*criteriaView_, Columns::nameColumn, fullName);
    giveRoom(*criteriaView_, 5);
    column->addWidget(criteriaView_, 3);
    column->addWidget(
        hinted(AuditPlace::tr("Slips that the record allows. It speaks of the record; a person decides."),
               QStringLiteral("slipsHint")));
    slips_ = new LowText;
    slips_->setObjectName(QStringLiteral("slipsText"));
    slips_->setAccessibleName(AuditPlace::tr("Slips and their arithmetic"));
    slips_->setToolTip(AuditPlace::tr("Probability of each slip, and how it comes about"));
    slips_->setTabChangesFocus(true);
    constexpr int least = 3; // lines
    slips_->setMinimumHeight(least * slips_->fontMetrics().height());
    column->addWidget(slips_, 2);
    connect(slips_->document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged, slips_,
            [this](const QSizeF& size) { // no higher than its words: the criteria have the rest
                slips_->setMaximumHeight(
                    std::max(slips_->minimumHeight(),
                             2 * slips_->frameWidth() + 4 + static_cast<int>(std::ceil(size.height()))));
            });
    connect(pairButtons_, &QButtonGroup::idClicked, this, &AuditCasePanel::showCriteria);
    return page;
}

QWidget* AuditCasePanel::buildWhyNot()
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    pictures_ = boxNamed(QStringLiteral("whyNotBox"), tr("What the bars show"),
                         tr("From the better pair to the pair given, or the limits of one of them"));
    column->addWidget(pictures_);
    whyNot_ = hinted({}, QStringLiteral("whyNotHint"));
    column->addWidget(whyNot_);
    barsView_ = new BarsView(QStringLiteral("whyNotBars"));
    column->addWidget(scrollAround(barsView_, QStringLiteral("whyNotScroll")), 3);
    legend_ = hinted({}, QStringLiteral("whyNotLegend"));
    column->addWidget(legend_);
    barsTable_ = barsTableOf(bars_, QStringLiteral("whyNotTable"));
    column->addWidget(barsTable_, 2);
    connect(pictures_, &QComboBox::currentIndexChanged, this, &AuditCasePanel::showPicture);
    return page;
}

void AuditCasePanel::show(const AuditCase* one)
{
    shown_ = one;
    for (auto* button : pairButtons_->buttons())
        button->setEnabled(one != nullptr && (pairButtons_->id(button) == 0 ? one->judged.fit.has_value()
                                                                            : one->judged.best.has_value()));
    pairButtons_->button(0)->setChecked(true);
    if (one == nullptr) {
        heading_->setText(AuditPlace::tr("No finding is chosen"));
        words_->setText(
            AuditPlace::tr("Choose a finding in the list: what was needed, what was given and what lay "
                           "in the box stand here."));
        slips_->clear();
    } else {
        const auto& facts = one->judged.facts;
        heading_->setText(facts.atMs == 0
                              ? AuditPlace::tr("About the course of events")
                              : AuditPlace::tr("%1, %2, entry %3")
                                    .arg(ltr(QString::fromStdString(facts.person)), say(facts.purpose))
                                    .arg(facts.number));
        words_->setText(auditCaseWords(*one));
        slips_->setPlainText(slipArithmetic(*one));
    }
    holdWords();
    showCriteria();
    offerPictures();
}

/// No higher than its words: what is beneath has the rest.
void AuditCasePanel::holdWords()
{
    const int words = words_->heightForWidth(wordsScroll_->contentsRect().width()); // without a scroll bar
    wordsScroll_->setMaximumHeight(
        std::max(wordsScroll_->minimumHeight(), words + 2 * wordsScroll_->frameWidth() + 2));
}

void AuditCasePanel::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    holdWords();
}

void AuditCasePanel::showCriteria()
{
    const bool better = pairButtons_->checkedId() == 1;
    if (shown_ != nullptr && better && shown_->judged.best)
        criteria_->show(shown_->judged.best->fit);
    else if (shown_ != nullptr && !better && shown_->judged.fit)
        criteria_->show(*shown_->judged.fit);
    else
        criteria_->clear();
    bool sourced = false; // a column in which nothing stands takes no room
    for (int row = 0; row < criteria_->rowCount(); ++row)
        sourced = sourced || !criteria_->index(row, CriteriaModel::sourceColumn).data().toString().isEmpty();
    criteriaView_->setColumnHidden(CriteriaModel::sourceColumn, !sourced);
}

/// Only what there is; the same picture stays where the next hand-over has it, too.
void AuditCasePanel::offerPictures()
{
    const auto before = pictures_->currentData();
    {
        const QSignalBlocker quiet(pictures_);
        pictures_->clear();
        const bool given = shown_ != nullptr && shown_->judged.fit && shown_->judged.need;
        const bool better = given && shown_->judged.best;
        const auto offer = [this](const QString& words, WhyNotPicture picture) {
            pictures_->addItem(words, static_cast<int>(picture));
        };
        if (better)
            offer(tr("From the better pair to the pair given"), WhyNotPicture::betterToGiven);
        if (given)
            offer(tr("Where the cost of the pair given comes from"), WhyNotPicture::given);
        if (given)
            offer(tr("Limits used up by the pair given"), WhyNotPicture::limitsOfGiven);
        if (better)
            offer(tr("Limits used up by the better pair"), WhyNotPicture::limitsOfBetter);
        pictures_->setCurrentIndex(std::max(0, pictures_->findData(before)));
        pictures_->setEnabled(given);
    }
    showPicture();
}

void AuditCasePanel::showPicture()
{
    ShareBars picture;
    picture.whyNot = tr("Choose a hand-over that could be judged: what kept it from its limits stands here.");
    if (pictures_->currentIndex() >= 0) {
        const auto& judged = shown_->judged;
        const auto given = AuditPlace::tr("Pair given");
        switch (static_cast<WhyNotPicture>(pictures_->currentData().toInt())) {
        case WhyNotPicture::betterToGiven:
            picture =
                costBars(*judged.need, &judged.best->fit, AuditPlace::tr("Better pair"), *judged.fit, given);
            break;
        case WhyNotPicture::given:
            picture = costBars(*judged.need, nullptr, {}, *judged.fit, given);
            break;
        case WhyNotPicture::limitsOfGiven:
            picture = limitBars(*judged.fit);
            break;
        case WhyNotPicture::limitsOfBetter:
            picture = limitBars(judged.best->fit);
            break;
        }
    }
    whyNot_->setText(picture.whyNot);
    whyNot_->setVisible(!picture.whyNot.isEmpty());
    legend_->setText(legendOf(picture));
    barsView_->show(picture);
    bars_->show(picture);
}

void AuditCasePanel::restyle()
{
    barsTable_->verticalHeader()->setDefaultSectionSize(barsTable_->fontMetrics().height() + 8);
}

} // namespace quarterstep
