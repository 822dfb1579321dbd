// SPDX-License-Identifier: GPL-3.0-or-later
// print: papers as text, as a PDF, as pictures or on a printer. Nothing of the camp is changed.
#include "app/command/print.hpp"

#include "app/command/go_on_in.hpp"
#include "app/command/inputs.hpp"
#include "app/command/kept_work.hpp"
#include "app/paper/content/plain_text.hpp"
#include "inventory/text/numbers.hpp"

#include <QCoreApplication>
#include <QDate>

#include <array>
#include <cstring>

#include <unistd.h>

namespace quarterstep
{
namespace
{

DrawPapers drawing = nullptr;

PaperKind kindOf(const std::string& word)
{
    std::string words;
    for (std::size_t i = 0; i < paperKinds; ++i) {
        const auto kind = static_cast<PaperKind>(i);
        if (word == wordOf(kind))
            return kind;
        words += (words.empty() ? "" : ", ") + std::string(wordOf(kind));
    }
    refuseUsage("option-value", {QS_SAY("core", "“%1” is not a paper; write one of %2"), {word, words}});
}

/// "63.5x38.1", millimetres.
LabelSize labelSizeOf(const CommandLine& line)
{
    if (!line.has("--label-size"))
        return {};
    const auto text = line.value("--label-size");
    const auto cross = text.find('x');
    const auto width = parseNumber(text.substr(0, cross), 20.0, 200.0);
    const auto height = parseNumber(cross == std::string::npos ? "" : text.substr(cross + 1), 15.0, 280.0);
    if (!width || !height)
        refuseUsage("option-value", {QS_SAY("core", "“%1” is not a size of labels; write width and height in "
                                                    "mm, as 63.5x38.1"),
                                     {text}});
    return {width.value(), height.value()};
}

int dotsOf(const CommandLine& line)
{
    if (!line.has("--dpi"))
        return 0;
    const auto dots = parseWholeNumber(line.value("--dpi"), 100, 1200);
    if (!dots)
        refuseUsage("option-value",
                    {QS_SAY("core", "“%1” is not a resolution; write 100 to 1200 dots an inch"),
                     {line.value("--dpi")}});
    return static_cast<int>(dots.value());
}

bool endsIn(const std::string& name, const char* end)
{
    const auto length = std::strlen(end);
    return name.size() > length && name.compare(name.size() - length, length, end) == 0;
}

/// One of --text, --json, --output and --printer.
void checkTarget(const CommandLine& line)
{
    int targets = 0;
    for (const char* option : {"--text", "--json", "--output", "--printer"})
        targets += line.has(option) ? 1 : 0;
    if (targets != 1)
        refuseUsage("option-missing",
                    {QS_SAY("core", "say where to print: one of --text, --json, --output FILE.pdf, --output "
                                    "FILE.png or --printer NAME"),
                     {}});
    const auto output = line.value("--output");
    if (!output.empty() && !endsIn(output, ".pdf") && !endsIn(output, ".png"))
        refuseUsage(
            "option-value",
            {QS_SAY("core", "“%1” is neither a PDF nor a PNG; end its name in .pdf or .png"), {output}});
}

PaperSize sizeOf(const CommandLine& line, PaperKind kind)
{
    if (!line.has("--size"))
        return usualSize(kind);
    const auto* size = sizeNamed(line.value("--size"));
    if (size == nullptr)
        refuseUsage(
            "option-value",
            {QS_SAY("core", "“%1” is not a size of paper; write a4, a5, a6, roll-80, roll-58 or label"),
             {line.value("--size")}});
    return *size;
}

bool isAboutAPerson(PaperKind kind)
{
    constexpr std::array kinds{PaperKind::note,       PaperKind::laboratoryOrder, PaperKind::letter,
                               PaperKind::collection, PaperKind::guardianNote,    PaperKind::teacherNote};
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

PrintBox openPrintBox(const CommandLine& line, Output& out)
{
    PrintBox box;
    if (line.has("--camp") == line.has("--stock"))
        refuseUsage("option-missing",
                    {QS_SAY("core", "`%1` needs either --camp FOLDER or --stock FILE"), {line.verb}});
    if (line.has("--camp")) {
        box.camp.emplace(Camp::open(line.value("--camp"), Ledger::Mode::readOnly));
        out.tell(box.camp->findings());
        box.stock = box.camp->stock();
        box.rules = box.camp->rules();
        box.source.site = box.camp->site();
    } else {
        auto opened = openBox(line, out);
        box.stock = std::move(opened.stock);
        box.rules = std::move(opened.rules);
        box.source.site = readStockFile(line.value("--stock")).value.site;
    }
    box.source.day = QDate::currentDate().toString(Qt::ISODate).toStdString();
    box.source.rulesHash = box.rules.hash;
    box.source.programVersion = QUARTERSTEP_VERSION;
    return box;
}

const char* blockWord(BlockKind kind)
{
    constexpr const char* words[] = {"title", "heading", "text",  "caution", "field", "power",
                                     "table", "bars",    "blank", "cut",     "small", "picture"};
    return words[static_cast<std::size_t>(kind)];
}

QJsonObject jsonBlock(const Block& block)
{
    QJsonArray rows;
    for (const auto& row : block.rows) {
        QJsonArray cells;
        for (const auto& cell : row)
            cells.append(withoutIsolates(cell));
        rows.append(cells);
    }
    return {{"kind", blockWord(block.kind)},
            {"text", withoutIsolates(block.text)},
            {"value", withoutIsolates(block.value)},
            {"rows", rows}};
}

QJsonArray jsonPapers(const std::vector<Paper>& papers)
{
    QJsonArray array;
    for (const auto& paper : papers) {
        QJsonArray blocks;
        for (const auto& block : paper.blocks)
            blocks.append(jsonBlock(block));
        array.append(QJsonObject{{"paper", wordOf(paper.kind)}, {"blocks", blocks}});
    }
    return array;
}

void printText(const PaperJob& job, Output& out)
{
    for (const auto& paper : job.papers) {
        if (&paper != job.papers.data())
            out.text(QStringLiteral("\n"));
        out.text(plainText(paper, job.language->rightToLeft));
    }
}

/// Pages are told on a terminal while they are drawn.
bool tellPage(int done, int total)
{
    if (total > 1 && ::isatty(STDERR_FILENO) == 1) {
        const auto text = commandWords(QT_TRANSLATE_NOOP("command", "page %1 of %2")).arg(done).arg(total);
        const auto bytes = (QLatin1Char('\r') + text + (done == total ? QStringLiteral("\n") : QString()));
        std::fputs(bytes.toUtf8().constData(), stderr);
    }
    return true;
}

void draw(const PaperJob& job, Output& out)
{
    const auto drawn = drawing(job, tellPage);
    for (const auto& name : drawn.withoutBars)
        out.tell(
            Severity::caution, Position{}, "label-without-bars",
            {QS_SAY("core", "the bars of %1 are too long for this paper; it stands there in words alone: "
                            "give it a code of thirteen digits, or choose a wider label"),
             {name.toStdString()}});
    for (const auto& file : drawn.files)
        out.line(QString::fromStdString(file));
}

/// Goes on in the program that draws, with the same words. Returns only by an error.
[[noreturn]] void goOnInDrawingProgram()
{
    const auto failed = goOnIn("quarterstep-paper");
    throw errorSaying(
        "paper-program-missing",
        {QS_SAY("core", "the program that draws papers, %1, cannot be started: %2; --text prints "
                        "without it"),
         {failed.path, failed.why}},
        Exit::unavailable);
}

} // namespace

const Language& languageOf(const CommandLine& line)
{
    const auto* language = languageNamed(line.has("--language") ? line.value("--language") : "en");
    if (language != nullptr)
        return *language;
    std::string codes;
    for (const auto& each : languagesShipped())
        codes += (codes.empty() ? "" : ", ") + std::string(each.code);
    refuseUsage("option-value", {QS_SAY("core", "there is no catalogue for “%1”; there are %2"),
                                 {line.value("--language"), codes}});
}

void drawPapersWith(DrawPapers draw)
{
    drawing = draw;
}

int runPrint(const CommandLine& line, Output& out)
{
    const auto kind = kindOf(line.arguments.front());
    checkTarget(line);
    PaperJob job;
    job.language = &languageOf(line);
    job.size = sizeOf(line, kind);
    job.label = labelSizeOf(line);
    job.large = line.has("--large");
    job.dotsPerInch = dotsOf(line);
    job.output = line.value("--output");
    job.printer = line.value("--printer");
    const bool drawn = line.has("--output") || line.has("--printer");
    if (drawn && drawing == nullptr)
        goOnInDrawingProgram(); // before anything is read from standard input
    const auto box = openPrintBox(line, out);
    bool bad = false;
    {
        const SpokenIn spoken(*job.language);
        job.papers =
            isAboutAPerson(kind) ? personPapers(kind, line, box, out, bad) : boxPapers(kind, line, box, out);
    }
    if (job.papers.empty())
        throw errorSaying(
            "paper-nothing",
            {QS_SAY("core", "there is nothing to print: nobody and nothing here asks for this paper: %1"),
             {wordOf(kind)}},
            Exit::badData);
    if (line.has("--json"))
        out.json(jsonPapers(job.papers));
    else if (!drawn)
        printText(job, out);
    else
        draw(job, out);
    return bad ? Exit::badData : Exit::done;
}

} // namespace quarterstep
