// SPDX-License-Identifier: GPL-3.0-or-later
// Other formats at the desk, DICOM by the program that has its library, and what is sent out.
#include "app/desk/bringing/bring_in_panel.hpp"
#include "app/desk/bringing/exchange_page.hpp"
#include "app/desk/bringing/send_out_panel.hpp"
#include "app/desk/guide/key_sheet.hpp"
#include "app/desk/message_bar.hpp"
#include "app/desk/models/finding_list_model.hpp"
#include "app/desk/places/dispense_place.hpp"
#include "app/session/beside.hpp"
#include "app/session/dicom_answer.hpp"
#include "app/session/keeping.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTableView>
#include <QTest>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
const BroughtIn& readBytes(OpenDesk& desk, const QString& name, const QByteArray& bytes)
{
    desk.folder.write(name, bytes);
    desk.window.exchange().bringIn().openFiles({desk.folder.path() + QLatin1Char('/') + name});
    desk.window.exchange().waitForReading();
    BOOST_TEST_REQUIRE((desk.window.exchange().bringIn().shown() != nullptr));
    return *desk.window.exchange().bringIn().shown();
}

constexpr int asDicom = 3; ///< place in the list of formats

QString writeOut(OpenDesk& desk, int format, const QString& name, int whom = 0)
{
    desk.window.exchange().showPart(ExchangePage::sendOutPart);
    named<QComboBox>(desk.window, "sendFormatBox").setCurrentIndex(format);
    named<QComboBox>(desk.window, "sendWhoBox").setCurrentIndex(whom);
    const auto path = desk.folder.path() + QLatin1Char('/') + name;
    desk.window.exchange().sendOut().writeTo(path);
    desk.window.exchange().waitForReading();
    return path;
}

const PersonRecord* personIn(const BroughtIn& read, const std::string& code)
{
    for (const auto& row : read.rows)
        if (row.record && row.person == code)
            return &*row.record;
    return nullptr;
}

std::string cellOf(const PersonRecord& person, const std::string& column)
{
    for (const auto& [name, value] : person.otherColumns)
        if (name == column)
            return value;
    return {};
}
} // namespace

BOOST_AUTO_TEST_SUITE(exchange_at_the_desk)

BOOST_AUTO_TEST_CASE(formats_are_known_by_how_they_begin, *utf::label("DER"))
{
    BOOST_TEST((formatFound("ID;R;L\n") == ExchangeFormat::table));
    BOOST_TEST((formatFound("\xEF\xBB\xBF {\"resourceType\":\"Bundle\"}") == ExchangeFormat::fhir));
    BOOST_TEST((formatFound("<VisionPrescription/>") == ExchangeFormat::fhir));
    BOOST_TEST((formatFound("{\"person\":\"K-1\"}\n") == ExchangeFormat::jsonLines));
    BOOST_TEST((formatFound(std::string(128, '\0') + "DICM....") == ExchangeFormat::dicom));
    BOOST_TEST((formatFound("") == ExchangeFormat::table));
}

BOOST_AUTO_TEST_CASE(what_is_sent_out_as_any_format_is_brought_in_the_same, *utf::label("PROP"))
{
    OpenDesk sender;
    const char* names[] = {"out.json", "out.csv", "out.jsonl"};
    for (int format = 0; format < 3; ++format) {
        const auto path = writeOut(sender, format, QString::fromUtf8(names[format]));
        BOOST_TEST_REQUIRE(QFileInfo::exists(path));
        OpenDesk receiver;
        receiver.folder.write(QStringLiteral("people.csv"), "person,right,left\n");
        BOOST_TEST_REQUIRE(receiver.window.openCamp(receiver.folder.path()));
        const auto& read = readBytes(receiver, QString::fromUtf8(names[format]),
                                     sender.folder.read(QString::fromUtf8(names[format])));
        BOOST_TEST_REQUIRE(read.rows.size() == 3U); // P-4 cannot be read and does not leave
        BOOST_TEST(read.taken == 3U);
        BOOST_TEST(read.rows[2].record->eyes.left.final.asWritten == "-1.50 -1.00 x 90");
        int rules = 0;
        for (const auto& [column, value] : read.rows[0].record->otherColumns)
            rules += column.rfind("rules_", 0) == 0 && !value.empty() ? 1 : 0;
        BOOST_TEST(rules == 3); // profile, version, hash
    }
}

