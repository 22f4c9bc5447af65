// SPDX-License-Identifier: MIT
#include "order/relaying.hpp"

#include "order/buying.hpp"

#include <algorithm>
#include <functional>
#include <utility>

namespace pelt::order {
namespace {

void take_away(const Job& job, Layout& layout, bool is_new) {
    std::erase_if(layout.rolls,
                  [&](const UsedRoll& used) { return job.rolls[used.roll].is_new == is_new; });
}

/// Some of a layout's rolls, and what lies there.
struct PartOfLayout {
    std::vector<std::size_t> rolls; ///< indices into the job's
    Copies copies;
    Layout layout;
};

PartOfLayout part_of(const Job& job, const Layout& layout,
                     const std::function<bool(const UsedRoll&)>& is_in) {
    PartOfLayout out{{}, Copies(job.pieces.size()), {}};
    for (const UsedRoll& used : layout.rolls) {
        if (!is_in(used))
            continue;
        out.rolls.push_back(used.roll);
        for (const Placement& placement : used.placements)
            out.copies[placement.piece].push_back(placement.copy);
        out.layout.rolls.push_back(used);
    }
    for (auto& some : out.copies)
        std::sort(some.begin(), some.end());
    return out;
}

bool holds_bound_pieces(const Job& job, const UsedRoll& used) {
    return std::any_of(used.placements.begin(), used.placements.end(),
                       [&](const Placement& p) { return !job.pieces[p.piece].batch_free; });
}

} // namespace

bool any(const Copies& copies) {
    return std::any_of(copies.begin(), copies.end(),
                       [](const auto& some) { return !some.empty(); });
}

std::size_t count_of(const Copies& copies) {
    std::size_t count = 0;
    for (const auto& some : copies)
        count += some.size();
    return count;
}

bool takes_new_film(const Job& job, const Layout& layout) {
    return std::any_of(layout.rolls.begin(), layout.rolls.end(),
                       [&](const UsedRoll& used) { return job.rolls[used.roll].is_new; });
}

Copies copies_on(const Job& job, const Layout& layout, bool is_new) {
    const auto is_in = [&](const UsedRoll& used) { return job.rolls[used.roll].is_new == is_new; };
    return part_of(job, layout, is_in).copies;
}

bool new_film_must_match(const Job& job, const Layout& layout) {
    return std::any_of(layout.rolls.begin(), layout.rolls.end(), [&](const UsedRoll& used) {
        return job.rolls[used.roll].is_new && holds_bound_pieces(job, used);
    });
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
    const PartOfLayout stock =
        part_of(job, layout, [&](const UsedRoll& used) { return !job.rolls[used.roll].is_new; });
    if (stock.rolls.empty())
        return layout;
    std::optional<Layout> tight =
        fill_tightly(job, stock.copies, stock.rolls, effort, watch).layout;
    if (!tight)
        return layout;
    take_away(job, layout, false);
    layout.rolls.insert(layout.rolls.begin(), tight->rolls.begin(), tight->rolls.end());
    return layout;
}

Layout laid_with_effort(const Job& job, Layout layout, const std::vector<CostOfLength>& costs,
                        const SpareToBuy& spare, const nest::Effort& effort,
                        const nest::Watch& watch) {
    enum class Kind { bound, costly, worthless, fresh };
    const auto kind_of = [&](const UsedRoll& used) {
        if (job.rolls[used.roll].is_new)
            return Kind::fresh;
        if (holds_bound_pieces(job, used))
            return Kind::bound;
        return costs[used.roll].price > Money{} ? Kind::costly : Kind::worthless;
    };
    const std::size_t pieces =
        count_of(copies_on(job, layout, true)) + count_of(copies_on(job, layout, false));
    std::optional<Layout> out;
    for (const Kind kind : {Kind::bound, Kind::costly, Kind::worthless, Kind::fresh}) {
        PartOfLayout part =
            part_of(job, layout, [&](const UsedRoll& used) { return kind_of(used) == kind; });
        if (part.rolls.empty())
            continue;
        if (kind == Kind::fresh)
            part.layout.bound = layout.bound;
        nest::Effort own = effort; // one search's work for all of them together
        own.part = static_cast<int>(std::max<std::size_t>(pieces / count_of(part.copies), 1));
        std::optional<Layout> better;
        if (kind == Kind::fresh)
            better = fill_new_film(job, part.copies, spare, own, watch).result.layout;
        else if (kind != Kind::worthless)
            better = fill_tightly(job, part.copies, part.rolls, own, watch).layout;
        std::optional<Layout> laid = better ? std::move(better) : std::move(part.layout);
        out = out ? joined(std::move(out), std::move(laid)) : std::move(laid);
    }
    return out ? *std::move(out) : std::move(layout);
}

} // namespace pelt::order
