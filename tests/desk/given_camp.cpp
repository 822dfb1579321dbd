// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desk/given_camp.hpp"

#include "app/desk/places/audit_place.hpp"
#include "app/session/hand_over.hpp"
#include "inventory/text/prescription_table.hpp"
#include "inventory/text/record_text.hpp"

#include <QLabel>
#include <QTest>

namespace quarterstep
{

GivenCamp::GivenCamp()
{
    auto camp = Camp::open(folder.path().toStdString(), Ledger::Mode::readWrite);
    const auto people = readPrescriptionTable(camp.folder() + "/people.csv", "").value.rows;
    good = give(camp, *people[0].record, "D-125", {});
    off = give(camp, *people[0].record, "L-400", "what there was");
}

std::string GivenCamp::give(Camp& camp, const PersonRecord& person, const std::string& line,
                            const std::string& reason)
{
    const auto answers = recommend(person, camp.stock(), camp.rules(), {});
    HandOver given;
    given.recommendation = &answers.front();
    if (line.front() == 'L')
        given.parts = {{*camp.lineNamed("F-M"), PartSide::frame},
                       {*camp.lineNamed(line), PartSide::right},
                       {*camp.lineNamed(line), PartSide::left}};
    else
        given.parts = {{*camp.lineNamed(line), PartSide::pair}};
    given.reason = reason;
    given.actor = "AB";
    given.record = recordText(person);
    return handOver(camp, given).id;
}

void GivenCamp::changeWords() const
{
    auto bytes = folder.read(QStringLiteral("ledger.sqlite"));
    const auto at = bytes.indexOf("what there was");
    BOOST_TEST_REQUIRE(at > 0);
    bytes[at] = 'W';
    folder.write(QStringLiteral("ledger.sqlite"), bytes);
}

AuditDesk::AuditDesk()
{
    window.resize(1366, 768);
    window.show();
    BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
    BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
    QTest::keyClick(&window, Qt::Key_3, Qt::AltModifier);
    window.audit().waitForAudit();
}

QString AuditDesk::label(const char* name)
{
    return named<QLabel>(window, name).text();
}

} // namespace quarterstep
