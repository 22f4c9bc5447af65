// SPDX-License-Identifier: MIT
// From a typed outline to tagged rings. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

#include <vector>

namespace pelt::develop {

/// Low and high corner, millimetres.
struct Extent {
    Point low;
    Point high;
    double wide() const { return high.x - low.x; }
    double high_mm() const { return high.y - low.y; }
};

/// The outline's full extent as typed, arcs included.
Extent extent_of(const OutlineForm& form);

/// The outline with its arcs flattened, every coordinate multiplied by `scale`; counter-clockwise,
/// or clockwise where `clockwise` is set, whichever way it was typed. Segments are tagged with
/// their edge: edge i runs from point i+1 to the next.
TaggedRing flattened(const OutlineForm& form, Point scale, bool clockwise);

/// The edges that the tags of the flattened outline mean. Normals are those of the drawing as
/// typed, outward of the region that the outline encloses.
std::vector<BlankEdge> edges_of(const OutlineForm& form);

/// True when every edge is an arc of one and the same circle, to the flattening tolerance.
bool is_circle(const OutlineForm& form);

/// True when the outline runs within a few hundredths of the ellipse that fills its extent.
bool is_ellipse(const OutlineForm& form);

/// Twice the signed area, mm²: positive counter-clockwise.
double doubled_area(const std::vector<Point>& ring);

} // namespace pelt::develop
