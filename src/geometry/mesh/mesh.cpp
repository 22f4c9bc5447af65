// SPDX-License-Identifier: MIT
#include "geometry/mesh/mesh.hpp"

#include "geometry/mesh/groups.hpp"
#include "geometry/mesh/weld.hpp"
#include "geometry/space.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace pelt::geometry {
namespace {

constexpr double small_part = .05;
constexpr double longest_hole = .5; ///< of the outline's length

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

/// A side of a triangle: its ends in rising order, and whether the triangle runs from low to high.
struct Side {
    int low;
    int high;
    int triangle;
    bool rising;
    friend auto operator<=>(const Side&, const Side&) = default;
};

std::vector<Side> sides_of(const std::vector<Triangle>& triangles) {
    std::vector<Side> sides;
    sides.reserve(3 * triangles.size());
    for (std::size_t t = 0; t < triangles.size(); ++t)
        for (std::size_t k = 0; k < 3; ++k) {
            const int a = triangles[t][k];
            const int b = triangles[t][(k + 1) % 3];
            sides.push_back({std::min(a, b), std::max(a, b), static_cast<int>(t), a < b});
        }
    std::sort(sides.begin(), sides.end());
    return sides;
}

bool same_edge(const Side& a, const Side& b) {
    return a.low == b.low && a.high == b.high;
}

std::string spoken(Point3 p) {
    const auto mm = [](double v) { return std::to_string(std::llround(v)); };
    return mm(p.x) + ", " + mm(p.y) + ", " + mm(p.z) + " mm";
}

class Mending {
public:
    explicit Mending(Mesh mesh) : mesh_(std::move(mesh)) {}

    SurfaceFound run() {
        weld(mesh_);
        if (mesh_.triangles.empty())
            return wrong("has no triangle with an area", "check the export of the scan");
        if (!pair_sides() || !turn_to_one_side() || !keep_one_part())
            return std::move(found_);
        split_touching_fans();
        Surface surface{std::move(mesh_.points), std::move(mesh_.triangles), {}};
        surface.loops = loops_of(surface.points, surface.triangles);
        if (!is_a_disc(surface))
            return std::move(found_);
        found_.surface = std::move(surface);
        return std::move(found_);
    }

private:
    SurfaceFound wrong(std::string what, std::string remedy) {
        found_.what = std::move(what);
        found_.remedy = std::move(remedy);
        return std::move(found_);
    }
    bool fails(std::string what, std::string remedy) {
        found_.what = std::move(what);
        found_.remedy = std::move(remedy);
        return false;
    }

    /// Fills neighbours_: the triangle across each side; -1 at the boundary.
    bool pair_sides() {
        const std::vector<Side> sides = sides_of(mesh_.triangles);
        neighbours_.assign(mesh_.triangles.size(), {});
        for (std::size_t i = 0; i < sides.size();) {
            std::size_t end = i + 1;
            while (end < sides.size() && same_edge(sides[i], sides[end]))
                ++end;
            if (end - i > 2)
                return fails("has " + std::to_string(end - i) + " triangles at one edge, near " +
                                 spoken(mesh_.points[index(sides[i].low)]),
                             "cut the scan so that one layer of skin is left");
            if (end - i == 2) {
                const bool turned = sides[i].rising == sides[i + 1].rising;
                neighbours_[index(sides[i].triangle)].push_back({sides[i + 1].triangle, turned});
                neighbours_[index(sides[i + 1].triangle)].push_back({sides[i].triangle, turned});
            }
            i = end;
        }
        return true;
    }

