// SPDX-License-Identifier: MIT
#include "develop/surface/as_drawn.hpp"

#include "geometry/space.hpp"

#include <algorithm>
#include <limits>

namespace pelt::develop {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

Flat as_drawn(const Sheet3& sheet, const Patch& patch, const SurfaceForm& form, Flat flat) {
    const std::vector<Linear> maps = patch.maps(flat);
    Cx up;
    for (std::size_t t = 0; t < sheet.own; ++t) {
        const Triangle& corners = sheet.triangles[t];
        const Point3 origin = sheet.points[index(corners[0])];
        const Point3 x = geometry::unit(sheet.points[index(corners[1])] - origin);
        const Point3 normal =
            geometry::unit(geometry::cross(x, sheet.points[index(corners[2])] - origin));
        const Cx v{geometry::dot(form.upward, x),
                   geometry::dot(form.upward, geometry::cross(normal, x))};
        up = up + patch.facets()[t].area * (maps[t].z * v + maps[t].w * conjugate(v));
    }
    const Cx turn = Cx{0, 1} * conjugate(unit(up));
    Cx low{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    for (Cx& u : flat) {
        u = turn * u;
        low = {std::min(low.re, u.re), std::min(low.im, u.im)};
    }
    for (Cx& u : flat)
        u = u - low;
    return flat;
}

} // namespace pelt::develop
