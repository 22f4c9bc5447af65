// SPDX-License-Identifier: MIT
#include "geometry/untangle.hpp"

#include "geometry/predicates.hpp"
#include "geometry/tidy.hpp"

#include <cmath>

namespace pelt::geometry {
namespace {

struct Side {
    GridPoint from;
    GridPoint to;
};

Side side_of(const Ring& ring, std::size_t i) {
    return {ring[i], ring[(i + 1) % ring.size()]};
}

/// Where the lines of two sides cross, to the nearest micrometre.
GridPoint crossing(const Side& a, const Side& b) {
    const auto ax = static_cast<double>(a.to.x - a.from.x);
    const auto ay = static_cast<double>(a.to.y - a.from.y);
    const auto bx = static_cast<double>(b.to.x - b.from.x);
    const auto by = static_cast<double>(b.to.y - b.from.y);
    const auto dx = static_cast<double>(b.from.x - a.from.x);
    const auto dy = static_cast<double>(b.from.y - a.from.y);
    const double share = (dx * by - dy * bx) / (ax * by - ay * bx);
    return {a.from.x + std::llround(share * ax), a.from.y + std::llround(share * ay)};
}

GridPoint meeting_point(const Side& a, const Side& b) {
    if (on_segment(b.from, a.from, a.to))
        return b.from;
    if (on_segment(b.to, a.from, a.to))
        return b.to;
    if (on_segment(a.from, b.from, b.to))
        return a.from;
    if (on_segment(a.to, b.from, b.to))
        return a.to;
    return crossing(a, b);
}

} // namespace

std::vector<GridPoint> contact_in(const Polygon& polygon) {
    std::vector<Ring> rings{polygon.outer};
    rings.insert(rings.end(), polygon.holes.begin(), polygon.holes.end());
    const std::optional<Contact> contact = arrange(rings).contact;
    if (!contact)
        return {};
    return {meeting_point(side_of(rings[contact->ring_a], contact->side_a),
                          side_of(rings[contact->ring_b], contact->side_b))};
}

Ring notch_at(GridPoint contact) {
    constexpr Um half = 2 * crumb;
    const GridPoint low{contact.x - half, contact.y - half};
    const GridPoint high{contact.x + half, contact.y + half};
    return {low, {high.x, low.y}, high, {low.x, high.y}};
}

} // namespace pelt::geometry
