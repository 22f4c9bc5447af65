// SPDX-License-Identifier: MIT
// The difference of two convex parts is convex and its corners are whole numbers, found by merging
// their sides by direction. The boundary of the union is made of sides of one shape carried along
// by outward corners of the other that they can slide over (a side elsewhere, or at a hollow
// corner, has forbidden places on both hands); what is left of each after cutting out the stretches
// inside a convex difference is the boundary.
#include "nest/contour/minkowski.hpp"

#include <algorithm>
#include <utility>

namespace pelt::nest::contour {
namespace {

// A point this near to a side counts as on it: far above rounding, far below the grid.
constexpr double touch_um = 1e-3;

struct Line {
    Vec outward;   // unit
    double offset; // outside: dot(outward, p) > offset
};

struct Sum {
    std::vector<Vec> corners;
    std::vector<Line> lines;
    Span box;
};

std::size_t lowest(const Ring& ring) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < ring.size(); ++i)
        if (std::pair(ring[i].y, ring[i].x) < std::pair(ring[best].y, ring[best].x))
            best = i;
    return best;
}

Ring negated(const Ring& ring) {
    Ring out;
    out.reserve(ring.size());
    for (const GridPoint& p : ring)
        out.push_back({-p.x, -p.y});
    return out;
}

Ring convex_sum(const Ring& a, const Ring& b) {
    const std::size_t a0 = lowest(a);
    const std::size_t b0 = lowest(b);
    Ring out;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < a.size() || j < b.size()) {
        const GridPoint p = a[(a0 + i) % a.size()];
        const GridPoint q = b[(b0 + j) % b.size()];
        out.push_back({p.x + q.x, p.y + q.y});
        const GridPoint pn = a[(a0 + i + 1) % a.size()];
        const GridPoint qn = b[(b0 + j + 1) % b.size()];
        const Um turn = (pn.x - p.x) * (qn.y - q.y) - (pn.y - p.y) * (qn.x - q.x);
        const bool step_a = i < a.size() && (j == b.size() || turn >= 0);
        const bool step_b = j < b.size() && (i == a.size() || turn <= 0);
        i += step_a ? 1 : 0;
        j += step_b ? 1 : 0;
    }
    return out;
}

Sum sum_of(const Ring& ring) {
    Sum sum;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec a = vec_of(ring[i]);
        const Vec b = vec_of(ring[(i + 1) % ring.size()]);
        const Vec side = b - a;
        const double length = norm(side);
        const Vec outward{side.y / length, -side.x / length};
        sum.corners.push_back(a);
        sum.lines.push_back({outward, dot(outward, a)});
        if (i == 0)
            sum.box = {a, a};
        sum.box.low = {std::min(sum.box.low.x, a.x), std::min(sum.box.low.y, a.y)};
        sum.box.high = {std::max(sum.box.high.x, a.x), std::max(sum.box.high.y, a.y)};
    }
    return sum;
}

struct Stretch {
    double from = 0;
    double to = 0;
};

// The share of a-b that lies inside the sum; empty when from >= to. A side that runs along one of
// the sum's is not inside.
Stretch inside(const Sum& sum, Vec a, Vec b) {
    Stretch share{0, 1};
    for (const Line& line : sum.lines) {
        const double at_a = line.offset - dot(line.outward, a);
        const double at_b = line.offset - dot(line.outward, b);
        if (at_a <= touch_um && at_b <= touch_um)
            return {0, 0};
        if (std::abs(at_a - at_b) <= touch_um)
            continue;
        if (at_a < 0)
            share.from = std::max(share.from, at_a / (at_a - at_b));
        else if (at_b < 0)
            share.to = std::min(share.to, at_a / (at_a - at_b));
        if (share.from >= share.to)
            return {0, 0};
    }
    return share;
}

bool apart(const Span& box, Vec a, Vec b) {
    return std::max(a.x, b.x) < box.low.x || std::min(a.x, b.x) > box.high.x ||
           std::max(a.y, b.y) < box.low.y || std::min(a.y, b.y) > box.high.y;
}

