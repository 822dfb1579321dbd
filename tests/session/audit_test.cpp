// SPDX-License-Identifier: GPL-3.0-or-later
// The audit judges as matching judged: records, pairs and rules come back from the ledger as they were.
#define BOOST_TEST_MODULE audit
#include <boost/test/unit_test.hpp>

#include "app/session/audit.hpp"
#include "app/session/hand_over.hpp"
#include "app/session/keeping.hpp"
#include "inventory/store/connection.hpp"
#include "inventory/text/record_text.hpp"
#include "inventory/text/rules_archive.hpp"
#include "inventory/text/rules_hash.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/qt_application.hpp"
#include "tests/session/people.hpp"

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;
using namespace quarterstep::testing;

namespace
{

const std::string camp = QS_SOURCE_DIR "/samples/orrowen_coast/";
constexpr std::int64_t farFuture = 4'000'000'000'000;

std::vector<PersonRecord> samplePeople()
{
    std::vector<PersonRecord> people;
    for (const auto& row : readPrescriptionTable(camp + "people.csv", "").value.rows)
        if (row.record)
            people.push_back(*row.record);
    return people;
}

struct SampleCamp {
    TemporaryFolder folder;
    SampleCamp()
    {
        for (const char* file : {"stock.yaml", "rules.yaml"})
            writeBytes(folder / file, readBytes(camp + file));
    }
    [[nodiscard]] Camp open(Ledger::Mode mode = Ledger::Mode::readWrite) const
    {
        return Camp::open(folder.path(), mode);
    }
};

struct Heard {
    AuditSummary summary;
    std::vector<AuditFinding> findings;
    std::map<std::string, Fit> fits; ///< by entry

    [[nodiscard]] long count(AuditClass kind) const
    {
        return std::count_if(findings.begin(), findings.end(),
                             [kind](const AuditFinding& finding) { return finding.kind == kind; });
    }
};

Heard audited(const Camp& opened, AuditOptions options = {})
{
    if (options.nowMs == 0)
        options.nowMs = farFuture;
    Heard heard;
    AuditEars ears;
    ears.finding = [&](AuditFinding finding) { heard.findings.push_back(std::move(finding)); };
    ears.judged = [&](const JudgedHandOver& judged, const SlipAnswer&) {
        heard.findings.insert(heard.findings.end(), judged.findings.begin(), judged.findings.end());
        if (judged.fit)
            heard.fits[judged.facts.entry] = *judged.fit;
    };
    heard.summary = auditCamp(opened, options, ears);
    return heard;
}

/// Whoever is served as the first candidate has it, or what else is asked for.
Entry give(Camp& opened, const PersonRecord& person, const std::string& line, const std::string& reason = {})
{
    const auto answers = recommend(person, opened.stock(), opened.rules(), {});
    HandOver given;
    given.recommendation = &answers.front();
    given.parts = {{*opened.lineNamed(line), PartSide::pair}};
    given.reason = reason;
    given.record = recordText(person);
    return handOver(opened, given);
}

PairReading bothRead(const char* right, const char* left)
{
    return {parsePower(right).value(), parsePower(left).value()};
}

/// Past every safeguard: one verdict after the sixtieth entry says something else.
void changeOneWord(const std::string& path)
{
    Connection raw(path, Connection::Access::readWrite, 200);
    const auto rule = raw.textOf("SELECT sql FROM sqlite_schema WHERE name = 'entry_stays'");
    raw.execute("DROP TRIGGER entry_stays");
    raw.execute(
        "UPDATE entry SET payload = replace(payload, '\"fits\"', '\"outside\"') WHERE position = (SELECT "
        "min(position) FROM entry WHERE position > 60 AND payload LIKE '%\"fits\"%')");
    raw.execute(rule); // a missing rule is found at opening, a changed word by the chain
}

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);

BOOST_AUTO_TEST_SUITE(audit)

