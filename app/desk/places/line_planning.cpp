// SPDX-License-Identifier: GPL-3.0-or-later
// The worker of the waiting line: what it is given, how it is stopped, and what is done with its answer.
#include "app/desk/places/line_panel.hpp"

#include "app/desk/message_bar.hpp"
#include "app/desk/models/line_model.hpp"
#include "app/session/wording.hpp"

#include <QTableView>
#include <QThread>

namespace quarterstep
{

/// One run of the worker: a copy of the line, who comes to it, and what came of it.
struct LinePanel::Planned {
    WaitingLine line;
    std::vector<PersonRecord> coming;
    std::set<std::pair<std::string, Purpose>> left;
    std::vector<Told> told;
    std::uint64_t from = 0; ///< version of the line that was copied
    LineAnswer answer;
    std::optional<Finding> problem;
};

/// Waits for the worker, if there is one, and forgets what it found.
void LinePanel::stop()
{
    if (!thread_)
        return;
    cancelled_ = true;
    thread_->disconnect(this);
    thread_->wait();
    thread_.reset();
}

/// On a copy, off the window's thread. What changes meanwhile is planned after it.
void LinePanel::plan()
{
    if (!camp_)
        return;
    if (thread_) {
        again_ = true;
        cancelled_ = true;
        return;
    }
    again_ = false;
    cancelled_ = false;
    auto work =
        std::make_shared<Planned>(Planned{line(), coming_, left_, comingTold_, line().version(), {}, {}});
    thread_.reset(QThread::create([this, work] {
        try {
            Job job;
            job.cancelled = &cancelled_;
            work->line.addAll(work->coming, job);
            for (const auto& person : work->coming) // who came for two and has one waits for the other
                for (const auto& [code, purpose] : work->left)
                    if (code == person.person)
                        work->line.remove(code, purpose);
            (void)work->line.restore(work->told);
            work->answer = work->line.plan(job);
        } catch (const Error& problem) {
            work->problem = problem.finding();
        }
    }));
    connect(thread_.get(), &QThread::finished, this, [this, work] { planned(*work); });
    tellResult();
    thread_->start();
}

void LinePanel::planned(const Planned& work)
{
    thread_->wait();
    thread_.release()->deleteLater();
    if (again_ || work.from != line_->version())
        return plan();
    if (work.problem) {
        if (!cancelled_)
            messages_.showError(say(*work.problem), QString::fromStdString(work.problem->code));
        return tellResult();
    }
    const auto* before = chosenRow();
    const auto chosen = before ? std::optional(std::pair{before->person, before->purpose}) : std::nullopt;
    line_.emplace(work.line);
    coming_.erase(coming_.begin(), coming_.begin() + static_cast<std::ptrdiff_t>(work.coming.size()));
    comingTold_.erase(comingTold_.begin(),
                      comingTold_.begin() + static_cast<std::ptrdiff_t>(work.told.size()));
    answer_ = work.answer;
    {
        const QSignalBlocker quiet(view_->selectionModel()); // the same person stays chosen
        model_->show(answer_, arrived_, line_->stock());
        if (chosen)
            view_->setCurrentIndex(model_->index(model_->rowOf(chosen->first, chosen->second), 0));
    }
    view_->viewport()->update();
    tellResult();
    Q_EMIT lineChanged();
}

} // namespace quarterstep
