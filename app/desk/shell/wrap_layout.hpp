// SPDX-License-Identifier: GPL-3.0-or-later
// A row that goes on in the next line where the window is narrow or the letters are large: nothing is cut.
#pragma once

#include <QLayout>
#include <QList>

namespace quarterstep
{

class WrapLayout final : public QLayout
{
    Q_OBJECT

  public:
    explicit WrapLayout(QWidget* parent = nullptr) : QLayout(parent) {}
    ~WrapLayout() override;

    /// Whatever is added from now on stands at the far end of its line.
    void endHere() { trailing_ = count(); }
    /// What was added last is not essential: it is left out where it would begin a second line, those named
    /// first going first. Where all of them would not help, all are shown.
    void mayGo() { mayGo_.append(count() - 1); }

    void addItem(QLayoutItem* item) override { items_.append(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& area) override;

  private:
    struct Line {
        QList<int> items;
        int width = 0;
        int height = 0;
    };
    [[nodiscard]] QList<Line> linesIn(int width) const;
    [[nodiscard]] QList<Line> linesWithout(qsizetype gone, int width) const;
    [[nodiscard]] bool shown(int index) const;

    QList<QLayoutItem*> items_;
    QList<int> mayGo_;
    int trailing_ = -1;
};

} // namespace quarterstep
