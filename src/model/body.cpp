// SPDX-License-Identifier: MIT
#include "model/body.hpp"

#include <array>

namespace pelt {
namespace {

constexpr std::array<BodyKind, 17> kinds{{
    {"motor scooter", 2, 4, 1, 2.5},
    {"motorcycle", 3, 5, 1.5, 3.5},
    {"city car", 12, 14, 9.5, 12},
    {"hatchback", 15, 18, 12.5, 15.5},
    {"small coupe", 13, 16, 10.5, 13.5},
    {"roadster", 13, 16, 10.5, 13.5},
    {"coupe", 15, 18, 12, 15.5},
    {"saloon", 17, 20, 14, 17},
    {"large saloon", 19, 23, 16, 19.5},
    {"estate", 19, 22, 16, 19},
    {"compact SUV", 18, 21, 15, 18},
    {"large SUV", 22, 26, 18.5, 23},
    {"pickup", 20, 24, 17, 21},
    {"small panel van", 16, 20, 13, 17},
    {"medium panel van", 24, 28, 20, 25},
    {"large panel van", 30, 38, 26, 33},
    {"box van", 22, 30, 20, 27},
}};

} // namespace

std::span<const BodyKind> body_kinds() {
    return kinds;
}

std::optional<BodyKind> body_kind_named(std::string_view name) {
    for (const BodyKind& kind : kinds)
        if (kind.name == name)
            return kind;
    return std::nullopt;
}

bool is_motorcycle(std::string_view body) {
    return body == "motorcycle" || body == "motor scooter";
}

} // namespace pelt
