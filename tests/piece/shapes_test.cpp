// SPDX-License-Identifier: MIT
// Frames, sides, faces and copies; rectangles with their margins and the ruler; contour blanks.
#include "cutting.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace pelt;
using namespace pelt::test;

namespace {

/// An outline without any symmetry, so that every turn and mirror shows.
Panel lopsided(std::optional<Heading> forward = std::nullopt) {
    Panel out = panel(corners({{0, 0}, {300, 0}, {200, 100}, {0, 50}}));
    out.edges = {wrap("all", 0)};
    out.forward = forward;
    return out;
}

Film with_margin(Um want_mm, Um least_mm, Direction direction = Direction::one_way) {
    Film out = film(direction);
    out.allowances.handling = {want_mm * um_per_mm, least_mm * um_per_mm};
    return out;
}

Panel flat(double wide, double high) {
    Panel out = panel(size(wide, high));
    out.edges = {wrap("all", 0)};
    out.forward = Heading::right;
    return out;
}

using Turns = std::vector<Turn>;

} // namespace

TEST_CASE("forward points along +x in the piece's frame") {
    const Ring right{{0, 0}, {300000, 0}, {200000, 100000}, {0, 50000}};
    const auto wrapped = [](Heading heading) {
        return cut(lopsided(heading), film()).piece().wrapped.outer;
    };
    CHECK(wrapped(Heading::right) == right);
    CHECK(wrapped(Heading::left) == Ring{{-300000, 0}, {-200000, -100000}, {0, -50000}, {0, 0}});
    CHECK(wrapped(Heading::up) == Ring{{0, -300000}, {100000, -200000}, {50000, 0}, {0, 0}});
    CHECK(wrapped(Heading::down) == Ring{{-100000, 200000}, {-50000, 0}, {0, 0}, {0, 300000}});
}

TEST_CASE("forward defaults to left on left panels, to right on right ones") {
    Panel drawn = lopsided();
    drawn.sides = Sides::left;
    const Ring to_left = cut(lopsided(Heading::left), film()).piece().wrapped.outer;
    CHECK(cut(drawn, film(Direction::one_way)).piece().wrapped.outer == to_left);
    drawn.sides = Sides::both;
    CHECK(cut(drawn, film(Direction::one_way)).piece(0).wrapped.outer == to_left);
    drawn.sides = Sides::right;
    CHECK(cut(drawn, film(Direction::one_way)).piece().wrapped.outer ==
          cut(lopsided(Heading::right), film()).piece().wrapped.outer);
}

TEST_CASE("a center panel needs its forward unless film may lie any way") {
    for (const Direction direction : {Direction::one_way, Direction::two_way}) {
        const Cutting out = cut(lopsided(), film(direction));
        CHECK(out.ways.empty());
        REQUIRE(out.faults.size() == 1);
        CHECK(out.faults[0].severity == Severity::file);
        CHECK(out.faults[0].what == "needs 'forward': the way toward the nose in its drawing");
    }
    CHECK(cut(lopsided(), film(Direction::any)).ways.size() == 1);
    Panel free = lopsided();
    free.direction = Direction::any;
    CHECK(cut(free, film(Direction::one_way)).ways.size() == 1);
}

TEST_CASE("a right piece is its left twin with y negated, never the film turned over") {
    Panel drawn = lopsided();
    drawn.sides = Sides::both;
    Film margins = with_margin(40, 15);
    margins.allowances.ruler = 3175;
    margins.allowances.bleed = 7000;
    for (const CutBy by : {CutBy::straight, CutBy::contour}) {
        piece::Wishes wishes;
        wishes.by = by;
        const Cutting out = cut(drawn, margins, wishes);
        REQUIRE(out.way().pieces.size() == 2);
        const Piece& left = out.piece(0);
        const Piece& right = out.piece(1);
        CHECK(left.ids[0].side == Side::left);
        CHECK(right.ids[0].side == Side::right);
        const auto negated = [](Polygon polygon) {
            for (GridPoint& p : polygon.outer)
                p.y = -p.y;
            std::reverse(polygon.outer.begin(), polygon.outer.end());
            return geometry::normalised(polygon);
        };
        CHECK(negated(left.wrapped) == right.wrapped);
        CHECK(negated(left.shapes[0].outline) == right.shapes[0].outline);
        CHECK((doubled_area(right.wrapped.outer) > 0));
    }
}