    /// Walks over each part, turning triangles to the side of its first one; then to that of most.
    bool turn_to_one_side() {
        part_.assign(mesh_.triangles.size(), -1);
        std::vector<bool> turned(mesh_.triangles.size(), false);
        for (std::size_t first = 0; first < part_.size(); ++first) {
            if (part_[first] >= 0)
                continue;
            std::vector<int> members;
            if (!walk(static_cast<int>(first), turned, members))
                return fails("has one side only, like a twisted band",
                             "check how the scan was stitched");
            const auto flips = std::count_if(members.begin(), members.end(),
                                             [&](int t) { return turned[index(t)]; });
            const bool other_way = 2 * flips > static_cast<std::ptrdiff_t>(members.size());
            for (const int t : members)
                if (turned[index(t)] != other_way)
                    std::swap(mesh_.triangles[index(t)][1], mesh_.triangles[index(t)][2]);
            ++parts_;
        }
        return true;
    }

    bool walk(int first, std::vector<bool>& turned, std::vector<int>& members) {
        members.push_back(first);
        part_[index(first)] = parts_;
        for (std::size_t next = 0; next < members.size(); ++next)
            for (const Neighbour& n : neighbours_[index(members[next])]) {
                const bool wanted = turned[index(members[next])] != n.turned;
                if (part_[index(n.triangle)] < 0) {
                    part_[index(n.triangle)] = parts_;
                    turned[index(n.triangle)] = wanted;
                    members.push_back(n.triangle);
                } else if (turned[index(n.triangle)] != wanted) {
                    return false;
                }
            }
        return true;
    }

    bool keep_one_part() {
        std::vector<std::vector<Triangle>> parts(index(parts_));
        for (std::size_t t = 0; t < part_.size(); ++t)
            parts[index(part_[t])].push_back(mesh_.triangles[t]);
        std::vector<double> areas;
        for (const std::vector<Triangle>& part : parts)
            areas.push_back(area_of(mesh_.points, part));
        const auto largest = std::max_element(areas.begin(), areas.end()) - areas.begin();
        double rest = 0;
        for (std::size_t i = 0; i < areas.size(); ++i) {
            if (i == static_cast<std::size_t>(largest))
                continue;
            if (areas[i] > small_part * areas[static_cast<std::size_t>(largest)])
                return fails("has separate parts, a second one of " +
                                 std::to_string(std::llround(areas[i] / 100)) + " cm²",
                             "keep one panel in the scan, or join its parts");
            rest += areas[i];
        }
        if (parts.size() > 1)
            found_.remarks.push_back("has " + std::to_string(parts.size() - 1) + " loose bits, " +
                                     std::to_string(std::llround(rest / 100)) +
                                     " cm² together, that are left out");
        mesh_.triangles = std::move(parts[static_cast<std::size_t>(largest)]);
        weld(mesh_);
        return true;
    }

    /// Where fans of triangles touch in a point only, each gets a point of its own.
    void split_touching_fans() {
        std::vector<Triangle>& triangles = mesh_.triangles;
        Groups fans(3 * triangles.size()); // of corners 3 t + k around a point that share a side
        const auto corner = [&](int t, int point) {
            for (int k = 0; k < 3; ++k)
                if (triangles[index(t)][index(k)] == point)
                    return 3 * t + k;
            return 3 * t;
        };
        const std::vector<Side> sides = sides_of(triangles);
        for (std::size_t i = 0; i + 1 < sides.size(); ++i)
            if (same_edge(sides[i], sides[i + 1]))
                for (const int end : {sides[i].low, sides[i].high})
                    fans.join(corner(sides[i].triangle, end), corner(sides[i + 1].triangle, end));
        std::vector<int> owner(mesh_.points.size(), -1);
        for (std::size_t t = 0; t < triangles.size(); ++t)
            for (std::size_t k = 0; k < 3; ++k) {
                const int fan = fans.first_of(static_cast<int>(3 * t + k));
                const int point = triangles[t][k];
                if (fan == static_cast<int>(3 * t + k)) {
                    if (owner[index(point)] < 0) {
                        owner[index(point)] = fan;
                        fan_point_.emplace_back(fan, point);
                    } else {
                        fan_point_.emplace_back(fan, static_cast<int>(mesh_.points.size()));
                        mesh_.points.push_back(Point3(mesh_.points[index(point)]));
                        owner.push_back(fan);
                    }
                }
            }
        std::vector<int> point_of(3 * triangles.size(), -1);
        for (const auto& [fan, point] : fan_point_)
            point_of[index(fan)] = point;
        for (std::size_t t = 0; t < triangles.size(); ++t)
            for (std::size_t k = 0; k < 3; ++k)
                triangles[t][k] = point_of[index(fans.first_of(static_cast<int>(3 * t + k)))];
    }

