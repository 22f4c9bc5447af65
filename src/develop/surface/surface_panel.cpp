// SPDX-License-Identifier: MIT
#include "develop/surface/surface_panel.hpp"

#include "develop/outline.hpp"
#include "develop/surface/decimate.hpp"
#include "develop/surface/flatten.hpp"
#include "develop/surface/lid.hpp"
#include "develop/surface/noise.hpp"
#include "develop/surface/roof.hpp"
#include "develop/surface/surface_edges.hpp"
#include "geometry/geometry.hpp"
#include "geometry/mesh/mesh.hpp"
#include "geometry/predicates.hpp"
#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <utility>

namespace pelt::develop {
namespace {

using geometry::operator-;

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

Sheet3 sheet_of(const Surface& surface) {
    Sheet3 sheet{
        surface.points, surface.triangles, surface.triangles.size(), surface.loops.front(), {}};
    for (std::size_t i = 1; i < surface.loops.size(); ++i) {
        const std::vector<Triangle> lid = lid_over(surface.points, surface.loops[i]);
        sheet.triangles.insert(sheet.triangles.end(), lid.begin(), lid.end());
        sheet.rims.insert(sheet.rims.end(), surface.loops[i].begin(), surface.loops[i].end());
    }
    return sheet;
}

/// Which loop of the surface each opening of the panel is.
class Openings {
public:
    Openings(const Panel& panel, const Surface& surface, Faults& faults)
        : panel_(panel), surface_(surface), faults_(faults) {}

    std::vector<std::size_t> find() {
        std::vector<std::size_t> loops;
        for (const Opening& opening : panel_.openings) {
            const std::size_t loop = opening.hole ? index(*opening.hole) : nearest(*opening.near);
            if (loop == 0 || loop >= surface_.loops.size())
                wrong(opening, "is not in the scan, which has " + holes());
            else if (std::find(loops.begin(), loops.end(), loop) != loops.end())
                wrong(opening, "is the same hole of the scan as another one");
            loops.push_back(loop);
        }
        if (!stops(faults_))
            tell_covered(loops);
        return loops;
    }

private:
    void wrong(const Opening& opening, const std::string& what) {
        faults_.push_back({Severity::file, opening.place, panel_.name,
                           "opening '" + opening.name + "' " + what,
                           "holes count from 1, the one with the longest rim first"});
    }

    std::string holes() const {
        const std::size_t n = surface_.loops.size() - 1;
        return n == 0 ? "no hole" : n == 1 ? "one hole" : std::to_string(n) + " holes";
    }

    std::size_t nearest(Point3 p) const {
        std::size_t best = 0;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 1; i < surface_.loops.size(); ++i)
            for (const int at : surface_.loops[i]) {
                const double d = geometry::distance(p, surface_.points[index(at)]);
                if (d < least) {
                    least = d;
                    best = i;
                }
            }
        return best;
    }

    void tell_covered(const std::vector<std::size_t>& named) {
        constexpr double worth_a_word = 60; // mm of rim
        std::size_t covered = 0;
        double longest = 0;
        for (std::size_t i = 1; i < surface_.loops.size(); ++i)
            if (std::find(named.begin(), named.end(), i) == named.end()) {
                ++covered;
                longest =
                    std::max(longest, geometry::length_of(surface_.points, surface_.loops[i]));
            }
        if (covered > 0)
            faults_.push_back({longest > worth_a_word ? Severity::warning : Severity::note,
                               panel_.place, panel_.name,
                               "its scan has " + std::to_string(covered) +
                                   (covered == 1 ? " hole that is" : " holes that are") +
                                   " covered, the longest rim " +
                                   std::to_string(std::lround(longest)) + " mm",
                               "name a hole under 'openings' to have it cut out"});
    }

