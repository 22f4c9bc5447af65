// SPDX-License-Identifier: MIT
#include "develop/surface/decimate.hpp"

#include "develop/surface/quadric.hpp"
#include "geometry/mesh/mesh.hpp"
#include "geometry/mesh/to_triangle.hpp"
#include "geometry/space.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <queue>
#include <set>
#include <tuple>
#include <utility>

namespace pelt::develop {
namespace {

using geometry::cross;
using geometry::dot;
using geometry::norm;
using geometry::to_triangle;
using geometry::unit;

/// Against the squared distance to planes; keeps triangles even on flat parts.
constexpr double of_length = 1e-3;
/// How much of the old normal a moved triangle keeps at least.
constexpr double least_turn = .2;

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

struct Step {
    double cost;
    int kept;
    int gone;
    int kept_version;
    int gone_version;
    Point3 place;
    bool operator>(const Step& other) const {
        return std::tie(cost, kept, gone) > std::tie(other.cost, other.kept, other.gone);
    }
};

class Thinning {
public:
    explicit Thinning(const Surface& surface)
        : points_(surface.points), triangles_(surface.triangles), left_(triangles_.size()),
          on_loop_(points_.size(), false), version_(points_.size(), 0), quadrics_(points_.size()),
          around_(points_.size()), follower_(points_.size()) {
        for (const std::vector<int>& loop : surface.loops) {
            for (const int i : loop)
                on_loop_[index(i)] = true;
            add_loop_planes(loop);
        }
        for (std::size_t i = 0; i < follower_.size(); ++i)
            follower_[i] = static_cast<int>(i);
        for (std::size_t t = 0; t < triangles_.size(); ++t)
            add_triangle(static_cast<int>(t));
    }

    void run(std::size_t most) {
        for (std::size_t i = 0; i < points_.size(); ++i)
            for (const int j : neighbours(static_cast<int>(i)))
                if (static_cast<int>(i) < j)
                    offer(static_cast<int>(i), j);
        while (left_ > most && !steps_.empty()) {
            const Step step = steps_.top();
            steps_.pop();
            if (version_[index(step.kept)] != step.kept_version ||
                version_[index(step.gone)] != step.gone_version || !allowed(step))
                continue;
            join(step);
        }
    }

    /// What is left, its loops in the order of the old ones: none can vanish, and their lengths may
    /// have changed places.
    Surface result(const std::vector<std::vector<int>>& old_loops) {
        std::vector<int> place(points_.size(), -1);
        Surface out;
        for (const Triangle& t : triangles_)
            if (t[0] >= 0)
                for (const int corner : t)
                    place[index(corner)] = 0;
        for (std::size_t i = 0; i < points_.size(); ++i)
            if (place[i] == 0) {
                place[i] = static_cast<int>(out.points.size());
                out.points.push_back(points_[i]);
            }
        for (const Triangle& t : triangles_)
            if (t[0] >= 0)
                out.triangles.push_back(
                    {place[index(t[0])], place[index(t[1])], place[index(t[2])]});
        std::vector<std::size_t> rank(out.points.size(), old_loops.size());
        for (std::size_t i = 0; i < old_loops.size(); ++i)
            for (const int old : old_loops[i])
                rank[index(place[index(last(old))])] = i;
        out.loops = geometry::loops_of(out.points, out.triangles);
        std::stable_sort(out.loops.begin(), out.loops.end(), [&](const auto& a, const auto& b) {
            return rank[index(a.front())] < rank[index(b.front())];
        });
        return out;
    }

    /// The farthest that an old point lies from the triangles near to the point that it became.
    double off(const std::vector<Point3>& old) {
        double worst = 0;
        for (std::size_t i = 0; i < old.size(); ++i) {
            const int kept = last(static_cast<int>(i));
            double least = std::numeric_limits<double>::infinity();
            for (const int t : around_[index(kept)])
                for (const int corner : triangles_[index(t)])
                    for (const int near : around_[index(corner)])
                        least = std::min(least, to_triangle(old[i], corners_of(near)));
            worst =
                std::max(worst, std::min(least, geometry::distance(old[i], points_[index(kept)])));
        }
        return worst;
    }

private:
    std::array<Point3, 3> corners_of(int t) const {
        const Triangle& c = triangles_[index(t)];
        return {points_[index(c[0])], points_[index(c[1])], points_[index(c[2])]};
    }

    void add_triangle(int t) {
        const Triangle& c = triangles_[index(t)];
        const Point3 origin = points_[index(c[0])];
        const Point3 doubled = cross(points_[index(c[1])] - origin, points_[index(c[2])] - origin);
        const Point3 normal = unit(doubled);
        for (const int corner : c) {
            quadrics_[index(corner)].add_plane(normal, -dot(normal, origin), norm(doubled) / 6);
            around_[index(corner)].push_back(t);
        }
    }

    /// Two planes square to one another through each side of a loop keep its shape.
    void add_loop_planes(const std::vector<int>& loop) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const int a = loop[i];
            const int b = loop[(i + 1) % loop.size()];
            const Point3 side = points_[index(b)] - points_[index(a)];
            const Point3 way = unit(side);
            const Point3 other = std::abs(way.x) < .7 ? Point3{1, 0, 0} : Point3{0, 1, 0};
            const Point3 one = unit(cross(way, other));
            for (const Point3 n : {one, cross(way, one)})
                for (const int end : {a, b})
                    quadrics_[index(end)].add_plane(n, -dot(n, points_[index(a)]), dot(side, side));
        }
    }

