// SPDX-License-Identifier: MIT
// Where memory runs out there is no result: never a wrong one, and never an untrue sentence.
#include "failing_new.hpp"
#include "geometry/geometry.hpp"
#include "model/error.hpp"
#include "order/order.hpp"
#include "read/read.hpp"
#include "report/report.hpp"

#include <doctest/doctest.h>

#include <functional>
#include <memory>
#include <new>
#include <optional>
#include <string>

using namespace pelt;
using test::FailingNew;

namespace {

struct Came {
    std::optional<std::string> result; ///< none: it was given up
    bool out_of_memory = false;
    std::string why;
};

/// What comes of the work when its allocation `at` fails.
Came with_failure(const std::function<std::string()>& work, long at, bool once) {
    Came came;
    try {
        const FailingNew failing(at, once);
        came.result = work();
    } catch (const std::bad_alloc&) {
        came.out_of_memory = true;
    } catch (const ProgramError& error) {
        came.why = error.what();
    }
    return came;
}

/// Lets one allocation after the other fail. Returns how often the work was given up.
int never_lies(const std::function<std::string()>& work, long step) {
    const std::string right = work();
    long all = 0;
    {
        const FailingNew none(0);
        work();
        all = none.count();
    }
    int given_up = 0;
    for (const bool once : {true, false})
        for (long at = 1; at <= all; at += step) {
            const Came came = with_failure(work, at, once);
            CAPTURE(at);
            CAPTURE(once);
            if (came.result)
                CHECK(*came.result == right);
            else if (!came.out_of_memory)
                CHECK(came.why.find("memory ran out") != std::string::npos);
            given_up += came.result ? 0 : 1;
        }
    return given_up;
}

std::string text_of(const std::vector<Polygon>& figures) {
    std::string text;
    const auto add = [&](const Ring& ring) {
        for (const GridPoint& p : ring)
            text += std::to_string(p.x) + "," + std::to_string(p.y) + " ";
        text += "; ";
    };
    for (const Polygon& figure : figures) {
        add(figure.outer);
        for (const Ring& hole : figure.holes)
            add(hole);
    }
    return text;
}

Polygon box(Um x0, Um y0, Um x1, Um y1) {
    return {geometry::rectangle({{x0, y0}, {x1, y1}}), {}};
}

// Openings, stops, arcs, a seam and two tucked sides: all booleans that a panel can ask for.
const std::string vehicle =
    "vehicle: Open\n"
    "panels:\n"
    "  a:\n"
    "    outline: [[0, 0], [900, 0], [900, 500], [0, 500]]\n"
    "    forward: up\n"
    "    edges: {all: {wrap: 12}}\n"
    "    openings:\n"
    "      h: {outline: [[300, 100], [600, 100], [600, 400], [300, 400]], cut: table, wrap: 5}\n"
    "      k: {outline: [[700, 100], [800, 100], [750, 200]]}\n"
    "    seam lines: [{line: [[0, 250], [900, 250]], use: always}]\n"
    "  b:\n"
    "    sides: both\n"
    "    outline: [[0, 0], [200, 0], {through: [230, 60], to: [200, 120]}, [0, 120]]\n"
    "    edges: {all: {wrap: 12}, top: {stop: 5}}\n";
const std::string film = "film: Film\n"
                         "roll: {width: 1524 mm, trim: 6 mm}\n"
                         "direction: one-way\n"
                         "stretch: 12 %\n"
                         "allowances: {bleed: 10 mm, handling: 40 mm, overlap: 10 mm, gap: 4 mm}\n";

std::shared_ptr<const Source> source(const std::string& name, const std::string& text) {
    return std::make_shared<const Source>(Source{name, text});
}

std::string told(const Faults& faults) {
    std::string text;
    for (const Fault& fault : faults)
        text += to_string(fault) + "\n";
    return text;
}

/// From the files to the areas, or to the sentences about them.
std::string areas() {
    const auto read_vehicle = read::vehicle(source("van.yaml", vehicle));
    const auto read_film = read::film(source("film.yaml", film));
    std::string text = told(read_vehicle.faults) + told(read_film.faults);
    if (!read_vehicle.value || !read_film.value)
        return text;
    order::AreaRequest request;
    request.vehicle = *read_vehicle.value;
    request.film = *read_film.value;
    order::AreaOutcome outcome = order::areas(request);
    report::AreaSheet sheet;
    sheet.rows = std::move(outcome.rows);
    return text + told(outcome.faults) + report::to_json(sheet);
}

/// From the files to a checked sheet, or to the sentences about why there is none.
std::string sheet() {
    order::Request request;
    request.vehicles = {*read::vehicle(source("van.yaml", vehicle)).value};
    request.film = *read::film(source("film.yaml", film)).value;
    request.effort.threads = 1;
    const order::Outcome outcome = order::run(std::move(request));
    if (!outcome.plan)
        return told(outcome.faults);
    return told(outcome.faults) + report::to_csv({*outcome.plan, outcome.order, outcome.faults});
}

} // namespace

TEST_CASE("a boolean for which memory runs out is given up, and is no figure") {
    const std::vector<Polygon> a{box(0, 0, 1000, 1000), box(2000, 0, 3000, 1000)};
    const std::vector<Polygon> b{box(200, 200, 2500, 700)};
    const std::vector<Ring> curves{a[0].outer, a[1].outer, b[0].outer};
    CHECK(never_lies([&] { return text_of(geometry::unite(a, b)); }, 1) > 50);
    CHECK(never_lies([&] { return text_of(geometry::intersect(a, b)); }, 1) > 50);
    CHECK(never_lies([&] { return text_of(geometry::subtract(a, b)); }, 1) > 50);
    CHECK(never_lies([&] { return text_of(geometry::positive_union(curves)); }, 1) > 50);
}

TEST_CASE("booleans of nothing are nothing, and no failure") {
    const std::vector<Polygon> a{box(0, 0, 1000, 1000)};
    const Polygon flat{{{0, 0}, {500, 0}, {1000, 0}}, {}};
    CHECK(geometry::unite({}, {}).empty());
    CHECK(geometry::intersect({}, {}).empty());
    CHECK(geometry::positive_union({}).empty());
    CHECK(geometry::unite({flat}, {flat}).empty());
    CHECK(geometry::subtract({flat}, a).empty());
    CHECK(geometry::intersect(a, {}).empty());
    CHECK(geometry::subtract(a, a).empty());
    CHECK(text_of(geometry::subtract(a, {flat})) == text_of(a));
}

TEST_CASE("areas for which memory runs out are given up, and nothing untrue is said") {
    CHECK(never_lies(areas, 7) > 100);
}

TEST_CASE("a sheet for which memory runs out is given up, and nothing untrue is said") {
    CHECK(never_lies(sheet, 499) > 20);
}
