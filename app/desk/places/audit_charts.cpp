// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_charts.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/bars_model.hpp"
#include "app/desk/models/chart_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/bars_part.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/places/table_room.hpp"
#include "app/desk/plots/bars_paper.hpp"
#include "app/desk/plots/bars_view.hpp"
#include "app/desk/plots/chart_view.hpp"
#include "app/desk/shell/wrap_layout.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/paper/content/report_words.hpp"
#include "app/session/wording.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/csv_writing.hpp"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
enum class AuditChart { funnel, runs, weeks, reasons };

/// The cells as people see them, names of the columns first.
std::vector<QStringList> rowsOf(const QAbstractItemModel& model)
{
    std::vector<QStringList> rows;
    for (int row = -1; row < model.rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column)
            cells << (row < 0 ? model.headerData(column, Qt::Horizontal, Qt::DisplayRole)
                              : model.index(row, column).data())
                         .toString();
        rows.push_back(cells);
    }
    return rows;
}

/// Without the marks of direction.
std::string tableText(const QAbstractItemModel& model)
{
    std::string text;
    for (const auto& row : rowsOf(model)) {
        std::vector<std::string> cells;
        for (const auto& cell : row)
            cells.push_back(withoutIsolates(cell).toStdString());
        text += csvRow(cells);
    }
    return text;
}

Tally judgedIn(const AuditSummary& summary)
{
    for (const auto& rate : summary.rates)
        if (rate.by == "all")
            return rate.tally;
    return {};
}
} // namespace

AuditCharts::AuditCharts(MessageBar& messages, QWidget* parent)
    : QWidget(parent), messages_(messages), cases_(std::make_shared<AuditCases>()),
      rows_(new ChartModel(this)), barRows_(new BarsModel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* bar = new QWidget;
    auto* row = new WrapLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    kind_ = boxNamed(QStringLiteral("chartKindBox"), AuditPlace::tr("Chart"),
                     AuditPlace::tr("Which picture is drawn"));
    kind_->addItems({AuditPlace::tr("Funnel: shares against the size of the group"),
                     AuditPlace::tr("Runs of good hand-overs (g-chart)"), AuditPlace::tr("Weeks (p-chart)"),
                     tr("Of 100 hand-overs: why not")});
    by_ = boxNamed(QStringLiteral("chartByBox"), AuditPlace::tr("Groups"),
                   AuditPlace::tr("What the groups of the funnel are"));
    save_ = new QPushButton(tr("Save…"));
    save_->setObjectName(QStringLiteral("saveChartButton"));
    save_->setToolTip(tr("Saves the chart as a PDF or a picture, or its numbers as a table (Ctrl+Shift+S)"));
    print_ = new QPushButton(tr("Print"));
    print_->setObjectName(QStringLiteral("printChartButton"));
    print_->setToolTip(tr("Prints the chart with its numbers on the printer of the settings (Ctrl+P)"));
    kind_->setMinimumContentsLength(34);
    by_->setMinimumContentsLength(16);
    row->addWidget(kind_);
    row->addWidget(by_);
    row->endHere();
    row->addWidget(save_);
    row->addWidget(print_);
    column->addWidget(bar);
    whyNot_ = new QLabel;
    whyNot_->setObjectName(QStringLiteral("chartWhyNot"));
    whyNot_->setWordWrap(true);
    whyNot_->setAlignment(Qt::AlignCenter);
    column->addWidget(whyNot_, 1);
    chart_ = new ChartView;
    column->addWidget(chart_, 3);
    bars_ = new BarsView(QStringLiteral("reasonBars"));
    barsScroll_ = scrollAround(bars_, QStringLiteral("reasonScroll"));
    column->addWidget(barsScroll_, 3);
    legend_ = hinted({}, QStringLiteral("chartLegend"));
    column->addWidget(legend_);
    buildTables(*column);
    for (auto* box : {kind_, by_})
        connect(box, &QComboBox::currentIndexChanged, this, &AuditCharts::showChart);
    connect(save_, &QPushButton::clicked, this, &AuditCharts::askAndSave);
    connect(print_, &QPushButton::clicked, this, &AuditCharts::print);
}

/// No higher than their rows: the picture has the rest.
void AuditCharts::buildTables(QBoxLayout& column)
{
    chartTable_ = tableOf(rows_, QStringLiteral("chartTable"), AuditPlace::tr("The numbers of the chart"));
    chartTable_->setToolTip(AuditPlace::tr("The same numbers as in the picture"));
    giveWidths(*chartTable_, {28, 40});
    keepFit(*chartTable_, {0, 1}, 2);
    barsTable_ = barsTableOf(barRows_, QStringLiteral("reasonTable"));
    giveWidths(*barsTable_, {44, 9, 13});
    for (auto* table : {chartTable_, barsTable_}) {
        holdHeight(*table, 2);
        column.addWidget(table, 2);
    }
}

