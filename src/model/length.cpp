// SPDX-License-Identifier: MIT
#include "model/length.hpp"

#include <array>
#include <utility>

namespace pelt {
namespace {

constexpr std::array<std::pair<Unit, std::string_view>, 6> unit_names{{
    {Unit::mm, "mm"},
    {Unit::cm, "cm"},
    {Unit::m, "m"},
    {Unit::in, "in"},
    {Unit::ft, "ft"},
    {Unit::yd, "yd"},
}};

} // namespace

double to_mm2(DoubleArea doubled) {
    return static_cast<double>(doubled) / 2e6;
}

std::string_view name_of(Unit unit) {
    for (const auto& [u, name] : unit_names)
        if (u == unit)
            return name;
    return "mm";
}

std::optional<Unit> unit_named(std::string_view name) {
    for (const auto& [u, n] : unit_names)
        if (n == name)
            return u;
    return std::nullopt;
}

Um Length::ceil_um() const {
    const Um down = floor_um();
    return down * pm_per_um == pm_ ? down : down + 1;
}

Um Length::floor_um() const {
    const Um towards_zero = pm_ / pm_per_um;
    return pm_ < 0 && towards_zero * pm_per_um != pm_ ? towards_zero - 1 : towards_zero;
}

Length length_of(Unit unit) {
    switch (unit) {
    case Unit::mm:
        return Length::from_um(1'000);
    case Unit::cm:
        return Length::from_um(10'000);
    case Unit::m:
        return Length::from_um(1'000'000);
    case Unit::in:
        return Length::from_um(25'400);
    case Unit::ft:
        return Length::from_um(304'800);
    case Unit::yd:
        return Length::from_um(914'400);
    }
    return Length::from_um(1'000);
}

} // namespace pelt
