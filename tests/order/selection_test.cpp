// SPDX-License-Identifier: MIT
#include "order/selection.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace pelt;

namespace {

Panel panel(std::string name, Sides sides, std::string group, std::string extra) {
    Panel made;
    made.name = std::move(name);
    made.sides = sides;
    made.group = std::move(group);
    made.extra = std::move(extra);
    return made;
}

std::vector<Vehicle> a_small_car() {
    Vehicle vehicle;
    vehicle.panels = {panel("roof", Sides::centre, "top", ""),
                      panel("front door", Sides::both, "sides", ""),
                      panel("jamb", Sides::both, "sides", "jambs")};
    Hardware handles;
    handles.name = "door handles";
    vehicle.hardware = {handles};
    return {vehicle};
}

/// What is cut, as "panel/side" words.
std::vector<std::string> cut_of(const order::Selection& selection, Faults& faults) {
    const std::vector<Vehicle> vehicles = a_small_car();
    const std::vector<LeftOut> out = order::left_out_by(selection, vehicles, faults);
    std::vector<std::string> words;
    for (int p = 0; p < 3; ++p)
        for (const Side side : sides_of(vehicles[0].panels[static_cast<std::size_t>(p)].sides))
            if (!std::binary_search(out.begin(), out.end(), LeftOut{0, p, side}))
                words.push_back(vehicles[0].panels[static_cast<std::size_t>(p)].name + "/" +
                                std::string(name_of(side)));
    return words;
}

using Words = std::vector<std::string>;

} // namespace

TEST_CASE("selection: everything but the extras by default") {
    Faults faults;
    CHECK(cut_of({}, faults) == Words{"roof/centre", "front door/left", "front door/right"});
    CHECK(faults.empty());
}

TEST_CASE("selection: one side, a group, an extra") {
    Faults faults;
    CHECK(cut_of({{"front door/left"}, {}, {}}, faults) == Words{"front door/left"});
    CHECK(cut_of({{"sides"}, {}, {}}, faults) == Words{"front door/left", "front door/right"});
    CHECK(cut_of({{}, {"sides"}, {}}, faults) == Words{"roof/centre"});
    CHECK(cut_of({{}, {"front door"}, {"jambs"}}, faults) ==
          Words{"roof/centre", "jamb/left", "jamb/right"});
    CHECK(cut_of({{"roof"}, {}, {"jambs"}}, faults) ==
          Words{"roof/centre", "jamb/left", "jamb/right"});
    CHECK(cut_of({{"jamb/right"}, {}, {}}, faults) == Words{"jamb/right"});
    CHECK(faults.empty());
}

TEST_CASE("selection: what is done is left out, what was spoilt is cut again") {
    Faults faults;
    order::Selection chosen;
    chosen.done = {"front door", "roof"};
    chosen.spoiled = {"front door/left"};
    CHECK(cut_of(chosen, faults) == Words{"front door/left"});
    const HalfDone half = order::half_done_by(chosen, a_small_car());
    CHECK(half.done == std::vector<LeftOut>{{0, 0, Side::centre}, {0, 1, Side::right}});
    CHECK(half.cut_again == std::vector<LeftOut>{{0, 1, Side::left}});
    chosen.done = {"roof"};
    CHECK(cut_of(chosen, faults) == Words{"front door/left", "front door/right"});
    CHECK(faults.empty());
}

TEST_CASE("selection: where only what was spoilt is named all else is done, extras never begun") {
    Faults faults;
    order::Selection chosen;
    chosen.spoiled = {"sides"};
    CHECK(cut_of(chosen, faults) == Words{"front door/left", "front door/right"});
    CHECK(order::half_done_by(chosen, a_small_car()).done ==
          std::vector<LeftOut>{{0, 0, Side::centre}});
    chosen.spoiled = {"jamb/left"};
    CHECK(cut_of(chosen, faults) == Words{"jamb/left"});
    CHECK(faults.empty());
}

TEST_CASE("selection: what is no part of the job is not cut again") {
    Faults faults;
    order::Selection chosen;
    chosen.without = {"front door/left"};
    chosen.spoiled = {"front door"};
    CHECK(cut_of(chosen, faults) == Words{"front door/right"});
    const HalfDone half = order::half_done_by(chosen, a_small_car());
    CHECK(half.done == std::vector<LeftOut>{{0, 0, Side::centre}});
    CHECK(half.cut_again == std::vector<LeftOut>{{0, 1, Side::right}});
    chosen.without = {"roof"};
    chosen.only = {"sides", "roof"};
    CHECK(cut_of(chosen, faults) == Words{"front door/left", "front door/right"});
    CHECK(faults.empty());
    chosen.spoiled = {"roof", "front door"};
    cut_of(chosen, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].severity == Severity::usage);
    CHECK(faults[0].what == "--spoiled 'roof' names nothing of this job");
    faults.clear();
    chosen = {};
    chosen.only = {"roof"};
    chosen.spoiled = {"front door"};
    cut_of(chosen, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == "--spoiled 'front door' names nothing of this job");
}

TEST_CASE("selection: done and spoiled must name panels, and something must be left to cut") {
    Faults faults;
    order::Selection chosen;
    chosen.done = {"rof"};
    chosen.spoiled = {"front door/centre"};
    cut_of(chosen, faults);
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].what == "--done 'rof' names no panel and no group");
    CHECK(faults[1].what == "--spoiled 'front door/centre' names no panel and no group");
    faults.clear();
    chosen.done = {"roof", "front door"};
    chosen.spoiled = {};
    cut_of(chosen, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == "nothing is left to cut");
}

TEST_CASE("selection: a word that selects nothing is a fault that lists what there is") {
    Faults faults;
    cut_of({{"rooof"}, {}, {}}, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].severity == Severity::usage);
    CHECK(to_string(faults[0]) == "--only 'rooof' names no panel and no group; the panels are: "
                                  "front door, jamb, roof");
}

TEST_CASE("selection: leaving nothing to cut is a fault") {
    Faults faults;
    cut_of({{"roof"}, {"top"}, {}}, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == "nothing is left to cut");
}

TEST_CASE("selection: --with and --leave must name what the vehicle has") {
    Faults faults;
    cut_of({{}, {}, {"jamb"}}, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].remedy == "the extras are: jambs");
    faults.clear();
    order::left_on_by({"door handles", "bumper"}, a_small_car(), faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == "--leave 'bumper' names no part that comes off");
}

TEST_CASE("selection: what waits for a part that stays on stays on too") {
    std::vector<Vehicle> vehicles(1);
    Hardware cards;
    cards.name = "door cards";
    Hardware handles;
    handles.name = "door handles";
    handles.after = {"door cards"};
    vehicles[0].hardware = {handles, cards};
    Faults faults;
    CHECK(order::left_on_by({"door cards"}, vehicles, faults) ==
          std::vector<std::string>{"door handles", "door cards"});
    CHECK(faults.empty());
}
