// SPDX-License-Identifier: MIT
// "Seams and inlays", and what happens to a panel that is too wide.
#include "divided.hpp"
#include "geos_referee.hpp"
#include "model/marked_length.hpp"
#include "random_figures.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace pelt;
using namespace pelt::test;

TEST_CASE("a seam line is where the upper piece ends: the under piece runs the overlap past it") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{600, 0}, {600, 400}})};
    const Cutting out = cut(drawn, lapping(10));
    REQUIRE(out.ways.size() == 1);
    REQUIRE(out.way().pieces.size() == 2);
    // Forward is +x: the forward piece lies on top.
    CHECK(box_mm(part(out.way(), 2).wrapped) == BoxMm{600, 0, 1000, 400});
    CHECK(box_mm(part(out.way(), 1).wrapped) == BoxMm{0, 0, 610, 400});
    REQUIRE(out.way().seams.size() == 1);
    const Seam& seam = out.way().seams[0];
    CHECK(seam.upper_part == 2);
    CHECK(seam.under_part == 1);
    CHECK(seam.overlap == 10000);
    CHECK(seam.length == 400000);
    CHECK_FALSE(seam.added);
    CHECK(in_words(seam.place) == "its seam line 1, across, 400 mm from the front edge");
    CHECK(part(out.way(), 2).ids[0].parts == 2);
}

TEST_CASE("the overlap counts as on the vehicle, twice") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{600, 0}, {600, 400}})};
    CHECK(std::abs(film_area(cut(drawn, lapping(10)).way()) - (1000 + 10) * 400.0) < 1e-6);
    drawn.allowances.overlap = 25000;
    CHECK(std::abs(film_area(cut(drawn, lapping(10)).way()) - (1000 + 25) * 400.0) < 1e-6);
}

TEST_CASE("seam lines are lengthened straight at both ends until they leave the blank") {
    // The line ends inside the panel, and the tucks lie outside it.
    Panel drawn = flat(1000, 400);
    drawn.edges = {wrap("all", 30)};
    drawn.seam_lines = {line({{600, 190}, {600, 210}})};
    const Cutting out = cut(drawn, lapping(10));
    CHECK(box_mm(part(out.way(), 2).wrapped) == BoxMm{600, -30, 1030, 430});
    CHECK(box_mm(part(out.way(), 1).wrapped) == BoxMm{-30, -30, 610, 430});
    // Its length is that within the panel.
    CHECK(out.way().seams.at(0).length == 400000);
}

TEST_CASE("a slanted seam and one with a bend") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{400, 0}, {800, 400}})};
    const Cutting slanted = cut(drawn, lapping(10));
    // Forward side: a trapezium of 600 and 200.
    CHECK(is_mm2(part(slanted.way(), 2).wrapped, 160000));
    CHECK(std::abs(area_of(part(slanted.way(), 1).wrapped) - (240000 + 10 * 565.685)) < 1);
    CHECK(slanted.way().seams.at(0).length == 565685);
    CHECK(in_words(slanted.way().seams.at(0).place) ==
          "its seam line 1, across, from 200 to 600 mm from the front edge");

    drawn.seam_lines = {line({{500, 0}, {500, 200}, {700, 400}})};
    const Cutting bent = cut(drawn, lapping(0));
    CHECK(is_mm2(part(bent.way(), 2).wrapped, 500 * 200 + 400 * 200));
    CHECK(std::abs(film_area(bent.way()) - 400000) < 0.01);
    CHECK(bent.way().seams.at(0).length == 200000 + 282843);
}

