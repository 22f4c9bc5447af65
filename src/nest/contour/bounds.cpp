// SPDX-License-Identifier: MIT
// Three arguments; each holds for any arrangement of the pieces as cut, in their allowed turns.
//
// Area. Insides do not overlap and lie in usable width times length.
//
// Longest piece. Some roll holds it, and is at least as long.
//
// Lines across the film. Grow every piece by half the gap all round: grown pieces still do not
// overlap, since the pieces are a gap apart, and lie in a film grown by half the gap on every side,
// that is, a gap wider and longer. A line across at place x meets piece i in a share c_i(x) of the
// grown width, and the shares of one line add up to at most 1. A dual feasible function f keeps
// them at most 1, so the sum over the pieces of the integral of f(c_i) is at most the grown length.
// Such functions count as full a line that no other piece can share (Fekete and Schepers 2004,
// arXiv cs/0402044, for boxes; taking it line by line for any shape is our own step, and this is
// its proof). A turn by 180 degrees only mirrors the slices. Since f does not fall, the lower end
// of a slice's share gives a value below the integral. On k rolls every roll is grown by a gap: k
// gaps come off.
#include "nest/contour/bounds.hpp"

#include "geometry/geometry.hpp"
#include "nest/contour/dual.hpp"
#include "nest/contour/slices.hpp"
#include "nest/contour/vec.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pelt::nest::contour {
namespace {

constexpr int cuts_a_slice = 16;
// Sums of doubles may be off by their rounding: every bound gives up this share.
constexpr double rounding_share = 1e-9;

constexpr int half = 180'000;

DoubleArea doubled_area_of(const Polygon& polygon) {
    DoubleArea sum = doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += doubled_area(hole);
    return sum;
}

double weigh(const std::vector<Slice>& slices, double whole, const Dual& dual) {
    double sum = 0;
    for (const Slice& slice : slices) {
        const double step = (slice.across_to - slice.across_from) / cuts_a_slice;
        const bool plain = dual.family == Dual::Family::threshold && dual.epsilon <= 0;
        if (plain) {
            sum += slice.along * (slice.across_from + slice.across_to) / 2 / whole;
            continue;
        }
        for (int k = 0; k < cuts_a_slice; ++k) {
            const double from = slice.across_from + k * step;
            sum += slice.along / cuts_a_slice *
                   dual(std::max(0.0, std::min(from, from + step)) / whole);
        }
    }
    return sum;
}

std::vector<int> half_turns_apart(const std::vector<Turn>& turns) {
    std::vector<int> bases;
    for (const Turn turn : turns)
        bases.push_back(turn.millidegrees % half);
    std::sort(bases.begin(), bases.end());
    bases.erase(std::unique(bases.begin(), bases.end()), bases.end());
    return bases;
}

/// The least whole number of micrometres that the bound allows, less what rounding may have added
/// to it: a layout cannot be shorter, and its length is whole.
Um bound_on_grid(double length) {
    return static_cast<Um>(std::ceil(std::max(0.0, length * (1 - rounding_share) - 1e-3)));
}

std::string argument_of(const Dual& dual) {
    if (dual.family == Dual::Family::threshold && dual.epsilon <= 0)
        return "the pieces' areas with half the spacing round each, over the width";
    return "pieces that cannot lie side by side, and the strips beside them that none can use";
}

} // namespace

Bounds::Measure Bounds::measure(const Piece& piece, Um usable_width, Um gap) {
    const std::vector<Dual> functions = duals();
    Measure out;
    out.doubled_area = doubled_area_of(piece.shapes.front().outline);
    out.shortest = std::numeric_limits<Um>::max();
    out.weighed.assign(functions.size(), std::numeric_limits<double>::infinity());
    const auto whole = static_cast<double>(usable_width + gap);
    for (const CutShape& shape : piece.shapes) {
        out.doubled_area = std::min(out.doubled_area, doubled_area_of(shape.outline));
        for (const int base : half_turns_apart(shape.turns)) {
            const Polygon turned = placed(shape.outline, Turn{base}, GridPoint{});
            const Box box = box_of(turned.outer);
            if (box.across() > usable_width)
                continue;
            out.shortest = std::min(out.shortest, box.along());
            const std::vector<Slice> slices =
                slices_of(grown_within(turned, static_cast<double>(gap) / 2));
            for (std::size_t f = 0; f < functions.size(); ++f)
                out.weighed[f] = std::min(out.weighed[f], weigh(slices, whole, functions[f]));
        }
    }
    return out;
}

