// SPDX-License-Identifier: MIT
#include "read/flat_ring.hpp"

#include "geometry/predicates.hpp"
#include "model/limits.hpp"
#include "read/outline.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt::read {
namespace {

/// A circular arc from one point to another.
struct Arc {
    Point centre;
    double radius = 0;
    double start = 0; ///< angle of the first point
    double sweep = 0; ///< signed, counter-clockwise positive

    double chords() const {
        const double sagitta = std::min(1.0, arc_tolerance_mm / radius);
        return std::max(1.0, std::ceil(std::abs(sweep) / (2 * std::acos(1 - sagitta))));
    }
    Point at(double share) const {
        const double angle = start + share * sweep;
        return {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
    }
};

/// The circle through three points that are not on one line, by the perpendicular bisectors.
Arc arc_through(Point from, Point through, Point to) {
    const double bx = through.x - from.x;
    const double by = through.y - from.y;
    const double cx = to.x - from.x;
    const double cy = to.y - from.y;
    const double doubled = 2 * (bx * cy - by * cx);
    const double b2 = bx * bx + by * by;
    const double c2 = cx * cx + cy * cy;
    const double ux = (cy * b2 - by * c2) / doubled;
    const double uy = (bx * c2 - cx * b2) / doubled;
    Arc arc;
    arc.centre = {from.x + ux, from.y + uy};
    arc.radius = std::hypot(ux, uy);
    arc.start = std::atan2(-uy, -ux);
    arc.sweep = std::atan2(cy - uy, cx - ux) - arc.start;
    constexpr double whole = 2 * std::numbers::pi;
    const bool left = doubled > 0; // from, through, to turn left: counter-clockwise
    if (left && arc.sweep <= 0)
        arc.sweep += whole;
    if (!left && arc.sweep >= 0)
        arc.sweep -= whole;
    return arc;
}

void add(FlatRing& flat, GridPoint p, std::size_t segment) {
    if (!flat.ring.empty() && flat.ring.back() == p)
        return;
    if (!flat.ring.empty())
        flat.segment.push_back(segment);
    flat.ring.push_back(p);
}

void add(Ring& ring, GridPoint p) {
    if (ring.empty() || ring.back() != p)
        ring.push_back(p);
}

} // namespace

std::optional<FlatRing> flat_ring(const OutlineForm& form) {
    FlatRing flat;
    const std::size_t n = form.segments.size();
    double points = static_cast<double>(n);
    if (n > limit::outline_points)
        return std::nullopt;
    add(flat, on_grid(form.segments.front().to), 0);
    for (std::size_t i = 1; i <= n; ++i) {
        const std::size_t segment = i % n;
        const OutlineSegment& s = form.segments[segment];
        if (s.through) {
            const Arc arc = arc_through(form.segments[i - 1].to, *s.through, s.to);
            const double chords = arc.chords();
            points += chords;
            if (points > static_cast<double>(limit::outline_points))
                return std::nullopt;
            for (double k = 1; k < chords; ++k)
                add(flat, on_grid(arc.at(k / chords)), segment);
        }
        add(flat, on_grid(s.to), segment);
    }
    if (flat.ring.size() > 1 && flat.ring.back() == flat.ring.front())
        flat.ring.pop_back();
    return flat;
}

Ring flat_ring(const GirthsForm& form) {
    Ring lower;
    Ring upper;
    const auto chain = [&](double at, double up, double down) {
        add(lower, on_grid({at, -down}));
        add(upper, on_grid({at, up}));
    };
    for (std::size_t i = 0; i < form.stations.size(); ++i) {
        const GirthStation& here = form.stations[i];
        if (!form.smooth) {
            chain(here.at_mm, here.up_mm, here.down_mm);
            continue;
        }
        if (i == 0)
            continue;
        // A monotone curve between two stations stays between their heights.
        const GirthStation& before = form.stations[i - 1];
        const double up = std::max(before.up_mm, here.up_mm);
        const double down = std::max(before.down_mm, here.down_mm);
        chain(before.at_mm, up, down);
        chain(here.at_mm, up, down);
    }
    for (auto p = upper.rbegin(); p != upper.rend(); ++p)
        add(lower, *p);
    return lower;
}

bool is_round(const OutlineForm& form) {
    constexpr double share = .01;
    Point low = form.segments.front().to;
    Point high = low;
    const auto stretch = [&](Point p) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    };
    const auto flat = flat_ring(form);
    if (!flat)
        return false;
    for (const GridPoint p : flat->ring)
        stretch({static_cast<double>(p.x) / um_per_mm, static_cast<double>(p.y) / um_per_mm});
    const Point middle{(low.x + high.x) / 2, (low.y + high.y) / 2};
    const double radius = (high.x - low.x) / 2;
    const auto on_circle = [&](Point p) {
        return std::abs(std::hypot(p.x - middle.x, p.y - middle.y) - radius) <= share * radius;
    };
    return std::all_of(form.segments.begin(), form.segments.end(), [&](const OutlineSegment& s) {
        return s.through && on_circle(s.to) && on_circle(*s.through);
    });
}

Ring flat_ring(const Inlay& inlay) {
    const double x = inlay.wide_mm / 2;
    const double y = inlay.high_mm / 2;
    const GridPoint low = on_grid({inlay.at.x - x, inlay.at.y - y});
    const GridPoint high = on_grid({inlay.at.x + x, inlay.at.y + y});
    return {low, {high.x, low.y}, high, {low.x, high.y}};
}

} // namespace pelt::read
