// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_options.hpp"
#include "tests/desk/camp_folder.hpp"

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
DeskOptions options(const QStringList& words)
{
    return readDeskOptions(QStringList{QStringLiteral("quarterstep-desk")} + words);
}
} // namespace

BOOST_AUTO_TEST_SUITE(desk_options)

BOOST_AUTO_TEST_CASE(flags_of_the_desk_are_read, *utf::label("PROP"))
{
    const auto read =
        options({QStringLiteral("--theme"), QStringLiteral("sun"), QStringLiteral("--size"),
                 QStringLiteral("1920x1080"), QStringLiteral("--right-to-left"), QStringLiteral("camp")});
    BOOST_TEST(read.problem.toStdString() == "");
    BOOST_TEST((read.theme == Theme::sun));
    BOOST_TEST(!read.textScale);
    BOOST_TEST((read.size == QSize(1920, 1080)));
    BOOST_TEST(read.rightToLeft);
    BOOST_TEST(read.folder.toStdString() == "camp");
}

BOOST_AUTO_TEST_CASE(what_is_not_understood_is_said, *utf::label("PROP"))
{
    BOOST_TEST(options({QStringLiteral("--theme"), QStringLiteral("purple")})
                   .problem.contains(QStringLiteral("purple")));
    BOOST_TEST(
        options({QStringLiteral("--size"), QStringLiteral("12")}).problem.contains(QStringLiteral("12")));
    BOOST_TEST(!options({QStringLiteral("--colour")}).problem.isEmpty());
    BOOST_TEST(!options({QStringLiteral("a"), QStringLiteral("b")}).problem.isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
