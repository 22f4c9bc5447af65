// SPDX-License-Identifier: MIT
// The splitting that the search for the least stretch and the drape share. Inside develop/ only.
#pragma once

#include "develop/surface/patch.hpp"

#include <algorithm>
#include <vector>

namespace pelt::develop {

/// A map with the sizes of its two parts: roots are what costs time.
struct Sized {
    Linear map;
    double z = 0;
    double w = 0;
    double larger() const { return z + w; }
    double smaller() const { return z - w; }
};
inline Sized sized(const Linear& map) {
    return {map, size(map.z), size(map.w)};
}
/// The map with the same singular directions and other singular values.
inline Linear with_values(const Sized& from, double larger, double smaller) {
    const double z = (larger + smaller) / 2;
    const double w = (larger - smaller) / 2;
    return {from.z > 0 ? (z / from.z) * from.map.z : Cx{z, 0},
            from.w > 0 ? (w / from.w) * from.map.w : Cx{w, 0}};
}

/// A layout, wanted maps near to its maps that obey limits, and what is still owed between the two:
/// the alternating direction method of multipliers, over-relaxed.
class Splitting {
public:
    /// `start` has point 0 at 0.
    Splitting(const Patch& patch, Flat start);

    const Flat& flat() const { return flat_; }
    /// Of the layout, on the surface's own triangles.
    const Range& range() const { return range_; }
    /// Of every triangle: its map in the layout, over-relaxed, plus what is owed.
    const std::vector<Sized>& offered() const { return offered_; }

    /// The layout nearest to what is wanted less what is owed; makes new offers.
    void lay();

    /// Takes what `rule` makes of every offer, and of those of lids what keeps them from closing;
    /// returns the largest change of what is wanted on the surface.
    template <class Rule>
    double take(Rule rule) {
        double change = 0;
        const std::size_t own = patch_.own();
        for (std::size_t t = 0; t < own; ++t) {
            const Linear taken = rule(offered_[t]);
            change =
                std::max({change, square(taken.z - wanted_[t].z), square(taken.w - wanted_[t].w)});
            keep(t, taken);
        }
        for (std::size_t t = own; t < offered_.size(); ++t)
            keep(t, open(offered_[t]));
        return std::sqrt(change);
    }

    void halve_what_is_owed();

private:
    static double square(Cx a) { return a.re * a.re + a.im * a.im; }
    static Linear open(const Sized& lid);
    void keep(std::size_t t, const Linear& taken) {
        owed_[t] = {offered_[t].map.z - taken.z, offered_[t].map.w - taken.w};
        wanted_[t] = taken;
    }

    const Patch& patch_;
    Flat flat_;
    Range range_;
    std::vector<Linear> maps_;
    std::vector<Linear> wanted_;
    std::vector<Linear> owed_;
    std::vector<Linear> target_;
    std::vector<Sized> offered_;
};

} // namespace pelt::develop
