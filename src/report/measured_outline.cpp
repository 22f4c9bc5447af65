// SPDX-License-Identifier: MIT
#include "report/measured_outline.hpp"

#include "model/monotone_cubic.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

namespace pelt::report {
namespace {

/// The circle through three points by its centre: the crossing of two perpendicular bisectors.
std::optional<Point> centre_of(Point a, Point b, Point c) {
    const double d = 2 * ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
    if (std::abs(d) < 1e-9)
        return std::nullopt;
    const double ab = (b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y);
    const double ac = (c.x - a.x) * (c.x - a.x) + (c.y - a.y) * (c.y - a.y);
    return Point{a.x + ((c.y - a.y) * ab - (b.y - a.y) * ac) / d,
                 a.y + ((b.x - a.x) * ac - (c.x - a.x) * ab) / d};
}

/// Points of the arc after `a`, up to and with `b`.
void add_arc(std::vector<Point>& curve, Point a, Point through, Point b) {
    const std::optional<Point> c = centre_of(a, through, b);
    if (c) {
        constexpr double turn = 2 * std::numbers::pi;
        const double radius = std::hypot(a.x - c->x, a.y - c->y);
        const auto angle = [&](Point p) { return std::atan2(p.y - c->y, p.x - c->x); };
        const bool left = (through.x - a.x) * (b.y - a.y) - (through.y - a.y) * (b.x - a.x) > 0;
        double sweep = angle(b) - angle(a);
        if (left && sweep < 0)
            sweep += turn;
        if (!left && sweep > 0)
            sweep -= turn;
        constexpr int steps = 32;
        for (int i = 1; i < steps; ++i) {
            const double at = angle(a) + sweep * i / steps;
            curve.push_back({c->x + radius * std::cos(at), c->y + radius * std::sin(at)});
        }
    }
    curve.push_back(b);
}

void bound(MeasuredOutline& outline) {
    outline.low = outline.high = outline.curve.front();
    for (const Point& p : outline.curve) {
        outline.low = {std::min(outline.low.x, p.x), std::min(outline.low.y, p.y)};
        outline.high = {std::max(outline.high.x, p.x), std::max(outline.high.y, p.y)};
    }
}

/// The curve through the stations, each `reading` from the spine; straight unless it is smooth.
std::vector<Point> edge_through(const GirthsForm& girths, double GirthStation::*reading,
                                double sign) {
    std::vector<double> at;
    std::vector<double> off;
    for (const GirthStation& s : girths.stations) {
        at.push_back(s.at_mm);
        off.push_back(sign * s.*reading);
    }
    std::vector<Point> edge{{at.front(), off.front()}};
    const MonotoneCubic curve(at, off);
    constexpr int chords = 12;
    for (std::size_t i = 0; i + 1 < at.size(); ++i)
        for (int k = 1; k <= (girths.smooth ? chords : 1); ++k) {
            const double t = static_cast<double>(k) / (girths.smooth ? chords : 1);
            edge.push_back({at[i] + t * (at[i + 1] - at[i]), curve.at(i, t)});
        }
    return edge;
}

MeasuredOutline outline_of(const GirthsForm& girths) {
    MeasuredOutline out;
    out.curve = edge_through(girths, &GirthStation::down_mm, -1);
    const std::vector<Point> upper = edge_through(girths, &GirthStation::up_mm, 1);
    std::vector<Point> spine;
    for (const GirthStation& s : girths.stations) {
        spine.push_back({s.at_mm, 0});
        out.tapes.push_back({{s.at_mm, -s.down_mm}, {s.at_mm, s.up_mm}});
        out.points.push_back({{s.at_mm, s.up_mm}, std::nullopt, GirthReading{"up", s.up_mm}});
        out.points.push_back(
            {{s.at_mm, -s.down_mm}, std::nullopt, GirthReading{"down", s.down_mm}});
        out.points.push_back({{s.at_mm, 0}, std::nullopt, GirthReading{"at", s.at_mm}});
    }
    out.curve.insert(out.curve.end(), upper.rbegin(), upper.rend());
    out.tapes.push_back(std::move(spine));
    bound(out);
    return out;
}

} // namespace

MeasuredOutline measured_outline(const OutlineForm& form) {
    MeasuredOutline out;
    const std::size_t n = form.segments.size();
    for (std::size_t i = 0; i < n; ++i) {
        const OutlineSegment& segment = form.segments[i];
        const Point from = form.segments[(i + n - 1) % n].to;
        const std::size_t before = out.curve.size();
        if (segment.through) {
            out.points.push_back({*segment.through, std::nullopt});
            add_arc(out.curve, from, *segment.through, segment.to);
        } else {
            out.curve.push_back(segment.to);
        }
        out.points.push_back({segment.to, static_cast<int>(i) + 1});
        if (segment.name.empty())
            continue;
        const Point half = segment.through
                               ? out.curve[before + (out.curve.size() - before) / 2]
                               : Point{(from.x + segment.to.x) / 2, (from.y + segment.to.y) / 2};
        out.names.push_back({segment.name, half});
    }
    bound(out);
    return out;
}

MeasuredOutline measured_outline(const Panel& panel) {
    if (const auto* outline = std::get_if<OutlineForm>(&panel.form))
        return measured_outline(*outline);
    if (const auto* girths = std::get_if<GirthsForm>(&panel.form))
        return outline_of(*girths);
    return {};
}

} // namespace pelt::report
