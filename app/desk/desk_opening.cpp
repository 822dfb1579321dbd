// SPDX-License-Identifier: GPL-3.0-or-later
// How the window opens a camp: its files on another thread, its ledger here, the card that was not handed
// over.
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/commands.hpp"
#include "app/desk/desk_window.hpp"
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
#include "app/session/bring_in.hpp"
#include "app/session/wording.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QLineEdit>
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
    const bool opened = runCommand(*messages_, [this, &files, &folder] { takeOnce(files, folder); });
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
            opened =
                !stopped && runCommand(*messages_, [this, &files, &folder] { takeOnce(*files, folder); });
        } catch (const CampNotOpened& found) {
            tellNotOpened(folder, found.findings(), found.finding());
        } catch (const std::exception& unknown) {
            messages_->showError(QString::fromLocal8Bit(unknown.what()), QStringLiteral("unexpected"));
        }
        showCamp();
        if (opened)
            bringDraftBack();
        else if (!std::exchange(earlyDraft_, {}).first.isEmpty() && !camp_)
            (void)draft().begin({});
        QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
        Q_EMIT campOpened(opened);
        repaint(); // now, and whole: else in parts, as layouts follow each other, and later
    };
    if (!camp_) // else the card in sight is that of another camp
        earlyDraft_ = {folder, draft().begin(folder)};
    work_->start(tr("Reading %1…").arg(ltr(QDir(folder).dirName())), work, ended);
}

/// Asked again while the camp is locked: what was read goes with the first time, and is read anew.
void DeskWindow::takeOnce(CampFiles& files, const QString& folder)
{
    take(files.folder.empty() ? readCampFiles(folder.toStdString()) : std::exchange(files, {}));
}

/// The files are read; the ledger is opened on the thread that will use it.
void DeskWindow::take(CampFiles files)
{
    auto opening = Camp::open(std::move(files), Ledger::Mode::readWrite, Camp::LastEntries::left);
    if (opening.hasLedger())
        opening.ledger().setPatience(deskPatienceMs);
    if (camp_)
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

void DeskWindow::bringDraftBack()
{
    auto [begunFor, draft] = std::exchange(earlyDraft_, {});
    if (begunFor.isEmpty() || begunFor != campFolder())
        draft = this->draft().begin(campFolder());
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

} // namespace quarterstep
