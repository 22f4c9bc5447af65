// SPDX-License-Identifier: MIT
#include "nest/contour/memory.hpp"

namespace pelt::nest {
namespace {

constexpr std::size_t most_bytes = std::size_t{128} << 20U; // of fields
constexpr std::size_t most_forms = 10'000;

} // namespace

std::shared_ptr<Memory> new_memory() {
    return std::make_shared<Memory>();
}

contour::Form Memory::form(const Polygon& outline, bool obstacle,
                           const std::function<contour::Form()>& make) {
    OutlineKey key{outline, obstacle};
    const std::lock_guard lock(making_form_);
    const auto known = forms_.find(key);
    if (known != forms_.end())
        return known->second;
    contour::Form form = make();
    form.obstacle = obstacle;
    form.id = next_id_++;
    return forms_.emplace(std::move(key), std::move(form)).first->second;
}

// One pair is made by one thread; others that ask for it wait.
std::shared_ptr<const contour::Field> Memory::field(const contour::PairKey& key,
                                                    const std::function<contour::Field()>& make) {
    Shard& shard = shards_[(key.a * 31 + key.b * 4 + static_cast<std::uint32_t>(key.quarters)) %
                           shards_.size()];
    const std::lock_guard lock(shard.making);
    std::shared_ptr<const contour::Field>& field = shard.fields[key];
    if (!field) {
        field = std::make_shared<const contour::Field>(make());
        shard.bytes += field->bytes();
    }
    return field;
}

void Memory::forget_if_full() {
    const std::lock_guard lock_forms(making_form_);
    std::size_t bytes = 0;
    for (Shard& shard : shards_) {
        const std::lock_guard lock(shard.making);
        bytes += shard.bytes;
    }
    if (bytes < most_bytes && forms_.size() < most_forms)
        return;
    forms_.clear();
    for (Shard& shard : shards_) {
        const std::lock_guard lock(shard.making);
        shard.fields.clear();
        shard.bytes = 0;
    }
}

} // namespace pelt::nest
