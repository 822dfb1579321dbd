// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/render/render.hpp"

#include "app/paper/render/layout.hpp"
#include "app/paper/render/paint_picture.hpp"
#include "app/paper/render/printer.hpp"
#include "app/paper/render/words_shape.hpp"
#include "inventory/store/write_back.hpp"

#include <QBuffer>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <cmath>
#include <cstdio>

namespace quarterstep
{
namespace
{

constexpr double mmPerInch = 25.4;
constexpr int pdfDots = 1200;
constexpr int usualDots = 300; ///< of a picture when nothing is said
constexpr double thin = 20.0;  ///< units: 0.2 mm

/// Bars begin on a whole dot and are whole dots wide: half-covered dots would be grey.
void paintBars(QPainter& painter, const Mark& mark, double scale)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    const double module = mark.moduleWidth * scale;
    const double dots = module < 8.0 ? std::max(1.0, std::round(module)) : module;
    const QRectF area(std::round(mark.place.left() * scale), std::round(mark.place.top() * scale),
                      std::round(mark.place.width() * scale), std::round(mark.place.height() * scale));
    for (std::size_t at = 0; at < mark.modules.size();) {
        std::size_t end = at;
        while (end < mark.modules.size() && mark.modules[end] == mark.modules[at])
            ++end;
        const double from = static_cast<double>(at) * dots;
        const double length = static_cast<double>(end - at) * dots;
        if (mark.modules[at])
            painter.fillRect(mark.sideways ? QRectF(area.left(), area.top() + from, area.width(), length)
                                           : QRectF(area.left() + from, area.top(), length, area.height()),
                             Qt::black);
        at = end;
    }
    painter.restore();
}

void paintMark(QPainter& painter, const Mark& mark, double scale)
{
    const QRectF area(mark.place.topLeft() * scale, mark.place.size() * scale);
    switch (mark.kind) {
    case MarkKind::words:
        painter.save();
        painter.scale(scale, scale);
        WordsShape(mark).paint(painter, mark.place.topLeft());
        painter.restore();
        return;
    case MarkKind::bars:
        paintBars(painter, mark, scale);
        return;
    case MarkKind::bar:
        painter.fillRect(area, Qt::black);
        return;
    case MarkKind::line:
    case MarkKind::dashes:
        painter.setPen(
            QPen(Qt::black, thin * scale, mark.kind == MarkKind::line ? Qt::SolidLine : Qt::DashLine));
        painter.drawLine(area.topLeft(), area.topRight());
        return;
    case MarkKind::picture:
        painter.save();
        painter.scale(scale, scale);
        paintPicture(painter, *mark.picture, mark.place);
        painter.restore();
        return;
    case MarkKind::frame:
        painter.setPen(QPen(Qt::black, thin * scale));
        painter.drawRect(area);
        return;
    }
}

/// Qt's own messages, without what it says about a folder that paper does not need, and about figures between
/// words of another script, which it counts among them and yet paints well.
void tellQt(QtMsgType, const QMessageLogContext&, const QString& message)
{
    if (!message.startsWith(QStringLiteral("QStandardPaths:")) &&
        !message.contains(QStringLiteral("OpenType support missing")))
        std::fprintf(stderr, "%s\n", message.toUtf8().constData());
}

[[noreturn]] void stopped()
{
    throw errorSaying("paper-stopped", {QS_SAY("core", "printing was stopped"), {}}, 4);
}

std::vector<std::string> writePdf(const PaperJob& job, const LaidOut& laid, const PaperProgress& progress)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(pdfDots);
    writer.setCreator(QStringLiteral("Quarterstep"));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    QPainter painter;
    int done = 0;
    for (const auto& page : laid.pages) {
        writer.setPageSize(QPageSize(QSizeF(page.width, page.height) / unitsPerMm, QPageSize::Millimeter));
        if (done == 0)
            painter.begin(&writer);
        else
            writer.newPage();
        paintPage(painter, page, pdfDots / mmPerInch / unitsPerMm);
        if (progress && !progress(++done, static_cast<int>(laid.pages.size())))
            stopped();
    }
    painter.end();
    replaceFile(job.output, bytes.toStdString());
    return {job.output};
}

std::vector<std::string> writePictures(const PaperJob& job, const LaidOut& laid,
                                       const PaperProgress& progress)
{
    const int dots = job.dotsPerInch > 0 ? job.dotsPerInch : usualDots;
    const std::string stem = job.output.substr(0, job.output.size() - 4); // without ".png"
    std::vector<std::string> files;
    for (const auto& page : laid.pages) {
        auto picture = pictureOf(page, dots / mmPerInch);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        picture.save(&buffer, "PNG");
        files.push_back(laid.pages.size() == 1 ? job.output
                                               : stem + "-" + std::to_string(files.size() + 1) + ".png");
        replaceFile(files.back(), bytes.toStdString());
        if (progress && !progress(static_cast<int>(files.size()), static_cast<int>(laid.pages.size())))
            stopped();
    }
    return files;
}

} // namespace

std::unique_ptr<QCoreApplication> drawingApplication(int& argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen"); // paper needs no screen
    qInstallMessageHandler(tellQt);
    return std::make_unique<QGuiApplication>(argc, argv);
}

void needFont(const Language& language)
{
    const std::string code = language.code;
    const auto system = code == "ar"   ? QFontDatabase::Arabic
                        : code == "hi" ? QFontDatabase::Devanagari
                                       : QFontDatabase::Latin;
    if (!QFontDatabase::families(system).isEmpty())
        return;
    throw errorSaying(
        "font-missing",
        {QS_SAY("core", "no font here has the script of %1; install the package %2 and print again"),
         {language.name, language.fontPackage}},
        4);
}

QImage pictureOf(const Page& page, double dotsPerMm)
{
    const double scale = dotsPerMm / unitsPerMm;
    QImage picture(static_cast<int>(std::ceil(page.width * scale)),
                   static_cast<int>(std::ceil(page.height * scale)), QImage::Format_Grayscale8);
    picture.setDotsPerMeterX(static_cast<int>(std::lround(dotsPerMm * 1000.0)));
    picture.setDotsPerMeterY(static_cast<int>(std::lround(dotsPerMm * 1000.0)));
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    paintPage(painter, page, scale);
    return picture;
}

void paintPage(QPainter& painter, const Page& page, double scale)
{
    for (const auto& mark : page.marks)
        paintMark(painter, mark, scale);
}

PaperDrawn drawPapers(const PaperJob& job, const PaperProgress& progress)
{
    needFont(*job.language);
    PaperJob dotted = job;
    const bool pictures = job.output.ends_with(".png");
    if (dotted.dotsPerInch == 0 && pictures)
        dotted.dotsPerInch = usualDots;
    auto laid = layOut(dotted);
    PaperDrawn drawn;
    if (!job.printer.empty())
        printPages(laid, job.printer, progress);
    else
        drawn.files = pictures ? writePictures(job, laid, progress) : writePdf(job, laid, progress);
    drawn.withoutBars = std::move(laid.withoutBars);
    return drawn;
}

} // namespace quarterstep