BOOST_AUTO_TEST_CASE(a_record_read_back_asks_for_the_same_to_the_last_bit, *utf::label("PROP"))
{
    int compared = 0;
    for (const auto& person : samplePeople()) {
        const auto read = readRecordText(recordText(person));
        BOOST_TEST_REQUIRE(read.has_value());
        BOOST_TEST(recordText(*read) == recordText(person));
        for (const auto purpose : purposesOf(person)) {
            const auto before = needFor(person, purpose, defaultRules().settings);
            const auto after = needFor(*read, purpose, defaultRules().settings);
            BOOST_TEST(bool(before) == bool(after));
            if (!before)
                continue;
            for (const Eye eye : bothEyes) {
                const auto& one = before.value().eyes.of(eye);
                const auto& other = after.value().eyes.of(eye);
                BOOST_TEST(one.power.sphere.value() == other.power.sphere.value());
                BOOST_TEST(one.power.cylinder.value() == other.power.cylinder.value());
                BOOST_TEST(one.power.axis.value() == other.power.axis.value());
            }
            BOOST_TEST(before.value().pd.least == after.value().pd.least);
            ++compared;
        }
    }
    BOOST_TEST(compared > 200);
}

BOOST_AUTO_TEST_CASE(what_the_focimeter_read_at_the_hand_over_is_kept_and_is_a_witness, *utf::label("PROP"))
{
    const SampleCamp sample;
    auto opened = sample.open();
    const auto person = someone("+2.00", "+2.00");
    const auto answers = recommend(person, opened.stock(), opened.rules(), {});
    HandOver given;
    given.recommendation = &answers.front();
    given.parts = {{*opened.lineNamed("D+200-62M"), PartSide::pair}};
    given.record = recordText(person);
    given.reading = bothRead("+2.00", "+2.12"); // within what a lens may be off
    BOOST_TEST(objectionsTo(opened, given).empty());
    given.reading = bothRead("+2.00", "+3.00");
    const auto objections = objectionsTo(opened, given);
    BOOST_TEST_REQUIRE(objections.size() == 1U);
    BOOST_TEST(objections.front().reasonHelps);
    BOOST_TEST(objections.front().sentence.arguments.front() == "+3.00");
    given.reason = "worn for the walk home";
    const auto entry = handOver(opened, given);
    BOOST_TEST(entry.fields.at("read_right") == "+2.00");
    const auto facts = factsOf(*opened.ledger().entry(entry.id));
    BOOST_TEST_REQUIRE(static_cast<bool>(facts.later));
    BOOST_TEST(facts.later->pair.left->sphere.value() == 3.0);
    BOOST_TEST(audited(opened).count(AuditClass::offLabel) == 1);
    AuditOptions again; // read once more afterwards, by somebody who had not seen the record: that counts
    again.later[entry.id] =
        std::make_shared<const LaterWitness>(LaterWitness{bothRead("+2.00", "+2.00"), {}, {}, {}});
    BOOST_TEST(audited(opened, again).count(AuditClass::offLabel) == 0);
    again.later[entry.id] = std::make_shared<const LaterWitness>(); // the card alone
    BOOST_TEST(audited(opened, again).count(AuditClass::offLabel) == 1);
    const auto unread = give(opened, someone("+2.00", "+2.00"), "D+200-62M");
    BOOST_TEST(!factsOf(unread).later);
}

BOOST_AUTO_TEST_CASE(rules_read_back_from_their_canonical_text_have_the_same_hash, *utf::label("PROP"))
{
    for (const auto& rules : {defaultRules(), readRulesFile(camp + "rules.yaml").value}) {
        const auto read = readCanonicalRules(canonicalRules(rules));
        BOOST_TEST_REQUIRE(read.has_value());
        BOOST_TEST(read->hash == rules.hash);
        BOOST_TEST(read->profiles.size() == rules.profiles.size());
    }
    BOOST_TEST(!readCanonicalRules("settings\t12").has_value());
    BOOST_TEST(!readCanonicalRules(canonicalRules(defaultRules()) + "no criterion\tyes\n").has_value());
}

