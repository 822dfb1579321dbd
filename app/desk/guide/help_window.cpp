// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/guide/help_window.hpp"

#include "app/desk/guide/manual_text.hpp"
#include "app/help/topics.hpp"

#include <QAction>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QListWidget>
#include <QUrl>

#include <algorithm>

namespace quarterstep
{

HelpWindow::HelpWindow(QWidget* parent)
    : QWidget(parent, Qt::Window), topics_(new QListWidget(this)), text_(new ManualText(this))
{
    setObjectName(QStringLiteral("helpWindow"));
    setWindowTitle(tr("Help: Quarterstep"));
    const auto around = parent ? parent->window()->size() : QSize();
    constexpr int widest = 1400; // px; longer lines are hard to read
    resize(QSize(980, 700).expandedTo({std::min(around.width() * 9 / 10, widest), around.height() * 9 / 10}));
    constexpr int titleCharacters = 16; // of a line in the list of pages
    topics_->setMinimumWidth(titleCharacters * fontMetrics().averageCharWidth());
    topics_->setObjectName(QStringLiteral("helpTopics"));
    topics_->setAccessibleName(tr("Pages of the manual"));
    topics_->setToolTip(tr("Chooses a page of the manual"));
    topics_->setWordWrap(true);
    topics_->setResizeMode(QListView::Adjust); // titles are wrapped anew at every width
    topics_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const auto& topic : helpTopics()) {
        auto* item = new QListWidgetItem(QCoreApplication::translate("command", topic.words), topics_);
        item->setData(Qt::UserRole, QString::fromLatin1(topic.name));
    }
    text_->setObjectName(QStringLiteral("helpText"));
    text_->setAccessibleName(tr("Text of the page"));
    text_->setToolTip(tr("The manual; links lead to other pages"));
    text_->setLayoutDirection(Qt::LeftToRight); // the manual is in English
    auto* row = new QHBoxLayout(this);
    row->addWidget(topics_, 1);
    row->addWidget(text_, 3);
    auto* close = new QAction(tr("Close"), this);
    close->setShortcut(Qt::Key_Escape);
    addAction(close);
    connect(close, &QAction::triggered, this, &QWidget::close);
    connect(text_, &QTextBrowser::anchorClicked, this, &HelpWindow::follow);
    connect(topics_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* item) {
        if (item && item->data(Qt::UserRole).toString() != topic_)
            showTopic(item->data(Qt::UserRole).toString());
    });
}

void HelpWindow::showTopic(const QString& topic)
{
    const auto topics = helpTopics();
    auto found = std::find_if(topics.begin(), topics.end(),
                              [&](const HelpTopic& one) { return topic == QLatin1String(one.name); });
    if (found == topics.end())
        found = topics.begin();
    topic_ = QLatin1String(found->name);
    show(); // a page is laid out once, for the width it has
    const auto bytes = found->text();
    text_->showPage(QString::fromUtf8(bytes.data(), static_cast<qsizetype>(bytes.size())));
    topics_->setCurrentRow(static_cast<int>(std::distance(topics.begin(), found)));
    raise();
    activateWindow();
}

/// "matching.md" is a page; anything else is not opened: the program never goes to the network.
void HelpWindow::follow(const QUrl& link)
{
    auto name = link.path();
    if (!link.scheme().isEmpty() || !name.endsWith(QLatin1String(".md")))
        return;
    name.chop(3);
    for (const auto& topic : helpTopics())
        if (name == QLatin1String(topic.name))
            return showTopic(name);
}

QString HelpWindow::topicFor(const QWidget* widget)
{
    for (; widget; widget = widget->parentWidget())
        if (const auto topic = widget->property("helpTopic").toString(); !topic.isEmpty())
            return topic;
    return QStringLiteral("desk");
}

} // namespace quarterstep
