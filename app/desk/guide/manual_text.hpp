// SPDX-License-Identifier: GPL-3.0-or-later
// A page of the manual: its Markdown, and its pictures from the program's own resources, never wider than the
// page.
#pragma once

#include <QTextBrowser>

namespace quarterstep
{

class ManualText final : public QTextBrowser
{
    Q_OBJECT

  public:
    explicit ManualText(QWidget* parent = nullptr);

    /// Shows a page from its beginning. Pictures are named as in the files: "pictures/stock.png".
    void showPage(const QString& markdown);

    /// A picture at the width of the page, or smaller; what its words say stands in its tooltip.
    QVariant loadResource(int type, const QUrl& name) override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void layOut();

    QString markdown_;
    int laidOutFor_ = 0; ///< width of the page, pixels
};

} // namespace quarterstep
