// SPDX-License-Identifier: MIT
#include "order/fill.hpp"

#include "order/order.hpp"
#include "order/purchase.hpp"

#include <utility>

namespace pelt::order {
namespace {

nest::Goal goal_of(const Job& job) {
    nest::Goal goal;
    goal.by = job.by;
    goal.gap = job.film.allowances.gap;
    goal.ruler = job.film.allowances.ruler;
    goal.stages = job.stages;
    goal.free_turns = job.free_turns;
    goal.table = job.table;
    goal.in_order = job.in_order;
    return goal;
}

/// The copies that are asked for as pieces of their own, and which of the job's they are.
struct Subset {
    std::vector<Piece> pieces;
    std::vector<std::size_t> owner;
    std::vector<std::vector<std::size_t>> laying;
};

Subset subset_of(const Job& job, const Copies& copies) {
    Subset out;
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        if (copies[i].empty())
            continue;
        Piece piece = job.pieces[i];
        piece.ids.clear();
        std::vector<std::size_t>& laying = out.laying.emplace_back();
        for (const std::size_t copy : copies[i]) {
            piece.ids.push_back(job.pieces[i].ids[copy]);
            laying.push_back(job.laying[i][copy]);
        }
        out.pieces.push_back(std::move(piece));
        out.owner.push_back(i);
    }
    return out;
}

void speak_of_the_job(nest::Result& result, const Subset& subset, const Copies& copies,
                      const std::vector<std::size_t>& rolls) {
    for (std::size_t& piece : result.misfits)
        piece = subset.owner[piece];
    if (!result.layout)
        return;
    for (UsedRoll& used : result.layout->rolls) {
        used.roll = rolls[used.roll];
        for (Placement& placement : used.placements) {
            placement.piece = subset.owner[placement.piece];
            placement.copy = copies[placement.piece][placement.copy];
        }
    }
}

} // namespace

nest::Watch while_doing(std::string_view doing, const nest::Watch& watch) {
    if (!watch)
        return {};
    return [watch, doing](nest::Progress progress) {
        progress.doing = doing;
        return watch(progress);
    };
}

Copies all_copies(const Job& job) {
    Copies copies;
    for (const Piece& piece : job.pieces) {
        std::vector<std::size_t>& all = copies.emplace_back();
        for (std::size_t copy = 0; copy < piece.ids.size(); ++copy)
            all.push_back(copy);
    }
    return copies;
}

std::vector<Roll> new_rolls(const Film& film, const std::vector<Piece>& pieces) {
    const std::optional<Um> longest = longest_purchase(film);
    // Film without end that has no price is bought in one length; with one, two may be cheaper.
    const bool one = !longest && film.sold.empty();
    std::size_t count = one ? 1 : 0;
    for (const Piece& piece : pieces)
        count += one ? 0 : piece.ids.size();
    std::vector<Roll> rolls;
    for (std::size_t i = 0; i < count; ++i)
        rolls.push_back(
            {"new " + std::to_string(i + 1), true, "", film.width, film.trim, longest, true, {}});
    return rolls;
}

namespace {

nest::Result fill_film(const Job& job, const Copies& copies, const std::vector<std::size_t>& rolls,
                       const std::vector<Roll>& film, const nest::Effort& effort,
                       const nest::Watch& watch) {
    const Subset subset = subset_of(job, copies);
    nest::Goal goal = goal_of(job);
    if (job.by == CutBy::straight)
        goal.laying = subset.laying;
    nest::Result result = nest::nest(subset.pieces, film, goal, effort, watch);
    speak_of_the_job(result, subset, copies, rolls);
    return result;
}

std::vector<Roll> film_of(const Job& job, const std::vector<std::size_t>& rolls) {
    std::vector<Roll> film;
    for (const std::size_t roll : rolls) {
        film.push_back(job.rolls[roll]);
        if (film.back().is_new && !film.back().available)
            break; // nothing is left for the rolls behind it
    }
    return film;
}

} // namespace

nest::Result fill(const Job& job, const Copies& copies, const std::vector<std::size_t>& rolls,
                  const nest::Effort& effort, const nest::Watch& watch) {
    return fill_film(job, copies, rolls, film_of(job, rolls), effort, watch);
}

nest::Result fill_lengths(const Job& job, const Copies& copies,
                          const std::vector<std::size_t>& rolls, const std::vector<Um>& lengths,
                          const nest::Effort& effort, const nest::Watch& watch) {
    const std::vector<std::size_t> first(
        rolls.begin(), rolls.begin() + static_cast<std::ptrdiff_t>(lengths.size()));
    std::vector<Roll> film;
    for (std::size_t i = 0; i < first.size(); ++i) {
        film.push_back(job.rolls[first[i]]);
        film.back().available = lengths[i];
    }
    return fill_film(job, copies, first, film, effort, watch);
}

nest::Result fill_tightly(const Job& job, const Copies& copies,
                          const std::vector<std::size_t>& rolls, const nest::Effort& effort,
                          const nest::Watch& watch) {
    // The search takes as little as it can off rolls that it knows as new.
    std::vector<Roll> film = film_of(job, rolls);
    for (Roll& roll : film)
        roll.is_new = true;
    nest::Result result = fill_film(job, copies, rolls, film, effort, watch);
    if (result.layout) {
        result.layout->bound = {};
        result.layout->shortest = false;
    }
    return result;
}

nest::Result fill_one(const Job& job, const Copies& copies, std::size_t roll,
                      std::optional<Um> available, const nest::Effort& effort,
                      const nest::Watch& watch) {
    std::vector<Roll> film = film_of(job, {roll});
    film.front().is_new = true;
    film.front().available = available;
    return fill_film(job, copies, {roll}, film, effort, watch);
}

nest::Result fill(const Job& job, const nest::Effort& effort, const nest::Watch& watch) {
    std::vector<std::size_t> rolls;
    for (std::size_t i = 0; i < job.rolls.size(); ++i)
        if (job.rolls[i].is_new)
            rolls.push_back(i);
    return fill(job, all_copies(job), rolls, effort, watch);
}

Score judged(const Job& job, const std::vector<CostOfLength>& costs, const SpareToBuy& spare,
             const Layout& layout) {
    Money cost;
    std::vector<Um> lengths;
    std::int64_t cuts = 0;
    for (const UsedRoll& used : layout.rolls) {
        cuts += static_cast<std::int64_t>(used.cuts.size());
        if (job.rolls[used.roll].is_new)
            lengths.push_back(used.length);
        else
            cost = cost + costs[used.roll].of(used.length);
    }
    Um length = 0;
    for (const Um of_roll : lengths)
        length += of_roll;
    const std::optional<Purchase> bought = cheapest_order(job.film, lengths, spare);
    if (bought && bought->cost)
        cost = cost + *bought->cost;
    return {cost.micros(), length, static_cast<std::int64_t>(layout.rolls.size()),
            layout.rolls.empty() ? 0 : layout.rolls.back().length, cuts};
}

} // namespace pelt::order
