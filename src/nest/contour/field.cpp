// SPDX-License-Identifier: MIT
#include "nest/contour/field.hpp"

#include "model/error.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace pelt::nest::contour {

// Fills the grid by halving blocks: a segment can be nearest somewhere in a block only if it is at
// most a block's diagonal farther from the middle than the nearest one.
class FieldBuilder {
public:
    FieldBuilder(Field& field, const std::vector<Segment>& boundary, double asked, double reach)
        : field_(field), asked_(asked), reach_(reach) {
        add_sides(boundary);
        measure(boundary);
        std::vector<std::uint16_t> all(boundary.size());
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = static_cast<std::uint16_t>(i);
        visit(0, 0, 0, columns_, all, Side::unknown);
        field_.lists_ = std::make_unique<std::uint16_t[]>(lists_.size());
        std::copy(lists_.begin(), lists_.end(), field_.lists_.get());
        field_.bytes_ = static_cast<std::uint32_t>(
            sizeof(Field) + boundary.size() * sizeof(Field::Side) +
            columns_ * columns_ * sizeof(Field::Cell) + lists_.size() * sizeof(std::uint16_t));
    }

private:
    static constexpr double deep_share = 0.05;

    void add_sides(const std::vector<Segment>& boundary) {
        field_.sides_ = std::make_unique<Field::Side[]>(boundary.size());
        for (std::size_t i = 0; i < boundary.size(); ++i) {
            const Segment& s = boundary[i];
            const double length = norm(s.to - s.from);
            field_.sides_[i] = {s.from, (1 / length) * (s.to - s.from), length};
        }
    }

    void measure(const std::vector<Segment>& boundary) {
        Vec low = boundary.front().from;
        Vec high = low;
        for (const Segment& s : boundary)
            for (const Vec p : {s.from, s.to}) {
                low = {std::min(low.x, p.x), std::min(low.y, p.y)};
                high = {std::max(high.x, p.x), std::max(high.y, p.y)};
            }
        deep_ = deep_share * std::min(high.x - low.x, high.y - low.y);
        low = low - Vec{reach_, reach_};
        high = high + Vec{reach_, reach_};
        columns_ = boundary.size() <= 64 ? 16 : 32;
        const auto columns = static_cast<double>(columns_);
        field_.low_ = low;
        field_.columns_ = static_cast<int>(columns_);
        field_.cells_per_um_ = {columns / (high.x - low.x), columns / (high.y - low.y)};
        cell_ = {(high.x - low.x) / columns, (high.y - low.y) / columns};
        field_.cells_ = std::make_unique<Field::Cell[]>(columns_ * columns_);
    }

    enum class Side { unknown, inside, outside };

    // `level` blocks deep; `sides` may be nearest in the block; `known`: where all of it lies.
    void visit(std::size_t level, std::size_t column, std::size_t row, std::size_t size,
               const std::vector<std::uint16_t>& sides, Side known) {
        const auto cells = static_cast<double>(size);
        const Vec half = {cells * cell_.x / 2, cells * cell_.y / 2};
        const Vec middle =
            field_.low_ +
            Vec{static_cast<double>(column) * cell_.x, static_cast<double>(row) * cell_.y} + half;
        const double radius = norm(half);
        measure_all(middle, sides);
        const double least = std::sqrt(*std::min_element(squared_.begin(), squared_.end()));
        std::vector<std::uint16_t>& kept = kept_[level];
        keep_within(least + 2 * radius, sides, kept);
        if (least > radius && known == Side::unknown)
            known = is_outside(middle, kept) ? Side::outside : Side::inside;
        if (known == Side::outside && least - radius > reach_)
            return;
        if (size == 1) {
            if (known == Side::inside && least - radius > deep_) {
                field_.cells_[row * columns_ + column] =
                    Field::Cell::deep(nearest_of(middle, kept));
                return;
            }
            store(column, row, kept,
                  known == Side::unknown    ? Field::Where::border
                  : known == Side::inside   ? Field::Where::inside
                  : least - radius > asked_ ? Field::Where::clear
                                            : Field::Where::border);
            return;
        }
        const std::size_t next = size / 2;
        for (const std::size_t down : {std::size_t{0}, next})
            for (const std::size_t over : {std::size_t{0}, next})
                visit(level + 1, column + over, row + down, next, kept, known);
    }

    void measure_all(Vec p, const std::vector<std::uint16_t>& sides) {
        squared_.clear();
        for (const std::uint16_t side : sides)
            squared_.push_back(field_.squared_to(p, field_.sides_[side]));
    }

