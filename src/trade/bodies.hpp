// SPDX-License-Identifier: MIT
// Kinds of vehicle bodies and the film that a change of color takes: for saying that a total looks
// unusual, never for estimating.
#pragma once

#include "model/length.hpp"

#include <optional>
#include <span>
#include <string_view>

namespace pelt::trade {

/// Metres of film 1.52 m wide for the outside of a body, door jambs left out.
struct BodyKind {
    std::string_view name;
    double nested_least_m = 0; ///< what a nest of taped panels should come to
    double nested_most_m = 0;
    std::string_view also = {}; ///< another word for it, which files may use
};

std::span<const BodyKind> body_kinds();

/// By its name or its other word; none where no kind has it.
std::optional<BodyKind> body_kind_named(std::string_view name);

/// Whether a body, by its name, has two wheels and a tank between the rider's knees or below them.
bool is_motorcycle(std::string_view body);

/// Whether a body, by its name, carries cargo behind doors in its rear face.
bool has_doors_in_the_rear(std::string_view body);

/// The width of film that the lengths above are for.
inline constexpr double body_table_width_mm = 1520;
/// Widths of film on which lengths are held against the table.
inline constexpr Um narrowest_compared = 1370 * um_per_mm;
inline constexpr Um widest_compared = 1670 * um_per_mm;

/// A length or an area below or above so much of what is usual is worth a question.
inline constexpr double unusually_little = 0.75;
inline constexpr double unusually_much = 1.30;

/// Film that lies one way takes 5 to 10 % more.
inline constexpr double one_way_takes_least = 1.05;
inline constexpr double one_way_takes_most = 1.10;

/// What share of the film that a change of color takes ends on the vehicle.
inline constexpr double least_share_on_the_vehicle = 0.50;
inline constexpr double most_share_on_the_vehicle = 2.0 / 3;

} // namespace pelt::trade
