// SPDX-License-Identifier: GPL-3.0-or-later
// rules.yaml of a camp: profiles over the built-in ones, every refusal, and the hash.
#include "inventory/text/rules_file.hpp"
#include "tests/inventory/marked_text.hpp"

#include <boost/test/unit_test.hpp>
#include <filesystem>

namespace utf = boost::unit_test;
using namespace quarterstep;
using namespace quarterstep::testing;

namespace
{

const std::string rulesHead = "format: quarterstep rules 1\n";
const std::string profileHead = rulesHead + "profiles:\n  - name: own\n    version: \"1\"\n    limits:\n";

void checkRules(const std::string& marked, const std::vector<std::string>& codes)
{
    const auto text = unmarked(marked);
    checkTold(readRulesText(text.text, "rules.yaml").findings, text, codes);
}

void checkLimit(const std::string& marked, const std::vector<std::string>& codes)
{
    checkRules(profileHead + "      " + marked + "\n", codes);
}

FittingRules rulesOf(const std::string& text)
{
    const auto reading = readRulesText(text, "rules.yaml");
    BOOST_TEST(told(reading.findings) == std::vector<std::string>{}, boost::test_tools::per_element());
    return reading.value;
}

} // namespace

BOOST_AUTO_TEST_SUITE(rules_file)

BOOST_AUTO_TEST_CASE(a_file_that_says_nothing_gives_the_defaults, *utf::label("DER"))
{
    const auto rules = rulesOf(rulesHead);
    BOOST_TEST(rules.profiles.size() == defaultRules().profiles.size());
    BOOST_TEST(rules.hash == defaultRules().hash);
    BOOST_TEST((rules.settings == Settings{}));
}

BOOST_AUTO_TEST_CASE(settings_named_replace_the_defaults_and_others_stay, *utf::label("DER"))
{
    const auto rules =
        rulesOf(rulesHead + "settings: {stock vertex: 13.5, adult near pd: [50, 66], use used pairs: no}\n");
    Settings expected;
    expected.stockVertex = 13.5;
    expected.adultNearPd = {50.0, 66.0};
    expected.useUsedPairs = false;
    BOOST_TEST((rules.settings == expected));
    BOOST_TEST(rules.hash != defaultRules().hash);
}

BOOST_AUTO_TEST_CASE(a_profile_based_on_another_takes_every_limit_it_does_not_name, *utf::label("DER"))
{
    const auto rules =
        rulesOf(rulesHead +
                "profiles:\n"
                "  - name: school\n    version: \"2\"\n    based on: school\n    prism by decentration: yes\n"
                "    limits: {centres: {fits: 3, source: common practice}}\n"
                "  - name: village\n    version: \"1\"\n    based on: school\n"
                "    limits: {blur: {fits: \"< 0.50\", source: common practice}}\n");
    const Profile& school = *rules.find("school");
    BOOST_TEST(school.version == "2");
    BOOST_TEST(school.prismByDecentration);
    BOOST_TEST(school.of(Criterion::centres).bands.fits->value == 3.0);
    BOOST_TEST(!school.of(Criterion::centres).bands.caution.has_value());
    BOOST_TEST((school.of(Criterion::blur) == defaultRules().find("school")->of(Criterion::blur)));
    const Profile& village = *rules.find("village");
    BOOST_TEST(village.of(Criterion::centres).bands.fits->value == 3.0); // of the school earlier in the file
    BOOST_TEST((village.of(Criterion::blur).bands.fits == Limit{0.50, true}));
    BOOST_TEST(village.prismByDecentration);
    BOOST_TEST(rules.profiles.size() == defaultRules().profiles.size() + 1);
    BOOST_TEST(rules.profiles.back().name == "village");
}

BOOST_AUTO_TEST_CASE(criteria_not_named_by_a_profile_without_base_are_not_judged, *utf::label("DER"))
{
    const auto rules = rulesOf(profileHead + "      blur: {fits: 0.50, source: common practice}\n");
    const Profile& own = *rules.find("own");
    for (std::size_t i = 0; i < criterionCount; ++i)
        BOOST_TEST(own.criteria[i].judged == (i == static_cast<std::size_t>(Criterion::blur)));
}

