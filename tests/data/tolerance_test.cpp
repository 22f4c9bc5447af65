// SPDX-License-Identifier: MIT
// `--tolerance`: an order that was planned for readings as they are written, each of them off by up
// to so much, still holds: every piece of the vehicle as it is fits into what was cut for it, with
// the margins to grip that were asked for.
#include "geometry/geometry.hpp"
#include "order/order.hpp"
#include "random_figures.hpp"
#include "read/read.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace pelt::data_test {
namespace {

using test::Dice;

constexpr double off_by_mm = 5;

/// Mostly as far off as can be.
double misread(Dice& dice, double mm) {
    if (dice.whole(0, 3) == 0)
        return mm + dice.real(-off_by_mm, off_by_mm);
    return mm + (dice.whole(0, 1) == 0 ? off_by_mm : -off_by_mm);
}

Point misread(Dice& dice, Point p) {
    return {misread(dice, p.x), misread(dice, p.y)};
}

void misread(Dice& dice, OutlineForm& form) {
    if (form.from_size) {
        const Point size = misread(dice, form.segments.at(2).to);
        form.segments.at(1).to.x = size.x;
        form.segments.at(2).to = size;
        form.segments.at(3).to.y = size.y;
        return;
    }
    for (OutlineSegment& segment : form.segments) {
        segment.to = misread(dice, segment.to);
        if (segment.through)
            segment.through = misread(dice, *segment.through);
    }
}

void misread(Dice& dice, GirthsForm& form) {
    for (GirthStation& station : form.stations) {
        station.at_mm = misread(dice, station.at_mm);
        station.up_mm = misread(dice, station.up_mm);
        station.down_mm = misread(dice, station.down_mm);
    }
}

void misread(Dice& dice, Panel& panel) {
    if (auto* outline = std::get_if<OutlineForm>(&panel.form))
        misread(dice, *outline);
    if (auto* girths = std::get_if<GirthsForm>(&panel.form))
        misread(dice, *girths);
    if (panel.crown) {
        panel.crown->wide_mm = std::max(0.0, misread(dice, panel.crown->wide_mm));
        panel.crown->high_mm = std::max(0.0, misread(dice, panel.crown->high_mm));
    }
    for (Inlay& inlay : panel.inlays) {
        inlay.wide_mm = misread(dice, inlay.wide_mm);
        inlay.high_mm = misread(dice, inlay.high_mm);
    }
}

/// Without scans, which no tape has read.
Vehicle measured_by_tape(const std::string& path) {
    auto reading = read::vehicle(
        std::make_shared<const Source>(Source{std::string(PELT_TOP) + "/" + path, text_of(path)}));
    REQUIRE(reading.value);
    std::erase_if(reading.value->panels, [](const Panel& panel) {
        return std::holds_alternative<SurfaceForm>(panel.form);
    });
    return *reading.value;
}

Film film_named(const std::string& path) {
    auto reading = read::film(std::make_shared<const Source>(Source{path, text_of(path)}));
    REQUIRE(reading.value);
    return *reading.value;
}

std::optional<Plan> planned(const Vehicle& vehicle, const Film& film, CutBy by, Um tolerance) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    request.by = by;
    request.tolerance = tolerance;
    request.effort.trial = true;
    return order::run(std::move(request)).plan;
}

std::map<PieceId, const Piece*> by_id(const Plan& plan) {
    std::map<PieceId, const Piece*> out;
    for (const Piece& piece : plan.job().pieces)
        for (const PieceId& id : piece.ids)
            out[id] = &piece;
    return out;
}

Panel as_planned(const Plan& plan, const PieceId& id) {
    return plan.job().vehicles.front().panels.at(static_cast<std::size_t>(id.panel));
}

/// How much of the film of the true piece and its margins the cut one lacks along one axis. Across
/// a roll that is too narrow margins may be the least ones.
Um lacking(Um cut, Um film, const Handling& margin, Um usable) {
    return film + 2 * (cut == usable ? margin.least : margin.want) - cut;
}

/// Rectangles: their sides.
bool fits_by_sides(const Plan& plan, const Piece& cut, const Piece& truth, const Handling& margin) {
    const Box box = box_of(cut.shapes.front().outline.outer);
    const Box film = box_of(truth.wrapped.outer);
    const Um usable = plan.job().film.usable_width();
    return lacking(box.along(), film.along(), margin, usable) <= 0 &&
           lacking(box.across(), film.across(), margin, usable) <= 0;
}

