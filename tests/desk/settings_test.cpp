// SPDX-License-Identifier: GPL-3.0-or-later
// Settings reach where they belong: the person's file, the camp folder, the ledger; and the manual and the
// sheet of keys.
#include "app/desk/desk_program.hpp"
#include "app/desk/guide/help_window.hpp"
#include "app/desk/guide/key_sheet.hpp"
#include "app/desk/guide/manual_text.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/settings/preferences.hpp"
#include "app/desk/shown.hpp"
#include "app/help/topics.hpp"
#include "app/session/pins.hpp"
#include "core/optics/notation.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTextBlock>
#include <QTextBrowser>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
void choose(DeskWindow& window, const char* name, int index)
{
    auto& box = named<QComboBox>(window, name);
    box.setCurrentIndex(index);
    Q_EMIT box.activated(index);
}

struct SettingsDesk : OpenDesk {
    SettingsDesk() { QTest::keyClick(&window, Qt::Key_Comma, Qt::ControlModifier); }
    ~SettingsDesk()
    {
        applyTheme(*qApp, Theme::light);
        keepPreferences({});
    }
    SettingsDesk(const SettingsDesk&) = delete;
    SettingsDesk& operator=(const SettingsDesk&) = delete;
    std::string told() { return window.messages().text().toStdString(); }
};
} // namespace

BOOST_AUTO_TEST_SUITE(settings)

BOOST_AUTO_TEST_CASE(what_a_person_likes_is_kept_for_the_person, *utf::label("PROP"))
{
    SettingsDesk desk;
    BOOST_TEST_REQUIRE(named<QWidget>(desk.window, "settingsPage").isVisible());
    choose(desk.window, "lookBox", 2);
    choose(desk.window, "textScaleBox", 2);
    BOOST_TEST((themeNow() == Theme::sun));
    BOOST_TEST(QApplication::font().pointSizeF() == 21.0); // 14 points at 150 %
    const auto kept = readPreferences();
    BOOST_TEST((kept.theme == Theme::sun));
    BOOST_TEST(kept.textScale == 150);
    DeskProgram next(*qApp, {});
    BOOST_TEST((themeNow() == Theme::sun));
    BOOST_TEST(QApplication::font().pointSizeF() == 21.0);
}

BOOST_AUTO_TEST_CASE(letters_grow_and_shrink_by_key_between_100_and_200, *utf::label("PROP"))
{
    SettingsDesk desk;
    const double heading = named<QLabel>(desk.window, "siteLabel").fontInfo().pixelSize();
    for (int i = 0; i < 6; ++i)
        QTest::keyClick(&desk.window, Qt::Key_Plus, Qt::ControlModifier);
    BOOST_TEST(textScaleNow() == 200);
    BOOST_TEST(named<QLabel>(desk.window, "siteLabel").fontInfo().pixelSize() > 1.9 * heading);
    for (int i = 0; i < 6; ++i)
        QTest::keyClick(&desk.window, Qt::Key_Minus, Qt::ControlModifier);
    BOOST_TEST(textScaleNow() == 100);
    QTest::keyClick(&desk.window, Qt::Key_Plus, Qt::ControlModifier);
    QTest::keyClick(&desk.window, Qt::Key_0, Qt::ControlModifier);
    BOOST_TEST(textScaleNow() == 100);
}

BOOST_AUTO_TEST_CASE(what_belongs_to_the_camp_is_kept_in_its_folder, *utf::label("PROP"))
{
    SettingsDesk desk;
    choose(desk.window, "cylinderBox", 1);
    choose(desk.window, "acuityBox", 3);
    choose(desk.window, "profileBox",
           named<QComboBox>(desk.window, "profileBox").findData(QStringLiteral("strict")));
    const auto file = desk.folder.read(QStringLiteral("desk.yaml"));
    BOOST_TEST(file.contains("cylinder: plus"));
    BOOST_TEST(file.contains("acuity: decimal"));
    BOOST_TEST(file.contains("profile: \"strict\""));
    BOOST_TEST((shownNow().cylinder == ShownCylinder::plus));
    DeskWindow other;
    BOOST_TEST_REQUIRE(other.openCamp(desk.folder.path()));
    other.showSettings();
    BOOST_TEST(named<QComboBox>(other, "cylinderBox").currentIndex() == 1);
    BOOST_TEST(other.choosePerson(QStringLiteral("P-1")));
    BOOST_TEST(named<QLineEdit>(other, "bestRightEdit").text().toStdString() == "dec 1");
}

