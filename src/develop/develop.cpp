// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"

#include <cmath>

namespace pelt::develop {

DevelopedPanel develop(const Panel& panel, Faults& faults) {
    DevelopedPanel out;
    const auto* outline = std::get_if<OutlineForm>(&panel.form);
    if (outline == nullptr) {
        faults.push_back(
            {Severity::file, panel.place, panel.name, "has a form that is not known yet", ""});
        return out;
    }
    Blank blank;
    const std::size_t n = outline->segments.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point a = outline->segments[i].to;
        const Point b = outline->segments[(i + 1) % n].to;
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        blank.outline.points.push_back(a);
        blank.outline.edge.push_back(static_cast<int>(i));
        blank.edges.push_back({std::to_string(i + 1) + "-" + std::to_string((i + 1) % n + 1),
                               "",
                               {(b.y - a.y) / length, (a.x - b.x) / length},
                               false});
    }
    out.blanks.push_back(std::move(blank));
    return out;
}

} // namespace pelt::develop
