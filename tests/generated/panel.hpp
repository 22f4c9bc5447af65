// SPDX-License-Identifier: MIT
// One drawn panel: its form, and what is written beside it. Inside generated/ only.
#pragma once

#include "job.hpp"

namespace pelt::generated {

/// A square that surely lies inside a form, `room` to each side of its middle.
struct Spot {
    int x = 0, y = 0; ///< its middle
    int room = 0;
};

/// A form and what else may be placed on it. Tenths of a millimetre, the panel's drawing.
struct Form {
    std::string text;
    int left = 0, right = 0, low = 0, high = 0; ///< the box around it
    Spot middle;
    std::vector<std::string> edges; ///< names of edges, "2-3" and by names of their own
    bool is_scan = false;
    bool has_hole = false;
    bool may_bulge = false; ///< a crown may stand beside it
    std::string scan;       ///< bytes of the mesh
};

Form draw_form(Draw& draw, Pen& pen, const std::string& scan_name);
/// A small mesh as OBJ; what it needs beside itself stands in the form's text.
Form draw_scan(Draw& draw, const std::string& scan_name);

std::string draw_edges(Draw& draw, Pen& pen, const Form& form,
                       const std::vector<std::string>& hardware);
/// In the spot, which is the form's or a part of it.
std::string draw_openings(Draw& draw, Pen& pen, const Form& form, const Spot& spot,
                          const std::vector<std::string>& hardware);
std::string draw_seams(Draw& draw, Pen& pen, const Form& form);
/// In the spot, where no opening may lie.
std::string draw_inlays(Draw& draw, Pen& pen, const Spot& spot, DrawnPanel& panel);
std::string draw_allowances(Draw& draw, Pen& pen);

} // namespace pelt::generated
