// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/render/printer.hpp"

#include "app/paper/render/render.hpp"
#include "core/finding.hpp"

#include <QPageSize>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>

namespace quarterstep
{
namespace
{

constexpr double mmPerInch = 25.4;

Error noPrinter(const std::string& printer)
{
    std::string names;
    for (const auto& name : QPrinterInfo::availablePrinterNames())
        names += (names.empty() ? "" : ", ") + name.toStdString();
    if (names.empty())
        return errorSaying("printer-missing",
                           {QS_SAY("core", "there is no printer %1, and no other is set up here; write a PDF "
                                           "with --output and print it where there is one"),
                            {printer}},
                           4);
    return errorSaying("printer-missing",
                       {QS_SAY("core", "there is no printer %1; there are %2"), {printer, names}}, 4);
}

} // namespace

std::vector<std::string> printersHere()
{
    std::vector<std::string> names;
    for (const auto& name : QPrinterInfo::availablePrinterNames())
        names.push_back(name.toStdString());
    return names;
}

void printPages(const LaidOut& laid, const std::string& printer, const PaperProgress& progress)
{
    const auto info = QPrinterInfo::printerInfo(QString::fromStdString(printer));
    if (info.isNull())
        throw noPrinter(printer);
    QPrinter device(info, QPrinter::HighResolution);
    device.setFullPage(true);
    QPainter painter;
    int done = 0;
    for (const auto& page : laid.pages) {
        device.setPageSize(QPageSize(QSizeF(page.width, page.height) / unitsPerMm, QPageSize::Millimeter));
        const bool begun = done == 0 ? painter.begin(&device) : device.newPage();
        if (!begun)
            throw errorSaying("printer-failed",
                              {QS_SAY("core", "the printer %1 does not take the paper"), {printer}}, 4);
        paintPage(painter, page, device.resolution() / mmPerInch / unitsPerMm);
        if (progress && !progress(++done, static_cast<int>(laid.pages.size()))) {
            device.abort();
            throw errorSaying("paper-stopped", {QS_SAY("core", "printing was stopped"), {}}, 4);
        }
    }
}

} // namespace quarterstep