BOOST_AUTO_TEST_CASE(dicom_is_read_by_the_program_that_has_its_library, *utf::label("PROP"))
{
    OpenDesk desk;
    const auto program = programBeside("quarterstep-dicom");
    if (!QFileInfo::exists(program)) {
        BOOST_TEST_MESSAGE("1 skipped: quarterstep-dicom is not built");
        return;
    }
    desk.folder.write(
        QStringLiteral("refraction.csv"),
        "person,age,right,left,add,pd_mm,written_on\nK-1,44,-1.25 -0.50 x 175,+0.75,2.00,62.5,2026-03-01\n");
    const auto file = desk.folder.path() + QStringLiteral("/k1.dcm");
    BOOST_TEST_REQUIRE(QProcess::execute(program, {QStringLiteral("export"), QStringLiteral("--as"),
                                                   QStringLiteral("dicom"), QStringLiteral("--output"), file,
                                                   desk.folder.path() + QStringLiteral("/refraction.csv")}) ==
                       0);
    auto& panel = desk.window.exchange().bringIn();
    panel.openFiles({file});
    desk.window.exchange().waitForReading();
    BOOST_TEST_REQUIRE((panel.shown() != nullptr));
    BOOST_TEST((panel.shown()->format == ExchangeFormat::dicom));
    BOOST_TEST_REQUIRE(panel.shown()->taken == 1U);
    const auto& record = *panel.shown()->rows[0].record;
    BOOST_TEST(record.eyes.right.final.asWritten == "-1.25 -0.50 x 175");
    BOOST_TEST(record.distancePd.value() == 62.5);
    auto broken = desk.folder.read(QStringLiteral("k1.dcm"));
    broken.truncate(broken.size() / 2);
    const auto& refused = readBytes(desk, QStringLiteral("broken.dcm"), broken);
    BOOST_TEST(refused.rows.empty());
    BOOST_TEST_REQUIRE(!refused.findings.empty());
    BOOST_TEST(refused.findings.front().code == "dicom-broken");
    BOOST_TEST(rowsOfAnswer("no answer", {}).findings.at(0).code == "dicom-answer");
}

BOOST_AUTO_TEST_CASE(the_person_on_the_card_leaves_as_dicom_and_reads_back_the_same, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-3")));
    const auto person = *desk.window.dispense().personOnCard();
    const auto path = writeOut(desk, asDicom, QStringLiteral("one.dcm"), 1);
    BOOST_TEST_REQUIRE(QFileInfo(path).isFile(), desk.window.messages().text().toStdString());
    auto& panel = desk.window.exchange().bringIn();
    panel.openFiles({path});
    desk.window.exchange().waitForReading();
    BOOST_TEST_REQUIRE((panel.shown() != nullptr));
    BOOST_TEST((panel.shown()->format == ExchangeFormat::dicom));
    BOOST_TEST_REQUIRE(panel.shown()->rows.size() == 1U);
    BOOST_TEST(panel.shown()->rows[0].findings.back().code ==
               "person-waiting"); // it is still in the list here
    OpenDesk receiver;
    receiver.folder.write(QStringLiteral("people.csv"), "person,right,left\n");
    BOOST_TEST_REQUIRE(receiver.window.openCamp(receiver.folder.path()));
    const auto* back = personIn(
        readBytes(receiver, QStringLiteral("one.dcm"), desk.folder.read(QStringLiteral("one.dcm"))), "P-3");
    BOOST_TEST_REQUIRE((back != nullptr));
    for (const auto eye : bothEyes)
        BOOST_TEST(back->eyes.of(eye).final.asWritten == person.eyes.of(eye).final.asWritten);
    BOOST_TEST((back->distancePd == person.distancePd));
    const auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly);
    BOOST_TEST(cellOf(*back, "rules_hash") == camp.rules().hash);
    BOOST_TEST(!cellOf(*back, "rules_profile").empty());
    BOOST_TEST(!cellOf(*back, "rules_version").empty());
}

