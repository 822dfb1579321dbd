// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/models/criteria_model.hpp"
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/plane_model.hpp"
#include "app/desk/models/waiting_model.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QAbstractItemModelTester>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
void watch(QAbstractItemModel& model)
{
    new QAbstractItemModelTester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal, &model);
}
} // namespace

BOOST_AUTO_TEST_SUITE(models)

BOOST_AUTO_TEST_CASE(the_waiting_model_keeps_the_order_of_the_table_and_tells_the_state, *utf::label("PROP"))
{
    WaitingModel model;
    watch(model);
    TableRow good{2, "A-1", PersonRecord{}, {}};
    good.record->age = 30;
    TableRow bad{
        3, "A-2", std::nullopt, {{Severity::error, {"people.csv", 3, 1}, "empty-eye", {"no right eye", {}}}}};
    model.setRows({good, bad});
    BOOST_TEST(model.rowCount() == 2);
    BOOST_TEST(model.rowOf("A-2") == 1);
    BOOST_TEST(model.rowOf("A-3") == -1);
    BOOST_TEST((model.stateAt(0) == WaitingModel::State::waiting));
    BOOST_TEST((model.stateAt(1) == WaitingModel::State::unreadable));
    BOOST_TEST(model.index(0, WaitingModel::ageColumn).data(WaitingModel::rawRole).toDouble() == 30.0);
    model.setOutcome("A-1", {WaitingModel::State::given, QStringLiteral("D-125")});
    BOOST_TEST((model.stateAt(0) == WaitingModel::State::given));
    BOOST_TEST(model.index(0, WaitingModel::stateColumn).data().toString().contains(QStringLiteral("D-125")));
    model.setOutcome("A-1", {WaitingModel::State::settled, QStringLiteral("ordered")});
    BOOST_TEST((model.stateAt(0) == WaitingModel::State::settled));
    BOOST_TEST(model.index(0, WaitingModel::stateColumn).data().toString() == QStringLiteral("ordered"));
    model.setOutcome("A-1", {WaitingModel::State::waiting, QStringLiteral("referred")});
    BOOST_TEST(
        model.index(0, WaitingModel::stateColumn).data().toString().contains(QStringLiteral("referred")));
    model.setOutcome("A-1", {});
    BOOST_TEST((model.stateAt(0) == WaitingModel::State::waiting));
}

BOOST_AUTO_TEST_CASE(the_pairs_model_puts_misses_after_ranked_pairs_and_keeps_raw_numbers,
                     *utf::label("PROP"))
{
    SmallAnswer small;
    PairsModel model;
    watch(model);
    model.show(small.answer, small.stock);
    const auto& lists = small.answer.candidates;
    BOOST_TEST(model.rankedCount() == static_cast<int>(lists.ranked.size()));
    BOOST_TEST(model.rowCount() == static_cast<int>(lists.ranked.size() + lists.misses.size()));
    BOOST_TEST_REQUIRE(model.rankedCount() > 0);
    const auto& first = lists.ranked.front();
    BOOST_TEST(model.index(0, PairsModel::rightColumn).data(PairsModel::rawRole).toDouble() ==
               first.fit.eyes.right->error.m);
    BOOST_TEST(model.index(0, PairsModel::pullColumn).data(PairsModel::rawRole).toString().toStdString() ==
               small.stock[first.parts.front().line].name);
    for (int row = 0; row < model.rowCount(); ++row) {
        const bool outside =
            static_cast<Band>(model.index(row, 0).data(PairsModel::bandRole).toInt()) == Band::fails;
        BOOST_TEST(outside == (row >= model.rankedCount()));
        BOOST_TEST(model.index(row, 0).data(PairsModel::firstMissRole).toBool() ==
                   (row == model.rankedCount()));
        BOOST_TEST(!model.index(row, PairsModel::verdictColumn).data().toString().isEmpty());
    }
    model.clear();
    BOOST_TEST(model.rowCount() == 0);
    BOOST_TEST((model.candidateAt(0) == nullptr));
}

BOOST_AUTO_TEST_CASE(the_criteria_model_has_a_row_for_every_criterion_of_the_fit, *utf::label("PROP"))
{
    SmallAnswer small;
    CriteriaModel model;
    watch(model);
    const auto& fit = small.answer.candidates.ranked.front().fit;
    model.show(fit);
    BOOST_TEST_REQUIRE(model.rowCount() == static_cast<int>(fit.criteria.size()));
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto& result = fit.criteria[static_cast<std::size_t>(row)];
        BOOST_TEST(model.index(row, CriteriaModel::measuredColumn).data(CriteriaModel::rawRole).toDouble() ==
                   result.measured);
        BOOST_TEST(model.index(row, CriteriaModel::limitColumn).data(CriteriaModel::rawRole).isValid() ==
                   result.limit.has_value());
        BOOST_TEST(!model.index(row, CriteriaModel::nameColumn).data().toString().isEmpty());
        BOOST_TEST(!model.index(row, CriteriaModel::bandColumn).data().toString().isEmpty());
    }
}

BOOST_AUTO_TEST_CASE(the_plane_table_holds_every_mark_of_the_picture, *utf::label("PROP"))
{
    SmallAnswer small;
    PlaneModel model;
    watch(model);
    const auto picture = planeOf(small.answer, small.stock, small.rules.find(small.answer.profile),
                                 &small.answer.candidates.ranked.front());
    model.show(picture);
    BOOST_TEST(model.rowCount() ==
               static_cast<int>(picture.eyes.size() + picture.choice.size() + picture.stock.size()));
    BOOST_TEST(model.index(0, PlaneModel::meanColumn).data(PlaneModel::rawRole).toDouble() ==
               picture.eyes[0].at.mean);
}

BOOST_AUTO_TEST_SUITE_END()
