// SPDX-License-Identifier: MIT
#include "develop/surface/stretch_map.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::develop {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

StretchMap map_of(const Sheet3& sheet, const Patch& patch, const Flat& flat) {
    StretchMap out;
    const std::vector<Linear> maps = patch.maps(flat);
    const Range range = range_of(patch, maps);
    for (std::size_t t = 0; t < sheet.own; ++t) {
        const auto at = [&](std::size_t k) {
            const Cx u = flat[index(sheet.triangles[t][k])];
            return Point{u.re, u.im};
        };
        const double percent = 100 * (range.largest / maps[t].smaller() - 1);
        out.cells.push_back({{at(0), at(1), at(2)}, percent});
        if (t > 0 && percent <= out.peak_percent)
            continue;
        out.peak_percent = percent;
        const auto& c = out.cells.back().corners;
        out.peak = {(c[0].x + c[1].x + c[2].x) / 3, (c[0].y + c[1].y + c[2].y) / 3};
        // Film pulls most along the smaller singular direction, square to half the angle of z w.
        const Cx doubled = unit(maps[t].z * maps[t].w);
        const double s = std::sqrt(std::max(0.0, (1 + doubled.re) / 2));
        const double c2 = std::sqrt(std::max(0.0, (1 - doubled.re) / 2));
        out.pull = {doubled.im < 0 ? c2 : -c2, s};
    }
    if (out.pull.x < 0 && out.pull.y < out.pull.x * -1e-9)
        out.pull = {-out.pull.x, -out.pull.y};
    return out;
}

} // namespace pelt::develop
