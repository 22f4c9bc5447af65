// SPDX-License-Identifier: MIT
#include "order/relaying.hpp"

#include <algorithm>
#include <utility>

namespace pelt::order {
namespace {

void take_away(const Job& job, Layout& layout, bool is_new) {
    std::erase_if(layout.rolls,
                  [&](const UsedRoll& used) { return job.rolls[used.roll].is_new == is_new; });
}

} // namespace

bool any(const Copies& copies) {
    return std::any_of(copies.begin(), copies.end(),
                       [](const auto& some) { return !some.empty(); });
}

bool takes_new_film(const Job& job, const Layout& layout) {
    return std::any_of(layout.rolls.begin(), layout.rolls.end(),
                       [&](const UsedRoll& used) { return job.rolls[used.roll].is_new; });
}

Copies copies_on(const Job& job, const Layout& layout, bool is_new) {
    Copies copies(job.pieces.size());
    for (const UsedRoll& used : layout.rolls)
        if (job.rolls[used.roll].is_new == is_new)
            for (const Placement& placement : used.placements)
                copies[placement.piece].push_back(placement.copy);
    for (auto& some : copies)
        std::sort(some.begin(), some.end());
    return copies;
}

Layout on_stock_alone(const Job& job, Layout layout) {
    take_away(job, layout, true);
    layout.bound = {};
    return layout;
}

std::optional<Layout> joined(std::optional<Layout> one, std::optional<Layout> other) {
    if (!one || !other)
        return std::nullopt;
    for (UsedRoll& used : other->rolls)
        one->rolls.push_back(std::move(used));
    if (other->bound.length > 0)
        one->bound = other->bound;
    one->stopped = one->stopped || other->stopped;
    one->shortest = false;
    return one;
}

Layout tightened(const Job& job, Layout layout, const nest::Effort& effort,
                 const nest::Watch& watch) {
    const Copies copies = copies_on(job, layout, false);
    std::vector<std::size_t> rolls;
    for (const UsedRoll& used : layout.rolls)
        if (!job.rolls[used.roll].is_new)
            rolls.push_back(used.roll);
    if (rolls.empty())
        return layout;
    std::optional<Layout> tight = fill_tightly(job, copies, rolls, effort, watch).layout;
    if (!tight)
        return layout;
    take_away(job, layout, false);
    layout.rolls.insert(layout.rolls.begin(), tight->rolls.begin(), tight->rolls.end());
    return layout;
}

} // namespace pelt::order
