// SPDX-License-Identifier: MIT
// A drawing as a list of marks, which SVG and paper draw alike. Millimetres of the drawing, x
// right, y down, from its upper left corner.
#pragma once

#include "model/length.hpp"
#include "model/vehicle.hpp"
#include "report/draw/letters.hpp"

#include <string>
#include <variant>
#include <vector>

namespace pelt::report::draw {

inline double in_mm(Um um) {
    return static_cast<double>(um) / um_per_mm;
}

struct Point {
    double x = 0;
    double y = 0;
};
using Ring = std::vector<Point>;

/// An upright box, y down.
struct Box {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    double right() const { return x + width; }
    double bottom() const { return y + height; }
    bool overlaps(const Box& other) const {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
    bool holds(const Box& other) const {
        return x <= other.x && y <= other.y && other.right() <= right() &&
               other.bottom() <= bottom();
    }
};

/// What a mark stands for; looks.hpp says how each is drawn.
enum class Look {
    left_over,   ///< film that is cut off and not used
    roll_edge,   ///< the roll's own edge, not used
    flaw,        ///< film that must not be used
    blank,       ///< a piece as cut from the roll
    wrapped,     ///< what stays on the vehicle
    inlay,       ///< the same of a piece laid into a recess
    lap,         ///< where the other part of a panel ends, laid over or under this one
    cut,         ///< a straight cut
    number_ring, ///< around a cut's number
    plate,       ///< white behind letters that stand on lines
    arrow,       ///< forward on the vehicle
    tick,
    leader,
    outline,       ///< a pattern in true size, where it is cut
    finished_line, ///< and where it ends on the vehicle
    control_line,  ///< of a known length
    field,         ///< one page of a pattern
    rule,          ///< a line between things on a page
    frame,         ///< a box around things that matter
    tick_box,
    shade, ///< behind the head of a table
};

struct Path {
    Look look = Look::rule;
    std::vector<Ring> rings; ///< filled even-odd
    bool closed = true;
};
struct Rectangle {
    Look look = Look::frame;
    Box box;
};
struct Circle {
    Look look = Look::number_ring;
    Point middle;
    double radius = 0;
};
/// An arrow of this length around its middle; degrees run against the clock from the right.
struct Arrow {
    Point middle;
    double length = 0;
    double degrees = 0;
};
/// Of an arrow that points there on the drawing.
double degrees_of(pelt::Heading heading);

enum class Anchor { start, middle, end };
/// One line of text: `at` is where it begins, its middle or where it ends, half as high as its
/// capitals. `turned` reads upwards.
struct Text {
    std::string words;
    Point at;
    double size = 0;
    Anchor anchor = Anchor::middle;
    Face face = Face::plain;
    bool turned = false;
};

/// Everything up to its end belongs together: a piece.
struct GroupBegin {
    std::string css_class;
    std::string id;
    std::string title;
    std::string description;
};
struct GroupEnd {};
/// Nothing up to its end shows outside the box.
struct ClipBegin {
    Box box;
};
struct ClipEnd {};

using Mark =
    std::variant<Path, Rectangle, Circle, Arrow, Text, GroupBegin, GroupEnd, ClipBegin, ClipEnd>;

struct Picture {
    std::vector<Mark> marks;
    double width = 0;
    double height = 0;
};

/// Puts the marks of `part` into `whole`, moved by x, y. Sizes stay as they are.
void put(Picture& whole, const Picture& part, double x, double y);

/// The box around the letters of a text, from the top of its capitals to below its descenders.
Box box_of(const Text& text, const Letters& letters);

} // namespace pelt::report::draw
