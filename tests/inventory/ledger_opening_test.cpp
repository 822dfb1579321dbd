// SPDX-License-Identifier: GPL-3.0-or-later
// Opening a ledger: what is refused, what waits, what is found when the file is not where it was.
#include "inventory/store/connection.hpp"
#include "inventory/store/ledger.hpp"
#include "inventory/store/place.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/stores.hpp"

#include <sys/mount.h>
#include <unistd.h>

#include <chrono>
#include <iostream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

constexpr auto readWrite = Ledger::Mode::readWrite;
constexpr auto readOnly = Ledger::Mode::readOnly;

Entry oneOf(const std::string& line)
{
    Entry entry;
    entry.movements = {{line, -1, "pair"}};
    return entry;
}

void makeLedger(const std::string& path)
{
    openLedger(path, readWrite).introduce("Box", {{"A", 5, 0, 0}});
}

} // namespace

BOOST_AUTO_TEST_SUITE(opening)

BOOST_AUTO_TEST_CASE(what_is_no_ledger_is_refused_and_left_as_it_was, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    const std::string text = "lines:\n" + std::string(2000, 'x');
    writeBytes(folder / "text", text);
    QS_CHECK_ERROR("ledger-not-a-database", 3, Ledger::open(folder / "text", readWrite));
    QS_CHECK_ERROR("ledger-not-a-database", 3, Ledger::open(folder / "text", readOnly));
    BOOST_TEST(readBytes(folder / "text") == text);
    QS_CHECK_ERROR("ledger-not-a-database", 3, Ledger::open(folder.path(), readWrite));
    QS_CHECK_ERROR("ledger-missing", 3, Ledger::open(folder / "none", readOnly));
    QS_CHECK_ERROR("ledger-unwritable", 4, Ledger::open(folder / "no folder/none", readWrite));
    writeBytes(folder / "empty", "");
    QS_CHECK_ERROR("ledger-missing", 3, Ledger::open(folder / "empty", readOnly));
}

BOOST_AUTO_TEST_CASE(a_database_of_another_program_is_left_alone, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    writeBytes(folder / "other", "");
    Connection(folder / "other", Connection::Access::readWrite, 200).execute("CREATE TABLE t (a)");
    const auto before = readBytes(folder / "other");
    QS_CHECK_ERROR("ledger-not-a-database", 3, Ledger::open(folder / "other", readWrite));
    BOOST_TEST((readBytes(folder / "other") == before));
}

BOOST_AUTO_TEST_CASE(a_newer_ledger_is_refused, *utf::label("PROP"))
{
    TemporaryFolder folder;
    makeLedger(folder / "l");
    rawConnection(folder / "l")
        ->execute(onServer() ? "UPDATE form SET version = 3" : "PRAGMA user_version = 3");
    QS_CHECK_ERROR("ledger-newer", 3, openLedger(folder / "l", readWrite));
    QS_CHECK_ERROR("ledger-newer", 3, openLedger(folder / "l", readOnly));
}

BOOST_AUTO_TEST_CASE(a_damaged_ledger_is_told_not_crashed_on, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    makeLedger(folder / "l");
    auto bytes = readBytes(folder / "l");
    for (std::size_t i = 4096; i < bytes.size(); ++i)
        bytes[i] = static_cast<char>(i * 7);
    writeBytes(folder / "l", bytes);
    QS_CHECK_ERROR("ledger-not-a-database", 3, Ledger::open(folder / "l", readWrite));
}

BOOST_AUTO_TEST_CASE(any_file_name_opens_the_file_of_that_name, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    for (const std::string name : {"a b.sqlite", "100%25?mode=memory", "x#y", "größe?", "a&b;c"}) {
        makeLedger(folder / name);
        BOOST_TEST(std::filesystem::file_size(folder / name) > 4096U, name);
        BOOST_TEST(Ledger::open(folder / name, readOnly).position() == 1, name);
    }
}

BOOST_AUTO_TEST_CASE(a_ledger_held_by_another_program_is_told_within_the_waiting_time, *utf::label("PROP"))
{
    TemporaryFolder folder;
    makeLedger(folder / "l");
    auto ledger = openLedger(folder / "l", readWrite);
    const auto other = rawConnection(folder / "l");
    other->beginWriting();
    const auto begin = std::chrono::steady_clock::now();
    QS_CHECK_ERROR("ledger-locked", 4, ledger.post("Box", oneOf("A")));
    const std::chrono::duration<double> waited = std::chrono::steady_clock::now() - begin;
    BOOST_TEST(waited.count() > 1.5);
    BOOST_TEST(waited.count() < 5.0);
    BOOST_TEST(ledger.balances("Box").at(0).onHand == 5); // reading goes on
    other->commit();
    BOOST_TEST(ledger.post("Box", oneOf("A")).number == 2);
}

