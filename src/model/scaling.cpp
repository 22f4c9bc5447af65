// SPDX-License-Identifier: MIT
#include "model/scaling.hpp"

#include <optional>
#include <variant>

namespace pelt {
namespace {

void stretch(Point& point, Scale scale) {
    point.x *= scale.x;
    point.y *= scale.y;
}

void stretch(OutlineForm& outline, Scale scale) {
    for (OutlineSegment& segment : outline.segments) {
        stretch(segment.to, scale);
        if (segment.through)
            stretch(*segment.through, scale);
    }
    outline.diagonal.reset();
}

void stretch(GirthsForm& girths, Scale scale) {
    for (GirthStation& station : girths.stations) {
        station.at_mm *= scale.x;
        station.up_mm *= scale.y;
        station.down_mm *= scale.y;
    }
    for (std::optional<double>* rise : {&girths.rise_over_spine_mm, &girths.rise_over_girth_mm})
        if (*rise)
            **rise *= scale.rise();
}

void stretch(SurfaceForm& scan, Scale scale) {
    scan.times_x *= scale.x;
    scan.times_y *= scale.y;
}

void stretch_crown(Panel& panel, Scale scale) {
    if (!panel.crown)
        return;
    panel.crown->wide_mm *= scale.rise();
    panel.crown->high_mm *= scale.rise();
}

} // namespace

void stretch(Panel& panel, Scale scale, const Stretched& what) {
    if (what.form)
        std::visit([&](auto& form) { stretch(form, scale); }, panel.form);
    if (what.crown)
        stretch_crown(panel, scale);
    if (what.openings)
        for (Opening& opening : panel.openings)
            stretch(opening.form, scale);
    if (what.inlays)
        for (Inlay& inlay : panel.inlays) {
            stretch(inlay.at, scale);
            inlay.wide_mm *= scale.x;
            inlay.high_mm *= scale.y;
        }
    if (what.seam_lines)
        for (SeamLine& seam : panel.seam_lines)
            for (Point& point : seam.line)
                stretch(point, scale);
    if (what.recesses)
        for (Recess& recess : panel.recesses) {
            recess.wide_mm *= scale.x;
            recess.high_mm *= scale.y;
            recess.depth_mm *= scale.rise();
        }
}

} // namespace pelt
