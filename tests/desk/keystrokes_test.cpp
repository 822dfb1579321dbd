// SPDX-License-Identifier: GPL-3.0-or-later
// How many keys the work at the table takes. A key with a modifier counts as two, with two modifiers as
// three.
#include "app/desk/message_bar.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QListView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// Types into whatever has the focus and counts.
class Keys
{
  public:
    void text(const char* letters)
    {
        for (const char letter : std::string(letters)) {
            QTest::keyClick(QApplication::focusWidget(), letter);
            ++count_;
        }
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), key, with);
        count_ += 1 + (with & Qt::ControlModifier ? 1 : 0) + (with & Qt::ShiftModifier ? 1 : 0);
    }
    [[nodiscard]] int count() const { return count_; }

  private:
    int count_ = 0;
};

/// A person and an age stand on the card already; the cursor is in the right eye.
void begin(OpenDesk& desk, const char* first)
{
    QTest::keyClick(&desk.window, Qt::Key_N, Qt::ControlModifier);
    named<QLineEdit>(desk.window, "personEdit").setText(QStringLiteral("K-1"));
    named<QLineEdit>(desk.window, "ageEdit").setText(QStringLiteral("24"));
    named<QLineEdit>(desk.window, first).setFocus();
}

int pairsShown(OpenDesk& desk)
{
    return named<QListView>(desk.window, "pairsView").model()->rowCount();
}
} // namespace

BOOST_AUTO_TEST_SUITE(keystrokes)

BOOST_AUTO_TEST_CASE(two_full_eyes_and_the_pd_in_text_take_at_most_thirty_keys, *utf::label("PROP"))
{
    OpenDesk desk;
    begin(desk, "rightEyeEdit");
    Keys keys;
    keys.text("-1.25-.75x90");
    keys.key(Qt::Key_Tab);
    keys.text("-1.25-.75x90");
    keys.key(Qt::Key_Tab);
    keys.text("62");
    keys.key(Qt::Key_Return);
    BOOST_TEST(named<QLineEdit>(desk.window, "distancePdEdit").text().toStdString() == "62");
    BOOST_TEST(pairsShown(desk) > 0);
    BOOST_TEST(keys.count() == 29);
}

BOOST_AUTO_TEST_CASE(the_same_in_six_fields_takes_at_most_thirty_four_keys, *utf::label("PROP"))
{
    OpenDesk desk;
    begin(desk, "rightEyeEdit");
    QTest::keyClick(&desk.window, Qt::Key_E, Qt::ControlModifier);
    named<QLineEdit>(desk.window, "rightSphereEdit").setFocus();
    Keys keys;
    for (int eye = 0; eye < 2; ++eye)
        for (const auto* part : {"-1.25", "-.75", "90"}) {
            keys.text(part);
            keys.key(Qt::Key_Tab);
        }
    keys.text("62");
    keys.key(Qt::Key_Return);
    BOOST_TEST(named<QLineEdit>(desk.window, "leftEyeEdit").text().toStdString() == "-1.25 -0.75 x 90");
    BOOST_TEST(named<QLineEdit>(desk.window, "distancePdEdit").text().toStdString() == "62");
    BOOST_TEST(pairsShown(desk) > 0);
    BOOST_TEST(keys.count() == 31);
}

BOOST_AUTO_TEST_CASE(equal_spheres_take_at_most_twelve_keys, *utf::label("PROP"))
{
    OpenDesk desk;
    begin(desk, "rightEyeEdit");
    Keys keys;
    keys.text("-1.25");
    keys.key(Qt::Key_Tab);
    keys.key(Qt::Key_Equal);
    keys.key(Qt::Key_Tab);
    keys.text("62");
    keys.key(Qt::Key_Return);
    BOOST_TEST(pairsShown(desk) > 0);
    BOOST_TEST(keys.count() == 11);
}

BOOST_AUTO_TEST_CASE(a_plain_reader_takes_at_most_eight_keys, *utf::label("PROP"))
{
    OpenDesk desk;
    desk.folder.write(QStringLiteral("stock.yaml"),
                      desk.folder.read(QStringLiteral("stock.yaml")) +
                          "  - {line: N+150, kind: ready-made, power: +1.50, use: near, centres: 60, centres "
                          "from: measured, heights differ by: 0.00, bin: C2, on hand: 3}\n");
    BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
    QTest::keyClick(&desk.window, Qt::Key_R, Qt::ControlModifier); // once: the short way stays open
    BOOST_TEST_REQUIRE(QApplication::focusWidget()->objectName().toStdString() == "readerAgeEdit");
    Keys keys;
    keys.text("52");
    keys.key(Qt::Key_Tab);
    keys.key(Qt::Key_Plus);
    keys.text("150");
    keys.key(Qt::Key_Return);
    BOOST_TEST_REQUIRE(pairsShown(desk) > 0);
    const auto& list = *named<QListView>(desk.window, "pairsView").model();
    BOOST_TEST(list.index(0, PairsModel::pullColumn).data(PairsModel::rawRole).toString().toStdString() ==
               "N+150");
    BOOST_TEST(keys.count() == 8);
}

BOOST_AUTO_TEST_CASE(accepting_the_first_and_printing_takes_at_most_three_keys, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    Keys keys;
    keys.key(Qt::Key_Return, Qt::ControlModifier | Qt::ShiftModifier);
    BOOST_TEST(desk.folder.onHand("D-125") == 1);
    const QDir papers(desk.folder.path() + QStringLiteral("/papers"));
    BOOST_TEST(QTest::qWaitFor(
        [&papers] { return papers.entryList({QStringLiteral("note-P-1-*.pdf")}).size() == 1; }, 20000));
    QTest::qWait(0);
    BOOST_TEST(
        desk.window.messages().text().contains(QStringLiteral("B1"))); // what to put back stays in sight
    BOOST_TEST(keys.count() == 3);
}

BOOST_AUTO_TEST_SUITE_END()
