// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/lasting/long_work.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>

#include <utility>

namespace quarterstep
{

namespace
{
constexpr int lookEveryMs = 100;
constexpr int shownAfterMs = 200; ///< what ends sooner would only flicker
} // namespace

LongWork::LongWork(QWidget* parent)
    : QFrame(parent), words_(new QLabel(this)), bar_(new QProgressBar(this)),
      stop_(new QPushButton(tr("Stop"), this)), look_(new QTimer(this)), appear_(new QTimer(this))
{
    setObjectName(QStringLiteral("workBar"));
    setProperty("panel", true);
    words_->setObjectName(QStringLiteral("workWords"));
    bar_->setObjectName(QStringLiteral("workProgress"));
    bar_->setAccessibleName(tr("How far it is"));
    bar_->setTextVisible(false);
    stop_->setObjectName(QStringLiteral("stopWorkButton"));
    stop_->setToolTip(tr("Ends this work; nothing is changed by it"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    row->addWidget(words_);
    row->addWidget(bar_, 1);
    row->addWidget(stop_);
    look_->setInterval(lookEveryMs);
    appear_->setInterval(shownAfterMs);
    appear_->setSingleShot(true);
    connect(appear_, &QTimer::timeout, this, [this] {
        show();
        Q_EMIT shown();
    });
    connect(look_, &QTimer::timeout, this, &LongWork::tell);
    connect(stop_, &QPushButton::clicked, this, &LongWork::stop);
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

bool LongWork::start(const QString& words, Work work, Ended ended)
{
    if (running())
        return false;
    if (thread_.joinable())
        thread_.join();
    progress_ = std::make_shared<Progress>();
    ended_ = std::move(ended);
    words_->setText(words);
    bar_->setRange(0, 0);
    stop_->setEnabled(true);
    look_->start();
    appear_->start();
    problem_ = std::make_shared<std::exception_ptr>();
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
    return true;
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

void LongWork::finish()
{
    const bool stopped = progress_->stopped.load();
    thread_.join();
    const auto problem = *problem_;
    progress_.reset();
    look_->stop();
    appear_->stop();
    hide();
    if (const auto ended = std::exchange(ended_, nullptr))
        ended(problem, stopped);
}

} // namespace quarterstep