    void keep_within(double distance, const std::vector<std::uint16_t>& sides,
                     std::vector<std::uint16_t>& kept) const {
        kept.clear();
        for (std::size_t i = 0; i < sides.size(); ++i)
            if (squared_[i] <= distance * distance)
                kept.push_back(sides[i]);
    }

    bool is_outside(Vec p, const std::vector<std::uint16_t>& sides) const {
        return field_.nearest(p, sides.data(), static_cast<std::uint32_t>(sides.size()))
                   .perpendicular > 0;
    }

    std::size_t nearest_of(Vec p, const std::vector<std::uint16_t>& sides) {
        measure_all(p, sides);
        return sides[static_cast<std::size_t>(std::min_element(squared_.begin(), squared_.end()) -
                                              squared_.begin())];
    }

    void store(std::size_t column, std::size_t row, const std::vector<std::uint16_t>& sides,
               Field::Where where) {
        Field::Cell& cell = field_.cells_[row * columns_ + column];
        if (sides != last_) {
            last_ = sides;
            last_first_ = lists_.size();
            lists_.push_back(static_cast<std::uint16_t>(sides.size()));
            lists_.insert(lists_.end(), sides.begin(), sides.end());
            if (lists_.size() > Field::most_in_lists)
                throw ProgramError("contour field: a forbidden region has too many sides");
        }
        cell = {where, last_first_};
    }

    Field& field_;
    double asked_;
    double reach_;
    double deep_ = 0;
    Vec cell_;
    std::array<std::vector<std::uint16_t>, 8> kept_; // by level
    std::vector<double> squared_;                    // distances from the middle at hand
    std::size_t columns_ = 0;
    std::vector<std::uint16_t> lists_;
    std::vector<std::uint16_t> last_;
    std::size_t last_first_ = 0;
};

Field::Field(const std::vector<Segment>& boundary, double asked, double reach) {
    if (boundary.empty() || boundary.size() > std::numeric_limits<std::uint16_t>::max())
        throw ProgramError("contour field: a forbidden region has no usable boundary");
    FieldBuilder(*this, boundary, asked, reach);
}

// Squared distances count as equal when they differ by less than this share and amount.
namespace {
constexpr double tie_share = 1e-8;
constexpr double tie_um2 = 1e-6;
} // namespace

// Two segments that share the nearest corner are equally near; the one that the point stands more
// squarely to tells inside from outside, and inside wins where both do (a slot that just fits).
Field::Nearest Field::nearest(Vec p, const std::uint16_t* sides, std::uint32_t count) const {
    Nearest best;
    best.distance2 = std::numeric_limits<double>::infinity();
    for (std::uint32_t k = 0; k < count; ++k) {
        const Side& side = sides_[sides[k]];
        const Vec r = p - side.from;
        const double along = dot(r, side.along);
        const double perpendicular = cross(r, side.along);
        double distance2 = perpendicular * perpendicular;
        if (along < 0)
            distance2 += along * along;
        else if (along > side.length)
            distance2 += (along - side.length) * (along - side.length);
        const double slack = tie_share * distance2 + tie_um2;
        if (distance2 - slack > best.distance2)
            continue;
        const bool tie = distance2 + slack >= best.distance2;
        const double square = std::abs(perpendicular);
        const double best_square = std::abs(best.perpendicular);
        if (tie && (square < best_square * (1 - 1e-9) ||
                    (square <= best_square * (1 + 1e-9) && perpendicular >= 0)))
            continue;
        best = {distance2, perpendicular, sides[k]};
    }
    return best;
}

bool Field::clearance(Vec p, Clearance& out) const {
    const Cell* cell = cell_at(p);
    if (cell == nullptr || cell->where() == Where::beyond)
        return false;
    const auto deep_side = static_cast<std::uint16_t>(cell->first());
    const std::uint16_t* list = cell->is_deep() ? nullptr : &lists_[cell->first()];
    const Nearest best = cell->is_deep() ? nearest(p, &deep_side, 1) : nearest(p, list + 1, *list);
    const Side& side = sides_[best.side];
    const double distance = std::sqrt(best.distance2);
    // Deep inside, the side that stands for the rest may face away.
    const bool outside = cell->where() != Where::inside && best.perpendicular > 0;
    out.distance = outside ? distance : -distance;
    const double along = std::min(std::max(dot(p - side.from, side.along), 0.0), side.length);
    const Vec from_foot = p - side.from - along * side.along;
    if (distance > 1e-3)
        out.away = (outside ? 1 / distance : -1 / distance) * from_foot;
    else
        out.away = {side.along.y, -side.along.x};
    return true;
}

} // namespace pelt::nest::contour
