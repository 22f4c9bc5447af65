// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "order/order.hpp"
#include "report/facts.hpp"
#include "report/words.hpp"
#include "trade/names.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

Panel panel_named(const std::string& name, int count = 1) {
    Panel panel;
    panel.name = name;
    panel.count = count;
    panel.is = trade::named(name).is;
    panel.lies = trade::named(name).lies;
    return panel;
}

Job job_of(const std::vector<Panel>& panels) {
    Job job;
    job.vehicles.emplace_back();
    job.vehicles[0].panels = panels;
    return job;
}

PieceId id_of(int panel, Side side = Side::centre, int copy = 1) {
    return {0, panel, side, copy, 1, 1, PieceKind::main, ""};
}

std::vector<std::string> laid(const Job& job, const std::vector<PieceId>& ids) {
    std::vector<std::string> labels;
    for (const std::size_t i : order::laying_order(job, ids))
        labels.push_back(panel_label(job, ids[i].vehicle, ids[i].panel, ids[i].side));
    return labels;
}

} // namespace

TEST_CASE("jambs first, then from the top down, small parts last") {
    const Job job =
        job_of({panel_named("Mirror cap"), panel_named("front bumper"), panel_named("emblem"),
                panel_named("front fender"), panel_named("hatch"), panel_named("hood"),
                panel_named("roof"), panel_named("door jamb")});
    std::vector<PieceId> ids;
    for (int panel = 0; panel < 8; ++panel)
        ids.push_back(id_of(panel));
    CHECK(laid(job, ids) == std::vector<std::string>{"door jamb", "roof", "hood", "hatch",
                                                     "front fender", "emblem", "front bumper",
                                                     "Mirror cap"});
}

TEST_CASE("one side is finished, front to rear, before the other begins") {
    const Job job =
        job_of({panel_named("quarter"), panel_named("front door"), panel_named("fender")});
    std::vector<PieceId> ids;
    for (const Side side : {Side::right, Side::left})
        for (int panel = 0; panel < 3; ++panel)
            ids.push_back(id_of(panel, side));
    CHECK(laid(job, ids) == std::vector<std::string>{"fender, left", "front door, left",
                                                     "quarter, left", "fender, right",
                                                     "front door, right", "quarter, right"});
}

TEST_CASE("panels that are not known go with those that lie as they do, equals by the file") {
    std::vector<Panel> panels{panel_named("b"), panel_named("a"), panel_named("skin")};
    panels[2].lies = LiesOn::top;
    const Job job = job_of(panels);
    CHECK(laid(job, {id_of(1), id_of(2), id_of(0)}) == std::vector<std::string>{"skin", "b", "a"});
}

TEST_CASE("sliding doors are laid as doors are, not as lids") {
    const Job job = job_of({panel_named("sliding door lower"), panel_named("sliding door upper"),
                            panel_named("rear header"), panel_named("front fender"),
                            panel_named("trunk lid"), panel_named("hood")});
    CHECK(laid(job, {id_of(0, Side::right), id_of(1, Side::right), id_of(3, Side::right), id_of(4),
                     id_of(5)}) ==
          std::vector<std::string>{"hood", "trunk lid", "front fender, right",
                                   "sliding door lower, right", "sliding door upper, right"});
}

TEST_CASE("a handle on a door is a small part, a spoiler on a roof is not the roof") {
    const Job job = job_of({panel_named("door handle"), panel_named("roof spoiler"),
                            panel_named("roof"), panel_named("door")});
    CHECK(laid(job, {id_of(0), id_of(1), id_of(2), id_of(3)}) ==
          std::vector<std::string>{"roof", "roof spoiler", "door", "door handle"});
}

TEST_CASE("inlays go before their panel, its pieces by number: each under the next") {
    const Job job = job_of({panel_named("front bumper")});
    const auto piece = [](int n) {
        return PieceId{0, 0, Side::centre, 1, n, 3, PieceKind::main, ""};
    };
    const PieceId inlay{0, 0, Side::centre, 1, 1, 1, PieceKind::inlay, "grille"};
    CHECK(order::laying_order(job, {piece(2), piece(3), piece(1), inlay}) ==
          std::vector<std::size_t>{3, 2, 0, 1});
}

TEST_CASE("one vehicle of several is finished before the next begins") {
    Job job = job_of({panel_named("roof"), panel_named("step", 2)});
    job.times = 2;
    std::vector<PieceId> ids;
    for (int copy = 1; copy <= 2; ++copy)
        ids.push_back(id_of(0, Side::centre, copy));
    for (int copy = 1; copy <= 4; ++copy)
        ids.push_back(id_of(1, Side::centre, copy));
    CHECK(order::laying_order(job, ids) == std::vector<std::size_t>{0, 2, 3, 1, 4, 5});
}

TEST_CASE("every piece of a real job is laid exactly once") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    std::vector<PieceId> ids;
    for (const PlacedPiece& p : pieces_by_number(sheet.plan))
        ids.push_back(p.id);
    std::vector<std::size_t> order = order::laying_order(sheet.plan.job(), ids);
    REQUIRE(order.size() == ids.size());
    const std::string first = sheet.plan.job()
                                  .vehicles[0]
                                  .panels[static_cast<std::size_t>(ids[order.front()].panel)]
                                  .name;
    CHECK(first == "roof");
    std::sort(order.begin(), order.end());
    for (std::size_t i = 0; i < order.size(); ++i)
        CHECK(order[i] == i);
}
