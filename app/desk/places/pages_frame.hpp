// SPDX-License-Identifier: GPL-3.0-or-later
// A framed part with several pages, one tab each.
#pragma once

#include <QFrame>

class QHBoxLayout;
class QStackedWidget;
class QTabBar;

namespace quarterstep
{

class PagesFrame final : public QFrame
{
    Q_OBJECT

  public:
    /// @param tabsName of the tab bar, for tests and screen readers' tools
    PagesFrame(const QString& name, const QString& tabsName, const QString& spoken,
               QWidget* parent = nullptr);

    /// @param spoken  what the title means, where it is a short one
    /// @return its number, from 0
    int addPage(const QString& title, QWidget* page, const QString& spoken = {});
    void setPage(int page);
    [[nodiscard]] int page() const;
    /// Something that stands beside the tabs on every page.
    void addBeside(QWidget* widget);

  Q_SIGNALS:
    void pageShown(int page);

  private:
    QTabBar* tabs_;
    QHBoxLayout* top_;
    QStackedWidget* pages_;
};

} // namespace quarterstep
