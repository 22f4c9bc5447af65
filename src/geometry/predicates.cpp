// SPDX-License-Identifier: MIT
#include "geometry/predicates.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace pelt::geometry {
namespace {

Int128 cross(GridPoint o, GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x - o.x) * (b.y - o.y) -
           static_cast<Int128>(a.y - o.y) * (b.x - o.x);
}

Int128 dot(GridPoint o, GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x - o.x) * (b.x - o.x) +
           static_cast<Int128>(a.y - o.y) * (b.y - o.y);
}

/// A side of a ring, its ends in the order of the sweep: from left to right, then upwards.
struct Side {
    GridPoint low;
    GridPoint high;
    std::size_t ring = 0;
    std::size_t index = 0;
    bool forwards = true; ///< low is where the ring's own direction starts
};

/// Below and above along the sweep line. Valid for sides that both cross it and do not cross one
/// another to its left; sides that lie on each other count as equal.
struct Below {
    const std::vector<Side>* sides;

    bool operator()(std::size_t i, std::size_t j) const {
        const Side& a = (*sides)[i];
        const Side& b = (*sides)[j];
        if (b.low < a.low)
            return turn_to(b, a) < 0;
        return turn_to(a, b) > 0;
    }

private:
    static int turn_to(const Side& earlier, const Side& later) {
        const int at_start = orientation(earlier.low, earlier.high, later.low);
        return at_start != 0 ? at_start : orientation(earlier.low, earlier.high, later.high);
    }
};

class Sweep {
public:
    explicit Sweep(const std::vector<Ring>& rings) : rings_(rings), status_(Below{&sides_}) {
        for (std::size_t r = 0; r < rings.size(); ++r) {
            first_.push_back(sides_.size());
            for (std::size_t i = 0; i < rings[r].size(); ++i)
                add_side(r, i);
        }
        for (std::size_t s = 0; s < sides_.size(); ++s)
            order_.push_back(s);
        std::sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
            return std::pair(start(a), a) < std::pair(start(b), b);
        });
        positive_.reserve(rings.size());
        for (const Ring& ring : rings)
            positive_.push_back(doubled_area(ring) > 0);
    }

    Arrangement run() {
        if (shared_corner() || doubled_back())
            return std::move(out_);
        out_.parents.resize(rings_.size());
        place_.resize(sides_.size(), status_.end());
        std::vector<bool> entered(rings_.size(), false);
        for (const std::size_t s : order_) {
            const std::array<std::size_t, 2> at_corner{before(s), s};
            for (const std::size_t side : at_corner)
                if (sides_[side].high == start(s) && leave(side))
                    return std::move(out_);
            for (const std::size_t side : at_corner)
                if (sides_[side].low == start(s) && enter(side))
                    return std::move(out_);
            const std::size_t ring = sides_[s].ring;
            if (!entered[ring])
                out_.parents[ring] = holder_of(at_corner);
            entered[ring] = true;
        }
        return std::move(out_);
    }

