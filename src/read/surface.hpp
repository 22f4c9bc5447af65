// SPDX-License-Identifier: MIT
// Panels that are scans. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/fields.hpp"

#include <optional>

namespace pelt::read {

/// A direction or a place in space, [x, y, z], as plain numbers.
std::optional<Point3> read_vector(const Fields& fields, std::string_view name, Context& context);

/// Reads `surface`, `surface units`, `forward`, `up` and `outside`, and the scan itself, which lies in the
/// vehicle file's folder or below. Sets the panel's form and, from the way that the scan faces, its
/// heading: forward as drawn with `up` upwards; on a face that looks forward down, on one that
/// looks back up; where `up` points out of the panel, forward is up in the drawing. Which side is
/// out is `outside`'s to say, else the triangles', with a warning where that is in doubt.
void read_surface(const Fields& fields, Panel& panel, Context& context);

} // namespace pelt::read