BOOST_AUTO_TEST_CASE(a_ledger_kept_for_itself_by_another_program_cannot_be_opened,
                     *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    makeLedger(folder / "l");
    Connection other(folder / "l", Connection::Access::readWrite, 200);
    other.execute("PRAGMA locking_mode = EXCLUSIVE");
    other.execute("BEGIN EXCLUSIVE");
    QS_CHECK_ERROR("ledger-locked", 4, Ledger::open(folder / "l", readWrite));
    QS_CHECK_ERROR("ledger-locked", 4, Ledger::open(folder / "l", readOnly));
    other.execute("COMMIT");
}

BOOST_AUTO_TEST_CASE(nothing_is_posted_into_a_ledger_that_was_replaced, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    makeLedger(folder / "l");
    auto ledger = Ledger::open(folder / "l", readWrite);
    makeLedger(folder / "m");
    std::filesystem::rename(folder / "m", folder / "l");
    QS_CHECK_ERROR("ledger-replaced", 4, ledger.post("Box", oneOf("A")));
    std::filesystem::remove(folder / "l");
    QS_CHECK_ERROR("ledger-replaced", 4, ledger.post("Box", oneOf("A")));
}

BOOST_AUTO_TEST_CASE(a_copied_ledger_is_for_reading_until_it_is_said_to_have_moved,
                     *utf::label("PROP") * filesOnly())
{
    TemporaryFolder here;
    TemporaryFolder there;
    makeLedger(here / "l");
    std::filesystem::copy_file(here / "l", there / "l");
    {
        auto copy = Ledger::open(there / "l", readWrite);
        BOOST_TEST(copy.moved());
        BOOST_TEST(!copy.writable());
        QS_CHECK_ERROR("ledger-moved", 4, copy.post("Box", oneOf("A")));
        QS_CHECK_ERROR("ledger-moved", 4, copy.introduce("Box", {{"N", 1, 0, 0}}));
        BOOST_TEST(copy.position() == 1);
        copy.claimPlace();
        BOOST_TEST(copy.post("Box", oneOf("A")).number == 2);
    }
    BOOST_TEST(!Ledger::open(there / "l", readWrite).moved());
    BOOST_TEST(!Ledger::open(here / "l", readWrite).moved());
}

BOOST_AUTO_TEST_CASE(a_renamed_folder_is_the_same_place, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    std::filesystem::create_directory(folder / "one");
    makeLedger(folder / "one/l");
    std::filesystem::rename(folder / "one", folder / "two");
    BOOST_TEST(!Ledger::open(folder / "two/l", readWrite).moved());
}

BOOST_AUTO_TEST_CASE(a_ledger_opened_for_reading_is_not_written, *utf::label("PROP"))
{
    TemporaryFolder folder;
    makeLedger(folder / "l");
    auto ledger = openLedger(folder / "l", readOnly);
    QS_CHECK_ERROR("ledger-unwritable", 4, ledger.post("Box", oneOf("A")));
    QS_CHECK_ERROR("ledger-unwritable", 4, ledger.claimPlace());
    BOOST_TEST(ledger.checkChain().ok);
}

BOOST_AUTO_TEST_CASE(
    network_file_systems_are_known_by_their_magic,
    *utf::label("REF") *
        utf::description("[linux-magic] NFS, SMB, CIFS, SMB2; ext4, tmpfs, FAT, Btrfs, overlay"))
{
    for (const std::uint64_t magic : {0x6969U, 0x517BU, 0xFF534D42U, 0xFE534D42U})
        BOOST_TEST(isNetworkFileSystem(magic));
    BOOST_TEST(isNetworkFileSystem(0xFFFFFFFFFF534D42U)); // as a signed 32-bit field gives it
    for (const std::uint64_t magic : {0xEF53U, 0x01021994U, 0x4D44U, 0x9123683EU, 0x794C7630U})
        BOOST_TEST(!isNetworkFileSystem(magic));
}

BOOST_AUTO_TEST_CASE(a_closed_ledger_on_a_read_only_medium_is_read, *utf::label("PROP") * filesOnly())
{
    TemporaryFolder folder;
    if (mount("none", folder.path().c_str(), "tmpfs", 0, "size=1m") != 0) {
        std::cerr << "SKIPPED: a read-only medium needs the right to mount\n";
        BOOST_TEST_MESSAGE("SKIPPED: a read-only medium needs the right to mount");
        return;
    }
    makeLedger(folder / "l");
    BOOST_REQUIRE(mount("none", folder.path().c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, "size=1m") == 0);
    {
        const auto ledger = Ledger::open(folder / "l", readOnly);
        BOOST_TEST(ledger.balances("Box").at(0).onHand == 5);
        BOOST_TEST(ledger.checkChain().ok);
    }
    QS_CHECK_ERROR("ledger-unwritable", 4, Ledger::open(folder / "l", readWrite));
    BOOST_TEST(umount(folder.path().c_str()) == 0);
}

BOOST_AUTO_TEST_SUITE_END()
