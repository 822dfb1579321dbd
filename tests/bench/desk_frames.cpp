// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window is held at a stretch by what a day brings, in processor time of its own thread.
#include "tests/bench/desk_frames.hpp"

#include "app/desk/desk_window.hpp"
#include "app/desk/lasting/frame_watch.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/audit_place.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/places/packing_panel.hpp"
#include "app/desk/places/stock_place.hpp"
#include "tests/bench/desk_camp.hpp"
#include "tests/bench/loop_turns.hpp"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>

#include <algorithm>
#include <iostream>
#include <map>

namespace quarterstep
{

namespace
{
constexpr int restMs = 2000; ///< by then everything is made that the window makes by itself

using Ms = std::map<std::string, double>; ///< the longest turn, by step

/// One day, every step watched.
class Day
{
  public:
    Day(DeskWindow& window, Ms& took, int pauseMs) : window_(window), took_(took), pauseMs_(pauseMs) {}

    bool opens(const QString& folder)
    {
        bool told = false;
        QObject::connect(&window_, &DeskWindow::campOpened, &window_,
                         [&told](bool opened) { told = opened; });
        return step(
            "opening_the_camp", [&] { window_.openCampLater(folder); }, [&told] { return told; });
    }
    bool servesPeople(int first)
    {
        const auto code = [first](int n) { return QStringLiteral("D-%1").arg(1000 + first + n); };
        return step("suggesting", [&] { window_.choosePerson(code(0)); }) &&
               step("suggesting_for_two_purposes", [&] { window_.choosePerson(code(2)); }) &&
               step("choosing_another_pair", [this] { choose("pairsView", 1); }) &&
               step("suggesting_again", [&] { window_.choosePerson(code(1)); }) && handsOver();
    }
    bool plansTheLine()
    {
        auto& line = part<LinePanel>("linePanel");
        const auto planned = [&line] { return !line.isPlanning(); };
        return step("the_line_in_sight",
                    [this] { window_.dispense().showPeoplePage(DispensePlace::linePage); }) &&
               step(
                   "planning_the_line", [this] { press("lineAllButton"); }, planned) &&
               holds("people stand in the line",
                     part<QAbstractItemView>("lineView").model()->rowCount() > 1) &&
               step(
                   "planning_again", [this] { press("linePlanButton"); }, planned) &&
               step("choosing_in_the_line", [this] { choose("lineView", 5); }) &&
               step(
                   "promising", [this] { press("linePromiseButton"); }, planned);
    }
    bool looksAtTheStock()
    {
        return step("stock_shown_first", [this] { window_.showPlace(DeskWindow::Place::stock); }) &&
               step("choosing_a_line", [this] { choose("linesView", 100); }) &&
               step("filtering_lines",
                    [this] { part<QLineEdit>("linesFilter").setText(QStringLiteral("+2")); }) &&
               step("all_lines_again", [this] { part<QLineEdit>("linesFilter").clear(); }) &&
               step("ladder_shown_first", [this] { press("linesAsLadder"); }) &&
               step("box_shown_first", [this] { press("linesAsBox"); }) &&
               step("transfers_shown_first", [this] { press("stockTransfers"); });
    }
    bool packs()
    {
        auto& panel = window_.stock().packingPanel();
        const auto done = [this] { return !window_.work().running(); };
        return step("packing_shown_first", [this] { press("stockPacking"); }) &&
               step(
                   "packing", [&panel] { panel.makePlan(); }, done) &&
               holds("the boxes are planned", panel.plan() != nullptr) && step("packing_lists", [&panel] {
                   panel.showList(static_cast<int>(PackingPanel::List::boxes));
               });
    }
    bool audits()
    {
        bool ended = false;
        const auto done = [&ended] { return ended; };
        return step(
                   "audit_shown_first",
                   [&] {
                       QObject::connect(&window_.audit(), &AuditPlace::auditEnded, &window_,
                                        [&ended] { ended = true; });
                       window_.showPlace(DeskWindow::Place::audit);
                   },
                   done) &&
               holds("something is found", part<QAbstractItemView>("findingsView").model()->rowCount() > 0) &&
               step("choosing_a_finding", [this] { choose("findingsView", 1); }) &&
               step("charts_shown_first", [this] { press("findingsAsCharts"); }) && showsCharts() &&
               step("bench_shown_first", [this] { press("findingsAsBench"); });
    }
    bool looksAround()
    {
        return step("dispense_again", [this] { window_.showPlace(DeskWindow::Place::dispense); }) &&
               step("stock_again", [this] { window_.showPlace(DeskWindow::Place::stock); }) &&
               step("settings_shown_first", [this] { window_.showSettings(); }) &&
               step("help_shown_first", [this] { window_.showHelp(); });
    }
    bool readsTheManual()
    {
        auto& topics = part<QListWidget>("helpTopics");
        bool well = true;
        for (int row = 0; well && row < topics.count(); ++row)
            well = step("another_page_of_help", [&topics, row] { topics.setCurrentRow(row); });
        return well;
    }
    /// What the window does of itself while nobody works with it.
    bool rests()
    {
        return step(
            "nobody_works", [] {}, {}, restMs);
    }
    /// Before the window had the time to make them.
    bool goesThereAtOnce()
    {
        return step("stock_shown_at_once", [this] { window_.showPlace(DeskWindow::Place::stock); }) &&
               step("audit_shown_at_once", [this] { window_.showPlace(DeskWindow::Place::audit); });
    }
    bool readsTheBench()
    {
        return step(
            "bench_shown_first", [this] { press("findingsAsBench"); },
            [this] { return !window_.work().running(); });
    }
    bool asksForKeys()
    {
        return step("keys_shown_first", [this] { window_.showKeys(); });
    }

