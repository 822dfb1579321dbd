// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_window.hpp"

#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/shell/camp_notes.hpp"
#include "app/desk/shell/draft_keeper.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/desk/shown.hpp"
#include "app/session/wording.hpp"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>

#include <utility>

namespace quarterstep
{

DeskWindow::DeskWindow(Parts parts, QWidget* parent) : QMainWindow(parent), person_(readPreferences())
{
    setObjectName(QStringLiteral("deskWindow"));
    setWindowTitle(tr("Quarterstep"));
    person_.theme = themeNow();
    person_.textScale = textScaleNow();
    if (parts == Parts::now) // else it is empty until then: not even letters are looked for
        build();
}

void DeskWindow::build(bool campComes)
{
    messages_ = new MessageBar;
    notes_ = new CampNotes;
    pins_ = new PinGuard(*messages_);
    work_ = new LongWork;
    practice_ = new PracticeStrip(*this);
    pages_ = new QStackedWidget;
    buildPages();
    buildActions();
    connect(pins_, &PinGuard::asking, pages_, &QWidget::setDisabled);
    connect(notes_, &CampNotes::movedHere, this, [this] { settlePlace(&Camp::claimPlace); });
    connect(notes_, &CampNotes::secondStation, this, [this] { settlePlace(&Camp::becomeSecondStation); });
    connect(pins_, &PinGuard::withdrawn, this, &DeskWindow::showSettingsAgain);
    campComes_ = campComes;
    if (!campComes)
        return showCamp();
    (void)dispense();
    before_ = placePages_.front(); // in sight while the camp is read, and not to be worked with before
    showPage(before_);
    // Disabled, every part is painted anew: not for a read that is over before a hand is there.
    connect(work_, &LongWork::shown, pages_, [this] {
        if (!camp_)
            pages_->setDisabled(true);
    });
    tellCamp();
}

DeskWindow::~DeskWindow()
{
    if (draft_)
        draft_->flush();
    keepCamps();
    setShownNow({});
}

QString DeskWindow::campFolder() const
{
    return camp_ ? QString::fromStdString(camp_->folder()) : QString();
}

void DeskWindow::forgetCamps()
{
    remembers_ = false;
    person_.camps.clear();
    showCamp();
}

void DeskWindow::readSettings()
{
    const auto read = readCampSettings(camp_->folder());
    settings_ = read.value;
    setShownNow(settings_);
    for (const auto& finding : read.findings)
        messages_->showError(say(finding), QString::fromStdString(finding.code));
}

/// For everybody who opens the camp, so somebody answers for it.
void DeskWindow::takeCampSettings(const CampSettings& settings)
{
    pins_->run(roleAskedBy("settings"), [this, settings] { keepCampSettings(settings); });
}

void DeskWindow::keepCampSettings(const CampSettings& settings)
{
    const bool kept = camp_ && runCommand(*messages_, [this, &settings] {
                          replaceFile(campSettingsPath(camp_->folder()), writeCampSettings(settings));
                      });
    if (!kept)
        return showSettingsAgain();
    settings_ = settings;
    setShownNow(settings_);
    draft().flush();
    dispense().campMoved();
}

bool DeskWindow::choosePerson(const QString& code)
{
    return dispense().choosePerson(code.toStdString());
}

void DeskWindow::askTable()
{
    if (!camp_)
        return;
    pins_->withdraw();
    const auto path =
        QFileDialog::getOpenFileName(this, tr("Load people"), {}, tr("Prescription tables (*.csv)"));
    if (!path.isEmpty())
        runCommand(*messages_, [this, &path] { dispense().loadPeople(path.toStdString()); });
}

void DeskWindow::newPerson()
{
    if (!camp_)
        return;
    showPlace(Place::dispense);
    dispense().newPerson();
    draft().settled();
}

void DeskWindow::showCamp()
{
    if (!camp_ && pages_->currentWidget() != traysPage_ && pages_->currentWidget() != settingsScroll_)
        showOpening();
    tellCamp();
}

void DeskWindow::tellCamp()
{
    const auto* camp = camp_ ? &*camp_ : nullptr;
    const bool working = camp || campComes_; // the head of the window does not jump when the camp is there
    for (auto* button : placeButtons_->buttons())
        button->setVisible(working);
    exchangeButton_->setVisible(working);
    site_->setText(camp ? ltr(camp->site()) : tr("Quarterstep"));
    sample_->setVisible(camp && settings_.sample);
    int pieces = 0;
    if (camp)
        for (const auto& line : camp->stock())
            pieces += line.onHand;
    summary_->setText(camp ? tr("%n on hand", nullptr, pieces) : tr("No camp is open"));
    const auto name = camp ? QString::fromStdString(camp->site()) : QString();
    setWindowTitle(!camp              ? tr("Quarterstep")
                   : settings_.sample ? tr("SAMPLE: %1: Quarterstep").arg(name)
                                      : tr("%1: Quarterstep").arg(name));
}

} // namespace quarterstep
