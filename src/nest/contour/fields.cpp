// SPDX-License-Identifier: MIT
#include "nest/contour/fields.hpp"

#include <algorithm>

namespace pelt::nest::contour {
namespace {

// Beyond the distance that is asked, fields know this share of the pair's size more, so that local
// moves see what they are about to touch.
constexpr double look_ahead = 0.06;

Ring turned(const Ring& ring, int quarters) {
    Ring out;
    out.reserve(ring.size());
    for (const GridPoint& p : ring) {
        switch (quarters & 3) {
        case 0:
            out.push_back(p);
            break;
        case 1:
            out.push_back({-p.y, p.x});
            break;
        case 2:
            out.push_back({-p.x, -p.y});
            break;
        default:
            out.push_back({p.y, -p.x});
            break;
        }
    }
    return out;
}

double extent(const Form& form) {
    return form.box.high.x - form.box.low.x + form.box.high.y - form.box.low.y;
}

} // namespace

Fields::Fields(std::vector<Form> forms, double need, double need_obstacle,
               std::shared_ptr<Memory> memory)
    : forms_(std::move(forms)), need_(need), need_obstacle_(need_obstacle),
      slot_count_(forms_.size() * (forms_.size() + 1) / 2 * 4),
      slots_(std::make_unique<std::atomic<const Field*>[]>(slot_count_)),
      memory_(std::move(memory)) {}

const Field* Fields::build(std::size_t slot, std::uint32_t a, std::uint32_t b, int relative) const {
    const auto make = [&] {
        Body moving;
        for (const Ring& part : forms_[b].body.parts)
            moving.parts.push_back(turned(part, relative));
        for (const Ring& ring : forms_[b].body.rings)
            moving.rings.push_back(turned(ring, relative));
        const double asked = need(a, b) + most_margin_um;
        const double reach = asked + look_ahead * (extent(forms_[a]) + extent(forms_[b])) / 2;
        return Field(forbidden_boundary(forms_[a].body, moving), asked, reach);
    };
    std::shared_ptr<const Field> field =
        memory_->field({forms_[a].id, forms_[b].id, relative, need(a, b)}, make);
    const std::lock_guard lock(keeping_);
    if (const Field* there = slots_[slot].load(std::memory_order_acquire))
        return there;
    slots_[slot].store(field.get(), std::memory_order_release);
    return kept_.emplace_back(std::move(field)).get();
}

std::size_t Fields::bytes() const {
    std::size_t sum = 0;
    for (std::size_t i = 0; i < slot_count_; ++i)
        if (const Field* field = slots_[i].load())
            sum += field->bytes();
    return sum;
}

} // namespace pelt::nest::contour
