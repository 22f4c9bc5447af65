// SPDX-License-Identifier: MIT
#include "piece/stop_ends.hpp"

#include <algorithm>
#include <optional>

namespace pelt::piece {
namespace {

double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}
double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}
Point minus(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}
Point moved(Point p, Point way, double distance) {
    return {p.x + distance * way.x, p.y + distance * way.y};
}
Point inward(Point way) {
    return {-way.y, way.x};
}
Point outward(Point way) {
    return {way.y, -way.x};
}
Point reversed(Point way) {
    return {-way.x, -way.y};
}

/// The line of a stop beyond its corner.
struct StopLine {
    Point corner;
    Point away;   ///< unit vector, from the run on beyond the corner
    Point inward; ///< unit vector
    double stop = 0;

    /// How far within the line, below 0 on the side of the edge.
    double within(Point p) const { return dot(minus(p, corner), inward) - stop; }
    double beyond_corner(Point p) const { return dot(minus(p, corner), away); }
};

/// The part of a convex figure on the side of the edge; nothing where none of it lies there.
std::vector<Point> taken(const std::vector<Point>& figure, const StopLine& line) {
    std::vector<Point> out;
    for (std::size_t i = 0; i < figure.size(); ++i) {
        const Point a = figure[i];
        const Point b = figure[(i + 1) % figure.size()];
        const double at_a = line.within(a);
        const double at_b = line.within(b);
        if (at_a <= 0)
            out.push_back(a);
        if (at_a * at_b < 0)
            out.push_back(moved(a, minus(b, a), at_a / (at_a - at_b)));
    }
    const bool any = std::any_of(figure.begin(), figure.end(),
                                 [&](const Point& p) { return line.within(p) < 0; });
    return any ? out : std::vector<Point>{};
}

/// The tuck along a side, a little larger all round.
std::vector<Point> strip(const WorkedSide& worked) {
    const geometry::RingSide& side = worked.side;
    const Point a = moved(side.from, side.begins, -outside_mm);
    const Point b = moved(side.to, side.ends, outside_mm);
    const double move = worked.move + outside_mm;
    return {a, moved(a, outward(side.begins), move), moved(b, outward(side.ends), move), b};
}

bool turns_outward(const WorkedSide& before, const WorkedSide& after) {
    return cross(before.side.ends, after.side.begins) > 0;
}

/// What two neighbours' tucks have between them at an outward corner, a little larger.
std::vector<Point> corner_patch(const WorkedSide& before, const WorkedSide& after) {
    const Point v = before.side.to;
    const geometry::MovedSide a{before.side.ends, before.move + outside_mm};
    const geometry::MovedSide b{after.side.begins, after.move + outside_mm};
    std::vector<Point> patch{v, moved(v, outward(a.way), a.move)};
    const std::vector<Point> corner = geometry::grown_corner(v, a, b);
    patch.insert(patch.end(), corner.begin(), corner.end());
    patch.push_back(moved(v, outward(b.way), b.move));
    return patch;
}

/// Follows the neighbours of a run from its corner on.
class Walk {
public:
    Walk(const std::vector<WorkedSide>& sides, const StopLine& line, bool forward)
        : sides_(sides), line_(line), forward_(forward) {}

    /// None where the line does not leave the tucks near the corner.
    std::optional<BandEnd> from(std::size_t run_end) {
        std::size_t at = run_end;
        for (std::size_t steps = 1; steps < sides_.size(); ++steps) {
            const std::size_t next = neighbour(at);
            take_corner(at, next);
            if (sides_[next].move == 0)
                return left_panel_ ? std::optional(end_) : std::nullopt;
            largest_move_ = std::max(largest_move_, sides_[next].move);
            if (!take(strip(sides_[next])))
                return left_panel_ ? std::optional(end_) : std::nullopt;
            const double rim = line_.within(far_end(sides_[next]));
            left_panel_ = left_panel_ || rim >= 0;
            // Beyond the edge's own line there is no edge to be short of.
            if (too_far() || rim < -line_.stop)
                return std::nullopt;
            at = next;
        }
        return std::nullopt;
    }

private:
    std::size_t neighbour(std::size_t i) const {
        return (i + (forward_ ? 1 : sides_.size() - 1)) % sides_.size();
    }
    Point far_end(const WorkedSide& worked) const {
        return forward_ ? worked.side.to : worked.side.from;
    }
    bool too_far() const { return end_.longer > 2 * (largest_move_ + line_.stop); }

    void take_corner(std::size_t at, std::size_t next) {
        const WorkedSide& before = sides_[forward_ ? at : next];
        const WorkedSide& after = sides_[forward_ ? next : at];
        if (turns_outward(before, after))
            take(corner_patch(before, after));
    }

    /// Whether anything of it lies beyond the line.
    bool take(const std::vector<Point>& figure) {
        std::vector<Point> part = taken(figure, line_);
        if (part.empty())
            return false;
        for (const Point& p : part)
            end_.longer = std::max(end_.longer, line_.beyond_corner(p));
        end_.tucks.push_back(std::move(part));
        return true;
    }

    const std::vector<WorkedSide>& sides_;
    StopLine line_;
    bool forward_;
    BandEnd end_;
    bool left_panel_ = false; ///< the line has left the outline
    double largest_move_ = 0;
};

/// How far the film that was added at a corner reaches past it, along `way`.
double added(const WorkedSide& before, const WorkedSide& after, Point way) {
    const Point v = before.side.to;
    double farthest = 0;
    for (const Point& p : geometry::grown_corner(v, {before.side.ends, before.move},
                                                 {after.side.begins, after.move}))
        farthest = std::max(farthest, dot(minus(p, v), way));
    return farthest;
}

BandEnd band_end(const std::vector<WorkedSide>& sides, std::size_t run_end, bool forward,
                 const StopLine& line) {
    const std::size_t n = sides.size();
    const WorkedSide& before = sides[forward ? run_end : (run_end + n - 1) % n];
    const WorkedSide& after = sides[forward ? (run_end + 1) % n : run_end];
    if (!turns_outward(before, after) || (forward ? after : before).move == 0)
        return {};
    if (std::optional<BandEnd> end = Walk(sides, line, forward).from(run_end))
        return *end;
    // At a corner that is not obtuse what was added lies beside the band.
    const bool obtuse = dot(before.side.ends, after.side.begins) > 0;
    return {obtuse ? 0 : added(before, after, line.away), {}};
}

} // namespace

BandEnd band_end_before(const std::vector<WorkedSide>& sides, std::size_t first) {
    const geometry::RingSide& side = sides[first].side;
    const StopLine line{side.from, reversed(side.begins), inward(side.begins), sides[first].stop};
    return band_end(sides, first, false, line);
}

BandEnd band_end_after(const std::vector<WorkedSide>& sides, std::size_t last) {
    const geometry::RingSide& side = sides[last].side;
    return band_end(sides, last, true, {side.to, side.ends, inward(side.ends), sides[last].stop});
}

} // namespace pelt::piece