TEST_CASE("the lap's free edge faces rearward or down: which piece lies on top") {
    struct Case {
        Heading heading;
        std::vector<Point> line;
        Point on_top; ///< a point of the drawing that the upper piece covers
    };
    const std::vector<Case> cases{
        // Across: the forward piece.
        {Heading::right, {{500, 0}, {500, 400}}, {900, 200}},
        {Heading::left, {{500, 0}, {500, 400}}, {100, 200}},
        {Heading::up, {{0, 200}, {1000, 200}}, {500, 300}},
        {Heading::down, {{0, 200}, {1000, 200}}, {500, 100}},
        // Fore and aft on a side: the upper piece.
        {Heading::right, {{0, 200}, {1000, 200}}, {500, 300}},
        {Heading::left, {{1000, 200}, {0, 200}}, {500, 300}},
        // Fore and aft on a hood: the one to the left in the drawing.
        {Heading::up, {{500, 0}, {500, 400}}, {100, 200}},
        {Heading::down, {{500, 400}, {500, 0}}, {100, 200}},
    };
    for (const Case& c : cases) {
        Panel drawn = flat(1000, 400, c.heading);
        drawn.seam_lines = {line(c.line)};
        const Cutting out = cut(drawn, lapping(10));
        REQUIRE(out.way().seams.size() == 1);
        const int upper = out.way().seams[0].upper_part;
        CHECK(upper == 2);
        // Of two equal halves the under piece is the larger one, by the overlap.
        Panel half = flat(1000, 400, c.heading);
        half.openings = {opening("mark", corners({{c.on_top.x - 5, c.on_top.y - 5},
                                                  {c.on_top.x + 5, c.on_top.y - 5},
                                                  {c.on_top.x + 5, c.on_top.y + 5},
                                                  {c.on_top.x - 5, c.on_top.y + 5}}))};
        half.seam_lines = drawn.seam_lines;
        const Cutting marked = cut(half, lapping(10));
        CAPTURE(static_cast<int>(c.heading));
        CAPTURE(c.on_top.x);
        CHECK(part(marked.way(), 2).wrapped.holes.size() == 1);
        CHECK(part(marked.way(), 1).wrapped.holes.empty());
    }
}

TEST_CASE("where a seam runs, in the words of the panel's own edges") {
    const auto where = [](Heading heading, std::vector<Point> points, Sides sides = Sides::centre) {
        Panel drawn = flat(1000, 400, heading);
        drawn.sides = sides;
        drawn.seam_lines = {line(std::move(points))};
        return in_words(cut(drawn, lapping(10)).way().seams.at(0).place).substr(17);
    };
    CHECK(where(Heading::left, {{300, 0}, {300, 400}}) == "across, 300 mm from the front edge");
    CHECK(where(Heading::left, {{800, 0}, {800, 400}}) == "across, 200 mm from the rear edge");
    CHECK(where(Heading::left, {{0, 150}, {900, 150}}, Sides::left) ==
          "along, 150 mm from the lower edge");
    CHECK(where(Heading::right, {{0, 250}, {900, 250}}, Sides::right) ==
          "along, 150 mm from the upper edge");
    // A roof from above: with its nose to the left, below in the drawing is the vehicle's left.
    CHECK(where(Heading::left, {{0, 150}, {900, 150}}) == "along, 150 mm from the left edge");
    CHECK(where(Heading::up, {{0, 250}, {900, 250}}) == "across, 150 mm from the upper edge");
    CHECK(where(Heading::down, {{0, 250}, {900, 250}}) == "across, 150 mm from the upper edge");
    CHECK(where(Heading::up, {{300, 0}, {300, 400}}) == "along, 300 mm from the left edge");
    CHECK(where(Heading::down, {{800, 0}, {800, 400}}) == "along, 200 mm from the left edge");
}

TEST_CASE("two lines that cross make four parts and their seams") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{500, 0}, {500, 400}}), line({{0, 200}, {1000, 200}})};
    const Cutting out = cut(drawn, lapping(0));
    CHECK(out.way().pieces.size() == 4);
    CHECK(std::abs(film_area(out.way()) - 400000) < 0.01);
    REQUIRE(out.way().seams.size() == 4);
    Um length = 0;
    for (const Seam& seam : out.way().seams)
        length += seam.length;
    CHECK(length == 1400000);
    for (const Seam& seam : out.way().seams)
        CHECK(seam.upper_part > seam.under_part);
}