  private:
    bool handsOver()
    {
        return step("handing_over", [this] { press("handOverButton"); }) &&
               holds("a pair is handed over", part<QPushButton>("undoButton").isEnabled()) &&
               step("taking_back", [this] { press("undoButton"); });
    }
    bool showsCharts()
    {
        auto& kinds = part<QComboBox>("chartKindBox");
        bool well = true;
        for (int kind = 1; well && kind < kinds.count(); ++kind)
            well = step("another_chart", [&kinds, kind] { kinds.setCurrentIndex(kind); });
        return well;
    }
    template <class Widget>
    Widget& part(const char* name)
    {
        auto* found = window_.findChild<Widget*>(QLatin1String(name));
        if (!found) {
            std::cerr << "the window has no " << name << '\n';
            std::exit(1);
        }
        return *found;
    }
    bool holds(const char* what, bool well)
    {
        if (!well)
            std::cerr << "not so: " << what << "; " << window_.messages().text().toStdString() << '\n';
        return well;
    }
    void press(const char* name) { part<QPushButton>(name).click(); }
    void choose(const char* name, int row)
    {
        auto& view = part<QAbstractItemView>(name);
        const int last = view.model()->rowCount() - 1;
        view.setCurrentIndex(view.model()->index(std::min(row, last), 0));
    }
    bool step(const char* name, const std::function<void()>& begin, const std::function<bool()>& ended = {})
    {
        return step(name, begin, ended, pauseMs_);
    }
    bool step(const char* name, const std::function<void()>& begin, const std::function<bool()>& ended,
              int pauseMs)
    {
        FrameWatch
            watch; // by the clock: waiting for the disk, for locks, for other threads, and for a busy machine
        double longest = ownMsOf(begin);
        const bool done = !ended || waitedFor(ended, longest);
        settled(longest, pauseMs);
        took_[name] = std::max(took_[name], longest);
        if (const double away = watch.longestMs(); away > longestFrameMs)
            std::cout << "note desk/" << name << ": away " << away << " ms by the clock" << std::endl;
        if (!done)
            std::cerr << "the desk did not come to the end of " << name << '\n';
        return done;
    }

    DeskWindow& window_;
    Ms& took_;
    int pauseMs_;
};

/// The window as the program makes it: its parts come once it is painted, which the start of the desk is
/// judged by.
struct Window {
    Window()
    {
        desk.resize(1366, 768);
        desk.show();
        desk.build(true);
        double uncounted = 0.0;
        settled(uncounted, 20);
    }
    DeskWindow desk{DeskWindow::Parts::later};
};

bool aDay(const QString& folder, int served, Ms& took, int pauseMs)
{
    Window window;
    Day day(window.desk, took, pauseMs);
    return day.opens(folder) && day.servesPeople(served) && day.plansTheLine() && day.looksAtTheStock() &&
           day.packs() && day.audits() && day.looksAround() && day.readsTheManual();
}

bool atOnce(const QString& folder, Ms& took)
{
    Window window;
    Day day(window.desk, took, 20);
    return day.opens(folder) && day.goesThereAtOnce();
}

/// What is read of a ledger is read of a long one, too.
bool aSeason(const QString& folder, bool inShort, Ms& took)
{
    const int served = inShort ? 5 : 200;
    makeCamp(folder, inShort ? 2000 : 5000);
    makeDay(folder, served, 40);
    makeSeason(folder, inShort ? 1100 : 20'000); // longer than what is read at once
    Window window;
    Day day(window.desk, took, 20);
    return day.opens(folder) && day.goesThereAtOnce() && day.readsTheBench() && day.servesPeople(served) &&
           day.looksAtTheStock();
}

/// Every place is made for the sheet of keys.
bool keysFirst(const QString& folder, Ms& took, int pauseMs)
{
    Window window;
    Day day(window.desk, took, pauseMs);
    return day.opens(folder) && day.rests() && day.asksForKeys();
}
} // namespace

bool worksFluently(bool inShort)
{
    const QTemporaryDir place;
    const int served = inShort ? 5 : 200;
    const int pauseMs = inShort ? 20 : aPauseMs;
    constexpr int waiting = 40;
    std::map<std::string, std::vector<double>> rounds;
    for (int round = 0; round < (inShort ? 1 : 3); ++round) { // what is made once is made in each anew
        const auto folder = place.filePath(QStringLiteral("day-%1").arg(round));
        makeCamp(folder, inShort ? 2000 : 5000);
        makeDay(folder, served, waiting);
        Ms took;
        if (!aDay(folder, served, took, pauseMs) || !atOnce(folder, took) ||
            !keysFirst(folder, took, pauseMs))
            return false;
        for (const auto& [name, ms] : took)
            rounds[name].push_back(ms);
    }
    Ms season;
    if (!aSeason(place.filePath(QStringLiteral("season")), inShort, season))
        return false;
    for (const auto& [name, ms] : season)
        rounds["season_" + name].push_back(ms);
    bool fluent = true;
    for (auto& [name, ms] : rounds) {
        std::sort(ms.begin(), ms.end());
        const double ratio = ms[ms.size() / 2] / longestFrameMs;
        fluent = fluent && ratio <= 1.0;
        std::cout << "ratio desk/longest_turn_over_a_frame/" << name << ' ' << ratio << " at-most 1"
                  << std::endl;
    }
    return inShort || fluent;
}

} // namespace quarterstep
