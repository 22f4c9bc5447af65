// SPDX-License-Identifier: MIT
#include "nest/straight/exact/every_way.hpp"

#include "nest/straight/exact/exhaustive.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

// Set by measurement: the first length that is tried lies in this part of what is open, and each
// leaves by so much more film to spare than the last.
constexpr Steps first_share = 8;
constexpr double spare_growth = 0.2;
constexpr double flat_share = 1.25;

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

Steps first_try(Steps bound, Steps length) {
    return bound + (length - bound) / first_share;
}

/// The work goes about with the sixth power of the film to spare, once there is more of it than
/// what every length asks; until then strides become longer.
double next_growth(double growth, std::uint64_t work, std::uint64_t before) {
    const bool flat = static_cast<double>(work) < flat_share * static_cast<double>(before);
    return flat ? 2 * growth : spare_growth;
}

Steps next_try(const std::vector<Demand>& demands, Steps width, Steps now, double growth,
               Steps length) {
    double spare = static_cast<double>(now) * static_cast<double>(width);
    for (const Demand& demand : demands)
        spare -= static_cast<double>(least_area(demand)) * static_cast<double>(demand.count);
    const double more = std::max(spare * growth / static_cast<double>(width), 1.0);
    return more < static_cast<double>(length - now) ? now + static_cast<Steps>(more) : length;
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
                       const std::function<bool()>& go_on) {
    Exhaustive search(problem, {});
    return outcome(search, search.run(length, work, threads, go_on));
}

EveryWay try_from_below(const Problem& problem, Steps bound, Steps length, std::uint64_t work,
                        int threads, const std::function<bool()>& go_on) {
    const std::vector<Demand> demands = demands_of(problem);
    const Steps width = problem.stretches.front().across;
    Exhaustive search(problem, sharp_weights(demands, width, length));
    EveryWay out;
    double growth = spare_growth;
    std::uint64_t before = 0;
    // With few turns there are so few parts that the length hardly matters.
    Steps now = problem.stages == any_stages ? first_try(bound, length) : length;
    while (true) {
        const std::uint64_t done = out.work;
        out = outcome(search, search.run(now, work - std::min(work, done), threads, go_on));
        if (out.complete)
            bound = out.sheet ? out.length : now + 1;
        out.bound = bound;
        growth = next_growth(growth, out.work, before);
        before = out.work;
        out.work += done;
        if (!out.complete || out.sheet || now == length)
            return out;
        now = next_try(demands, width, now, growth, length);
    }
}

EveryWay try_every_strip(const Problem& problem, Steps length) {
    Exhaustive search(problem, {});
    search.want_one_section();
    constexpr std::uint64_t endless = std::numeric_limits<std::uint64_t>::max();
    return outcome(search, search.run(length, endless, 1, [] { return true; }));
}

} // namespace pelt::nest::straight
