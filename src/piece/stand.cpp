// SPDX-License-Identifier: MIT
#include "piece/stand.hpp"

#include "piece/frame.hpp"

#include <cmath>

namespace pelt::piece {
namespace {

bool nose_up_or_down(Heading heading) {
    return heading == Heading::up || heading == Heading::down;
}

/// 1 where the high end is meant, -1 where the low one is.
int sign(double value) {
    return value > 0 ? 1 : -1;
}

StandOnAxis axis_of(int over, int first, const std::string& word_first,
                    const std::string& word_last, const std::string& runs) {
    const bool high = first > 0;
    return {over, first, high ? word_first : word_last, high ? word_last : word_first, runs};
}

/// Drawn with its nose to a side, up is up; drawn with its nose up or down, a panel of a side lies
/// as its side tells.
int upper_end_of_side(const Panel& panel, Heading heading) {
    if (!nose_up_or_down(heading))
        return sign(in_piece_frame({0, 1}, heading).y);
    if (panel.sides != Sides::centre)
        return panel.sides == Sides::right ? 1 : -1;
    return sign(in_piece_frame({-1, 0}, heading).y);
}

Stand on_a_side(const Panel& panel, Heading heading) {
    const int up = upper_end_of_side(panel, heading);
    return {{axis_of(1, 1, "front", "rear", "upright"), axis_of(up, up, "upper", "lower", "along")},
            y_axis,
            false};
}

Stand on_top(const Panel& panel) {
    Stand out{{axis_of(1, 1, "front", "rear", "across"), axis_of(0, 1, "left", "right", "along")},
              y_axis,
              false};
    if (panel.sides == Sides::centre)
        return out;
    const int outer = panel.sides == Sides::right ? -1 : 1;
    out.axes[y_axis] = axis_of(-outer, outer, "outer", "inner", "along");
    return out;
}

/// Panels are drawn as seen from outside: on a front the vehicle's left is to the right.
Stand on_an_end(const Panel& panel, Heading heading) {
    const bool front = panel.lies == LiesOn::front;
    const bool other_way = panel.sides == Sides::right;
    const Point up = in_piece_frame({0, 1}, heading);
    const Point left = in_piece_frame({front != other_way ? 1.0 : -1.0, 0}, heading);
    const std::size_t level = std::abs(up.x) > 0 ? x_axis : y_axis;
    const int upper = sign(level == x_axis ? up.x : up.y);
    const int first = sign(level == x_axis ? left.y : left.x);
    const bool middle = panel.sides == Sides::centre;
    Stand out;
    out.level = level;
    out.faces_end = true;
    out.axes[level] = axis_of(upper, upper, "upper", "lower", "level");
    out.axes[1 - level] = axis_of(first, first, middle ? "left" : "outer",
                                  middle ? "right" : "inner", "upright");
    return out;
}

/// Where the face is not known: as on a side where that can be, else by the drawing alone.
Stand somewhere(const Panel& panel, Heading heading) {
    Stand out = on_a_side(panel, heading);
    out.axes[x_axis].runs = "across";
    if (nose_up_or_down(heading)) {
        out.axes[x_axis].high = heading == Heading::up ? "upper" : "lower";
        out.axes[x_axis].low = heading == Heading::up ? "lower" : "upper";
    }
    if (panel.sides == Sides::centre) { // forward is +x: the vehicle's left is +y
        out.axes[y_axis].high = "left";
        out.axes[y_axis].low = "right";
    }
    return out;
}

} // namespace

Stand stand_of(const Panel& panel, Heading heading) {
    if (!panel.lies)
        return somewhere(panel, heading);
    switch (*panel.lies) {
    case LiesOn::side:
        return on_a_side(panel, heading);
    case LiesOn::top:
        return on_top(panel);
    case LiesOn::front:
    case LiesOn::rear:
        break;
    }
    return on_an_end(panel, heading);
}

} // namespace pelt::piece