TEST_CASE("copies number 1 to count x faces x times: the inner faces are mirrored") {
    Panel drawn = lopsided();
    drawn.sides = Sides::both;
    drawn.count = 2;
    drawn.faces = 2;
    piece::Wishes wishes;
    wishes.times = 3;
    const Cutting out = cut(drawn, film(), wishes);
    REQUIRE(out.way().pieces.size() == 4);
    std::vector<int> left;
    std::vector<int> right;
    for (const Piece& piece : out.way().pieces) {
        CHECK(piece.ids.size() == 6);
        for (const PieceId& id : piece.ids)
            (id.side == Side::left ? left : right).push_back(id.copy);
    }
    const std::vector<int> all{1, 3, 5, 7, 9, 11, 2, 4, 6, 8, 10, 12};
    CHECK(left == all);
    CHECK(right == all);
    CHECK(out.piece(0).wrapped == out.piece(3).wrapped);
    CHECK(out.piece(1).wrapped == out.piece(2).wrapped);
    CHECK(out.piece(0).wrapped != out.piece(1).wrapped);
}

TEST_CASE("straight: the wanted margin on all four sides, sides rounded up to the ruler") {
    Film margins = with_margin(40, 15);
    const Cutting out = cut(flat(500.25, 300), margins);
    REQUIRE(out.piece().shapes.size() == 1);
    const CutShape& shape = out.piece().shapes[0];
    CHECK(shape.turns == Turns{no_turn});
    const Box box = box_of(shape.outline.outer);
    CHECK(box.along() == 581000);
    CHECK(box.across() == 380000);
    // The extra goes to the margin, on both sides alike.
    CHECK(box.low == GridPoint{-40375, -40000});
    margins.allowances.ruler = 3175;
    const Box inch = box_of(cut(flat(500.25, 300), margins).piece().shapes[0].outline.outer);
    CHECK(inch.along() == 183 * 3175);
    CHECK(inch.across() == 120 * 3175);
}

TEST_CASE("straight: too wide for its margins, a rectangle shrinks across to the usable width") {
    // Usable 1512: 1440 + 80 does not fit, 1440 + 30 does.
    const Cutting out = cut(flat(500, 1440), with_margin(40, 15));
    const Box box = box_of(out.piece().shapes.at(0).outline.outer);
    CHECK(box.along() == 580000);
    CHECK(box.across() == 1512000);
    CHECK(box.low.y == -36000);
    CHECK_FALSE(stops(out.faults));
    // Up to the least margin and no further.
    CHECK(cut(flat(500, 1482), with_margin(40, 15)).ways.size() == 1);
    Panel wider = flat(500, 1482.002);
    wider.seam = SeamRule::never;
    const Cutting none = cut(wider, with_margin(40, 15));
    CHECK(none.ways.empty());
    REQUIRE(none.faults.size() == 1);
    CHECK(none.faults[0].severity == Severity::job);
}

TEST_CASE("straight: the usable width is used exactly though the ruler does not divide it") {
    Film margins = with_margin(40, 15);
    margins.allowances.ruler = 3175;
    const Box box = box_of(cut(flat(500, 1432), margins).piece().shapes.at(0).outline.outer);
    CHECK(box.across() == 1512000);
}

