// SPDX-License-Identifier: MIT
#include "nest/straight/exact/exhaustive.hpp"

#include "nest/strands.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

constexpr std::size_t lanes = 8;
constexpr double most_states = 1U << 21U;
constexpr std::size_t most_sides = 6'000'000;
constexpr Steps longest_side = 1 << 28;
constexpr Steps widest_table = 1 << 16;
/// Between two looks at the callback; one state of a set of twenty can mean eight thousand words
/// of pairs.
constexpr std::size_t states_at_once = 1024;

} // namespace

bool Exhaustive::possible(const Problem& problem) {
    Steps sum = 0;
    for (const Kind& kind : problem.kinds)
        for (const Lie& lie : kind.lies)
            sum += std::max(lie.along, lie.across) * static_cast<Steps>(kind.demand());
    return problem.kinds.size() <= 32 && States::count(problem.kinds) <= most_states &&
           sum < longest_side && problem.stretches.front().across < widest_table &&
           (problem.stages <= 3 || problem.stages == any_stages);
}

double Exhaustive::least_work(const Problem& problem) {
    return States::splits(problem.kinds);
}

Exhaustive::Exhaustive(const Problem& problem, std::vector<std::vector<double>> weights)
    : problem_(problem), demands_(demands_of(problem)), weights_(std::move(weights)),
      width_(problem.stretches.front().across), states_(problem.kinds) {}

Exhaustive::End Exhaustive::run(Steps length, std::uint64_t work, int threads,
                                const std::function<bool()>& go_on) {
    yards_.emplace(demands_, width_, length, weights_);
    work_done_ = 0;
    parts_.clear(states_);
    if (problem_.stages == 3)
        make_columns();
    Lanes makers(lanes, StairMaker(problem_, states_, *yards_, longest_part()));
    const std::vector<State>& order = states_.by_pieces();
    for (std::size_t layer = 1; layer + 1 < states_.layers().size(); ++layer)
        for (std::size_t from = states_.layers()[layer]; from < states_.layers()[layer + 1];
             from += states_at_once) {
            const std::size_t to = std::min(from + states_at_once, states_.layers()[layer + 1]);
            run_all(lanes, threads, [&](std::size_t lane) {
                for (std::size_t i = from + lane; i < to; i += lanes)
                    work_on(order[i], makers[lane]);
            });
            for (StairMaker& maker : makers) {
                maker.hand_over(parts_);
                work_done_ += maker.take_work();
            }
            if (work_done_ > work || parts_.sides() > most_sides)
                return End::gave_up;
            if (!go_on())
                return End::stopped;
        }
    return parts_.whole(states_.all()) == never ? End::none : End::found;
}

Steps Exhaustive::longest_part() const {
    return problem_.table.value_or(std::numeric_limits<Length>::max());
}

Steps Exhaustive::length() const {
    return parts_.whole(states_.all());
}

std::size_t Exhaustive::last_kind(State s) const {
    std::size_t k = states_.kinds() - 1;
    while (states_.copies(s, k) == 0)
        --k;
    return k;
}

void Exhaustive::make_columns() {
    columns_.clear(states_);
    StairMaker maker(problem_, states_, *yards_, longest_part());
    for (const State s : states_.by_pieces()) {
        const std::size_t last = last_kind(s);
        const State rest = s - states_.one(last);
        maker.start(s);
        for (const Lie& lie : problem_.kinds[last].lies) {
            const Sides sides{static_cast<Length>(lie.along), static_cast<Length>(lie.across)};
            if (rest == 0)
                maker.offer(sides.along, sides.across);
            else if (!columns_[rest].empty())
                maker.offer_behind(columns_[rest], {&sides, 1});
        }
        maker.finish();
        maker.hand_over(columns_);
    }
    work_done_ += maker.take_work();
}

void Exhaustive::work_on(State s, StairMaker& maker) const {
    maker.start(s);
    if (is_single(s))
        try_single(s, maker);
    if (problem_.stages == 3 && !is_one_section(s))
        for (const Sides& sides : columns_[s])
            maker.offer(sides.along, sides.across);
    if (problem_.stages == 2 && !is_single(s))
        try_last_piece(s, maker);
    try_pairs(s, maker);
    maker.finish();
}

void Exhaustive::try_single(State s, StairMaker& maker) const {
    for (const Lie& lie : problem_.kinds[last_kind(s)].lies)
        maker.offer(static_cast<Length>(lie.along), static_cast<Length>(lie.across));
}

void Exhaustive::try_last_piece(State s, StairMaker& maker) const {
    const std::size_t last = last_kind(s);
    const Stair rest = parts_[s - states_.one(last)];
    for (const Lie& lie : problem_.kinds[last].lies) {
        const Sides sides{static_cast<Length>(lie.along), static_cast<Length>(lie.across)};
        if (!rest.empty())
            maker.offer_beside(rest, {&sides, 1});
    }
}

void Exhaustive::try_pairs(State s, StairMaker& maker) const {
    const bool one = is_one_section(s);
    const StateSet& wholes = parts_.with_whole();
    if (!one)
        maker.count(states_.split(s, wholes, wholes, [&](State a, State b) {
            maker.offer_whole(parts_.whole(a) + parts_.whole(b));
        }));
    const StateSet& stairs = parts_.with_stair();
    if (problem_.stages == any_stages)
        maker.count(states_.split(s, stairs, stairs, [&](State a, State b) {
            if (!maker.may_waste(parts_.waste(a) + parts_.waste(b)))
                return;
            maker.offer_beside(parts_[a], parts_[b]);
            if (!one)
                maker.offer_behind(parts_[a], parts_[b]);
        }));
    if (problem_.stages != 3)
        return;
    const StateSet& columns = columns_.with_stair();
    maker.count(states_.split(
        s, columns, stairs, [&](State a, State b) { maker.offer_beside(columns_[a], parts_[b]); }));
    maker.count(states_.split(
        s, stairs, columns, [&](State a, State b) { maker.offer_beside(columns_[b], parts_[a]); }));
}

} // namespace pelt::nest::straight
