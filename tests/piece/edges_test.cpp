// SPDX-License-Identifier: MIT
// "Edges" and "Wrapped outline": what entries ask, defaults, stops, openings, hardware.
#include "cutting.hpp"
#include "geos_referee.hpp"
#include "random_figures.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using namespace pelt::test;

namespace {

std::size_t count(const Faults& faults, Severity severity) {
    std::size_t n = 0;
    for (const Fault& fault : faults)
        n += fault.severity == severity ? 1 : 0;
    return n;
}

Panel plain(std::vector<EdgeRule> rules = {}) {
    Panel out = panel(size(400, 300));
    out.edges = std::move(rules);
    return out;
}

Film with_wrap(std::optional<Um> mm) {
    Film out = film();
    out.allowances.wrap = mm ? std::optional(*mm * um_per_mm) : std::nullopt;
    return out;
}

BoxMm box_of_cut(const Panel& panel, const Film& film, const piece::Wishes& wishes = {}) {
    return box_mm(cut(panel, film, wishes).piece().wrapped);
}

} // namespace

TEST_CASE("later entries override earlier ones") {
    const Panel drawn = plain({wrap("all", 12), wrap("top", 30), wrap("3-4", 20)});
    CHECK(box_of_cut(drawn, film()) == BoxMm{-12, -12, 412, 320});
    const Panel other = plain({wrap("3-4", 20), wrap("top", 30), wrap("all", 12)});
    CHECK(box_of_cut(other, film()) == BoxMm{-12, -12, 412, 312});
}

TEST_CASE("naming a wrap clears a stop, naming a stop clears a wrap") {
    CHECK(box_of_cut(plain({wrap("all", 12), stop("top", 3)}), film()) ==
          BoxMm{-12, -12, 412, 297});
    CHECK(box_of_cut(plain({stop("all", 3), wrap("top", 10)}), film()) == BoxMm{3, 3, 397, 310});
}

TEST_CASE("an entry that names only hardware keeps the wrap of earlier ones") {
    const Panel drawn = plain({wrap("all", 12), behind("top", "seals")});
    CHECK(box_of_cut(drawn, film()) == BoxMm{-12, -12, 412, 312});
}

TEST_CASE("default wrap: the panel's allowances, else the film's, else 0 with one warning") {
    Panel drawn = plain({wrap("top", 20)});
    CHECK(box_of_cut(drawn, with_wrap(8)) == BoxMm{-8, -8, 408, 320});
    drawn.allowances.wrap = 5000;
    CHECK(box_of_cut(drawn, with_wrap(8)) == BoxMm{-5, -5, 405, 320});
    drawn.allowances.wrap.reset();
    drawn.openings = {opening("hole", corners({{50, 50}, {90, 50}, {90, 90}, {50, 90}}))};
    const Cutting out = cut(drawn, with_wrap(std::nullopt));
    CHECK(box_mm(out.piece().wrapped) == BoxMm{0, 0, 400, 320});
    REQUIRE(count(out.faults, Severity::warning) == 1);
    CHECK(out.faults.front().panel == "panel");
    CHECK(out.faults.front().what == "no tuck given, so film ends at its edges");
}

TEST_CASE("edges: none is 0 in silence") {
    Panel drawn = plain();
    drawn.edges_none = true;
    const Cutting out = cut(drawn, with_wrap(std::nullopt));
    CHECK(out.faults.empty());
    CHECK(box_mm(out.piece().wrapped) == BoxMm{0, 0, 400, 300});
    CHECK(box_of_cut(drawn, with_wrap(8)) == BoxMm{0, 0, 400, 300});
}

TEST_CASE("a panel whose every edge has its own wrap needs no default") {
    CHECK(cut(plain({wrap("all", 12)}), with_wrap(std::nullopt)).faults.empty());
}

