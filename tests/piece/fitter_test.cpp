// SPDX-License-Identifier: MIT
// Where a fitter would have the seams of a panel that is too wide, and which piece laps over which.
// Common practice, no source.
#include "cutting.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>

using namespace pelt;
using namespace pelt::test;

namespace {

/// 1512 mm usable, 40 mm to grip, down to 15: strips of 1432 as wanted, of 1482 at most.
Film lapping(Direction direction = Direction::one_way) {
    Film out = film(direction);
    out.allowances.overlap = 10'000;
    out.allowances.handling = {40'000, 15'000};
    out.least_piece = 150'000;
    return out;
}

Panel flat(double wide, double high, std::optional<LiesOn> lies, Heading forward,
           Sides sides = Sides::centre) {
    Panel out = panel(size(wide, high));
    out.edges = {wrap("all", 0)};
    out.lies = lies;
    out.forward = forward;
    out.sides = sides;
    return out;
}

const Piece& piece_number(const piece::Way& way, int number) {
    for (const Piece& piece : way.pieces)
        if (piece.ids[0].part == number && piece.ids[0].kind == PieceKind::main)
            return piece;
    FAIL("no such piece");
    return way.pieces.front();
}

/// "along, 568 mm from the lower edge".
std::string where(const Seam& seam) {
    const auto mm = [](Um um) { return std::to_string((um + 500) / 1000); };
    return seam.place.run + ", " + mm(seam.place.nearer) + " mm from the " + seam.place.edge;
}

Opening keep_clear(double x, double y, double half) {
    Opening out = opening("sensor", corners({{x - half, y - half},
                                             {x + half, y - half},
                                             {x + half, y + half},
                                             {x - half, y + half}}));
    out.keep_clear = "ultrasonic";
    return out;
}

} // namespace

