// SPDX-License-Identifier: MIT
#include "verify/figures.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::verify {
namespace {

bool rims_cross(const Rim& a, const Rim& b) {
    for (const Edge& one : a.edges())
        if (!b.each_near(box_of_edge(one), [&](const Edge& two) {
                return !cross_inside(one.from, one.to, two.from, two.to);
            }))
            return true;
    return false;
}

/// The edge's ends and the corners of `other` that lie on it, in order from its beginning.
Ring stops_along(const Edge& edge, const Rim& other) {
    Ring stops{edge.from, edge.to};
    other.each_near(box_of_edge(edge), [&](const Edge& found) {
        if (on_segment(edge.from, edge.to, found.from))
            stops.push_back(found.from);
        return true;
    });
    const GridPoint way = edge.to - edge.from;
    std::sort(stops.begin(), stops.end(), [&](GridPoint p, GridPoint q) {
        return dot(p - edge.from, way) < dot(q - edge.from, way);
    });
    stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
    return stops;
}

bool runs_along(GridPoint from, GridPoint to, const Rim& other) {
    return !other.each_near(box_of_edge({from, to}), [&](const Edge& edge) {
        return !(on_segment(edge.from, edge.to, from) && on_segment(edge.from, edge.to, to) &&
                 dot(edge.to - edge.from, to - from) > 0);
    });
}

/// Whether the rim of `a`, which nowhere crosses that of `b`, enters b's inside, or runs along b's
/// rim the same way round: both then have their film on that side.
bool enters(const Rim& a, const Rim& b) {
    for (const Edge& edge : a.edges()) {
        if (!meet(box_of_edge(edge), b.box()))
            continue;
        const Ring stops = stops_along(edge, b);
        for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
            const Where middle = b.where_doubled(stops[i] + stops[i + 1]);
            if (middle == Where::inside ||
                (middle == Where::on_rim && runs_along(stops[i], stops[i + 1], b)))
                return true;
        }
    }
    return false;
}

bool rims_apart(const Rim& a, const Rim& b, Um gap) {
    const Box reach = grown(b.box(), gap);
    return a.each_near(reach, [&](const Edge& one) {
        return b.each_near(grown(box_of_edge(one), gap), [&](const Edge& two) {
            return segments_apart(one.from, one.to, two.from, two.to, gap);
        });
    });
}

/// How many edges, either way round, run along the whole stretch.
int edges_along(GridPoint from, GridPoint to, const Rim& rim) {
    int count = 0;
    rim.each_near(box_of_edge({from, to}), [&](const Edge& edge) {
        count += on_segment(edge.from, edge.to, from) && on_segment(edge.from, edge.to, to);
        return true;
    });
    return count;
}

/// Film on the left and none on the right, all along the edge. A horizontal edge need only be the
/// single one there: every region of the plane also has an edge that is not horizontal.
bool divides_soundly(const Edge& edge, const Rim& rim) {
    if (edge.from == edge.to)
        return false;
    const bool up = edge.from.y < edge.to.y;
    const Ring stops = stops_along(edge, rim);
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
        if (edge.from.y == edge.to.y) {
            if (edges_along(stops[i], stops[i + 1], rim) != 1)
                return false;
            continue;
        }
        const Rim::Windings windings = rim.windings_doubled(stops[i] + stops[i + 1]);
        if (windings.left != (up ? 1 : 0) || windings.right != (up ? 0 : 1))
            return false;
    }
    return true;
}

/// Where on the edge the other rim crosses or touches it, as shares of its length.
std::vector<long double> meetings(const Edge& edge, const Rim& other) {
    std::vector<long double> shares{0, 1};
    const GridPoint way = edge.to - edge.from;
    const auto length = static_cast<long double>(dot(way, way));
    other.each_near(box_of_edge(edge), [&](const Edge& found) {
        if (on_segment(edge.from, edge.to, found.from)) {
            shares.push_back(static_cast<long double>(dot(found.from - edge.from, way)) / length);
        } else if (cross_inside(edge.from, edge.to, found.from, found.to)) {
            const GridPoint theirs = found.to - found.from;
            shares.push_back(static_cast<long double>(cross(found.from - edge.from, theirs)) /
                             static_cast<long double>(cross(way, theirs)));
        }
        return true;
    });
    std::sort(shares.begin(), shares.end());
    return shares;
}

GridPoint along(const Edge& edge, long double share) {
    const GridPoint way = edge.to - edge.from;
    return {edge.from.x + std::llround(share * static_cast<long double>(way.x)),
            edge.from.y + std::llround(share * static_cast<long double>(way.y))};
}

} // namespace

bool is_sound(const Polygon& polygon) {
    if (polygon.outer.size() < 3 || twice_area(polygon.outer) <= 0)
        return false;
    for (const Ring& hole : polygon.holes)
        if (hole.size() < 3 || twice_area(hole) >= 0)
            return false;
    const Rim rim(polygon);
    return !rims_cross(rim, rim) &&
           std::all_of(rim.edges().begin(), rim.edges().end(),
                       [&](const Edge& edge) { return divides_soundly(edge, rim); });
}

bool is_simple(const Ring& ring) {
    const std::size_t n = ring.size();
    if (n < 3)
        return false;
    const Rim rim(std::vector<Ring>{ring});
    const Edge* const first = rim.edges().data();
    return std::all_of(rim.edges().begin(), rim.edges().end(), [&](const Edge& edge) {
        const auto i = static_cast<std::size_t>(&edge - first);
        const Edge& next = rim.edges()[i + 1 == n ? 0 : i + 1];
        const bool turns_back = side(edge.from, edge.to, next.to) == 0 &&
                                dot(edge.to - edge.from, next.to - edge.to) < 0;
        if (edge.from == edge.to || turns_back)
            return false;
        return rim.each_near(box_of_edge(edge), [&](const Edge& other) {
            const auto k = static_cast<std::size_t>(&other - first);
            return k <= i + 1 || (i == 0 && k + 1 == n) ||
                   !share_a_point(edge.from, edge.to, other.from, other.to);
        });
    });
}

bool polygons_apart(const Polygon& a, const Polygon& b, Um gap) {
    return apart(Rim(a), Rim(b), gap);
}

bool apart(const Rim& a, const Rim& b, Um gap) {
    if (!meet(grown(a.box(), gap), b.box()))
        return true;
    if (gap > 0)
        return rims_apart(a, b, gap) && b.where(a.edges().front().from) == Where::outside &&
               a.where(b.edges().front().from) == Where::outside;
    return !rims_cross(a, b) && !enters(a, b) && !enters(b, a);
}

bool within(const Rim& inner, const Rim& outer, Um slack) {
    for (const Edge& edge : inner.edges()) {
        const std::vector<long double> shares = meetings(edge, outer);
        for (std::size_t i = 0; i + 1 < shares.size(); ++i)
            if (!outer.holds(along(edge, (shares[i] + shares[i + 1]) / 2), slack) ||
                !outer.holds(along(edge, shares[i]), slack))
                return false;
    }
    for (const Edge& edge : outer.edges())
        if (inner.where(edge.from) == Where::inside && !inner.near_rim(edge.from, slack))
            return false;
    return true;
}

} // namespace pelt::verify