BOOST_AUTO_TEST_CASE(rules_of_a_program_with_fewer_criteria_are_read_as_they_were, *utf::label("REG"))
{
    std::string earlier;
    std::istringstream today(canonicalRules(defaultRules()));
    for (std::string line; std::getline(today, line);)
        if (line.rfind("frame_size\t", 0) != 0)
            earlier += line + '\n';
    BOOST_TEST_REQUIRE(earlier.size() < canonicalRules(defaultRules()).size());
    const auto read = readCanonicalRules(earlier);
    BOOST_TEST_REQUIRE(read.has_value());
    BOOST_TEST(read->hash == rulesHash(earlier));
    BOOST_TEST(read->hash != defaultRules().hash);
    for (std::size_t i = 0; i < read->profiles.size(); ++i) {
        BOOST_TEST(!read->profiles[i].of(Criterion::frameSize).judged);
        BOOST_TEST((read->profiles[i].of(Criterion::blur) ==
                    defaultRules().find(read->profiles[i].name)->of(Criterion::blur)));
    }
    BOOST_TEST(!readCanonicalRules(earlier + "blur\tyes\n").has_value());
}

BOOST_AUTO_TEST_CASE(every_hand_over_is_judged_again_as_it_was, *utf::label("PROP"))
{
    const SampleCamp sample;
    std::map<std::string, Fit> given;
    {
        auto opened = sample.open();
        const auto result = dispenseTable(opened, samplePeople(), {}, "R", false);
        for (const auto& answer : result.answers)
            if (answer.entry)
                given[answer.entry->id] = answer.recommendation.candidates.ranked.front().fit;
    }
    for (const int threads : {1, 2}) {
        AuditOptions options;
        options.threads = threads;
        const auto heard = audited(sample.open(Ledger::Mode::readOnly), options);
        BOOST_TEST(given.size() > 140u);
        BOOST_TEST(heard.fits.size() == given.size());
        for (const auto& [entry, fit] : given) {
            const auto again = heard.fits.find(entry);
            BOOST_TEST_REQUIRE((again != heard.fits.end()));
            BOOST_TEST((again->second.band == fit.band));
            BOOST_TEST(std::abs(again->second.cost - fit.cost) < 1e-9);
            BOOST_TEST(std::abs(again->second.prism.horizontal - fit.prism.horizontal) < 1e-9);
            BOOST_TEST_REQUIRE(again->second.criteria.size() == fit.criteria.size());
            for (std::size_t i = 0; i < fit.criteria.size(); ++i) {
                BOOST_TEST((again->second.criteria[i].band == fit.criteria[i].band));
                BOOST_TEST(std::abs(again->second.criteria[i].measured - fit.criteria[i].measured) < 1e-9);
            }
        }
        BOOST_TEST(heard.count(AuditClass::verdictDiffers) == 0);
        BOOST_TEST(heard.count(AuditClass::outsideWithoutReason) == 0);
        BOOST_TEST(heard.count(AuditClass::checksNotRecorded) == static_cast<long>(given.size()));
    }
}

BOOST_AUTO_TEST_CASE(rules_changed_later_do_not_change_the_judgement, *utf::label("PROP"))
{
    const SampleCamp sample;
    {
        auto opened = sample.open();
        (void)dispenseTable(opened, samplePeople(), {}, "R", false);
    }
    std::filesystem::remove(sample.folder / "rules.yaml"); // the rules built in, with another hash
    const auto heard = audited(sample.open(Ledger::Mode::readOnly));
    BOOST_TEST(heard.count(AuditClass::rulesMissing) == 0);
    BOOST_TEST(heard.count(AuditClass::verdictDiffers) == 0);
    BOOST_TEST(heard.summary.judged == heard.summary.handOvers);
}

