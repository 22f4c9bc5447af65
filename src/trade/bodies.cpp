// SPDX-License-Identifier: MIT
// Common practice, no source, as all figures in this table's header.
#include "trade/bodies.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

constexpr auto kinds = std::to_array<BodyKind>({
    {"motor scooter", 1, 2.5},
    {"motorcycle", 1.5, 3.5},
    {"city car", 9.5, 12},
    {"hatchback", 12.5, 15.5},
    {"small coupe", 10.5, 13.5},
    {"roadster", 10.5, 13.5},
    {"coupe", 12, 15.5},
    {"sedan", 14, 17, "saloon"},
    {"large sedan", 16, 19.5, "large saloon"},
    {"wagon", 16, 19, "estate"},
    {"compact SUV", 15, 18},
    {"large SUV", 18.5, 23},
    {"pickup", 17, 21},
    {"small panel van", 13, 17},
    {"medium panel van", 20, 25},
    {"large panel van", 26, 33},
    {"box van", 20, 27},
});

constexpr auto motorcycles = std::to_array<std::string_view>({"motorcycle", "motor scooter"});
constexpr auto vans = std::to_array<std::string_view>(
    {"small panel van", "medium panel van", "large panel van", "box van"});

} // namespace

std::span<const BodyKind> body_kinds() {
    return kinds;
}

std::optional<BodyKind> body_kind_named(std::string_view name) {
    for (const BodyKind& kind : kinds)
        if (kind.name == name || (!kind.also.empty() && kind.also == name))
            return kind;
    return std::nullopt;
}

bool is_motorcycle(std::string_view body) {
    return std::find(motorcycles.begin(), motorcycles.end(), body) != motorcycles.end();
}

bool has_doors_in_the_rear(std::string_view body) {
    return std::find(vans.begin(), vans.end(), body) != vans.end();
}

} // namespace pelt::trade
