// SPDX-License-Identifier: MIT
#include "order/names.hpp"
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

TEST_CASE("selection: what is done is left out, what was spoiled is cut again") {
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

TEST_CASE("selection: where only what was spoiled is named all else is done, extras never begun") {
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

TEST_CASE("selection: a name that is a panel's and a group's means the panel, and that is told") {
    std::vector<Vehicle> vehicles(1);
    vehicles[0].panels = {panel("roof", Sides::centre, "roof", ""),
                          panel("spoiler", Sides::centre, "roof", "")};
    Faults faults;
    order::Selection chosen;
    chosen.done = {"roof"};
    CHECK(order::left_out_by(chosen, vehicles, faults) ==
          std::vector<LeftOut>{{0, 0, Side::centre}});
    REQUIRE(faults.size() == 1);
    CHECK(to_string(faults[0]) ==
          "--done 'roof' is the panel alone, not the group 'roof'; name the others too if "
          "they are meant: spoiler");
    // A panel alone in its group is no matter.
    vehicles[0].panels[1].group = "";
    faults.clear();
    order::left_out_by(chosen, vehicles, faults);
    CHECK(faults.empty());
}

namespace {

/// A job of a hood in two pieces, and of two handles a side.
Job hood_and_handles() {
    Job job;
    job.vehicles.resize(1);
    job.vehicles[0].panels = {panel("hood", Sides::centre, "front", ""),
                              panel("handle", Sides::both, "", "")};
    job.vehicles[0].panels[1].count = 2;
    for (const int part : {1, 2}) {
        Piece piece;
        piece.ids = {{0, 0, Side::centre, 1, part, 2, PieceKind::main, ""}};
        job.pieces.push_back(piece);
    }
    for (const Side side : {Side::left, Side::right}) {
        Piece piece;
        for (const int copy : {1, 2})
            piece.ids.push_back({0, 1, side, copy, 1, 1, PieceKind::main, ""});
        job.pieces.push_back(piece);
    }
    Seam seam;
    job.seams = {seam};
    return job;
}

/// What is cut, as options name it.
Words pieces_cut(const order::Selection& selection, Faults& faults, Job* made = nullptr) {
    Job job = hood_and_handles();
    job.left_out = order::left_out_by(selection, job.vehicles, faults);
    if (!stops(faults))
        order::leave_out_pieces(selection, job, faults);
    Words words;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            words.push_back(order::name_of(job, id));
    std::sort(words.begin(), words.end());
    if (made != nullptr)
        *made = job;
    return words;
}

} // namespace

TEST_CASE("selection: one piece of a divided panel, one of several") {
    Faults faults;
    Job job;
    order::Selection chosen;
    chosen.spoiled = {"hood/2"};
    CHECK(pieces_cut(chosen, faults, &job) == Words{"hood/2"});
    // The other piece is on the vehicle: it is there for the check, and its seam too.
    REQUIRE(job.not_cut.size() == 1);
    CHECK(job.not_cut[0].ids.front().part == 1);
    CHECK(job.seams.size() == 1);
    CHECK(job.half_done.cut_again == std::vector<LeftOut>{{0, 0, Side::centre, 0, 2}});
    CHECK(job.half_done.done ==
          std::vector<LeftOut>{{0, 0, Side::centre, 0, 1}, {0, 1, Side::left}, {0, 1, Side::right}});
    CHECK(pieces_cut({{"handle/left/no 2"}, {}, {}}, faults, &job) == Words{"handle/left/no 2"});
    CHECK(job.not_cut.empty());
    CHECK(job.seams.empty());
    CHECK(pieces_cut({{"handle/no 1"}, {}, {}}, faults) ==
          Words{"handle/left/no 1", "handle/right/no 1"});
    CHECK(pieces_cut({{}, {"hood/1", "handle/left"}, {}}, faults) ==
          Words{"handle/right/no 1", "handle/right/no 2", "hood/2"});
    chosen = {};
    chosen.done = {"front", "handle/left/no 1", "handle/right"};
    CHECK(pieces_cut(chosen, faults) == Words{"handle/left/no 2"});
    CHECK(faults.empty());
}

TEST_CASE("selection: a piece that is not there, words that are none") {
    Faults faults;
    pieces_cut({{"hood/3"}, {}, {}}, faults);
    REQUIRE(faults.size() == 1);
    CHECK(to_string(faults[0]) == "--only 'hood/3' names no piece; it is cut in 2 pieces");
    faults.clear();
    pieces_cut({{"handle/left/2"}, {}, {}}, faults);
    REQUIRE(faults.size() == 1);
    CHECK(to_string(faults[0]) ==
          "--only 'handle/left/2' names no piece; it is cut in one piece, and there are 2 of it");
    for (const char* word : {"hood/0", "hood/x", "hood/1/2", "hood/no", "hood/no 0", "hood/",
                             "hood/1/no 1", "front/1", "hood/left"}) {
        CAPTURE(word);
        faults.clear();
        pieces_cut({{word}, {}, {}}, faults);
        REQUIRE(faults.size() == 1);
        CHECK(faults[0].what == "--only '" + std::string(word) + "' names no panel and no group");
    }
    faults.clear();
    order::Selection chosen;
    chosen.done = {"hood/1", "hood/2", "handle"};
    pieces_cut(chosen, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == "nothing is left to cut");
}

TEST_CASE("selection: done and spoiled must name panels, and something must be left to cut") {
    Faults faults;
    order::Selection chosen;
    chosen.done = {"rof"};
    chosen.spoiled = {"front door/center"};
    cut_of(chosen, faults);
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].what == "--done 'rof' names no panel and no group");
    CHECK(faults[1].what == "--spoiled 'front door/center' names no panel and no group");
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
