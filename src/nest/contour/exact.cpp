// SPDX-License-Identifier: MIT
// Rings have their region on the left. Two regions whose boundaries nowhere cross properly touch,
// if at all, at corners of one or the other; cut there, every stretch of a boundary is wholly
// inside, wholly outside or along the other boundary, and its midpoint (a half micrometre at worst,
// hence doubled coordinates) tells which.
#include "nest/contour/exact.hpp"

#include <algorithm>
#include <vector>

namespace pelt::nest::contour {
namespace {

struct Edge {
    GridPoint a;
    GridPoint b;
};

Um turn_of(GridPoint a, GridPoint b, GridPoint c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

int sign(Um value) {
    return (value > 0) - (value < 0);
}

bool in_box(const Edge& e, GridPoint p) {
    return std::min(e.a.x, e.b.x) <= p.x && p.x <= std::max(e.a.x, e.b.x) &&
           std::min(e.a.y, e.b.y) <= p.y && p.y <= std::max(e.a.y, e.b.y);
}

bool on(const Edge& e, GridPoint p) {
    return in_box(e, p) && turn_of(e.a, e.b, p) == 0;
}

void add_edges(const Ring& ring, const Box& within, Um reach, std::vector<Edge>& out) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Edge e{ring[i], ring[(i + 1) % ring.size()]};
        if (std::max(e.a.x, e.b.x) < within.low.x - reach ||
            std::min(e.a.x, e.b.x) > within.high.x + reach ||
            std::max(e.a.y, e.b.y) < within.low.y - reach ||
            std::min(e.a.y, e.b.y) > within.high.y + reach)
            continue;
        out.push_back(e);
    }
}

// The edges that come within `reach` of the box.
std::vector<Edge> edges_near(const Polygon& polygon, const Box& within, Um reach) {
    std::vector<Edge> out;
    add_edges(polygon.outer, within, reach, out);
    for (const Ring& hole : polygon.holes)
        add_edges(hole, within, reach, out);
    return out;
}

Int128 squared(Um value) {
    return static_cast<Int128>(value) * value;
}

// True when p is nearer than `gap` to the edge.
bool nearer(const Edge& e, GridPoint p, Um gap) {
    const Um dx = e.b.x - e.a.x;
    const Um dy = e.b.y - e.a.y;
    const Um along = (p.x - e.a.x) * dx + (p.y - e.a.y) * dy;
    const Um length2 = dx * dx + dy * dy;
    if (along <= 0)
        return squared(p.x - e.a.x) + squared(p.y - e.a.y) < squared(gap);
    if (along >= length2)
        return squared(p.x - e.b.x) + squared(p.y - e.b.y) < squared(gap);
    return squared(turn_of(e.a, e.b, p)) < squared(gap) * length2;
}

bool cross_properly(const Edge& e, const Edge& f) {
    return sign(turn_of(e.a, e.b, f.a)) * sign(turn_of(e.a, e.b, f.b)) < 0 &&
           sign(turn_of(f.a, f.b, e.a)) * sign(turn_of(f.a, f.b, e.b)) < 0;
}

bool boxes_apart(const Edge& e, const Edge& f, Um gap) {
    return std::max(e.a.x, e.b.x) + gap < std::min(f.a.x, f.b.x) ||
           std::max(f.a.x, f.b.x) + gap < std::min(e.a.x, e.b.x) ||
           std::max(e.a.y, e.b.y) + gap < std::min(f.a.y, f.b.y) ||
           std::max(f.a.y, f.b.y) + gap < std::min(e.a.y, e.b.y);
}

bool edges_conflict(const std::vector<Edge>& a, const std::vector<Edge>& b, Um gap) {
    for (const Edge& e : a)
        for (const Edge& f : b) {
            if (boxes_apart(e, f, gap))
                continue;
            if (cross_properly(e, f))
                return true;
            if (gap > 0 && (nearer(e, f.a, gap) || nearer(e, f.b, gap) || nearer(f, e.a, gap) ||
                            nearer(f, e.b, gap)))
                return true;
        }
    return false;
}

enum class Where { outside, inside, along, against };

GridPoint doubled(GridPoint p) {
    return {2 * p.x, 2 * p.y};
}

void count_crossings(const Ring& ring, GridPoint p2, int& crossings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = doubled(ring[i]);
        const GridPoint b = doubled(ring[(i + 1) % ring.size()]);
        if ((a.y > p2.y) == (b.y > p2.y))
            continue;
        const Um turn = turn_of(a, b, p2);
        if ((b.y > a.y) == (turn > 0))
            ++crossings;
    }
}

// Where the middle of e (which meets edges of the polygon only at its ends, or runs along one)
// lies; `near` are the polygon's edges near it.
Where middle_of(const Edge& e, const Polygon& polygon, const std::vector<Edge>& near) {
    const GridPoint middle{e.a.x + e.b.x, e.a.y + e.b.y};
    for (const Edge& f : near)
        if (on({doubled(f.a), doubled(f.b)}, middle)) {
            const Int128 same = static_cast<Int128>(f.b.x - f.a.x) * (e.b.x - e.a.x) +
                                static_cast<Int128>(f.b.y - f.a.y) * (e.b.y - e.a.y);
            return same > 0 ? Where::along : Where::against;
        }
    int crossings = 0;
    count_crossings(polygon.outer, middle, crossings);
    for (const Ring& hole : polygon.holes)
        count_crossings(hole, middle, crossings);
    return crossings % 2 == 1 ? Where::inside : Where::outside;
}

bool enters(const Edge& e, const Polygon& polygon, const std::vector<Edge>& near) {
    std::vector<GridPoint> stops{e.a, e.b};
    for (const Edge& f : near)
        for (const GridPoint p : {f.a, f.b})
            if (p != e.a && p != e.b && on(e, p))
                stops.push_back(p);
    const auto from_start = [&e](GridPoint p) {
        return std::abs(p.x - e.a.x) + std::abs(p.y - e.a.y);
    };
    std::sort(stops.begin(), stops.end(),
              [&](GridPoint p, GridPoint q) { return from_start(p) < from_start(q); });
    stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
        const Where where = middle_of({stops[i], stops[i + 1]}, polygon, near);
        if (where == Where::inside || where == Where::along)
            return true;
    }
    return false;
}

bool any_enters(const std::vector<Edge>& edges, const Polygon& polygon,
                const std::vector<Edge>& near) {
    return std::any_of(edges.begin(), edges.end(),
                       [&](const Edge& e) { return enters(e, polygon, near); });
}

} // namespace

bool keeps_clear(const Polygon& a, const Polygon& b, Um gap) {
    const Box box_a = box_of(a.outer);
    const Box box_b = box_of(b.outer);
    if (box_a.high.x + gap <= box_b.low.x || box_b.high.x + gap <= box_a.low.x ||
        box_a.high.y + gap <= box_b.low.y || box_b.high.y + gap <= box_a.low.y)
        return true;
    const std::vector<Edge> near_a = edges_near(a, box_b, gap);
    const std::vector<Edge> near_b = edges_near(b, box_a, gap);
    if (edges_conflict(near_a, near_b, gap))
        return false;
    return !any_enters(near_a, b, near_b) && !any_enters(near_b, a, near_a);
}

} // namespace pelt::nest::contour
