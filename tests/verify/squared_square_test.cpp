// SPDX-License-Identifier: MIT
// The smallest perfect squared square: 21 different squares fill a square of side 112 without a gap
// (A. J. W. Duijvestijn, "Simple perfect squared square of lowest order", J. Combin. Theory B 25
// (1978) 240-243; its code (50,35,27)(8,19)(15,17,11)(6,24)(29,25,9,2)(7,18)(16)(42)(4,37)(33) from
// memory; that the squares fill 112 x 112 is computed here).
#include "verify/exact.hpp"
#include "verify/figures.hpp"
#include "verify/verify.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

using namespace pelt;

namespace {

constexpr std::array<Um, 21> code{50, 35, 27, 8, 19, 15, 17, 11, 6,  24, 29,
                                  25, 9,  2,  7, 18, 16, 42, 4,  37, 33};
constexpr Um side = 112;
constexpr Um unit = 10'000;

/// Each square goes into the lowest, then leftmost hollow of the skyline.
std::array<GridPoint, 21> places() {
    std::array<Um, side> height{};
    std::array<GridPoint, 21> out;
    for (std::size_t i = 0; i < code.size(); ++i) {
        const auto lowest = std::min_element(height.begin(), height.end());
        const auto x = static_cast<Um>(lowest - height.begin());
        out[i] = {*lowest * unit, x * unit};
        std::fill_n(lowest, code[i], *lowest + code[i]);
    }
    return out;
}

Ring square(Um of) {
    return {{0, 0}, {of, 0}, {of, of}, {0, of}};
}

std::pair<std::shared_ptr<Job>, Layout> squares(CutBy by) {
    auto job = std::make_shared<Job>();
    job->by = by;
    job->film.width = side * unit;
    job->film.direction = Direction::any;
    job->film.allowances.ruler = 1'000;
    job->rolls.push_back({"new 1", true, "", side * unit, 0, std::nullopt, true, {}});
    job->vehicles.emplace_back();
    job->developed.emplace_back();
    Layout layout;
    layout.rolls.emplace_back();
    layout.rolls[0].length = side * unit;
    layout.bound = {side * unit, "area"};
    const auto at = places();
    for (std::size_t i = 0; i < code.size(); ++i) {
        Panel panel;
        panel.name = "square " + std::to_string(code[i]);
        job->vehicles[0].panels.push_back(panel);
        Blank blank;
        const auto mm = static_cast<double>(code[i] * unit) / 1000;
        blank.outline.points = {{0, 0}, {mm, 0}, {mm, mm}, {0, mm}};
        blank.outline.edge = {0, 0, 0, 0};
        blank.edges.push_back({"1-2", "", {0, -1}, false});
        DevelopedPanel developed;
        developed.blanks = {blank};
        job->developed[0].push_back(developed);
        Piece piece;
        piece.direction = Direction::any;
        piece.wrapped.outer = square(code[i] * unit);
        piece.shapes.push_back({{square(code[i] * unit), {}}, {no_turn}});
        piece.ids.push_back({0, static_cast<int>(i), Side::centre, 1, 1, 1, PieceKind::main, ""});
        job->pieces.push_back(piece);
        layout.rolls[0].placements.push_back({i, 0, 0, no_turn, at[i]});
    }
    return {job, layout};
}

} // namespace

TEST_CASE("the squared square of side 112 is a right layout with a bound that is met") {
    auto [job, layout] = squares(CutBy::contour);
    const auto verdict = verify::verify(job, layout);
    CHECK(verdict.faults == std::vector<std::string>{});
    CHECK(verdict.plan.has_value());
}

TEST_CASE("no straight cut from edge to edge divides the squared square") {
    auto [job, layout] = squares(CutBy::straight);
    layout.rolls[0].cuts.push_back({{50 * unit, 0}, {50 * unit, side * unit}});
    CHECK_FALSE(verify::verify(job, layout).plan);
}

TEST_CASE("no square can be moved by a micrometer in any way") {
    for (std::size_t i = 0; i < code.size(); ++i)
        for (const GridPoint by : {GridPoint{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            auto [job, layout] = squares(CutBy::contour);
            GridPoint& at = layout.rolls[0].placements[i].at;
            at = {at.x + by.x, at.y + by.y};
            CAPTURE(i);
            CHECK_FALSE(verify::verify(job, layout).plan);
        }
}

TEST_CASE("polygons may touch along a rim but not overlap") {
    const Polygon a{square(100), {}};
    const Polygon right{{{100, 0}, {200, 0}, {200, 100}, {100, 100}}, {}};
    CHECK(verify::polygons_apart(a, right, 0));
    CHECK_FALSE(verify::polygons_apart(a, right, 1));
    CHECK_FALSE(verify::polygons_apart(a, a, 0));
    const Polygon in_a_hole{{{40, 40}, {60, 40}, {60, 60}, {40, 60}}, {}};
    CHECK_FALSE(verify::polygons_apart(a, in_a_hole, 0));
    const Polygon ring{square(100), {{{30, 30}, {30, 70}, {70, 70}, {70, 30}}}};
    CHECK(verify::polygons_apart(ring, in_a_hole, 0));
    CHECK(verify::polygons_apart(ring, in_a_hole, 10));
    CHECK_FALSE(verify::polygons_apart(ring, in_a_hole, 11));
    // A lozenge whose corners touch the square's sides from within, corner on corner.
    const Polygon lozenge{{{50, 0}, {100, 50}, {50, 100}, {0, 50}}, {}};
    CHECK_FALSE(verify::polygons_apart(a, lozenge, 0));
}

TEST_CASE("a slanted gap is measured exactly, without a root") {
    // Two parallel 3-4-5 slopes five units apart.
    const GridPoint a{0, 0};
    const GridPoint b{400, 300};
    CHECK(verify::segments_apart(a, b, {-3, 4}, {397, 304}, 5));
    CHECK_FALSE(verify::segments_apart(a, b, {-3, 4}, {397, 304}, 6));
    CHECK_FALSE(verify::segments_apart(a, b, {-3, 4}, {396, 303}, 6));
}
