// SPDX-License-Identifier: MIT
// Shipped vehicles with less to measure: by width and height alone, and not measured at all.
#include "asked_jobs.hpp"
#include "guesses.hpp"
#include "order/measure_first.hpp"
#include "read/flat_ring.hpp"
#include "read/read.hpp"
#include "shipped.hpp"
#include "trade/likeness.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <sstream>

namespace pelt::data_test {
namespace {

Vehicle vehicle_at(const std::string& path) {
    const auto reading = read::vehicle(*read::load(std::string(PELT_TOP) + "/" + path).value);
    REQUIRE(reading.value.has_value());
    return *reading.value;
}

Film usual_film() {
    const auto reading =
        read::film(*read::load(std::string(PELT_TOP) + "/films/satin-hybrid.yaml").value);
    REQUIRE(reading.value.has_value());
    return *reading.value;
}

Um planned_length(const Vehicle& vehicle, const Film& film, CutBy by) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    request.by = by;
    request.effort.threads = 2;
    request.effort.trial = by == CutBy::contour;
    const order::Outcome outcome = order::run(request);
    for (const Fault& fault : outcome.faults)
        if (stops({fault}))
            FAIL_CHECK(to_string(fault, false));
    REQUIRE(outcome.plan.has_value());
    Um length = 0;
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        length += used.length;
    return length;
}

/// The sizes of scans laid flat, which a tape over the surface would read.
std::map<std::string, Point> sizes_of_scans(const Vehicle& vehicle) {
    order::AreaRequest request;
    request.vehicle = vehicle;
    request.stretch_in_detail = false;
    for (const Panel& panel : vehicle.panels)
        if (!panel.extra.empty())
            request.selection.with.push_back(panel.extra);
    std::map<std::string, Point> out;
    for (const PanelArea& row : order::areas(request).rows) {
        const Box box = box_of(row.wrapped.outer);
        out[row.panel] = {static_cast<double>(box.along()) / 1000,
                          static_cast<double>(box.across()) / 1000};
    }
    return out;
}

/// The lower left corner of a panel's drawing.
Point low_corner(const Panel& panel) {
    Ring ring;
    if (const auto* outline = std::get_if<OutlineForm>(&panel.form)) {
        if (const auto flat = read::flat_ring(*outline))
            ring = flat->ring;
    } else if (const auto* girths = std::get_if<GirthsForm>(&panel.form)) {
        ring = read::flat_ring(*girths);
    }
    if (ring.empty())
        return {};
    const Box box = box_of(ring);
    return {static_cast<double>(box.low.x) / 1000, static_cast<double>(box.low.y) / 1000};
}

/// A table cannot hold where seams may lie; what is compared here is outlines.
void with_seams_of(const Vehicle& vehicle, Vehicle& by_tape) {
    for (std::size_t p = 0; p < vehicle.panels.size(); ++p) {
        const Point low = low_corner(vehicle.panels[p]);
        Panel& panel = by_tape.panels.at(p);
        panel.seam = vehicle.panels[p].seam;
        panel.seam_lines = vehicle.panels[p].seam_lines;
        for (SeamLine& seam : panel.seam_lines)
            for (Point& point : seam.line)
                point = {point.x - low.x, point.y - low.y};
    }
}

/// The vehicle by width and height alone: its own table, read again, with what scans are.
Vehicle by_width_and_height(const Vehicle& vehicle) {
    Vehicle measured = vehicle;
    const std::map<std::string, Point> scans = sizes_of_scans(vehicle);
    for (Panel& panel : measured.panels)
        if (std::holds_alternative<SurfaceForm>(panel.form)) {
            const Point size = scans.at(panel.name);
            OutlineForm form;
            form.from_size = true;
            for (const Point corner : {Point{0, 0}, {size.x, 0}, size, {0, size.y}})
                form.segments.push_back({corner, std::nullopt, "", {}});
            panel.form = form;
            panel.openings.clear();
            panel.edges.clear();
            panel.crown = Crown{0, 0, true};
        }
    const auto table = std::make_shared<const Source>(
        Source{"t.csv", read::table_of(measured).text, true});
    const auto reading = read::vehicle(table);
    for (const Fault& fault : reading.faults)
        FAIL_CHECK(to_string(fault, false));
    REQUIRE(reading.value.has_value());
    Vehicle by_tape = *reading.value;
    with_seams_of(vehicle, by_tape);
    return by_tape;
}

TEST_CASE("width and height alone give the length of full outlines within 3 %, straight") {
    const Film film = usual_film();
    for (const std::string& path : files_of("vehicles")) {
        CAPTURE(path);
        const Vehicle vehicle = vehicle_at(path);
        const auto full = static_cast<double>(planned_length(vehicle, film, CutBy::straight));
        const auto tape = static_cast<double>(
            planned_length(by_width_and_height(vehicle), film, CutBy::straight));
        const double off = 100 * (tape / full - 1);
        MESSAGE(vehicle.name << ": outlines " << full / 1e6 << " m, width and height "
                             << tape / 1e6 << " m, " << off << " %");
        CHECK(std::abs(off) <= 3);
    }
}

double extent(const Panel& panel, bool along_x) {
    double low = 1e9;
    double high = -1e9;
    const auto add = [&](const Point& p) {
        low = std::min(low, along_x ? p.x : p.y);
        high = std::max(high, along_x ? p.x : p.y);
    };
    if (const auto* outline = std::get_if<OutlineForm>(&panel.form))
        for (const OutlineSegment& segment : outline->segments)
            add(segment.to);
    return high > low ? high - low : 0;
}

TEST_CASE("every shipped vehicle states sizes over all that its panels fit into") {
    for (const std::string& path : files_of("vehicles")) {
        CAPTURE(path);
        const Vehicle vehicle = vehicle_at(path);
        REQUIRE(vehicle.overall.length_mm.has_value());
        REQUIRE(vehicle.overall.width_mm.has_value());
        REQUIRE(vehicle.overall.height_mm.has_value());
        const double over[] = {*vehicle.overall.length_mm, *vehicle.overall.width_mm,
                               *vehicle.overall.height_mm};
        double side = 0;
        for (const Panel& panel : vehicle.panels) {
            const bool bumper =
                panel.is == PanelKind::front_bumper || panel.is == PanelKind::rear_bumper;
            if (bumper || (panel.crown && panel.crown->measured_over))
                continue; // round the corners, and so wider than the vehicle
            CAPTURE(panel.name);
            const trade::PanelAxes axes = trade::axes_of(panel);
            CHECK(extent(panel, true) < over[static_cast<int>(axes.x)]);
            CHECK(extent(panel, false) < over[static_cast<int>(axes.y)]);
            const bool large = panel.is == PanelKind::front_fender ||
                               panel.is == PanelKind::front_door ||
                               panel.is == PanelKind::rear_door || panel.is == PanelKind::quarter;
            if (large && panel.lies == LiesOn::side && panel.sides != Sides::right)
                side += extent(panel, axes.x == trade::Axis::length);
        }
        CHECK(side < over[0]);
    }
}

/// All of them on request; a motorcycle's are laid out quickly.
std::vector<std::string> vehicles_to_draw() {
    return test::asked_jobs("PELT_ALL_GUESSES", 0) > 0
               ? files_of("vehicles")
               : std::vector<std::string>{"vehicles/street-motorcycle.yaml"};
}

TEST_CASE("between 85 and 95 % of vehicles drawn by other seeds lie in the range") {
    const Film film = usual_film();
    for (const std::string& path : vehicles_to_draw()) {
        CAPTURE(path);
        const order::Request request = test::all_guessed(vehicle_at(path), film, 2);
        const order::EstimateOutcome outcome = order::estimate(request);
        REQUIRE(outcome.estimate.has_value());
        const std::vector<PanelOf> panels = test::guessed_panels(request);
        CHECK(panels == outcome.estimate->guessed);
        constexpr std::size_t draws = 1'000;
        const double inside =
            test::share_inside(test::planned_draws(request, panels, draws, 99),
                               outcome.estimate->length);
        MESSAGE(path << ": " << 100 * inside << " % inside");
        CHECK(inside >= .85);
        CHECK(inside <= .95);
    }
}

TEST_CASE("what is to be measured first narrows the range more than panels at random") {
    const Film film = usual_film();
    constexpr int choices = 5;
    for (const std::string& path : vehicles_to_draw()) {
        CAPTURE(path);
        const order::Request request = test::all_guessed(vehicle_at(path), film, 2);
        const std::vector<PanelOf> panels = test::guessed_panels(request);
        const order::Factors factors = order::stratified_factors(panels, 100, 1);
        std::vector<PanelOf> first;
        for (const PanelShare& share :
             order::measure_first(order::draws_of(request, factors), factors, 1))
            if (first.size() < 3)
                first.push_back({share.vehicle, share.panel});
        REQUIRE_FALSE(first.empty());
        Random random(5);
        double at_random = 0;
        for (int i = 0; i < choices; ++i) {
            std::vector<PanelOf> some = panels;
            random.shuffle(some);
            some.resize(first.size());
            at_random += test::width_when_known(request, factors, some) / choices;
        }
        CHECK(test::width_when_known(request, factors, first) < at_random);
    }
}

} // namespace
} // namespace pelt::data_test