BOOST_AUTO_TEST_CASE(everything_a_limit_can_depend_on_is_read, *utf::label("DER"))
{
    const auto rules = rulesOf(
        profileHead +
        "      too minus: {fits: 0.25, caution: \"< 0.75\", from age: {age: 40, fits: 0.25, "
        "trial: 0.50}, source: a}\n"
        "      balance: {fits: 0.50, hyperopic child under: 8, source: b}\n"
        "      centres: {fits: 2, caution: 4, with horizontal prism up to: 0.50, source: c}\n"
        "      power size: {fits: 3.50, minus: {caution: 6.00}, vertex recorded above: 4.00, source: d}\n"
        "      axis error: {by cylinder: [{up to: 0.50, fits: 7}, {up to: 99, fits: 2}], never "
        "fails: yes, source: e}\n"
        "      reading level: {shown only: yes, source: f}\n");
    const Profile& own = *rules.find("own");
    const CriterionRule& minus = own.of(Criterion::tooMinus);
    BOOST_TEST((minus.bands == Bands{Limit{0.25, false}, Limit{0.75, true}, {}}));
    BOOST_TEST(minus.olderFrom.value() == 40.0);
    BOOST_TEST((minus.older == Bands{Limit{0.25, false}, {}, Limit{0.50, false}}));
    BOOST_TEST(minus.source == "a");
    BOOST_TEST(own.of(Criterion::balance).hyperopicChildUnder.value() == 8.0);
    BOOST_TEST(own.of(Criterion::centres).needsPrismUnder.value() == 0.50);
    BOOST_TEST((own.of(Criterion::powerSize).minus == Bands{{}, Limit{6.0, false}, {}}));
    BOOST_TEST(own.of(Criterion::powerSize).vertexAbove.value() == 4.0);
    BOOST_TEST((own.of(Criterion::axisError).byCylinder == std::vector<CylinderStep>{{0.5, 7}, {99, 2}}));
    BOOST_TEST(own.of(Criterion::axisError).neverFails);
    BOOST_TEST(!own.of(Criterion::readingLevel).judged);
    BOOST_TEST(own.of(Criterion::readingLevel).source == "f");
}

BOOST_AUTO_TEST_CASE(wrong_limits_are_told_where_they_stand, *utf::label("DER"))
{
    checkLimit("^blurr: {fits: 1, source: x}", {"unknown-key"});
    checkLimit("blur: ^0.50", {"not-a-map"});
    checkLimit("blur: ^{source: x}", {"limit-missing"});
    checkLimit("blur: ^{fits: 0.50}", {"key-missing"});
    checkLimit("blur: {fits: 0.50, source: ^\"\"}", {"source-empty"});
    checkLimit("blur: {fits: ^-0.50, source: x}", {"number-range"});
    checkLimit("blur: {fits: ^\"0,50\", source: x}", {"number-comma"});
    checkLimit("blur: {fits: \"< ^half\", source: x}", {"number-not-a-number"});
    checkLimit("blur: {fits: \"<^\", source: x}", {"number-empty"});
    checkLimit("blur: {fits: ^.inf, source: x}", {"number-not-a-number"});
    checkLimit("blur: ^{fits: 0.75, caution: 0.50, source: x}", {"bands-order"});
    checkLimit("blur: ^{fits: 0.50, caution: 0.50, source: x}", {"bands-order"});
    checkLimit("blur: {fits: \"< 0.50\", caution: 0.50, source: x}", {});
    checkLimit("blur: {fits: 0.50, ^limit: 1, source: x}", {"unknown-key"});
    checkLimit("blur: ^{fits: 0.50, shown only: yes, source: x}", {"limit-not-judged"});
    checkLimit("blur: {fits: 0.50, hyperopic child under: ^8, source: x}", {"key-elsewhere"});
    checkLimit("blur: {fits: 0.50, with horizontal prism up to: ^1, source: x}", {"key-elsewhere"});
    checkLimit("blur: {fits: 0.50, minus: ^{fits: 0.25}, source: x}", {"key-elsewhere"});
    checkLimit("power size: {fits: 0.50, minus: ^{}, source: x}", {"limit-missing"});
    checkLimit("power size: {fits: 0.50, minus: {fits: ^two}, source: x}", {"number-not-a-number"});
    checkLimit("blur: {fits: 0.50, vertex recorded above: ^4, source: x}", {"key-elsewhere"});
    checkLimit("blur: {fits: 0.50, by cylinder: ^[{up to: 1, fits: 5}], source: x}", {"key-elsewhere"});
    checkLimit("blur: {fits: 0.50, from age: ^{fits: 0.25}, source: x}", {"key-missing"});
    checkLimit("blur: {fits: 0.50, from age: ^{age: 40}, source: x}", {"limit-missing"});
    checkLimit("blur: {fits: 0.50, never fails: ^perhaps, source: x}", {"unknown-word"});
    checkLimit("axis error: {by cylinder: ^[], source: x}", {"steps-not-a-list"});
    checkLimit("axis error: {by cylinder: [{up to: 1, fits: 5}, {up to: ^1, fits: 2}], source: x}",
               {"steps-order"});
    checkLimit("axis error: {by cylinder: [^{up to: 1}], source: x}", {"key-missing"});
}