BOOST_AUTO_TEST_CASE(what_would_stay_here_is_shown_before_anything_is_written, *utf::label("PROP"))
{
    OpenDesk desk;
    desk.folder.write(QStringLiteral("people.csv"),
                      "person,right,left,symptoms\nP-7,-1.00,-1.00,sees double\n");
    BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
    QTest::keyClick(&desk.window, Qt::Key_I, Qt::ControlModifier);
    desk.window.exchange().showPart(ExchangePage::sendOutPart);
    const auto before = QDir(desk.folder.path()).entryList(QDir::Files);
    auto& findings = *named<QTableView>(desk.window, "sendFindingsView").model();
    for (const int format : {0, 1, 2, asDicom}) {
        named<QComboBox>(desk.window, "sendFormatBox").setCurrentIndex(format);
        auto& check = named<QPushButton>(desk.window, "sendCheckButton");
        BOOST_TEST_REQUIRE(check.isEnabled());
        QTest::keyClick(&check, Qt::Key_Space);
        desk.window.exchange().waitForReading();
        BOOST_TEST_REQUIRE(findings.rowCount() == 1,
                           format << ": " << desk.window.messages().text().toStdString());
        BOOST_TEST(findings.index(0, FindingListModel::codeColumn)
                       .data(FindingListModel::rawRole)
                       .toString()
                       .toStdString() == "not-carried");
    }
    BOOST_TEST((QDir(desk.folder.path()).entryList(QDir::Files) == before));
}

BOOST_AUTO_TEST_CASE(everybody_leaves_as_dicom_with_a_file_each_and_over_none, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(QDir(desk.folder.path()).mkdir(QStringLiteral("out")));
    QDir out(writeOut(desk, asDicom, QStringLiteral("out")));
    const QStringList files{QStringLiteral("P-1.dcm"), QStringLiteral("P-2.dcm"), QStringLiteral("P-3.dcm")};
    BOOST_TEST((out.entryList(QDir::Files, QDir::Name) == files),
               desk.window.messages().text().toStdString());
    BOOST_TEST(out.remove(QStringLiteral("P-1.dcm")));
    writeOut(desk, asDicom, QStringLiteral("out")); // P-2.dcm is there: nothing is written
    BOOST_TEST((desk.window.messages().code() == QStringLiteral("file-exists")));
    BOOST_TEST(!QFileInfo::exists(out.filePath(QStringLiteral("P-1.dcm"))));
}

BOOST_AUTO_TEST_CASE(dicom_does_not_leave_by_other_rules_than_those_of_the_open_camp, *utf::label("PROP"))
{
    OpenDesk desk;
    desk.folder.write(
        QStringLiteral("rules.yaml"),
        "format: quarterstep rules 1\nprofiles:\n"
        "  - name: village\n    version: \"1\"\n    based on: school\n"
        "    limits: {blur: {fits: \"< 0.50\", source: common practice}}\n"); // after the camp was opened
    const auto path = writeOut(desk, asDicom, QStringLiteral("out.dcm"), 1);
    BOOST_TEST(!QFileInfo::exists(path)); // nobody is on the card
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-3")));
    writeOut(desk, asDicom, QStringLiteral("out.dcm"), 1);
    BOOST_TEST(!QFileInfo::exists(path));
    BOOST_TEST(desk.window.messages().code().toStdString() == "dicom-rules");
}

