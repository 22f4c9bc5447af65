// SPDX-License-Identifier: MIT
#include "verify/stop_strips.hpp"

#include <algorithm>
#include <optional>

namespace pelt::verify {
namespace {

using Figure = std::vector<Point>;

/// Figures begin this far outside of what they take from; mm.
constexpr double outside = 0.002;

/// The end of a side with a stop, seen from its corner: x runs on beyond the corner, y inward.
class AtCorner {
public:
    AtCorner(Point corner, Point on, bool at_the_end)
        : corner_(corner), on_(on), in_(at_the_end ? Point{-on.y, on.x} : Point{on.y, -on.x}) {}

    Point seen(Point p) const {
        const Point from{p.x - corner_.x, p.y - corner_.y};
        return {dot(from, on_), dot(from, in_)};
    }
    Point drawn(Point p) const { return shifted(shifted(corner_, on_, p.x), in_, p.y); }

private:
    Point corner_;
    Point on_;
    Point in_;
};

/// What lies lower than `height` of a convex figure, all as seen from the corner.
Figure lower_part(const Figure& figure, double height) {
    Figure out;
    Point last = figure.back();
    for (const Point& p : figure) {
        if ((last.y > height) != (p.y > height)) {
            const double share = (height - last.y) / (p.y - last.y);
            out.push_back({last.x + share * (p.x - last.x), height});
        }
        if (p.y <= height)
            out.push_back(p);
        last = p;
    }
    const auto lower = [&](const Point& p) { return p.y < height; };
    return std::any_of(out.begin(), out.end(), lower) ? out : Figure{};
}

Figure tuck_along(const MovedSide& side) {
    const double move = side.move + outside;
    const Point a = shifted(side.from, side.begins, -outside);
    const Point b = shifted(side.to, side.ends, outside);
    return {a, shifted(a, right_of(side.begins), move), shifted(b, right_of(side.ends), move), b};
}

Figure tuck_around(Corner corner) {
    corner.move_before += outside;
    corner.move_after += outside;
    Figure out{corner.at, shifted(corner.at, right_of(corner.comes), corner.move_before)};
    for (const Point& p : corner_points(corner))
        out.push_back(p);
    out.push_back(shifted(corner.at, right_of(corner.goes), corner.move_after));
    return out;
}

/// What the line takes beyond a corner.
struct Taken {
    double reach = 0;
    std::vector<Figure> figures;
};

class Neighbours {
public:
    Neighbours(const std::vector<MovedSide>& sides, std::size_t stopped, bool at_the_end)
        : sides_(sides), at_the_end_(at_the_end), stop_(sides[stopped].stop), stopped_(stopped),
          view_(at_the_end ? sides[stopped].to : sides[stopped].from,
                at_the_end ? sides[stopped].ends : reversed(sides[stopped].begins), at_the_end) {}

    Taken taken() {
        const std::size_t neighbour = after(stopped_);
        const Corner corner = corner_to(stopped_);
        if (!(cross(corner.comes, corner.goes) > 0) || sides_[neighbour].move == 0)
            return {};
        if (crosses())
            return taken_;
        return {corner.is_obtuse() ? 0 : farthest(corner_points(corner)), {}};
    }

private:
    std::size_t after(std::size_t i) const {
        const std::size_t n = sides_.size();
        return at_the_end_ ? (i + 1 == n ? 0 : i + 1) : (i == 0 ? n - 1 : i - 1);
    }
    /// The corner between a side and the next one of the walk.
    Corner corner_to(std::size_t i) const {
        return at_the_end_ ? corner_between(sides_[i], sides_[after(i)])
                           : corner_between(sides_[after(i)], sides_[i]);
    }

    double farthest(const Figure& figure) const {
        double out = 0;
        for (const Point& p : figure)
            out = std::max(out, view_.seen(p).x);
        return out;
    }

    bool take(const Figure& figure) {
        Figure seen;
        for (const Point& p : figure)
            seen.push_back(view_.seen(p));
        Figure part = lower_part(seen, stop_);
        for (Point& p : part) {
            taken_.reach = std::max(taken_.reach, p.x);
            p = view_.drawn(p);
        }
        if (!part.empty())
            taken_.figures.push_back(part);
        return !part.empty();
    }

    /// Whether the line comes out through the neighbours' edges and tucks, near enough.
    bool crosses() {
        bool through_edge = false;
        double widest = 0;
        std::size_t last = stopped_;
        for (std::size_t i = after(last); i != stopped_; last = i, i = after(i)) {
            const Corner corner = corner_to(last);
            if (cross(corner.comes, corner.goes) > 0)
                take(tuck_around(corner));
            const MovedSide& side = sides_[i];
            if (side.move == 0 || !take(tuck_along(side)))
                return through_edge;
            widest = std::max(widest, side.move);
            const double height = view_.seen(at_the_end_ ? side.to : side.from).y;
            if (taken_.reach > 2 * (widest + stop_) || height < 0)
                return false;
            through_edge = through_edge || height >= stop_;
        }
        return false;
    }

    const std::vector<MovedSide>& sides_;
    bool at_the_end_;
    double stop_;
    std::size_t stopped_;
    AtCorner view_;
    Taken taken_;
};

/// Between two strips at an inward corner: by the rule of corners, seen from inside.
Figure between_strips(const MovedSide& before, const MovedSide& after) {
    Figure points{before.to};
    for (const Point& p : corner_points(
             {before.to, reversed(after.begins), after.stop, reversed(before.ends), before.stop}))
        points.push_back(p);
    return points;
}

void add_strip(const std::vector<MovedSide>& sides, std::size_t i, std::vector<Figure>& out) {
    const MovedSide& side = sides[i];
    const Taken before = Neighbours(sides, i, false).taken();
    const Taken after = Neighbours(sides, i, true).taken();
    const Point a = shifted(side.from, side.begins, -before.reach);
    const Point b = shifted(side.to, side.ends, after.reach);
    out.push_back({shifted(a, right_of(side.begins), outside),
                   shifted(b, right_of(side.ends), outside),
                   shifted(b, right_of(side.ends), -side.stop),
                   shifted(a, right_of(side.begins), -side.stop)});
    out.insert(out.end(), before.figures.begin(), before.figures.end());
    out.insert(out.end(), after.figures.begin(), after.figures.end());
}

} // namespace

std::vector<Figure> stop_strips(const std::vector<MovedSide>& sides) {
    std::vector<Figure> out;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const MovedSide& after = sides[i + 1 == sides.size() ? 0 : i + 1];
        if (sides[i].stop == 0)
            continue;
        add_strip(sides, i, out);
        if (after.stop > 0 && cross(sides[i].ends, after.begins) < 0)
            out.push_back(between_strips(sides[i], after));
    }
    return out;
}

} // namespace pelt::verify