TEST_CASE("a line that cuts off two tongues makes three parts") {
    // A U whose arms point forward.
    Panel drawn = panel(corners(
        {{0, 0}, {600, 0}, {600, 100}, {200, 100}, {200, 300}, {600, 300}, {600, 400}, {0, 400}}));
    drawn.edges = {wrap("all", 0)};
    drawn.forward = Heading::right;
    drawn.seam_lines = {line({{400, 0}, {400, 400}})};
    const Cutting out = cut(drawn, lapping(10));
    REQUIRE(out.way().pieces.size() == 3);
    REQUIRE(out.way().seams.size() == 2);
    CHECK(out.way().seams[0].length == 100000);
    CHECK(std::abs(film_area(out.way()) - (160000 + 2 * 100 * 10)) < 0.01);
}

TEST_CASE("lines that cross themselves, miss the panel or contradict it are faults") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{500, 0}, {600, 200}, {400, 200}, {500, 100}, {700, 300}}),
                        line({{0, 500}, {1000, 500}}), line({{500, 0}, {500, 400}})};
    drawn.seam = SeamRule::never;
    const Cutting out = cut(drawn, lapping(10));
    CHECK(out.ways.empty());
    REQUIRE(out.faults.size() == 3);
    CHECK(out.faults[0].what ==
          "the seam line crosses itself when it is lengthened straight at both ends");
    CHECK(out.faults[1].what == "the seam line does not divide the panel");
    CHECK(out.faults[2].what ==
          "the seam line is to be used always, but the panel says 'seam: never'");
    for (const Fault& fault : out.faults)
        CHECK(fault.severity == Severity::file);
}

TEST_CASE("lines that are used when needed leave a panel whole that fits") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{500, 0}, {500, 400}}, false)};
    const Cutting out = cut(drawn, lapping(10));
    REQUIRE(out.ways.size() == 1);
    CHECK(out.way().pieces.size() == 1);
    CHECK(out.way().seams.empty());
}

TEST_CASE("too wide: the fewest of the file's lines that do, every choice a way") {
    // 2000 across; usable 1512. Lines at 300, 1000 and 1700; any one of 1000 alone leaves 1000s,
    // 300 leaves 1700, which is too wide, 1700 leaves 1700 below it, too.
    Panel drawn = flat(1000, 2000);
    drawn.seam_lines = {line({{0, 300}, {1000, 300}}, false),
                        line({{0, 1000}, {1000, 1000}}, false),
                        line({{0, 1400}, {1000, 1400}}, false)};
    const Cutting out = cut(drawn, lapping(10), thrifty());
    REQUIRE(out.ways.size() == 2);
    for (const piece::Way& way : out.ways) {
        CHECK(way.pieces.size() == 2);
        REQUIRE(way.seams.size() == 1);
        CHECK_FALSE(way.seams[0].added);
        CHECK(parts_fit(way, 1512000));
    }
    CHECK(in_words(out.ways[0].seams[0].place) ==
          "its seam line 2, along, 1000 mm from the left edge");
    CHECK(in_words(out.ways[1].seams[0].place) ==
          "its seam line 3, along, 600 mm from the left edge");
    const Cutting fitters = cut(drawn, lapping(10));
    REQUIRE(fitters.ways.size() == 1);
    CHECK(fitters.way().seams.at(0).place == out.ways[0].seams[0].place);
}

