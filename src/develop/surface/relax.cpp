// SPDX-License-Identifier: MIT
#include "develop/surface/relax.hpp"

#include "develop/surface/level.hpp"
#include "develop/surface/splitting.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::develop {
namespace {

double rigid_energy(const Patch& patch, const std::vector<Linear>& maps) {
    double sum = 0;
    for (std::size_t t = 0; t < patch.own(); ++t) {
        const double a = maps[t].larger() - 1;
        const double b = maps[t].smaller() - 1;
        sum += patch.facets()[t].area * (a * a + b * b);
    }
    return sum / patch.area();
}

/// ln ratio to second order, with a root instead of a logarithm: the same bits everywhere.
double about_ln(double ratio) {
    const double root = std::sqrt(ratio);
    return root - 1 / root;
}

/// What the surface's own triangles were offered below 1, weighed by their share of the area.
void gather(const Patch& patch, const std::vector<Sized>& offered, std::vector<Weighed>& out) {
    out.clear();
    for (std::size_t t = 0; t < patch.own(); ++t) {
        const double share = patch.facets()[t].area / patch.area();
        if (offered[t].smaller() < 1)
            out.push_back({offered[t].smaller(), share});
        if (offered[t].larger() < 1)
            out.push_back({offered[t].larger(), share});
    }
}

/// Singular values within limits; most maps are.
Linear clamped(const Sized& offer, double larger, double smaller, double low) {
    return with_values(offer, std::clamp(larger, low, 1.0), std::clamp(smaller, low, 1.0));
}

double mean_stretch(const Patch& patch, const std::vector<Linear>& maps) {
    double sum = 0;
    for (std::size_t t = 0; t < patch.own(); ++t)
        sum += patch.facets()[t].area * (1 / maps[t].smaller() - 1);
    return sum / patch.area();
}

} // namespace

Rigid as_rigid_as_possible(const Patch& patch, const Flat& start, double settled) {
    constexpr int most_rounds = 2000;
    Rigid out{start, 0};
    std::vector<Linear> maps = patch.maps(out.flat);
    out.energy = rigid_energy(patch, maps);
    for (int round = 0; round < most_rounds; ++round) {
        for (Linear& m : maps)
            m = {unit(m.z), {}};
        out.flat = patch.nearest_to(maps);
        patch.maps(out.flat, maps);
        const double before = out.energy;
        out.energy = rigid_energy(patch, maps);
        if (before - out.energy <= settled * before || out.energy < 1e-22)
            break;
    }
    return out;
}

Least least_stretch(const Patch& patch, const Flat& start) {
    constexpr int most_rounds = 3000;
    constexpr double flat_enough = 1e-10;
    Range range = range_of(patch, patch.maps(start));
    Least best{scaled(start, 1 / range.largest), range.ratio() - 1, range.ratio() - 1};
    if (best.stretch < flat_enough)
        return best;
    double cost = .05 * about_ln(range.ratio());
    double gap_before = range.ratio();
    double low = 1 / range.ratio();
    Splitting splitting(patch, from_origin(best.flat));
    std::vector<Weighed> room;
    for (int round = 1; round <= most_rounds; ++round) {
        splitting.lay();
        gather(patch, splitting.offered(), room);
        low = balanced_low(room, cost, low);
        splitting.take([&](const Sized& offer) {
            return clamped(offer, offer.larger(), offer.smaller(), low);
        });
        range = splitting.range();
        if (range.smallest > 0 && range.ratio() - 1 < best.stretch)
            best = {scaled(splitting.flat(), 1 / range.largest), range.ratio() - 1, 0};
        best.estimate = 1 / low - 1;
        const double gap = std::abs(best.stretch - best.estimate);
        if (round % 25 == 0 && range.smallest > 0 &&
            (gap < 1e-3 * best.stretch || best.stretch < flat_enough))
            break;
        if (round % 100 == 0) {
            if (gap > gap_before / 2) {
                cost /= 2;
                splitting.halve_what_is_owed();
            }
            gap_before = gap;
        }
    }
    return best;
}

Drape drape(const Patch& patch, const Flat& start, double limit) {
    constexpr int most_rounds = 3000;
    // Of the energy towards 1, against the limits; found best of .02 to 10 on shallow and deep
    // panels of 300 to 6000 triangles. Changes are in proportion to it.
    constexpr double pull = .07;
    constexpr double settled = 1e-5;
    constexpr double missed_by = 1e-4;
    const double low = 1 / (1 + limit);
    Splitting splitting(patch, from_origin(start));
    for (int round = 0; round < most_rounds; ++round) {
        splitting.lay();
        const double change = splitting.take([&](const Sized& offer) {
            return clamped(offer, (offer.larger() + pull) / (1 + pull),
                           (offer.smaller() + pull) / (1 + pull), low);
        });
        const Range& range = splitting.range();
        if (change < settled * pull && std::max(range.largest - 1, low - range.smallest) < settled)
            break;
    }
    const Range& range = splitting.range();
    const bool met = range.largest - 1 < missed_by && low - range.smallest < missed_by;
    Flat flat = scaled(splitting.flat(), 1 / std::max(range.largest, 1.0));
    const std::vector<Linear> maps = patch.maps(flat);
    return {std::move(flat), 1 / range_of(patch, maps).smallest - 1, mean_stretch(patch, maps),
            met};
}

} // namespace pelt::develop
