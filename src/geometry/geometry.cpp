// SPDX-License-Identifier: MIT
#include "geometry/geometry.hpp"

#include "geometry/tidy.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::geometry {

std::vector<Polygon> grown(const TaggedRing& ring, const std::vector<double>& moves) {
    return positive_union({on_grid(grown_curve(ring, moves))});
}

std::vector<Polygon> grown(const std::vector<Point>& ring, const std::vector<double>& moves) {
    return grown(TaggedRing{ring, {}}, moves);
}

std::vector<Polygon> shrunk(const std::vector<Point>& ring, const std::vector<double>& moves) {
    return shrunk(TaggedRing{ring, {}}, moves);
}

std::vector<Polygon> shrunk(const TaggedRing& ring, const std::vector<double>& moves) {
    Ring curve = on_grid(grown_curve(ring, moves));
    std::reverse(curve.begin(), curve.end());
    return positive_union({curve});
}

std::vector<Polygon> grown(const Polygon& polygon, Um move) {
    const double move_mm = static_cast<double>(move) / um_per_mm;
    const auto moves = [&](const Ring& ring) { return std::vector<double>(ring.size(), move_mm); };
    std::vector<Polygon> openings;
    for (const Ring& hole : polygon.holes)
        for (Polygon& left : shrunk(in_mm(hole), moves(hole)))
            openings.push_back(std::move(left));
    return subtract(grown(in_mm(polygon.outer), moves(polygon.outer)), openings);
}

DoubleArea doubled_area(const Polygon& polygon) {
    DoubleArea sum = pelt::doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += pelt::doubled_area(hole);
    return sum;
}

DoubleArea doubled_area(const std::vector<Polygon>& polygons) {
    DoubleArea sum = 0;
    for (const Polygon& polygon : polygons)
        sum += doubled_area(polygon);
    return sum;
}

Polygon largest(std::vector<Polygon> polygons) {
    const auto smaller = [](const Polygon& a, const Polygon& b) {
        return doubled_area(a) < doubled_area(b);
    };
    return std::move(*std::max_element(polygons.begin(), polygons.end(), smaller));
}

Polygon normalised(Polygon polygon) {
    return std::move(tidy(std::vector{std::move(polygon)}).front());
}

GridPoint on_grid(Point p) {
    return {std::llround(p.x * um_per_mm), std::llround(p.y * um_per_mm)};
}

Ring on_grid(const std::vector<Point>& points) {
    Ring ring;
    ring.reserve(points.size());
    for (const Point& p : points)
        ring.push_back(on_grid(p));
    return ring;
}

Point in_mm(GridPoint p) {
    return {static_cast<double>(p.x) / um_per_mm, static_cast<double>(p.y) / um_per_mm};
}

std::vector<Point> in_mm(const Ring& ring) {
    std::vector<Point> points;
    points.reserve(ring.size());
    for (const GridPoint& p : ring)
        points.push_back(in_mm(p));
    return points;
}

Ring rectangle(const Box& box) {
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

} // namespace pelt::geometry
