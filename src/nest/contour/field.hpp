// SPDX-License-Identifier: MIT
// How deep, or how far apart, two shapes are at a given offset: a signed distance to the boundary
// of the forbidden region, by look-up.
#pragma once

#include "nest/contour/minkowski.hpp"

#include <cstdint>
#include <vector>

namespace pelt::nest::contour {

/// The nearest way out of (inside) or into (outside) the forbidden region.
struct Clearance {
    double distance = 0; ///< negative inside: the least move that separates the shapes
    Vec away;            ///< unit: the way in which the distance grows
};

/// Signed distance to a boundary made of segments with the inside on their left. A grid over the
/// region lists, for every cell, the segments that can be nearest to a point in it, so a look-up
/// costs two or three segments. Exact to rounding up to `reach` outside and to a tenth of the
/// region inside; deeper, the nearest of the listed segments stands for the rest.
class Field {
public:
    Field(std::vector<Segment> boundary, double reach);

    /// False when `p` is at least `reach` outside; `out` is then untouched.
    bool clearance(Vec p, Clearance& out) const;

    /// The distance alone; a large number beyond `reach`.
    double distance(Vec p) const;

    static constexpr double beyond_reach = 1e18;

    const std::vector<Segment>& boundary() const { return boundary_; }
    std::size_t bytes() const;

private:
    struct Side {
        Vec from;
        Vec along; // unit
        double length = 0;
    };
    struct Cell {
        std::uint32_t first = 0;
        std::uint32_t count = 0; // 0: beyond reach
    };
    struct Nearest {
        double distance2 = 0;
        double perpendicular = 0; // positive on the right: outside
        std::uint32_t side = 0;
    };
    friend class FieldBuilder;

    const Cell* cell_at(Vec p) const;
    Nearest nearest(Vec p, const std::uint16_t* sides, std::uint32_t count) const;

    std::vector<Segment> boundary_;
    std::vector<Side> sides_;
    std::vector<Cell> cells_;
    std::vector<std::uint16_t> lists_;
    Vec low_;
    Vec cells_per_um_;
    Vec size_; // in cells, as double
    std::size_t columns_ = 0;
};

} // namespace pelt::nest::contour
