// SPDX-License-Identifier: GPL-3.0-or-later
// usage: suggest_bench [--short]
// From the last key on the card to the ranked list painted, on 5,000 lines, beside painting the window once
// and beside the search alone; and the longest that the window was deaf meanwhile. Output and exit as those
// of bench.
#include "tests/bench/loop_turns.hpp"
#include "tests/bench/plan.hpp"

#include "app/desk/desk_window.hpp"
#include "app/desk/theme.hpp"
#include "inventory/text/prescription_table.hpp"

#include <QApplication>
#include <QFile>
#include <QLineEdit>
#include <QListView>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <array>

namespace quarterstep::bench
{

namespace
{

/// Ready-made pairs over powers, centres and colours, as a large programme keeps them.
QByteArray stockOf(std::size_t lines)
{
    QByteArray text("format: quarterstep stock 1\nsite: Large\nlines:\n");
    for (std::size_t n = 0; n < lines; ++n) {
        const double power = -6.0 + 0.25 * static_cast<double>(n % 49);
        const int centres = 56 + 2 * static_cast<int>(n / 49 % 8);
        text +=
            QStringLiteral("  - {line: P%1, kind: ready-made, power: \"%2%3\", centres: %4, centres from: "
                           "measured, heights differ by: 0.00, bin: B%1, on hand: 5}\n")
                .arg(n)
                .arg(power > 0.0 ? QStringLiteral("+") : QString(), QString::number(power, 'f', 2))
                .arg(centres)
                .toUtf8();
    }
    return text;
}

QString eyeWritten(int person, double offset)
{
    const double sphere = -4.0 + 0.25 * (person % 14) - offset; // minus: the sign needs no word
    return QStringLiteral("%1 -0.50 x %2").arg(sphere, 0, 'f', 2).arg(5 + person * 4 % 175);
}

class Desk
{
  public:
    explicit Desk(std::size_t lines)
    {
        QFile file(folder_.filePath(QStringLiteral("stock.yaml")));
        if (!file.open(QIODevice::WriteOnly) || file.write(stockOf(lines)) < 0)
            return;
        file.close();
        window.resize(1366, 768);
        window.show();
        ready = QTest::qWaitForWindowExposed(&window) && window.openCamp(folder_.path());
        list = window.findChild<QListView*>(QStringLiteral("pairsView"));
        camp.emplace(Camp::open(folder_.path().toStdString(), Ledger::Mode::readOnly));
    }

    void fill(int person)
    {
        const std::pair<const char*, QString> fields[] = {
            {"personEdit", QStringLiteral("Q%1").arg(person)},
            {"ageEdit", QStringLiteral("30")},
            {"rightEyeEdit", eyeWritten(person, 0.0)},
            {"leftEyeEdit", eyeWritten(person, 0.25)},
            {"distancePdEdit", QStringLiteral("6%1").arg(person % 5)},
            {"vertexEdit", QStringLiteral("12")}};
        for (const auto& [name, text] : fields)
            field(name)->setText(text);
    }
    void lastKey()
    {
        QTest::keyClick(field("distancePdEdit"), Qt::Key_Return);
        list->viewport()->repaint();
    }
    /// The same search without a window.
    [[nodiscard]] std::size_t searchAlone(int person) const
    {
        PersonRecord record;
        for (const auto& [column, text] : {std::pair<const char*, std::string>{"person", "Q"},
                                           {"age", "30"},
                                           {"right", eyeWritten(person, 0.0).toStdString()},
                                           {"left", eyeWritten(person, 0.25).toStdString()},
                                           {"pd_mm", "6" + std::to_string(person % 5)},
                                           {"vertex_mm", "12"}})
            if (setField(record, column, text))
                return 0;
        MatchOptions options;
        options.candidates.index = &camp->index();
        options.details = true;
        return recommend(record, camp->stock(), camp->rules(), options).front().candidates.ranked.size();
    }

    DeskWindow window;
    QListView* list = nullptr;
    std::optional<Camp> camp;
    bool ready = false;

  private:
    QLineEdit* field(const char* name) { return window.findChild<QLineEdit*>(QLatin1String(name)); }

    QTemporaryDir folder_;
};

/// The event that held the window longest while people were served, processor time.
double longestEventMs(Desk& desk, int people)
{
    double longest = 0.0;
    for (int person = 0; person < people; ++person) {
        desk.fill(person);
        longest = std::max(longest, ownMsOf([&desk] { desk.lastKey(); }));
        settled(longest);
    }
    return longest;
}

} // namespace

int runSuggest(bool shortForm)
{
    Plan plan(shortForm, "suggest/");
    Desk desk(plan.size(5000, 60));
    if (!desk.ready) {
        plan.disagree("the camp of the bench was not opened");
        return plan.run();
    }
    int people = 0;
    plan.measure("suggest/search-alone", 1.0, [&desk, &people] { (void)desk.searchAlone(++people); });
    plan.measure("suggest/last-key-to-list-painted", 1.0, [&desk, &people] {
        desk.fill(++people);
        desk.lastKey();
    });
    if (!shortForm)
        plan.note("longest event, ms: " + QString::number(longestEventMs(desk, 20), 'f', 1).toStdString());
    plan.measure("suggest/paint-the-window", 1.0, [&desk] { (void)desk.window.grab(); });
    plan.keep({"suggest/list-over-painting",
               [](const Medians& medians) {
                   return medians.at("suggest/last-key-to-list-painted") /
                          medians.at("suggest/paint-the-window");
               },
               Bound::atMost, 3.0});
    return plan.run();
}

} // namespace quarterstep::bench

int main(int count, char** words)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, words);
    quarterstep::applyTheme(application, quarterstep::Theme::light);
    return quarterstep::bench::runSuggest(count > 1 && QByteArray(words[1]) == "--short");
}