    int last(int i) {
        while (follower_[index(i)] != i)
            i = follower_[index(i)] = follower_[index(follower_[index(i)])];
        return i;
    }

    std::vector<int> neighbours(int i) const {
        std::vector<int> out;
        for (const int t : around_[index(i)])
            for (const int corner : triangles_[index(t)])
                if (corner != i)
                    out.push_back(corner);
        std::sort(out.begin(), out.end());
        out.erase(std::unique(out.begin(), out.end()), out.end());
        return out;
    }

    /// A point on a loop stays where it is unless both are on it.
    void offer(int a, int b) {
        if (on_loop_[index(b)] && !on_loop_[index(a)])
            std::swap(a, b);
        const Point3 pa = points_[index(a)];
        const Point3 pb = points_[index(b)];
        std::vector<Point3> places{pa};
        if (on_loop_[index(a)] == on_loop_[index(b)])
            places = {.5 * (pa + pb), pa, pb};
        const Quadric sum = quadrics_[index(a)] + quadrics_[index(b)];
        const double length = dot(pb - pa, pb - pa);
        Step best{std::numeric_limits<double>::infinity(),
                  a,
                  b,
                  version_[index(a)],
                  version_[index(b)],
                  pa};
        for (const Point3& p : places) {
            const double cost = std::max(0.0, sum.at(p)) + of_length * length * length;
            if (cost < best.cost) {
                best.cost = cost;
                best.place = p;
            }
        }
        steps_.push(best);
    }

    bool allowed(const Step& step) const {
        const std::vector<int> a = neighbours(step.kept);
        const std::vector<int> b = neighbours(step.gone);
        std::vector<int> both;
        std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(both));
        std::size_t shared = 0;
        for (const int t : around_[index(step.gone)])
            shared +=
                std::count(triangles_[index(t)].begin(), triangles_[index(t)].end(), step.kept) > 0
                    ? 1
                    : 0;
        // Joined, the two triangles (one at a loop) at their edge go and nothing else; an edge that
        // crosses the surface from loop to loop must stay.
        if (both.size() != shared || shared == 0)
            return false;
        if (on_loop_[index(step.kept)] && on_loop_[index(step.gone)] && shared != 1)
            return false;
        return keeps_facing(step.kept, step.gone, step.place) &&
               keeps_facing(step.gone, step.kept, step.place);
    }

    bool keeps_facing(int moved, int other, Point3 place) const {
        for (const int t : around_[index(moved)]) {
            const Triangle& c = triangles_[index(t)];
            if (std::find(c.begin(), c.end(), other) != c.end())
                continue;
            std::array<Point3, 3> before;
            std::array<Point3, 3> after;
            for (std::size_t k = 0; k < 3; ++k) {
                before[k] = points_[index(c[k])];
                after[k] = c[k] == moved ? place : before[k];
            }
            const Point3 n = cross(before[1] - before[0], before[2] - before[0]);
            const Point3 m = cross(after[1] - after[0], after[2] - after[0]);
            double longest = 0;
            for (std::size_t k = 0; k < 3; ++k)
                longest = std::max(
                    longest, dot(after[(k + 1) % 3] - after[k], after[(k + 1) % 3] - after[k]));
            if (!(dot(n, m) > least_turn * norm(n) * norm(m)) || !(norm(m) > .05 * longest))
                return false;
        }
        return true;
    }

    void join(const Step& step) {
        points_[index(step.kept)] = step.place;
        quadrics_[index(step.kept)] = quadrics_[index(step.kept)] + quadrics_[index(step.gone)];
        on_loop_[index(step.kept)] = on_loop_[index(step.kept)] || on_loop_[index(step.gone)];
        follower_[index(step.gone)] = step.kept;
        const std::vector<int> moved = std::move(around_[index(step.gone)]);
        around_[index(step.gone)].clear();
        for (const int t : moved) {
            Triangle& c = triangles_[index(t)];
            if (std::find(c.begin(), c.end(), step.kept) != c.end()) {
                for (const int corner : c)
                    if (corner != step.gone)
                        std::erase(around_[index(corner)], t);
                c = {-1, -1, -1};
                --left_;
                continue;
            }
            std::replace(c.begin(), c.end(), step.gone, step.kept);
            around_[index(step.kept)].push_back(t);
        }
        ++version_[index(step.gone)];
        ++version_[index(step.kept)];
        for (const int j : neighbours(step.kept))
            offer(std::min(step.kept, j), std::max(step.kept, j));
    }

    std::vector<Point3> points_;
    std::vector<Triangle> triangles_;
    std::size_t left_;
    std::vector<bool> on_loop_;
    std::vector<int> version_;
    std::vector<Quadric> quadrics_;
    std::vector<std::vector<int>> around_;
    std::vector<int> follower_;
    std::priority_queue<Step, std::vector<Step>, std::greater<>> steps_;
};

} // namespace

Thinned thinned(const Surface& surface, std::size_t most) {
    if (surface.triangles.size() <= most)
        return {surface, 0};
    Thinning thinning(surface);
    thinning.run(most);
    const double off = thinning.off(surface.points);
    return {thinning.result(surface.loops), off};
}

} // namespace pelt::develop
