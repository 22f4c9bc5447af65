// SPDX-License-Identifier: MIT
#include "trade/cautions.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

constexpr auto sensors =
    std::to_array<std::string_view>({"radar", "camera", "ultrasonic", "aerial"});
constexpr auto seen = std::to_array<std::string_view>({"lamp", "plate"});

} // namespace

bool measures_or_sends(std::string_view keep_clear) {
    return std::find(sensors.begin(), sensors.end(), keep_clear) != sensors.end();
}

bool must_be_seen(std::string_view keep_clear) {
    return std::find(seen.begin(), seen.end(), keep_clear) != seen.end();
}

bool works_through_film(std::string_view keep_clear) {
    return keep_clear == "radar" || keep_clear == "aerial";
}

} // namespace pelt::trade
