// SPDX-License-Identifier: MIT
#include "verify/covering.hpp"

#include "verify/figures.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace pelt::verify {
namespace {

constexpr double shortest = 50;

// Towards the nose on a panel drawn from the left or from the right; a centre panel says it, or
// its film may lie in any direction and +x is as good as any.
Heading heading_of(const Panel& panel) {
    if (panel.forward)
        return *panel.forward;
    const bool from_the_left = panel.sides == Sides::left || panel.sides == Sides::both;
    return from_the_left ? Heading::left : Heading::right;
}

GridPoint along(const Edge& edge, double share) {
    const GridPoint way = edge.to - edge.from;
    return {edge.from.x + std::llround(share * static_cast<double>(way.x)),
            edge.from.y + std::llround(share * static_cast<double>(way.y))};
}

double cross_of(GridPoint a, GridPoint b) {
    return static_cast<double>(a.x) * static_cast<double>(b.y) -
           static_cast<double>(a.y) * static_cast<double>(b.x);
}

/// Where on the edge the rim crosses it, or begins or ends a side beside it; shares of its length.
void add_meetings(const Edge& edge, const Rim& rim, std::vector<double>& shares) {
    const GridPoint way = edge.to - edge.from;
    const Point unit{static_cast<double>(way.x), static_cast<double>(way.y)};
    const double length = unit.x * unit.x + unit.y * unit.y;
    const Box around = grown(box_of_edge(edge), hair);
    rim.each_near(around, [&](const Edge& found) {
        for (const GridPoint end : {found.from, found.to}) {
            if (!meet(around, {end, end}) || point_apart(end, edge.from, edge.to, hair))
                continue;
            const double at = static_cast<double>(end.x - edge.from.x) * unit.x +
                              static_cast<double>(end.y - edge.from.y) * unit.y;
            shares.push_back(std::clamp(at / length, 0.0, 1.0));
        }
        if (cross_inside(edge.from, edge.to, found.from, found.to)) {
            const GridPoint theirs = found.to - found.from;
            shares.push_back(cross_of(found.from - edge.from, theirs) / cross_of(way, theirs));
        }
        return true;
    });
}

void add_stretches(const Rim& rim, int part, const std::vector<const Rim*>& all,
                   const std::set<std::pair<GridPoint, GridPoint>>& known,
                   std::vector<Stretch>& out) {
    std::vector<double> shares;
    for (const Edge& edge : rim.edges()) {
        if (known.count({edge.from, edge.to}) > 0)
            continue;
        const GridPoint way = edge.to - edge.from;
        const double length = std::hypot(static_cast<double>(way.x), static_cast<double>(way.y));
        if (length < shortest)
            continue;
        shares.assign({0, 1});
        for (const Rim* other : all)
            add_meetings(edge, *other, shares);
        std::sort(shares.begin(), shares.end());
        const Point right{static_cast<double>(way.y) / length,
                          static_cast<double>(-way.x) / length};
        for (std::size_t i = 0; i + 1 < shares.size(); ++i)
            if ((shares[i + 1] - shares[i]) * length >= shortest)
                out.push_back({part, edge, along(edge, shares[i]), along(edge, shares[i + 1]),
                               along(edge, (shares[i] + shares[i + 1]) / 2), right});
    }
}

/// A region that is wanted and not covered, by the stretches around it.
struct Missing {
    double twice_area = 0;
    bool beside_film = false; ///< else it lies apart from all film
    GridPoint somewhere;
};

/// Stretches whose ends lie within a hair of one another bound one region.
class Regions {
public:
    std::size_t region_at(GridPoint p) {
        constexpr Um cell = 64;
        const auto down = [](Um v) { return v >= 0 ? v / cell : (v - cell + 1) / cell; };
        std::size_t found = parent_.size();
        for (Um x = down(p.x - hair); x <= down(p.x + hair); ++x)
            for (Um y = down(p.y - hair); y <= down(p.y + hair); ++y)
                if (const auto at = cells_.find({x, y}); at != cells_.end())
                    found = found == parent_.size() ? root(at->second) : join(found, at->second);
        if (found == parent_.size())
            parent_.push_back(found);
        cells_.emplace(GridPoint{down(p.x), down(p.y)}, found);
        return found;
    }
    std::size_t root(std::size_t of) const {
        while (parent_[of] != of)
            of = parent_[of];
        return of;
    }
    std::size_t join(std::size_t a, std::size_t b) { return parent_[root(a)] = root(b); }

private:
    std::vector<std::size_t> parent_;
    std::map<GridPoint, std::size_t> cells_;
};

/// Twice the area between the stretch and a place, positive where the place lies to its left.
double twice_area_from(GridPoint place, GridPoint a, GridPoint b) {
    return static_cast<double>(cross(a - place, b - place));
}

std::vector<Missing> missing_regions(const Covering& covering) {
    const auto is_missing = [&](GridPoint p) {
        return covering.wanted.stays_on(p) && !covering.holds(p);
    };
    struct Bound {
        std::size_t region;
        bool missing_is_left;
        const Stretch* stretch;
    };
    Regions regions;
    std::vector<Bound> found;
    for (const Stretch& stretch : covering.stretches) {
        const bool left = is_missing(stretch.inside());
        const bool right = is_missing(stretch.outside());
        if (left == right)
            continue;
        found.push_back(
            {regions.join(regions.region_at(stretch.from), regions.region_at(stretch.to)), left,
             &stretch});
    }
    std::map<std::size_t, Missing> sums;
    for (const auto& [region, left, stretch] : found) {
        Missing& sum = sums.try_emplace(regions.root(region),
                                        Missing{0, false, stretch->off(left ? -beside : beside)})
                           .first->second;
        // Very short stretches are not there, so a region may have gaps all round. Seen from its
        // own rim they weigh little.
        const double area = twice_area_from(sum.somewhere, stretch->from, stretch->to);
        sum.twice_area += left ? area : -area;
        sum.beside_film = sum.beside_film || covering.holds(stretch->off(left ? beside : -beside));
    }
    std::vector<Missing> out;
    for (const auto& [region, sum] : sums)
        out.push_back(sum);
    return out;
}

double twice_outline(const Blank& blank) {
    double sum = 0;
    const std::vector<Point>& ring = blank.outline.points;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[i + 1 == ring.size() ? 0 : i + 1];
        sum += a.x * b.y - a.y * b.x;
    }
    return std::abs(sum) * um_per_mm * um_per_mm;
}

