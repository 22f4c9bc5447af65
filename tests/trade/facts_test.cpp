// SPDX-License-Identifier: MIT
// Common practice, no source: the ranges that people of the trade name, held against the tables.
#include "trade/bodies.hpp"
#include "trade/cautions.hpp"
#include "trade/forward.hpp"
#include "trade/laying.hpp"
#include "trade/names.hpp"
#include "trade/redo.hpp"

#include <doctest/doctest.h>

#include <vector>

using namespace pelt;
using namespace pelt::trade;

namespace {

struct Range {
    PanelKind kind;
    double least;
    double most;
};

using enum PanelKind;

const std::vector<Range> usual_redo{
    {roof, 3, 5},         {hood, 2, 4},           {front_door, 2, 4},   {sliding_door, 2, 4},
    {front_fender, 3, 5}, {quarter, 5, 9},        {trunk_lid, 4, 7},    {hatch, 6, 10},
    {sill, 3, 5},         {front_bumper, 10, 20}, {rear_bumper, 8, 15}, {mirror_cap, 15, 25},
    {a_pillar, 3, 5},     {door_handle, 15, 25},  {fuel_flap, 3, 3},    {spoiler, 10, 25},
    {door_jamb, 6, 10},   {cargo_wall, 2, 4},     {tank, 15, 25},       {fairing, 8, 15},
};

} // namespace

TEST_CASE("redo chances lie in the ranges that are usual") {
    for (const Range& row : usual_redo) {
        CAPTURE(word_of(row.kind));
        CHECK(redo_percent(row.kind) >= row.least);
        CHECK(redo_percent(row.kind) <= row.most);
    }
}

TEST_CASE("hybrid film is spoiled 1.5 to 2 times as often, calendered on curves 2 to 3 times") {
    CHECK(redo_factor(FilmKind::cast, true) == 1);
    CHECK(redo_factor(FilmKind::hybrid, false) >= 1.5);
    CHECK(redo_factor(FilmKind::hybrid, true) <= 2);
    CHECK(redo_factor(FilmKind::calendered, true) >= 2);
    CHECK(redo_factor(FilmKind::calendered, true) <= 3);
    CHECK(redo_factor(FilmKind::calendered, false) == 1);
    CHECK(redo_factor(FilmKind::polyurethane, false) == doctest::Approx(1.3));
}

TEST_CASE("the door of a van's tail is laid with the rear, other doors with their side") {
    CHECK(laying_place(rear_door, LiesOn::rear).step == LayingStep::rear);
    CHECK(laying_place(rear_door, LiesOn::side).step == LayingStep::sides);
    CHECK(laying_place(sliding_door, LiesOn::side).step == LayingStep::sides);
}

TEST_CASE("what has no place of its own is laid with those that lie as it does") {
    CHECK(laying_place(plain_panel, LiesOn::side).step == LayingStep::sides);
    CHECK(laying_place(plain_panel, LiesOn::top).step == LayingStep::top);
    CHECK(laying_place(plain_panel, LiesOn::front).step == LayingStep::hood);
    CHECK(laying_place(plain_panel, LiesOn::rear).step == LayingStep::rear);
    CHECK(laying_place(plain_panel, std::nullopt).step == LayingStep::plain);
}

TEST_CASE("the arrow runs to the nose, on a front face down, on a rear face up") {
    CHECK(usual_forward(LiesOn::front, Sides::centre) == Heading::down);
    CHECK(usual_forward(LiesOn::rear, Sides::both) == Heading::up);
    CHECK(usual_forward(LiesOn::side, Sides::both) == Heading::left);
    CHECK(usual_forward(LiesOn::side, Sides::right) == Heading::right);
    CHECK_FALSE(usual_forward(LiesOn::top, Sides::centre));
    CHECK_FALSE(usual_forward(std::nullopt, Sides::centre));
}

TEST_CASE("bodies by their names in North America and in Britain") {
    REQUIRE(body_kind_named("sedan"));
    CHECK(body_kind_named("saloon")->name == "sedan");
    CHECK(body_kind_named("large saloon")->name == "large sedan");
    CHECK(body_kind_named("estate")->name == "wagon");
    CHECK_FALSE(body_kind_named(""));
    CHECK_FALSE(body_kind_named("sed"));
    CHECK(is_motorcycle("motor scooter"));
    CHECK_FALSE(is_motorcycle("motor"));
    CHECK(has_doors_in_the_rear("box van"));
    CHECK_FALSE(has_doors_in_the_rear("wagon"));
}

TEST_CASE("radar and the like mind metal, lamps and plates must be seen") {
    for (const char* zone : {"radar", "camera", "ultrasonic", "aerial"}) {
        CHECK(measures_or_sends(zone));
        CHECK_FALSE(must_be_seen(zone));
    }
    for (const char* zone : {"lamp", "plate"}) {
        CHECK(must_be_seen(zone));
        CHECK_FALSE(measures_or_sends(zone));
    }
    CHECK_FALSE(measures_or_sends(""));
}
