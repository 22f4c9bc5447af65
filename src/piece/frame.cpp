// SPDX-License-Identifier: MIT
#include "piece/frame.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>

namespace pelt::piece {
namespace {

Ring mirrored_ring(const Ring& ring) {
    Ring out;
    out.reserve(ring.size());
    for (auto p = ring.rbegin(); p != ring.rend(); ++p)
        out.push_back({p->x, -p->y});
    return out;
}

} // namespace

std::optional<Heading> heading_of(const Panel& panel, const Film& film) {
    if (panel.forward)
        return panel.forward;
    switch (panel.sides) {
    case Sides::left:
    case Sides::both:
        return Heading::left;
    case Sides::right:
        return Heading::right;
    case Sides::centre:
        break;
    }
    if (panel.direction.value_or(film.direction) == Direction::any)
        return Heading::right;
    return std::nullopt;
}

Turn to_piece_frame(Heading heading) {
    switch (heading) {
    case Heading::right:
        return no_turn;
    case Heading::up:
        return three_quarter_turn;
    case Heading::left:
        return half_turn;
    case Heading::down:
        break;
    }
    return quarter_turn;
}

Point in_piece_frame(Point p, Heading heading) {
    switch (heading) {
    case Heading::right:
        return p;
    case Heading::up:
        return {p.y, -p.x};
    case Heading::left:
        return {-p.x, -p.y};
    case Heading::down:
        break;
    }
    return {-p.y, p.x};
}

Point from_piece_frame(Point p, Heading heading) {
    switch (heading) {
    case Heading::right:
        return p;
    case Heading::up:
        return {-p.y, p.x};
    case Heading::left:
        return {-p.x, -p.y};
    case Heading::down:
        break;
    }
    return {p.y, -p.x};
}

Polygon mirrored(const Polygon& polygon) {
    Polygon out{mirrored_ring(polygon.outer), {}};
    for (const Ring& hole : polygon.holes)
        out.holes.push_back(mirrored_ring(hole));
    return geometry::normalised(std::move(out));
}

} // namespace pelt::piece