void check_missing(const Covering& covering, Sentences& faults) {
    constexpr double square_mm = 1e6;
    for (const Missing& missing : missing_regions(covering)) {
        const double size = std::abs(missing.twice_area);
        const bool left_over = !missing.beside_film && 1000 * size <= twice_outline(covering.blank);
        if (size > 2 * square_mm && !left_over)
            faults.push_back(covering.who + ": no film at " + in_mm(missing.somewhere) +
                             " of its drawing, where it is wanted");
    }
}

} // namespace

Frame frame_of(const Panel& panel, const PieceId& id) {
    const bool twin = panel.sides == Sides::both && id.side == Side::right;
    const bool inner = panel.faces == 2 && id.copy % 2 == 0;
    return {heading_of(panel), twin != inner};
}

GridPoint in_drawing(GridPoint p, const Frame& frame) {
    if (frame.mirrored)
        p.y = -p.y;
    switch (frame.forward) {
    case Heading::right:
        break;
    case Heading::up:
        return {-p.y, p.x};
    case Heading::left:
        return {-p.x, -p.y};
    case Heading::down:
        return {p.y, -p.x};
    }
    return p;
}

Polygon in_drawing(const Polygon& polygon, const Frame& frame) {
    const auto ring_in_drawing = [&](const Ring& ring) {
        Ring out;
        out.reserve(ring.size());
        for (const GridPoint& p : ring)
            out.push_back(in_drawing(p, frame));
        if (frame.mirrored)
            std::reverse(out.begin(), out.end());
        return out;
    };
    Polygon out{ring_in_drawing(polygon.outer), {}};
    for (const Ring& hole : polygon.holes)
        out.holes.push_back(ring_in_drawing(hole));
    return out;
}

Point forward_along(Heading heading, Point p) {
    switch (heading) {
    case Heading::right:
        break;
    case Heading::up:
        return {p.y, -p.x};
    case Heading::left:
        return {-p.x, -p.y};
    case Heading::down:
        return {-p.y, p.x};
    }
    return p;
}

GridPoint Stretch::off(Um by) const {
    return {middle.x + std::llround(static_cast<double>(by) * out.x),
            middle.y + std::llround(static_cast<double>(by) * out.y)};
}

double Stretch::length() const {
    return std::hypot(static_cast<double>(to.x - from.x), static_cast<double>(to.y - from.y));
}

bool Covering::holds(GridPoint p) const {
    for (std::size_t part = 0; part < parts.size(); ++part)
        if (holds(part, p))
            return true;
    return false;
}

bool Covering::near_a_rim(GridPoint p) const {
    for (const Rim* rim : wanted.rims())
        if (rim->near_rim(p, hair))
            return true;
    return std::any_of(parts.begin(), parts.end(),
                       [&](const PartFilm& part) { return part.rim.near_rim(p, hair); });
}

void find_stretches(Covering& covering) {
    const std::vector<const Rim*> wanted = covering.wanted.rims();
    std::vector<const Rim*> all = wanted;
    for (const PartFilm& part : covering.parts)
        all.push_back(&part.rim);
    // Where a part runs as it should, its own stretches are enough.
    std::set<std::pair<GridPoint, GridPoint>> of_parts;
    for (const PartFilm& part : covering.parts)
        for (const Edge& edge : part.rim.edges())
            of_parts.insert({{edge.from, edge.to}, {edge.to, edge.from}});
    for (const Rim* rim : wanted)
        add_stretches(*rim, Stretch::none, all, of_parts, covering.stretches);
    for (std::size_t part = 0; part < covering.parts.size(); ++part)
        add_stretches(covering.parts[part].rim, static_cast<int>(part), all, {},
                      covering.stretches);
}

void check_cover(const Covering& covering, Sentences& faults) {
    bool all_there = true;
    for (const Stretch& stretch : covering.stretches)
        for (const GridPoint p : {stretch.inside(), stretch.outside()}) {
            const bool wanted = covering.wanted.stays_on(p);
            if (wanted == covering.holds(p) || covering.near_a_rim(p))
                continue;
            all_there = all_there && !wanted;
            if (!wanted) {
                faults.push_back(covering.who + ": film at " + in_mm(p) +
                                 " of its drawing, where none is wanted");
                return;
            }
        }
    if (!all_there)
        check_missing(covering, faults);
}

} // namespace pelt::verify
