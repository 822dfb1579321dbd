// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/guide/manual_text.hpp"

#include <QImage>
#include <QImageReader>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextCursor>
#include <QTimer>

#include <utility>

namespace quarterstep
{

namespace
{
constexpr int besidePicture = 24; ///< margins of the page, pixels

QString fileOf(const QString& name)
{
    return QStringLiteral(":/manual/") + name;
}

/// The words of a picture, for who points at it.
void tellPictures(QTextDocument& document)
{
    QList<std::pair<QTextCursor, QTextCharFormat>> told; // an edit ends what `part` walks over
    for (auto block = document.begin(); block.isValid(); block = block.next())
        for (auto part = block.begin(); !part.atEnd(); ++part) {
            const auto fragment = part.fragment();
            auto format = fragment.charFormat();
            const auto words = format.stringProperty(QTextFormat::ImageAltText);
            if (!format.isImageFormat() || words.isEmpty())
                continue;
            format.setToolTip(words);
            QTextCursor cursor(&document);
            cursor.setPosition(fragment.position());
            cursor.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor, fragment.length());
            told.emplace_back(cursor, format);
        }
    QTextCursor once(&document); // laid out once for all
    once.beginEditBlock();
    for (auto& [cursor, format] : told)
        cursor.setCharFormat(format);
    once.endEditBlock();
}

/// Of a picture of the manual, at most as wide as that.
QImage pictureOf(const QString& name, int most)
{
    QImage picture(fileOf(name));
    return picture.width() > most ? picture.scaledToWidth(most, Qt::SmoothTransformation) : picture;
}

/// As large, with nothing in it: its file says so at its beginning.
QImage placeOf(const QString& name, int most)
{
    auto size = QImageReader(fileOf(name)).size();
    if (!size.isValid())
        return {};
    if (size.width() > most)
        size = {most, qMax(1, qRound(double(size.height()) * most / size.width()))};
    QImage place(size, QImage::Format_Alpha8);
    place.fill(0);
    return place;
}
} // namespace

ManualText::ManualText(QWidget* parent) : QTextBrowser(parent), next_(new QTimer(this))
{
    setOpenLinks(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // one that comes takes width from a page just laid out
    next_->setSingleShot(true);
    connect(next_, &QTimer::timeout, this, &ManualText::bringPicture);
}

void ManualText::showPage(const QString& markdown)
{
    markdown_ = markdown;
    layOut();
    verticalScrollBar()->setValue(0);
}

/// Read before it is shown: a document that is shown is laid out anew with every paragraph and every cell
/// that comes, which takes more than a second for a page of tables.
void ManualText::layOut()
{
    laidOutFor_ = viewport()->width();
    awaited_.clear();
    auto* page = new QTextDocument(this);
    page->setUndoRedoEnabled(false);
    page->setDefaultFont(font());
    page->setDefaultTextOption(document()->defaultTextOption());
    page->setMarkdown(markdown_);
    tellPictures(*page);
    page->setTextWidth(laidOutFor_); // or the page is scrolled as if its paragraphs were one line each
    auto* before = std::exchange(page_, page);
    setDocument(page);
    delete before;
}

QVariant ManualText::loadResource(int type, const QUrl& name)
{
    if (type != QTextDocument::ImageResource || !name.scheme().isEmpty())
        return {}; // nothing is fetched from anywhere
    auto place = placeOf(name.path(), mostPixels());
    place.setDevicePixelRatio(devicePixelRatioF());
    awaited_.push_back(name.path());
    next_->start();
    return place;
}

/// Of the screen, not of the page.
int ManualText::mostPixels() const
{
    return qRound(qMax(laidOutFor_ - besidePicture, 1) * devicePixelRatioF());
}

void ManualText::bringPicture()
{
    if (awaited_.empty())
        return;
    auto picture = pictureOf(awaited_.front(), mostPixels());
    picture.setDevicePixelRatio(devicePixelRatioF());
    document()->addResource(QTextDocument::ImageResource, QUrl(awaited_.front()), picture);
    awaited_.pop_front();
    viewport()->update();
    if (!awaited_.empty())
        next_->start();
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