TEST_CASE("wrapped area: outline plus wraps, less stops, exactly") {
    // Wraps 12 and 30, a stop of 3 along the top that is lengthened over both side wraps.
    const Panel drawn = plain({wrap("all", 12), wrap("bottom", 30), stop("top", 3)});
    CHECK(is_mm2(cut(drawn, film()).piece().wrapped, 424.0 * (300 + 30 - 3)));
}

TEST_CASE("a stop takes the strip along its edge, no more, where nothing was added") {
    // A regular hexagon of side 100, a stop of 5 on one side: blunt corners, plain strip.
    std::vector<Point> ring;
    for (int i = 0; i < 6; ++i)
        ring.push_back({100 * std::cos(i * 3.14159265358979323846 / 3),
                        100 * std::sin(i * 3.14159265358979323846 / 3)});
    Panel drawn = panel(corners(ring));
    drawn.edges = {stop("2-3", 5)};
    const double hexagon = 1.5 * std::sqrt(3.0) * 100 * 100;
    CHECK(std::abs(area_of(cut(drawn, film()).piece().wrapped) - (hexagon - 500)) < 1);
}

TEST_CASE("a stop along a hollow arc follows it, without hairs between its chords") {
    // A rectangle with a half round bite of radius 200, stop 4 along the bite.
    Panel drawn = panel(outline({{{-400, 0}},
                                 {{-200, 0}},
                                 {{200, 0}, Point{0, 200}, "arch"},
                                 {{400, 0}},
                                 {{400, 500}},
                                 {{-400, 500}}}));
    drawn.edges = {stop("arch", 4)};
    const double pi = 3.14159265358979323846;
    const Polygon wrapped = cut(drawn, film()).piece().wrapped;
    const double expected = 800 * 500 - pi / 2 * 204 * 204;
    // Flattening within 0.05 mm along the arc; the strip's ends are square to its last chords.
    CHECK(std::abs(area_of(wrapped) - expected) < 0.05 * pi * 204 + 8);
    const Polygon without = cut(panel(outline({{{-400, 0}},
                                               {{-200, 0}},
                                               {{200, 0}, Point{0, 200}},
                                               {{400, 0}},
                                               {{400, 500}},
                                               {{-400, 500}}})),
                                film())
                                .piece()
                                .wrapped;
    CHECK(wrapped.outer.size() <= without.outer.size() + 8);
}

TEST_CASE("a stop along a bulging arc follows it") {
    Panel drawn = panel(outline({{{-200, 0}}, {{200, 0}}, {{-200, 0}, Point{0, 200}, "rim"}}));
    drawn.edges = {stop("rim", 4)};
    const double pi = 3.14159265358979323846;
    // A half disc of radius 196 whose lower corners reach on between the two radii.
    const double outer_strip = pi / 2 * (200.0 * 200 - 196 * 196);
    CHECK(std::abs(area_of(cut(drawn, film()).piece().wrapped) -
                   (pi / 2 * 200 * 200 - outer_strip)) < 0.05 * pi * 200 + 8);
}

TEST_CASE("the tuck's corner at the end of an arc is the arc's, not that of its last chord") {
    // A half disc stands square on its straight side: so do the two moved sides.
    Panel drawn = panel(outline({{{-200, 0}}, {{200, 0}}, {{-200, 0}, Point{0, 200}, "rim"}}));
    drawn.edges = {wrap("all", 30)};
    const BoxMm box = box_mm(cut(drawn, film()).piece().wrapped);
    CHECK(box.y0 == -30);
    CHECK(std::abs(box.x0 + 230) < 0.06);
    CHECK(std::abs(box.x1 - 230) < 0.06);
    // Seen through a crown the circle is an ellipse, which stands square as well.
    drawn.crown = Crown{60, 0, false};
    const BoxMm crowned = box_mm(cut(drawn, film()).piece().wrapped);
    drawn.edges = {wrap("all", 0)};
    const BoxMm bare = box_mm(cut(drawn, film()).piece().wrapped);
    CHECK(std::abs(crowned.x1 - bare.x1 - 30) < 0.06);
}

