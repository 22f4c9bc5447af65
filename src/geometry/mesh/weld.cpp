// SPDX-License-Identifier: MIT
#include "geometry/mesh/weld.hpp"

#include "geometry/space.hpp"

#include <algorithm>
#include <cstdint>
#include <numeric>
#include <unordered_map>
#include <utility>

namespace pelt::geometry {
namespace {

constexpr double near_share = 1e-6;     ///< of the diagonal
constexpr double no_area_share = 1e-12; ///< of the mean area

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

struct Cell {
    std::int64_t x, y, z;
    friend bool operator==(const Cell&, const Cell&) = default;
};
struct CellHash {
    std::size_t operator()(const Cell& c) const {
        auto h = static_cast<std::uint64_t>(c.x) * 0x9e3779b97f4a7c15ULL;
        h = (h ^ (h >> 29) ^ static_cast<std::uint64_t>(c.y)) * 0xbf58476d1ce4e5b9ULL;
        h = (h ^ (h >> 32) ^ static_cast<std::uint64_t>(c.z)) * 0x94d049bb133111ebULL;
        return h ^ (h >> 31);
    }
};

/// The first point near to each one.
class Welder {
public:
    explicit Welder(const std::vector<Point3>& points) : points_(points) {
        low_ = points.front();
        Point3 high = low_;
        for (const Point3& p : points) {
            low_ = {std::min(low_.x, p.x), std::min(low_.y, p.y), std::min(low_.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
        near_ = near_share * distance(low_, high);
    }

    std::vector<int> firsts() {
        std::vector<int> first(points_.size());
        std::iota(first.begin(), first.end(), 0);
        if (!(near_ > 0))
            return std::vector<int>(points_.size(), 0);
        cells_.reserve(points_.size());
        for (std::size_t i = 0; i < points_.size(); ++i)
            first[i] = first_near(static_cast<int>(i));
        return first;
    }

private:
    Cell cell_of(Point3 p) const {
        const Point3 q = (1 / (2 * near_)) * (p - low_);
        return {static_cast<std::int64_t>(std::floor(q.x)),
                static_cast<std::int64_t>(std::floor(q.y)),
                static_cast<std::int64_t>(std::floor(q.z))};
    }

    /// A point within reach lies in one of the eight cells around the corners of its reach.
    int first_near(int i) {
        const Point3 p = points_[index(i)];
        for (int corner = 0; corner < 8; ++corner) {
            const Point3 reach{corner & 1 ? near_ : -near_, corner & 2 ? near_ : -near_,
                               corner & 4 ? near_ : -near_};
            const auto found = cells_.find(cell_of(p + reach));
            if (found != cells_.end() && distance(points_[index(found->second)], p) <= near_)
                return found->second;
        }
        cells_.emplace(cell_of(p), i);
        return i;
    }

    const std::vector<Point3>& points_;
    Point3 low_;
    double near_ = 0;
    std::unordered_map<Cell, int, CellHash> cells_;
};

Triangle sorted(Triangle t) {
    std::sort(t.begin(), t.end());
    return t;
}

void drop_useless(std::vector<Triangle>& triangles) {
    std::erase_if(triangles,
                  [](const Triangle& t) { return t[0] == t[1] || t[1] == t[2] || t[2] == t[0]; });
    std::vector<std::size_t> order(triangles.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const Triangle x = sorted(triangles[a]);
        const Triangle y = sorted(triangles[b]);
        return x != y ? x < y : a < b;
    });
    std::vector<bool> twice(triangles.size(), false);
    for (std::size_t i = 1; i < order.size(); ++i)
        twice[order[i]] = sorted(triangles[order[i]]) == sorted(triangles[order[i - 1]]);
    std::size_t kept = 0;
    for (std::size_t i = 0; i < triangles.size(); ++i)
        if (!twice[i])
            triangles[kept++] = triangles[i];
    triangles.resize(kept);
}

double doubled_area(const std::vector<Point3>& points, const Triangle& t) {
    const Point3 o = points[index(t[0])];
    return norm(cross(points[index(t[1])] - o, points[index(t[2])] - o));
}

/// For every triangle without area the ends of its shortest side are to be one point; true if any.
bool close_flat_ones(const Mesh& mesh, std::vector<int>& first) {
    double sum = 0;
    for (const Triangle& t : mesh.triangles)
        sum += doubled_area(mesh.points, t);
    const double least = no_area_share * sum / static_cast<double>(mesh.triangles.size());
    bool any = false;
    std::iota(first.begin(), first.end(), 0);
    for (const Triangle& t : mesh.triangles) {
        if (doubled_area(mesh.points, t) > least)
            continue;
        std::size_t shortest = 0;
        const auto side = [&](std::size_t k) {
            return distance(mesh.points[index(t[k])], mesh.points[index(t[(k + 1) % 3])]);
        };
        for (std::size_t k = 1; k < 3; ++k)
            if (side(k) < side(shortest))
                shortest = k;
        const auto [a, b] =
            std::minmax(first[index(t[shortest])], first[index(t[(shortest + 1) % 3])]);
        if (first[index(b)] == b)
            first[index(b)] = a;
        any = true;
    }
    return any;
}

/// The last name of a chain of them. The chain is shortened on the way: a scan of slivers can make
/// it as long as the scan has points, and every one of them asks for its end.
int last_name(std::vector<int>& name, int point) {
    int last = point;
    while (name[index(last)] != last)
        last = name[index(last)];
    while (point != last)
        point = std::exchange(name[index(point)], last);
    return last;
}

void rename(std::vector<Triangle>& triangles, std::vector<int>& name) {
    for (Triangle& t : triangles)
        for (int& corner : t)
            corner = last_name(name, corner);
}

void drop_unused(Mesh& mesh) {
    std::vector<int> place(mesh.points.size(), -1);
    for (const Triangle& t : mesh.triangles)
        for (const int corner : t)
            place[index(corner)] = 0;
    int kept = 0;
    for (std::size_t i = 0; i < place.size(); ++i)
        if (place[i] == 0) {
            place[i] = kept;
            mesh.points[index(kept++)] = mesh.points[i];
        }
    mesh.points.resize(index(kept));
    for (Triangle& t : mesh.triangles)
        for (int& corner : t)
            corner = place[index(corner)];
}

} // namespace

void weld(Mesh& mesh) {
    constexpr int most_rounds = 8;
    if (mesh.points.empty())
        return;
    std::vector<int> first = Welder(mesh.points).firsts();
    rename(mesh.triangles, first);
    drop_useless(mesh.triangles);
    for (int round = 0; round < most_rounds && !mesh.triangles.empty(); ++round) {
        if (!close_flat_ones(mesh, first))
            break;
        rename(mesh.triangles, first);
        drop_useless(mesh.triangles);
    }
    drop_unused(mesh);
}

} // namespace pelt::geometry
