// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/desk_window.hpp"

#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/commands.hpp"
#include "app/desk/lasting/long_work.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/opening/opening_page.hpp"
#include "app/desk/opening/practice.hpp"
#include "app/desk/opening/sample_camp.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/desk/places/line_panel.hpp"
#include "app/desk/shell/camp_notes.hpp"
#include "app/desk/shell/draft_keeper.hpp"
#include "app/desk/shell/pin_guard.hpp"
#include "app/desk/shown.hpp"
#include "app/session/bring_in.hpp"
#include "app/session/wording.hpp"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QDate>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTimer>

#include <utility>

namespace quarterstep
{

namespace
{
/// How long the window waits for others who write in the ledger before it looks after its own events again.
constexpr int deskPatienceMs = 30;
constexpr int afterOpeningMs = 50; ///< the camp is painted by then
} // namespace

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

bool DeskWindow::openCamp(const QString& folder)
{
    messages_->dismiss();
    CampFiles files;
    try {
        files = readCampFiles(folder.toStdString());
    } catch (const CampNotOpened& problem) {
        tellNotOpened(folder, problem.findings(), problem.finding());
        return false;
    }
    const bool opened = runCommand(*messages_, [this, &files] { take(files); });
    showCamp();
    if (opened)
        bringDraftBack();
    return opened;
}

void DeskWindow::openCampLater(const QString& folder, std::future<CampFiles> early)
{
    messages_->dismiss();
    const auto files = std::make_shared<CampFiles>();
    const auto begun = std::make_shared<std::future<CampFiles>>(std::move(early));
    const auto work = [files, begun, folder = folder.toStdString()](const Job&) {
        *files = begun->valid() ? begun->get() : readCampFiles(folder);
    };
    const auto ended = [this, files, folder](const std::exception_ptr& problem, bool stopped) {
        bool opened = false;
        campComes_ = false;
        pages_->setEnabled(true);
        try {
            if (problem)
                std::rethrow_exception(problem);
            opened = !stopped && runCommand(*messages_, [this, &files, &folder] { // again, while it is locked
                take(files->folder.empty() ? readCampFiles(folder.toStdString()) : std::exchange(*files, {}));
            });
        } catch (const CampNotOpened& found) {
            tellNotOpened(folder, found.findings(), found.finding());
        } catch (const std::exception& unknown) {
            messages_->showError(QString::fromLocal8Bit(unknown.what()), QStringLiteral("unexpected"));
        }
        showCamp();
        if (opened)
            bringDraftBack();
        Q_EMIT campOpened(opened);
    };
    work_->start(tr("Reading %1…").arg(ltr(QDir(folder).dirName())), work, ended);
}

/// The files are read; the ledger is opened on the thread that will use it.
void DeskWindow::take(CampFiles files)
{
    auto opening = Camp::open(std::move(files), Ledger::Mode::readWrite, Camp::LastEntries::left);
    if (opening.hasLedger())
        opening.ledger().setPatience(deskPatienceMs);
    takeInPlaces(nullptr);
    camp_.emplace(std::move(opening));
    readSettings();
    takeInPlaces(&*camp_);
    if (opening_)
        opening_->showProblems({}, {});
    if (remembers_) {
        rememberCamp(person_, campFolder());
        campsDue_ = true;
    }
    QTimer::singleShot(afterOpeningMs, this, &DeskWindow::afterOpening);
    if (!settings_.sample)
        practice_->leave();
    if (const auto* page = pages_->currentWidget(); page == openingPage_ || page == traysPage_)
        showPlace(Place::dispense);
    if (!broughtInTables(camp_->folder()).empty())
        (void)exchange(); // reads the people who were brought in before
}

/// Which camps were opened.
void DeskWindow::keepCamps()
{
    if (std::exchange(campsDue_, false))
        keepPreferences(person_);
}

/// What nobody waits for. The look at the last entries has a connection of its own, beside whatever is done
/// meanwhile.
void DeskWindow::afterOpening()
{
    keepCamps();
    if (!camp_)
        return;
    looksAtEntries_ =
        std::async(std::launch::async, [this, at = camp_->ledgerAt(), folder = camp_->folder()] {
            const auto found = lookAtLastEntries(at, folder);
            if (found)
                QMetaObject::invokeMethod(
                    this,
                    [this, found, folder] {
                        if (camp_ && camp_->folder() == folder)
                            notes_->add(*found);
                    },
                    Qt::QueuedConnection);
        });
}

/// What is to become of a ledger that was last written at another place.
void DeskWindow::settlePlace(void (Camp::*settle)())
{
    pins_->run(roleAskedBy("stock"), [this, settle] {
        if (camp_ && runCommand(*messages_, [this, settle] { ((*camp_).*settle)(); }))
            campMoved(nullptr);
    });
}

void DeskWindow::tellNotOpened(const QString& folder, const std::vector<Finding>& findings,
                               const Finding& first)
{
    opening().showProblems(folder, findings);
    showOpening();
    messages_->showError(
        tr("%1 was not opened; what was found stands below.").arg(ltr(QDir::toNativeSeparators(folder))),
        QString::fromStdString(first.code));
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

void DeskWindow::bringDraftBack()
{
    const auto draft = this->draft().begin(campFolder());
    dispense().line().bringBack(lineIn(this->draft().beside(), QDate::currentDate()));
    if (draft.isEmpty())
        return;
    showPlace(Place::dispense);
    const auto person = draft.value(QStringLiteral("personEdit"));
    if (!person.isEmpty())
        dispense().choosePerson(person.toStdString()); // what the card does not show comes from the table
    draft_->restore(draft);
    messages_->showDone(
        tr("The card that was not handed over when the window went is back. Ctrl+N empties it."));
}

/// The draft of a person goes with the hand-over to that person; what other stations do leaves it alone.
void DeskWindow::settleDraft()
{
    std::optional<Entry> last;
    try {
        last = camp_->ledger().lastOf(EntryKind::handedOver);
    } catch (const Error&) { // the ledger is not to be had now: the draft stays, which harms nobody
    }
    if (!last || last->id == lastGiven_)
        return;
    lastGiven_ = last->id;
    const auto* person = findChild<QLineEdit*>(QStringLiteral("personEdit"));
    if (person && person->text().trimmed().toStdString() == last->person)
        draft_->settled();
}

bool DeskWindow::choosePerson(const QString& code)
{
    return dispense().choosePerson(code.toStdString());
}

void DeskWindow::openSample(bool afresh, bool withPractice)
{
    if (afresh && camp_ && campFolder() == sampleFolder()) { // its ledger must be closed before it goes
        takeInPlaces(nullptr);
        looksAtEntries_ = {};
        camp_.reset();
    }
    if (!runCommand(*messages_, [afresh] { afresh ? renewSampleCamp() : makeSampleCamp(); }) ||
        !openCamp(sampleFolder()))
        return;
    showPlace(Place::dispense);
    if (withPractice)
        practice_->begin();
}

void DeskWindow::askFolder()
{
    const auto folder = QFileDialog::getExistingDirectory(this, tr("Open a camp folder"));
    if (!folder.isEmpty())
        openCampLater(folder);
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
    newPersonButton_->setVisible(working);
    tableButton_->setVisible(working);
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
