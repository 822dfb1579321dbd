// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/opening/practice.hpp"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

#include <algorithm>

namespace quarterstep
{

namespace
{
constexpr int practiceLookMs = 150;
} // namespace

PracticeStrip::PracticeStrip(QWidget& window, QWidget* parent)
    : QFrame(parent), window_(window), count_(new QLabel(this)), words_(new QLabel(this)),
      next_(new QPushButton(tr("Next"), this)), leave_(new QPushButton(tr("Leave practice"), this)),
      timer_(new QTimer(this))
{
    setObjectName(QStringLiteral("practiceStrip"));
    setProperty("panel", true);
    count_->setObjectName(QStringLiteral("practiceCount"));
    count_->setProperty("role", QStringLiteral("heading"));
    words_->setObjectName(QStringLiteral("practiceWords"));
    words_->setWordWrap(true);
    words_->installEventFilter(this);
    next_->setObjectName(QStringLiteral("practiceNextButton"));
    next_->setToolTip(tr("Goes on without this step"));
    leave_->setObjectName(QStringLiteral("practiceLeaveButton"));
    leave_->setToolTip(tr("Ends the practice; the sample stays open"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 6, 8, 6);
    row->addWidget(count_);
    row->addWidget(words_, 1);
    row->addWidget(next_);
    row->addWidget(leave_);
    makeSteps();
    timer_->setInterval(practiceLookMs);
    connect(timer_, &QTimer::timeout, this, &PracticeStrip::look);
    connect(next_, &QPushButton::clicked, this, [this] { show(step_ + 1); });
    connect(leave_, &QPushButton::clicked, this, &PracticeStrip::leave);
    hide();
}

QString PracticeStrip::textIn(const char* name) const
{
    const auto* edit = window_.findChild<QLineEdit*>(QLatin1String(name));
    return edit ? edit->text().trimmed() : QString();
}

bool PracticeStrip::allTicked() const
{
    for (const auto* name : {"focimeterCheck", "fitCheck", "acuityCheck", "instructionsCheck"}) {
        const auto* box = window_.findChild<QCheckBox*>(QLatin1String(name));
        if (box && !box->isChecked())
            return false;
    }
    return true;
}

void PracticeStrip::makeSteps()
{
    steps_ = {
        {tr("Somebody sits down. Press Ctrl+N for an empty card, and type the code %1 under Person.")
             .arg(QStringLiteral("\u2066X-1\u2069")),
         [this] { return !textIn("personEdit").isEmpty() && textIn("rightEyeEdit").isEmpty(); }},
        {tr("Tab to Age: type 30."), [this] { return !textIn("ageEdit").isEmpty(); }},
        {tr("Right eye: type %1. Tab to the left eye and type the same.")
             .arg(QStringLiteral("\u2066-1.25\u2069")),
         [this] { return !textIn("rightEyeEdit").isEmpty() && !textIn("leftEyeEdit").isEmpty(); }},
        {tr("PD far: type 62. Enter asks for pairs."),
         [this] {
             const auto* pairs = window_.findChild<QAbstractItemView*>(QStringLiteral("pairsView"));
             return pairs && pairs->model() && pairs->model()->rowCount() > 0;
         }},
        {tr("The best pair stands first, with its bin. You would fetch it, and one neighbour. Tick the four "
            "checks once the pair is on the face."),
         [this] { return allTicked(); }},
        {tr("Ctrl+Enter hands it over: the count goes down."), [this] { return moves_ > 0; }},
        {tr("A mistake? Ctrl+Z takes the hand-over back the same day. Try it."),
         [this] { return moves_ > 0; }},
        {tr("That was all. F1 opens the manual, Shift+F1 shows every key."), [] { return false; }},
    };
}

void PracticeStrip::begin()
{
    timer_->start();
    setVisible(true);
    show(0);
}

void PracticeStrip::leave()
{
    step_ = -1;
    timer_->stop();
    hide();
}

void PracticeStrip::stockMoved()
{
    ++moves_;
}

void PracticeStrip::show(int step)
{
    if (step >= steps())
        return leave();
    step_ = step;
    moves_ = 0;
    count_->setText(tr("Practice, step %1 of %2").arg(step + 1).arg(steps()));
    words_->setText(steps_[static_cast<std::size_t>(step)].words);
    next_->setText(step + 1 == steps() ? tr("Done") : tr("Next"));
    leave_->setVisible(step + 1 < steps());
    giveWordsRoom();
}

bool PracticeStrip::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == words_ && event->type() == QEvent::Resize)
        giveWordsRoom();
    return QFrame::eventFilter(watched, event);
}

/// Said outright: in a window that is full, words that wrap would be given one line only.
void PracticeStrip::giveWordsRoom()
{
    words_->setMinimumHeight(std::max(0, words_->heightForWidth(words_->width())));
}

void PracticeStrip::look()
{
    if (running() && steps_[static_cast<std::size_t>(step_)].done())
        show(step_ + 1);
}

} // namespace quarterstep
