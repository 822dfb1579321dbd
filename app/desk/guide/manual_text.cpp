// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/guide/manual_text.hpp"

#include <QImage>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextCursor>

namespace quarterstep
{

namespace
{
constexpr int besidePicture = 24; ///< margins of the page, pixels

/// The words of a picture, for who points at it.
void tellPictures(QTextDocument& document)
{
    QTextCursor cursor(&document);
    for (auto block = document.begin(); block.isValid(); block = block.next())
        for (auto part = block.begin(); !part.atEnd(); ++part) {
            const auto fragment = part.fragment();
            auto format = fragment.charFormat();
            const auto words = format.stringProperty(QTextFormat::ImageAltText);
            if (!format.isImageFormat() || words.isEmpty() || format.toolTip() == words)
                continue;
            cursor.setPosition(fragment.position());
            cursor.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor, fragment.length());
            format.setToolTip(words);
            cursor.setCharFormat(format);
            return tellPictures(document); // the edit ends what `part` walks over
        }
}
} // namespace

ManualText::ManualText(QWidget* parent) : QTextBrowser(parent)
{
    setOpenLinks(false);
}

void ManualText::showPage(const QString& markdown)
{
    markdown_ = markdown;
    layOut();
    verticalScrollBar()->setValue(0);
}

void ManualText::layOut()
{
    laidOutFor_ = viewport()->width();
    document()->setDefaultFont(font());
    setMarkdown(markdown_);
    tellPictures(*document());
}

QVariant ManualText::loadResource(int type, const QUrl& name)
{
    if (type != QTextDocument::ImageResource || !name.scheme().isEmpty())
        return {}; // nothing is fetched from anywhere
    QImage picture(QStringLiteral(":/manual/") + name.path());
    const int most = qMax(laidOutFor_ - besidePicture, 1);
    const double ratio = devicePixelRatioF();
    if (picture.width() > qRound(most * ratio))
        picture = picture.scaledToWidth(qRound(most * ratio), Qt::SmoothTransformation);
    picture.setDevicePixelRatio(ratio);
    return picture;
}

/// Text flows by itself; pictures are made anew for the width.
void ManualText::resizeEvent(QResizeEvent* event)
{
    QTextBrowser::resizeEvent(event);
    if (laidOutFor_ == viewport()->width() || !markdown_.contains(QLatin1String("![")))
        return;
    const double part = verticalScrollBar()->maximum() > 0
                            ? double(verticalScrollBar()->value()) / verticalScrollBar()->maximum()
                            : 0.0;
    layOut();
    verticalScrollBar()->setValue(qRound(part * verticalScrollBar()->maximum()));
}

} // namespace quarterstep
