// SPDX-License-Identifier: MIT
// The tables of a measuring form: panels by width and height, parts to take off. Inside report/
// only.
#pragma once

#include "model/vehicle.hpp"
#include "report/draw/picture.hpp"
#include "report/numbers.hpp"
#include "report/paper/flow.hpp"

namespace pelt::report::paper {

/// A row a panel; what a known vehicle's file says stands small in the boxes. Without a vehicle
/// empty rows, as many as leave `below` free on the page.
void add_panel_rows(Flow& flow, const Vehicle* vehicle, double below, const Measures& measures,
                    const draw::Letters& letters);

/// A row a part, and some empty ones.
void add_part_rows(Flow& flow, const Vehicle* vehicle, const draw::Letters& letters);
double height_of_part_rows(const Vehicle* vehicle);

} // namespace pelt::report::paper
