// SPDX-License-Identifier: MIT
// "Grow", the rule for film that goes past an edge.
#include "geometry/geometry.hpp"
#include "geos_referee.hpp"
#include "random_figures.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace pelt;
using test::Dice;
using test::Figure;

namespace {

/// Areas are compared to the rounding of the grid: half a micrometre along the whole outline.
double rounding_mm2(const std::vector<Point>& ring) {
    double length = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point b = ring[(i + 1) % ring.size()];
        length += std::hypot(b.x - ring[i].x, b.y - ring[i].y);
    }
    return 0.002 * length + 0.01;
}

double area_of(const std::vector<Polygon>& figures) {
    return to_mm2(geometry::doubled_area(figures));
}

std::vector<double> all(const std::vector<Point>& ring, double move) {
    return std::vector<double>(ring.size(), move);
}

const std::vector<Point> square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};

/// The panel, a strip along every side and a patch at every outward corner, as the rule says it,
/// without any curve or winding: what grown() must cover, no more and no less.
Figure by_patches(const std::vector<Point>& ring, const std::vector<double>& moves) {
    std::vector<Figure> parts;
    parts.push_back(Figure::of(ring));
    const std::size_t n = ring.size();
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t j = (i + 1) % n;
        const Point v = ring[j];
        const Point a{v.x - ring[i].x, v.y - ring[i].y};
        const Point b{ring[(j + 1) % n].x - v.x, ring[(j + 1) % n].y - v.y};
        const double la = std::hypot(a.x, a.y);
        const double lb = std::hypot(b.x, b.y);
        const Point na{a.y / la, -a.x / la};
        const Point nb{b.y / lb, -b.x / lb};
        const double ma = moves[i];
        const double mb = moves[j];
        const Point p{v.x + ma * na.x, v.y + ma * na.y};
        const Point q{v.x + mb * nb.x, v.y + mb * nb.y};
        if (ma > 0)
            parts.push_back(
                Figure::of({ring[i], {ring[i].x + ma * na.x, ring[i].y + ma * na.y}, p, v}));
        if (a.x * b.y - a.y * b.x <= 0 || (ma == 0 && mb == 0))
            continue;
        // Solve (x - v).na = ma, (x - v).nb = mb.
        const double det = na.x * nb.y - na.y * nb.x;
        const Point x{(ma * nb.y - mb * na.y) / det, (mb * na.x - ma * nb.x) / det};
        const double beyond = (x.x * a.x + x.y * a.y) / la;
        const double before = (x.x * b.x + x.y * b.y) / lb;
        if (beyond < 0 || before > 0) {
            parts.push_back(Figure::of({v, p, q}));
            continue;
        }
        std::vector<Point> patch{v, p, {v.x + x.x, v.y + x.y}, q};
        if (ma == 0)
            patch.erase(patch.begin() + 1);
        if (mb == 0)
            patch.pop_back();
        Figure corner = Figure::of(patch);
        const Point sum{na.x + nb.x, na.y + nb.y};
        const double length = std::hypot(sum.x, sum.y);
        const Point u{sum.x / length, sum.y / length};
        const double far = 2 * std::max(ma, mb);
        if (x.x * u.x + x.y * u.y > far) {
            const Point side{-u.y * 1e4, u.x * 1e4};
            const Point near{v.x + far * u.x, v.y + far * u.y};
            const Point off{near.x + 1e4 * u.x, near.y + 1e4 * u.y};
            corner = corner.without(Figure::of({{near.x - side.x, near.y - side.y},
                                                {off.x - side.x, off.y - side.y},
                                                {off.x + side.x, off.y + side.y},
                                                {near.x + side.x, near.y + side.y}}));
        }
        parts.push_back(std::move(corner));
    }
    return Figure::of_all(std::move(parts));
}

} // namespace

TEST_CASE("a square with one tuck on every side becomes the larger square") {
    const auto grown = geometry::grown(square, all(square, 12));
    REQUIRE(grown.size() == 1);
    CHECK(grown[0] ==
          Polygon{{{-12000, -12000}, {112000, -12000}, {112000, 112000}, {-12000, 112000}}, {}});
}

TEST_CASE("a right-angled corner between two different tucks is where the moved lines cross") {
    const auto grown = geometry::grown(square, {30, 12, 0, 7});
    REQUIRE(grown.size() == 1);
    CHECK(grown[0] ==
          Polygon{{{-7000, -30000}, {112000, -30000}, {112000, 100000}, {-7000, 100000}}, {}});
}

