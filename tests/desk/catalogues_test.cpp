// SPDX-License-Identifier: GPL-3.0-or-later
// Every catalogue: a translation has the placeholders of its sentence, each as often, and leaves powers,
// units and keys alone. The files are read as they stand in the sources.
#include "app/translations/catalogue.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFontMetrics>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>

#include <algorithm>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
struct Translated {
    QString source;
    QString translation;
};

/// The finished translations of a file, each form of a number by itself.
std::vector<Translated> finishedIn(const QString& path)
{
    QFile file(path);
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    std::vector<Translated> all;
    QString source;
    bool finished = false;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QLatin1String("source"))
            source = xml.readElementText();
        else if (xml.name() == QLatin1String("translation")) {
            finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
            const auto text = xml.readElementText(QXmlStreamReader::IncludeChildElements).trimmed();
            if (finished && !text.isEmpty() && !text.contains(QLatin1Char('\n')))
                all.push_back({source, text});
        }
    }
    BOOST_TEST(!xml.hasError());
    return all;
}

QStringList foundIn(const QString& text, const QRegularExpression& form)
{
    QStringList found;
    for (auto each = form.globalMatch(text); each.hasNext();)
        found << each.next().captured();
    found.sort();
    return found;
}
} // namespace

BOOST_AUTO_TEST_SUITE(catalogues)

BOOST_AUTO_TEST_CASE(translations_have_the_placeholders_and_file_names_of_their_sentences,
                     *utf::label("PROP"))
{
    static const QRegularExpression places(QStringLiteral("%([0-9]+|n)"));
    static const QRegularExpression files(
        QStringLiteral("(stock|rules|people|desk)[.](yaml|csv)|Ctrl[+][A-Z]\\b"));
    const QDir folder(QStringLiteral(QS_SOURCE_DIR "/app/translations"));
    const auto names = folder.entryList({QStringLiteral("*.ts")});
    BOOST_TEST(names.size() == 6);
    for (const auto& name : names) {
        const auto all = finishedIn(folder.filePath(name));
        BOOST_TEST(all.size() > 250U, name.toStdString());
        for (const auto& [source, translation] : all) {
            BOOST_TEST((foundIn(source, places) == foundIn(translation, places)),
                       name.toStdString()
                           << ": " << source.toStdString() << " | " << translation.toStdString());
            BOOST_TEST((foundIn(source, files) == foundIn(translation, files)),
                       name.toStdString()
                           << ": " << source.toStdString() << " | " << translation.toStdString());
        }
    }
}

BOOST_AUTO_TEST_CASE(every_language_of_the_window_is_compiled_in_and_can_be_written, *utf::label("PROP"))
{
    BOOST_TEST(languagesOfDesk().size() == 7U);
    const QFontMetrics metrics(QApplication::font());
    for (const auto& language : languagesOfDesk().subspan(1)) {
        QTranslator translator;
        BOOST_TEST_REQUIRE(
            translator.load(QStringLiteral(":/i18n/quarterstep_") + QLatin1String(language.code)));
        const auto word = translator.translate("quarterstep::DeskWindow", "Stock");
        BOOST_TEST(!translator.translate("quarterstep::HandOverPanel", "Hand over").isEmpty(), language.code);
        BOOST_TEST(!word.isEmpty(), language.code);
        for (const auto sign : word + QString::fromUtf8(language.name))
            if (sign.isLetter())
                BOOST_TEST(metrics.inFont(sign),
                           language.code << " U+" << std::hex << static_cast<unsigned>(sign.unicode()));
    }
}

BOOST_AUTO_TEST_SUITE_END()