TEST_CASE("too wide: 'seam: at lines' adds none of its own, 'never' and the wishes forbid all") {
    Panel drawn = flat(1000, 2000);
    drawn.seam_lines = {line({{0, 300}, {1000, 300}}, false)};
    drawn.seam = SeamRule::at_lines;
    const Cutting at_lines = cut(drawn, lapping(10));
    CHECK(at_lines.ways.empty());
    REQUIRE(at_lines.faults.size() == 1);
    CHECK(at_lines.faults[0].severity == Severity::job);
    CHECK(in_unit(at_lines.faults[0].what, Unit::mm) ==
          "is too wide for the film: with its tuck it is 1000 mm along × 2000 mm across the roll, "
          "and needs a margin of 0 mm on either side; the usable width is 1512 mm");
    CHECK(
        in_unit(at_lines.faults[0].remedy, Unit::mm) ==
        "a film with a usable width of 2000 mm, or 'direction: any' for the panel, or another seam "
        "line, or 'seam: anywhere' would help");
    drawn.seam = SeamRule::never;
    CHECK(cut(drawn, lapping(10)).faults.at(0).remedy.find("'seam: anywhere' for the panel") !=
          std::string::npos);
    drawn.seam = SeamRule::anywhere;
    piece::Wishes wishes;
    wishes.seams = Seams::never;
    const Cutting wished = cut(drawn, lapping(10), wishes);
    CHECK(wished.ways.empty());
    CHECK(wished.faults.at(0).remedy.find("'--seams fitter'") != std::string::npos);
}

TEST_CASE("lines that are always used are used under '--seams never' too") {
    Panel drawn = flat(1000, 400);
    drawn.seam_lines = {line({{500, 0}, {500, 400}})};
    piece::Wishes wishes;
    wishes.seams = Seams::never;
    CHECK(cut(drawn, lapping(10), wishes).way().pieces.size() == 2);
}

TEST_CASE("too wide and free to choose: strips, a few ways, all of which fit") {
    Panel drawn = flat(3000, 2000, Heading::left);
    Film roll = lapping(10);
    roll.allowances.handling = {40000, 15000};
    const Cutting out = cut(drawn, roll, thrifty());
    REQUIRE(out.ways.size() == 3);
    for (const piece::Way& way : out.ways) {
        CHECK(way.pieces.size() == 2);
        REQUIRE(way.seams.size() == 1);
        CHECK(way.seams[0].added);
        CHECK(way.seams[0].length == 3000000);
        CHECK(parts_fit(way, 1512000));
        CHECK(std::abs(film_area(way) - 3000 * 2010.0) < 0.01);
    }
    CHECK(in_words(out.ways[0].seams[0].place) == "along, 995 mm from the left edge");
    // Narrow above: the lower strip takes 1512 - 2 x 40, its overlap included.
    CHECK(in_words(out.ways[1].seams[0].place) == "along, 578 mm from the right edge");
    CHECK(in_words(out.ways[2].seams[0].place) == "along, 568 mm from the left edge");
}

TEST_CASE("strips: the margins shrink before another strip is added") {
    // Two strips with the wanted margins hold 2 x 1432 - 10 = 2854, with the least 2954.
    Film roll = lapping(10);
    roll.allowances.handling = {40000, 15000};
    CHECK(cut(flat(1000, 2854), roll).way().pieces.size() == 2);
    CHECK(cut(flat(1000, 2954), roll).way().pieces.size() == 2);
    CHECK(cut(flat(1000, 2954.002), roll).way().pieces.size() == 3);
    CHECK(parts_fit(cut(flat(1000, 2954), roll).way(), 1512000));
}

TEST_CASE("strips: three and more, also a wide one between two narrow ones") {
    const Cutting out = cut(flat(1000, 4000), lapping(10), thrifty());
    REQUIRE(out.ways.size() == 4);
    for (const piece::Way& way : out.ways) {
        CHECK(way.pieces.size() == 3);
        CHECK(way.seams.size() == 2);
        CHECK(parts_fit(way, 1512000));
        CHECK(std::abs(film_area(way) - 1000 * 4020.0) < 0.01);
    }
    CHECK(box_of(part(out.ways[3], 2).wrapped.outer).across() == 1512000);
}

TEST_CASE("strips of film that may be turned run whichever way needs fewer") {
    // 1600 along, 4000 across: two strips across the roll do, along it three.
    const Cutting out = cut(flat(1600, 4000), lapping(10, Direction::any), thrifty());
    for (const piece::Way& way : out.ways) {
        CHECK(way.pieces.size() == 2);
        CHECK(way.seams.at(0).place.run == "across");
        CHECK(parts_fit(way, 1512000));
    }
    const Cutting both = cut(flat(1600, 1700), lapping(10, Direction::any), thrifty());
    CHECK(both.ways.size() == 6);
}

