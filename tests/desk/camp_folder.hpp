// SPDX-License-Identifier: GPL-3.0-or-later
// A small camp in a temporary folder, and ways to find and use the widgets of the window by name.
#pragma once

#include "app/desk/desk_window.hpp"
#include "core/fitting/recommendation.hpp"

#include <QTemporaryDir>
#include <QWidget>

#include <boost/test/unit_test.hpp>

namespace quarterstep
{

/// stock.yaml with three distance pairs, one reader, two lenses and a frame; people.csv with four rows, the
/// last of them unreadable.
class CampFolder
{
  public:
    CampFolder();
    [[nodiscard]] QString path() const { return folder_.path(); }
    [[nodiscard]] QByteArray read(const QString& name) const;
    void write(const QString& name, const QByteArray& bytes) const;
    /// `on hand` of a line as stock.yaml says now.
    [[nodiscard]] int onHand(const QByteArray& line) const;

  private:
    QTemporaryDir folder_;
};

/// A window, shown, with the camp open.
struct OpenDesk {
    OpenDesk();
    CampFolder folder;
    DeskWindow window;
};

/// The widget of that name; fails the case when there is none or more than one.
template <class Widget>
Widget& named(QWidget& inside, const char* name)
{
    const auto found = inside.findChildren<Widget*>(QLatin1String(name));
    BOOST_TEST_REQUIRE(found.size() == 1, name);
    return *found.front();
}

/// A stock and one answer over it, made without a file.
struct SmallAnswer {
    SmallAnswer();
    std::vector<StockLine> stock;
    FittingRules rules;
    Recommendation answer;
};

} // namespace quarterstep
