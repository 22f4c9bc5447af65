// SPDX-License-Identifier: MIT
// Panels with stops, tucks, curves and seam lines all the way to a checked plan: the two rules of
// the wrapped outline, that of piece/ and that of verify/, say the same.
#include "order/order.hpp"
#include "random_figures.hpp"
#include "read/read.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <memory>
#include <sstream>
#include <string>

using namespace pelt;
using test::Dice;

namespace {

template <class Read>
auto value_of(Read read, const std::string& text) {
    auto reading = read(std::make_shared<const Source>(Source{"file", text}));
    REQUIRE(reading.value);
    return *reading.value;
}

/// No layout that fails its check leaves the driver: it throws.
order::Outcome planned(const std::string& panel, const std::string& film, CutBy by) {
    order::Request request;
    const auto read_vehicle = [](std::shared_ptr<const Source> source) {
        return read::vehicle(std::move(source));
    };
    request.vehicles = {value_of(read_vehicle, "vehicle: V\npanels:\n  p: {" + panel + "}\n")};
    request.film = value_of(read::film, "film: F\n" + film);
    request.by = by;
    request.effort.trial = true;
    return order::run(std::move(request));
}

const std::string ordinary = "roll: {width: 1524 mm}\nallowances: {wrap: 30 mm, overlap: 10 mm}\n";

} // namespace

TEST_CASE("a stop beside a seam line leaves no third part") {
    const auto out = planned("outline: [[0, 0], [1000, 0], [1000, 500], [500, 560], [0, 500]], "
                             "forward: up, edges: {3-4: {stop: 3}}, "
                             "seam lines: [{line: [[505, -60], [505, 600]], use: always}]",
                             ordinary, CutBy::straight);
    REQUIRE(out.plan);
    CHECK(out.plan->job().pieces.size() == 2);
}

TEST_CASE("a seam line that cuts off a bit of a tuck leaves it with its film") {
    const auto out =
        planned("outline: [[44.131, 16], [29, 3], [17, 3.2], [10, 22], [10, 35.9], [17.2, 54.8], "
                "[28.6, 55], [39, 31]], forward: up, edges: {7-8: {stop: 3}}, "
                "seam lines: [{line: [[24.8, -60], [29.7, 120.8]], use: always}]",
                ordinary, CutBy::straight);
    REQUIRE(out.plan);
    CHECK(out.plan->job().pieces.size() == 2);
}

TEST_CASE("seam lines that cross at the panel's edge leave tips thinner than any knife") {
    const auto out = planned("outline: [[0, 0], [101, 0], [106.2, 1092], [5.2, 1092]], forward: up, "
                             "edges: none, seam: at lines, seam lines: ["
                             "{line: [[15.2, -100], [-10.7, 1192]], use: always}, "
                             "{line: [[2.1, -100], [3, 1192]], use: always}]",
                             "roll: {width: 300}\nallowances: {overlap: 17.3, handling: 20}\n",
                             CutBy::straight);
    REQUIRE(out.plan);
    CHECK(out.plan->job().pieces.size() == 3);
}

TEST_CASE("a sliver of a tuck beyond the stop of an end is left out") {
    CHECK(planned("girths: [{at: 10, up: 106, down: 241.3}, {at: 21, up: 295.5, down: 247.8}, "
                  "{at: 32, up: 89.2, down: 174}, {at: 43, up: 109, down: 138}], "
                  "through stations: smooth, edges: {end: {stop: 3}}",
                  "roll: {width: 1524 mm}\ndirection: any\nallowances: {wrap: 12}\n",
                  CutBy::straight)
              .plan);
}

TEST_CASE("a narrow slit beside a stop is no crossing of the outline") {
    CHECK(planned("girths: [{at: 90, up: 22, down: 227}, {at: 136, up: 90.5, down: 136}, "
                  "{at: 181, up: 283, down: 118.077}], through stations: smooth, forward: left, "
                  "edges: {end: {stop: 3}}",
                  "roll: {width: 610 mm}\nallowances: {wrap: 30}\n", CutBy::contour)
              .plan);
}

TEST_CASE("a corner that was rounded two ways stands in the cut outline once") {
    const auto out =
        planned("outline: [[27, 20.8], [-1, 35.9], [-37, 12.7], [-33.093, -20.4], "
                "[15.22, -33.1], [39, -6.7]], edges: {all: {wrap: 0}, bottom: {stop: 3}, "
                "left: {stop: 5}}, forward: down, "
                "seam lines: [{line: [[-97, 19.7], [99, 19.7]], use: always}]",
                "roll: {width: 1524 mm}\nallowances: {overlap: 15, bleed: 10}\n", CutBy::contour);
    REQUIRE(out.plan);
    CHECK(out.plan->job().pieces.size() == 2);
}

TEST_CASE("a tuck that ends along the next edge leaves a slit, not a seam") {
    CHECK(planned("outline: [[1700.5, 114], [1190.3, 27], [572.5, 42], [605.863, 243], "
                  "[127.215, 323]], sides: left, edges: {4-5: {wrap: 3}}",
                  "roll: {width: 610 mm}\n", CutBy::contour)
              .plan);
}

namespace {

/// Convex or not, with an arc here and there.
std::string random_outline(Dice& dice, int points) {
    const double most = dice.whole(150, 600);
    const auto ring = dice.whole(0, 1) == 0 ? test::star(dice, points, most / 2, most, {0, 0})
                                            : test::convex(dice, points, most, 0.8 * most);
    std::ostringstream text;
    text << "outline: [";
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point b = ring[i];
        if (i > 0 && dice.whole(0, 3) == 0) {
            const Point a = ring[i - 1];
            const double bow = dice.real(-0.15, 0.25);
            text << "{through: [" << (a.x + b.x) / 2 + bow * (b.y - a.y) << ", "
                 << (a.y + b.y) / 2 - bow * (b.x - a.x) << "], to: [" << b.x << ", " << b.y
                 << "]}, ";
        } else {
            text << "[" << b.x << ", " << b.y << "], ";
        }
    }
    std::string out = text.str();
    out.resize(out.size() - 2);
    return out + "]";
}

std::string random_edges(Dice& dice, int points) {
    std::ostringstream text;
    text << "edges: {all: {wrap: " << dice.whole(0, 30) << "}";
    for (int i = 1; i <= points; ++i)
        if (const int what = dice.whole(0, 3); what < 2)
            text << ", " << i << "-" << i % points + 1 << ": {" << (what == 0 ? "stop" : "wrap")
                 << ": " << dice.whole(1, 25) << "}";
    return text.str() + "}";
}

} // namespace

TEST_CASE("random panels with stops, tucks and curves: a checked plan, or a sentence") {
    Dice dice(41);
    int plans = 0;
    for (int trial = 0; trial < 150; ++trial) {
        const int points = dice.whole(3, 8);
        const std::string panel =
            random_outline(dice, points) + ", " + random_edges(dice, points) + ", forward: right";
        CAPTURE(panel);
        const CutBy by = trial % 3 == 0 ? CutBy::contour : CutBy::straight;
        plans +=
            planned(panel, "roll: {width: 3000 mm}\nallowances: {bleed: 8}\n", by).plan ? 1 : 0;
    }
    CHECK(plans > 100);
}
