// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/pages_frame.hpp"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

namespace quarterstep
{

PagesFrame::PagesFrame(const QString& name, const QString& tabsName, const QString& spoken, QWidget* parent)
    : QFrame(parent), tabs_(new QTabBar(this)), top_(new QHBoxLayout), pages_(new QStackedWidget(this))
{
    setObjectName(name);
    tabs_->setObjectName(tabsName);
    tabs_->setAccessibleName(spoken);
    tabs_->setToolTip(spoken);
    tabs_->setDrawBase(false);
    tabs_->setExpanding(false);
    tabs_->setUsesScrollButtons(false); // names are shortened, no page goes out of sight
    tabs_->setElideMode(Qt::ElideRight);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 6, 12, 8);
    column->setSpacing(4);
    top_->addWidget(tabs_, 1);
    column->addLayout(top_);
    column->addWidget(pages_, 1);
    connect(tabs_, &QTabBar::currentChanged, this, [this](int page) {
        pages_->setCurrentIndex(page);
        Q_EMIT pageShown(page);
    });
}

int PagesFrame::addPage(const QString& title, QWidget* page, const QString& spoken)
{
    pages_->addWidget(page);
    const int tab = tabs_->addTab(title);
    tabs_->setTabToolTip(tab, spoken.isEmpty() ? title : spoken); // where it is shortened, too
    return tab;
}

void PagesFrame::setPage(int page)
{
    tabs_->setCurrentIndex(page);
}

int PagesFrame::page() const
{
    return tabs_->currentIndex();
}

void PagesFrame::addBeside(QWidget* widget)
{
    top_->addWidget(widget);
    setTabOrder(tabs_, widget);
}

} // namespace quarterstep
