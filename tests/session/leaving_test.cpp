// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves a camp and what comes from another.
#define BOOST_TEST_MODULE leaving
#include <boost/test/unit_test.hpp>

#include "app/session/keeping.hpp"
#include "app/session/leaving.hpp"
#include "app/session/pins.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/qt_application.hpp"

#include <sys/stat.h>

namespace utf = boost::unit_test;
using namespace quarterstep;
namespace qt = quarterstep::test;
using quarterstep::test::QtApplication;

namespace
{

std::string stockOf(const std::string& site)
{
    return "format: quarterstep stock 1\nsite: " + site +
           "\nlines:\n  - {line: A, kind: ready-made, power: +2.00, on hand: 30}\n";
}

struct Place {
    qt::TemporaryFolder folder;
    std::string path;
    Camp camp;
    explicit Place(const std::string& site)
        : path(made(folder, site)), camp(Camp::open(path, Ledger::Mode::readWrite))
    {
    }
    static std::string made(const qt::TemporaryFolder& folder, const std::string& site)
    {
        qt::writeBytes(folder / "stock.yaml", stockOf(site));
        return folder.path();
    }
    Entry give(const std::string& person, const std::string& reason = {})
    {
        Entry entry;
        entry.person = person;
        entry.actor = "Dispenser Dorrit";
        entry.movements = {{"A", -1, "pair"}};
        entry.fields = {{"purpose", "near"}, {"final", "R +2.00 L +2.00"}};
        entry.texts = {{"reason", reason}};
        return camp.post(entry);
    }
};

std::string all(const ExportTable& table)
{
    return csvOf(table);
}

bool holds(const std::string& text, const std::string& part)
{
    return text.find(part) != std::string::npos;
}

mode_t modeOf(const std::string& path)
{
    struct stat status {
    };
    return stat(path.c_str(), &status) == 0 ? status.st_mode & 07777 : 0;
}

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);

BOOST_AUTO_TEST_CASE(rows_hold_no_code_no_name_no_hour_and_no_own_words, *utf::label("PROP"))
{
    Place place("North");
    place.camp.ledger().putPersons({{"K-4711", "Umberta"}});
    place.give("K-4711", "told by Osric");
    place.give("K-4712");
    place.give("K-4711");
    const auto rows = all(exportTable(place.camp, ExportLevel::rows));
    for (const auto* secret : {"4711", "4712", "Umberta", "Osric", "Dorrit", "T0", "R +2.00"})
        BOOST_TEST(!holds(rows, secret), secret);
    BOOST_TEST(holds(rows, "person 1"));
    BOOST_TEST(holds(rows, "person 2"));
    BOOST_TEST(!holds(rows, "person 3"));
    const auto full = all(exportTable(place.camp, ExportLevel::full));
    for (const auto* known : {"K-4711", "Umberta", "told by Osric", "Dispenser Dorrit", "R +2.00 L +2.00"})
        BOOST_TEST(holds(full, known), known);
}

BOOST_AUTO_TEST_CASE(counts_leave_out_what_was_taken_back, *utf::label("DER"))
{
    Place place("North");
    for (int i = 0; i < 7; ++i)
        place.give("K-" + std::to_string(i));
    carryOut(place.camp, {undoOf(place.camp, handOverToday(place.camp, "K-0"), "", "wrong")}, false);
    const auto counts = all(exportTable(place.camp, ExportLevel::aggregate));
    BOOST_TEST(holds(counts, "entries,handed-over,6\n"));
    BOOST_TEST(holds(counts, "handed-over by purpose,near,6\n"));
    BOOST_TEST(!holds(counts, "entered-in-error"));
}

BOOST_AUTO_TEST_CASE(a_copied_folder_is_for_its_owner_and_opens_as_the_same_camp, *utf::label("PROP"))
{
    Place place("North");
    place.give("K-1");
    qt::TemporaryFolder other;
    const auto names = exportFolder(place.camp, other / "copy");
    BOOST_TEST(names.size() == 2U);
    BOOST_TEST(modeOf(other / "copy") == 0700U);
    BOOST_TEST(modeOf(other / "copy/ledger.sqlite") == 0600U);
    BOOST_TEST(modeOf(other / "copy/stock.yaml") == 0600U);
    BOOST_TEST(qt::readBytes(other / "copy/stock.yaml") == qt::readBytes(place.path + "/stock.yaml"));
    const auto copy = Camp::open(other / "copy", Ledger::Mode::readWrite);
    BOOST_TEST(copy.ledger().moved());
    BOOST_TEST(copy.edited().empty());
    BOOST_TEST(copy.stock()[0].onHand == 29);
    QS_CHECK_ERROR("file-exists", 3, exportFolder(place.camp, other / "copy"));
    place.give("K-2"); // the camp goes on
    BOOST_TEST(place.camp.ledger().checkChain().ok);
}

BOOST_AUTO_TEST_CASE(a_copy_that_cannot_be_made_leaves_nothing_behind, *utf::label("PROP"))
{
    Place place("North");
    place.give("K-1");
    qt::TemporaryFolder other;
    std::filesystem::remove(place.path + "/stock.yaml");
    std::filesystem::create_directory(place.path + "/stock.yaml");
    QS_CHECK_ERROR("file-is-folder", 3, exportFolder(place.camp, other / "copy"));
    BOOST_TEST(!std::filesystem::exists(other / "copy"));
}

