// SPDX-License-Identifier: MIT
// What a wrong tape reading does to a blank.
#include "develop/crown.hpp"
#include "develop/develop.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt::develop {
namespace {

struct Extents {
    double wide = 0;
    double high = 0;
};

Extents extents_of(const OutlineForm& form) {
    Point low = form.segments.front().to;
    Point high = low;
    const auto take = [&](Point p) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    };
    for (const OutlineSegment& segment : form.segments) {
        take(segment.to);
        if (segment.through)
            take(*segment.through);
    }
    return {high.x - low.x, high.y - low.y};
}

/// Half of what a bow is longer when its chord and its rise were both read too short.
double half_of_the_rest(double chord, double rise, double chord_error, double rise_error) {
    const double h = std::abs(rise);
    return (bow_over(chord + chord_error, h + rise_error).arc - bow_over(chord, h).arc) / 2;
}

ReachBeyond beyond(const OutlineForm& form, const std::optional<Crown>& crown, double reading) {
    const double readings = form.from_size ? reading : 2 * reading;
    const bool has_arcs =
        std::any_of(form.segments.begin(), form.segments.end(),
                    [](const OutlineSegment& s) { return s.through.has_value(); });
    double out = readings / 2;
    if (crown && !crown->measured_over) {
        const Extents size = extents_of(form);
        out = std::max(half_of_the_rest(size.wide, crown->wide_mm, readings, reading),
                       half_of_the_rest(size.high, crown->high_mm, readings, reading));
    }
    constexpr double between_readings = 1.25;
    out *= has_arcs ? between_readings : 1;
    return {out, form.from_size ? out : out * std::numbers::sqrt2};
}

} // namespace

ReachBeyond reach_beyond(const Panel& panel, double reading_mm) {
    if (reading_mm <= 0)
        return {};
    if (const auto* outline = std::get_if<OutlineForm>(&panel.form))
        return beyond(*outline, panel.crown, reading_mm);
    if (std::holds_alternative<SurfaceForm>(panel.form))
        return panel.tolerance ? ReachBeyond{reading_mm, reading_mm} : ReachBeyond{};
    return {reading_mm, reading_mm * std::numbers::sqrt2};
}

} // namespace pelt::develop
