// SPDX-License-Identifier: MIT
#include "report/stretch_shades.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

namespace pelt::report {
namespace {

using Key = std::pair<double, double>;

Key key_of(Point p) {
    return {p.x, p.y};
}

double area_of(const StretchMap::Cell& cell) {
    const auto& c = cell.corners;
    return std::abs((c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[2].x - c[0].x) * (c[1].y - c[0].y)) /
           2;
}

std::map<Key, double> evened_out(const StretchMap& map) {
    struct Sum {
        double area = 0;
        double moment = 0;
    };
    std::map<Key, Sum> sums;
    for (const StretchMap::Cell& cell : map.cells)
        for (const Point& corner : cell.corners) {
            Sum& sum = sums[key_of(corner)];
            sum.area += area_of(cell);
            sum.moment += area_of(cell) * cell.percent;
        }
    std::map<Key, double> out;
    for (const auto& [key, sum] : sums)
        out[key] = sum.area > 0 ? sum.moment / sum.area : 0;
    return out;
}

/// A point and its stretch.
struct Spot {
    Point at;
    double percent = 0;
};

/// What of a convex ring lies above the level, or below it where `sign` is -1 (I. Sutherland, G.
/// Hodgman 1974).
std::vector<Spot> clipped(const std::vector<Spot>& ring, double level, double sign) {
    std::vector<Spot> out;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Spot& a = ring[i];
        const Spot& b = ring[(i + 1) % ring.size()];
        const double da = sign * (a.percent - level);
        const double db = sign * (b.percent - level);
        if (da >= 0)
            out.push_back(a);
        if ((da > 0 && db < 0) || (da < 0 && db > 0)) {
            const double share = da / (da - db);
            out.push_back(
                {{a.at.x + share * (b.at.x - a.at.x), a.at.y + share * (b.at.y - a.at.y)}, level});
        }
    }
    return out;
}

} // namespace

std::vector<Shade> shades_of(const StretchMap& map, double step, int bands) {
    const std::map<Key, double> percent = evened_out(map);
    std::vector<Shade> out;
    for (const StretchMap::Cell& cell : map.cells) {
        std::vector<Spot> spots;
        double least = std::numeric_limits<double>::infinity();
        double most = -least;
        for (const Point& corner : cell.corners) {
            spots.push_back({corner, percent.at(key_of(corner))});
            least = std::min(least, spots.back().percent);
            most = std::max(most, spots.back().percent);
        }
        const auto band_of = [&](double value) {
            return std::clamp(static_cast<int>(value / step), 0, bands - 1);
        };
        for (int band = band_of(least); band <= band_of(most); ++band) {
            std::vector<Spot> part = spots;
            if (band > 0)
                part = clipped(part, band * step, 1);
            if (band + 1 < bands)
                part = clipped(part, (band + 1) * step, -1);
            if (part.size() < 3)
                continue;
            Shade shade{band, {}};
            for (const Spot& spot : part)
                shade.ring.push_back(spot.at);
            out.push_back(std::move(shade));
        }
    }
    return out;
}

std::vector<std::array<Point, 2>> rim_of(const StretchMap& map) {
    std::map<std::pair<Key, Key>, int> sides;
    const auto each_side = [&](const auto& visit) {
        for (const StretchMap::Cell& cell : map.cells)
            for (std::size_t k = 0; k < 3; ++k)
                visit(cell.corners[k], cell.corners[(k + 1) % 3]);
    };
    const auto side_of = [](Point a, Point b) {
        const Key one = key_of(a);
        const Key other = key_of(b);
        return one < other ? std::pair{one, other} : std::pair{other, one};
    };
    each_side([&](Point a, Point b) { ++sides[side_of(a, b)]; });
    std::vector<std::array<Point, 2>> out;
    each_side([&](Point a, Point b) {
        if (sides[side_of(a, b)] == 1)
            out.push_back({a, b});
    });
    return out;
}

} // namespace pelt::report