TEST_CASE("straight: film of any direction offers both ways of lying, each with its margins") {
    const Cutting both = cut(flat(500, 300), with_margin(40, 15, Direction::any));
    REQUIRE(both.piece().shapes.size() == 1);
    CHECK(both.piece().shapes[0].turns == Turns{no_turn, quarter_turn});

    // 1470 long: lying along it keeps its margins, lying across it shrinks.
    const Cutting two = cut(flat(1470, 300), with_margin(40, 15, Direction::any));
    REQUIRE(two.piece().shapes.size() == 2);
    CHECK(two.piece().shapes[0].turns == Turns{no_turn});
    CHECK(box_of(two.piece().shapes[0].outline.outer).along() == 1550000);
    CHECK(two.piece().shapes[1].turns == Turns{quarter_turn});
    CHECK(box_of(two.piece().shapes[1].outline.outer).along() == 1512000);
    CHECK(box_of(two.piece().shapes[1].outline.outer).across() == 380000);

    const Cutting across_only = cut(flat(1400, 1700), with_margin(40, 15, Direction::any));
    REQUIRE(across_only.piece().shapes.size() == 1);
    CHECK(across_only.piece().shapes[0].turns == Turns{quarter_turn});

    CHECK(cut(flat(500, 300), with_margin(40, 15, Direction::two_way)).piece().shapes[0].turns ==
          Turns{no_turn});
}

TEST_CASE("a panel's own allowances and direction come before the film's") {
    Panel drawn = flat(500, 300);
    drawn.allowances.handling = Handling{60000, 20000};
    drawn.direction = Direction::any;
    drawn.batch_free = true;
    const Cutting out = cut(drawn, with_margin(40, 15));
    CHECK(box_of(out.piece().shapes[0].outline.outer).along() == 620000);
    CHECK(out.piece().shapes[0].turns == Turns{no_turn, quarter_turn});
    CHECK(out.piece().direction == Direction::any);
    CHECK(out.piece().batch_free);
}

TEST_CASE("contour: the wrapped outline grown by the bleed, in the turns of the direction") {
    Film bleeding = film(Direction::two_way);
    bleeding.allowances.bleed = 10000;
    Panel drawn = flat(500, 300);
    drawn.edges = {wrap("all", 12)};
    const Cutting out = cut(drawn, bleeding, by_contour());
    CHECK(box_mm(out.piece().wrapped) == BoxMm{-12, -12, 512, 312});
    CHECK(box_mm(out.piece().shapes[0].outline) == BoxMm{-22, -22, 522, 322});
    CHECK(out.piece().shapes[0].turns == Turns{no_turn, half_turn});
    bleeding.direction = Direction::any;
    CHECK(cut(drawn, bleeding, by_contour()).piece().shapes[0].turns ==
          Turns{no_turn, quarter_turn, half_turn, three_quarter_turn});
    bleeding.direction = Direction::one_way;
    CHECK(cut(drawn, bleeding, by_contour()).piece().shapes[0].turns == Turns{no_turn});
}

TEST_CASE("contour: a blank just as wide as the film fits, one micrometer more does not") {
    Panel drawn = flat(500, 1512);
    drawn.seam = SeamRule::never;
    CHECK(cut(drawn, film(Direction::one_way), by_contour()).ways.size() == 1);
    drawn = flat(500, 1512.001);
    drawn.seam = SeamRule::never;
    CHECK(cut(drawn, film(Direction::one_way), by_contour()).ways.empty());
    CHECK(cut(drawn, film(Direction::any), by_contour()).ways.size() == 1);
}

TEST_CASE("the same panel under another name and elsewhere in the file is cut alike") {
    Panel drawn = lopsided(Heading::up);
    Panel renamed = drawn;
    renamed.name = "zebra";
    renamed.group = "front";
    const Cutting a = cut(drawn, film());
    const Cutting b = cut(renamed, film());
    CHECK(a.piece().wrapped == b.piece().wrapped);
    CHECK(a.piece().shapes[0].outline == b.piece().shapes[0].outline);
}
