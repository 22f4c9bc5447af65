// SPDX-License-Identifier: MIT
#include "order/batches.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <limits>

namespace pelt::order {
namespace {

/// Twice the least area of its shapes.
DoubleArea least_area(const Piece& piece) {
    DoubleArea least = 0;
    for (const CutShape& shape : piece.shapes) {
        DoubleArea area = doubled_area(shape.outline.outer);
        for (const Ring& hole : shape.outline.holes)
            area += doubled_area(hole);
        least = least == 0 ? area : std::min(least, area);
    }
    return least;
}

Um least_along(const Piece& piece, bool free_turns) {
    Um least = std::numeric_limits<Um>::max();
    for (const CutShape& shape : piece.shapes) {
        if (free_turns && piece.direction == Direction::any)
            least = std::min(least, geometry::narrowest(shape.outline.outer).across);
        for (const Turn turn : shape.turns)
            least = std::min(least, box_of(placed(shape.outline.outer, turn, {})).along());
    }
    return least;
}

} // namespace

std::vector<Batch> batches_of(const Shelf& shelf) {
    std::vector<Batch> out;
    for (std::size_t i = 0; i < shelf.rolls.size(); ++i) {
        const std::string& name = shelf.rolls[i].batch;
        const auto same = std::find_if(out.begin(), out.end(), [&](const Batch& batch) {
            return !name.empty() && batch.name == name;
        });
        if (same == out.end())
            out.push_back({name, {i}});
        else
            same->rolls.push_back(i);
    }
    return out;
}

std::vector<Rolls> ever_cheaper(const Shelf& shelf, Rolls rolls) {
    constexpr Um kilometre = 1'000'000'000;
    const auto cost = [&](std::size_t roll) { return shelf.costs[roll].of(kilometre); };
    constexpr std::size_t most_tries = 4;
    std::vector<Rolls> out;
    while (!rolls.empty() && out.size() < most_tries) {
        out.push_back(rolls);
        Money dearest;
        for (const std::size_t roll : rolls)
            dearest = std::max(dearest, cost(roll));
        if (dearest == Money{})
            break;
        std::erase_if(rolls, [&](std::size_t roll) { return cost(roll) == dearest; });
    }
    return out;
}

Rolls left_behind(const Rolls& stock, const Rolls& rolls) {
    Rolls others;
    for (auto roll = stock.rbegin(); roll != stock.rend(); ++roll)
        if (std::find(rolls.begin(), rolls.end(), *roll) == rolls.end())
            others.push_back(*roll);
    return others;
}

void name_the_batch(Job& job, const Batch& batch) {
    const std::string name =
        batch.name.empty() ? "that of " + job.rolls[batch.rolls.front()].name : batch.name;
    for (const std::size_t roll : batch.rolls)
        job.rolls[roll].batch = name;
    for (Roll& roll : job.rolls)
        if (roll.is_new)
            roll.batch = name;
}

DoubleArea area_of(const Job& job, const Rolls& rolls) {
    DoubleArea area = 0;
    for (const std::size_t i : rolls) {
        const Roll& roll = job.rolls[i];
        area += DoubleArea{2} * roll.available.value_or(0) * (roll.width - 2 * roll.trim);
    }
    return area;
}

DoubleArea least_area(const Job& job, const Copies& copies) {
    DoubleArea area = 0;
    for (std::size_t i = 0; i < copies.size(); ++i)
        area += static_cast<DoubleArea>(copies[i].size()) * least_area(job.pieces[i]);
    return area;
}

Um least_along(const Job& job, const Copies& copies) {
    Um least = std::numeric_limits<Um>::max();
    for (std::size_t i = 0; i < copies.size(); ++i)
        if (!copies[i].empty())
            least = std::min(least, least_along(job.pieces[i], job.free_turns));
    return least;
}

} // namespace pelt::order
