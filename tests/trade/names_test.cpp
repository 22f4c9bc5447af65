// SPDX-License-Identifier: MIT
// Which names mean the same, by the words of the trade in North America and in Britain (common
// practice, no source).
#include "trade/names.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

using namespace pelt;
using namespace pelt::trade;

namespace {

void check_all_are(PanelKind kind, const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        CAPTURE(name);
        const Named found = named(name);
        REQUIRE(found.is);
        CHECK(word_of(*found.is) == word_of(kind));
    }
}

void check_not_known(const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        CAPTURE(name);
        const Named found = named(name);
        CHECK_FALSE(found.is);
        CHECK_FALSE(found.lies);
        CHECK(found.could_be.empty());
    }
}

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("both vocabularies: one panel, several words") {
    check_all_are(PanelKind::hood, {"hood", "bonnet"});
    check_all_are(PanelKind::front_fender, {"front fender", "fender", "front wing"});
    check_all_are(PanelKind::quarter, {"quarter", "rear quarter", "quarter panel", "rear fender"});
    check_all_are(PanelKind::trunk_lid, {"trunk lid", "boot lid", "deck lid", "decklid", "boot"});
    check_all_are(PanelKind::hatch, {"hatch", "liftgate", "hatch lid"});
    check_all_are(PanelKind::front_bumper,
                  {"front bumper", "front bumper cover", "front bumper skin"});
    check_all_are(PanelKind::rear_bumper, {"rear bumper", "rear bumper cover", "rear bumper skin"});
    check_all_are(PanelKind::sill, {"sill", "rocker", "rocker panel"});
    check_all_are(PanelKind::a_pillar,
                  {"A pillar", "screen pillar", "windscreen pillar", "windshield pillar"});
    check_all_are(PanelKind::b_pillar, {"B pillar", "door frame pillar"});
    check_all_are(PanelKind::c_pillar, {"C pillar", "D pillar", "rear pillar", "tailgate pillar"});
    check_all_are(PanelKind::cant_rail, {"cant rail", "roof edge"});
    check_all_are(PanelKind::mirror_cap, {"mirror cap", "mirror", "mirror cover", "door mirror",
                                          "wing mirror", "side mirror"});
    check_all_are(PanelKind::fuel_flap, {"fuel flap", "fuel door", "filler flap", "charge flap"});
    check_all_are(PanelKind::door_handle, {"door handle", "handle"});
    check_all_are(PanelKind::spoiler, {"spoiler", "roof spoiler", "tail spoiler"});
    check_all_are(PanelKind::aerofoil, {"aerofoil", "wing blade"});
    check_all_are(PanelKind::diffuser, {"diffuser", "valance"});
    check_all_are(PanelKind::door_jamb, {"door jamb", "door shut", "door aperture"});
}

TEST_CASE("hyphens, plurals, capitals, sides and numbers do not matter") {
    check_all_are(PanelKind::front_fender,
                  {"Front-Wing", "left front fender", "front wings, right", "front_fender 2"});
    check_all_are(PanelKind::hatch, {"Hatches", "hatch 1"});
    check_all_are(PanelKind::a_pillar, {"A-pillar", "a-pillars", "A pillar left"});
    check_all_are(PanelKind::mirror_cap, {"2 mirror caps", "MIRRORS"});
}

TEST_CASE("words of place stand on either side of what is known") {
    check_all_are(PanelKind::front_door, {"front door", "door, front left", "left front door",
                                          "front upper door", "cab door"});
    check_all_are(PanelKind::rear_door, {"rear door", "door, rear", "rear door lower"});
    check_all_are(PanelKind::sliding_door,
                  {"sliding door", "sliding door upper", "sliding doors, lower"});
    check_all_are(PanelKind::front_bumper, {"front bumper lower", "front lower bumper"});
    check_all_are(PanelKind::grille, {"grille", "upper grille frame"});
}

TEST_CASE("what a name ends with is what it is") {
    check_all_are(PanelKind::door_handle, {"front door handle", "sliding door handle"});
    check_all_are(PanelKind::door_jamb, {"front door jamb", "rear door shut face"});
    check_all_are(PanelKind::mirror_cap, {"front door mirror", "rear wing mirror"});
    check_all_are(PanelKind::spoiler, {"lid spoiler", "boot lid spoiler", "rear spoiler"});
}

TEST_CASE("parts of words count for nothing, and a word more is another thing") {
    // A sliding door has the letters of a lid, a tailor those of a tail, a doorstep those of a
    // door.
    check_not_known({"", "left", "2", "glider", "doorstep", "hooded", "unlidded", "hood scoop",
                     "mirrored wall clock", "fenderette", "sidecar", "front", "rear panel",
                     "\xc3\xa9toile"});
    CHECK(named("sliding door").is == PanelKind::sliding_door);
}

TEST_CASE("what could be two things is not guessed, and its meanings are told") {
    const std::vector<std::pair<std::string, Texts>> table{
        {"wing", {"front fender", "quarter", "aerofoil"}},
        {"rear wing", {"quarter", "aerofoil"}},
        {"Rear Wings, left", {"quarter", "aerofoil"}},
        {"back door", {"hatch", "rear door"}},
        {"tailgate", {"hatch", "drop gate"}},
        {"roof rail", {"cant rail", "trim"}},
        {"roof rails", {"cant rail", "trim"}},
        {"bumper cover", {"front bumper", "rear bumper"}},
        {"bumper", {"front bumper", "rear bumper"}},
        {"cowl", {"fairing", "plain panel"}},
        {"lip", {"front splitter", "arch flare", "spoiler"}},
        {"front lip", {"front splitter", "arch flare", "spoiler"}},
        {"box side", {"bed side", "cargo wall"}},
        {"side skirt", {"sill", "truck skirt"}},
    };
    for (const auto& [name, could_be] : table) {
        CAPTURE(name);
        const Named found = named(name);
        CHECK_FALSE(found.is);
        CHECK_FALSE(found.lies);
        CHECK(found.could_be == could_be);
    }
}

TEST_CASE("how panels lie") {
    CHECK(named("hood").lies == LiesOn::top);
    CHECK(named("boot lid").lies == LiesOn::top);
    CHECK(named("front door").lies == LiesOn::side);
    CHECK(named("front bumper").lies == LiesOn::front);
    CHECK(named("liftgate").lies == LiesOn::rear);
    CHECK_FALSE(named("rear wall").lies);
    CHECK(named("rear wall").by_its_word == LiesOn::rear);
    CHECK(named("front valance").by_its_word == LiesOn::front);
    CHECK(named("side wall").by_its_word == LiesOn::side);
}

TEST_CASE("every word of the table means the row it stands in, and no two rows share one") {
    for (const PanelName& row : panel_names()) {
        std::string rest(row.word);
        if (!row.others.empty())
            rest += " | " + std::string(row.others);
        for (std::size_t at = 0; at < rest.size();) {
            const std::size_t end = std::min(rest.find(" | ", at), rest.size());
            const std::string word = rest.substr(at, end - at);
            CAPTURE(word);
            CHECK(named(word).is == row.kind);
            // Else one word of the row would say more than another.
            CHECK((row.lies || !named(word).by_its_word));
            at = end + 3;
        }
    }
    for (const AmbiguousName& row : ambiguous_names()) {
        std::string rest(row.could_be);
        for (std::size_t at = 0; at < rest.size();) {
            const std::size_t end = std::min(rest.find(" | ", at), rest.size());
            const std::string word = rest.substr(at, end - at);
            CAPTURE(word);
            CHECK(named(word).is.has_value());
            at = end + 3;
        }
    }
}
