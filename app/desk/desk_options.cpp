// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_options.hpp"

#include "app/desk/settings/preferences.hpp"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QFileInfo>
#include <QRegularExpression>

namespace quarterstep
{

namespace
{
QString words(const char* text)
{
    return QCoreApplication::translate("DeskOptions", text);
}

void describe(QCommandLineParser& parser)
{
    parser.setApplicationDescription(
        words(QT_TRANSLATE_NOOP("DeskOptions", "Matches final spectacle prescriptions with a "
                                               "stock of ready-made spectacles and lenses.")));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOptions(deskCommandLineOptions());
    parser.addPositionalArgument(
        QStringLiteral("FOLDER"),
        words(QT_TRANSLATE_NOOP("DeskOptions", "camp folder to open (stock.yaml, rules.yaml, "
                                               "ledger.sqlite)")),
        QStringLiteral("[FOLDER]"));
}

/// A file manager opens a camp by its stock file.
QString folderOf(const QString& path)
{
    const QFileInfo info(path);
    return info.isFile() && info.fileName() == QLatin1String("stock.yaml") ? info.absolutePath() : path;
}

void takeSize(DeskOptions& options, const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^([0-9]{3,4})x([0-9]{3,4})$"));
    const auto found = form.match(text);
    if (found.hasMatch())
        options.size = {found.captured(1).toInt(), found.captured(2).toInt()};
    else
        options.problem =
            words(QT_TRANSLATE_NOOP("DeskOptions", "--size %1 is not a size; write for example 1366x768"))
                .arg(text);
}

QStringList deskPages()
{
    return {QStringLiteral("dispense"),  QStringLiteral("stock"),         QStringLiteral("stock-ladder"),
            QStringLiteral("stock-box"), QStringLiteral("stock-packing"), QStringLiteral("stock-transfers"),
            QStringLiteral("audit"),     QStringLiteral("audit-charts"),  QStringLiteral("audit-bench"),
            QStringLiteral("opening"),   QStringLiteral("trays"),         QStringLiteral("settings"),
            QStringLiteral("help"),      QStringLiteral("keys"),          QStringLiteral("bring-in"),
            QStringLiteral("send-out")};
}

void takeScale(DeskOptions& options, const QString& text)
{
    bool number = false;
    const int scale = text.toInt(&number);
    if (number && scale >= leastTextScale && scale <= mostTextScale)
        options.textScale = scale;
    else
        options.problem =
            words(QT_TRANSLATE_NOOP("DeskOptions", "--text-scale %1 is not from 100 to 200")).arg(text);
}
} // namespace

QList<QCommandLineOption> deskCommandLineOptions()
{
    QList<QCommandLineOption> options;
    const auto option = [&options](const char* name, const char* text, const char* value) {
        options.push_back({QLatin1String(name), words(text), QLatin1String(value)});
    };
    option("theme", QT_TRANSLATE_NOOP("DeskOptions", "light, dark or sun (black on white, large)"), "NAME");
    options.push_back(
        {QStringLiteral("right-to-left"),
         words(QT_TRANSLATE_NOOP("DeskOptions", "mirrors the window; prescriptions stay left-to-right"))});
    option("language", QT_TRANSLATE_NOOP("DeskOptions", "language of the window, for example ar"), "CODE");
    option("text-scale", QT_TRANSLATE_NOOP("DeskOptions", "size of the letters in per cent, 100 to 200"),
           "PERCENT");
    option("screenshot", QT_TRANSLATE_NOOP("DeskOptions", "paints the window into a PNG file and leaves"),
           "FILE");
    option("size", QT_TRANSLATE_NOOP("DeskOptions", "size of the window in pixels, for example 1366x768"),
           "WxH");
    option("person", QT_TRANSLATE_NOOP("DeskOptions", "loads this person of people.csv at the start"),
           "CODE");
    option("place",
           QT_TRANSLATE_NOOP("DeskOptions",
                             "page to show at the start: dispense, stock, stock-ladder, stock-box, "
                             "stock-packing, stock-transfers, audit, audit-charts, audit-bench, opening, "
                             "trays, settings, help, keys, bring-in or send-out"),
           "NAME");
    option("bring",
           QT_TRANSLATE_NOOP("DeskOptions",
                             "reads this file of prescriptions on the page bring-in at the start"),
           "FILE");
    option("line", QT_TRANSLATE_NOOP("DeskOptions", "chooses this line of the stock at the start"), "LINE");
    return options;
}

DeskOptions readDeskOptions(const QStringList& arguments)
{
    DeskOptions options;
    QCommandLineParser parser;
    describe(parser);
    if (!parser.parse(arguments)) {
        options.problem = parser.errorText();
        return options;
    }
    options.help = parser.isSet(QStringLiteral("help"));
    options.version = parser.isSet(QStringLiteral("version"));
    options.rightToLeft = parser.isSet(QStringLiteral("right-to-left"));
    options.language = parser.value(QStringLiteral("language"));
    options.screenshot = parser.value(QStringLiteral("screenshot"));
    options.person = parser.value(QStringLiteral("person"));
    options.place = parser.value(QStringLiteral("place"));
    options.line = parser.value(QStringLiteral("line"));
    options.bring = parser.value(QStringLiteral("bring"));
    if (!options.bring.isEmpty() && options.place.isEmpty())
        options.place = QStringLiteral("bring-in");
    if (!options.place.isEmpty() && !deskPages().contains(options.place))
        options.problem = words(QT_TRANSLATE_NOOP("DeskOptions", "--place %1 is not known; write one of %2"))
                              .arg(options.place, deskPages().join(QStringLiteral(", ")));
    if (parser.isSet(QStringLiteral("text-scale")))
        takeScale(options, parser.value(QStringLiteral("text-scale")));
    if (parser.isSet(QStringLiteral("size")))
        takeSize(options, parser.value(QStringLiteral("size")));
    if (parser.isSet(QStringLiteral("theme"))) {
        const auto name = parser.value(QStringLiteral("theme"));
        options.theme = themeNamed(name);
        if (!options.theme)
            options.problem =
                words(QT_TRANSLATE_NOOP("DeskOptions", "--theme %1 is not known; write light, dark or sun"))
                    .arg(name);
    }
    const auto folders = parser.positionalArguments();
    if (folders.size() > 1)
        options.problem =
            words(QT_TRANSLATE_NOOP("DeskOptions", "one camp folder at a time, not %1")).arg(folders.size());
    else if (!folders.isEmpty())
        options.folder = folderOf(folders.front());
    return options;
}

QString deskHelp()
{
    QCommandLineParser parser;
    describe(parser);
    return parser.helpText();
}

} // namespace quarterstep
