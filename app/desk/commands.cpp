// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/commands.hpp"

#include "app/desk/message_bar.hpp"
#include "app/session/camp.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QKeyEvent>
#include <QStringList>
#include <QTimer>

#include <optional>

namespace quarterstep
{

namespace
{
constexpr std::size_t mostFindingsShown = 6;

QString allOf(const std::vector<Finding>& findings)
{
    QStringList lines;
    for (const auto& finding : findings)
        if (static_cast<std::size_t>(lines.size()) < mostFindingsShown)
            lines << say(finding);
    const auto more = static_cast<int>(findings.size() - static_cast<std::size_t>(lines.size()));
    if (more > 0)
        lines << QCoreApplication::translate("Commands", "and %n more", nullptr, more);
    return lines.join(QLatin1Char('\n'));
}

constexpr int busyAtMostMs = 10'000; ///< then the work is given up, told, and can be done again
constexpr int busyStepMs = 100;

/// While a command waits for the ledger, keys and clicks are not taken, except Escape, which gives it up: the
/// window paints and answers, and nothing is done twice.
class BusyGuard final : public QObject
{
  public:
    BusyGuard() { qApp->installEventFilter(this); }
    [[nodiscard]] bool givenUp() const { return givenUp_; }

  protected:
    bool eventFilter(QObject*, QEvent* event) override
    {
        switch (event->type()) {
        case QEvent::KeyPress:
        case QEvent::ShortcutOverride:
            givenUp_ = givenUp_ || static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
            return true;
        case QEvent::KeyRelease:
        case QEvent::Shortcut:
        case QEvent::MouseButtonPress:
        case QEvent::MouseButtonRelease:
        case QEvent::MouseButtonDblClick:
        case QEvent::Close:
            return true;
        default:
            return false;
        }
    }

  private:
    bool givenUp_ = false;
};

/// Runs it, and again while another program writes in the ledger. A locked ledger means that nothing was
/// written.
void runPatiently(MessageBar& messages, const std::function<void()>& command)
{
    std::optional<BusyGuard> guard;
    QElapsedTimer waited;
    waited.start();
    for (;;) {
        try {
            command();
            if (guard)
                messages.dismissWaiting();
            return;
        } catch (const Error& problem) {
            if (problem.finding().code != "ledger-locked" || waited.elapsed() > busyAtMostMs ||
                (guard && guard->givenUp()))
                throw;
        }
        if (!guard) {
            guard.emplace();
            messages.showWaiting(QCoreApplication::translate(
                "Commands",
                "Another program is writing in the ledger. Trying again; Escape gives up. Nothing "
                "is lost."));
        }
        QEventLoop pause;
        QTimer::singleShot(busyStepMs, &pause, &QEventLoop::quit);
        pause.exec();
    }
}
} // namespace

bool runCommand(MessageBar& messages, const std::function<void()>& command)
{
    try {
        runPatiently(messages, command);
        return true;
    } catch (const CampNotOpened& problem) {
        const auto& findings = problem.findings();
        messages.showError(findings.empty() ? say(problem.finding()) : allOf(findings),
                           QString::fromStdString(problem.finding().code));
    } catch (const Error& problem) {
        messages.showError(say(problem.finding()), QString::fromStdString(problem.finding().code));
    } catch (const std::exception& problem) {
        messages.showError(QCoreApplication::translate(
                               "Commands", "The program met something it does not know: %1. Nothing was "
                                           "written; close the program and open the folder again.")
                               .arg(QString::fromLocal8Bit(problem.what())),
                           QStringLiteral("unexpected"));
    }
    return false;
}

} // namespace quarterstep
