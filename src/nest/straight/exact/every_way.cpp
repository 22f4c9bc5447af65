// SPDX-License-Identifier: MIT
#include "nest/straight/exact/every_way.hpp"

#include "nest/straight/exact/exhaustive.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

bool is_one_endless_film(const Problem& problem, Steps length) {
    const Stretch& first = problem.stretches.front();
    return first.from == 0 && length <= first.along &&
           std::all_of(problem.stretches.begin(), problem.stretches.end(), [&](const Stretch& s) {
               return s.is_new && s.across_um == first.across_um;
           });
}

/// Two sets of weights that no choice of others beats by much, one for each direction.
std::vector<std::vector<double>> sharp_weights(const std::vector<Demand>& demands, Steps width,
                                               Steps length) {
    const std::size_t pivots = 12 * demands.size() + 10;
    return {best_weights(demands, width, pivots).each,
            best_weights(turned(demands), length, pivots).each};
}

EveryWay outcome(const Exhaustive& search, Exhaustive::End end) {
    EveryWay out;
    out.complete = end == Exhaustive::End::none || end == Exhaustive::End::found;
    out.stopped = end == Exhaustive::End::stopped;
    out.work = search.work_done();
    if (end == Exhaustive::End::found) {
        out.sheet = Sheet{{0, search.sections()}};
        out.length = search.length();
    }
    return out;
}

} // namespace

bool can_try_every_way(const Problem& problem, Steps length) {
    return !problem.stretches.empty() && is_one_endless_film(problem, length) &&
           Exhaustive::possible(problem);
}

double work_of_every_way(const Problem& problem) {
    return Exhaustive::least_work(problem);
}

EveryWay try_every_way(const Problem& problem, Steps length, std::uint64_t work, int threads,
                       const std::function<bool()>& go_on, bool sharp) {
    std::vector<std::vector<double>> weights;
    if (sharp)
        weights = sharp_weights(demands_of(problem), problem.stretches.front().across, length);
    Exhaustive search(problem, std::move(weights));
    return outcome(search, search.run(length, work, threads, go_on));
}

EveryWay try_every_strip(const Problem& problem, Steps length) {
    Exhaustive search(problem, {});
    search.want_one_section();
    constexpr std::uint64_t endless = std::numeric_limits<std::uint64_t>::max();
    return outcome(search, search.run(length, endless, 1, [] { return true; }));
}

} // namespace pelt::nest::straight
