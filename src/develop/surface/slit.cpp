// SPDX-License-Identifier: MIT
#include "develop/surface/slit.hpp"

#include "geometry/mesh/groups.hpp"
#include "geometry/mesh/mesh.hpp"
#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <utility>

namespace pelt::develop {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

using Edge = std::pair<int, int>;

Edge edge_of(int a, int b) {
    return {std::min(a, b), std::max(a, b)};
}

/// Triangles and their layout, divided along one line after another.
class Divided {
public:
    Divided(const Sheet3& sheet, const Flat& flat) : points_(sheet.points), flat_(flat) {
        for (std::size_t t = 0; t < sheet.triangles.size(); ++t)
            triangles_.push_back({sheet.triangles[t], t < sheet.own});
        for (const Cx& u : flat)
            low_y_ = std::min(low_y_, u.im);
        for (const Cx& u : flat)
            high_y_ = std::max(high_y_, u.im);
    }

    void along(const Slit& slit) {
        off_ = distances(slit);
        snap();
        middles_.clear();
        std::vector<Corner> before;
        before.swap(triangles_);
        for (const Corner& t : before)
            divide(t);
        note_slit_edges(slit);
    }

    /// Parted where edges were slit.
    std::optional<SlitSheet> parts(const Sheet3& whole) const {
        const std::vector<int> part_of = components();
        const int count = 1 + *std::max_element(part_of.begin(), part_of.end());
        SlitSheet out;
        for (int p = 0; p < count; ++p) {
            auto part = opened(part_of, p);
            if (!part)
                return std::nullopt;
            part->trusted = whole.trusted;
            const std::vector<Triangle> own(part->triangles.begin(),
                                            part->triangles.begin() +
                                                static_cast<std::ptrdiff_t>(part->own));
            out.areas.push_back(geometry::area_of(part->points, own));
            out.parts.push_back(std::move(*part));
        }
        measure(out);
        return out;
    }

private:
    struct Corner {
        Triangle at;
        bool own;
    };

    Point in_layout(int point) const { return {flat_[index(point)].re, flat_[index(point)].im}; }

    std::vector<double> distances(const Slit& slit) const {
        const Cx a{slit[0].x, slit[0].y};
        const Cx way = unit(Cx{slit[1].x, slit[1].y} - a);
        std::vector<double> out;
        for (const Cx& u : flat_)
            out.push_back((conjugate(way) * (u - a)).im);
        return out;
    }

    void snap() {
        constexpr double near = .2;
        std::vector<double> shortest(points_.size(), std::numeric_limits<double>::infinity());
        for (const Corner& t : triangles_)
            for (std::size_t k = 0; k < 3; ++k) {
                const int a = t.at[k];
                const int b = t.at[(k + 1) % 3];
                const double side = size(flat_[index(a)] - flat_[index(b)]);
                shortest[index(a)] = std::min(shortest[index(a)], side);
                shortest[index(b)] = std::min(shortest[index(b)], side);
            }
        for (std::size_t i = 0; i < points_.size(); ++i)
            if (std::abs(off_[i]) < near * shortest[i])
                off_[i] = 0;
    }

    int middle(int a, int b) {
        const auto [at, is_new] =
            middles_.try_emplace(edge_of(a, b), static_cast<int>(points_.size()));
        if (is_new) {
            const auto [i, j] = std::pair(index(at->first.first), index(at->first.second));
            const double share = off_[i] / (off_[i] - off_[j]);
            points_.push_back(points_[i] + share * (points_[j] - points_[i]));
            flat_.push_back(flat_[i] + share * (flat_[j] - flat_[i]));
            off_.push_back(0);
            if (slit_.erase(at->first) > 0) {
                slit_.insert(edge_of(at->first.first, at->second));
                slit_.insert(edge_of(at->first.second, at->second));
            }
        }
        return at->second;
    }

    bool crossed(int a, int b) const { return off_[index(a)] * off_[index(b)] < 0; }

    void divide(const Corner& t) {
        // Turned so that its first corner is the one that the line parts from the others, or lies
        // on.
        Triangle c = t.at;
        const auto count = [&] {
            return int{crossed(c[0], c[1])} + int{crossed(c[1], c[2])} + int{crossed(c[2], c[0])};
        };
        const int sides = count();
        if (sides == 0) {
            triangles_.push_back(t);
            return;
        }
        if (sides == 1) {
            while (!crossed(c[1], c[2]))
                std::rotate(c.begin(), c.begin() + 1, c.end());
            const int m = middle(c[1], c[2]);
            triangles_.push_back({{c[0], c[1], m}, t.own});
            triangles_.push_back({{c[0], m, c[2]}, t.own});
            return;
        }
        while (crossed(c[1], c[2]))
            std::rotate(c.begin(), c.begin() + 1, c.end());
        const int m = middle(c[0], c[1]);
        const int n = middle(c[2], c[0]);
        triangles_.push_back({{c[0], m, n}, t.own});
        if (size(flat_[index(m)] - flat_[index(c[2])]) <
            size(flat_[index(n)] - flat_[index(c[1])])) {
            triangles_.push_back({{m, c[1], c[2]}, t.own});
            triangles_.push_back({{m, c[2], n}, t.own});
        } else {
            triangles_.push_back({{m, c[1], n}, t.own});
            triangles_.push_back({{n, c[1], c[2]}, t.own});
        }
    }