TEST_CASE("fitter: on a side full widths from the top, the upper piece over the lower") {
    for (const Sides sides : {Sides::left, Sides::right, Sides::both}) {
        const Heading forward = sides == Sides::right ? Heading::right : Heading::left;
        const Cutting out = cut(flat(3000, 2000, LiesOn::side, forward, sides), lapping());
        REQUIRE(out.ways.size() == 1);
        const Seam& seam = out.way().seams.front();
        CHECK(where(seam) == "along, 568 mm from the lower edge");
        CHECK(seam.upper_part == 2);
        // What lies under is the lower piece, and longer by the lap.
        CHECK(box_of(piece_number(out.way(), 1).wrapped.outer).across() == 578'000);
        CHECK(box_of(piece_number(out.way(), 2).wrapped.outer).across() == 1'432'000);
    }
}

TEST_CASE("fitter: a strip narrower than the least piece is not left") {
    // Full widths would leave 118 + 10 mm below; 150 are wanted.
    const Cutting out =
        cut(flat(3000, 1550, LiesOn::side, Heading::left, Sides::left), lapping());
    CHECK(box_of(piece_number(out.way(), 1).wrapped.outer).across() == 150'000);
    CHECK(where(out.way().seams.front()) == "along, 140 mm from the lower edge");
}

TEST_CASE("fitter: on a side an upright seam is nearest the middle, the front piece over the rear") {
    // 1600 high is too much even turned; 2700 long is two upright strips.
    Panel drawn = flat(2700, 1600, LiesOn::side, Heading::left, Sides::left);
    drawn.openings = {keep_clear(1350, 800, 20)};
    const Cutting along = cut(drawn, lapping(Direction::any));
    // Along is before upright: full widths from the top.
    CHECK(where(along.way().seams.front()) == "along, 168 mm from the lower edge");
    // A row of sensors over the whole height leaves only an upright one.
    drawn.openings.clear();
    for (int y = 40; y < 1560; y += 60)
        drawn.openings.push_back(keep_clear(1350, y, 20));
    for (std::size_t i = 0; i < drawn.openings.size(); ++i)
        drawn.openings[i].name = "sensor " + std::to_string(i);
    const Cutting upright = cut(drawn, lapping(Direction::any));
    const Seam& seam = upright.way().seams.front();
    // Barred from 1280 to 1420: 70 mm off the middle, to either side.
    CHECK(where(seam) == "upright, 1280 mm from the front edge");
    CHECK(seam.upper_part == 2);
    CHECK(box_of(piece_number(upright.way(), 2).wrapped.outer).high.x >
          box_of(piece_number(upright.way(), 1).wrapped.outer).high.x);
}

TEST_CASE("fitter: on a top full widths from the left edge, the inner piece over the outer") {
    const Cutting out = cut(flat(1800, 1000, LiesOn::top, Heading::up), lapping());
    const Seam& seam = out.way().seams.front();
    CHECK(where(seam) == "along, 368 mm from the right edge");
    // The wide piece holds the middle: it lies on top.
    CHECK(box_of(piece_number(out.way(), seam.upper_part).wrapped.outer).across() == 1'432'000);
    const Cutting three = cut(flat(4000, 1000, LiesOn::top, Heading::up), lapping());
    REQUIRE(three.way().seams.size() == 2);
    for (const Seam& outer : three.way().seams)
        CHECK(outer.upper_part == 3); // that of the middle, laid last
    // From the left: 1432 less its lap, then 1432, both laps over their neighbors.
    CHECK(box_of(piece_number(three.way(), 3).wrapped.outer).across() == 1'432'000);
}

TEST_CASE("fitter: a front and a rear that are symmetric are divided in their middle") {
    struct Case {
        LiesOn lies;
        Heading forward;
    };
    for (const Case& c :
         {Case{LiesOn::front, Heading::down}, Case{LiesOn::rear, Heading::up}}) {
        const Cutting out = cut(flat(2001, 500, c.lies, c.forward), lapping());
        const Seam& seam = out.way().seams.front();
        CHECK(seam.place.run == "upright");
        CHECK(seam.place.nearer == 1'000'500);
        CHECK(seam.place.nearer == seam.place.farther);
        // The vehicle's left over its right: +y where forward is +x.
        const Box upper = box_of(piece_number(out.way(), seam.upper_part).wrapped.outer);
        const Box under = box_of(piece_number(out.way(), seam.under_part).wrapped.outer);
        CHECK(upper.low.y > under.low.y);
    }
}

TEST_CASE("fitter: a rear that is not symmetric is divided as a side") {
    Panel drawn = panel(corners({{0, 0}, {2000, 0}, {2000, 500}, {300, 500}, {0, 300}}));
    drawn.edges = {wrap("all", 0)};
    drawn.lies = LiesOn::rear;
    drawn.forward = Heading::up;
    drawn.openings = {keep_clear(1000, 250, 30)};
    const Cutting out = cut(drawn, lapping());
    // The middle is barred 80 mm to either side.
    CHECK(where(out.way().seams.front()) == "upright, 920 mm from the left edge");
    drawn.openings.clear();
    CHECK(where(cut(drawn, lapping()).way().seams.front()) ==
          "upright, 1000 mm from the left edge");
}

TEST_CASE("fitter: no seam within 50 mm of what must stay clear, or none at all") {
    Panel drawn = flat(3000, 2000, LiesOn::side, Heading::left, Sides::left);
    drawn.openings = {keep_clear(500, 560, 15)};
    // 568 from below lies within 545 - 50 to 575 + 50: it moves up no farther than the width.
    CHECK(where(cut(drawn, lapping()).way().seams.front()) == "along, 625 mm from the lower edge");
    drawn.openings.clear();
    for (int y = 40; y < 2000; y += 80)
        drawn.openings.push_back(keep_clear(500, y, 20));
    for (std::size_t i = 0; i < drawn.openings.size(); ++i)
        drawn.openings[i].name = "sensor " + std::to_string(i);
    const Cutting none = cut(drawn, lapping());
    CHECK(none.ways.empty());
    REQUIRE(none.faults.size() >= 1);
    CHECK(none.faults.back().remedy.find("must stay clear") != std::string::npos);
}

TEST_CASE("fitter: places are reckoned with the film's own margins, whatever is asked for") {
    Panel drawn = flat(3000, 2000, LiesOn::side, Heading::left, Sides::left);
    Film asked = lapping();
    asked.allowances.handling = {25'000, 10'000};
    drawn.allowances.placing = Handling{40'000, 15'000};
    CHECK(where(cut(drawn, asked).way().seams.front()) == "along, 568 mm from the lower edge");
    // Margins that leave no room for such strips are heeded.
    asked.allowances.handling = {60'000, 60'000};
    CHECK(where(cut(drawn, asked).way().seams.front()) == "along, 608 mm from the lower edge");
}

TEST_CASE("fitter: what goes whole down to the least margin is not divided") {
    const Panel drawn = flat(3000, 1482, LiesOn::side, Heading::left, Sides::left);
    CHECK(cut(drawn, lapping()).way().seams.empty());
    CHECK(cut(flat(3000, 1482.002, LiesOn::side, Heading::left, Sides::left), lapping())
              .way()
              .seams.size() == 1);
}

TEST_CASE("fitter: the seams' points are those of the drawing, before it is laid flat") {
    Panel drawn = flat(3000, 2000, LiesOn::side, Heading::left, Sides::left);
    drawn.crown = Crown{0, 200, false};
    const Cutting out = cut(drawn, lapping());
    REQUIRE(out.way().seams.size() == 1);
    const SeamPlace chosen = out.way().seams.front().place;
    // Copied into the file they give the same seam.
    drawn.seam_lines = {{chosen.at, true, {}}};
    const Cutting copied = cut(drawn, lapping());
    REQUIRE(copied.way().seams.size() == 1);
    CHECK(std::abs(copied.way().seams.front().place.nearer - chosen.nearer) <= 1);
    CHECK_FALSE(copied.way().seams.front().added);
    for (std::size_t i = 0; i < 2; ++i)
        CHECK(std::abs(box_of(copied.piece(i).wrapped.outer).across() -
                       box_of(out.piece(i).wrapped.outer).across()) <= 1);
}

TEST_CASE("which piece laps over which, by the face on which a panel lies") {
    struct Case {
        std::optional<LiesOn> lies;
        Sides sides;
        Heading forward;
        std::vector<Point> line;
        Point on_top; ///< a point of the drawing, 1000 × 400, that the upper piece covers
    };
    const std::vector<Point> upright{{400, 0}, {400, 400}};
    const std::vector<Point> level{{0, 150}, {1000, 150}};
    const std::vector<Case> cases{
        {LiesOn::side, Sides::left, Heading::left, upright, {100, 200}},
        {LiesOn::side, Sides::left, Heading::left, level, {500, 300}},
        {LiesOn::side, Sides::right, Heading::right, upright, {900, 200}},
        // Drawn with its nose up, a left side has its top to the right, a right side to the left.
        {LiesOn::side, Sides::left, Heading::up, upright, {900, 200}},
        {LiesOn::side, Sides::right, Heading::up, upright, {100, 200}},
        {LiesOn::side, Sides::left, Heading::down, upright, {100, 200}},
        // A top: front over rear, the inner piece over the outer.
        {LiesOn::top, Sides::centre, Heading::up, level, {500, 300}},
        {LiesOn::top, Sides::centre, Heading::up, upright, {900, 200}},
        {LiesOn::top, Sides::centre, Heading::up, {{600, 0}, {600, 400}}, {100, 200}},
        {LiesOn::top, Sides::centre, Heading::up, {{500, 0}, {500, 400}}, {100, 200}},
        {LiesOn::top, Sides::centre, Heading::down, {{500, 0}, {500, 400}}, {900, 200}},
        {LiesOn::top, Sides::left, Heading::up, upright, {900, 200}},
        {LiesOn::top, Sides::right, Heading::up, upright, {100, 200}},
        // A front is seen with the vehicle's left to the right, a rear with it to the left.
        {LiesOn::front, Sides::centre, Heading::down, upright, {900, 200}},
        {LiesOn::front, Sides::centre, Heading::down, level, {500, 300}},
        {LiesOn::rear, Sides::centre, Heading::up, upright, {100, 200}},
        {LiesOn::rear, Sides::centre, Heading::up, level, {500, 300}},
        {LiesOn::rear, Sides::centre, Heading::left, upright, {100, 200}},
        {LiesOn::rear, Sides::centre, Heading::left, level, {500, 300}},
        {LiesOn::rear, Sides::both, Heading::up, upright, {100, 200}},
        {LiesOn::rear, Sides::right, Heading::up, upright, {900, 200}},
    };
    for (const Case& c : cases) {
        Panel drawn = flat(1000, 400, c.lies, c.forward, c.sides);
        drawn.openings = {opening("mark", corners({{c.on_top.x - 5, c.on_top.y - 5},
                                                   {c.on_top.x + 5, c.on_top.y - 5},
                                                   {c.on_top.x + 5, c.on_top.y + 5},
                                                   {c.on_top.x - 5, c.on_top.y + 5}}))};
        drawn.seam_lines = {{c.line, true, {}}};
        const Cutting out = cut(drawn, lapping(Direction::any));
        CAPTURE(static_cast<int>(c.lies.value_or(LiesOn::side)));
        CAPTURE(static_cast<int>(c.sides));
        CAPTURE(static_cast<int>(c.forward));
        CAPTURE(c.on_top.x);
        CHECK(piece_number(out.way(), 2).wrapped.holes.size() == 1);
        CHECK(piece_number(out.way(), 1).wrapped.holes.empty());
    }
}
