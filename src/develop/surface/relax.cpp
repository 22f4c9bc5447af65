// SPDX-License-Identifier: MIT
#include "develop/surface/relax.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::develop {
namespace {

constexpr double over_relaxation = 1.6;

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

/// The splitting that both methods below share: a layout, wanted maps near to its maps that obey
/// the limits, and what is still owed between the two.
class Splitting {
public:
    Splitting(const Patch& patch, Flat start)
        : patch_(patch), flat_(std::move(start)), maps_(patch.maps(flat_)), wanted_(maps_),
          owed_(maps_.size()), offered_(maps_), target_(maps_) {}

    const Flat& flat() const { return flat_; }
    const std::vector<Linear>& maps() const { return maps_; }
    const std::vector<Linear>& offered() const { return offered_; }

    /// The layout nearest to what is wanted less what is owed; offers its maps, over-relaxed, plus
    /// what is owed.
    void lay() {
        for (std::size_t t = 0; t < maps_.size(); ++t)
            target_[t] = {wanted_[t].z - owed_[t].z, wanted_[t].w - owed_[t].w};
        flat_ = patch_.nearest_to(target_);
        patch_.maps(flat_, maps_);
        const double keep = 1 - over_relaxation;
        for (std::size_t t = 0; t < maps_.size(); ++t)
            offered_[t] = {over_relaxation * maps_[t].z + keep * wanted_[t].z + owed_[t].z,
                           over_relaxation * maps_[t].w + keep * wanted_[t].w + owed_[t].w};
    }

    /// Takes what `rule` makes of every offer, and of those of lids what keeps them from closing;
    /// returns the largest change of what is wanted on the surface.
    template <class Rule>
    double take(Rule rule) {
        double change = 0;
        for (std::size_t t = 0; t < maps_.size(); ++t) {
            const bool lid = t >= patch_.own();
            const Linear taken = lid ? open(offered_[t]) : rule(offered_[t]);
            if (!lid)
                change =
                    std::max({change, size(taken.z - wanted_[t].z), size(taken.w - wanted_[t].w)});
            owed_[t] = {offered_[t].z - taken.z, offered_[t].w - taken.w};
            wanted_[t] = taken;
        }
        return change;
    }

    void halve_what_is_owed() {
        for (Linear& y : owed_)
            y = {.5 * y.z, .5 * y.w};
    }

private:
    static Linear open(const Linear& lid) {
        return with_values(lid, std::clamp(lid.larger(), .2, 5.0),
                           std::clamp(lid.smaller(), .2, 5.0));
    }

    const Patch& patch_;
    Flat flat_;
    std::vector<Linear> maps_;
    std::vector<Linear> wanted_;
    std::vector<Linear> owed_;
    std::vector<Linear> offered_;
    std::vector<Linear> target_;
};

/// The root of sum of shares [(lo - s1)+ + (lo - s2)+] = cost / lo on (0.05, 1).
double balanced_low(const Patch& patch, const std::vector<Linear>& offered, double cost,
                    std::vector<std::pair<double, double>>& room) {
    room.clear();
    for (std::size_t t = 0; t < patch.own(); ++t) {
        const double share = patch.facets()[t].area / patch.area();
        const double larger = offered[t].larger();
        const double smaller = offered[t].smaller();
        if (smaller < 1)
            room.emplace_back(smaller, share);
        if (larger < 1)
            room.emplace_back(larger, share);
    }
    const auto short_of = [&](double low) {
        double sum = 0;
        for (const auto& [value, share] : room)
            sum += share * std::max(0.0, low - value);
        return sum < cost / low;
    };
    double low = .05;
    double high = 1;
    if (short_of(high))
        return high;
    for (int halving = 0; halving < 30; ++halving) {
        const double middle = (low + high) / 2;
        (short_of(middle) ? low : high) = middle;
    }
    return (low + high) / 2;
}

Linear clamped(const Linear& map, double low) {
    return with_values(map, std::clamp(map.larger(), low, 1.0),
                       std::clamp(map.smaller(), low, 1.0));
}

double mean_stretch(const Patch& patch, const std::vector<Linear>& maps) {
    double sum = 0;
    for (std::size_t t = 0; t < patch.own(); ++t)
        sum += patch.facets()[t].area * (1 / maps[t].smaller() - 1);
    return sum / patch.area();
}

} // namespace

Rigid as_rigid_as_possible(const Patch& patch, const Flat& start) {
    constexpr int most_rounds = 2000;
    constexpr double settled = 1e-9;
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
    Splitting splitting(patch, from_origin(best.flat));
    std::vector<std::pair<double, double>> room;
    for (int round = 1; round <= most_rounds; ++round) {
        splitting.lay();
        const double low = balanced_low(patch, splitting.offered(), cost, room);
        splitting.take([&](const Linear& offer) { return clamped(offer, low); });
        range = range_of(patch, splitting.maps());
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
    constexpr double pull = .3; ///< of the energy towards 1, against the limits
    constexpr double settled = 1e-5;
    constexpr double missed_by = 1e-4;
    const double low = 1 / (1 + limit);
    Splitting splitting(patch, from_origin(start));
    Range range = range_of(patch, splitting.maps());
    for (int round = 0; round < most_rounds; ++round) {
        splitting.lay();
        const double change = splitting.take([&](const Linear& offer) {
            return with_values(offer, std::clamp((offer.larger() + pull) / (1 + pull), low, 1.0),
                               std::clamp((offer.smaller() + pull) / (1 + pull), low, 1.0));
        });
        range = range_of(patch, splitting.maps());
        const double violation = std::max(range.largest - 1, low - range.smallest);
        if (change < settled && violation < settled)
            break;
    }
    const bool met = range.largest - 1 < missed_by && low - range.smallest < missed_by;
    Flat flat = scaled(splitting.flat(), 1 / std::max(range.largest, 1.0));
    const std::vector<Linear> maps = patch.maps(flat);
    return {std::move(flat), 1 / range_of(patch, maps).smallest - 1, mean_stretch(patch, maps),
            met};
}

} // namespace pelt::develop