double outside(const Polygon& film, GridPoint moved, const Polygon& cut) {
    double area = 0;
    for (const Polygon& left : geometry::subtract({placed(film, no_turn, moved)}, {cut}))
        area += to_mm2(geometry::doubled_area(left));
    return area;
}

/// Cut outlines: laid by the drawing's origin, or middle on middle.
bool fits_by_outline(const Piece& cut, const Piece& truth) {
    constexpr double grid = 0.05;
    const Polygon& outline = cut.shapes.front().outline;
    const Box a = box_of(cut.wrapped.outer);
    const Box b = box_of(truth.wrapped.outer);
    const GridPoint middle{(a.low.x + a.high.x - b.low.x - b.high.x) / 2,
                           (a.low.y + a.high.y - b.low.y - b.high.y) / 2};
    return outside(truth.wrapped, {0, 0}, outline) < grid ||
           outside(truth.wrapped, middle, outline) < grid;
}

struct Comparison {
    int pieces = 0;
    std::vector<std::string> too_small; ///< names of panels
};

/// What was cut for the vehicle as it was read, and what it takes as it is.
Comparison compared(const Plan& plan, const Plan& truth) {
    Comparison out;
    const auto cut = by_id(plan);
    for (const auto& [id, piece] : by_id(truth)) {
        const auto own = cut.find(id);
        REQUIRE(own != cut.end());
        const Panel panel = as_planned(truth, id);
        const Handling margin =
            panel.allowances.handling.value_or(truth.job().film.allowances.handling);
        const bool fits = plan.job().by == CutBy::straight
                              ? fits_by_sides(plan, *own->second, *piece, margin)
                              : fits_by_outline(*own->second, *piece);
        ++out.pieces;
        if (!fits)
            out.too_small.push_back(panel.name);
    }
    return out;
}

/// The vehicle read several times, off by up to `off_by_mm` each time; what was planned once, with
/// that tolerance or with none, is compared with it.
Comparison misread_often(Dice& dice, Vehicle vehicle, CutBy by, Um tolerance, int times) {
    for (Panel& panel : vehicle.panels)
        panel.tolerance.reset();
    const Film film = film_named("films/satin-hybrid.yaml");
    const auto plan = planned(vehicle, film, by, tolerance);
    REQUIRE(plan);
    Comparison all;
    for (int i = 0; i < times; ++i) {
        Vehicle truth = vehicle;
        for (Panel& panel : truth.panels)
            misread(dice, panel);
        const auto true_plan = planned(truth, film, by, 0);
        REQUIRE(true_plan);
        const Comparison one = compared(*plan, *true_plan);
        all.pieces += one.pieces;
        all.too_small.insert(all.too_small.end(), one.too_small.begin(), one.too_small.end());
    }
    return all;
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += name + "; ";
    return text;
}

constexpr Um tolerance = 5'000;

TEST_CASE("every shipped vehicle, read wrong again and again: the rectangles and margins hold") {
    Dice dice(11);
    int pieces = 0;
    std::size_t too_small_without = 0;
    for (const std::string& path : files_of("vehicles")) {
        CAPTURE(path);
        const Vehicle vehicle = measured_by_tape(path);
        const Comparison with = misread_often(dice, vehicle, CutBy::straight, tolerance, 6);
        CHECK(listed(with.too_small) == "");
        pieces += with.pieces;
        too_small_without += misread_often(dice, vehicle, CutBy::straight, 0, 1).too_small.size();
    }
    CHECK(pieces > 1'500);
    CHECK(too_small_without > 100);
}

TEST_CASE("a vehicle read wrong again and again: the cut outlines hold") {
    Dice dice(12);
    const Vehicle vehicle = measured_by_tape("vehicles/town-hatchback.yaml");
    const Comparison with = misread_often(dice, vehicle, CutBy::contour, tolerance, 3);
    CHECK(listed(with.too_small) == "");
    CHECK(with.pieces > 80);
    // Without the tolerance the film's own bleed, 10 mm, is all there is.
    Vehicle bare = vehicle;
    for (Panel& panel : bare.panels)
        panel.allowances.bleed = 0;
    CHECK(misread_often(dice, bare, CutBy::contour, 0, 1).too_small.size() > 20);
}

} // namespace
} // namespace pelt::data_test
