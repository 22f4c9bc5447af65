// SPDX-License-Identifier: MIT
// Kinds of vehicle bodies and the film that a change of colour takes: for saying that a total looks
// unusual, never for estimating.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace pelt {

/// Metres of film 1.52 m wide for the outside of a body, door jambs left out. Common practice, no
/// source.
struct BodyKind {
    std::string_view name;
    double ordered_least_m = 0; ///< what shops order
    double ordered_most_m = 0;
    double nested_least_m = 0; ///< what a nest of taped panels should come to
    double nested_most_m = 0;
};

std::span<const BodyKind> body_kinds();

/// None where no kind has that name.
std::optional<BodyKind> body_kind_named(std::string_view name);

/// Whether a body, by its name, has two wheels and a tank between the rider's knees or below them.
bool is_motorcycle(std::string_view body);

} // namespace pelt
