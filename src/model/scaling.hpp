// SPDX-License-Identifier: MIT
// Panels in other sizes: a drawing stretched along its two axes.
#pragma once

#include "model/vehicle.hpp"

namespace pelt {

/// How many times as large along a drawing's x and y.
struct Scale {
    double x = 1;
    double y = 1;
    /// For what rises out of the drawing: the mean of the two.
    double rise() const { return (x + y) / 2; }
};

/// What of a panel to stretch; what is left was measured on the panel itself.
struct Stretched {
    bool form = true;
    bool crown = true;
    bool openings = true;
    bool inlays = true;
    bool seam_lines = true;
    bool recesses = true;
};

/// Openings, inlays, seam lines and recesses go with the drawing, rises and depths by the mean of
/// the two; what is turned around edges, stops, overlaps and allowances keep their size. A taped
/// diagonal is dropped with the form. A scan is stretched once it is laid flat.
void stretch(Panel& panel, Scale scale, const Stretched& what = {});

} // namespace pelt
