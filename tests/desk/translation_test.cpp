// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/words.hpp"
#include "app/session/wording.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTranslator>

#include <algorithm>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// The Arabic catalogue for the length of a case.
struct Arabic {
    Arabic()
    {
        BOOST_TEST_REQUIRE(translator.load(QStringLiteral(QS_ARABIC)));
        QApplication::installTranslator(&translator);
        QApplication::setLayoutDirection(Qt::RightToLeft);
    }
    ~Arabic()
    {
        QApplication::removeTranslator(&translator);
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }
    QTranslator translator;
};

bool hasArabic(const QString& text)
{
    return std::any_of(text.begin(), text.end(), [](QChar c) { return c.script() == QChar::Script_Arabic; });
}
} // namespace

BOOST_AUTO_TEST_SUITE(translation)

BOOST_AUTO_TEST_CASE(words_of_every_room_come_from_the_catalogue, *utf::label("PROP"))
{
    const Arabic arabic;
    BOOST_TEST(hasArabic(say(Verdict::stock)));             // session
    BOOST_TEST(hasArabic(say(Criterion::horizontalPrism))); // core
    OpenDesk desk;                                          // desk
    BOOST_TEST(hasArabic(named<QPushButton>(desk.window, "handOverButton").text()));
    BOOST_TEST(hasArabic(named<QLabel>(desk.window, "summaryLabel").text()));
}

BOOST_AUTO_TEST_CASE(a_finding_is_told_in_the_language_with_powers_as_written, *utf::label("REG"))
{
    const Arabic arabic;
    const auto told = say(Sentence{"cylinder %1 has no axis; write it with its axis, as %1 x 90", {"+0.75"}});
    BOOST_TEST_REQUIRE(hasArabic(told));
    BOOST_TEST(told.contains(ltr(QStringLiteral("+0.75 x 90"))), told.toStdString());
    BOOST_TEST(told.count(ltr(QStringLiteral("+0.75"))) == 1, told.toStdString());
}

BOOST_AUTO_TEST_CASE(an_answer_is_told_in_the_language_with_powers_as_written, *utf::label("PROP"))
{
    const Arabic arabic;
    SmallAnswer small;
    BOOST_TEST_REQUIRE(!small.answer.candidates.ranked.empty());
    const auto& first = small.answer.candidates.ranked.front();
    BOOST_TEST(hasArabic(DeskWords::verdict(first.fit)));
    BOOST_TEST(hasArabic(DeskWords::pull(first.parts, small.stock)));
    BOOST_TEST(!hasArabic(DeskWords::powers(first.supply)));
}

BOOST_AUTO_TEST_SUITE_END()