TEST_CASE("a blunt corner where only one side has a tuck is a step, not a point") {
    // Turn of 45 degrees at (100, 0), tuck on the lower side only: p, then v.
    const auto curve =
        geometry::grown_corner({100, 0}, {{1, 0}, 10}, {{std::sqrt(0.5), std::sqrt(0.5)}, 0});
    REQUIRE(curve.size() == 2);
    CHECK(curve[0] == Point{100, -10});
    CHECK(curve[1] == Point{100, 0});
}

TEST_CASE("a corner sharper than the crossing's limit is cut square at twice the tuck") {
    // Turn of 150 degrees: the crossing would lie 10 / cos 75 = 38.6 from the corner.
    const double turn = 150 * 3.14159265358979323846 / 180;
    const Point way{std::cos(turn), std::sin(turn)};
    const auto curve = geometry::grown_corner({0, 0}, {{1, 0}, 10}, {way, 10});
    REQUIRE(curve.size() == 2);
    const Point bisector{std::sin(turn / 2), -std::cos(turn / 2)};
    for (const Point& p : curve)
        CHECK(std::abs(p.x * bisector.x + p.y * bisector.y - 20) < 1e-12);
    CHECK(std::abs(curve[0].y + 10) < 1e-12);
}

TEST_CASE("a side that turns right back is cut square at twice the tuck") {
    const auto curve = geometry::grown_corner({5, 0}, {{1, 0}, 10}, {{-1, 0}, 10});
    REQUIRE(curve.size() == 2);
    CHECK(curve[0] == Point{25, -10});
    CHECK(curve[1] == Point{25, 10});
}

TEST_CASE("an inward corner adds nothing and leaves no loop") {
    // An L; its inward corner is (50, 50).
    const std::vector<Point> ring{{0, 0}, {100, 0}, {100, 50}, {50, 50}, {50, 100}, {0, 100}};
    const auto grown = geometry::grown(ring, all(ring, 10));
    REQUIRE(grown.size() == 1);
    CHECK(grown[0].holes.empty());
    CHECK(std::abs(area_of(grown) - (120.0 * 70 + 70 * 50)) < 1e-9);
}

TEST_CASE("an opening gets smaller by its tuck, and closes when the tucks meet") {
    const std::vector<Point> clockwise{{0, 0}, {0, 40}, {60, 40}, {60, 0}};
    const auto left = geometry::shrunk(clockwise, all(clockwise, 12));
    REQUIRE(left.size() == 1);
    CHECK(left[0] == Polygon{{{12000, 12000}, {48000, 12000}, {48000, 28000}, {12000, 28000}}, {}});
    CHECK(geometry::shrunk(clockwise, all(clockwise, 20)).empty());
    CHECK(geometry::shrunk(clockwise, all(clockwise, 500)).empty());
}

TEST_CASE("tucks may enclose a hollow") {
    // A C whose mouth, 10 wide, closes with tucks of 6.
    const std::vector<Point> ring{{0, 0},   {100, 0}, {100, 40}, {80, 40},  {80, 20},   {20, 20},
                                  {20, 80}, {80, 80}, {80, 50},  {100, 50}, {100, 100}, {0, 100}};
    const auto grown = geometry::grown(ring, all(ring, 6));
    REQUIRE(grown.size() == 1);
    REQUIRE(grown[0].holes.size() == 1);
    CHECK(doubled_area(grown[0].holes[0]) < 0);
    CHECK(std::abs(area_of(grown) - (112.0 * 112 - 48.0 * 48)) < 1e-9);
}

TEST_CASE("convex outlines: area + perimeter x tuck + tuck² x sum of tan(turn / 2)") {
    // Mitred case of the offset formula of a convex polygon, A + P r + r² sum tan(turn/2); the
    // rounded case, A + P r + pi r², is Steiner's. No corner turns by more than 120 degrees.
    Dice dice(1);
    for (int trial = 0; trial < 200; ++trial) {
        const std::vector<Point> ring =
            test::convex(dice, dice.whole(6, 14), dice.real(200, 900), dice.real(200, 900));
        const double move = dice.whole(1, 40);
        double area = 0;
        double length = 0;
        double tangents = 0;
        double sharpest = 0;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point a = ring[i];
            const Point b = ring[(i + 1) % ring.size()];
            const Point c = ring[(i + 2) % ring.size()];
            area += (a.x * b.y - b.x * a.y) / 2;
            length += std::hypot(b.x - a.x, b.y - a.y);
            const double turn = std::atan2((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x),
                                           (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y));
            tangents += std::tan(turn / 2);
            sharpest = std::max(sharpest, turn);
        }
        if (sharpest > 2.09)
            continue;
        CAPTURE(trial);
        const double expected = area + length * move + move * move * tangents;
        CHECK(std::abs(area_of(geometry::grown(ring, all(ring, move))) - expected) <
              rounding_mm2(ring));
    }
}