void collect_bare(const std::vector<Sum>& sums, Vec a, Vec b, std::vector<Segment>& out) {
    std::vector<Stretch> covered;
    for (const Sum& sum : sums) {
        if (apart(sum.box, a, b))
            continue;
        const Stretch share = inside(sum, a, b);
        if (share.from <= 0 && share.to >= 1)
            return;
        if (share.from < share.to)
            covered.push_back(share);
    }
    std::sort(covered.begin(), covered.end(), [](const Stretch& p, const Stretch& q) {
        return std::pair(p.from, p.to) < std::pair(q.from, q.to);
    });
    const double least = touch_um / norm(b - a);
    double free_from = 0;
    const auto keep = [&](double from, double to) {
        if (to - from > least)
            out.push_back({a + from * (b - a), a + to * (b - a)});
    };
    for (const Stretch& share : covered) {
        keep(free_from, share.from);
        free_from = std::max(free_from, share.to);
    }
    keep(free_from, 1);
}

Um turn_of(GridPoint side_a, GridPoint side_b) {
    return side_a.x * side_b.y - side_a.y * side_b.x;
}

struct Corner {
    GridPoint at;
    GridPoint in;  // the side that ends here
    GridPoint out; // the side that begins here
};

std::vector<Corner> outward_corners(const std::vector<Ring>& rings) {
    std::vector<Corner> corners;
    for (const Ring& ring : rings)
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const GridPoint p = ring[(i + ring.size() - 1) % ring.size()];
            const GridPoint q = ring[i];
            const GridPoint r = ring[(i + 1) % ring.size()];
            const Corner corner{q, {q.x - p.x, q.y - p.y}, {r.x - q.x, r.y - q.y}};
            if (turn_of(corner.in, corner.out) > 0)
                corners.push_back(corner);
        }
    return corners;
}

// Calls `visit(from, to)` for every side of `sided` at every corner that it slides over. Of two
// parallel sides each is taken once: at the far end of the other, or at the near one.
template <class Visit>
void for_sides(const std::vector<Ring>& sided, const std::vector<Corner>& corners, bool at_far_end,
               Visit visit) {
    for (const Ring& ring : sided)
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const GridPoint a = ring[i];
            const GridPoint b = ring[(i + 1) % ring.size()];
            const GridPoint side{b.x - a.x, b.y - a.y};
            for (const Corner& corner : corners) {
                const Um after = turn_of(corner.in, side);
                const Um before = turn_of(side, corner.out);
                const bool slides =
                    at_far_end ? after >= 0 && before > 0 : after > 0 && before >= 0;
                if (slides)
                    visit(vec_of({a.x + corner.at.x, a.y + corner.at.y}),
                          vec_of({b.x + corner.at.x, b.y + corner.at.y}));
            }
        }
}

} // namespace

std::vector<Segment> forbidden_boundary(const Body& fixed, const Body& moving) {
    std::vector<Sum> sums;
    for (const Ring& a : fixed.parts)
        for (const Ring& b : moving.parts)
            sums.push_back(sum_of(convex_sum(a, negated(b))));
    const auto extent = [](const Sum& sum) {
        return (sum.box.high.x - sum.box.low.x) * (sum.box.high.y - sum.box.low.y);
    };
    std::stable_sort(sums.begin(), sums.end(),
                     [&](const Sum& a, const Sum& b) { return extent(a) > extent(b); });
    std::vector<Ring> opposite;
    for (const Ring& ring : moving.rings)
        opposite.push_back(negated(ring));
    std::vector<Segment> out;
    const auto collect = [&](Vec a, Vec b) { collect_bare(sums, a, b, out); };
    for_sides(fixed.rings, outward_corners(opposite), true, collect);
    for_sides(opposite, outward_corners(fixed.rings), false, collect);
    return out;
}

} // namespace pelt::nest::contour
