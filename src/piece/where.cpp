// SPDX-License-Identifier: MIT
#include "piece/where.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::piece {
namespace {

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

SeamPlace place_of(const Divide& line, const Box& panel, const Stand& stand) {
    const Point way{line.points.back().x - line.points.front().x,
                    line.points.back().y - line.points.front().y};
    const bool across = std::abs(way.y) >= std::abs(way.x);
    const auto [from, to] = range(line, panel, across);
    const double low = in_mm(across ? panel.low.x : panel.low.y);
    const double high = in_mm(across ? panel.high.x : panel.high.y);
    const StandOnAxis& axis = stand.axes[across ? x_axis : y_axis];
    const bool from_high = (from + to) / 2 >= (low + high) / 2;
    SeamPlace place;
    place.line = line.label;
    place.run = axis.runs;
    place.nearer = on_grid(from_high ? high - to : from - low);
    place.farther = on_grid(from_high ? high - from : to - low);
    place.edge = (from_high ? axis.high : axis.low) + " edge";
    return place;
}

} // namespace pelt::piece
