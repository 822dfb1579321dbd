// SPDX-License-Identifier: GPL-3.0-or-later
// Papers drawn: into a PDF, into pictures, on a printer, or into an image for a preview.
#pragma once

#include "app/paper/content/paper_job.hpp"

#include <memory>

class QCoreApplication;
class QImage;
class QPainter;

namespace quarterstep
{

struct Page;

/// What a program that draws needs before anything else; no screen is asked for.
[[nodiscard]] std::unique_ptr<QCoreApplication> drawingApplication(int& argc, char** argv);

/// Throws Error font-missing (4) that names the package, when no font here has the script of the language.
void needFont(const Language& language);

/// Draws the job. Files are replaced as a whole; a picture
/// has a file a page, NAME-1.png and so on when there are several. Throws Error: font-missing,
/// printer-missing, paper-stopped (4), label-too-small (3), and what replacing a file throws.
PaperDrawn drawPapers(const PaperJob& job, const PaperProgress& progress);

/// One page as a picture, for a preview. `dotsPerMm` of the picture.
[[nodiscard]] QImage pictureOf(const Page& page, double dotsPerMm);
/// Paints a page; one unit of the page is `scale` units of the painter.
void paintPage(QPainter& painter, const Page& page, double scale);

} // namespace quarterstep
