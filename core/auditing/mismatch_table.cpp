// SPDX-License-Identifier: GPL-3.0-or-later
// Every class of finding with its words and next step, in the order of the enumerators.
#include "core/auditing/mismatch.hpp"

namespace quarterstep
{

namespace
{

using K = AuditClass;

constexpr std::array<AuditClassInfo, auditClassCount> table{{
    {K::outsideWithoutReason, "outside-without-reason", QS_SAY("core", "outside a limit, no reason given"),
     QS_SAY("core", "see the person again; read the pair with the focimeter"), NextStep::dispensing, true},
    {K::outsideWithReason, "outside-with-reason", QS_SAY("core", "outside a limit, with a reason"),
     QS_SAY("core", "read the reasons together; where one repeats, change stock or rules"), NextStep::stock,
     true},
    {K::betterPairInBox, "better-pair-in-box", QS_SAY("core", "a clearly better pair was in the box"),
     QS_SAY("core", "look at the bin named: is it reachable, labelled, in its place?"), NextStep::bin, true},
    {K::offLabel, "off-label", QS_SAY("core", "the pair is off its label"),
     QS_SAY("core", "quarantine the line, read ten pieces, tell the supplier"), NextStep::supplier, true},
    {K::acuityWorse, "acuity-worse", QS_SAY("core", "acuity with the pair worse than predicted"),
     QS_SAY("core", "refract again; where it repeats, look at the refraction of the day"),
     NextStep::refraction, true},
    {K::onTrialWithoutAcuity, "on-trial-without-acuity", QS_SAY("core", "on trial, no acuity recorded"),
     QS_SAY("core", "call the person back and read the acuity with the pair"), NextStep::dispensing, true},
    {K::notNeeded, "not-needed", QS_SAY("core", "nothing was needed by the record"),
     QS_SAY("core", "look at what is prescribed to whom; a pair not needed is one that somebody lacks"),
     NextStep::refraction, true},
    {K::checksNotRecorded, "checks-not-recorded", QS_SAY("core", "no check recorded"),
     QS_SAY("core", "record the four checks at hand-over; draw a sample of these for the bench"),
     NextStep::dispensing, false},
    {K::centresNotMeasured, "centres-not-measured", QS_SAY("core", "PD or centres not measured"),
     QS_SAY("core", "measure the PD of everybody and the centres of every line from 1.50 D up"),
     NextStep::dispensing, false},
    {K::quarantinedLine, "quarantined-line", QS_SAY("core", "given from a line in quarantine"),
     QS_SAY("core", "read the pair with the focimeter, or exchange it"), NextStep::supplier, true},
    {K::interimNotReplaced, "interim-not-replaced", QS_SAY("core", "a temporary pair never replaced"),
     QS_SAY("core", "ask the laboratory for the order, and the person to come"), NextStep::followUp, false},
    {K::orderNotCollected, "order-not-collected", QS_SAY("core", "an order not collected"),
     QS_SAY("core", "send word to the person; bring the pair to the next visit"), NextStep::followUp, false},
    {K::letterNotWritten, "letter-not-written", QS_SAY("core", "a letter of referral not written"),
     QS_SAY("core", "write it now"), NextStep::followUp, false},
    {K::duplicateHandOver, "duplicate-hand-over", QS_SAY("core", "handed over twice for one purpose"),
     QS_SAY("core", "count the line; where one piece is too many, take the second entry back"),
     NextStep::record, false},
    {K::correctionsClustered, "corrections-clustered", QS_SAY("core", "many corrections on one day"),
     QS_SAY("core", "ask what was difficult that day: light, queue, a new hand"), NextStep::record, false},
    {K::countDifference, "count-difference", QS_SAY("core", "a count differed from the book"),
     QS_SAY("core", "look for a line that differs the other way; it is likely beside it"), NextStep::bin,
     false},
    {K::witnessAgainstRecord, "witness-against-record",
     QS_SAY("core", "the record disagrees with what was measured beside it"),
     QS_SAY("core", "have the card read again by somebody who has not seen the record"), NextStep::record,
     true},
    {K::verdictDiffers, "verdict-differs", QS_SAY("core", "judged again, the entry says something else"),
     QS_SAY("core", "keep this ledger as it is and tell the makers of the program"), NextStep::record, false},
    {K::rulesMissing, "rules-missing", QS_SAY("core", "the rules of the time are missing"),
     QS_SAY("core", "put the rules.yaml of that time into a copy of the camp and audit there"),
     NextStep::record, false},
    {K::recordMissing, "record-missing", QS_SAY("core", "the record is not there to judge by"),
     QS_SAY("core", "nothing: the person was forgotten, or the entry was written before records were kept"),
     NextStep::record, false},
    {K::fromTheFuture, "from-the-future", QS_SAY("core", "an entry from the future"),
     QS_SAY("core", "set the clock of that station right"), NextStep::record, false},
}};

constexpr bool standsInOrder()
{
    for (std::size_t i = 0; i < table.size(); ++i)
        if (table[i].kind != static_cast<AuditClass>(i))
            return false;
    return true;
}
static_assert(standsInOrder(), "each row stands where its enumerator stands");

} // namespace

const std::array<AuditClassInfo, auditClassCount>& auditClasses()
{
    return table;
}

const AuditClassInfo& infoOf(AuditClass kind)
{
    return auditClasses()[static_cast<std::size_t>(kind)];
}

} // namespace quarterstep
