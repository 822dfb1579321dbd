// SPDX-License-Identifier: GPL-3.0-or-later
// A page of the manual: its Markdown, and its pictures from the program's own resources, never wider than the
// page.
#pragma once

#include <QTextBrowser>

#include <deque>

class QTimer;

namespace quarterstep
{

class ManualText final : public QTextBrowser
{
    Q_OBJECT

  public:
    explicit ManualText(QWidget* parent = nullptr);

    /// Shows a page from its beginning. Pictures are named as in the files: "pictures/stock.png".
    void showPage(const QString& markdown);
    /// Pictures have yet to come.
    [[nodiscard]] bool awaitsPictures() const { return !awaited_.empty(); }

    /// The place of a picture at the width of the page, or smaller; what its words say stands in its tooltip.
    /// The pictures come one by one while the page is read already.
    QVariant loadResource(int type, const QUrl& name) override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void layOut();
    void bringPicture();
    [[nodiscard]] int mostPixels() const;

    QTimer* next_;                ///< picture, when nothing else is to be done
    std::deque<QString> awaited_; ///< pictures whose place is empty
    QString markdown_;
    QTextDocument* page_ = nullptr;
    int laidOutFor_ = 0; ///< width of the page, pixels
};

} // namespace quarterstep
