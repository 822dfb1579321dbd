// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/places/hand_over_panel.hpp"

#include "app/desk/places/focimeter_row.hpp"
#include "app/session/wording.hpp"

#include <QAction>
#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace quarterstep
{

HandOverPanel::HandOverPanel(QWidget* parent)
    : QFrame(parent),
      handOver_(made(tr("Hand over"),
                     tr("Gives the chosen pair to this person and counts it down (Ctrl+Return)"),
                     {QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::CTRL | Qt::Key_Enter)})),
      handOverAndPrint_(made(tr("Hand over, print"), tr("Hands over and prints the note (Ctrl+Shift+Return)"),
                             {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Return),
                              QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Enter)})),
      missing_(made(tr("To what is still missing"),
                    tr("Puts the cursor where something is missing for a hand-over"),
                    handOver_->shortcuts() + handOverAndPrint_->shortcuts())),
      undo_(made(tr("Take back"), tr("Takes back what was entered last for this person today (Ctrl+Z)"),
                 {QKeySequence(QKeySequence::Undo)})),
      note_(made(tr("Note"), tr("Prints what this person takes home (Ctrl+P)"),
                 {QKeySequence(QKeySequence::Print)})),
      letter_(made(tr("Letter"), tr("Enters the referral and prints the letter to the clinic (Ctrl+Shift+L)"),
                   {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L)})),
      order_(made(tr("Order"), tr("Enters a custom order and prints it for the laboratory (Ctrl+Shift+O)"),
                  {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O)})),
      without_(made(tr("Without"), tr("Enters that this person goes without a pair, and why (Ctrl+Shift+W)"),
                    {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_W)})),
      focimeter_(new FocimeterRow(this)), trialRow_(new QWidget(this)), reasonRow_(new QWidget(this)),
      complaint_(new QLabel(this)), objections_(new QLabel(this))
{
    setObjectName(QStringLiteral("handOverFrame"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(12, 8, 12, 8);
    grid->setVerticalSpacing(4);
    buildChecks(*grid);
    buildFields(*grid);
    buildCommands(*grid);
    connect(missing_, &QAction::triggered, this, &HandOverPanel::goToMissing);
    askTrial(false, false);
    showObjections({}, false);
    setReady({});
}

QAction* HandOverPanel::made(const QString& text, const QString& tooltip, const QList<QKeySequence>& keys)
{
    auto* action = new QAction(text, this);
    action->setToolTip(tooltip);
    action->setShortcuts(keys);
    addAction(action);
    return action;
}

void HandOverPanel::buildChecks(QGridLayout& grid)
{
    const std::tuple<QString, QString, QString> rows[] = {
        {QStringLiteral("focimeterCheck"), tr("Power by focimeter"),
         tr("The power of this very pair was read")},
        {QStringLiteral("fitCheck"), tr("Fit on the face"),
         tr("Sits well at nose and ears, pupils behind the centres")},
        {QStringLiteral("acuityCheck"), tr("Acuity with the pair"),
         tr("Each eye read the chart with this pair on")},
        {QStringLiteral("instructionsCheck"), tr("Instructions given"),
         tr("What it is for, how to care for it, when to come back")}};
    for (const auto& [name, text, tooltip] : rows) {
        auto* box = new QCheckBox(text, this);
        box->setObjectName(name);
        box->setToolTip(tooltip);
        connect(box, &QCheckBox::toggled, this, &HandOverPanel::changed);
        const int place = static_cast<int>(checks_.size());
        grid.addWidget(box, place / 2, place % 2);
        checks_.push_back(box);
    }
}

void HandOverPanel::buildFields(QGridLayout& grid)
{
    auto* trial = new QHBoxLayout(trialRow_);
    trial->setContentsMargins(0, 0, 0, 0);
    trialRight_ = field(*trial, QStringLiteral("trialRightEdit"), tr("With pair, R"),
                        tr("Right eye: acuity with this pair on, for example 6/9"));
    trialLeft_ = field(*trial, QStringLiteral("trialLeftEdit"), tr("L"),
                       tr("Left eye: acuity with this pair on, for example 6/9"));
    trialNear_ = field(*trial, QStringLiteral("trialNearEdit"), tr("near"),
                       tr("Smallest print read with this pair on, for example N8"));
    auto* reason = new QHBoxLayout(reasonRow_);
    reason->setContentsMargins(0, 0, 0, 0);
    reason_ = field(*reason, QStringLiteral("reasonEdit"), tr("Reason"),
                    tr("Why this pair is given all the same; kept with the entry"));
    for (auto* label : {complaint_, objections_}) {
        label->setProperty("role", QStringLiteral("complaint"));
        label->setWordWrap(true);
        label->hide();
    }
    objections_->setObjectName(QStringLiteral("objectionsLabel"));
    complaint_->setObjectName(QStringLiteral("trialComplaint"));
    focimeter_->hide();
    connect(focimeter_, &FocimeterRow::judged, checks_[0], &QCheckBox::setChecked);
    connect(focimeter_, &FocimeterRow::judged, this, &HandOverPanel::changed);
    int row = grid.rowCount();
    for (auto* widget :
         std::initializer_list<QWidget*>{focimeter_, trialRow_, complaint_, objections_, reasonRow_})
        grid.addWidget(widget, row++, 0, 1, 2);
}

void HandOverPanel::buildCommands(QGridLayout& grid)
{
    auto* others = new QHBoxLayout;
    const std::pair<QAction*, QString> beside[] = {{note_, QStringLiteral("noteButton")},
                                                   {letter_, QStringLiteral("letterButton")},
                                                   {order_, QStringLiteral("orderButton")},
                                                   {without_, QStringLiteral("withoutButton")}};
    for (const auto& [action, name] : beside)
        others->addWidget(button(action, name));
    auto* commands = new QHBoxLayout;
    actor_ = field(*commands, QStringLiteral("initialsEdit"), tr("Your initials"),
                   tr("Who hands over; kept with the entry, may stay empty"));
    actor_->setMaximumWidth(actor_->fontMetrics().averageCharWidth() * 12);
    commands->addStretch(1);
    commands->addWidget(button(undo_, QStringLiteral("undoButton")));
    commands->addSpacing(8);
    auto* give = button(handOver_, QStringLiteral("handOverButton"));
    give->setProperty("primary", true);
    commands->addWidget(give);
    grid.addLayout(others, grid.rowCount(), 0, 1, 2);
    grid.addLayout(commands, grid.rowCount(), 0, 1, 2);
}

QLineEdit* HandOverPanel::field(QHBoxLayout& row, const QString& name, const QString& label,
                                const QString& tooltip)
{
    auto* words = new QLabel(label, this);
    words->setProperty("role", QStringLiteral("hint"));
    auto* edit = new QLineEdit(this);
    edit->setObjectName(name);
    edit->setToolTip(tooltip);
    edit->setAccessibleName(label);
    words->setBuddy(edit);
    connect(edit, &QLineEdit::textEdited, this, &HandOverPanel::changed);
    row.addWidget(words);
    row.addSpacing(4);
    row.addWidget(edit, 1);
    row.addSpacing(8);
    return edit;
}

QPushButton* HandOverPanel::button(QAction* action, const QString& name)
{
    auto* made = new QPushButton(action->text(), this);
    made->setObjectName(name);
    made->setToolTip(action->toolTip());
    connect(made, &QPushButton::clicked, action, &QAction::trigger);
    connect(action, &QAction::enabledChanged, made, &QPushButton::setEnabled);
    return made;
}

void HandOverPanel::reset()
{
    for (auto* box : checks_) {
        const QSignalBlocker quiet(box);
        box->setChecked(false);
    }
    for (auto* edit : {trialRight_, trialLeft_, trialNear_, reason_})
        edit->clear();
    complaint_->hide();
    focimeter_->clear();
}

void HandOverPanel::askTrial(bool wanted, bool near)
{
    trialWanted_ = wanted;
    trialRow_->setVisible(wanted);
    trialNear_->setEnabled(wanted && near);
    trialRight_->setEnabled(wanted && !near);
    trialLeft_->setEnabled(wanted && !near);
    if (!wanted)
        complaint_->hide();
}

void HandOverPanel::showObjections(const QString& text, bool reasonHelps)
{
    objections_->setText(text);
    objections_->setVisible(!text.isEmpty());
    reasonRow_->setVisible(reasonHelps);
}

/// The first that is asked for and still open: powers read, acuities, a reason, else the first check. Where
/// there is nothing to hand over, what is done instead.
void HandOverPanel::goToMissing()
{
    QWidget* found = nullptr;
    if (objections_->text().isEmpty())
        for (const auto& [action, name] :
             {std::pair{letter_, "letterButton"}, {order_, "orderButton"}, {without_, "withoutButton"}})
            if (!found && action->isEnabled())
                found = findChild<QWidget*>(QLatin1String(name));
    if (!found && !focimeter_->isHidden() && !checks_[0]->isChecked())
        found = focimeter_;
    for (auto* edit : {trialRight_, trialLeft_, trialNear_, reason_})
        if (!found && edit->isVisible() && edit->isEnabled() && edit->text().isEmpty())
            found = edit;
    (found ? found : checks_[0])->setFocus(Qt::ShortcutFocusReason);
}

void HandOverPanel::setReady(const Ready& ready)
{
    handOver_->setEnabled(ready.handOver);
    handOverAndPrint_->setEnabled(ready.handOver);
    missing_->setEnabled(!ready.handOver && (ready.without || !objections_->text().isEmpty()));
    undo_->setEnabled(ready.undo);
    note_->setEnabled(ready.note);
    letter_->setEnabled(ready.letter);
    order_->setEnabled(ready.order);
    without_->setEnabled(ready.without);
}

void HandOverPanel::setSupply(const Supply& supply)
{
    checks_[0]->setText(supply.equalPair ? tr("Power by focimeter") : tr("Each eye by focimeter"));
    focimeter_->setSupply(supply);
    focimeter_->setVisible(!supply.equalPair);
}

HandOverChecks HandOverPanel::checks() const
{
    return {checks_[0]->isChecked(), checks_[1]->isChecked(), checks_[2]->isChecked(),
            checks_[3]->isChecked()};
}

PairReading HandOverPanel::reading() const
{
    return focimeter_->isHidden() ? PairReading{} : focimeter_->reading();
}

std::string HandOverPanel::reason() const
{
    return reasonRow_->isHidden() ? std::string() : reason_->text().trimmed().toStdString();
}

std::string HandOverPanel::actor() const
{
    return actor_->text().trimmed().toStdString();
}

std::optional<TrialAcuity> HandOverPanel::trial(const PerEye<EyeRecord>& eyes)
{
    TrialAcuity trial;
    trial.best = {eyes.right.acuity.best, eyes.left.acuity.best};
    QString complaint;
    bool any = false;
    for (const auto& [edit, eye] : {std::pair{trialRight_, Eye::right}, std::pair{trialLeft_, Eye::left}}) {
        if (!trialWanted_ || edit->text().trimmed().isEmpty())
            continue;
        if (const auto read = parseAcuity(edit->text().trimmed().toStdString())) {
            trial.distance.of(eye) = read.value();
            any = true;
        } else {
            complaint = say(read.complaint().sentence);
        }
    }
    if (trialWanted_ && !trialNear_->text().trimmed().isEmpty()) {
        if (const auto read = parseNearAcuity(trialNear_->text().trimmed().toStdString())) {
            trial.near = read.value();
            any = true;
        } else {
            complaint = say(read.complaint().sentence);
        }
    }
    complaint_->setText(complaint);
    complaint_->setVisible(!complaint.isEmpty());
    return any && complaint.isEmpty() ? std::optional(trial) : std::nullopt;
}

} // namespace quarterstep
