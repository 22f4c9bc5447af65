// SPDX-License-Identifier: MIT
#include "nest/straight/recut.hpp"

#include "nest/straight/exact/every_way.hpp"
#include "nest/straight/exact/part.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

/// In the units of trying every way; a recut takes some milliseconds at most.
constexpr std::uint64_t most_work = 5'000'000; ///< of one recut
constexpr double most_words = 800;
constexpr double even_chance = 0.1; ///< that sections without waste are chosen, against waste
constexpr std::int64_t least_work = 2'000;    ///< of one recut, whatever it says itself
constexpr std::int64_t work_per_section = 20; ///< of putting the sections in a random order
constexpr std::size_t most_refused = 40;

struct Choice {
    std::vector<std::size_t> sections;
    std::vector<std::size_t> pieces;
    Steps along = 0;
};

Steps piece_area(const Block& block) {
    if (block.is_piece())
        return block.size[along] * block.size[across];
    Steps sum = 0;
    for (const Block& child : block.children)
        sum += piece_area(child);
    return sum;
}

/// Sections in random order, those that waste much rather first; a piece beside which nothing fits
/// is left alone.
std::vector<std::size_t> random_order(const Problem& problem, const Filled& filled,
                                      Random& random) {
    const Steps width = problem.stretches[filled.stretch].across;
    Steps narrowest = width;
    for (const Kind& kind : problem.kinds)
        for (const Orientation& orientation : kind.orientations)
            narrowest = std::min(narrowest, orientation.across);
    std::vector<std::pair<double, std::size_t>> keyed;
    for (std::size_t i = 0; i < filled.sections.size(); ++i) {
        const Block& section = filled.sections[i];
        const double film = static_cast<double>(section.size[along] * width);
        const double waste = 1 - static_cast<double>(piece_area(section)) / film;
        const double key = random.unit() / (waste + even_chance);
        if (!section.is_piece() || width - section.size[across] >= narrowest)
            keyed.emplace_back(key, i);
    }
    std::sort(keyed.begin(), keyed.end());
    std::vector<std::size_t> order;
    for (const auto& [key, i] : keyed)
        order.push_back(i);
    return order;
}

/// As many sections as an exact search takes. Where there are very many, not all can be tried.
Choice random_choice(const Problem& problem, const Filled& filled, Random& random) {
    const std::vector<std::size_t> order = random_order(problem, filled, random);
    const double most = most_words * (0.05 + 0.95 * random.unit());
    const Stretch& stretch = problem.stretches[filled.stretch];
    Choice choice;
    std::size_t refused = 0;
    for (const std::size_t i : order) {
        std::vector<std::size_t> pieces = choice.pieces;
        list_pieces(filled.sections[i], pieces);
        if (work_of_every_way(Part(problem, stretch, pieces).problem()) > most) {
            if (++refused == most_refused)
                break;
            continue;
        }
        choice.sections.push_back(i);
        choice.pieces = std::move(pieces);
        choice.along += filled.sections[i].size[along];
    }
    std::sort(choice.sections.begin(), choice.sections.end());
    return choice;
}

} // namespace

std::optional<Recut> find_recut(const Problem& problem, const Filled& filled, Random& random,
                                std::int64_t& work) {
    while (work > 0) {
        const Choice choice = random_choice(problem, filled, random);
        const Part part(problem, problem.stretches[filled.stretch], choice.pieces);
        work -= least_work + work_per_section * static_cast<std::int64_t>(filled.sections.size());
        if (choice.sections.size() < 2 || !can_try_every_way(part.problem(), choice.along))
            continue;
        EveryWay every =
            try_every_way(part.problem(), choice.along - 1, most_work, 1, [] { return true; });
        work -= static_cast<std::int64_t>(every.work);
        if (!every.sheet)
            continue;
        Recut recut{choice.sections, {}, choice.along - every.length};
        for (Block& section : every.sheet->front().sections)
            recut.by.push_back(part.in_whole(std::move(section)));
        return recut;
    }
    return std::nullopt;
}

void apply(const Recut& recut, Filled& filled) {
    for (auto i = recut.sections.rbegin(); i != recut.sections.rend(); ++i)
        filled.sections.erase(filled.sections.begin() + static_cast<std::ptrdiff_t>(*i));
    filled.sections.insert(filled.sections.end(), recut.by.begin(), recut.by.end());
}

} // namespace pelt::nest::straight
