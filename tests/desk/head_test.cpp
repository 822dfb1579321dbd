// SPDX-License-Identifier: GPL-3.0-or-later
// The head of the window keeps to one line, and the pairs keep their room, where letters are large.
#include "app/desk/shell/wrap_layout.hpp"
#include "app/desk/theme.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QApplication>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
class HeadPart final : public QWidget
{
  public:
    using QWidget::QWidget;
    [[nodiscard]] QSize sizeHint() const override { return {100, 20}; }
};

struct InSun {
    InSun() { applyTheme(*qApp, Theme::sun); }
    ~InSun() { applyTheme(*qApp, Theme::light); }
};

void settle()
{
    for (int round = 0; round < 5; ++round) // parts fold once they know how wide they are
        QTest::qWait(10);
}
} // namespace

BOOST_AUTO_TEST_SUITE(head)

BOOST_AUTO_TEST_CASE(what_may_go_leaves_a_row_before_it_breaks_and_comes_back, *utf::label("PROP"))
{
    QWidget around;
    auto* row = new WrapLayout(&around);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(10);
    QList<QWidget*> parts;
    for (int at = 0; at < 4; ++at) {
        parts << new HeadPart(&around);
        row->addWidget(parts.back());
        if (at == 1 || at == 2)
            row->mayGo();
    }
    around.show();
    const auto widths = [&](int width) {
        around.resize(width, 20);
        row->setGeometry(around.rect());
        QList<int> shown;
        for (const auto* part : parts)
            shown << part->geometry().width();
        return shown;
    };
    BOOST_TEST((widths(430) == QList<int>{100, 100, 100, 100}));
    BOOST_TEST(row->heightForWidth(330) == 20);
    BOOST_TEST(row->heightForWidth(220) == 20);
    BOOST_TEST(row->heightForWidth(150) == 4 * 20 + 3 * 10); // it breaks anyhow, so nothing goes
    const auto narrow = widths(330);
    BOOST_TEST(narrow[0] == 100);
    BOOST_TEST(narrow[1] == 0);
    BOOST_TEST(narrow[2] == 100);
    BOOST_TEST((widths(430) == QList<int>{100, 100, 100, 100}));
}

BOOST_AUTO_TEST_CASE(the_head_keeps_to_one_line_in_sun_on_a_small_screen, *utf::label("PROP"))
{
    const InSun sun;
    OpenDesk desk;
    desk.window.resize(1366, 768);
    settle();
    const auto& site = named<QLabel>(desk.window, "siteLabel");
    const auto& help = named<QPushButton>(desk.window, "helpButton");
    BOOST_TEST(std::abs(site.geometry().center().y() - help.geometry().center().y()) <= 2);
    BOOST_TEST(help.geometry().right() < desk.window.width());
    // Commands stand beside what they act on.
    BOOST_TEST(named<QFrame>(desk.window, "cardFrame")
                   .isAncestorOf(&named<QPushButton>(desk.window, "newPersonButton")));
    BOOST_TEST(named<QFrame>(desk.window, "waitingFrame")
                   .isAncestorOf(&named<QPushButton>(desk.window, "loadPeopleButton")));
}

BOOST_AUTO_TEST_CASE(a_whole_pair_is_in_sight_in_sun_on_a_small_screen, *utf::label("PROP"))
{
    const InSun sun;
    OpenDesk desk;
    desk.window.resize(1366, 768);
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    settle();
    const auto& pairs = named<QListView>(desk.window, "pairsView");
    const auto first = pairs.visualRect(pairs.model()->index(0, 0));
    BOOST_TEST(first.height() > 0);
    BOOST_TEST(first.bottom() <= pairs.viewport()->height());
}

BOOST_AUTO_TEST_SUITE_END()