BOOST_AUTO_TEST_CASE(a_merge_into_the_same_site_moves_the_file_as_well, *utf::label("PROP"))
{
    Place place("North");
    place.give("K-1");
    qt::TemporaryFolder other;
    exportFolder(place.camp, other / "copy");
    {
        auto second = Camp::open(other / "copy", Ledger::Mode::readWrite);
        second.becomeSecondStation();
        Entry entry;
        entry.person = "K-2";
        entry.movements = {{"A", -2, "pair"}};
        second.post(entry);
    }
    const auto report = importLedger(place.camp, other / "copy", false);
    BOOST_TEST(report.added == 1);
    BOOST_TEST(place.camp.stock()[0].onHand == 27);
    BOOST_TEST(holds(qt::readBytes(place.path + "/stock.yaml"), "on hand: 27"));
    BOOST_TEST(importLedger(place.camp, other / "copy", false).added == 0);
    BOOST_TEST(place.camp.edited().empty());
}

BOOST_AUTO_TEST_CASE(a_pin_opens_its_own_role_and_is_not_kept_as_it_was_typed, *utf::label("PROP"))
{
    Place place("North");
    auto& ledger = place.camp.ledger();
    BOOST_TEST(!hasPin(ledger, Role::keeper));
    setPin(ledger, Role::keeper, "slate 4711");
    BOOST_TEST(hasPin(ledger, Role::keeper));
    BOOST_TEST(!hasPin(ledger, Role::optician));
    BOOST_TEST(pinFits(ledger, Role::keeper, "slate 4711"));
    BOOST_TEST(!pinFits(ledger, Role::keeper, "slate 4712"));
    BOOST_TEST(!pinFits(ledger, Role::keeper, ""));
    BOOST_TEST(!pinFits(ledger, Role::optician, "slate 4711"));
    BOOST_TEST(ledger.setting("pin keeper").rfind("$argon2id$", 0) == 0U); // the hash of RFC 9106
    BOOST_TEST(ledger.setting("pin keeper").find("4711") == std::string::npos);
    const auto first = ledger.setting("pin keeper");
    setPin(ledger, Role::keeper, "slate 4711");
    BOOST_TEST(ledger.setting("pin keeper") != first); // another salt
    QS_CHECK_ERROR("pin-form", 3, setPin(ledger, Role::keeper, "123"));
    QS_CHECK_ERROR("pin-form", 3, setPin(ledger, Role::keeper, std::string(65, '1')));
    BOOST_TEST(pinFits(ledger, Role::keeper, "slate 4711"));
    removePin(ledger, Role::keeper);
    BOOST_TEST(!hasPin(ledger, Role::keeper));
    BOOST_TEST(ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(what_writes_for_the_keeper_or_the_supervisor_asks_that_role, *utf::label("PROP"))
{
    for (const char* verb : {"receive", "count", "transfer"})
        BOOST_TEST((roleAskedBy(verb) == Role::keeper), verb);
    BOOST_TEST((roleAskedBy("transfer", "out") == Role::keeper));
    for (const auto kind :
         {EntryKind::writtenOff, EntryKind::held, EntryKind::quarantined, EntryKind::released})
        BOOST_TEST((roleAskedBy("record", wordOf(kind)) == Role::keeper), wordOf(kind));
    for (const char* edits : {"--accept-edits", "--discard-edits"})
        BOOST_TEST((roleAskedBy("stock", edits) == Role::keeper), edits);
    for (const char* verb : {"stock", "import", "export", "forget", "audit", "settings"})
        BOOST_TEST((roleAskedBy(verb) == Role::supervisor), verb);
    for (const char* verb : {"dispense", "order"})
        BOOST_TEST((roleAskedBy(verb) == Role::optician), verb);
    for (const auto kind : {EntryKind::returned, EntryKind::declined, EntryKind::enteredInError})
        BOOST_TEST((roleAskedBy("record", wordOf(kind)) == Role::optician), wordOf(kind));
}

BOOST_AUTO_TEST_CASE(another_pin_is_refused_and_the_supervisors_opens_the_others, *utf::label("PROP"))
{
    Place place("North");
    auto& ledger = place.camp.ledger();
    setPin(ledger, Role::keeper, "slate 4711");
    requireFit(ledger, Role::keeper, "slate 4711");
    QS_CHECK_ERROR("pin-wrong", 4, requireFit(ledger, Role::keeper, "slate 4712"));
    BOOST_TEST((roleChangingPinOf(ledger, Role::optician) == Role::optician));
    setPin(ledger, Role::supervisor, "0815");
    BOOST_TEST((roleChangingPinOf(ledger, Role::optician) == Role::supervisor));
}

BOOST_AUTO_TEST_CASE(no_byte_of_a_forgotten_name_is_left, *utf::label("PROP"))
{
    Place place("North");
    place.camp.ledger().putPersons({{"K-1", "Umbertina of the quay"}, {"K-2", "Osric"}});
    place.give("K-1");
    (void)place.camp.ledger().forgetPerson("K-1");
    BOOST_TEST(!place.camp.ledger().person("K-1").has_value());
    BOOST_TEST(place.camp.ledger().person("K-2")->name == "Osric");
    for (const char* end : {"", "-wal"}) {
        const auto bytes = qt::readBytes(place.path + "/ledger.sqlite" + end);
        BOOST_TEST(bytes.find("Umbertina") == std::string::npos, end);
    }
}
