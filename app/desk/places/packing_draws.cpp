// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/packing_draws.hpp"

#include "app/desk/places/parts.hpp"
#include "app/desk/settings/preferences.hpp"
#include "app/desk/shell/wrap_layout.hpp"

#include <QAction>
#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
constexpr int byWhoWasSeen = -1; ///< of the published mix: what the program does when nothing is said
const auto kept = QStringLiteral("packing");
} // namespace

PackingDraws::PackingDraws(QWidget* parent)
    : QWidget(parent), foldButton_(new QPushButton(this)), words_(hinted({}, QStringLiteral("drawsWords"))),
      body_(new QWidget(this))
{
    setObjectName(QStringLiteral("packingDraws"));
    foldButton_->setObjectName(QStringLiteral("drawsFoldButton"));
    foldButton_->setToolTip(tr("Assumptions, published mix, number of draws and lot (Ctrl+D)"));
    body_->setObjectName(QStringLiteral("drawsBody"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* row = new QHBoxLayout;
    row->addWidget(foldButton_);
    row->addWidget(words_, 1);
    column->addLayout(row);
    auto* grid = new QGridLayout(body_);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    buildAssumptions(*grid);
    buildFigures(*grid);
    column->addWidget(body_);
    auto* open = new QAction(tr("How the draws are made"), this);
    open->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_D));
    addAction(open);
    connect(open, &QAction::triggered, this, [this] { fold(!body_->isHidden()); });
    connect(foldButton_, &QPushButton::clicked, open, &QAction::trigger);
    fold(true);
    tell();
}

void PackingDraws::buildAssumptions(QGridLayout& grid)
{
    auto* all = new QWidget(body_);
    auto* row = new WrapLayout(all);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    for (auto& [box, name, words, tooltip] :
         {std::tuple{&centred_, "assumeCentredCheck", tr("PD as the pair's centres"),
                     tr("Where no PD was taken, it equals the centres of each pair")},
          std::tuple{&final_, "assumeFinalCheck", tr("readings are final"),
                     tr("Objective readings are final, and a prescriber is named")},
          std::tuple{&vertex_, "assumeVertexCheck", tr("vertex as the stock"),
                     tr("An unrecorded vertex distance is that of the stock")}}) {
        *box = new QCheckBox(words, all);
        (*box)->setObjectName(QLatin1String(name));
        (*box)->setToolTip(tooltip);
        row->addWidget(*box);
        connect(*box, &QCheckBox::toggled, this, &PackingDraws::take);
    }
    auto* label = new QLabel(tr("Assumed"), body_);
    label->setBuddy(centred_);
    grid.addWidget(label, 0, 0);
    grid.addWidget(all, 0, 1);
}

void PackingDraws::buildFigures(QGridLayout& grid)
{
    prior_ = countBox(QStringLiteral("priorBox"), tr("Published mix"),
                      tr("Mixes with the published mix of a camp, weighing as so many people; 0: not at all. "
                         "By itself 30 where fewer than 100 people were seen"),
                      byWhoWasSeen, 1000000, byWhoWasSeen);
    prior_->setSpecialValueText(tr("by who was seen"));
    prior_->setSuffix(tr(" people"));
    scenarios_ = countBox(QStringLiteral("scenariosBox"), tr("Draws"),
                          tr("Camps that are drawn and planned for, and as many again to check"), 1, 1000,
                          PackQuestion().scenarios);
    seed_ = countBox(QStringLiteral("seedBox"), tr("Lot"), tr("The same lot draws the same people again"), 0,
                     1000000000, static_cast<int>(PackQuestion().seed));
    int row = 1;
    for (auto* box : {prior_, scenarios_, seed_}) {
        auto* label = new QLabel(box->accessibleName(), body_);
        label->setBuddy(box);
        grid.addWidget(label, row, 0);
        grid.addWidget(box, row++, 1);
        connect(box, &QSpinBox::valueChanged, this, &PackingDraws::take);
    }
}

void PackingDraws::fold(bool away)
{
    body_->setHidden(away);
    const auto closed = isRightToLeft() ? QStringLiteral("◂ ") : QStringLiteral("▸ ");
    foldButton_->setText((away ? closed : QStringLiteral("▾ ")) + tr("How the draws are made"));
    foldButton_->setAccessibleDescription(away ? tr("folded") : tr("unfolded"));
    if (!away)
        (centred_->isEnabled() ? static_cast<QWidget*>(centred_) : prior_)->setFocus();
}

void PackingDraws::begin(const QString& folder)
{
    folder_ = folder;
    const auto choices = folder.isEmpty() ? QVariantMap() : keptChoices(folder, kept);
    reading_ = true;
    for (auto* box : {centred_, final_, vertex_})
        box->setChecked(choices.value(box->objectName(), false).toBool());
    prior_->setValue(choices.value(prior_->objectName(), byWhoWasSeen).toInt());
    scenarios_->setValue(choices.value(scenarios_->objectName(), PackQuestion().scenarios).toInt());
    seed_->setValue(choices.value(seed_->objectName(), static_cast<qulonglong>(PackQuestion().seed)).toInt());
    reading_ = false;
    tell();
}

void PackingDraws::putInto(PackWish& wish) const
{
    if (centred_->isEnabled())
        wish.assumed = {centred_->isChecked(), final_->isChecked(), vertex_->isChecked()};
    if (prior_->value() != byWhoWasSeen)
        wish.prior = prior_->value();
    wish.scenarios = scenarios_->value();
    wish.seed = static_cast<std::uint64_t>(seed_->value());
}

void PackingDraws::setOfTable(bool table)
{
    for (auto* box : {centred_, final_, vertex_})
        box->setEnabled(table);
    tell();
}

void PackingDraws::take()
{
    if (reading_)
        return;
    QVariantMap choices;
    for (const auto* box : {centred_, final_, vertex_})
        choices.insert(box->objectName(), box->isChecked());
    for (const auto* box : {prior_, scenarios_, seed_})
        choices.insert(box->objectName(), box->value());
    if (!folder_.isEmpty())
        keepChoices(folder_, kept, choices);
    tell();
    Q_EMIT changed();
}

void PackingDraws::tell()
{
    QStringList words{tr("draws: %1").arg(scenarios_->value()), tr("lot: %1").arg(seed_->value()),
                      tr("published mix: %1").arg(prior_->text())};
    QStringList assumed;
    for (const auto* box : {centred_, final_, vertex_})
        if (box->isEnabled() && box->isChecked())
            assumed << box->text();
    if (!assumed.isEmpty())
        words << tr("assumed: %1").arg(assumed.join(QStringLiteral(" + ")));
    words_->setText(words.join(QStringLiteral(" · ")));
}

} // namespace quarterstep
