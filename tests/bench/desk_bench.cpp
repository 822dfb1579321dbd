// SPDX-License-Identifier: GPL-3.0-or-later
// The start of the desk beside that of an empty window, tables of 100,000 rows, and how long the window is
// held at a stretch. Prints as `bench` does. usage: desk_bench EMPTY_WINDOW [--short] [starting] [scrolling]
// [bringing] [working]; with "child frame|ready FOLDER" it is the desk that is started: from the shell's
// point of view the same program, which says when its first frame is painted, or the camp can be worked with
// and is painted, and leaves; "child read FOLDER" reads the camp's files once and says how long.
#include "app/desk/desk_program.hpp"
#include "app/desk/desk_window.hpp"
#include "app/desk/lasting/frame_watch.hpp"
#include "app/desk/models/lines_model.hpp"
#include "app/desk/theme.hpp"
#include "app/session/camp.hpp"
#include "tests/bench/desk_bringing.hpp"
#include "tests/bench/desk_camp.hpp"
#include "tests/bench/desk_frames.hpp"
#include "tests/bench/painted_when.hpp"

#include <QApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QScrollBar>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <cstdlib>
#include <iostream>

using namespace quarterstep;

namespace
{
constexpr double nanosecondsPerMs = 1e6;

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// Of starts, one in four was as quick or quicker: what else the machine does makes them slower only, and
/// most those that use both its processors.
double quick(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 4];
}

double msOf(const std::function<void()>& work)
{
    QElapsedTimer timer;
    timer.start();
    work();
    return static_cast<double>(timer.nsecsElapsed()) / nanosecondsPerMs;
}

/// From the start of a program until it was painted.
double msToPaint(const QString& program, const QStringList& words)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    const auto begun = steadyNow();
    process.start(program, words);
    bool said = false;
    const bool left = process.waitForFinished(60'000) && process.exitCode() == 0;
    const auto painted = process.readAllStandardOutput().trimmed().toLongLong(&said);
    if (!left || !said) {
        std::cerr << program.toStdString() << " did not start, paint and leave\n";
        std::exit(1);
    }
    return static_cast<double>(painted - begun) / nanosecondsPerMs;
}

/// Of one read in a program of its own, as a start of the desk has it: the first there, without the start of
/// the program. Reading again and again in one program takes a quarter less.
double msOfFirstRead(const QString& program, const QString& folder)
{
    QProcess process;
    process.start(program, {QStringLiteral("child"), QStringLiteral("read"), folder});
    process.waitForFinished(60'000);
    return process.readAllStandardOutput().trimmed().toDouble();
}

int readOnce(const QString& folder)
{
    std::cout << msOf([&] { const auto files = readCampFiles(folder.toStdString()); }) << std::endl;
    return 0;
}

/// Leaves once the window was painted after `wanted`.
class LeavesWhenPainted final : public QObject
{
  public:
    explicit LeavesWhenPainted(bool wanted) : wanted_(wanted) {}
    void want() { wanted_ = true; }

  protected:
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (wanted_ && event->type() == QEvent::Paint)
            QTimer::singleShot(0, qApp, saidWhenPainted);
        return false;
    }

  private:
    bool wanted_;
};

int beTheDesk(int count, char** words)
{
    const QLatin1String when(words[2]);
    DeskOptions options;
    options.folder = QString::fromLocal8Bit(words[3]);
    auto early = readAhead(options);
    QApplication application(count, words);
    DeskProgram program(application, options, std::move(early));
    LeavesWhenPainted leaves(when == QLatin1String("frame"));
    QObject::connect(&program.frame(), &DeskWindow::campOpened, &leaves, [&](bool opened) {
        if (!opened)
            std::exit(1);
        leaves.want(); // the camp's name at the least is to be painted
    });
    program.begin();
    program.frame().installEventFilter(
        &leaves); // asked before the program's own: it leaves before parts are made
    return QApplication::exec();
}

bool judged(const char* name, double value, double most)
{
    std::cout << "ratio " << name << ' ' << value << " at-most " << most << std::endl;
    return value <= most;
}