private:
    using Status = std::set<std::size_t, Below>;

    void add_side(std::size_t r, std::size_t i) {
        const GridPoint a = rings_[r][i];
        const GridPoint b = rings_[r][(i + 1) % rings_[r].size()];
        const bool forwards = a < b;
        sides_.push_back({forwards ? a : b, forwards ? b : a, r, i, forwards});
    }

    /// The corner from which a side runs in its ring's own direction.
    GridPoint start(std::size_t s) const { return rings_[sides_[s].ring][sides_[s].index]; }
    std::size_t before(std::size_t s) const {
        const Side& side = sides_[s];
        return side.index > 0 ? s - 1 : first_[side.ring] + rings_[side.ring].size() - 1;
    }
    bool neighbours(std::size_t s, std::size_t t) const { return before(s) == t || before(t) == s; }

    bool report(std::size_t s, std::size_t t) {
        const auto [a, b] = std::minmax(s, t);
        out_.contact = Contact{sides_[a].ring, sides_[a].index, sides_[b].ring, sides_[b].index};
        return true;
    }

    bool shared_corner() {
        for (std::size_t i = 1; i < order_.size(); ++i)
            if (start(order_[i - 1]) == start(order_[i]))
                return report(order_[i - 1], order_[i]);
        return false;
    }

    /// A corner at which the ring turns back on itself.
    bool doubled_back() {
        for (const std::size_t s : order_) {
            const std::size_t p = before(s);
            const GridPoint corner = start(s);
            const GridPoint from = start(p);
            const GridPoint to = sides_[s].forwards ? sides_[s].high : sides_[s].low;
            if (cross(corner, from, to) == 0 && dot(corner, from, to) > 0)
                return report(p, s);
        }
        return false;
    }

    bool meet(std::size_t s, std::size_t t) {
        if (neighbours(s, t) ||
            !segments_meet(sides_[s].low, sides_[s].high, sides_[t].low, sides_[t].high))
            return false;
        return report(s, t);
    }

    bool enter(std::size_t s) {
        const auto [at, fresh] = status_.insert(s);
        if (!fresh)
            return report(s, *at);
        place_[s] = at;
        const auto above = std::next(at);
        return (at != status_.begin() && meet(*std::prev(at), s)) ||
               (above != status_.end() && meet(s, *above));
    }

    bool leave(std::size_t s) {
        const auto above = status_.erase(place_[s]);
        return above != status_.begin() && above != status_.end() &&
               meet(*std::prev(above), *above);
    }

    /// The ring around the first corner of a ring that the sweep reaches: what lies below it tells.
    std::optional<std::size_t> holder_of(const std::array<std::size_t, 2>& at_corner) const {
        auto lower = place_[at_corner[0]];
        if (status_.key_comp()(at_corner[1], at_corner[0]))
            lower = place_[at_corner[1]];
        if (lower == status_.begin())
            return std::nullopt;
        const Side& below = sides_[*std::prev(lower)];
        const bool inside_above = below.forwards == positive_[below.ring];
        return inside_above ? std::optional(below.ring) : out_.parents[below.ring];
    }

    const std::vector<Ring>& rings_;
    std::vector<Side> sides_;
    std::vector<std::size_t> first_; ///< of every ring, its first side
    std::vector<std::size_t> order_; ///< sides by where they start
    std::vector<bool> positive_;     ///< of every ring: runs counter-clockwise
    Status status_;
    std::vector<Status::iterator> place_;
    Arrangement out_;
};

} // namespace

int orientation(GridPoint a, GridPoint b, GridPoint c) {
    const Int128 twice_area = cross(a, b, c);
    return twice_area > 0 ? 1 : twice_area < 0 ? -1 : 0;
}

bool on_segment(GridPoint p, GridPoint a, GridPoint b) {
    return orientation(a, b, p) == 0 && dot(p, a, b) <= 0;
}

bool segments_meet(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
    if (std::max(a.x, b.x) < std::min(c.x, d.x) || std::max(c.x, d.x) < std::min(a.x, b.x) ||
        std::max(a.y, b.y) < std::min(c.y, d.y) || std::max(c.y, d.y) < std::min(a.y, b.y))
        return false;
    const int ab_c = orientation(a, b, c);
    const int ab_d = orientation(a, b, d);
    const int cd_a = orientation(c, d, a);
    const int cd_b = orientation(c, d, b);
    if (ab_c * ab_d < 0 && cd_a * cd_b < 0)
        return true;
    return on_segment(c, a, b) || on_segment(d, a, b) || on_segment(a, c, d) || on_segment(b, c, d);
}

Where locate(GridPoint p, const Ring& ring) {
    bool inside = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        if (on_segment(p, a, b))
            return Where::on;
        if ((a.y > p.y) != (b.y > p.y) && (orientation(a, b, p) > 0) == (b.y > a.y))
            inside = !inside;
    }
    return inside ? Where::inside : Where::outside;
}

Arrangement arrange(const std::vector<Ring>& rings) {
    return Sweep(rings).run();
}

bool is_simple(const Ring& ring) {
    return !arrange({ring}).contact;
}

bool lies_inside(const Ring& inner, const Ring& outer) {
    const Arrangement found = arrange({outer, inner});
    return !found.contact && found.parents[1] == std::size_t{0};
}

bool lie_apart(const Ring& a, const Ring& b) {
    const Arrangement found = arrange({a, b});
    return !found.contact && !found.parents[0] && !found.parents[1];
}

} // namespace pelt::geometry