TEST_CASE("two stops at an inward corner leave no spike toward it") {
    // An L with stops on both sides of its inner corner.
    Panel drawn = panel(corners({{0, 0}, {300, 0}, {300, 100}, {100, 100}, {100, 300}, {0, 300}}));
    drawn.edges = {stop("3-4", 5), stop("4-5", 5)};
    CHECK(is_mm2(cut(drawn, film()).piece().wrapped, 300.0 * 95 + 95 * 205));
}

TEST_CASE("stops that leave two parts are a fault, unless the second is a crumb") {
    // Two squares joined by a neck 8 high; stops of 4.5 close the neck.
    const std::vector<Point> ring{{0, 0},    {100, 0},  {100, 46},  {200, 46},
                                  {200, 0},  {300, 0},  {300, 100}, {200, 100},
                                  {200, 54}, {100, 54}, {100, 100}, {0, 100}};
    Panel drawn = panel(corners(ring));
    drawn.edges = {stop("all", 4)};
    drawn.edges.front().stop = 4500;
    const Cutting out = cut(drawn, film());
    CHECK(out.ways.empty());
    REQUIRE(count(out.faults, Severity::file) == 1);
    CHECK(out.faults.back().what ==
          "its stops, openings and inlays leave it in 2 parts, the second of 8281 mm²");

    // A nib 12 wide beside a neck: what is left of it is 3 x 5 of 30,015.
    Panel nib = panel(corners({{0, 0},
                               {300, 0},
                               {300, 90},
                               {310, 90},
                               {310, 84},
                               {322, 84},
                               {322, 98},
                               {310, 98},
                               {310, 96},
                               {300, 96},
                               {300, 100},
                               {0, 100}}));
    nib.edges = {stop("all", 4)};
    const Cutting kept = cut(nib, film());
    CHECK(kept.ways.size() == 1);
    REQUIRE(count(kept.faults, Severity::note) == 1);
    CHECK(is_mm2(kept.piece().wrapped, 292.0 * 92));
}

TEST_CASE("stops that leave nothing are a fault") {
    const Cutting out = cut(plain({stop("all", 150)}), film());
    CHECK(out.ways.empty());
    CHECK(out.faults.back().severity == Severity::file);
}

TEST_CASE("openings: cut out, their wrap makes the hole smaller, its default is the film's") {
    Panel drawn = plain({wrap("all", 0)});
    drawn.openings = {opening("hole", corners({{100, 100}, {200, 100}, {200, 180}, {100, 180}}))};
    CHECK(is_mm2(cut(drawn, with_wrap(10)).piece().wrapped, 400.0 * 300 - 80 * 60));
    drawn.openings[0].wrap = 15000;
    CHECK(is_mm2(cut(drawn, with_wrap(10)).piece().wrapped, 400.0 * 300 - 70 * 50));
    drawn.openings[0].wrap = 50000;
    CHECK(is_mm2(cut(drawn, with_wrap(10)).piece().wrapped, 400.0 * 300));
}

TEST_CASE("an opening cut on the vehicle is no hole in the blank: one cut at the table is") {
    Panel drawn = plain({wrap("all", 0)});
    drawn.openings = {opening("hole", corners({{100, 100}, {200, 100}, {200, 180}, {100, 180}})),
                      opening("ring", corners({{250, 100}, {350, 100}, {350, 200}, {250, 200}}))};
    drawn.openings[1].cut = OpeningCut::at_table;
    const Cutting out = cut(drawn, film(), by_contour());
    CHECK(is_mm2(out.piece().wrapped, 400.0 * 300 - 100 * 80 - 100 * 100));
    CHECK(is_mm2(out.piece().shapes[0].outline, 400.0 * 300 - 100 * 100));
    REQUIRE(out.piece().shapes[0].outline.holes.size() == 1);
    Film bleeding = film();
    bleeding.allowances.bleed = 10000;
    CHECK(is_mm2(cut(drawn, bleeding, by_contour()).piece().shapes[0].outline,
                 420.0 * 320 - 80 * 80));
}

