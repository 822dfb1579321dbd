// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/audit_charts.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/bars_model.hpp"
#include "app/desk/models/chart_model.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/bars_part.hpp"
#include "app/desk/places/parts.hpp"
#include "app/desk/plots/bars_view.hpp"
#include "app/desk/plots/chart_view.hpp"
#include "app/paper/content/plain_text.hpp"
#include "app/session/wording.hpp"
#include "inventory/store/write_back.hpp"
#include "inventory/text/csv_writing.hpp"

#include <QBuffer>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHeaderView>
#include <QLabel>
#include <QPixmap>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace quarterstep
{

namespace
{
enum class AuditChart { funnel, runs, weeks, reasons };

/// The cells as people see them, without the marks of direction.
std::string tableText(const QAbstractItemModel& model)
{
    std::string text;
    for (int row = -1; row < model.rowCount(); ++row) {
        std::vector<std::string> cells;
        for (int column = 0; column < model.columnCount(); ++column) {
            const auto value = row < 0 ? model.headerData(column, Qt::Horizontal, Qt::DisplayRole)
                                       : model.index(row, column).data();
            cells.push_back(withoutIsolates(value.toString()).toStdString());
        }
        text += csvRow(cells);
    }
    return text;
}
} // namespace

AuditCharts::AuditCharts(MessageBar& messages, QWidget* parent)
    : QWidget(parent), messages_(messages), cases_(std::make_shared<AuditCases>()),
      rows_(new ChartModel(this)), barRows_(new BarsModel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    kind_ = boxNamed(QStringLiteral("chartKindBox"), AuditPlace::tr("Chart"),
                     AuditPlace::tr("Which picture is drawn"));
    kind_->addItems({AuditPlace::tr("Funnel: shares against the size of the group"),
                     AuditPlace::tr("Runs of good hand-overs (g-chart)"), AuditPlace::tr("Weeks (p-chart)"),
                     tr("Of 100 hand-overs: why not")});
    by_ = boxNamed(QStringLiteral("chartByBox"), AuditPlace::tr("Groups"),
                   AuditPlace::tr("What the groups of the funnel are"));
    save_ = new QPushButton(tr("Save…"));
    save_->setObjectName(QStringLiteral("saveChartButton"));
    save_->setToolTip(tr("Saves the picture, or its numbers as a table"));
    row->addWidget(kind_, 2);
    row->addWidget(by_, 1);
    row->addWidget(save_);
    column->addLayout(row);
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
    column->addWidget(buildTables(), 2);
    for (auto* box : {kind_, by_})
        connect(box, &QComboBox::currentIndexChanged, this, &AuditCharts::showChart);
    connect(save_, &QPushButton::clicked, this, &AuditCharts::askAndSave);
}

QWidget* AuditCharts::buildTables()
{
    tables_ = new QStackedWidget;
    chartTable_ = tableOf(rows_, QStringLiteral("chartTable"), AuditPlace::tr("The numbers of the chart"));
    chartTable_->setToolTip(AuditPlace::tr("The same numbers as in the picture"));
    giveWidths(*chartTable_, {28, 40});
    barsTable_ = barsTableOf(barRows_, QStringLiteral("reasonTable"));
    giveWidths(*barsTable_, {44, 9, 11});
    tables_->addWidget(chartTable_);
    tables_->addWidget(barsTable_);
    return tables_;
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
    Tally all;
    for (const auto& rate : summary.rates)
        if (rate.by == "all")
            all = rate.tally;
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
    rows_->show(picture);
    showPicture(picture.whyNot.isEmpty(), picture.whyNot);
}

void AuditCharts::showPicture(bool drawn, const QString& whyNot)
{
    chart_->setVisible(drawn && !showsBars());
    barsScroll_->setVisible(drawn && showsBars());
    whyNot_->setVisible(!drawn);
    whyNot_->setText(whyNot);
    tables_->setCurrentIndex(showsBars() ? 1 : 0);
    legend_->setText(
        showsBars()
            ? legendOfBars()
            : AuditPlace::tr("Solid: the share of all · dashed: inner limit, 95 % · dotted: outer limit. "
                             "Circle: inside · triangle: "
                             "beyond the inner limit · diamond: beyond the outer. Nothing is ranked."));
}

void AuditCharts::askAndSave()
{
    const auto file =
        QFileDialog::getSaveFileName(this, tr("Save the chart"), QStringLiteral("audit-chart.png"),
                                     tr("Pictures (*.png);;Tables (*.csv)"));
    if (!file.isEmpty())
        save(file);
}

void AuditCharts::save(const QString& file)
{
    runCommand(messages_, [this, &file] {
        std::string bytes;
        if (file.endsWith(QLatin1String(".csv"))) {
            bytes = tableText(*(showsBars() ? barsTable_ : chartTable_)->model());
        } else {
            auto* picture = showsBars()          ? static_cast<QWidget*>(bars_)
                            : chart_->isHidden() ? static_cast<QWidget*>(whyNot_)
                                                 : static_cast<QWidget*>(chart_);
            QBuffer buffer;
            buffer.open(QIODevice::WriteOnly);
            picture->grab().save(&buffer, "PNG");
            bytes = buffer.data().toStdString();
        }
        replaceFile(file.toStdString(), bytes, true);
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