    const Panel& panel_;
    const Surface& surface_;
    Faults& faults_;
};

/// The layout turned so that the drawing's way up is up on the whole, its lower left at 0.
Flat as_drawn(const Sheet3& sheet, const Patch& patch, const SurfaceForm& form, Flat flat) {
    const std::vector<Linear> maps = patch.maps(flat);
    Cx up;
    for (std::size_t t = 0; t < sheet.own; ++t) {
        const Triangle& corners = sheet.triangles[t];
        const Point3 origin = sheet.points[index(corners[0])];
        const Point3 x = geometry::unit(sheet.points[index(corners[1])] - origin);
        const Point3 normal =
            geometry::unit(geometry::cross(x, sheet.points[index(corners[2])] - origin));
        const Cx v{geometry::dot(form.upward, x),
                   geometry::dot(form.upward, geometry::cross(normal, x))};
        up = up + patch.facets()[t].area * (maps[t].z * v + maps[t].w * conjugate(v));
    }
    const Cx turn = Cx{0, 1} * conjugate(unit(up));
    Cx low{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    for (Cx& u : flat) {
        u = turn * u;
        low = {std::min(low.re, u.re), std::min(low.im, u.im)};
    }
    for (Cx& u : flat)
        u = u - low;
    return flat;
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

StretchMap map_of(const Sheet3& sheet, const Patch& patch, const Flat& flat) {
    StretchMap out;
    const std::vector<Linear> maps = patch.maps(flat);
    const Range range = range_of(patch, maps);
    for (std::size_t t = 0; t < sheet.own; ++t) {
        const auto at = [&](std::size_t k) {
            const Cx u = flat[index(sheet.triangles[t][k])];
            return Point{u.re, u.im};
        };
        const double percent = 100 * (range.largest / maps[t].smaller() - 1);
        out.cells.push_back({{at(0), at(1), at(2)}, percent});
        if (t > 0 && percent <= out.peak_percent)
            continue;
        out.peak_percent = percent;
        const auto& c = out.cells.back().corners;
        out.peak = {(c[0].x + c[1].x + c[2].x) / 3, (c[0].y + c[1].y + c[2].y) / 3};
        // Film pulls most along the smaller singular direction, square to half the angle of z w.
        const Cx doubled = unit(maps[t].z * maps[t].w);
        const double s = std::sqrt(std::max(0.0, (1 + doubled.re) / 2));
        const double c2 = std::sqrt(std::max(0.0, (1 - doubled.re) / 2));
        out.pull = {doubled.im < 0 ? c2 : -c2, s};
    }
    if (out.pull.x < 0 && out.pull.y < out.pull.x * -1e-9)
        out.pull = {-out.pull.x, -out.pull.y};
    return out;
}

double shorter_side(const std::vector<Point>& ring) {
    Point low = ring.front();
    Point high = low;
    for (const Point& p : ring) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return std::min(high.x - low.x, high.y - low.y);
}

/// Convex within a fiftieth of its area: there the roof bound holds.
bool nearly_convex(const std::vector<Point>& ring) {
    std::vector<Point> points = ring;
    std::sort(points.begin(), points.end(),
              [](Point a, Point b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    std::vector<Point> hull;
    for (int pass = 0; pass < 2; ++pass) {
        const std::size_t base = hull.size();
        for (const Point& p : points) {
            while (hull.size() >= base + 2) {
                const Point a = hull[hull.size() - 2];
                const Point b = hull.back();
                if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0)
                    break;
                hull.pop_back();
            }
            hull.push_back(p);
        }
        hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return doubled_area(ring) >= .98 * doubled_area(hull);
}

/// The scan as it is laid flat: thinned out where it is finer than is of use, or rough.
struct Ready {
    Surface surface;
    bool too_rough = false;
};

std::string tenths(double mm) {
    const long long n = std::llround(10 * mm);
    return std::to_string(n / 10) + "." + std::to_string(n % 10);
}

Ready ready(const SurfaceForm& form, const Panel& panel, Faults& faults) {
    constexpr double most = 8'000;
    constexpr double fewest = 800; // with fewer the shape itself is lost
    constexpr double wanted = 25;  // spacings to the noise
    constexpr double needed = 10;
    const Surface& scan = *form.surface;
    const Roughness rough = roughness_of(scan);
    // Triangles of one side h have the area h² √3 / 4.
    const double side = wanted * rough.noise_mm;
    const double area = geometry::area_of(scan.points, scan.triangles);
    const double fit = side > 0 ? area / (side * side * std::sqrt(3.0) / 4) : most;
    Thinned thin = thinned(scan, static_cast<std::size_t>(std::clamp(fit, fewest, most)));
    if (thin.surface.triangles.size() < scan.triangles.size())
        faults.push_back({Severity::note, form.place, panel.name,
                          "the scan '" + form.file + "' was thinned out from " +
                              std::to_string(scan.triangles.size()) + " to " +
                              std::to_string(thin.surface.triangles.size()) +
                              " triangles, off by " + tenths(thin.off_mm) + " mm at most",
                          ""});
    const double count = static_cast<double>(thin.surface.triangles.size());
    const double spacing = std::sqrt(area / count * 4 / std::sqrt(3.0));
    const bool too_rough = spacing < needed * rough.noise_mm;
    if (too_rough)
        faults.push_back({Severity::warning, form.place, panel.name,
                          "its stretch is not checked: the scan is rough by " +
                              tenths(rough.noise_mm) + " mm, too much for points " +
                              tenths(spacing) + " mm apart",
                          "scan it again, or let the scanner's program smooth it without "
                          "shrinking it"});
    return {std::move(thin.surface), too_rough};
}

void needs_a_cut(const SurfaceForm& form, const Panel& panel, const std::string& why,
                 Faults& faults) {
    faults.push_back({Severity::file, form.place, panel.name, "the scan '" + form.file + "' " + why,
                      "cut the scan in two, or open it where a seam may lie"});
}

} // namespace

void develop_surface(const SurfaceForm& form, const Panel& panel, std::optional<double> limit,
                     DevelopedPanel& out, Faults& faults) {
    const auto [surface, too_rough] = ready(form, panel, faults);
    const std::vector<std::size_t> holes = Openings(panel, surface, faults).find();
    if (stops(faults))
        return;
    const Sheet3 sheet = sheet_of(surface);
    const auto flat = flattened(sheet);
    if (!flat) {
        needs_a_cut(form, panel, "cannot be laid flat in one piece", faults);
        return;
    }
    const Flat layout =
        as_drawn(sheet, flat->patch, form, limit ? layout_within(*flat, *limit) : flat->natural);
    Blank blank;
    DividedRing divided = divided_ring(ring_of(layout, surface.loops.front()));
    blank.outline = std::move(divided.ring);
    blank.edges = std::move(divided.edges);
    for (std::size_t i = 0; i < holes.size(); ++i) {
        TaggedRing ring{ring_of(layout, surface.loops[holes[i]]), {}};
        ring.edge.assign(ring.points.size(), 0);
        blank.openings.push_back({panel.openings[i].name, std::move(ring)});
    }
    if (!is_whole(blank)) {
        needs_a_cut(form, panel, "laid flat would lie over itself", faults);
        return;
    }
    const bool convex = sheet.rims.empty() && nearly_convex(blank.outline.points);
    const auto bound = convex ? roof_bound(sheet, flat->patch) : disc_bound(sheet, flat->patch);
    if (!too_rough)
        out.stretch.is = StretchAsked::Is::estimate;
    out.stretch.percent = 100 * flat->least_stretch;
    if (!too_rough)
        out.stretch.natural_percent = 100 * flat->natural_stretch;
    if (bound)
        out.stretch.bound_percent = 100 * *bound;
    out.stretch.curvature = total_curvature(sheet) / flat->patch.area();
    out.stretch.width_mm = shorter_side(blank.outline.points);
    out.surface_mm2 = geometry::area_of(surface.points, surface.triangles);
    if (!too_rough)
        out.map = std::make_shared<const StretchMap>(map_of(sheet, flat->patch, layout));
    out.blanks.push_back(std::move(blank));
}

} // namespace pelt::develop
