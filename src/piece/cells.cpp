// SPDX-License-Identifier: MIT
#include "piece/cells.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace pelt::piece {
namespace {

Point minus(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}

double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}

bool matters(const std::vector<Polygon>& film, DoubleArea panel) {
    return 1000 * geometry::doubled_area(film) > panel;
}

std::vector<Polygon> region(const Ring& ring) {
    return {{ring, {}}};
}

Cell side_of(const Cell& cell, const Ring& core, const Ring& film) {
    Cell out{geometry::intersect(cell.core, region(core)),
             geometry::intersect(cell.wrapped, region(film)),
             geometry::intersect(cell.sheet, region(film)), cell.seam_ends};
    out.seam_ends.push_back(film);
    return out;
}

constexpr double sliver_mm2 = 1;

/// Those of the figures that cover none of the core, taken out of them.
std::vector<Polygon> without_core(std::vector<Polygon>& figures, const std::vector<Polygon>& core) {
    const auto covers_core = [&](const Polygon& figure) {
        return to_mm2(geometry::doubled_area(geometry::intersect(core, {{figure.outer, {}}}))) >=
               sliver_mm2;
    };
    const auto none = std::stable_partition(figures.begin(), figures.end(), covers_core);
    std::vector<Polygon> out(std::make_move_iterator(none), std::make_move_iterator(figures.end()));
    figures.erase(none, figures.end());
    return out;
}

/// A line may cut through a tuck beside the panel. What it cuts off there covers nothing of its
/// own cell: it stays with the film on which it hangs.
void give_back_tucks(Cell& from, Cell& to) {
    const auto give = [&](std::vector<Polygon>& film, std::vector<Polygon>& other) {
        if (film.size() < 2)
            return;
        const std::vector<Polygon> given = without_core(film, from.core);
        if (!given.empty())
            other = geometry::unite(other, given);
    };
    give(from.wrapped, to.wrapped);
    give(from.sheet, to.sheet);
}

/// The rings of a figure's holes as figures of their own.
std::vector<Polygon> filled_holes(const std::vector<Polygon>& figures) {
    std::vector<Polygon> out;
    for (const Polygon& figure : figures)
        for (Ring hole : figure.holes) {
            std::reverse(hole.begin(), hole.end());
            out.push_back({std::move(hole), {}});
        }
    return out;
}

/// In micrometres.
Point in_um(GridPoint p) {
    return {static_cast<double>(p.x), static_cast<double>(p.y)};
}

/// By how many sides a ray to the right meets.
bool inside(Point p, const Ring& ring) {
    const Point at{p.x * um_per_mm, p.y * um_per_mm};
    bool odd = false;
    Point a = in_um(ring.back());
    for (const GridPoint corner : ring) {
        const Point b = in_um(corner);
        if ((a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x))
            odd = !odd;
        a = b;
    }
    return odd;
}

} // namespace

bool inside(Point p, const std::vector<Polygon>& figures) {
    return std::any_of(figures.begin(), figures.end(), [&](const Polygon& figure) {
        return inside(p, figure.outer) &&
               std::none_of(figure.holes.begin(), figure.holes.end(),
                            [&](const Ring& hole) { return inside(p, hole); });
    });
}

void add_crossings(Point a, Point b, const std::vector<Polygon>& figures,
                   std::vector<double>& shares) {
    const Point way = minus(b, a);
    const auto add = [&](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point c = geometry::in_mm(ring[i]);
            const Point side = minus(geometry::in_mm(ring[(i + 1) % ring.size()]), c);
            const double denominator = cross(way, side);
            if (denominator != 0)
                shares.push_back(std::clamp(cross(minus(c, a), side) / denominator, 0.0, 1.0));
        }
    };
    for (const Polygon& figure : figures) {
        add(figure.outer);
        for (const Ring& hole : figure.holes)
            add(hole);
    }
}

std::vector<Cell> divided(const Cell& cell, const DividedPlane& plane, DoubleArea panel) {
    Cell upper = side_of(cell, plane.upper, plane.upper);
    Cell under = side_of(cell, plane.under, plane.under_lapping);
    if (!matters(upper.core, panel) || !matters(under.core, panel))
        return {};
    give_back_tucks(upper, under);
    give_back_tucks(under, upper);
    return {std::move(upper), std::move(under)};
}

std::vector<Part> parts_of(const Cell& cell) {
    std::vector<Polygon> wrapped = cell.wrapped;
    std::erase_if(wrapped, [&](const Polygon& part) {
        return to_mm2(geometry::doubled_area(part)) < sliver_mm2;
    });
    if (wrapped.size() == 1)
        return {{wrapped.front(), geometry::largest(cell.sheet), cell.seam_ends}};
    std::vector<Part> out;
    const std::vector<Polygon> holes = filled_holes(cell.sheet);
    for (Polygon& part : wrapped) {
        Polygon sheet = geometry::largest(geometry::subtract({{part.outer, {}}}, holes));
        out.push_back({std::move(part), std::move(sheet), cell.seam_ends});
    }
    return out;
}

Between between(const std::vector<Polygon>& first, const std::vector<Polygon>& second,
                const DividedPlane& plane) {
    constexpr double beside_mm = 0.02;
    const std::vector<Point>& points = plane.line;
    Between out;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Point a = points[i];
        const Point way = minus(points[i + 1], a);
        const double whole = std::hypot(way.x, way.y);
        std::vector<double> shares{0, 1};
        add_crossings(a, points[i + 1], first, shares);
        add_crossings(a, points[i + 1], second, shares);
        std::sort(shares.begin(), shares.end());
        for (std::size_t k = 0; k + 1 < shares.size(); ++k) {
            const double middle = (shares[k] + shares[k + 1]) / 2;
            const double off = beside_mm / whole;
            const Point on{a.x + middle * way.x, a.y + middle * way.y};
            const Point left{on.x - off * way.y, on.y + off * way.x};
            const Point right{on.x + off * way.y, on.y - off * way.x};
            const bool first_upper = inside(left, first) && inside(right, second);
            const bool second_upper = inside(left, second) && inside(right, first);
            if (!first_upper && !second_upper)
                continue;
            out.length_mm += (shares[k + 1] - shares[k]) * whole;
            out.first_is_upper = first_upper;
        }
    }
    return out;
}

} // namespace pelt::piece
