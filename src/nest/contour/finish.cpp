// SPDX-License-Identifier: MIT
#include "nest/contour/finish.hpp"

#include "nest/contour/exact.hpp"
#include "nest/contour/grid.hpp"

#include <algorithm>
#include <tuple>

namespace pelt::nest::contour {
namespace {

Polygon moved(const Polygon& polygon, GridPoint by) {
    return placed(polygon, no_turn, by);
}

bool covers(const Box& box, const Flaw& flaw, Um low, Um high) {
    return box.low.x < flaw.to && flaw.from < box.high.x && box.low.y < high && low < box.high.y;
}

} // namespace

Finisher::Finisher(const Problem& problem, std::span<const Piece> pieces,
                   std::span<const Roll> rolls, Um gap)
    : problem_(&problem), rolls_(rolls), gap_(gap), turned_(problem.options.size()),
      boxes_(problem.options.size()) {
    for (const Kind& kind : problem.kinds)
        for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o) {
            const Option& option = problem.options[o];
            turned_[o] =
                placed(pieces[kind.piece].shapes[option.shape].outline, option.turn, GridPoint{});
            boxes_[o] = box_of(turned_[o].outer);
        }
}

std::vector<Finisher::Placed> Finisher::in_order(const std::vector<Pose>& poses) const {
    std::vector<Placed> out;
    for (std::size_t i = 0; i < poses.size(); ++i) {
        const Bay& bay = problem_->bays[poses[i].bay];
        const GridPoint at{std::llround(poses[i].at.x - bay.shift), std::llround(poses[i].at.y)};
        const Box& box = boxes_[poses[i].option];
        out.push_back(
            {i,
             at,
             {{box.low.x + at.x, box.low.y + at.y}, {box.high.x + at.x, box.high.y + at.y}},
             poses[i].option,
             bay.roll});
    }
    std::sort(out.begin(), out.end(), [](const Placed& a, const Placed& b) {
        return std::tuple(a.roll, a.box.low, a.item) < std::tuple(b.roll, b.box.low, b.item);
    });
    return out;
}

bool Finisher::inside(const Placed& placed) const {
    const Roll& roll = rolls_[placed.roll];
    const Box& box = placed.box;
    if (box.low.x < 0 || (roll.available && box.high.x > *roll.available) ||
        box.low.y < roll.trim || box.high.y > roll.width - roll.trim)
        return false;
    return std::none_of(roll.flaws.begin(), roll.flaws.end(), [&](const Flaw& flaw) {
        const Um low = flaw.low.value_or(0);
        const Um high = flaw.high.value_or(roll.width);
        if (flaw.from >= flaw.to || low >= high || !covers(box, flaw, low, high))
            return false;
        const Polygon bare{{{flaw.from, low}, {flaw.to, low}, {flaw.to, high}, {flaw.from, high}},
                           {}};
        return !keeps_clear(moved(turned_[placed.option], placed.at), bare, 0);
    });
}

bool Finisher::all_clear(const std::vector<Placed>& placed) const {
    for (std::size_t i = 0; i < placed.size(); ++i) {
        const Placed& a = placed[i];
        const Polygon outline = moved(turned_[a.option], a.at);
        for (std::size_t j = i + 1; j < placed.size(); ++j) {
            const Placed& b = placed[j];
            if (b.roll != a.roll || b.box.low.x >= a.box.high.x + gap_)
                break;
            if (b.box.low.y >= a.box.high.y + gap_ || a.box.low.y >= b.box.high.y + gap_)
                continue;
            if (!keeps_clear(outline, moved(turned_[b.option], b.at), gap_))
                return false;
        }
    }
    return true;
}

// Copies are handed out in the order in which the pieces come free.
Layout Finisher::assembled(const std::vector<Placed>& placed) const {
    Layout layout;
    std::vector<std::size_t> next_copy(problem_->kinds.size());
    for (const Placed& one : placed) {
        if (layout.rolls.empty() || layout.rolls.back().roll != one.roll) {
            layout.rolls.emplace_back();
            layout.rolls.back().roll = one.roll;
        }
        UsedRoll& used = layout.rolls.back();
        const std::uint32_t kind = problem_->items[one.item];
        const Option& option = problem_->options[one.option];
        used.length = std::max(used.length, one.box.high.x);
        used.placements.push_back(
            {problem_->kinds[kind].piece, next_copy[kind]++, option.shape, option.turn, one.at});
    }
    return layout;
}

std::optional<Layout> Finisher::layout(const std::vector<Pose>& poses) const {
    const std::optional<std::vector<Pose>> whole = onto_grid(*problem_, poses);
    if (!whole)
        return std::nullopt;
    const std::vector<Placed> placed = in_order(*whole);
    if (!std::all_of(placed.begin(), placed.end(),
                     [&](const Placed& one) { return inside(one); }) ||
        !all_clear(placed))
        return std::nullopt;
    return assembled(placed);
}

} // namespace pelt::nest::contour
