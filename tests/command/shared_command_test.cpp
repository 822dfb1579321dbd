// SPDX-License-Identifier: GPL-3.0-or-later
// The commands of a shared ledger, from the command line to a server the test starts for itself: set up,
// moved there, used by a station, moved back.
#define BOOST_TEST_MODULE shared_command
#include <boost/test/unit_test.hpp>

#include "inventory/store/connection.hpp"
#include "tests/inventory/folder.hpp"
#include "tests/inventory/qt_application.hpp"
#include "tests/inventory/server.hpp"

#include <QProcess>

#include <cstdlib>
#include <iostream>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::test;

namespace
{

TestServer& server()
{
    static std::string why;
    static const auto running = TestServer::start(why);
    if (!running) {
        std::cerr << "SKIPPED: " << why << "\n";
        std::exit(77);
    }
    return *running;
}

struct Ran {
    int status = -1;
    std::string out;
    std::string err;
};

/// The small camp of tests/command/camp in a folder of its own, and the program run beside it.
struct Beside {
    TemporaryFolder folder;
    Beside() { std::filesystem::copy(std::string(QS_SOURCE_DIR) + "/tests/command/camp", folder / "camp"); }
    [[nodiscard]] Ran run(const std::string& words) const
    {
        QProcess program;
        program.setWorkingDirectory(QString::fromStdString(folder.path()));
        program.start(QStringLiteral(QS_BINARY_DIR "/bin/quarterstep"),
                      QString::fromStdString(words).split(QLatin1Char(' ')));
        program.waitForFinished(-1);
        return {program.exitCode(), program.readAllStandardOutput().toStdString(),
                program.readAllStandardError().toStdString()};
    }
    [[nodiscard]] std::string stock() const { return readBytes(folder / "camp/stock.yaml"); }
};

bool holds(const std::string& text, const std::string& part)
{
    return text.find(part) != std::string::npos;
}

const std::string give = "dispense --camp camp --person K-2 --lines D-100-62 camp/people.csv";

} // namespace

BOOST_TEST_GLOBAL_FIXTURE(QtApplication);

BOOST_AUTO_TEST_CASE(a_shared_ledger_is_set_up_used_and_left_from_the_command_line, *utf::label("PROP"))
{
    server().makeDatabase("camp");
    const auto address = server().address("camp", "keeper");
    const Beside camp;
    BOOST_TEST(camp.run(give).status == 0);
    const auto early = camp.run("stock --camp camp --move-ledger " + address);
    BOOST_TEST(early.status == 3); // nobody has set it up
    BOOST_TEST(holds(early.err, "[ledger-missing]"));
    const auto made = camp.run("stock --camp camp --set-up " + address);
    BOOST_TEST(made.status == 0);
    BOOST_TEST(holds(made.out, "can be used; add the logins of stations to the group quarterstep_station"));
    const auto again = camp.run("stock --camp camp --set-up " + address);
    BOOST_TEST(again.status == 3);
    BOOST_TEST(holds(again.err, "[ledger-exists]"));
    const auto before = camp.stock();
    const auto dry = camp.run("stock --camp camp --move-ledger " + address + " --dry-run");
    BOOST_TEST(dry.status == 0);
    BOOST_TEST(camp.stock() == before);
    const auto moved = camp.run("stock --camp camp --move-ledger " + address + " --json");
    BOOST_TEST(moved.status == 0);
    BOOST_TEST(holds(moved.out, "\"entries\": 2,"));
    BOOST_TEST(holds(camp.stock(), "ledger: " + address));
    const auto checked = camp.run("stock --camp camp --check");
    BOOST_TEST(checked.status == 0);
    BOOST_TEST(holds(checked.out, "ledger: 2 entries, all in order"));
    BOOST_TEST(camp.run("receive --camp camp --line D-100-62 --quantity 5 --from Base").status == 0);
    const auto back = camp.run("stock --camp camp --move-ledger back.sqlite");
    BOOST_TEST(back.status == 0);
    BOOST_TEST(holds(back.out, "3 entries in back.sqlite"));
    BOOST_TEST(holds(camp.run("stock --camp camp --check").out, "ledger: 3 entries, all in order"));
}

BOOST_AUTO_TEST_CASE(a_login_that_may_not_is_refused_and_the_camp_stays_as_it_is, *utf::label("PROP"))
{
    server().makeLedger("guarded");
    server().makeDatabase("empty");
    const Beside camp;
    BOOST_TEST(camp.run(give).status == 0);
    const auto before = camp.stock();
    const auto made = camp.run("stock --camp camp --set-up " + server().address("empty", "station"));
    BOOST_TEST(made.status == 4);
    BOOST_TEST(holds(made.err, "[ledger-not-allowed]"));
    const auto moved =
        camp.run("stock --camp camp --move-ledger " + server().address("guarded", "supervisor"));
    BOOST_TEST(moved.status == 4);
    BOOST_TEST(holds(moved.err, "[ledger-not-allowed]"));
    const auto stranger =
        camp.run("stock --camp camp --move-ledger " + server().address("guarded", "stranger"));
    BOOST_TEST(stranger.status == 4);
    BOOST_TEST(camp.stock() == before);
    BOOST_TEST(holds(camp.run("stock --camp camp --check").out, "ledger: 2 entries, all in order"));
    Connection keeper(server().address("guarded", "keeper"), Connection::Access::readWrite, 2000);
    BOOST_TEST(keeper.wholeOf("SELECT count(*) FROM entry") == 0);
}