BOOST_AUTO_TEST_CASE(a_worse_pair_than_one_in_the_box_is_named_with_line_and_bin, *utf::label("DER"))
{
    const SampleCamp sample;
    auto opened = sample.open();
    const auto person = someone("-1.00", "-1.00");
    const auto best = recommend(person, opened.stock(), opened.rules(), {}).front().candidates.ranked.front();
    const auto entry = give(opened, person, "D+200-62M", "asked for");
    const auto heard = audited(opened);
    BOOST_TEST(heard.count(AuditClass::outsideWithReason) == 1);
    BOOST_TEST(heard.count(AuditClass::betterPairInBox) == 1);
    for (const auto& finding : heard.findings)
        if (finding.kind == AuditClass::betterPairInBox) {
            BOOST_TEST(finding.entry == entry.id);
            BOOST_TEST(finding.detail.arguments[0] == opened.stock()[best.parts[0].line].name);
            // Blendowske's loss, both eyes: error 3 D each; the best pair is exact: 2 log10(1 + 9) = 2.00
            BOOST_TEST(finding.detail.arguments[2] == "2.00");
        }
}

BOOST_AUTO_TEST_CASE(what_was_taken_back_is_not_judged, *utf::label("PROP"))
{
    const SampleCamp sample;
    auto opened = sample.open();
    const auto entry = give(opened, someone("-1.00", "-1.00"), "D+200-62M", "asked for");
    opened.post(undoOf(opened, entry.id, "AB", "wrong person"));
    const auto heard = audited(opened);
    BOOST_TEST(heard.summary.handOvers == 0);
    BOOST_TEST(heard.findings.empty());
}

BOOST_AUTO_TEST_CASE(a_second_hand_over_for_one_purpose_and_a_future_entry_are_told, *utf::label("PROP"))
{
    const SampleCamp sample;
    auto opened = sample.open();
    const auto person = someone("+2.00", "+2.00", 20.0);
    (void)give(opened, person, "D+200-62M");
    (void)give(opened, person, "D+200-62M");
    BOOST_TEST(audited(opened).count(AuditClass::duplicateHandOver) == 1);
    AuditOptions early;
    early.nowMs = 1;
    const auto heard = audited(opened, early);
    BOOST_TEST(heard.count(AuditClass::fromTheFuture) == heard.summary.entries);
}

BOOST_AUTO_TEST_CASE(a_forgotten_person_is_told_as_not_judged, *utf::label("PROP"))
{
    const SampleCamp sample;
    auto opened = sample.open();
    (void)give(opened, someone("+2.00", "+2.00", 20.0), "D+200-62M");
    (void)opened.ledger().forgetPerson("T-1");
    const auto heard = audited(opened);
    BOOST_TEST(heard.count(AuditClass::recordMissing) == 1);
    BOOST_TEST(heard.summary.judged == 0);
    BOOST_TEST(heard.summary.chain.ok);
}

BOOST_AUTO_TEST_CASE(a_broken_chain_is_audited_up_to_the_break, *utf::label("PROP"))
{
    const SampleCamp sample;
    std::int64_t entries = 0;
    {
        auto opened = sample.open();
        (void)dispenseTable(opened, samplePeople(), {}, "R", false);
        entries = opened.ledger().position();
    }
    changeOneWord(sample.folder / "ledger.sqlite");
    const auto heard = audited(sample.open(Ledger::Mode::readOnly));
    BOOST_TEST(!heard.summary.chain.ok);
    BOOST_TEST(heard.summary.entries >= 60);
    BOOST_TEST(heard.summary.entries < entries);
    BOOST_TEST(heard.summary.entries == *heard.summary.chain.badPosition - 1);
}

BOOST_AUTO_TEST_CASE(every_class_has_its_own_word_and_says_what_to_do, *utf::label("PROP"))
{
    std::set<std::string> words;
    for (std::size_t i = 0; i < auditClassCount; ++i) {
        const auto& info = auditClasses()[i];
        BOOST_TEST(static_cast<std::size_t>(info.kind) == i);
        words.insert(info.word);
        BOOST_TEST(std::string(info.next) != "");
    }
    BOOST_TEST(words.size() == auditClassCount);
}

BOOST_AUTO_TEST_SUITE_END()