    void note_slit_edges(const Slit& slit) {
        const Cx a{slit[0].x, slit[0].y};
        const Cx b{slit[1].x, slit[1].y};
        const Cx way = unit(b - a);
        const double length = size(b - a);
        for (const Corner& t : triangles_)
            for (std::size_t k = 0; k < 3; ++k) {
                const int i = t.at[k];
                const int j = t.at[(k + 1) % 3];
                if (off_[index(i)] != 0 || off_[index(j)] != 0)
                    continue;
                const Cx middle = .5 * (flat_[index(i)] + flat_[index(j)]);
                const double at = (conjugate(way) * (middle - a)).re;
                if (at > 0 && at < length)
                    slit_.insert(edge_of(i, j));
            }
    }

    std::vector<int> components() const {
        geometry::Groups groups(triangles_.size());
        std::map<Edge, int> first;
        for (std::size_t t = 0; t < triangles_.size(); ++t)
            for (std::size_t k = 0; k < 3; ++k) {
                const Edge e = edge_of(triangles_[t].at[k], triangles_[t].at[(k + 1) % 3]);
                if (slit_.count(e) > 0)
                    continue;
                const auto [at, is_new] = first.try_emplace(e, static_cast<int>(t));
                if (!is_new)
                    groups.join(static_cast<int>(t), at->second);
            }
        std::map<int, int> numbers;
        std::vector<int> out;
        for (std::size_t t = 0; t < triangles_.size(); ++t)
            out.push_back(numbers
                              .try_emplace(groups.first_of(static_cast<int>(t)),
                                           static_cast<int>(numbers.size()))
                              .first->second);
        return out;
    }

    /// The panel's own triangles before those of lids.
    std::vector<Corner> triangles_of(const std::vector<int>& part_of, int part) const {
        std::vector<Corner> out;
        for (const bool own : {true, false})
            for (std::size_t t = 0; t < triangles_.size(); ++t)
                if (part_of[t] == part && triangles_[t].own == own)
                    out.push_back(triangles_[t]);
        return out;
    }

    /// Corners 3 t + k around a point, in groups that no slit parts.
    geometry::Groups fans_of(const std::vector<Corner>& triangles) const {
        geometry::Groups fans(3 * triangles.size());
        std::map<Edge, std::pair<int, int>> first; // the corners of the smaller and the larger end
        for (std::size_t t = 0; t < triangles.size(); ++t)
            for (std::size_t k = 0; k < 3; ++k) {
                const std::size_t n = (k + 1) % 3;
                const Triangle& at = triangles[t].at;
                const Edge e = edge_of(at[k], at[n]);
                if (slit_.count(e) > 0)
                    continue;
                std::pair<int, int> ends{static_cast<int>(3 * t + k), static_cast<int>(3 * t + n)};
                if (at[k] > at[n])
                    std::swap(ends.first, ends.second);
                const auto [known, is_new] = first.try_emplace(e, ends);
                if (is_new)
                    continue;
                fans.join(ends.first, known->second.first);
                fans.join(ends.second, known->second.second);
            }
        return fans;
    }

    /// One part, with a copy of a point for every fan of triangles that slits part.
    std::optional<Sheet3> opened(const std::vector<int>& part_of, int part) const {
        const std::vector<Corner> mine = triangles_of(part_of, part);
        Sheet3 out;
        for (const Corner& t : mine)
            out.own += t.own ? 1 : 0;
        if (out.own == 0)
            return std::nullopt;
        geometry::Groups fans = fans_of(mine);
        std::map<int, int> numbers;
        for (std::size_t t = 0; t < mine.size(); ++t) {
            Triangle made{};
            for (std::size_t k = 0; k < 3; ++k) {
                const auto [at, is_new] = numbers.try_emplace(
                    fans.first_of(static_cast<int>(3 * t + k)), static_cast<int>(numbers.size()));
                made[k] = at->second;
                if (is_new)
                    out.points.push_back(points_[index(mine[t].at[k])]);
            }
            out.triangles.push_back(made);
        }
        const auto loops = geometry::loops_of(out.points, out.triangles);
        if (loops.size() != 1)
            return std::nullopt;
        out.outline = loops.front();
        return out;
    }

    void measure(SlitSheet& out) const {
        const double third = low_y_ + (high_y_ - low_y_) / 3;
        std::set<Edge> told;
        for (const Corner& t : triangles_)
            for (std::size_t k = 0; t.own && k < 3; ++k) {
                const Edge e = edge_of(t.at[k], t.at[(k + 1) % 3]);
                if (slit_.count(e) == 0 || !told.insert(e).second)
                    continue;
                const Point3 a = points_[index(e.first)];
                const Point3 b = points_[index(e.second)];
                out.edges.push_back({in_layout(e.first), in_layout(e.second)});
                const double length = geometry::distance(a, b);
                out.length_mm += length;
                const double y = (flat_[index(e.first)].im + flat_[index(e.second)].im) / 2;
                out.length_over_third += y > third ? length : 0;
            }
    }

    std::vector<Point3> points_;
    Flat flat_;
    std::vector<Corner> triangles_;
    std::set<Edge> slit_;
    double low_y_ = std::numeric_limits<double>::infinity();
    double high_y_ = -std::numeric_limits<double>::infinity();
    std::vector<double> off_;     ///< of every point from the line at hand
    std::map<Edge, int> middles_; ///< of the sides that the line at hand crosses
};

} // namespace

std::optional<SlitSheet> slit_along(const Sheet3& sheet, const Flat& flat,
                                    const std::vector<Slit>& slits) {
    Divided divided(sheet, flat);
    for (const Slit& slit : slits)
        divided.along(slit);
    return divided.parts(sheet);
}

} // namespace pelt::develop
