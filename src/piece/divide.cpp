// SPDX-License-Identifier: MIT
#include "piece/divide.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

namespace pelt::piece {
namespace {

Point minus(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}

/// An upright box in millimetres that holds all the film and the line, with room to spare.
struct Frame {
    Point low;
    Point high;
};

Frame frame_around(const Divide& line, const Box& around, double spare_mm) {
    Point low = geometry::in_mm(around.low);
    Point high = geometry::in_mm(around.high);
    for (const Point& p : line.points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return {{low.x - spare_mm, low.y - spare_mm}, {high.x + spare_mm, high.y + spare_mm}};
}

/// Where the ray from a point inside leaves the frame: exactly on its rim.
Point leaves(const Frame& frame, Point from, Point way) {
    const double rim_x = way.x > 0 ? frame.high.x : frame.low.x;
    const double rim_y = way.y > 0 ? frame.high.y : frame.low.y;
    const double steps_x =
        way.x == 0 ? std::numeric_limits<double>::infinity() : (rim_x - from.x) / way.x;
    const double steps_y =
        way.y == 0 ? std::numeric_limits<double>::infinity() : (rim_y - from.y) / way.y;
    if (steps_x < steps_y)
        return {rim_x, std::clamp(from.y + steps_x * way.y, frame.low.y, frame.high.y)};
    return {std::clamp(from.x + steps_y * way.x, frame.low.x, frame.high.x), rim_y};
}

/// How far along the frame's rim, counter-clockwise from its low corner, a point of the rim lies.
double along_rim(const Frame& frame, Point p) {
    const double wide = frame.high.x - frame.low.x;
    const double high = frame.high.y - frame.low.y;
    if (p.y == frame.low.y)
        return p.x - frame.low.x;
    if (p.x == frame.high.x)
        return wide + p.y - frame.low.y;
    if (p.y == frame.high.y)
        return wide + high + frame.high.x - p.x;
    return 2 * wide + high + frame.high.y - p.y;
}

/// The corners of the frame on the way counter-clockwise from one point of its rim to another.
std::vector<Point> corners_between(const Frame& frame, Point from, Point to) {
    const std::array<Point, 4> corners{Point{frame.high.x, frame.low.y}, frame.high,
                                       Point{frame.low.x, frame.high.y}, frame.low};
    const double wide = frame.high.x - frame.low.x;
    const double high = frame.high.y - frame.low.y;
    const std::array<double, 4> at{wide, wide + high, 2 * wide + high, 2 * (wide + high)};
    const double start = along_rim(frame, from);
    double end = along_rim(frame, to);
    if (end <= start)
        end += at[3];
    std::vector<Point> out;
    for (std::size_t k = 0; k < 8; ++k) {
        const double corner = at[k % 4] + (k < 4 ? 0 : at[3]);
        if (corner > start && corner < end)
            out.push_back(corners[k % 4]);
    }
    return out;
}

/// What lies to the left of the lengthened line, counter-clockwise: first the line, then the rim.
std::vector<Point> left_of(const std::vector<Point>& line, const Frame& frame) {
    std::vector<Point> ring = line;
    const std::vector<Point> rim = corners_between(frame, line.back(), line.front());
    ring.insert(ring.end(), rim.begin(), rim.end());
    return ring;
}

/// The line with its ends where it leaves the frame.
std::vector<Point> lengthened(const Divide& line, const Frame& frame) {
    std::vector<Point> points = line.points;
    const std::size_t n = points.size();
    points.front() = leaves(frame, line.points[0], minus(line.points[0], line.points[1]));
    points.back() =
        leaves(frame, line.points[n - 1], minus(line.points[n - 1], line.points[n - 2]));
    return points;
}

/// True when the upper piece lies to the left of the line as it was drawn.
bool upper_is_left(const Divide& line, const Stand& stand, const Box& panel) {
    const Point from = line.points.front();
    const Point to = line.points.back();
    const Point way = minus(to, from);
    const Point left{-way.y, way.x};
    const Point low = geometry::in_mm(panel.low);
    const Point high = geometry::in_mm(panel.high);
    if (std::abs(left.x) >= std::abs(left.y))
        return left.x *
                   end_on_top(stand.axes[x_axis], (from.x + to.x) / 2, (low.x + high.x) / 2) >
               0;
    return left.y * end_on_top(stand.axes[y_axis], (from.y + to.y) / 2, (low.y + high.y) / 2) > 0;
}

bool is_simple(const std::vector<Point>& ring) {
    const Ring on_grid = geometry::on_grid(ring);
    const DoubleArea by_shoelace = doubled_area(on_grid);
    const std::vector<Polygon> covered = geometry::positive_union({on_grid});
    const DoubleArea difference = by_shoelace - geometry::doubled_area(covered);
    // Rounded corners cost no more than a hair along the rim.
    return covered.size() == 1 && std::abs(to_mm2(difference)) < 1;
}

} // namespace

int end_on_top(const StandOnAxis& axis, double at_mm, double middle_mm) {
    constexpr double nearly_mm = .5;
    if (axis.over != 0)
        return axis.over;
    if (std::abs(at_mm - middle_mm) <= nearly_mm)
        return axis.first;
    return at_mm > middle_mm ? -1 : 1;
}

std::optional<DividedPlane> divided(const Divide& line, const Box& around, Um overlap,
                                    const Stand& stand, const Box& panel) {
    const double overlap_mm = static_cast<double>(overlap) / um_per_mm;
    const Frame frame = frame_around(line, around, 100 + 2 * overlap_mm);
    std::vector<Point> points = lengthened(line, frame);
    if (!upper_is_left(line, stand, panel))
        std::reverse(points.begin(), points.end());
    const std::vector<Point> upper = left_of(points, frame);
    std::reverse(points.begin(), points.end());
    const std::vector<Point> under = left_of(points, frame);
    if (!is_simple(upper) || !is_simple(under))
        return std::nullopt;
    std::vector<double> moves(under.size(), 0);
    std::fill_n(moves.begin(), points.size() - 1, overlap_mm);
    std::reverse(points.begin(), points.end());
    const auto region = [](const std::vector<Point>& ring) {
        return geometry::normalised({geometry::on_grid(ring), {}}).outer;
    };
    return DividedPlane{std::move(points), region(upper), region(under),
                        geometry::largest(geometry::grown(under, moves)).outer};
}

} // namespace pelt::piece
