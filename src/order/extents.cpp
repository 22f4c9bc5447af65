// SPDX-License-Identifier: MIT
#include "order/extents.hpp"

#include <algorithm>
#include <variant>
#include <vector>

namespace pelt::order {
namespace {

std::vector<Point> points_of(const Panel& panel) {
    std::vector<Point> points;
    if (const auto* outline = std::get_if<OutlineForm>(&panel.form))
        for (const OutlineSegment& segment : outline->segments) {
            points.push_back(segment.to);
            if (segment.through)
                points.push_back(*segment.through);
        }
    if (const auto* girths = std::get_if<GirthsForm>(&panel.form))
        for (const GirthStation& station : girths->stations) {
            points.push_back({station.at_mm, station.up_mm});
            points.push_back({station.at_mm, -station.down_mm});
        }
    return points;
}

} // namespace

std::optional<Extents> extents_of(const Panel& panel) {
    const std::vector<Point> points = points_of(panel);
    if (points.empty())
        return std::nullopt;
    Extents out{points.front(), points.front()};
    for (const Point& p : points) {
        out.low = {std::min(out.low.x, p.x), std::min(out.low.y, p.y)};
        out.high = {std::max(out.high.x, p.x), std::max(out.high.y, p.y)};
    }
    return out;
}

} // namespace pelt::order
