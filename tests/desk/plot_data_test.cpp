// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/plots/plot_data.hpp"
#include "tests/desk/camp_folder.hpp"

#include <cmath>

using namespace quarterstep;
namespace utf = boost::unit_test;

BOOST_AUTO_TEST_SUITE(plot_data)

BOOST_AUTO_TEST_CASE(the_eyes_stand_at_mean_power_and_half_the_cylinder,
                     *utf::label("REF") * utf::description("Thibos 1997: M = S + C/2, |J| = |C|/2"))
{
    SmallAnswer small; // right -1.25; left -1.00 -0.50 x 45
    const auto picture = planeOf(small.answer, small.stock, nullptr, nullptr);
    BOOST_TEST_REQUIRE(picture.eyes.size() == 2U);
    BOOST_TEST(picture.eyes[0].right);
    BOOST_TEST(picture.eyes[0].at.mean == -1.25);
    BOOST_TEST(picture.eyes[0].at.astigmatism == 0.0);
    BOOST_TEST(picture.eyes[1].left);
    BOOST_TEST(picture.eyes[1].at.mean == -1.25);
    BOOST_TEST(std::abs(picture.eyes[1].at.astigmatism - 0.25) < 1e-12);
}

BOOST_AUTO_TEST_CASE(eyes_that_need_the_same_share_one_mark_with_both_letters, *utf::label("PROP"))
{
    SmallAnswer small;
    small.answer.need->eyes.left = small.answer.need->eyes.right;
    const auto picture = planeOf(small.answer, small.stock, nullptr, nullptr);
    BOOST_TEST_REQUIRE(picture.eyes.size() == 1U);
    BOOST_TEST((picture.eyes[0].right && picture.eyes[0].left));
}

BOOST_AUTO_TEST_CASE(the_chosen_pair_is_as_far_from_each_eye_as_the_blur_of_its_fit, *utf::label("PROP"))
{
    SmallAnswer small;
    for (const auto& candidate : small.answer.candidates.ranked) {
        const auto picture = planeOf(small.answer, small.stock, nullptr, &candidate);
        BOOST_TEST_REQUIRE(picture.choice.size() == 2U);
        for (std::size_t eye = 0; eye < 2; ++eye) {
            const auto& need = picture.eyes[eye].at;
            const auto& choice = picture.choice[eye];
            const double distance =
                std::hypot(choice.at.mean - need.mean, choice.at.astigmatism - need.astigmatism);
            BOOST_TEST(std::abs(distance - choice.blur) < 1e-9); // both are square roots of the same sum
        }
    }
}

BOOST_AUTO_TEST_CASE(rings_are_the_blur_limits_of_the_profile_and_absent_where_it_has_none,
                     *utf::label("PROP"))
{
    SmallAnswer small;
    Profile profile = *small.rules.find(small.answer.profile);
    auto& bands = profile.of(Criterion::blur).bands;
    bands.fits = Limit{0.50, false};
    bands.trial = Limit{0.75, false};
    const auto picture = planeOf(small.answer, small.stock, &profile, nullptr);
    BOOST_TEST((picture.fitsRing == 0.50));
    BOOST_TEST((picture.trialRing == 0.75));
    bands.trial.reset();
    BOOST_TEST(!planeOf(small.answer, small.stock, &profile, nullptr).trialRing.has_value());
}

BOOST_AUTO_TEST_CASE(one_mark_a_power_counts_what_can_still_be_given_and_leaves_frames_out,
                     *utf::label("PROP"))
{
    SmallAnswer small;
    auto twin = small.stock[1]; // D-125 once more in another bin
    twin.name = "D-125-BR";
    twin.onHand = 7;
    twin.held = 2;
    small.stock.push_back(twin);
    const auto picture = planeOfStock(small.stock);
    BOOST_TEST(picture.stock.size() == 6U); // four ready-made powers, two lens powers, no frame
    int found = 0;
    for (const auto& mark : picture.stock)
        if (mark.at == PlanePoint{-1.25, 0.0}) {
            ++found;
            BOOST_TEST(mark.available == 2 + 5);
            BOOST_TEST(mark.lines == 2);
        }
    BOOST_TEST(found == 1);
}

BOOST_AUTO_TEST_CASE(the_view_reaches_two_dioptres_to_either_side_of_the_needs, *utf::label("PROP"))
{
    SmallAnswer small;
    small.answer.need->eyes.right.power = sphereOf(-3.00);
    const auto picture = planeOf(small.answer, small.stock, nullptr, nullptr);
    BOOST_TEST(picture.mean.least == -5.0);
    BOOST_TEST(picture.mean.most == 0.75);
}

BOOST_AUTO_TEST_SUITE_END()