BOOST_AUTO_TEST_CASE(a_broken_settings_file_is_told_with_its_place_and_the_camp_opens, *utf::label("PROP"))
{
    CampFolder folder;
    folder.write(QStringLiteral("desk.yaml"), "format: quarterstep desk 1\ncylinder: sideways\n");
    DeskWindow window;
    window.show();
    BOOST_TEST(window.openCamp(folder.path()));
    BOOST_TEST(window.messages().text().contains(QStringLiteral("desk.yaml:2:11")));
    BOOST_TEST(window.messages().code().toStdString() == "unknown-word");
}

BOOST_AUTO_TEST_CASE(powers_and_acuities_are_shown_as_the_camp_wants_them,
                     *utf::label("DER") *
                         utf::description("-1.25 -0.50 x 90 transposed by hand: the cylinder "
                                          "joins the sphere, its sign turns, the axis goes "
                                          "by 90; 6/9 = 20/30 = 0.67 = logMAR 0.18"))
{
    const SpheroCylinder power = parsePower("-1.25 -0.50 x 90").value();
    const auto acuity = parseAcuity("6/9").value();
    const auto shownAs = [&](ShownCylinder cylinder, ShownAcuity notation) {
        setShownNow({cylinder, notation, "", false});
        return (shownPower(power) + QStringLiteral(" | ") + shownAcuity(acuity)).toStdString();
    };
    BOOST_TEST(shownAs(ShownCylinder::minus, ShownAcuity::asRecorded) == "-1.25 -0.50 x 90 | 6/9");
    BOOST_TEST(shownAs(ShownCylinder::plus, ShownAcuity::feet) == "-1.75 +0.50 x 180 | 20/30");
    BOOST_TEST(shownAs(ShownCylinder::minus, ShownAcuity::decimal) == "-1.25 -0.50 x 90 | dec 0.67");
    BOOST_TEST(shownAs(ShownCylinder::minus, ShownAcuity::logMar) == "-1.25 -0.50 x 90 | logMAR 0.18");
    BOOST_TEST(shownAs(ShownCylinder::minus, ShownAcuity::metres) == "-1.25 -0.50 x 90 | 6/9");
    BOOST_TEST(shownAcuity(parseAcuity("NPL").value()).toStdString() == "NPL"); // has no number
    setShownNow({});
}

BOOST_AUTO_TEST_CASE(a_pin_is_set_and_changed_only_with_the_one_before, *utf::label("PROP"))
{
    SettingsDesk desk;
    const auto enter = [&](const char* old, const char* fresh, const char* button) {
        named<QLineEdit>(desk.window, "oldPinEdit").setText(QLatin1String(old));
        named<QLineEdit>(desk.window, "newPinEdit").setText(QLatin1String(fresh));
        named<QPushButton>(desk.window, button).click();
        return desk.window.messages().code().toStdString();
    };
    BOOST_TEST(enter("", "12", "setPinButton") == "pin-form");
    BOOST_TEST(enter("", "4711", "setPinButton") == "");
    BOOST_TEST(enter("0000", "4712", "setPinButton") == "pin-wrong");
    BOOST_TEST(enter("4711", "4712", "setPinButton") == "");
    BOOST_TEST(named<QLabel>(desk.window, "pinState").text().contains(QStringLiteral("Optician")));
    BOOST_TEST(named<QLineEdit>(desk.window, "newPinEdit").text().toStdString() ==
               ""); // not left on the screen
    auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly);
    BOOST_TEST(pinFits(camp.ledger(), Role::optician, "4712"));
    BOOST_TEST(enter("4712", "", "removePinButton") == "");
    BOOST_TEST(!hasPin(camp.ledger(), Role::optician));
}