TEST_CASE("an opening behind a part: covered with the part off, cut out with it on") {
    Panel drawn = plain({wrap("all", 12)});
    drawn.openings = {opening("handle", corners({{100, 100}, {200, 100}, {200, 180}, {100, 180}}))};
    drawn.openings[0].behind = "door handles";
    Film film = test::film();
    film.allowances.flush = 2000;
    CHECK(is_mm2(cut(drawn, film).piece().wrapped, 424.0 * 324));
    piece::Wishes wishes;
    wishes.left_on = {"mirrors", "door handles"};
    CHECK(is_mm2(cut(drawn, film, wishes).piece().wrapped, 424.0 * 324 - 96 * 76));
}

TEST_CASE("an edge behind a part: its wrap with the part off, the flush with it on") {
    Panel drawn = plain({wrap("all", 12), behind("top", "window seals")});
    Film film = test::film();
    film.allowances.flush = 2000;
    CHECK(box_of_cut(drawn, film) == BoxMm{-12, -12, 412, 312});
    piece::Wishes wishes;
    wishes.left_on = {"window seals"};
    CHECK(box_of_cut(drawn, film, wishes) == BoxMm{-12, -12, 412, 302});
    drawn.allowances.flush = 3000;
    CHECK(box_of_cut(drawn, film, wishes) == BoxMm{-12, -12, 412, 303});
}

TEST_CASE("what has to stay clear is never covered, not by a default tuck either") {
    Panel drawn = plain({wrap("all", 0)});
    drawn.openings = {opening("aerial", corners({{100, 100}, {200, 100}, {200, 180}, {100, 180}}))};
    drawn.openings[0].keep_clear = "aerial";
    CHECK(is_mm2(cut(drawn, with_wrap(10)).piece().wrapped, 400.0 * 300 - 100 * 80));
    drawn.openings[0].behind = "aerial foot";
    CHECK(is_mm2(cut(drawn, with_wrap(10)).piece().wrapped, 400.0 * 300 - 100 * 80));
    drawn.openings[0].wrap = 10000;
    CHECK(is_mm2(cut(drawn, with_wrap(10)).piece().wrapped, 400.0 * 300 - 80 * 60));
}

TEST_CASE("a panel that holds something to keep clear warns of film that holds metal") {
    Panel drawn = plain({wrap("all", 12)});
    drawn.keep_clear = "radar";
    Film film = test::film();
    film.holds_metal = HoldsMetal::no;
    CHECK(cut(drawn, film).faults.empty());
    for (const HoldsMetal metal : {HoldsMetal::yes, HoldsMetal::unknown}) {
        film.holds_metal = metal;
        CHECK(count(cut(drawn, film).faults, Severity::warning) == 1);
    }
}

TEST_CASE("the film on the vehicle holds the whole panel, openings aside (GEOS)") {
    Dice dice(21);
    for (int trial = 0; trial < 100; ++trial) {
        const std::vector<Point> ring = star(dice, dice.whole(4, 12), 150, 600, {100, 50});
        Panel drawn = panel(corners(ring));
        for (std::size_t i = 0; i < ring.size(); ++i)
            drawn.edges.push_back(
                wrap(std::to_string(i + 1) + "-" + std::to_string((i + 1) % ring.size() + 1),
                     dice.whole(0, 40)));
        drawn.openings = {opening("hole", corners({{90, 40}, {110, 40}, {110, 60}, {90, 60}}))};
        Film wide = film();
        wide.width = 6000000;
        const Polygon wrapped = cut(drawn, wide).piece().wrapped;
        const Figure panel_only =
            Figure::of(ring).without(Figure::of({{90, 40}, {110, 40}, {110, 60}, {90, 60}}));
        CAPTURE(trial);
        CHECK(panel_only.without(Figure::of(wrapped)).area() < 3);
        CHECK(std::abs(Figure::of(wrapped).area() - area_of(wrapped)) < 1e-3);
    }
}
