// SPDX-License-Identifier: GPL-3.0-or-later
// The peer of the desk's start: an empty window of the same library. It is shown, painted once, says when,
// and is gone.
#include "tests/bench/painted_when.hpp"

#include <QApplication>
#include <QMainWindow>
#include <QTimer>

namespace
{
class Painted final : public QMainWindow
{
  protected:
    void paintEvent(QPaintEvent* event) override
    {
        QMainWindow::paintEvent(event);
        QTimer::singleShot(0, qApp, saidWhenPainted);
    }
};
} // namespace

int main(int count, char** words)
{
    QApplication application(count, words);
    Painted window;
    window.resize(1366, 768);
    window.show();
    return QApplication::exec();
}
