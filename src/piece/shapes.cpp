// SPDX-License-Identifier: MIT
#include "piece/shapes.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>
#include <tuple>
#include <utility>

namespace pelt::piece {
namespace {

Um up_to(Um value, Um step) {
    return (value + step - 1) / step * step;
}

/// A side with its margins, lengthwise.
Um with_margins(Um size, const Allowed& allowed) {
    return up_to(size + 2 * allowed.handling.want, allowed.ruler);
}

/// A side that lies across the roll; none where even the least margins do not fit.
std::optional<Um> across_the_roll(Um size, const Allowed& allowed) {
    const Um wanted = with_margins(size, allowed);
    if (wanted <= allowed.usable)
        return wanted;
    if (size + 2 * allowed.handling.least <= allowed.usable)
        return allowed.usable;
    return std::nullopt;
}

/// The same side where the roll is wider than the film that is asked for, as one in stock may be:
/// there a slit frees it, and slits are whole steps. None where the side is one already.
std::optional<Um> on_a_wider_roll(Um side, const Allowed& allowed) {
    const Um whole = up_to(side, allowed.ruler);
    return whole == side ? std::nullopt : std::optional(whole);
}

/// The rectangle of these sides about the film's box; what is odd goes to the high sides.
Ring rectangle_around(const Box& film, Um along, Um across) {
    const GridPoint low{film.low.x - (along - film.along()) / 2,
                        film.low.y - (across - film.across()) / 2};
    return geometry::rectangle({low, {low.x + along, low.y + across}});
}

std::vector<Turn> turns_for(Direction direction) {
    switch (direction) {
    case Direction::one_way:
        return {no_turn};
    case Direction::two_way:
        return {no_turn, half_turn};
    case Direction::any:
        break;
    }
    return {no_turn, quarter_turn, half_turn, three_quarter_turn};
}

/// Crossings are rounded to the grid: this near to a side a point counts as on it; micrometres.
constexpr double rounding = 2;

/// Where a point lies beside a side: the share of the way along it, and how far from it.
struct Beside {
    double share;
    double away;
};

Beside beside(GridPoint p, GridPoint from, GridPoint to) {
    const auto dx = static_cast<double>(to.x - from.x);
    const auto dy = static_cast<double>(to.y - from.y);
    const auto px = static_cast<double>(p.x - from.x);
    const auto py = static_cast<double>(p.y - from.y);
    const double share = std::clamp((px * dx + py * dy) / (dx * dx + dy * dy), 0.0, 1.0);
    return {share, std::hypot(px - share * dx, py - share * dy)};
}

/// True when both points lie on one and the same side of the ring.
bool on_one_side(GridPoint a, GridPoint b, const Ring& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint& from = ring[i];
        const GridPoint& to = ring[(i + 1) % ring.size()];
        if (beside(a, from, to).away <= rounding && beside(b, from, to).away <= rounding)
            return true;
    }
    return false;
}

std::vector<double> bleeds(const Ring& ring, const std::vector<Ring>& seam_ends, Um bleed) {
    std::vector<double> moves;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        const bool seam = std::any_of(seam_ends.begin(), seam_ends.end(),
                                      [&](const Ring& end) { return on_one_side(a, b, end); });
        moves.push_back(seam ? 0 : static_cast<double>(bleed) / um_per_mm);
    }
    return moves;
}

/// A point and the side of a ring on which it lies, by the share of the way along it.
struct OnSide {
    std::size_t side;
    double share;
    GridPoint point;
};

/// The points of `within` that lie on sides of the ring and are none of its own, each on the side
/// nearest to it: at a corner or across a narrow slit it lies beside others too. In order.
std::vector<OnSide> points_on_sides(const Ring& ring, const Ring& within) {
    const std::set<GridPoint> known(ring.begin(), ring.end());
    std::vector<OnSide> out;
    for (const GridPoint& p : within) {
        if (known.count(p) > 0)
            continue;
        double nearest = rounding;
        std::optional<OnSide> best;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Beside b = beside(p, ring[i], ring[(i + 1) % ring.size()]);
            if (b.share > 0 && b.share < 1 && (best ? b.away < nearest : b.away <= nearest)) {
                nearest = b.away;
                best = OnSide{i, b.share, p};
            }
        }
        if (best)
            out.push_back(*best);
    }
    std::sort(out.begin(), out.end(), [](const OnSide& a, const OnSide& b) {
        return std::tie(a.side, a.share, a.point) < std::tie(b.side, b.share, b.point);
    });
    return out;
}