void AuditCharts::show(std::shared_ptr<const AuditCases> cases)
{
    cases_ = std::move(cases);
    const std::pair<const char*, QString> names[] = {
        {"site", AuditPlace::tr("by site")},       {"actor", AuditPlace::tr("by who handed over")},
        {"week", AuditPlace::tr("by week")},       {"profile", AuditPlace::tr("by profile")},
        {"purpose", AuditPlace::tr("by purpose")}, {"kind", AuditPlace::tr("by kind of pair")}};
    {
        const QSignalBlocker quiet(by_);
        by_->clear();
        for (const auto& [by, words] : names)
            if (!groupsBy(cases_->summary, by).empty())
                by_->addItem(words, QLatin1String(by));
    }
    showChart();
}

bool AuditCharts::showsBars() const
{
    return kind_->currentIndex() == static_cast<int>(AuditChart::reasons);
}

void AuditCharts::showChart()
{
    const auto& summary = cases_->summary;
    by_->setEnabled(kind_->currentIndex() == static_cast<int>(AuditChart::funnel));
    if (showsBars()) {
        const auto picture = reasonBars(cases_->reasons, cases_->judged);
        bars_->show(picture);
        barRows_->show(picture);
        return showPicture(picture.whyNot.isEmpty(), picture.whyNot);
    }
    const auto all = judgedIn(summary);
    ChartData picture;
    switch (static_cast<AuditChart>(kind_->currentIndex())) {
    case AuditChart::funnel:
        picture =
            chartOf(funnelChart(groupsBy(summary, by_->currentData().toString().toStdString()), all.share()));
        break;
    case AuditChart::runs:
        picture = chartOf(gSeries(cases_->runs, cases_->running, all));
        break;
    default:
        picture = chartOf(pChart(groupsBy(summary, "week"), all.share()));
    }
    if (picture.whyNot.isEmpty())
        chart_->show(picture);
    chart_->setMinimumHeight(chart_->heightOfWords());
    rows_->show(picture);
    showPicture(picture.whyNot.isEmpty(), picture.whyNot);
}

void AuditCharts::showPicture(bool drawn, const QString& whyNot)
{
    chart_->setVisible(drawn && !showsBars());
    barsScroll_->setVisible(drawn && showsBars());
    whyNot_->setVisible(!drawn);
    whyNot_->setText(whyNot);
    chartTable_->setVisible(!showsBars());
    barsTable_->setVisible(showsBars());
    legend_->setText(
        showsBars()
            ? legendOf(bars_->picture())
            : AuditPlace::tr("Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. "
                             "Circle: inside · triangle: "
                             "beyond the inner limit · diamond: beyond the outer. Nothing is ranked."));
}

PictureTwin AuditCharts::twin() const
{
    const auto& summary = cases_->summary;
    const auto all = judgedIn(summary);
    switch (static_cast<AuditChart>(kind_->currentIndex())) {
    case AuditChart::funnel: {
        const auto by = by_->currentData().toString().toStdString();
        auto funnel = funnelChart(groupsBy(summary, by), all.share());
        for (auto& point : funnel.points)
            point.name = withoutIsolates(groupName(by, point.name)).toStdString();
        return funnelTwin(funnel, kind_->currentText(), by_->currentText());
    }
    case AuditChart::runs:
        return runsTwin(gSeries(cases_->runs, cases_->running, all), kind_->currentText());
    case AuditChart::weeks:
        return pChartTwin(pChart(groupsBy(summary, "week"), all.share()), kind_->currentText());
    case AuditChart::reasons:
        break;
    }
    return barsTwin(bars_->picture(), kind_->currentText(), rowsOf(*barRows_));
}

ChartOnPaper AuditCharts::onPaper() const
{
    if (!whyNot_->isHidden())
        return {kind_->currentText(), whyNot_->text(), {}};
    return {kind_->currentText(), {}, twin()};
}

void AuditCharts::askAndSave()
{
    const auto file = QFileDialog::getSaveFileName(
        this, tr("Save the chart"), QStringLiteral("audit-chart.pdf"),
        tr("Paper (*.pdf)") + QStringLiteral(";;") + tr("Pictures (*.png);;Tables (*.csv)"));
    if (!file.isEmpty())
        save(file);
}

void AuditCharts::print()
{
    Q_EMIT paperWanted(onPaper(), {});
}

void AuditCharts::save(const QString& file)
{
    if (!file.endsWith(QLatin1String(".csv"))) {
        const bool drawn = file.endsWith(QLatin1String(".pdf")) || file.endsWith(QLatin1String(".png"));
        Q_EMIT paperWanted(onPaper(), drawn ? file : file + QStringLiteral(".pdf"));
        return;
    }
    runCommand(messages_, [this, &file] {
        replaceFile(file.toStdString(), tableText(*(showsBars() ? barsTable_ : chartTable_)->model()), true);
        messages_.showDone(tr("The chart is %1.").arg(ltr(QDir::toNativeSeparators(file))));
    });
}

void AuditCharts::restyle()
{
    chart_->restyle();
    for (auto* view : {chartTable_, barsTable_})
        view->verticalHeader()->setDefaultSectionSize(view->fontMetrics().height() + 8);
}

} // namespace quarterstep