TEST_CASE("contour: seam edges get no bleed, the others do") {
    Panel drawn = flat(1000, 400);
    drawn.edges = {wrap("all", 12)};
    drawn.seam_lines = {line({{600, 0}, {600, 400}})};
    Film bleeding = lapping(10);
    bleeding.allowances.bleed = 7000;
    const Cutting out = cut(drawn, bleeding, by_contour());
    CHECK(box_mm(part(out.way(), 2).shapes[0].outline) == BoxMm{600, -19, 1019, 419});
    CHECK(box_mm(part(out.way(), 1).shapes[0].outline) == BoxMm{-19, -19, 610, 419});
}

TEST_CASE("contour: strips leave room for the bleed at the outer sides") {
    Film bleeding = lapping(10);
    bleeding.allowances.bleed = 7000;
    const Cutting out = cut(flat(1000, 2 * 1512 - 2 * 7 - 10), bleeding, by_contour());
    CHECK(out.way().pieces.size() == 2);
    CHECK(parts_fit(out.way(), 1512000));
    CHECK(cut(flat(1000, 2 * 1512 - 2 * 7 - 9.998), bleeding, by_contour()).way().pieces.size() ==
          3);
}

TEST_CASE("an opening on a seam is cut out of both parts") {
    Panel drawn = flat(1000, 400);
    drawn.openings = {opening("hole", corners({{550, 150}, {650, 150}, {650, 250}, {550, 250}}))};
    drawn.seam_lines = {line({{600, 0}, {600, 400}})};
    const Cutting out = cut(drawn, lapping(10), by_contour());
    CHECK(is_mm2(part(out.way(), 2).wrapped, 400 * 400 - 50 * 100));
    CHECK(is_mm2(part(out.way(), 1).wrapped, 610 * 400 - 60 * 100));
    // Cut on the vehicle: the blank is whole.
    CHECK(is_mm2(part(out.way(), 2).shapes[0].outline, 400 * 400));
}

TEST_CASE("both sides of a divided panel have the same parts and seams, mirrored") {
    Panel drawn = panel(corners({{0, 0}, {1000, 0}, {900, 400}, {0, 300}}));
    drawn.edges = {wrap("all", 12)};
    drawn.sides = Sides::both;
    drawn.seam_lines = {line({{500, 0}, {550, 400}})};
    const Cutting out = cut(drawn, lapping(10));
    REQUIRE(out.way().pieces.size() == 4);
    REQUIRE(out.way().seams.size() == 2);
    CHECK(out.way().seams[0].side == Side::left);
    CHECK(out.way().seams[1].side == Side::right);
    CHECK(out.way().seams[0].place == out.way().seams[1].place);
    for (int number = 1; number <= 2; ++number) {
        std::vector<const Piece*> twins;
        for (const Piece& piece : out.way().pieces)
            if (piece.ids[0].part == number)
                twins.push_back(&piece);
        REQUIRE(twins.size() == 2);
        CHECK((geometry::doubled_area(twins[0]->wrapped) ==
               geometry::doubled_area(twins[1]->wrapped)));
        CHECK(box_of(twins[0]->wrapped.outer).low.y == -box_of(twins[1]->wrapped.outer).high.y);
    }
}

TEST_CASE("an inlay: its size grown by the overlap, trimmed out of the main film along its size") {
    Panel drawn = flat(1000, 400, Heading::up);
    drawn.inlays = {{"plate recess", {300, 200}, 200, 100, 8000, {}}};
    drawn.count = 2;
    const Cutting out = cut(drawn, lapping(10));
    REQUIRE(out.way().pieces.size() == 2);
    const Piece& main = out.piece(0);
    const Piece& inlay = out.piece(1);
    CHECK(is_mm2(main.wrapped, 400000 - 20000));
    CHECK(inlay.ids.size() == 2);
    CHECK(inlay.ids[0].kind == PieceKind::inlay);
    CHECK(inlay.ids[0].inlay == "plate recess");
    // Drawn 216 x 116; nose up, so that the film's x is the drawing's y.
    CHECK(box_mm(inlay.wrapped) == BoxMm{142, -408, 258, -192});
    CHECK(std::abs(film_area(out.way()) - 2 * (400000 + 216 * 116 - 20000)) < 0.01);
    // Without an overlap of its own it has the film's.
    drawn.inlays[0].overlap.reset();
    CHECK(box_mm(cut(drawn, lapping(10)).piece(1).wrapped) == BoxMm{140, -410, 260, -190});
}

