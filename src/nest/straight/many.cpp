// SPDX-License-Identifier: MIT
#include "nest/straight/many.hpp"

#include "nest/straight/exact/part.hpp"
#include "nest/straight/patterns.hpp"
#include "nest/straight/run.hpp"

#include <algorithm>
#include <numeric>

namespace pelt::nest::straight {
namespace {

/// Puts sections on the stretches, the longest first, each on the first that takes it.
std::optional<Sheet> put_on_film(const Problem& problem, std::vector<Block> sections) {
    std::stable_sort(sections.begin(), sections.end(),
                     [](const Block& a, const Block& b) { return a.size[along] > b.size[along]; });
    std::vector<Filled> film;
    std::vector<Steps> free;
    for (Block& section : sections) {
        std::size_t s = 0;
        while (s < free.size() && free[s] < section.size[along])
            ++s;
        while (s == free.size()) {
            if (film.size() == problem.stretches.size())
                return std::nullopt;
            film.push_back({film.size(), {}});
            free.push_back(problem.stretches[film.size() - 1].along);
            if (free.back() < section.size[along])
                ++s;
        }
        free[s] -= section.size[along];
        film[s].sections.push_back(std::move(section));
    }
    std::erase_if(film, [](const Filled& filled) { return filled.sections.empty(); });
    return film;
}

Steps length_of(const std::vector<Block>& sections) {
    Steps sum = 0;
    for (const Block& section : sections)
        sum += section.size[along];
    return sum;
}

Part rest_of(const Problem& problem, const Repeated& repeated) {
    std::vector<std::size_t> kinds;
    for (std::size_t k = 0; k < repeated.left.size(); ++k)
        kinds.insert(kinds.end(), repeated.left[k], k);
    return {problem, problem.stretches.front(), std::move(kinds)};
}

std::size_t common_divisor(const Problem& problem) {
    std::size_t divisor = 0;
    for (const Kind& kind : problem.kinds)
        divisor = std::gcd(divisor, kind.demand());
    return divisor;
}

} // namespace

Steps Many::length() const {
    Steps sum = 0;
    for (const Filled& filled : sheet)
        sum += filled.used();
    return sum;
}

std::optional<Many> lay_out_multiples(const Problem& problem, const Effort& effort,
                                      const Watch& watch) {
    const std::size_t times = common_divisor(problem);
    if (times < 2 || !is_one_kind_of_film(problem))
        return std::nullopt;
    std::vector<std::size_t> kinds;
    for (std::size_t k = 0; k < problem.kinds.size(); ++k)
        kinds.insert(kinds.end(), problem.kinds[k].demand() / times, k);
    const Part once(problem, problem.stretches.front(), std::move(kinds));
    const Watch told = [&](Progress progress) {
        progress.best *= static_cast<Um>(times);
        progress.bound = 0;
        return !watch || watch(progress);
    };
    Run run(once.problem(), effort, told);
    if (!once.possible() || !run.work())
        return std::nullopt;
    std::vector<Block> sections;
    for (const Filled& filled : run.best())
        for (const Block& section : filled.sections)
            sections.insert(sections.end(), times, once.in_whole(section));
    std::optional<Sheet> sheet = put_on_film(problem, std::move(sections));
    return sheet ? std::optional(Many{*std::move(sheet), run.stopped()}) : std::nullopt;
}

std::optional<Many> lay_out_many(const Problem& problem, const Effort& effort, const Watch& watch) {
    if (!kinds_repeat(problem))
        return std::nullopt;
    Repeated repeated = repeated_sections(problem);
    std::vector<Block> sections = std::move(repeated.sections);
    Many out;
    if (const Part rest = rest_of(problem, repeated); !rest.problem().kinds.empty()) {
        const Um known = length_of(sections) * problem.step;
        const Watch told = [&](Progress progress) {
            progress.best += known;
            progress.bound = 0;
            return !watch || watch(progress);
        };
        Run run(rest.problem(), effort, told);
        if (!rest.possible() || !run.work())
            return std::nullopt;
        for (const Filled& filled : run.best())
            for (const Block& section : filled.sections)
                sections.push_back(rest.in_whole(section));
        out.stopped = run.stopped();
    }
    std::optional<Sheet> sheet = put_on_film(problem, std::move(sections));
    if (!sheet)
        return std::nullopt;
    out.sheet = *std::move(sheet);
    return out;
}

} // namespace pelt::nest::straight
