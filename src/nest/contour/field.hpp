// SPDX-License-Identifier: MIT
// How deep, or how far apart, two shapes are at a given offset: a signed distance to the boundary
// of the forbidden region, by look-up.
#pragma once

#include "nest/contour/minkowski.hpp"

#include <algorithm>
#include <cstdint>
#include <memory>
#include <vector>

namespace pelt::nest::contour {

/// The nearest way out of (inside) or into (outside) the forbidden region.
struct Clearance {
    double distance = 0; ///< negative inside: the least move that separates the shapes
    Vec away;            ///< unit: the way in which the distance grows
};

/// Signed distance to a boundary made of segments with the inside on their left. A grid over the
/// region lists, for every cell, the segments that can be nearest to a point in it, so a look-up
/// costs two or three segments. Exact to rounding up to `reach` outside and to a twentieth of
/// the region inside; deeper, the segment that is nearest to a cell's middle stands for the rest.
class alignas(64) Field {
private:
    // Outside by more than `reach`; by `asked` or more; wholly inside; or any of the rest.
    enum class Where : std::uint8_t { beyond, clear, inside, border };
    // Four bytes, since most of a look-up is waiting for memory: where it is, and from where in
    // `lists_` the count of its sides and the sides stand; deep inside, the one nearest side
    // itself.
public:
    class Cell {
    public:
        Cell() = default;
        Cell(Where where, std::size_t first)
            : packed_(static_cast<std::uint32_t>(first) << 2U | static_cast<std::uint32_t>(where)) {
        }
        static Cell deep(std::size_t side) {
            Cell cell(Where::inside, side);
            cell.packed_ |= deep_bit;
            return cell;
        }
        bool is_deep() const { return (packed_ & deep_bit) != 0; }
        Where where() const { return static_cast<Where>(packed_ & 3U); }
        std::size_t first() const { return (packed_ & ~deep_bit) >> 2U; }

    private:
        static constexpr std::uint32_t deep_bit = 1U << 31U;
        std::uint32_t packed_ = 0;
    };

    /// `asked` is the distance beyond which `distance` need not be exact; at most `reach`.
    Field(const std::vector<Segment>& boundary, double asked, double reach);

    /// False when `p` is at least `reach` outside; `out` is then untouched.
    bool clearance(Vec p, Clearance& out) const;

    /// The distance alone; `beyond` outside the region by at least `asked`, and possibly nearer.
    double distance(Vec p) const { return distance(p, cell_at(p)); }

    /// In three steps, so that several look-ups can wait for memory at the same time: find the
    /// cell, fetch what it points to, measure.
    const Cell* cell_at(Vec p) const {
        const double column = (p.x - low_.x) * cells_per_um_.x;
        const double row = (p.y - low_.y) * cells_per_um_.y;
        if (!(column >= 0 && row >= 0 && column < columns_ && row < columns_))
            return nullptr;
        const Cell* cell = &cells_[static_cast<std::size_t>(static_cast<int>(row) * columns_ +
                                                            static_cast<int>(column))];
        __builtin_prefetch(cell);
        return cell;
    }
    void fetch(const Cell* cell) const {
        if (!is_near(cell))
            return;
        if (cell->is_deep())
            __builtin_prefetch(&sides_[cell->first()]);
        else
            __builtin_prefetch(&lists_[cell->first()]);
    }
    double distance(Vec p, const Cell* cell) const {
        if (!is_near(cell))
            return beyond;
        if (cell->is_deep())
            return -std::sqrt(squared_to(p, sides_[cell->first()]));
        const std::uint16_t* list = &lists_[cell->first()];
        if (cell->where() == Where::inside)
            return -std::sqrt(least_squared(p, list));
        const Nearest best = nearest(p, list + 1, *list);
        const double distance = std::sqrt(best.distance2);
        return best.perpendicular > 0 ? distance : -distance;
    }

    static constexpr double beyond = 1e18;

    std::size_t bytes() const { return bytes_; }

private:
    static constexpr std::size_t most_in_lists = std::size_t{1} << 29U;
    struct Side {
        Vec from;
        Vec along; // unit
        double length = 0;
    };
    struct Nearest {
        double distance2 = 0;
        double perpendicular = 0; // positive on the right: outside
        std::uint32_t side = 0;
    };
    friend class FieldBuilder;

    static bool is_near(const Cell* cell) {
        return cell != nullptr && cell->where() != Where::clear && cell->where() != Where::beyond;
    }

    double least_squared(Vec p, const std::uint16_t* list) const {
        double least = beyond * beyond;
        for (std::uint16_t k = 1; k <= *list; ++k)
            least = std::min(least, squared_to(p, sides_[list[k]]));
        return least;
    }

    static double squared_to(Vec p, const Side& side) {
        const Vec r = p - side.from;
        const double along = dot(r, side.along);
        const double perpendicular = cross(r, side.along);
        const double excess = std::max(std::max(-along, along - side.length), 0.0);
        return perpendicular * perpendicular + excess * excess;
    }

    Nearest nearest(Vec p, const std::uint16_t* sides, std::uint32_t count) const;

    // All in one line of the cache.
    Vec low_;
    Vec cells_per_um_;
    std::unique_ptr<Cell[]> cells_;
    std::unique_ptr<std::uint16_t[]> lists_;
    std::unique_ptr<Side[]> sides_;
    int columns_ = 0; // and rows
    std::uint32_t bytes_ = 0;
};

} // namespace pelt::nest::contour