double perimeter_of(const Polygon& polygon) {
    double sum = 0;
    const auto add = [&sum](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i)
            sum += norm(vec_of(ring[(i + 1) % ring.size()]) - vec_of(ring[i]));
    };
    add(polygon.outer);
    for (const Ring& hole : polygon.holes)
        add(hole);
    return sum;
}

// Whatever way it lies: its least width is the least extent along; a line's share is not known, so
// of the functions only the plain share, whose integral is the area, counts it. Lying askew rounds
// its corners to the grid, by less than a micrometre, for which both areas give up a band of one
// along the outline.
Bounds::Measure Bounds::measure_freely(const Piece& piece, Um usable_width, Um gap) {
    const std::vector<Dual> functions = duals();
    Measure out;
    out.doubled_area = std::numeric_limits<DoubleArea>::max();
    out.shortest = std::numeric_limits<Um>::max();
    out.weighed.assign(functions.size(), 0);
    out.weighed.front() = std::numeric_limits<double>::infinity();
    const auto whole = static_cast<double>(usable_width + gap);
    for (const CutShape& shape : piece.shapes) {
        const double band = perimeter_of(shape.outline);
        out.doubled_area =
            std::min(out.doubled_area,
                     doubled_area_of(shape.outline) - 2 * static_cast<DoubleArea>(std::ceil(band)));
        out.shortest = std::min(out.shortest, geometry::narrowest(shape.outline.outer).across - 2);
        const std::vector<Slice> slices =
            slices_of(grown_within(shape.outline, static_cast<double>(gap) / 2));
        out.weighed.front() =
            std::min(out.weighed.front(), weigh(slices, whole, functions.front()) - band / whole);
    }
    return out;
}

Bounds::Bounds(std::span<const Piece> pieces, Um usable_width, Um gap, bool free_turns)
    : usable_width_(usable_width), gap_(gap) {
    for (const Piece& piece : pieces)
        measures_.push_back(free_turns && piece.direction == Direction::any
                                ? measure_freely(piece, usable_width, gap)
                                : measure(piece, usable_width, gap));
}

Bound Bounds::best(std::span<const std::size_t> demand, std::size_t rolls) const {
    const std::vector<Dual> functions = duals();
    DoubleArea doubled = 0;
    Um longest = 0;
    std::vector<double> weighed(functions.size());
    for (std::size_t i = 0; i < demand.size(); ++i) {
        const Measure& measure = measures_[i];
        if (demand[i] == 0 || measure.shortest == std::numeric_limits<Um>::max())
            continue;
        const auto copies = static_cast<double>(demand[i]);
        doubled += static_cast<DoubleArea>(demand[i]) * measure.doubled_area;
        longest = std::max(longest, measure.shortest);
        for (std::size_t f = 0; f < weighed.size(); ++f)
            weighed[f] += copies * measure.weighed[f];
    }
    const DoubleArea across = 2 * static_cast<DoubleArea>(usable_width_);
    Bound best{static_cast<Um>((doubled + across - 1) / across),
               "the pieces' areas over the usable width"};
    const auto consider = [&best](Um length, const std::string& argument) {
        if (length > best.length)
            best = {length, argument};
    };
    consider(longest, "the longest piece");
    const double gaps = static_cast<double>(rolls) * static_cast<double>(gap_);
    for (std::size_t f = 0; f < weighed.size(); ++f)
        consider(bound_on_grid(weighed[f] - gaps), argument_of(functions[f]));
    return best;
}

} // namespace pelt::nest::contour
