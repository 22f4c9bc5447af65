// SPDX-License-Identifier: MIT
// One vehicle is always divided in the same way: whichever of its panels are chosen, however many
// vehicles there are, whatever lies in stock, however hard the search looks.
#include "job.hpp"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace pelt::order_test {
namespace {

/// What tells a seam: which pieces, how they lap, where the line runs.
using Told = std::tuple<int, int, Um, Um, std::string, std::string, Um,
                        std::vector<std::pair<double, double>>>;
/// By panel and side, of the first vehicle.
using SeamsOf = std::map<std::pair<int, Side>, std::set<Told>>;

SeamsOf seams_of(const order::Outcome& outcome) {
    SeamsOf out;
    for (const Seam& seam : outcome.plan->job().seams) {
        if (seam.vehicle != 0)
            continue;
        std::vector<std::pair<double, double>> at;
        for (const Point& p : seam.place.at)
            at.emplace_back(p.x, p.y);
        out[{seam.panel, seam.side}].insert({seam.under_part, seam.upper_part, seam.overlap,
                                             seam.length, seam.place.line, seam.place.run,
                                             seam.place.nearer, at});
    }
    return out;
}

/// Every seam told is one of the whole vehicle's, and no divided panel that is cut lacks one.
void check_same(const SeamsOf& whole, const order::Outcome& some) {
    REQUIRE(some.plan);
    const SeamsOf own = seams_of(some);
    for (const auto& [panel, seams] : own) {
        const auto known = whole.find(panel);
        REQUIRE(known != whole.end());
        CHECK(known->second == seams);
    }
    for (const Piece& piece : some.plan->job().pieces)
        for (const PieceId& id : piece.ids)
            CHECK((id.vehicle != 0 || (id.parts > 1) == (own.count({id.panel, id.side}) > 0) ||
                   id.kind == PieceKind::inlay));
}

std::string number(std::size_t value) {
    return std::to_string(value);
}

/// Panels of a few forms, some wider than the film, with things on them that seams must mind.
std::string random_panels(Chance& chance) {
    static const std::vector<std::string> faces{"lies: side", "lies: top", "lies: front",
                                                "lies: rear", "extra: more"};
    std::string text;
    const std::size_t count = chance.between(2, 4);
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t face = chance.below(faces.size() + 1);
        const bool pair = chance.below(3) == 0;
        const std::size_t wide = chance.between(300, 1'900);
        const std::size_t high = chance.between(300, 1'900);
        text += "  panel " + number(i) + ": {size: [" + number(wide) + ", " + number(high) + "]";
        text += pair ? ", sides: both" : ", forward: " + std::string(face == 2   ? "down"
                                                                     : face == 3 ? "up"
                                                                     : chance.below(2) == 0
                                                                         ? "right"
                                                                         : "up");
        if (face < faces.size())
            text += ", " + faces[face];
        if (chance.below(4) == 0)
            text += ", count: 2";
        if (chance.below(3) == 0)
            text += ", crown: {wide: " + number(chance.between(0, wide / 10)) + ", high: 0}";
        if (chance.below(3) == 0)
            text += ", openings: {sensor: {outline: [[" + number(wide / 2 - 20) + ", " +
                    number(high / 2 - 20) + "], [" + number(wide / 2 + 20) + ", " +
                    number(high / 2 - 20) + "], [" + number(wide / 2) + ", " +
                    number(high / 2 + 20) + "]], keep clear: camera, cut: vehicle}}";
        if (chance.below(4) == 0)
            text += ", seam lines: [{line: [[0, " + number(high / 3) + "], [" + number(wide) +
                    ", " + number(high / 3) + "]], use: needed}]";
        text += ", edges: {all: {wrap: 12}}}\n";
    }
    return text;
}

order::Request request_for(std::uint64_t seed) {
    static const std::vector<std::string> directions{"one-way", "two-way", "any"};
    Chance chance(seed);
    order::Request made;
    made.vehicles = {vehicle(random_panels(chance))};
    made.film = film("roll: {width: 1020 mm, trim: 6 mm}\ndirection: " +
                     directions[chance.below(3)] +
                     "\nallowances: {handling: {want: 40, least: 15}, overlap: 10, wrap: 12, "
                     "gap: 3, bleed: 5}\nsold: [{by: 1 m, price: 10.00}]\n");
    made.seams = chance.below(2) == 0 ? Seams::fitter : Seams::thrifty;
    made.by = chance.below(12) == 0 ? CutBy::contour : CutBy::straight;
    made.effort.trial = true;
    return made;
}

order::Request with_every_panel(order::Request request) {
    request.selection.with = {"more"};
    std::erase_if(request.selection.with, [&](const std::string&) {
        return std::none_of(request.vehicles[0].panels.begin(), request.vehicles[0].panels.end(),
                            [](const Panel& panel) { return !panel.extra.empty(); });
    });
    return request;
}

TEST_CASE("one vehicle is divided in one way, whatever else is asked for (random vehicles)") {
    const int jobs = test::asked_jobs("PELT_RANDOM_JOBS", 60);
    int divided = 0;
    int planned = 0;
    for (int seed = 0; seed < jobs; ++seed) {
        CAPTURE(seed);
        const order::Request asked = request_for(static_cast<std::uint64_t>(seed));
        const order::Outcome all = order::run(with_every_panel(asked));
        if (!all.plan)
            continue; // a panel that no width takes
        ++planned;
        const SeamsOf whole = seams_of(all);
        divided += whole.empty() ? 0 : 1;
        for (const auto& [panel, seams] : whole) {
            order::Request alone = asked;
            const Panel& of = asked.vehicles[0].panels[static_cast<std::size_t>(panel.first)];
            const std::string name =
                panel.second == Side::centre
                    ? of.name
                    : of.name + "/" + std::string(name_of(panel.second));
            alone.selection.only = {name};
            check_same(whole, order::run(alone));
            order::Request again = with_every_panel(asked);
            again.selection.spoiled = {name + "/1"};
            check_same(whole, order::run(again));
        }
        order::Request other = with_every_panel(asked);
        switch (seed % 4) {
        case 0:
            other.times = 3;
            break;
        case 1:
            other.stock = stock("  - {name: shelf, film: F, length: 2 m, width: 1020 mm, "
                                "batch: B}\n");
            break;
        case 2:
            other.effort.trial = false;
            other.effort.seed = 9;
            other.effort.amount = 2;
            break;
        default:
            other.vehicles.push_back(request_for(static_cast<std::uint64_t>(seed) + 1).vehicles[0]);
            other.vehicles.back().name = "another";
            other.stages = 2;
            break;
        }
        const order::Outcome otherwise = order::run(other);
        if (otherwise.plan)
            check_same(whole, otherwise);
    }
    CHECK(planned > jobs / 2);
    CHECK(divided > jobs / 3);
}

} // namespace
} // namespace pelt::order_test