BOOST_AUTO_TEST_CASE(wrong_profiles_and_settings_are_told_where_they_stand, *utf::label("DER"))
{
    checkRules("^settings: {}\n", {"key-missing"});
    checkRules("format: ^quarterstep stock 1\n", {"format-unknown"});
    checkRules(rulesHead + "^profile: []\n", {"unknown-key"});
    checkRules(rulesHead + "profiles: ^{name: x}\n", {"profiles-not-a-list"});
    checkRules(rulesHead + "profiles:\n  - ^school\n", {"not-a-map"});
    checkRules(rulesHead + "profiles:\n  - ^^^based on: school\n",
               {"key-missing", "key-missing", "key-missing"});
    checkRules(rulesHead + "profiles:\n  - {name: a, version: \"1\", based on: ^shcool, limits: {}}\n",
               {"base-unknown"});
    checkRules(rulesHead + "profiles:\n  - {name: ^\"\", version: \"1\", limits: {}}\n", {"profile-empty"});
    checkRules(rulesHead +
                   "profiles:\n  - {name: a, version: \"1\", limits: {}}\n  - {name: ^a, version: \"1\", "
                   "limits: {}}\n",
               {"profile-twice"});
    checkRules(rulesHead + "settings: {stock vertex: ^120}\n", {"number-range"});
    checkRules(rulesHead + "settings: {adult near pd: ^60}\n", {"range-form"});
    checkRules(rulesHead + "settings: {adult near pd: ^[53, 60, 68]}\n", {"range-form"});
    checkRules(rulesHead + "settings: {adult near pd: ^[68, 53]}\n", {"range-order"});
    checkRules(rulesHead + "settings: {adult near pd: [^5, 60]}\n", {"number-range"});
    checkRules(rulesHead + "settings: {use used pairs: ^maybe}\n", {"unknown-word"});
}

BOOST_AUTO_TEST_CASE(the_hash_follows_the_meaning_not_the_spelling, *utf::label("PROP"))
{
    const std::string first = rulesHead +
                              "settings: {stock vertex: 13, use used pairs: no}\nprofiles:\n"
                              "  - {name: a, version: \"1\", limits: {blur: {fits: 0.50, source: x}, "
                              "balance: {fits: 1, source: y}}}\n"
                              "  - {name: b, version: \"1\", limits: {blur: {fits: 0.25, source: x}}}\n";
    const std::string second =
        "# comment\nprofiles:\n"
        "  - version: '1'\n    limits:\n      blur: {source: x, fits: 0.250}\n    name: b\n"
        "  - {limits: {balance: {fits: 1.00, source: y}, blur: {fits: 0.5, source: x}}, name: a, version: "
        "\"1\"}\n"
        "settings:\n  use used pairs: false\n  stock vertex: 13.0\nformat: quarterstep rules 1\n";
    BOOST_TEST(rulesOf(first).hash == rulesOf(second).hash);
    BOOST_TEST(rulesOf(first).hash.size() == 16U);
    for (const auto& [from, to] : std::vector<std::pair<std::string, std::string>>{
             {"fits: 0.25", "fits: 0.26"},
             {"fits: 0.25", "fits: \"< 0.25\""},
             {"source: y", "source: z"},
             {"name: b, version: \"1\"", "name: b, version: \"2\""},
             {"vertex: 13", "vertex: 14"}}) {
        std::string changed = first;
        changed.replace(changed.find(from), from.size(), to);
        BOOST_TEST_CONTEXT(to) BOOST_TEST(rulesOf(changed).hash != rulesOf(first).hash);
    }
}

BOOST_AUTO_TEST_CASE(a_missing_file_is_an_error_and_keeps_the_defaults_beside_it, *utf::label("DER"))
{
    const auto reading =
        readRulesFile((std::filesystem::temp_directory_path() / "none" / "rules.yaml").string());
    BOOST_TEST(!reading.usable());
    BOOST_TEST(reading.findings.at(0).code == "file-missing");
    BOOST_TEST(reading.value.hash == defaultRules().hash);
}

BOOST_AUTO_TEST_SUITE_END()
