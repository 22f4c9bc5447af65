// SPDX-License-Identifier: MIT
#include "develop/inlays.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <string>

namespace pelt::develop {
namespace {

/// Overlaps up to this come from rounding to the grid, mm².
constexpr double touching_mm2 = 1;

std::vector<Polygon> region_of(const BlankInlay& inlay) {
    const Box box{geometry::on_grid(inlay.low), geometry::on_grid(inlay.high)};
    return {{geometry::rectangle(box), {}}};
}

std::vector<Polygon> region_of(const BlankOpening& opening) {
    Ring ring = geometry::on_grid(opening.ring.points);
    std::reverse(ring.begin(), ring.end());
    return {{ring, {}}};
}

bool matters(const std::vector<Polygon>& region) {
    return to_mm2(geometry::doubled_area(region)) > touching_mm2;
}

/// What stands in the inlay's way, in words; empty: nothing.
std::string obstacle(const Blank& blank, const BlankInlay& inlay) {
    const std::vector<Polygon> region = region_of(inlay);
    const std::vector<Polygon> outline{{geometry::on_grid(blank.outline.points), {}}};
    if (matters(geometry::subtract(region, outline)))
        return "runs out of the panel's outline";
    for (const BlankOpening& opening : blank.openings)
        if (matters(geometry::intersect(region, region_of(opening))))
            return "runs into the opening '" + opening.name + "'";
    for (const BlankInlay& other : blank.inlays)
        if (matters(geometry::intersect(region, region_of(other))))
            return "runs into the inlay '" + other.name + "'";
    return "";
}

} // namespace

void add_inlays(const Panel& panel, Point scale, Blank& blank, Faults& faults) {
    for (const Inlay& inlay : panel.inlays) {
        const Point half{inlay.wide_mm / 2, inlay.high_mm / 2};
        const BlankInlay developed{
            inlay.name,
            {scale.x * (inlay.at.x - half.x), scale.y * (inlay.at.y - half.y)},
            {scale.x * (inlay.at.x + half.x), scale.y * (inlay.at.y + half.y)}};
        const std::string in_the_way = obstacle(blank, developed);
        if (!in_the_way.empty())
            faults.push_back(
                {Severity::file, inlay.place, panel.name,
                 "the inlay '" + inlay.name + "' " + in_the_way,
                 "'at' is its center, 'size' its width and height without the overlap"});
        blank.inlays.push_back(developed);
    }
}

} // namespace pelt::develop
