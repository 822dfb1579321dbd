// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/content/html_page.hpp"

#include "app/paper/content/picture.hpp"
#include "app/paper/content/plain_text.hpp"

namespace quarterstep
{
namespace
{

/// Colours with a contrast of 7 to 1 or more for text; limits differ by dash and weight, marks by shape.
const char* style()
{
    return R"(:root{color-scheme:light dark;--ink:#1a1a1a;--paper:#fff;--soft:#595959;--rule:#b8b8b8;--mark:#0b5394;--flag:#9c2d00}
@media (prefers-color-scheme:dark){:root{--ink:#ececec;--paper:#16181a;--soft:#b4b4b4;--rule:#5a5f63;--mark:#8fc1f0;--flag:#ffb38a}}
body{margin:0 auto;padding:1.5rem 1rem;max-width:58rem;font:16px/1.45 system-ui,sans-serif;color:var(--ink);background:var(--paper)}
h1{font-size:1.6rem;margin:0 0 .5rem}h2{font-size:1.15rem;margin:1.6rem 0 .4rem}p{margin:.35rem 0}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.15rem 1rem;margin:.4rem 0}dt{font-weight:600}dd{margin:0}
table{border-collapse:collapse;width:100%;margin:.5rem 0}th,td{text-align:start;vertical-align:top;padding:.25rem .6rem .25rem 0;border-bottom:1px solid var(--rule)}
th{font-size:.9rem;color:var(--soft)}.wide{overflow-x:auto}.caution{border-inline-start:.3rem solid var(--flag);padding-inline-start:.7rem;font-weight:600}
.small{font-size:.85rem;color:var(--soft)}figure{margin:.6rem 0}figcaption{font-size:.9rem;color:var(--soft)}
svg{width:100%;height:auto;direction:ltr}svg text{font-size:3.2px;fill:var(--ink)}polyline{fill:none;stroke-width:.35}
.axis{stroke:var(--soft);fill:none}.centre{stroke:var(--ink)}.alert{stroke:var(--mark);stroke-dasharray:1.6 1.2}.alarm{stroke:var(--mark);stroke-width:.7}
g.plain{fill:var(--ink)}g.early,g.beyond{fill:var(--flag)}
@media print{:root{--ink:#000;--paper:#fff;--soft:#333;--mark:#000;--flag:#000}body{font-size:10pt;padding:0}h2,table,figure{break-inside:avoid}}
)";
}

QString element(const char* name, const QString& inside)
{
    return QStringLiteral("<%1>%2</%1>\n").arg(QLatin1String(name), inside);
}

QString tableOf(const Block& block)
{
    QString rows;
    for (const auto& row : block.rows) {
        const bool head = &row == block.rows.data();
        QString cells;
        for (const auto& cell : row)
            cells += head ? QStringLiteral("<th scope=\"col\">%1</th>").arg(htmlText(cell))
                          : QStringLiteral("<td>%1</td>").arg(htmlText(cell));
        rows += QStringLiteral("<tr>") + cells + QStringLiteral("</tr>");
    }
    return QStringLiteral("<div class=\"wide\"><table>%1</table></div>\n").arg(rows);
}

QString htmlOf(const Block& block)
{
    switch (block.kind) {
    case BlockKind::title:
        return element("h1", htmlText(block.text));
    case BlockKind::heading:
        return element("h2", htmlText(block.text));
    case BlockKind::caution:
        return QStringLiteral("<p class=\"caution\">%1</p>\n").arg(htmlText(block.text));
    case BlockKind::field:
        return QStringLiteral("<dl><dt>%1</dt><dd>%2</dd></dl>\n")
            .arg(htmlText(block.text), htmlText(block.value));
    case BlockKind::table:
        return tableOf(block);
    case BlockKind::small:
        return QStringLiteral("<p class=\"small\">%1</p>\n").arg(htmlText(block.text));
    case BlockKind::picture:
        return QStringLiteral("<figure>%1<figcaption>%2</figcaption></figure>\n")
            .arg(svgOf(*block.picture), htmlText(block.picture->says));
    case BlockKind::blank:
        return element("p", htmlText(block.text) + QStringLiteral(": ____________________"));
    default:
        return element("p",
                       htmlText(block.text) +
                           (block.value.isEmpty() ? QString() : QStringLiteral(" ") + htmlText(block.value)));
    }
}

} // namespace

QString htmlText(const QString& text)
{
    QString html = text.toHtmlEscaped();
    html.replace(QChar(0x2066), QStringLiteral("<bdi dir=\"ltr\">"));
    html.replace(QChar(0x2068), QStringLiteral("<bdi>"));
    html.replace(QChar(0x2069), QStringLiteral("</bdi>"));
    html.replace(QLatin1Char('\n'), QStringLiteral("<br/>"));
    return html;
}

QString htmlPage(const Paper& paper, const Language& language)
{
    QString body;
    for (const auto& block : paper.blocks)
        body += htmlOf(block);
    const auto title =
        paper.blocks.empty() ? QString() : withoutIsolates(paper.blocks.front().text).toHtmlEscaped();
    return QStringLiteral(
               "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"%1\" "
               "dir=\"%2\">\n<head><meta "
               "charset=\"utf-8\"/><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>"
               "<title>%3</title><style>\n%4</style></head>\n<body>\n%5</body>\n</html>\n")
        .arg(QString::fromUtf8(language.code),
             language.rightToLeft ? QStringLiteral("rtl") : QStringLiteral("ltr"), title,
             QString::fromUtf8(style()), body);
}

} // namespace quarterstep
