// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"

#include "develop/crown.hpp"
#include "develop/edge_words.hpp"
#include "develop/girths.hpp"
#include "develop/inlays.hpp"
#include "develop/outline.hpp"
#include "develop/surface/surface_panel.hpp"
#include "model/marked_length.hpp"

#include <cmath>
#include <string>
#include <utility>

namespace pelt::develop {
namespace {

Point scaled(Point p, Point scale) {
    return {p.x * scale.x, p.y * scale.y};
}

/// What lies within the outline, by the same scale.
void add_inside(const Panel& panel, Point scale, Blank& blank, Faults& faults) {
    const bool scan = std::holds_alternative<SurfaceForm>(panel.form); // its openings are there
    for (const Opening& opening : panel.openings) {
        if (scan)
            break;
        TaggedRing ring = flattened(opening.form, scale, true);
        ring.edge.assign(ring.points.size(), 0);
        blank.openings.push_back({opening.name, std::move(ring)});
    }
    for (const SeamLine& line : panel.seam_lines) {
        BlankSeamLine developed{{}, line.always};
        for (const Point& p : line.line)
            developed.points.push_back(scaled(p, scale));
        blank.seam_lines.push_back(std::move(developed));
    }
    add_inlays(panel, scale, blank, faults);
}

double visible_mm2(const Blank& blank) {
    double doubled = doubled_area(blank.outline.points);
    for (const BlankOpening& opening : blank.openings)
        doubled += doubled_area(opening.ring.points);
    return doubled / 2;
}

/// The bow of one axis of a crown; a fault where no surface has it.
Bow bow_of(double extent, double rise, const Crown& crown, const Panel& panel, Faults& faults) {
    if (!crown.measured_over)
        return bow_over(extent, rise);
    if (const std::optional<Bow> bow = bow_along(extent, rise))
        return *bow;
    faults.push_back({Severity::file, panel.place, panel.name,
                      "a crown of " + marked_mm(std::abs(rise), Told::nearest) +
                          " cannot rise over " + marked_mm(extent, Told::nearest) +
                          " measured along the surface",
                      "leave out 'measured: over' where the tape ran straight across"});
    return bow_over(extent, 0);
}

Rim rim_of(const OutlineForm& form) {
    return is_circle(form) ? Rim::circle : is_ellipse(form) ? Rim::ellipse : Rim::any;
}

/// Develops a typed outline; returns the scale of its coordinates.
Point develop_outline(const OutlineForm& form, const Panel& panel, DevelopedPanel& out,
                      Faults& faults) {
    Point scale{1, 1};
    if (panel.crown) {
        const Extent extent = extent_of(form);
        const Bow wide = bow_of(extent.wide(), panel.crown->wide_mm, *panel.crown, panel, faults);
        const Bow high =
            bow_of(extent.high_mm(), panel.crown->high_mm, *panel.crown, panel, faults);
        out.stretch = stretch_of(wide, high, rim_of(form));
        if (!panel.crown->measured_over)
            scale = {wide.arc / wide.chord, high.arc / high.chord};
    }
    Blank blank;
    blank.outline = flattened(form, scale, false);
    blank.edges = edges_of(form);
    out.blanks.push_back(std::move(blank));
    return scale;
}

void develop_girths(const GirthsForm& form, const Panel& panel, DevelopedPanel& out,
                    Faults& faults) {
    if (panel.crown)
        faults.push_back({Severity::file, panel.place, panel.name,
                          "has both 'girths' and 'crown', but girths are true lengths already",
                          "leave one of them out"});
    const std::size_t before = faults.size();
    out.blanks.push_back(blank_of(form, panel, faults));
    if (faults.size() == before)
        out.stretch = stretch_of(form, panel, faults);
}

} // namespace

DevelopedPanel develop(const Panel& panel, Faults& faults, const Purpose& purpose) {
    DevelopedPanel out;
    Faults found;
    Point scale{1, 1};
    if (const auto* outline = std::get_if<OutlineForm>(&panel.form))
        scale = develop_outline(*outline, panel, out, found);
    else if (const auto* girths = std::get_if<GirthsForm>(&panel.form))
        develop_girths(*girths, panel, out, found);
    else if (const auto* scan = std::get_if<SurfaceForm>(&panel.form))
        develop_surface(*scan, panel, purpose, out, found);
    if (!stops(found)) {
        Blank& blank = out.blanks.front();
        blank.scale = scale;
        add_inside(panel, scale, blank, found);
        check_edge_words(panel, blank, found);
        out.visible_mm2 = visible_mm2(blank);
    }
    if (stops(found))
        out = {};
    faults.insert(faults.end(), found.begin(), found.end());
    return out;
}

} // namespace pelt::develop
