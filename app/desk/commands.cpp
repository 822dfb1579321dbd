// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/commands.hpp"

#include "app/desk/message_bar.hpp"
#include "app/session/camp.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QStringList>

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
} // namespace

bool runCommand(MessageBar& messages, const std::function<void()>& command)
{
    try {
        command();
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