BOOST_AUTO_TEST_CASE(another_language_makes_the_window_anew_with_the_same_camp, *utf::label("PROP"))
{
    CampFolder folder;
    DeskProgram program(*qApp, {});
    program.window().show();
    BOOST_TEST_REQUIRE(program.window().openCamp(folder.path()));
    auto& field = named<QLineEdit>(program.window(), "personEdit");
    field.setFocus();
    QTest::keyClicks(&field, QStringLiteral("T-5"));
    program.window().showSettings();
    choose(program.window(), "languageBox",
           named<QComboBox>(program.window(), "languageBox").findData(QStringLiteral("ar")));
    BOOST_TEST(QTest::qWaitFor([] { return QApplication::layoutDirection() == Qt::RightToLeft; }, 2000));
    BOOST_TEST(program.window().campFolder().toStdString() == folder.path().toStdString());
    BOOST_TEST(named<QLineEdit>(program.window(), "personEdit").text().toStdString() == "T-5");
    program.window().showSettings();
    program.window().showSettings();
    choose(program.window(), "languageBox",
           named<QComboBox>(program.window(), "languageBox").findData(QStringLiteral("en")));
    BOOST_TEST(QTest::qWaitFor([] { return QApplication::layoutDirection() == Qt::LeftToRight; }, 2000));
    QTest::keyClick(&program.window(), Qt::Key_N, Qt::ControlModifier);
    keepPreferences({});
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(guide)

BOOST_AUTO_TEST_CASE(the_sheet_has_every_key_of_every_action_once, *utf::label("PROP"))
{
    OpenDesk desk;
    const auto groups = keysOf(desk.window);
    int keys = 0;
    for (const auto& group : groups)
        keys += static_cast<int>(group.keys.size());
    int actions = 0;
    for (const auto* action : desk.window.findChildren<QAction*>())
        actions += action->shortcuts().isEmpty() || action->text().isEmpty() ? 0 : 1;
    BOOST_TEST(actions > 12);
    BOOST_TEST(keys >= actions);
    BOOST_TEST(groups.front().title.isEmpty()); // everywhere
    QTest::keyClick(&desk.window, Qt::Key_F1, Qt::ShiftModifier);
    const auto text = named<QTextBrowser>(desk.window, "keyText").toPlainText();
    for (const auto* word : {"Ctrl+Return", "Ctrl+Z", "Ctrl+N", "F1", "Alt+2", "0.25"})
        BOOST_TEST(text.contains(QLatin1String(word)), word);
}

BOOST_AUTO_TEST_CASE(f1_opens_the_page_for_where_the_person_is, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-1")));
    desk.window.activateWindow();
    const auto topicAt = [&](const char* widget) {
        named<QWidget>(desk.window, widget).setFocus();
        QTest::keyClick(&desk.window, Qt::Key_F1);
        auto* help = desk.window.findChild<HelpWindow*>();
        BOOST_TEST_REQUIRE(help);
        help->close();
        desk.window.activateWindow();
        return help->topic().toStdString();
    };
    BOOST_TEST(topicAt("pairsView") == "matching");
    BOOST_TEST(topicAt("rightEyeEdit") == "notation");
    desk.window.showPlace(DeskWindow::Place::stock);
    BOOST_TEST(topicAt("linesView") == "files");
    desk.window.showSettings();
    BOOST_TEST(topicAt("lookBox") == "desk");
}

BOOST_AUTO_TEST_CASE(pictures_of_the_manual_are_there_and_never_wider_than_the_page, *utf::label("PROP"))
{
    HelpWindow help;
    auto& text = named<ManualText>(help, "helpText");
    for (const int width : {1400, 980, 600})
        for (const auto* topic : {"first-day", "desk"}) {
            help.resize(width, 700);
            help.showTopic(QLatin1String(topic));
            BOOST_TEST(QTest::qWaitFor([&] { return !text.awaitsPictures(); }, 10'000));
            int pictures = 0;
            for (auto block = text.document()->begin(); block.isValid(); block = block.next())
                for (auto part = block.begin(); !part.atEnd(); ++part) {
                    const auto format = part.fragment().charFormat().toImageFormat();
                    if (!format.isValid())
                        continue;
                    ++pictures;
                    const auto picture = text.document()
                                             ->resource(QTextDocument::ImageResource, QUrl(format.name()))
                                             .value<QImage>();
                    BOOST_TEST(!picture.isNull(), format.name().toStdString());
                    BOOST_TEST(qAlpha(picture.pixel(picture.rect().center())) == 255); // no empty place
                    BOOST_TEST(picture.deviceIndependentSize().width() <= text.viewport()->width());
                    BOOST_TEST(format.toolTip().size() > 15, format.name().toStdString());
                }
            BOOST_TEST(pictures >= 6, topic);
        }
}

BOOST_AUTO_TEST_CASE(every_page_of_the_manual_can_be_read_and_its_links_lead_on, *utf::label("PROP"))
{
    HelpWindow help;
    for (const auto& topic : helpTopics()) {
        help.showTopic(QLatin1String(topic.name));
        BOOST_TEST(help.topic().toStdString() == topic.name);
        BOOST_TEST(named<QTextBrowser>(help, "helpText").toPlainText().size() > 500);
    }
    Q_EMIT named<QTextBrowser>(help, "helpText").anchorClicked(QUrl(QStringLiteral("matching.md")));
    BOOST_TEST(help.topic().toStdString() == "matching");
    Q_EMIT named<QTextBrowser>(help, "helpText")
        .anchorClicked(QUrl(QStringLiteral("https://example.org/files.md")));
    BOOST_TEST(help.topic().toStdString() == "matching"); // nothing outside is opened
}

BOOST_AUTO_TEST_SUITE_END()
