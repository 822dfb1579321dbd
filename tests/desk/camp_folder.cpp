// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desk/camp_folder.hpp"

#include "inventory/text/prescription_table.hpp"
#include "inventory/text/rules_file.hpp"
#include "inventory/text/stock_file.hpp"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

namespace quarterstep
{

namespace
{
constexpr auto stockText = R"(format: quarterstep stock 1
site: Test table
lines:
  - {line: D-100, kind: ready-made, power: -1.00, centres: 62, centres from: measured, heights differ by: 0.00, bin: B1, on hand: 4}
  - {line: D-125, kind: ready-made, power: -1.25, centres: 62, centres from: measured, heights differ by: 0.00, bin: B2, on hand: 2}
  - {line: D-150, kind: ready-made, power: -1.50, centres: 62, centres from: measured, heights differ by: 0.00, bin: B3, on hand: 5}
  - {line: N+200, kind: ready-made, power: +2.00, use: near, centres: 60, centres from: measured, heights differ by: 0.00, bin: C1, on hand: 3}
  - {line: L-300, kind: lens, power: -3.00, shape: round 44, side: either, bin: A1, on hand: 4}
  - {line: L-400, kind: lens, power: -4.00, shape: round 44, side: either, bin: A2, on hand: 4}
  - {line: F-M, kind: frame, takes: [round 44], centres: 62, centres from: measured, frame: {lens: 44, bridge: 18}, bin: F1, on hand: 2}
)";

constexpr auto peopleText = "person,age,purpose,right,left,add,pd_mm,va_best_right,va_best_left,prescriber\n"
                            "P-1,24,distance,-1.25,-1.25,,62,6/6,6/6,K\n"
                            "P-2,47,both,-1.00,-1.00,+2.00,62,6/6,6/6,K\n"
                            "P-3,30,distance,-1.50 -1.00 x 90,-1.50 -1.00 x 90,,62,6/6,6/6,K\n"
                            "P-4,30,distance,1.25,-1.25,,62,6/6,6/6,K\n";
} // namespace

CampFolder::CampFolder()
{
    write(QStringLiteral("stock.yaml"), stockText);
    write(QStringLiteral("people.csv"), peopleText);
}

QByteArray CampFolder::read(const QString& name) const
{
    QFile file(folder_.filePath(name));
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

void CampFolder::write(const QString& name, const QByteArray& bytes) const
{
    QFile file(folder_.filePath(name));
    BOOST_TEST_REQUIRE(file.open(QIODevice::WriteOnly));
    BOOST_TEST_REQUIRE(file.write(bytes) == bytes.size());
}

int CampFolder::onHand(const QByteArray& line) const
{
    const QRegularExpression form(QStringLiteral("line: %1,.*on hand: ([0-9]+)")
                                      .arg(QRegularExpression::escape(QString::fromUtf8(line))));
    const auto found = form.match(QString::fromUtf8(read(QStringLiteral("stock.yaml"))));
    BOOST_TEST_REQUIRE(found.hasMatch());
    return found.captured(1).toInt();
}

OpenDesk::OpenDesk()
{
    window.resize(1366, 768);
    window.show();
    BOOST_TEST_REQUIRE(QTest::qWaitForWindowExposed(&window));
    BOOST_TEST_REQUIRE(window.openCamp(folder.path()));
}

SmallAnswer::SmallAnswer() : rules(defaultRules())
{
    auto read = readStockText(stockText, "stock.yaml");
    BOOST_TEST_REQUIRE(read.usable());
    stock = read.value.lines;
    PersonRecord person;
    person.person = "P-9";
    for (const auto& [column, text] : {std::pair{"age", "24"}, std::pair{"right", "-1.25"},
                                       std::pair{"left", "-1.00 -0.50 x 45"}, std::pair{"pd_mm", "62"}})
        BOOST_TEST_REQUIRE(!setField(person, column, text));
    const auto answers = recommend(person, stock, rules, {});
    BOOST_TEST_REQUIRE(answers.size() == 1U);
    answer = answers.front();
}

} // namespace quarterstep
