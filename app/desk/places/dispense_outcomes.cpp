// SPDX-License-Identifier: GPL-3.0-or-later
// The place Dispense: what happens beside or instead of a hand-over: papers, custom order, letter, and who
// goes without.
#include "app/desk/commands.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/places/desk_papers.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/session/entry_words.hpp"
#include "app/session/keeping.hpp"
#include "app/session/order_file_for.hpp"
#include "app/session/unserved.hpp"
#include "app/session/wording.hpp"

#include <QTableView>

namespace quarterstep
{

namespace
{
SingleWork workFor(EntryKind kind, const std::string& person, const HandOverPanel& panel)
{
    SingleWork work;
    work.kind = kind;
    work.person = person;
    work.actor = panel.actor();
    work.reason = panel.reason();
    return work;
}
} // namespace

void DispensePlace::print(PaperKind kind)
{
    if (!answer() || !record_)
        return;
    runCommand(messages_, [this, kind] {
        PaperQuestion question;
        question.kind = kind;
        question.person = &*record_;
        question.answer = answer();
        if (chosen() && kind != PaperKind::laboratoryOrder)
            question.parts = chosen()->parts;
        question.handedOver = handedOver_;
        question.reason = handOver_->reason();
        question.trial = handOver_->trial(record_->eyes);
        papers_->draw(deskPaper(*camp_, question), *camp_, record_->person, printer_.toStdString());
    });
}

void DispensePlace::giveAndPrint()
{
    if (chosen() && answer() && !handedOver_)
        asOptician([this] {
            give();
            if (handedOver_)
                print(PaperKind::note);
        });
}

void DispensePlace::printNote()
{
    print(PaperKind::note);
}

/// Enters it, tells it, and keeps it for taking back.
void DispensePlace::post(Entry entry, const QString& done)
{
    runCommand(messages_, [this, &entry, &done] {
        const auto work = carryOut(*camp_, {std::move(entry)}, false);
        const auto& posted = work.entries.front();
        given_.push_back({posted.id, posted.person, kindWords(posted.kind)});
        messages_.showDone(done);
        refreshAfterMove(posted.person);
        if (posted.kind != EntryKind::referred && cards_->page() == 0)
            waitingView_->setFocus(); // on to the next person; beside a letter a pair may be given
    });
}

void DispensePlace::writeLetter()
{
    if (!answer() || answer()->referral == Referral::no)
        return;
    asOptician([this] {
        post(singleEntry(workFor(EntryKind::referred, answer()->person, *handOver_)),
             tr("%1 is entered as referred.").arg(ltr(answer()->person)));
        print(PaperKind::letter);
    });
}

void DispensePlace::orderCustom()
{
    if (!answer() || !answer()->need || !record_)
        return;
    asOptician([this] {
        post(orderEntry(*camp_, workFor(EntryKind::ordered, answer()->person, *handOver_), *record_,
                        *answer()),
             tr("A custom order for %1 is entered; it stands under Orders.").arg(ltr(answer()->person)));
        print(PaperKind::laboratoryOrder);
    });
}

/// Where a pair was suggested the person declined; else the answer says why.
void DispensePlace::goesWithout()
{
    if (!answer() || !record_ || handedOver_)
        return;
    auto entry = answer()->verdict == Verdict::stock
                     ? singleEntry(workFor(EntryKind::declined, answer()->person, *handOver_))
                     : unservedEntry(*camp_, *record_, *answer(), false);
    entry.actor = handOver_->actor();
    if (const auto before = saidBefore(*camp_, entry); !before.empty()) {
        messages_.showDone(
            tr("This stands in the ledger already: %1, %2.").arg(ltr(entry.person), kindWords(entry.kind)));
        return;
    }
    const auto words = tr("%1: %2.").arg(ltr(entry.person), kindWords(entry.kind));
    asOptician([this, entry, words] { post(entry, words); });
}

} // namespace quarterstep
