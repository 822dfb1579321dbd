// SPDX-License-Identifier: GPL-3.0-or-later
// Every sentence of every paper in every language, and powers that no language turns round.
#include "app/paper/content/plain_text.hpp"
#include "app/translations/catalogue.hpp"
#include "tests/paper/sample_papers.hpp"

#include <boost/test/unit_test.hpp>

#include <QRegularExpression>

#include <algorithm>

using namespace quarterstep;
using namespace quarterstep::testing;
namespace utf = boost::unit_test;

namespace
{

std::vector<NamedPaper> everyPaper()
{
    auto papers = notes();
    for (auto&& each : {otherPapers(), longestPapers()})
        papers.insert(papers.end(), each.begin(), each.end());
    return papers;
}

bool hasScript(const QString& text, QChar::Script script)
{
    return std::any_of(text.begin(), text.end(), [&](QChar c) { return c.script() == script; });
}

/// Every text of a paper.
QStringList textsOf(const Paper& paper)
{
    QStringList texts;
    for (const auto& block : paper.blocks) {
        texts << block.text;
        if (block.kind != BlockKind::bars)
            texts << block.value;
        for (const auto& row : block.rows)
            texts << row;
    }
    return texts;
}

/// Whether there are words outside isolates: a name or a power alone needs no translation.
bool hasLetters(QString text)
{
    static const QRegularExpression isolated(QStringLiteral("[\\x{2066}\\x{2068}][^\\x{2069}]*\\x{2069}"));
    while (text.contains(isolated))
        text.remove(isolated);
    return std::any_of(text.begin(), text.end(), [](QChar c) { return c.isLetter(); });
}

/// A language of papers beside English, and the script its speakers write its name in.
struct Told {
    const Language& language;
    QChar::Script script;
};
std::vector<Told> languages()
{
    std::vector<Told> told;
    for (const auto& language : languagesShipped().subspan(1))
        told.push_back({language, QString::fromUtf8(language.name).front().script()});
    return told;
}

} // namespace

BOOST_AUTO_TEST_SUITE(paper_languages)

BOOST_AUTO_TEST_CASE(every_sentence_of_every_paper_is_told_in_each_language, *utf::label("PROP"))
{
    for (const auto& told : languages()) {
        const SpokenIn spoken(told.language);
        for (const auto& each : everyPaper())
            for (const auto& block : each.paper.blocks)
                if (block.kind != BlockKind::power && block.kind != BlockKind::bars &&
                    !(each.paper.kind == PaperKind::binLabel && block.kind == BlockKind::text) &&
                    hasLetters(block.text))
                    BOOST_TEST(hasScript(block.text, told.script),
                               told.language.code << " " << each.name << ": " << block.text.toStdString());
    }
}

BOOST_AUTO_TEST_CASE(powers_and_names_stand_in_isolates_in_every_language, *utf::label("PROP"))
{
    // Outside isolates no sign and no digit may stand beside a power: they would be turned round.
    const QRegularExpression isolated(QStringLiteral("[\\x{2066}\\x{2068}][^\\x{2069}]*\\x{2069}"));
    const QRegularExpression loose(QStringLiteral("[+\\-−]\\d|[A-Z]+[+\\-]\\d"));
    for (const auto& told : languages()) {
        const SpokenIn spoken(told.language);
        for (const auto& each : everyPaper())
            for (auto text : textsOf(each.paper)) {
                while (text.contains(isolated))
                    text.remove(isolated);
                BOOST_TEST(!text.contains(loose),
                           told.language.code << " " << each.name << ": " << text.toStdString());
            }
    }
}

BOOST_AUTO_TEST_SUITE_END()
