// SPDX-License-Identifier: MIT
#include "piece/where.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::piece {
namespace {

/// The names of a panel's edges at the high and the low end of an axis of the piece frame.
struct Ends {
    std::string high;
    std::string low;
};

Ends ends_along(Heading heading) {
    switch (heading) {
    case Heading::up:
        return {"upper edge", "lower edge"};
    case Heading::down:
        return {"lower edge", "upper edge"};
    case Heading::left:
    case Heading::right:
        break;
    }
    return {"front edge", "rear edge"};
}

Ends ends_across(Heading heading, bool in_the_middle) {
    if (in_the_middle) // forward is +x: the vehicle's left is +y
        return {"left edge", "right edge"};
    switch (heading) {
    case Heading::right:
        return {"upper edge", "lower edge"};
    case Heading::left:
        return {"lower edge", "upper edge"};
    case Heading::up:
        return {"left edge as drawn", "right edge as drawn"};
    case Heading::down:
        break;
    }
    return {"right edge as drawn", "left edge as drawn"};
}

double in_mm(Um length) {
    return static_cast<double>(length) / um_per_mm;
}

/// Where the line lies on one axis: between what and what, over the panel's whole other axis.
std::pair<double, double> range(const Divide& line, const Box& panel, bool across) {
    const auto place = [&](Point p) { return across ? p.x : p.y; };
    if (line.points.size() == 2) {
        const Point a = line.points.front();
        const Point b = line.points.back();
        const double run = across ? b.y - a.y : b.x - a.x;
        const auto at = [&](Um other) {
            const double share = (in_mm(other) - (across ? a.y : a.x)) / run;
            return place(a) + share * (place(b) - place(a));
        };
        return std::minmax(
            {at(across ? panel.low.y : panel.low.x), at(across ? panel.high.y : panel.high.x)});
    }
    const auto less = [&](Point a, Point b) { return place(a) < place(b); };
    const auto [low, high] = std::minmax_element(line.points.begin(), line.points.end(), less);
    return {place(*low), place(*high)};
}

Um on_grid(double mm) {
    return std::llround(mm * um_per_mm);
}

} // namespace

SeamPlace place_of(const Divide& line, const Box& panel, Heading heading, bool in_the_middle) {
    const Point way{line.points.back().x - line.points.front().x,
                    line.points.back().y - line.points.front().y};
    const bool across = std::abs(way.y) >= std::abs(way.x);
    const auto [from, to] = range(line, panel, across);
    const double low = in_mm(across ? panel.low.x : panel.low.y);
    const double high = in_mm(across ? panel.high.x : panel.high.y);
    const Ends ends = across ? ends_along(heading) : ends_across(heading, in_the_middle);
    const bool from_high = (from + to) / 2 >= (low + high) / 2;
    return {line.label, across, on_grid(from_high ? high - to : from - low),
            on_grid(from_high ? high - from : to - low), from_high ? ends.high : ends.low};
}

} // namespace pelt::piece