bool start(const QString& empty, bool inShort)
{
    const QTemporaryDir place;
    const auto folder = place.filePath(QStringLiteral("camp"));
    makeCamp(folder, inShort ? 100 : 5000);
    const auto self = QCoreApplication::applicationFilePath();
    std::vector<double> windows, frames, readies, reads;
    for (int round = 0; round < (inShort ? 1 : 21);
         ++round) { // interleaved, so that a busy machine moves all alike
        windows.push_back(msToPaint(empty, {}));
        frames.push_back(msToPaint(self, {QStringLiteral("child"), QStringLiteral("frame"), folder}));
        readies.push_back(msToPaint(self, {QStringLiteral("child"), QStringLiteral("ready"), folder}));
        reads.push_back(msOfFirstRead(self, folder));
    }
    const double window = quick(windows);
    const double read = quick(reads);
    std::cout << "time desk/empty_window " << window << " ms\ntime desk/first_frame " << quick(frames)
              << " ms\ntime desk/ready " << quick(readies) << " ms\ntime desk/yaml_read " << read << " ms\n";
    const bool frame = judged("desk/first_frame_over_empty_window", quick(frames) / window, 2.0);
    const bool ready =
        judged("desk/ready_over_two_windows_and_a_read", quick(readies) / (2.0 * window + read), 1.0);
    return inShort || (frame && ready);
}

/// Median and longest ms of a step of scrolling through a table of that many rows, painted.
std::pair<double, double> scrolled(int rows, int steps)
{
    LinesModel model;
    std::vector<StockLine> lines(static_cast<std::size_t>(rows));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        lines[i].name = "N+200-" + std::to_string(i);
        lines[i].bin = "A" + std::to_string(i);
        lines[i].onHand = static_cast<int>(i % 17);
    }
    model.show(std::move(lines), {});
    QTableView view;
    view.setModel(&model);
    view.resize(800, 600);
    view.show();
    QApplication::processEvents();
    std::vector<double> took;
    for (int step = 1; step <= steps; ++step)
        took.push_back(msOf([&] {
            view.verticalScrollBar()->setValue(view.verticalScrollBar()->maximum() / steps * step);
            view.viewport()->repaint();
        }));
    return {median(took), *std::max_element(took.begin(), took.end())};
}

bool scroll(bool inShort)
{
    const int steps = inShort ? 3 : 200;
    const auto few = scrolled(1000, steps);
    const auto many = scrolled(inShort ? 1000 : 100'000, steps);
    std::cout << "time desk/scroll_1000_rows " << few.first << " ms\ntime desk/scroll_100000_rows "
              << many.first << " ms\nnote longest of " << steps
              << " steps through 100,000 rows: " << many.second << " ms, "
              << "a frame may take " << longestFrameMs << " ms\n";
    return judged("desk/scroll_100000_over_1000_rows", many.first / few.first, 2.0) || inShort;
}
} // namespace

int main(int count, char** words)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir home;
    const bool child = count == 4 && QLatin1String(words[1]) == QLatin1String("child");
    if (!child)
        for (const auto* place : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_RUNTIME_DIR"})
            qputenv(place, home.filePath(QLatin1String(place)).toUtf8());
    if (child && QLatin1String(words[2]) != QLatin1String("read"))
        return beTheDesk(count, words);
    QApplication application(count, words);
    const auto arguments = QCoreApplication::arguments();
    if (child)
        return readOnce(arguments[3]);
    if (count < 2) {
        std::cerr << "usage: desk_bench EMPTY_WINDOW [--short] [starting] [scrolling] [bringing] [working]\n";
        return 2;
    }
    const bool inShort = arguments.contains(QStringLiteral("--short"));
    const bool all = arguments.size() == (inShort ? 3 : 2);
    const auto wanted = [&](const char* part) { return all || arguments.contains(QLatin1String(part)); };
    bool kept = true;
    if (wanted("starting"))
        kept = start(arguments[1], inShort) && kept;
    if (wanted("scrolling"))
        kept = scroll(inShort) && kept;
    applyTheme(*qApp, Theme::light); // as the program does: parts are laid out by its style
    if (wanted("bringing"))
        kept = bringsInFluently(inShort) && kept;
    if (wanted("working"))
        kept = worksFluently(inShort) && kept;
    return kept ? 0 : 1;
}
