// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/packing_panel.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/packing_rows.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/packing_draws.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/chart_view.hpp"
#include "app/desk/plots/packing_curve.hpp"
#include "app/desk/shell/number_box.hpp"
#include "app/session/pack_lists.hpp"
#include "app/session/wording.hpp"

#include <QComboBox>
#include <QDir>
#include <QEventLoop>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTabBar>
#include <QTableView>

namespace quarterstep
{

namespace
{

const auto otherTable = QStringLiteral("?"); ///< of the list of demands: ask for a file
constexpr int widestColumn = 320;            ///< px, before the last column takes the rest

bool hasServed(const Camp& camp)
{
    return camp.hasLedger() && camp.ledger().lastOf(EntryKind::handedOver).has_value();
}

} // namespace

PackingPanel::~PackingPanel() = default;

void PackingPanel::take(Camp* camp)
{
    ++asked_;
    camp_ = camp;
    plan_.reset();
    planning_ = false;
    supplier_.clear();
    demand_->clear();
    demand_->addItem(tr("The ledger of this camp"), QString());
    if (camp_ != nullptr) {
        const QDir folder(QString::fromStdString(camp_->folder()));
        if (const auto list = folder.filePath(QStringLiteral("supplier.yaml")); QFile::exists(list))
            supplier_ = list;
        if (const auto table = folder.filePath(QStringLiteral("people.csv")); QFile::exists(table)) {
            demand_->addItem(QStringLiteral("people.csv"), table);
            bool served = false;
            runCommand(messages_, [this, &served] { served = hasServed(*camp_); });
            demand_->setCurrentIndex(served ? 0 : 1);
        }
    }
    demand_->addItem(tr("Another table…"), otherTable);
    draws_->begin(camp_ == nullptr ? QString() : QString::fromStdString(camp_->folder()));
    showAnswer();
}

void PackingPanel::begin()
{
    budget_->setFocus();
    budget_->selectAll();
}

PackWish PackingPanel::wish() const
{
    PackWish wish;
    if (camp_ != nullptr)
        wish.folder = camp_->folder();
    wish.supplier = supplier_.toStdString();
    wish.table = demand_->currentData().toString().toStdString();
    wish.budget = budget_->thousandths();
    if (weight_->value() > 0.0)
        wish.grams = weight_->thousandths();
    if (boxes_->value() > 0)
        wish.boxes = boxes_->value();
    wish.piecesInBox = pieces_->value();
    wish.people = people_->value();
    draws_->putInto(wish);
    return wish;
}

void PackingPanel::takeSupplier(const QString& path)
{
    supplier_ = path;
    showState();
}

void PackingPanel::takeDemand(const QString& path)
{
    int place = demand_->findData(path);
    if (place < 0) {
        place = demand_->count() - 1;
        demand_->insertItem(place, QFileInfo(path).fileName(), path);
    }
    demand_->setCurrentIndex(place);
    showState();
}

void PackingPanel::askSupplier()
{
    const auto path = QFileDialog::getOpenFileName(
        this, tr("List of a supplier"), camp_ ? QString::fromStdString(camp_->folder()) : QString(),
        tr("Suppliers' lists (*.yaml)"));
    if (!path.isEmpty())
        takeSupplier(path);
}

void PackingPanel::askDemand(int place)
{
    if (demand_->itemData(place).toString() != otherTable)
        return showState();
    const auto path =
        QFileDialog::getOpenFileName(this, tr("Table of people"), {}, tr("Prescription tables (*.csv)"));
    if (path.isEmpty())
        demand_->setCurrentIndex(0);
    else
        takeDemand(path);
    showState();
}

/// With readers of the files and of the ledger of its own, on another thread.
void PackingPanel::makePlan()
{
    if (camp_ == nullptr || planning_)
        return;
    if (supplier_.isEmpty()) {
        messages_.showError(tr("Choose what can be bought: the list of a supplier."), {});
        return;
    }
    const auto asking = wish();
    const auto plan = std::make_shared<std::unique_ptr<PackOfCamp>>();
    const auto work = [plan, asking](const Job& job) {
        *plan = std::make_unique<PackOfCamp>(packCamp(asking, job));
    };
    const auto end = [this, plan, asking, asked = asked_](const std::exception_ptr& problem, bool stopped) {
        if (asked != asked_)
            return;
        planned_ = asking;
        ended(problem, stopped, *plan);
    };
    planning_ = true;
    work_.start(tr("Planning the boxes…"), work, end);
    showState();
}

void PackingPanel::ended(const std::exception_ptr& problem, bool stopped, std::unique_ptr<PackOfCamp>& plan)
{
    planning_ = false;
    plan_.reset();
    if (!stopped && runCommand(messages_, [&problem] {
            if (problem)
                std::rethrow_exception(problem);
        }))
        plan_ = std::move(plan);
    showAnswer();
    Q_EMIT planEnded();
}

void PackingPanel::waitForPlan()
{
    if (!planning_)
        return;
    QEventLoop loop;
    connect(this, &PackingPanel::planEnded, &loop, &QEventLoop::quit);
    loop.exec();
}

/// What stands below the fields: what the curve says of this money, or that the plan is of another question.
void PackingPanel::showState()
{
    supplierWords_->setText(supplier_.isEmpty() ? tr("none chosen") : ltr(QFileInfo(supplier_).fileName()));
    supplierWords_->setToolTip(QDir::toNativeSeparators(supplier_));
    planButton_->setEnabled(camp_ != nullptr && !planning_);
    draws_->setOfTable(!demand_->currentData().toString().isEmpty());
    QString words;
    if (planning_)
        words = tr("Planning … “Stop” at the top ends it.");
    else if (!plan_)
        words = tr("Nothing is planned yet.");
    else if (const auto now = wish(); !(now == planned_)) {
        words = tr("The plan beside is of other figures; plan again (F5).");
        auto other = now;
        other.budget = planned_.budget;
        if (other == planned_)
            if (const auto share = shareAt(plan_->answer, now.budget, planned_.budget))
                words = tr("For this money the curve says %1; plan again for the order (F5).")
                            .arg(ltr(QStringLiteral("%1 %").arg(QString::number(100.0 * *share, 'f', 1))));
    }
    state_->setText(words);
    showCurve();
}

void PackingPanel::showCurve()
{
    if (plan_)
        curve_->show(packingCurve(plan_->answer, budget_->thousandths(),
                                  QString::fromStdString(plan_->question.supplier.currency)));
    else
        curve_->show({});
}

QString PackingPanel::answerWords() const
{
    const auto& answer = plan_->answer;
    QStringList words;
    if (!answer.nothing.empty())
        words << say(answer.nothing);
    if (!answer.impossible) {
        words << spendWords(answer, plan_->question,
                            QString::fromStdString(plan_->question.supplier.currency));
        words << (answer.heldOut
                      ? tr("On people who were not planned for: %1").arg(checkedWords(answer.held.front()))
                      : tr("Not checked: too few people to plan on one half and check on the other."));
        words << fittedWords(answer);
        if (const auto knee = kneeWords(answer); !knee.isEmpty())
            words << knee;
    }
    const auto table = QString::fromStdString(planned_.table);
    for (auto line : plan_->told) { // a path would turn round in words from right to left, and says no more
        if (!table.isEmpty())
            line.replace(table, ltr(QFileInfo(table).fileName()));
        words << line;
    }
    if (plan_->badRows > 0)
        words << tr("%n row(s) of the table could not be read and were left out.", nullptr, plan_->badRows);
    // A number keeps its sign: no line begins with one.
    return words.join(QLatin1Char('\n')).replace(QStringLiteral(" %"), QStringLiteral("\u00A0%"));
}

void PackingPanel::showAnswer()
{
    answer_->setText(plan_ ? answerWords()
                           : tr("What to buy for the next camp so that most people are served: choose "
                                "supplier, demand and money, then plan (F5). Nothing is entered."));
    const bool any = plan_ && !plan_->answer.impossible;
    for (auto* button : outputs_)
        button->setEnabled(any);
    showList(lists_->currentIndex());
    showState();
}

void PackingPanel::showList(int list)
{
    MadeTable (*const tables[])(const PackAnswer&) = {
        &PackingRows::order,   &PackingRows::boxes,   &PackingRows::checked, &PackingRows::without,
        &PackingRows::runOuts, &PackingRows::leftOut, &PackingRows::curve};
    static const PackAnswer nothing;
    lists_->setCurrentIndex(list);
    rows_->show(tables[list](plan_ ? plan_->answer : nothing));
    fitColumns(*view_);
    auto* header = view_->horizontalHeader();
    header->setStretchLastSection(false); // said a width, it would keep that and reach out of sight
    for (int column = 0; column + 1 < rows_->columnCount(); ++column)
        view_->setColumnWidth(column, std::min(widestColumn, view_->columnWidth(column)) + 4);
    view_->setColumnWidth(rows_->columnCount() - 1, header->minimumSectionSize());
    header->setStretchLastSection(true); // as wide as there is room; its words wrap
}

void PackingPanel::restyle()
{
    constexpr int leastCharacters = 58; // an order with the beginning of its reasons
    constexpr int leastRows = 8;
    const auto letters = view_->fontMetrics();
    constexpr int leastCurveRows = 14; // axes and their words take half of it
    curve_->restyle();
    curve_->setMinimumHeight(leastCurveRows * letters.height());
    view_->verticalHeader()->setDefaultSectionSize(letters.height() + 8);
    view_->setMinimumSize(leastCharacters * letters.averageCharWidth(), leastRows * (letters.height() + 8));
}

} // namespace quarterstep
