// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/chart_paper.hpp"

#include "app/paper/content/paper_words.hpp"
#include "app/paper/content/report_words.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>

namespace quarterstep
{

Paper auditChartPaper(ChartOnPaper chart, const PaperSource& source)
{
    Paper paper{PaperKind::auditReport, {titled(chart.title)}};
    paper.blocks.push_back(field(paperWords(QT_TRANSLATE_NOOP("paper", "Day and place")),
                                 ltr(source.day) + QStringLiteral(" · ") + typed(source.site)));
    if (chart.whyNot.isEmpty())
        addTwin(std::move(chart.twin), paper.blocks);
    else
        paper.blocks.push_back(saying(chart.whyNot));
    paper.blocks.push_back(smallPrint(atOddsWords()));
    addFoot(source, paper.blocks);
    return paper;
}

void addTwin(PictureTwin twin, std::vector<Block>& blocks)
{
    Block picture{BlockKind::picture, {}, {}, {}, {}};
    Block table{BlockKind::table, {}, {}, std::move(twin.rows), std::move(twin.widths)};
    picture.picture = std::make_shared<const Picture>(std::move(twin.picture));
    blocks.push_back(std::move(picture));
    blocks.push_back(std::move(table));
}

} // namespace quarterstep
