// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/guide/key_sheet.hpp"

#include <QAction>
#include <QFontMetrics>
#include <QKeySequence>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <algorithm>

namespace quarterstep
{

namespace
{
/// The part of the window something stands in; empty: the window itself.
QString partOf(const QObject* object)
{
    for (; object; object = object->parent())
        if (const auto part = object->property("keyPart").toString(); !part.isEmpty())
            return part;
    return {};
}

void put(QList<KeyGroup>& groups, const QString& title, const QString& key, const QString& words)
{
    auto found = std::find_if(groups.begin(), groups.end(),
                              [&](const KeyGroup& group) { return group.title == title; });
    if (found == groups.end())
        found = groups.insert(groups.end(), {title, {}});
    found->keys.append({key, words});
}

/// Tables of rich text do not turn round: from right to left the key stands in the last column.
QString rowOf(const QString& key, const QString& words, int keyWidth, bool rightToLeft)
{
    return (rightToLeft ? QStringLiteral("<tr><td align=\"right\">%2</td>"
                                         "<td width=\"%3\" align=\"right\"><b>%1</b></td></tr>")
                        : QStringLiteral("<tr><td width=\"%3\"><b>%1</b></td><td>%2</td></tr>"))
        .arg(key.toHtmlEscaped(), words.toHtmlEscaped())
        .arg(keyWidth);
}

/// The keys of every group stand in a column of one width, unless a name is longer than that.
int keyWidthOf(const QList<KeyGroup>& groups, const QFont& usual)
{
    auto bold = usual;
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    const int most = 19 * metrics.averageCharWidth();
    int width = 0;
    for (const auto& group : groups)
        for (const auto& [key, words] : group.keys)
            if (const int needed = metrics.horizontalAdvance(key) + 12; needed <= most)
                width = std::max(width, needed);
    return width;
}

QString keysOfAction(const QAction& action)
{
    QStringList keys;
    for (const auto& key : action.shortcuts())
        keys << key.toString(QKeySequence::NativeText);
    return keys.join(QStringLiteral(", "));
}
} // namespace

QList<KeyGroup> keysOf(const QWidget& window)
{
    QList<KeyGroup> groups;
    for (const auto* action : window.findChildren<QAction*>())
        if (const auto* around = qobject_cast<QWidget*>(action->parent());
            around && around->window() == &window && !action->shortcuts().isEmpty() &&
            !action->text().isEmpty() && action->isVisible())
            put(groups, partOf(action), keysOfAction(*action),
                QString(action->text()).remove(QLatin1Char('&')));
    for (const auto* widget : window.findChildren<QWidget*>())
        if (widget->property("keysInTooltip").toBool())
            put(groups, partOf(widget), widget->accessibleName(), widget->toolTip());
    std::stable_sort(groups.begin(), groups.end(), [](const KeyGroup& a, const KeyGroup& b) {
        return a.title.isEmpty() && !b.title.isEmpty();
    });
    return groups;
}

KeySheet::KeySheet(QWidget* parent) : QWidget(parent, Qt::Window), text_(new QTextBrowser(this))
{
    setObjectName(QStringLiteral("keySheet"));
    setWindowTitle(tr("Keys: Quarterstep"));
    const auto around = parent ? parent->window()->size() : QSize();
    constexpr int characters = 60; // of a key and its words
    const int wanted = std::min(characters * fontMetrics().averageCharWidth(), around.width() * 9 / 10);
    resize(QSize(760, 640).expandedTo({wanted, around.height() * 9 / 10}));
    text_->setObjectName(QStringLiteral("keyText"));
    text_->setAccessibleName(tr("All keys of the window"));
    text_->setToolTip(tr("All keys of the window; Escape closes it"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(text_);
    auto* close = new QAction(tr("Close"), this);
    close->setShortcut(Qt::Key_Escape);
    addAction(close);
    connect(close, &QAction::triggered, this, &QWidget::close);
}

void KeySheet::showKeysOf(const QWidget& window)
{
    QString page;
    const auto groups = keysOf(window);
    const int keyWidth = keyWidthOf(groups, font());
    for (const auto& group : groups) {
        page += QStringLiteral("<h3>%1</h3><table cellpadding=\"4\"%2>")
                    .arg((group.title.isEmpty() ? tr("Everywhere") : group.title).toHtmlEscaped(),
                         isRightToLeft() ? QStringLiteral(" width=\"100%\"") : QString());
        for (const auto& [key, words] : group.keys)
            page += rowOf(key, words, keyWidth, isRightToLeft());
        page += QStringLiteral("</table>");
    }
    page += QStringLiteral("<p>%1</p>")
                .arg(tr("Tab and Shift+Tab go from field to field; Space presses the "
                        "button that is framed.")
                         .toHtmlEscaped());
    text_->document()->setDefaultFont(font());
    text_->setHtml(page);
    show();
    raise();
    activateWindow();
    text_->setFocus();
}

} // namespace quarterstep