TEST_CASE("an inlay's blank has margins or bleed like any other piece") {
    Panel drawn = flat(1000, 400);
    drawn.inlays = {{"recess", {300, 200}, 200, 100, 8000, {}}};
    Film roll = lapping(10);
    roll.allowances.bleed = 5000;
    roll.allowances.handling = {40000, 15000};
    CHECK(is_mm2(cut(drawn, roll, by_contour()).piece(1).shapes[0].outline, 226 * 126));
    CHECK(is_mm2(cut(drawn, roll).piece(1).shapes[0].outline, 296 * 196));
    // The main film's blank is whole: it is trimmed on the vehicle.
    CHECK(cut(drawn, roll, by_contour()).piece(0).shapes[0].outline.holes.empty());
}

TEST_CASE("an inlay that the film does not take is a fault of its own") {
    Panel drawn = flat(1000, 3000);
    drawn.inlays = {{"recess", {500, 1500}, 200, 2000, 8000, {}}};
    const Cutting out = cut(drawn, lapping(10));
    CHECK(out.ways.empty());
    REQUIRE(out.faults.size() == 1);
    CHECK(out.faults[0].severity == Severity::job);
    CHECK(out.faults[0].what.find("the inlay 'recess' is too wide for the film") == 0);
}

TEST_CASE("ways do not depend on names") {
    Panel drawn = flat(3000, 2000);
    Panel renamed = drawn;
    renamed.name = "another";
    const Cutting a = cut(drawn, lapping(10), thrifty());
    const Cutting b = cut(renamed, lapping(10), thrifty());
    REQUIRE(a.ways.size() == b.ways.size());
    for (std::size_t i = 0; i < a.ways.size(); ++i)
        for (std::size_t k = 0; k < a.ways[i].pieces.size(); ++k)
            CHECK(a.ways[i].pieces[k].wrapped == b.ways[i].pieces[k].wrapped);
}

TEST_CASE("random panels, random lines: parts cover what the whole covers, and lap (GEOS)") {
    Dice dice(31);
    int divided = 0;
    for (int trial = 0; trial < 150; ++trial) {
        Panel drawn = panel(corners(star(dice, dice.whole(5, 12), 250, 600, {0, 0})));
        drawn.edges = {wrap("all", dice.whole(0, 30))};
        drawn.forward = Heading::right;
        const Polygon whole = cut(drawn, lapping(0)).piece().wrapped;
        drawn.seam_lines = {line({{dice.real(-100, 100), dice.real(-100, 100)},
                                  {dice.real(-100, 100), dice.real(-100, 100)}})};
        const Um overlap = dice.whole(0, 20);
        const Cutting out = cut(drawn, lapping(overlap));
        if (out.ways.empty())
            continue;
        ++divided;
        std::vector<Figure> parts;
        double sum = 0;
        for (const Piece& piece : out.way().pieces) {
            CHECK(Figure::of(piece.wrapped).is_valid());
            parts.push_back(Figure::of(piece.wrapped));
            sum += area_of(piece.wrapped);
        }
        CAPTURE(trial);
        // Crumbs under a thousandth of the panel may be dropped at the seam.
        const double crumbs = 2e-3 * area_of(whole);
        CHECK(Figure::of_all(std::move(parts)).differs_by(Figure::of(whole)) < crumbs);
        CHECK(sum + crumbs > area_of(whole));
        Um length = 0;
        for (const Seam& seam : out.way().seams)
            length += seam.length;
        CHECK(length > 0);
    }
    CHECK(divided > 100);
}
