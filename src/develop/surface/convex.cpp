// SPDX-License-Identifier: MIT
#include "develop/surface/convex.hpp"

#include "develop/outline.hpp"

#include <algorithm>

namespace pelt::develop {

bool nearly_convex(const std::vector<Point>& ring) {
    std::vector<Point> points = ring;
    std::sort(points.begin(), points.end(),
              [](Point a, Point b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    std::vector<Point> hull;
    for (int pass = 0; pass < 2; ++pass) {
        const std::size_t base = hull.size();
        for (const Point& p : points) {
            while (hull.size() >= base + 2) {
                const Point a = hull[hull.size() - 2];
                const Point b = hull.back();
                if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0)
                    break;
                hull.pop_back();
            }
            hull.push_back(p);
        }
        hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return doubled_area(ring) >= .98 * doubled_area(hull);
}

} // namespace pelt::develop
