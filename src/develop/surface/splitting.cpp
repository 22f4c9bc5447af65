// SPDX-License-Identifier: MIT
#include "develop/surface/splitting.hpp"

#include <utility>

namespace pelt::develop {
namespace {

constexpr double over_relaxation = 1.6;

} // namespace

Splitting::Splitting(const Patch& patch, Flat start)
    : patch_(patch), flat_(std::move(start)), maps_(patch.maps(flat_)), wanted_(maps_),
      owed_(maps_.size()), target_(maps_), offered_(maps_.size()) {
    range_ = range_of(patch, maps_);
}

void Splitting::lay() {
    for (std::size_t t = 0; t < maps_.size(); ++t)
        target_[t] = {wanted_[t].z - owed_[t].z, wanted_[t].w - owed_[t].w};
    flat_ = patch_.nearest_to(target_);
    patch_.maps(flat_, maps_);
    range_ = range_of(patch_, maps_);
    const double keep = 1 - over_relaxation;
    for (std::size_t t = 0; t < maps_.size(); ++t)
        offered_[t] = sized({over_relaxation * maps_[t].z + keep * wanted_[t].z + owed_[t].z,
                             over_relaxation * maps_[t].w + keep * wanted_[t].w + owed_[t].w});
}

void Splitting::halve_what_is_owed() {
    for (Linear& y : owed_)
        y = {.5 * y.z, .5 * y.w};
}

Linear Splitting::open(const Sized& lid) {
    constexpr double least = .2;
    constexpr double most = 5;
    return with_values(lid, std::clamp(lid.larger(), least, most),
                       std::clamp(lid.smaller(), least, most));
}

} // namespace pelt::develop
