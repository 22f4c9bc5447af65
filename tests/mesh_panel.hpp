// SPDX-License-Identifier: MIT
// An analytic surface as the panel of a scan, for tests and benches.
#pragma once

#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"
#include "model/vehicle.hpp"

#include <memory>
#include <utility>

namespace pelt::test {

/// Drawn with x to the right and y up. Throws where the triangles are no surface.
inline Panel panel_of(const Mesh& mesh) {
    SurfaceForm form;
    form.surface = std::make_shared<const Surface>(
        geometry::surface_of({mesh.points, mesh.triangles}).surface.value());
    form.across = {1, 0, 0};
    form.upward = {0, 1, 0};
    Panel panel;
    panel.name = "scan";
    panel.form = std::move(form);
    return panel;
}

} // namespace pelt::test