    bool is_a_disc(const Surface& surface) {
        const char* const cut = "cut it open in the scan, where a seam may lie";
        if (surface.loops.empty())
            return fails("is closed all round", cut);
        const auto edges = (3 * surface.triangles.size() + boundary_sides(surface)) / 2;
        const auto euler =
            static_cast<std::ptrdiff_t>(surface.points.size() + surface.triangles.size()) -
            static_cast<std::ptrdiff_t>(edges);
        if (euler != 2 - static_cast<std::ptrdiff_t>(surface.loops.size()))
            return fails("has a tunnel or a handle", "cut it open in the scan");
        if (surface.loops.size() > 1 &&
            length_of(surface.points, surface.loops[1]) >
                longest_hole * length_of(surface.points, surface.loops[0]))
            return fails("is a ring: its second rim is longer than half of its first", cut);
        return true;
    }

    static std::size_t boundary_sides(const Surface& surface) {
        std::size_t sides = 0;
        for (const std::vector<int>& loop : surface.loops)
            sides += loop.size();
        return sides;
    }

    struct Neighbour {
        int triangle;
        bool turned;
    };
    Mesh mesh_;
    std::vector<std::vector<Neighbour>> neighbours_;
    std::vector<int> part_;
    int parts_ = 0;
    std::vector<std::pair<int, int>> fan_point_;
    SurfaceFound found_;
};

} // namespace

SurfaceFound surface_of(Mesh mesh) {
    return Mending(std::move(mesh)).run();
}

double area_of(const std::vector<Point3>& points, const std::vector<Triangle>& triangles) {
    double sum = 0;
    for (const Triangle& t : triangles) {
        const Point3 o = points[index(t[0])];
        sum += norm(cross(points[index(t[1])] - o, points[index(t[2])] - o));
    }
    return sum / 2;
}

double length_of(const std::vector<Point3>& points, const std::vector<int>& loop) {
    double sum = 0;
    for (std::size_t i = 0; i < loop.size(); ++i)
        sum += distance(points[index(loop[i])], points[index(loop[(i + 1) % loop.size()])]);
    return sum;
}

std::vector<std::vector<int>> loops_of(const std::vector<Point3>& points,
                                       const std::vector<Triangle>& triangles) {
    const std::vector<Side> sides = sides_of(triangles);
    std::vector<int> next(points.size(), -1);
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const bool alone = (i == 0 || !same_edge(sides[i - 1], sides[i])) &&
                           (i + 1 == sides.size() || !same_edge(sides[i], sides[i + 1]));
        if (!alone)
            continue;
        const Side& s = sides[i];
        next[index(s.rising ? s.low : s.high)] = s.rising ? s.high : s.low;
    }
    std::vector<std::vector<int>> loops;
    for (std::size_t start = 0; start < next.size(); ++start) {
        if (next[start] < 0)
            continue;
        std::vector<int>& loop = loops.emplace_back();
        for (int at = static_cast<int>(start); at >= 0 && next[index(at)] >= 0;) {
            loop.push_back(at);
            at = std::exchange(next[index(at)], -1);
        }
    }
    std::stable_sort(loops.begin(), loops.end(), [&](const auto& a, const auto& b) {
        return length_of(points, a) > length_of(points, b);
    });
    return loops;
}

} // namespace pelt::geometry
