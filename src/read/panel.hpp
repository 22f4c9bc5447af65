// SPDX-License-Identifier: MIT
// One panel of a vehicle file. Inside read/ only.
#pragma once

#include "model/film.hpp"
#include "read/fields.hpp"
#include "read/names.hpp"
#include "read/panel_name.hpp"

#include <array>
#include <functional>
#include <string_view>

namespace pelt::read {

/// The keys by which a panel says its shape, of which it has one.
inline constexpr std::array<std::string_view, 4> forms_of_panels{"outline", "size", "girths",
                                                                 "surface"};

/// What happens to a panel between its reading and the check of its shapes; may be empty.
using PanelChange = std::function<void(Panel&)>;

/// Reads and checks a panel. What is wrong has been told; the panel may then be incomplete.
Panel read_panel(const Entry& entry, const Names& hardware, RearDoors rear_doors,
                 const PanelChange& change, Context& context);

/// The openings, seam lines and inlays of a panel.
void read_parts(const Fields& fields, const Names& hardware, Panel& panel, Context& context);

/// `margin: 40 mm` or `{want: 40 mm, least: 15 mm}`. A single figure is what is wanted; least is
/// then the smaller of it and 15 mm.
std::optional<Handling> read_handling(const Fields& allowances, Context& context);

/// `direction`, where it is given.
std::optional<Direction> read_direction(const Fields& fields);

} // namespace pelt::read