BOOST_AUTO_TEST_CASE(an_order_leaves_as_a_file_for_the_laboratory, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(
        desk.window.choosePerson(QStringLiteral("P-3"))); // a cylinder that no pair here serves
    desk.window.dispense().orderCustom();
    desk.window.dispense().showPeoplePage(DispensePlace::ordersPage);
    auto& view = named<QTableView>(desk.window, "ordersView");
    BOOST_TEST_REQUIRE(view.model()->rowCount() == 1);
    view.setCurrentIndex(view.model()->index(0, 0));
    auto& button = named<QPushButton>(desk.window, "orderFileButton");
    BOOST_TEST_REQUIRE(button.isEnabled());
    button.click();
    const QDir papers(desk.folder.path() + QStringLiteral("/papers"));
    const auto files = papers.entryList({QStringLiteral("laboratory-P-3-*.txt")});
    BOOST_TEST_REQUIRE(files.size() == 1, desk.window.messages().text().toStdString());
    QFile file(papers.filePath(files.front()));
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    const auto text = file.readAll();
    BOOST_TEST(text.startsWith("JOB="));
    BOOST_TEST(text.contains("\r\nCLIENT=P-3\r\n"));
    BOOST_TEST(text.contains("\r\nCYL=-1.00;-1.00\r\n"));
    BOOST_TEST(text.contains("\r\n_PROFILE="));
}

BOOST_AUTO_TEST_CASE(an_order_keeps_its_prescription_when_the_list_is_another, *utf::label("PROP"))
{
    OpenDesk desk;
    BOOST_TEST_REQUIRE(desk.window.choosePerson(QStringLiteral("P-3")));
    desk.window.dispense().orderCustom();
    desk.folder.write(QStringLiteral("people.csv"), "person,right,left\nP-9,-1.00,-1.00\n");
    BOOST_TEST_REQUIRE(desk.window.openCamp(desk.folder.path()));
    desk.window.dispense().showPeoplePage(DispensePlace::ordersPage);
    auto& view = named<QTableView>(desk.window, "ordersView");
    BOOST_TEST_REQUIRE(view.model()->rowCount() == 1);
    view.setCurrentIndex(view.model()->index(0, 0));
    named<QPushButton>(desk.window, "orderFileButton").click();
    const QDir papers(desk.folder.path() + QStringLiteral("/papers"));
    const auto files = papers.entryList({QStringLiteral("laboratory-P-3-*.txt")});
    BOOST_TEST_REQUIRE(files.size() == 1, desk.window.messages().text().toStdString());
    QFile file(papers.filePath(files.front()));
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    BOOST_TEST(file.readAll().contains("\r\nCYL=-1.00;-1.00\r\n"));
    const auto camp = Camp::open(desk.folder.path().toStdString(), Ledger::Mode::readOnly);
    const auto entry = camp.ledger().lastOf(EntryKind::ordered);
    BOOST_TEST_REQUIRE(entry.has_value());
    BOOST_TEST(entry->fields.at("purpose") == "distance");
    BOOST_TEST(entry->fields.at("rules_hash") == camp.rules().hash);
}

BOOST_AUTO_TEST_CASE(the_page_has_a_key_that_leads_there_and_back_and_stands_in_the_sheet,
                     *utf::label("PROP"))
{
    OpenDesk desk;
    QTest::keyClick(&desk.window, Qt::Key_I, Qt::ControlModifier);
    const auto* page = desk.window.findChild<QWidget*>(QStringLiteral("exchangePage"));
    BOOST_TEST_REQUIRE(page);
    BOOST_TEST(page->isVisible());
    QTest::keyClick(&desk.window, Qt::Key_I, Qt::ControlModifier);
    BOOST_TEST(!page->isVisible());
    QStringList keys;
    for (const auto& group : keysOf(desk.window))
        for (const auto& [key, words] : group.keys)
            keys << key;
    for (const auto* key : {"Ctrl+I", "Ctrl+Shift+V", "Ctrl+Shift+I", "Ctrl+Shift+B"})
        BOOST_TEST(keys.contains(QString::fromUtf8(key)), key);
}

BOOST_AUTO_TEST_SUITE_END()
