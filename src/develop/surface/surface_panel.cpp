// SPDX-License-Identifier: MIT
#include "develop/surface/surface_panel.hpp"

#include "develop/outline.hpp"
#include "develop/surface/as_drawn.hpp"
#include "develop/surface/decimate.hpp"
#include "develop/surface/dividing.hpp"
#include "develop/surface/laid_scan.hpp"
#include "develop/surface/roof.hpp"
#include "develop/surface/scan_openings.hpp"
#include "develop/surface/stretch_map.hpp"
#include "develop/surface/surface_edges.hpp"
#include "geometry/geometry.hpp"
#include "geometry/mesh/mesh.hpp"
#include "geometry/predicates.hpp"
#include "model/marked_length.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <string>
#include <utility>

namespace pelt::develop {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

/// Snapped to the grid, so that every machine goes on from the same figures.
Point snapped(Cx u) {
    return geometry::in_mm(geometry::on_grid(Point{u.re, u.im}));
}

std::vector<Point> ring_of(const Flat& flat, const std::vector<int>& loop) {
    std::vector<Point> ring;
    for (const int i : loop) {
        const Point p = snapped(flat[index(i)]);
        if (ring.empty() || ring.back() != p)
            ring.push_back(p);
    }
    while (ring.size() > 1 && ring.front() == ring.back())
        ring.pop_back();
    return ring;
}

bool is_whole(const Blank& blank) {
    std::vector<Ring> rings{geometry::on_grid(blank.outline.points)};
    for (const BlankOpening& opening : blank.openings)
        rings.push_back(geometry::on_grid(opening.ring.points));
    if (std::any_of(rings.begin(), rings.end(), [](const Ring& r) { return r.size() < 3; }))
        return false;
    const geometry::Arrangement found = geometry::arrange(rings);
    return !found.contact;
}

/// The shorter and the longer one of the box around a ring.
std::pair<double, double> sides_of(const std::vector<Point>& ring) {
    Point low = ring.front();
    Point high = low;
    for (const Point& p : ring) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return std::minmax({high.x - low.x, high.y - low.y});
}

void tell_quality(const LaidScan& laid, const SurfaceForm& form, const Panel& panel,
                  Faults& faults) {
    const std::size_t before = laid.scan().triangles.size();
    const std::size_t after = laid.surface().triangles.size();
    if (after < before)
        faults.push_back({Severity::note, form.place, panel.name,
                          "the scan '" + form.file + "' was thinned out from " +
                              std::to_string(before) + " to " + std::to_string(after) +
                              " triangles, off by " + marked_mm(laid.off_mm(), Told::finely) +
                              " at most",
                          ""});
    if (laid.too_rough())
        faults.push_back({Severity::warning, form.place, panel.name,
                          "its stretch is not checked: the scan is rough by " +
                              marked_mm(laid.noise_mm(), Told::finely) + ", too much for points " +
                              marked_mm(laid.spacing_mm(), Told::finely) + " apart",
                          "scan it again, or let the scanner's program smooth it without "
                          "shrinking it"});
}

void needs_a_cut(const SurfaceForm& form, const Panel& panel, const std::string& why,
                 Faults& faults) {
    faults.push_back({Severity::file, form.place, panel.name, "the scan '" + form.file + "' " + why,
                      "cut the scan in two, or open it where a seam may lie"});
}

Blank blank_of(const Flat& layout, const Surface& surface, const Panel& panel,
               const std::vector<std::size_t>& loops) {
    Blank blank;
    DividedRing divided = divided_ring(ring_of(layout, surface.loops.front()));
    blank.outline = std::move(divided.ring);
    blank.edges = std::move(divided.edges);
    for (std::size_t i = 0; i < loops.size(); ++i) {
        TaggedRing ring{ring_of(layout, surface.loops[loops[i]]), {}};
        ring.edge.assign(ring.points.size(), 0);
        blank.openings.push_back({panel.openings[i].name, std::move(ring)});
    }
    return blank;
}

StretchAsked stretch_of(const LaidScan& laid, const Blank& blank, bool with_bound) {
    StretchAsked out;
    out.percent = 100 * laid.flat()->least_stretch;
    if (!laid.too_rough()) {
        out.is = StretchAsked::Is::estimate;
        out.natural_percent = 100 * laid.flat()->natural_stretch;
    }
    if (const auto bound = with_bound ? laid.bound() : std::nullopt)
        out.bound_percent = 100 * *bound;
    out.curvature = total_curvature(laid.sheet()) / laid.flat()->patch.area();
    const auto [shorter, longer] = sides_of(blank.outline.points);
    out.width_mm = shorter;
    out.length_mm = longer;
    return out;
}

/// A scan of another vehicle's panel, in the size of this one's.
Flat stretched(Flat layout, const SurfaceForm& form) {
    for (Cx& point : layout)
        point = {point.re * form.times_x, point.im * form.times_y};
    return layout;
}

std::vector<std::vector<Point>> lines_on_the_scan(const Panel& panel, const SurfaceForm& form) {
    std::vector<std::vector<Point>> lines;
    for (const SeamLine& line : panel.seam_lines) {
        lines.push_back(line.line);
        for (Point& p : lines.back())
            p = {p.x / form.times_x, p.y / form.times_y};
    }
    return lines;
}

/// Where to divide what asks more than the limit; tried on a coarse scan and held by the fine one.
std::optional<Division> division_of(const LaidScan& laid, const SurfaceForm& form,
                                    const Panel& panel, double limit) {
    constexpr std::size_t coarse_triangles = 900;
    const Sheet3 coarse = sheet_of(thinned(laid.surface(), coarse_triangles).surface);
    auto roughly = laid_least(coarse);
    if (!roughly)
        return std::nullopt;
    const Flat coarse_flat = as_drawn(coarse, roughly->patch, form, std::move(roughly->flat));
    const Patch& patch = laid.flat()->patch;
    const Flat flat = as_drawn(laid.sheet(), patch, form, laid.layout(limit));
    return divided_within(limit, {coarse, coarse_flat}, {laid.sheet(), flat},
                          map_of(laid.sheet(), patch, flat).peak, lines_on_the_scan(panel, form));
}

std::optional<Division> scaled_division(std::optional<Division> found, const SurfaceForm& form) {
    if (found)
        for (auto& line : found->lines)
            for (Point& p : line)
                p = {p.x * form.times_x, p.y * form.times_y};
    return found;
}

/// What the division hangs on, besides the scan.
std::vector<double> what_divides(const SurfaceForm& form, const Panel& panel, double limit) {
    std::vector<double> out{limit, form.upward.x, form.upward.y, form.upward.z};
    for (const std::vector<Point>& line : lines_on_the_scan(panel, form)) {
        out.push_back(static_cast<double>(line.size()));
        for (const Point& p : line)
            out.insert(out.end(), {p.x, p.y});
    }
    return out;
}

} // namespace

