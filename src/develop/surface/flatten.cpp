// SPDX-License-Identifier: MIT
#include "develop/surface/flatten.hpp"

#include "develop/surface/relax.hpp"
#include "develop/surface/slim.hpp"
#include "develop/surface/start.hpp"

#include <algorithm>
#include <utility>

namespace pelt::develop {
namespace {

/// Film without a limit of its own: it may reach five times its length.
constexpr double any_stretch = 4;
/// Nearer to the least than this, layouts within the limit are found too slowly.
constexpr double least_room = 1.02;

/// A layout that turns nothing over.
std::optional<Flat> good_start(const Patch& patch, const Sheet3& sheet) {
    constexpr double near_enough = 1e-6;
    auto start = seen_from_outside(patch, sheet.points);
    if (!start)
        start = conformal(patch, sheet.points, sheet.outline);
    if (start) {
        Flat flat = as_rigid_as_possible(patch, *start, near_enough).flat;
        if (turned_over(patch, patch.maps(flat)) == 0)
            return flat;
    }
    const auto disc = on_a_disc(patch, sheet.points, sheet.outline);
    if (!disc || turned_over(patch, patch.maps(*disc)) > 0)
        return std::nullopt;
    return from_origin(least_symmetric(patch, *disc).flat);
}

double largest_stretch(const std::vector<Linear>& maps, std::size_t own) {
    double smallest = maps.front().smaller();
    for (std::size_t t = 0; t < own; ++t)
        smallest = std::min(smallest, maps[t].smaller());
    return std::max(0.0, 1 / smallest - 1);
}

} // namespace

std::optional<LaidLeast> laid_least(const Sheet3& sheet) {
    auto patch = Patch::of(sheet.points, sheet.triangles, sheet.own);
    if (!patch)
        return std::nullopt;
    patch->trust(sheet.trusted);
    const auto start = good_start(*patch, sheet);
    if (!start)
        return std::nullopt;
    Least least = least_stretch(*patch, *start);
    return LaidLeast{std::move(*patch), std::move(least.flat), least.stretch};
}

std::optional<Flattened> flattened(const Sheet3& sheet) {
    auto laid = laid_least(sheet);
    if (!laid)
        return std::nullopt;
    auto& [patch, flat, stretch] = *laid;
    Drape natural = drape(patch, flat, any_stretch);
    const std::vector<Linear> maps = patch.maps(natural.flat);
    // Within the tolerance of its limits the drape may gain on what was found to be the least.
    const bool better = turned_over(patch, maps) == 0 && natural.met;
    const double natural_stretch = better ? largest_stretch(maps, sheet.own) : stretch;
    return Flattened{std::move(patch), flat, stretch, better ? std::move(natural.flat) : flat,
                     std::max(natural_stretch, stretch)};
}

Flat layout_within(const Flattened& flattened, double limit) {
    if (flattened.natural_stretch <= limit)
        return flattened.natural;
    if (limit < least_room * flattened.least_stretch)
        return flattened.least;
    Drape within = drape(flattened.patch, flattened.least, limit);
    if (!within.met || turned_over(flattened.patch, flattened.patch.maps(within.flat)) > 0)
        return flattened.least;
    return std::move(within.flat);
}

std::vector<Point> outline_in(const Flat& flat, const std::vector<int>& loop) {
    std::vector<Point> ring;
    for (const int i : loop)
        ring.push_back(
            {flat[static_cast<std::size_t>(i)].re, flat[static_cast<std::size_t>(i)].im});
    return ring;
}

} // namespace pelt::develop
