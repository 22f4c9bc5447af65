// SPDX-License-Identifier: MIT
#include "nest/contour/alike.hpp"

#include "nest/contour/mover.hpp"

namespace pelt::nest::contour {
namespace {

// Neighbours are what comes this near (share of the item's half side) to an item's box.
constexpr double beside = 0.1;

} // namespace

Alike::Alike(const Problem& problem)
    : problem_(&problem), first_(problem.kinds.size()), count_(problem.kinds.size()) {
    for (std::size_t i = problem.items.size(); i-- > 0;) {
        first_[problem.items[i]] = static_cast<std::uint32_t>(i);
        ++count_[problem.items[i]];
    }
}

// Another item of the same kind; items come kind by kind.
std::size_t Alike::draw_like(std::size_t item, Random& random) const {
    const std::uint32_t kind = problem_->items[item];
    const std::size_t drawn = first_[kind] + random.below(count_[kind] - 1);
    return drawn < item ? drawn : drawn + 1;
}

std::optional<Alike::Pair> Alike::draw_pair(const Scene& scene, std::size_t item,
                                            Random& random) const {
    const std::size_t like_item = draw_like(item, random);
    const Pose& like = scene.pose(like_item);
    std::optional<Pair> pair;
    std::size_t seen = 0;
    const double reach =
        problem_->fields->most_need() + beside * problem_->options[like.option].size;
    scene.near(scene.box_at(like.option, like.at), reach, [&](std::uint32_t j, const Pose& pose) {
        if (j != item && j != like_item && j < scene.items() && count_[problem_->items[j]] > 1 &&
            random.below(++seen) == 0)
            pair = Pair{like, pose, j};
        return true;
    });
    return pair;
}

std::optional<std::uint32_t> Alike::turned_option(std::uint32_t option, int quarters,
                                                  const Kind& kind) const {
    const Option& from = problem_->options[option];
    for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o) {
        const Option& to = problem_->options[o];
        if (to.form == from.form && to.quarters == ((from.quarters + quarters) & 3))
            return o;
    }
    return std::nullopt;
}

std::optional<Pose> Alike::place(const Scene& scene, std::size_t item, double end,
                                 Random& random) const {
    const std::optional<Pair> pair = draw_pair(scene, item, random);
    if (!pair)
        return std::nullopt;
    const std::size_t partner = draw_like(pair->other_item, random);
    if (partner == item)
        return std::nullopt;
    const Pose& beside_it = scene.pose(partner);
    const Option& there = problem_->options[beside_it.option];
    const Option& here = problem_->options[pair->other.option];
    if (there.form != here.form)
        return std::nullopt;
    const int quarters = there.quarters - here.quarters;
    const std::optional<std::uint32_t> option =
        turned_option(pair->own.option, quarters, problem_->kind_of(item));
    if (!option)
        return std::nullopt;
    const Vec at = beside_it.at + quarter_turned(pair->own.at - pair->other.at, quarters);
    const std::optional<Span> room = room_before(*problem_, *option, beside_it.bay, end);
    if (!room || !admits(problem_->bays[beside_it.bay], problem_->kind_of(item)) ||
        at.x < room->low.x || at.x > room->high.x || at.y < room->low.y || at.y > room->high.y)
        return std::nullopt;
    return Pose{at, *option, beside_it.bay};
}

} // namespace pelt::nest::contour
