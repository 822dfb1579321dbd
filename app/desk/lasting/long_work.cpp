// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/lasting/long_work.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace quarterstep
{

namespace
{
constexpr int lookEveryMs = 100;
constexpr int shownAfterMs = 200; ///< what ends sooner would only flicker
} // namespace

LongWork::LongWork(QWidget* parent)
    : QFrame(parent), words_(new QLabel(this)), next_(new QLabel(this)), bar_(new QProgressBar(this)),
      stop_(new QPushButton(tr("Stop"), this)), look_(new QTimer(this)), appear_(new QTimer(this))
{
    setObjectName(QStringLiteral("workBar"));
    setProperty("panel", true);
    words_->setObjectName(QStringLiteral("workWords"));
    next_->setObjectName(QStringLiteral("workNext"));
    next_->setProperty("role", QStringLiteral("hint"));
    next_->setWordWrap(true);
    next_->hide();
    bar_->setObjectName(QStringLiteral("workProgress"));
    bar_->setAccessibleName(tr("How far it is"));
    bar_->setTextVisible(false);
    stop_->setObjectName(QStringLiteral("stopWorkButton"));
    stop_->setToolTip(tr("Ends this work; nothing is changed by it"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    row->addWidget(words_);
    row->addWidget(bar_, 1);
    row->addWidget(next_, 1);
    row->addWidget(stop_);
    look_->setInterval(lookEveryMs);
    appear_->setInterval(shownAfterMs);
    appear_->setSingleShot(true);
    connect(appear_, &QTimer::timeout, this, [this] {
        show();
        Q_EMIT shown();
    });
    connect(look_, &QTimer::timeout, this, &LongWork::tell);
    connect(stop_, &QPushButton::clicked, this, [this] { stop(); });
    connect(this, &LongWork::workDone, this, &LongWork::finish,
            Qt::QueuedConnection); // told from the other thread
    hide();
}

LongWork::~LongWork()
{
    if (progress_)
        progress_->stopped = true;
    if (thread_.joinable())
        thread_.join();
}

LongWork::Ticket LongWork::start(const QString& words, Work work, Ended ended)
{
    const auto ticket = ++last_;
    waiting_.push_back({ticket, words, std::move(work), std::move(ended)});
    if (running())
        tellWaiting();
    else
        beginNext();
    return ticket;
}

void LongWork::beginNext()
{
    if (waiting_.empty()) {
        look_->stop();
        appear_->stop();
        return hide();
    }
    now_ = std::move(waiting_.front());
    waiting_.pop_front();
    progress_ = std::make_shared<Progress>();
    problem_ = std::make_shared<std::exception_ptr>();
    words_->setText(now_.words);
    bar_->setRange(0, 0);
    stop_->setEnabled(true);
    tellWaiting();
    look_->start();
    if (isHidden())
        appear_->start();
    run(std::exchange(now_.work, nullptr));
}

void LongWork::run(Work work)
{
    thread_ = std::thread([this, progress = progress_, problem = problem_, work = std::move(work)] {
        Job job;
        job.cancelled = &progress->stopped;
        job.done = [&progress](std::size_t done, std::size_t of) {
            progress->done = static_cast<int>(done);
            progress->total = static_cast<int>(of);
        };
        try {
            work(job);
        } catch (...) {
            *problem = std::current_exception();
        }
        Q_EMIT workDone(QPrivateSignal());
    });
}

void LongWork::tellWaiting()
{
    QStringList words;
    for (const auto& asked : waiting_)
        words << asked.words;
    next_->setText(tr("After this: %1").arg(words.join(QLatin1Char(' '))));
    next_->setVisible(!waiting_.empty());
}

void LongWork::stop(Ticket ticket)
{
    if (running() && now_.ticket == ticket)
        return stop();
    const auto asked = std::find_if(waiting_.begin(), waiting_.end(),
                                    [ticket](const Asked& each) { return each.ticket == ticket; });
    if (asked == waiting_.end())
        return;
    QMetaObject::invokeMethod( // as any work ends: not within the question
        this,
        [ended = asked->ended] {
            if (ended)
                ended(nullptr, true);
        },
        Qt::QueuedConnection);
    waiting_.erase(asked);
    tellWaiting();
}

void LongWork::stop()
{
    if (!progress_)
        return;
    progress_->stopped = true;
    stop_->setEnabled(false);
    words_->setText(tr("Stopping…"));
}

void LongWork::tell()
{
    if (!progress_ || progress_->total <= 0)
        return;
    bar_->setRange(0, progress_->total);
    bar_->setValue(progress_->done);
}

/// The next one runs before `ended` looks at what came: whoever asks again there waits like everybody.
void LongWork::finish()
{
    const bool stopped = progress_->stopped.load();
    thread_.join();
    const auto problem = *problem_;
    const auto ended = std::exchange(now_.ended, nullptr);
    progress_.reset();
    beginNext();
    if (ended)
        ended(problem, stopped);
}

} // namespace quarterstep
