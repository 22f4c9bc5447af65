// SPDX-License-Identifier: MIT
// Are the pieces themselves right: well formed, large enough, the panel's own, the right way round?
#include "verify/checks.hpp"
#include "verify/exact.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace pelt::verify {
namespace {

/// Snapping a point to the grid moves it by less than a step in each axis, a step more in a turn.
constexpr Um snap_tolerance = 2;

const Panel& panel_of(const Job& job, const PieceId& id) {
    return job.vehicles[static_cast<std::size_t>(id.vehicle)]
        .panels[static_cast<std::size_t>(id.panel)];
}

void check_rings(const std::string& who, const Polygon& polygon, Sentences& faults) {
    if (!is_simple(polygon.outer) || twice_area(polygon.outer) <= 0)
        faults.push_back(who + ": its outline is not a simple counter-clockwise ring");
    for (const Ring& hole : polygon.holes) {
        if (!is_simple(hole) || twice_area(hole) >= 0)
            faults.push_back(who + ": a hole is not a simple clockwise ring");
        else if (!ring_within(hole, polygon))
            faults.push_back(who + ": a hole is not inside the outline");
    }
}

struct Extent {
    Um x0, y0, x1, y1;
};
Extent extent_of(const Ring& ring) {
    Extent e{ring.front().x, ring.front().y, ring.front().x, ring.front().y};
    for (const GridPoint& p : ring)
        e = {std::min(e.x0, p.x), std::min(e.y0, p.y), std::max(e.x1, p.x), std::max(e.y1, p.y)};
    return e;
}

void check_rectangle(const Job& job, const std::string& who, const PieceId& id,
                     const Polygon& wrapped, const Polygon& outline, Sentences& faults) {
    const Extent film = extent_of(wrapped.outer);
    const Extent cut = extent_of(outline.outer);
    const Int128 twice_box = 2 * static_cast<Int128>(cut.x1 - cut.x0) * (cut.y1 - cut.y0);
    if (outline.outer.size() != 4 || !outline.holes.empty() ||
        twice_area(outline.outer) != twice_box)
        faults.push_back(who + ": not an upright rectangle");
    const auto& own = panel_of(job, id).allowances.handling;
    const Um least = own ? own->least : job.film.allowances.handling.least;
    if (std::min({film.x0 - cut.x0, film.y0 - cut.y0, cut.x1 - film.x1, cut.y1 - film.y1}) < least)
        faults.push_back(who + ": less than the least margin to grip");
    const Um usable = job.film.width - 2 * job.film.trim;
    for (const Um side : {cut.x1 - cut.x0, cut.y1 - cut.y0})
        if (side % job.film.allowances.ruler != 0 && side != usable)
            faults.push_back(who + ": a side is not a whole number of steps of the ruler");
}

void check_shape(const Job& job, const Piece& piece, Sentences& faults) {
    const PieceId& id = piece.ids.front();
    const std::string who = called(job, id);
    check_rings(who, piece.wrapped, faults);
    for (const CutShape& shape : piece.shapes) {
        check_rings(who, shape.outline, faults);
        if (job.by == CutBy::straight)
            check_rectangle(job, who, id, piece.wrapped, shape.outline, faults);
        else if (!ring_within(piece.wrapped.outer, shape.outline))
            faults.push_back(who + ": cut smaller than what stays on the vehicle");
    }
}

Heading heading_of(const Panel& panel, Side side) {
    if (panel.forward)
        return *panel.forward;
    const bool drawn_as_left = panel.sides == Sides::both || side == Side::left;
    return drawn_as_left ? Heading::left : Heading::right;
}

/// Panel frame to piece frame: forward becomes +x.
GridPoint forward_along(Heading heading, GridPoint p) {
    switch (heading) {
    case Heading::right:
        return p;
    case Heading::up:
        return {p.y, -p.x};
    case Heading::left:
        return {-p.x, -p.y};
    case Heading::down:
        return {-p.y, p.x};
    }
    return p;
}

GridPoint on_grid(Point p) {
    return {std::llround(p.x * 1000.0), std::llround(p.y * 1000.0)};
}

bool in_or_near(GridPoint p, const Ring& ring, Um near) {
    if (where(p, ring) != Where::outside)
        return true;
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (!segments_apart(p, p, ring[i], ring[i + 1 == ring.size() ? 0 : i + 1], near + 1))
            return true;
    return false;
}

/// How far inside the panel's edge the film may end at a corner: both edges may end short there.
Um slack_of(const Panel& panel) {
    Um stop = 0;
    for (const EdgeRule& rule : panel.edges)
        stop = std::max(stop, rule.stop.value_or(0));
    return snap_tolerance + 2 * stop;
}

bool covered(const Blank& blank, Heading heading, bool mirrored, Um slack,
             const std::vector<const Piece*>& parts) {
    return std::all_of(blank.outline.points.begin(), blank.outline.points.end(),
                       [&](const Point& point) {
                           GridPoint p = forward_along(heading, on_grid(point));
                           if (mirrored)
                               p.y = -p.y;
                           return std::any_of(parts.begin(), parts.end(), [&](const Piece* part) {
                               return in_or_near(p, part->wrapped.outer, slack);
                           });
                       });
}

/// One panel's side and copy, as the parts that cover it.
using Key = std::tuple<int, int, Side, int>;
using PartsOf = std::map<Key, std::vector<const Piece*>>;

PartsOf main_parts(const Job& job) {
    PartsOf out;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            if (id.kind == PieceKind::main)
                out[{id.vehicle, id.panel, id.side, id.copy}].push_back(&piece);
    return out;
}

/// An inner face is the mirror image of the outer one, so with two faces either way round is right.
void check_covering(const Job& job, const PartsOf& parts_of, Sentences& faults) {
    for (const auto& [key, parts] : parts_of) {
        const auto [v, p, side, copy] = key;
        const PieceId id{v, p, side, copy, 1, 1, PieceKind::main, ""};
        const Panel& panel = panel_of(job, id);
        const DevelopedPanel& developed =
            job.developed[static_cast<std::size_t>(v)][static_cast<std::size_t>(p)];
        const bool mirrored = panel.sides == Sides::both && side == Side::right;
        const Heading heading = heading_of(panel, side);
        const Um slack = slack_of(panel);
        for (const Blank& blank : developed.blanks)
            if (!covered(blank, heading, mirrored, slack, parts) &&
                !(panel.faces == 2 && covered(blank, heading, !mirrored, slack, parts)))
                faults.push_back(called(job, id) + ": its film does not cover the panel");
    }
}

Ring mirrored_ring(const Ring& ring) {
    Ring out(ring.rbegin(), ring.rend());
    for (GridPoint& p : out)
        p.y = -p.y;
    return out;
}

bool same_ring(const Ring& a, const Ring& b) {
    if (a.size() != b.size())
        return false;
    const auto start = std::find(b.begin(), b.end(), a.front());
    if (start == b.end())
        return false;
    Ring turned(start, b.end());
    turned.insert(turned.end(), b.begin(), start);
    return a == turned;
}

void check_mirror_images(const Job& job, const PartsOf& parts_of, Sentences& faults) {
    for (const auto& [key, parts] : parts_of) {
        const auto [v, p, side, copy] = key;
        const auto twin = parts_of.find({v, p, Side::right, copy});
        if (side != Side::left || twin == parts_of.end() || parts.size() != 1 ||
            twin->second.size() != 1)
            continue;
        if (!same_ring(mirrored_ring(parts.front()->wrapped.outer),
                       twin->second.front()->wrapped.outer))
            faults.push_back("panel '" +
                             panel_of(job, {v, p, side, copy, 1, 1, PieceKind::main, ""}).name +
                             "': left and right are not mirror images");
    }
}

} // namespace

void check_pieces(const Job& job, Sentences& faults) {
    if (job.developed.size() != job.vehicles.size()) {
        faults.emplace_back("not every vehicle was developed");
        return;
    }
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        if (job.developed[v].size() != job.vehicles[v].panels.size()) {
            faults.emplace_back("not every panel was developed");
            return;
        }
    for (const Piece& piece : job.pieces)
        if (!piece.ids.empty())
            check_shape(job, piece, faults);
    const PartsOf parts_of = main_parts(job);
    check_covering(job, parts_of, faults);
    check_mirror_images(job, parts_of, faults);
}

} // namespace pelt::verify
