// SPDX-License-Identifier: MIT
#include "nest/straight/exact/exhaustive.hpp"

#include "model/parallel.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

constexpr std::size_t lane_count = 8;
constexpr double most_states = 1U << 21U;
constexpr std::size_t most_sides = 6'000'000;
constexpr Steps longest_side = 1 << 28;
constexpr Steps widest_table = 1 << 16;
/// Between two looks at the callback and at the work, if possible; a state can be a million.
constexpr std::uint64_t work_at_once = 500'000;
constexpr std::size_t most_at_once = 1024;
constexpr std::uint64_t work_of_a_state = 25; ///< to weigh what is not in it

/// So many states as would have been the right number last time.
std::size_t next_at_once(std::size_t states, std::uint64_t work) {
    const double right = static_cast<double>(states) * static_cast<double>(work_at_once) /
                         static_cast<double>(std::max<std::uint64_t>(work, 1));
    return static_cast<std::size_t>(
        std::clamp(right, static_cast<double>(lane_count), static_cast<double>(most_at_once)));
}

} // namespace

bool Exhaustive::possible(const Problem& problem) {
    Steps sum = 0;
    for (const Kind& kind : problem.kinds)
        for (const Orientation& orientation : kind.orientations)
            sum +=
                std::max(orientation.along, orientation.across) * static_cast<Steps>(kind.demand());
    return problem.kinds.size() <= 32 && States::count(problem.kinds) <= most_states &&
           sum < longest_side && problem.stretches.front().across < widest_table &&
           (problem.stages <= 3 || problem.stages == any_stages);
}

double Exhaustive::least_work(const Problem& problem) {
    return States::splits(problem.kinds) / 64;
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
    std::vector<Lane> lanes(lane_count,
                            {StairMaker(problem_, states_, *yards_, longest_part()), {}, {}});
    std::size_t at_once = most_at_once;
    for (std::size_t from = 0; from < states_.by_pieces().size();) {
        const Groups groups = groups_from(from, at_once);
        const std::uint64_t before = work_done_;
        run_all(lane_count, threads, [&](std::size_t lane) {
            for (std::size_t i = lane; i < groups.size(); i += lane_count)
                work_on(groups[i], lanes[lane]);
        });
        for (const auto& group : groups)
            from += group.size();
        for (Lane& lane : lanes) {
            lane.maker.hand_over(parts_);
            work_done_ += lane.maker.take_work();
        }
        if (work_done_ > work || parts_.sides() > most_sides)
            return End::gave_up;
        if (!go_on())
            return End::stopped;
        at_once = next_at_once(at_once, work_done_ - before);
    }
    return parts_.whole(states_.all()) == never ? End::none : End::found;
}

Exhaustive::Groups Exhaustive::groups_from(std::size_t from, std::size_t states) const {
    const auto layer = std::upper_bound(states_.layers().begin(), states_.layers().end(), from);
    const std::size_t to = std::min(from + states, *layer);
    Groups groups;
    while (from < to) {
        groups.push_back(states_.group(from));
        from += groups.back().size();
    }
    return groups;
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
        for (const Orientation& orientation : problem_.kinds[last].orientations) {
            const Sides sides{static_cast<Length>(orientation.along),
                              static_cast<Length>(orientation.across)};
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

void Exhaustive::work_on(std::span<const State> group, Lane& lane) const {
    lane.wholes.assign(group.size(), never);
    lane.firsts.resize(std::max(lane.firsts.size(), group.size()));
    for (std::vector<State>& firsts : lane.firsts)
        firsts.clear();
    find_pairs(group, lane);
    for (std::size_t i = 0; i < group.size(); ++i)
        if (lane.wholes[i] != never || !lane.firsts[i].empty() || has_own_sides(group[i]))
            make(group[i], lane.firsts[i], lane.wholes[i], lane.maker);
}

bool Exhaustive::has_own_sides(State s) const {
    return is_single(s) || problem_.stages == 2 ||
           (problem_.stages == 3 && columns_.with_stair().has(s));
}

void Exhaustive::find_pairs(std::span<const State> group, Lane& lane) const {
    std::uint64_t work = 0;
    if (!is_one_section(group.front())) {
        const StateSet& wholes = parts_.with_whole();
        work += states_.split(group, wholes, wholes, [&](std::size_t i, State a, State b) {
            ++work;
            lane.wholes[i] = std::min(lane.wholes[i], parts_.whole(a) + parts_.whole(b));
        });
    }
    const StateSet& stairs = parts_.with_stair();
    const auto keep = [&](std::size_t i, State first, std::int64_t waste) {
        ++work;
        if (waste <= yards_->spare())
            lane.firsts[i].push_back(first);
    };
    if (problem_.stages == any_stages)
        work += states_.split(group, stairs, stairs, [&](std::size_t i, State a, State b) {
            keep(i, a, parts_.waste(a) + parts_.waste(b));
        });
    if (problem_.stages == 3) {
        const StateSet& columns = columns_.with_stair();
        work += states_.split(group, columns, stairs, [&](std::size_t i, State a, State b) {
            keep(i, a, columns_.waste(a) + parts_.waste(b));
        });
        work += states_.split(group, stairs, columns, [&](std::size_t i, State a, State b) {
            keep(i, b, parts_.waste(a) + columns_.waste(b));
        });
    }
    lane.maker.count(work);
}

void Exhaustive::make(State s, const std::vector<State>& firsts, Length whole,
                      StairMaker& maker) const {
    maker.start(s);
    maker.count(work_of_a_state);
    maker.offer_whole(whole);
    if (is_single(s))
        try_single(s, maker);
    else if (problem_.stages == 2)
        try_last_piece(s, maker);
    if (problem_.stages == 3 && !is_one_section(s))
        for (const Sides& sides : columns_[s])
            maker.offer(sides.along, sides.across);
    const Stairs& first = problem_.stages == 3 ? columns_ : parts_;
    for (const State a : firsts) {
        maker.offer_beside(first[a], parts_[s - a]);
        if (problem_.stages == any_stages && !is_one_section(s))
            maker.offer_behind(first[a], parts_[s - a]);
    }
    maker.finish();
}

void Exhaustive::try_single(State s, StairMaker& maker) const {
    for (const Orientation& orientation : problem_.kinds[last_kind(s)].orientations)
        maker.offer(static_cast<Length>(orientation.along),
                    static_cast<Length>(orientation.across));
}

void Exhaustive::try_last_piece(State s, StairMaker& maker) const {
    const std::size_t last = last_kind(s);
    const Stair rest = parts_[s - states_.one(last)];
    for (const Orientation& orientation : problem_.kinds[last].orientations) {
        const Sides sides{static_cast<Length>(orientation.along),
                          static_cast<Length>(orientation.across)};
        if (!rest.empty())
            maker.offer_beside(rest, {&sides, 1});
    }
}

} // namespace pelt::nest::straight