void develop_surface(const SurfaceForm& form, const Panel& panel, const Purpose& purpose,
                     DevelopedPanel& out, Faults& faults) {
    const std::vector<std::size_t> loops = loops_of_openings(panel, *form.surface, faults);
    if (stops(faults))
        return;
    const std::shared_ptr<const LaidScan> laid =
        purpose.scans ? purpose.scans->kept().of(form.surface)
                      : std::make_shared<const LaidScan>(form.surface);
    tell_quality(*laid, form, panel, faults);
    if (!laid->flat()) {
        needs_a_cut(form, panel, "cannot be laid flat in one piece", faults);
        return;
    }
    const auto limit =
        purpose.film_percent ? std::optional(*purpose.film_percent / 100) : std::nullopt;
    const Flat layout = stretched(
        as_drawn(laid->sheet(), laid->flat()->patch, form, laid->layout(limit)), form);
    Blank blank = blank_of(layout, laid->surface(), panel, loops);
    if (!is_whole(blank)) {
        needs_a_cut(form, panel, "laid flat would lie over itself", faults);
        return;
    }
    out.stretch = stretch_of(*laid, blank, purpose.in_detail);
    if (purpose.divide && limit && out.stretch.is != StretchAsked::Is::unknown &&
        laid->flat()->least_stretch > *limit)
        out.stretch.division =
            scaled_division(laid->division(what_divides(form, panel, *limit),
                                           [&] { return division_of(*laid, form, panel, *limit); }),
                            form);
    out.surface_mm2 = form.times_x * form.times_y *
                      geometry::area_of(laid->surface().points, laid->surface().triangles);
    if (purpose.in_detail && !laid->too_rough())
        out.map =
            std::make_shared<const StretchMap>(map_of(laid->sheet(), laid->flat()->patch, layout));
    out.blanks.push_back(std::move(blank));
}

} // namespace pelt::develop