TEST_CASE("triangle 3-4-5 grown by 1: 6 + 12 + the sum of the tangents") {
    // Its corners are cut where they turn by more than 120 degrees (143.1 and 126.9 degrees).
    const std::vector<Point> ring{{0, 0}, {4, 0}, {4, 3}};
    const double by_patch = by_patches(ring, all(ring, 1)).area();
    CHECK(std::abs(area_of(geometry::grown(ring, all(ring, 1))) - by_patch) < 0.02);
    CHECK(by_patch < 6 + 12 + 1 + 3 + 2);
}

TEST_CASE("any outline with a tuck of its own on every side covers what the rule says (GEOS)") {
    Dice dice(2);
    for (int trial = 0; trial < 400; ++trial) {
        const std::vector<Point> ring = test::star(dice, dice.whole(3, 16), 60, 900, {40, -70});
        std::vector<double> moves;
        for (std::size_t i = 0; i < ring.size(); ++i)
            moves.push_back(dice.whole(0, 3) == 0 ? 0 : dice.whole(0, 60));
        CAPTURE(trial);
        const auto grown = geometry::grown(ring, moves);
        const Figure ours = Figure::of(grown);
        CHECK(ours.is_valid());
        CHECK(ours.differs_by(by_patches(ring, moves)) < rounding_mm2(ring));
    }
}

TEST_CASE("one tuck on every side: the mitred offset of GEOS, its mitre cut at the same limit") {
    Dice dice(3);
    for (int trial = 0; trial < 200; ++trial) {
        const std::vector<Point> ring = test::star(dice, dice.whole(3, 12), 200, 900, {0, 0});
        const double move = dice.whole(1, 30);
        CAPTURE(trial);
        const auto grown = geometry::grown(ring, all(ring, move));
        // GEOS takes short cuts at inward corners, up to a hundredth of the distance.
        CHECK(Figure::of(grown).differs_by(Figure::of(ring).grown(move)) <
              rounding_mm2(ring) + 0.01 * move * move * static_cast<double>(ring.size()));
    }
}

TEST_CASE("openings shrink to the inward mitred offset of GEOS") {
    Dice dice(4);
    for (int trial = 0; trial < 200; ++trial) {
        std::vector<Point> ring = test::star(dice, dice.whole(4, 12), 60, 300, {0, 0});
        const double move = dice.whole(1, 25);
        const Figure expected = Figure::of(ring).grown(-move);
        std::reverse(ring.begin(), ring.end());
        CAPTURE(trial);
        CHECK(Figure::of(geometry::shrunk(ring, all(ring, move))).differs_by(expected) <
              rounding_mm2(ring) + 0.01 * move * move * static_cast<double>(ring.size()));
    }
}

TEST_CASE("a polygon with a hole grows outward and into its hole") {
    const Polygon frame{{{0, 0}, {100000, 0}, {100000, 80000}, {0, 80000}},
                        {{{20000, 20000}, {20000, 60000}, {80000, 60000}, {80000, 20000}}}};
    const auto grown = geometry::grown(frame, 10000);
    REQUIRE(grown.size() == 1);
    CHECK(std::abs(area_of(grown) - (120.0 * 100 - 40.0 * 20)) < 1e-9);
    CHECK(std::abs(area_of(geometry::grown(frame, 20000)) - 140.0 * 120) < 1e-9);
}

TEST_CASE("growing a mirror image gives the mirror image") {
    Dice dice(5);
    for (int trial = 0; trial < 100; ++trial) {
        std::vector<Point> ring = test::star(dice, dice.whole(4, 12), 100, 900, {0, 0});
        for (Point& p : ring)
            p = geometry::in_mm(geometry::on_grid(p));
        std::vector<double> moves;
        for (std::size_t i = 0; i < ring.size(); ++i)
            moves.push_back(dice.whole(0, 40));
        // Reversed, the side from point i to the next becomes that into point n-1-i.
        std::vector<Point> twin;
        std::vector<double> twin_moves;
        for (std::size_t k = 0; k < ring.size(); ++k) {
            const std::size_t i = ring.size() - 1 - k;
            twin.push_back({ring[i].x, -ring[i].y});
            twin_moves.push_back(moves[(i + ring.size() - 1) % ring.size()]);
        }
        CAPTURE(trial);
        auto mirror_of_twin = geometry::grown(twin, twin_moves);
        for (Polygon& polygon : mirror_of_twin)
            for (GridPoint& p : polygon.outer)
                p.y = -p.y;
        for (Polygon& polygon : mirror_of_twin)
            std::reverse(polygon.outer.begin(), polygon.outer.end());
        CHECK(Figure::of(geometry::grown(ring, moves)).differs_by(Figure::of(mirror_of_twin)) <
              rounding_mm2(ring));
    }
}