/// The ring with the points of `within` that lie on its sides as points of its own, so that on the
/// grid too it holds them exactly.
Ring holding(const Ring& ring, const Ring& within) {
    const std::vector<OnSide> added = points_on_sides(ring, within);
    auto next = added.begin();
    Ring out;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        out.push_back(ring[i]);
        for (; next != added.end() && next->side == i; ++next)
            if (next->point != out.back())
                out.push_back(next->point);
    }
    return out;
}

Polygon with_bleed(const Part& part, Um bleed) {
    if (bleed == 0)
        return part.sheet;
    const Ring& ring = part.sheet.outer;
    std::vector<Polygon> grown =
        geometry::grown(geometry::in_mm(ring), bleeds(ring, part.seam_ends, bleed));
    std::vector<Polygon> holes;
    for (const Ring& hole : part.sheet.holes)
        for (Polygon& left :
             geometry::shrunk(geometry::in_mm(hole), bleeds(hole, part.seam_ends, bleed)))
            holes.push_back(std::move(left));
    Polygon outer = geometry::largest(std::move(grown));
    outer.holes.clear();
    return geometry::largest(geometry::subtract({outer}, holes));
}

} // namespace

std::vector<CutShape> straight_shapes(const Box& wrapped, const Allowed& allowed) {
    const std::optional<Um> high = across_the_roll(wrapped.across(), allowed);
    const std::optional<Um> wide = allowed.direction == Direction::any
                                       ? across_the_roll(wrapped.along(), allowed)
                                       : std::nullopt;
    const Um along = with_margins(wrapped.along(), allowed);
    const Um turned_along = with_margins(wrapped.across(), allowed);
    std::vector<CutShape> shapes;
    const auto add = [&](Um length, Um height, Turn turn) {
        const Polygon outline{rectangle_around(wrapped, length, height), {}};
        for (CutShape& shape : shapes)
            if (shape.outline == outline) {
                shape.turns.push_back(turn);
                return;
            }
        shapes.push_back({outline, {turn}});
    };
    if (high)
        add(along, *high, no_turn);
    if (wide)
        add(*wide, turned_along, quarter_turn);
    if (const auto whole = high ? on_a_wider_roll(*high, allowed) : std::nullopt)
        add(along, *whole, no_turn);
    if (const auto whole = wide ? on_a_wider_roll(*wide, allowed) : std::nullopt)
        add(*whole, turned_along, quarter_turn);
    return shapes;
}

std::vector<CutShape> contour_shapes(const Part& part, const Allowed& allowed) {
    Polygon blank = with_bleed(part, allowed.bleed);
    blank.outer = holding(blank.outer, part.wrapped.outer);
    const Box box = box_of(blank.outer);
    const bool lies =
        box.across() <= allowed.usable ||
        (allowed.direction == Direction::any && box.along() <= allowed.usable) ||
        (allowed.free_turns && geometry::narrowest(blank.outer).across <= allowed.usable);
    if (!lies)
        return {};
    return {{std::move(blank), turns_for(allowed.direction)}};
}

std::vector<CutShape> shapes_of(const Part& part, const Allowed& allowed, CutBy by) {
    return by == CutBy::straight ? straight_shapes(box_of(part.wrapped.outer), allowed)
                                 : contour_shapes(part, allowed);
}

WidestFilm widest_straight(const Allowed& allowed) {
    const Um wanted = allowed.usable / allowed.ruler * allowed.ruler - 2 * allowed.handling.want;
    return {wanted, allowed.usable - 2 * allowed.handling.least};
}

} // namespace pelt::piece
