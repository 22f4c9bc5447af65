// SPDX-License-Identifier: MIT
// Scanned panels as a whole: frame, edges, openings, thinning out, rough scans, girths. Sources as
// in surface_test.cpp.
#include "develop/develop.hpp"
#include "develop/surface/decimate.hpp"
#include "develop/surface/flatten.hpp"
#include "develop/surface/laid_scan.hpp"
#include "develop/surface/noise.hpp"
#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <memory>
#include <numbers>
#include <optional>
#include <utility>

namespace pelt::develop {
namespace {

constexpr double degree = std::numbers::pi / 180;

Surface surface_of(const test::Mesh& mesh) {
    geometry::SurfaceFound found = geometry::surface_of({mesh.points, mesh.triangles});
    CAPTURE(found.what);
    REQUIRE(found.surface.has_value());
    return std::move(*found.surface);
}

Panel panel_of(const test::Mesh& mesh) {
    SurfaceForm form;
    form.file = "scan.obj";
    form.surface = std::make_shared<const Surface>(surface_of(mesh));
    form.across = {1, 0, 0};
    form.upward = {0, 1, 0};
    Panel panel;
    panel.name = "scan";
    panel.form = std::move(form);
    return panel;
}

/// Points moved along their normal by a normal deviate, the same on every machine.
void roughen(test::Mesh& mesh, double deviation, Point3 centre) {
    std::uint64_t state = 20261125;
    const auto uniform = [&] {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(state >> 40U) / 16777216.0;
    };
    for (Point3& p : mesh.points) {
        double sum = -6;
        for (int k = 0; k < 12; ++k)
            sum += uniform();
        const Point3 out{p.x - centre.x, p.y - centre.y, p.z - centre.z};
        const double far = std::sqrt(out.x * out.x + out.y * out.y + out.z * out.z);
        const double share = deviation * sum / far;
        p = {p.x + share * out.x, p.y + share * out.y, p.z + share * out.z};
    }
}

double extent_x(const Blank& blank) {
    const auto [low, high] =
        std::minmax_element(blank.outline.points.begin(), blank.outline.points.end(),
                            [](const Point& a, const Point& b) { return a.x < b.x; });
    return high->x - low->x;
}

TEST_CASE("a scan of a half pipe: its true size, its lower left at 0, four edges, its opening") {
    const double radius = 200;
    test::Mesh pipe = test::grid(36, 20, [=](double u, double v) {
        const double a = 90 * degree * (u - .5);
        return Point3{radius * std::sin(a), 500 * v, radius * std::cos(a)};
    });
    // Two cells wide and high, beside the middle.
    std::erase_if(pipe.triangles, [&](const Triangle& t) {
        double x = 0;
        double y = 0;
        for (const int corner : t) {
            const Point3& p = pipe.points[static_cast<std::size_t>(corner)];
            x += std::asin(p.x / radius) / (90 * degree) / 3;
            y += p.y / 1500;
        }
        return x > 0 && x < 2.0 / 36 && y > .4 && y < .5;
    });
    Panel panel = panel_of(pipe);
    Opening opening;
    opening.name = "hole";
    opening.hole = 1;
    panel.openings.push_back(opening);
    Faults faults;
    const DevelopedPanel out = develop(panel, faults, {10});
    CHECK(faults.empty());
    REQUIRE(out.blanks.size() == 1);
    const Blank& blank = out.blanks.front();
    const double chord = 2 * radius * std::sin(90 * degree / 72);
    CHECK(std::abs(extent_x(blank) - 36 * chord) < .002);
    CHECK(out.stretch.percent < 1e-3);
    CHECK(out.stretch.is == StretchAsked::Is::estimate);
    REQUIRE(blank.edges.size() == 4);
    for (const char* word : {"bottom", "right", "top", "left"})
        CHECK(edges_selected(blank, word).size() == 1);
    CHECK(edges_selected(blank, "1-2") == edges_selected(blank, "bottom"));
    REQUIRE(blank.openings.size() == 1);
    const double hole = 2 * chord * 50;
    CHECK(std::abs(out.visible_mm2 - (36 * chord * 500 - hole)) < 1);
    REQUIRE(out.surface_mm2.has_value());
    CHECK(std::abs(*out.surface_mm2 - out.visible_mm2) < 1);
    // Below the middle of the height, right of the middle.
    for (const Point& p : blank.openings.front().ring.points) {
        CHECK(p.x > 18 * chord - .01);
        CHECK(p.x < 20 * chord + .01);
        CHECK(p.y > 200 - .01);
        CHECK(p.y < 250 + .01);
    }
    panel.openings.front().hole = 2;
    develop(panel, faults, {10});
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].what == "opening 'hole' is not in the scan, which has one hole");
}

TEST_CASE("the blank is cut for the film: within its limit, else as near as can be") {
    const Panel panel = panel_of(test::crown(600, 80, 400, 60, 18, 12));
    Faults faults;
    for (const double limit : {20.0, 6.5}) {
        const DevelopedPanel out = develop(panel, faults, {limit});
        REQUIRE(out.map != nullptr);
        CHECK(out.map->peak_percent < limit + .05);
    }
    const DevelopedPanel out = develop(panel, faults, {3});
    REQUIRE(out.map != nullptr);
    CHECK(std::abs(out.map->peak_percent - out.stretch.percent) < .05);
    CHECK(*out.stretch.bound_percent < out.stretch.percent);
    CHECK(*out.stretch.natural_percent > out.stretch.percent);
    CHECK(faults.empty());
}

TEST_CASE("a scan is laid flat once for all films, to the same blanks as by itself") {
    const Panel panel = panel_of(test::crown(600, 80, 400, 60, 18, 12));
    const auto scans = std::make_shared<LaidScans>();
    Faults faults;
    const auto ring_for = [&](std::optional<double> percent, bool kept) {
        const DevelopedPanel out = develop(panel, faults, {percent, false, kept ? scans : nullptr});
        CHECK(out.map == nullptr);
        CHECK(!out.stretch.bound_percent.has_value());
        return out.blanks.front().outline.points;
    };
    const SurfaceForm& form = std::get<SurfaceForm>(panel.form);
    const auto laid = scans->kept().of(form.surface);
    for (const std::optional<double> percent :
         {std::optional<double>(6), std::optional<double>(3), std::optional<double>(20),
          std::optional<double>(6), std::optional<double>()})
        CHECK(ring_for(percent, true) == ring_for(percent, false));
    CHECK(scans->kept().of(form.surface) == laid);
    // A copy of it, as another file or another panel has one, is the same scan; another one is not.
    CHECK(scans->kept().of(std::make_shared<const Surface>(*form.surface)) == laid);
    Surface moved = *form.surface;
    moved.points[0].z += .001;
    CHECK(scans->kept().of(std::make_shared<const Surface>(moved)) != laid);
    // One layout for the limit of 6 %, asked for twice; where it does not bind it is the natural
    // one.
    CHECK(&laid->layout(.06) == &laid->layout(.06));
    CHECK(&laid->layout(.06) != &laid->layout(.065));
    CHECK(&laid->layout(.2) == &laid->layout(std::nullopt));
    CHECK(faults.empty());
}

TEST_CASE("holes count by the scan's own rims, whatever thinning does to their lengths") {
    // Two holes of nearly the same rim, cut along the cells, so that thinning shortens both much.
    const auto hole = [](double u, double v, double x, double y, double r) {
        return std::hypot(900 * (u - x), 600 * (v - y)) < r;
    };
    test::Mesh plate = test::grid(180, 120, [](double u, double v) {
        return Point3{900 * u, 600 * v, 40 * (1 - std::pow(2 * u - 1, 2))};
    });
    std::erase_if(plate.triangles, [&](const Triangle& t) {
        double u = 0;
        double v = 0;
        for (const int corner : t) {
            u += plate.points[static_cast<std::size_t>(corner)].x / 2700;
            v += plate.points[static_cast<std::size_t>(corner)].y / 1800;
        }
        return hole(u, v, .25, .5, 62) || hole(u, v, .75, .5, 60);
    });
    const Surface fine = surface_of(plate);
    REQUIRE(fine.loops.size() == 3);
    const auto middle_x = [](const Surface& s, const std::vector<int>& loop) {
        double sum = 0;
        for (const int i : loop)
            sum += s.points[static_cast<std::size_t>(i)].x;
        return sum / static_cast<double>(loop.size());
    };
    for (const std::size_t most : {20'000U, 6'000U, 1'500U, 900U}) {
        const Thinned thin = thinned(fine, most);
        REQUIRE(thin.surface.loops.size() == 3);
        for (std::size_t i = 1; i < 3; ++i)
            CHECK(std::abs(middle_x(thin.surface, thin.surface.loops[i]) -
                           middle_x(fine, fine.loops[i])) < 30);
    }
    // The order that the thinned rims would have by themselves, made the wrong way round.
    Surface swapped = fine;
    std::swap(swapped.loops[1], swapped.loops[2]);
    const Thinned thin = thinned(swapped, 1'500);
    CHECK(std::abs(middle_x(thin.surface, thin.surface.loops[1]) -
                   middle_x(swapped, swapped.loops[1])) < 30);
}

TEST_CASE("what is no disc is refused with what to do") {
    struct Row {
        test::Mesh mesh;
        const char* what;
    };
    const auto tube = [](bool closed) {
        test::Mesh mesh = test::grid(24, 8, [](double u, double v) {
            const double a = 360 * degree * u;
            return Point3{100 * std::cos(a), 100 * std::sin(a), 300 * v};
        });
        if (closed) {
            const auto end = [&](int row) {
                const int middle = static_cast<int>(mesh.points.size());
                mesh.points.push_back({0, 0, row == 0 ? 0.0 : 300.0});
                for (int i = 0; i < 24; ++i)
                    mesh.triangles.push_back({row * 25 + i, row * 25 + i + 1, middle});
            };
            end(0);
            end(8);
        }
        return mesh;
    };
    test::Mesh fins = test::grid(2, 1, [](double u, double v) { return Point3{10 * u, v, 0}; });
    fins.points.push_back({5, .5, 9});
    fins.triangles.push_back({1, 4, 6});
    test::Mesh two = test::cap(100, .5, 4);
    const int n = static_cast<int>(two.points.size());
    for (int i = 0; i < n; ++i)
        two.points.push_back({two.points[static_cast<std::size_t>(i)].x + 500,
                              two.points[static_cast<std::size_t>(i)].y, 0});
    for (std::size_t t = 0, count = two.triangles.size(); t < count; ++t)
        two.triangles.push_back(
            {two.triangles[t][0] + n, two.triangles[t][1] + n, two.triangles[t][2] + n});
    for (const Row& row :
         {Row{tube(false), "is a ring: its second rim is longer than half of its first"},
          Row{tube(true), "is closed all round"},
          Row{fins, "has 3 triangles at one edge, near 5, 0, 0 mm"},
          Row{two, "has separate parts, a second one of 71 cm²"},
          Row{{{{0, 0, 0}, {1, 0, 0}, {2, 0, 0}}, {{0, 1, 2}}}, "has no triangle with an area"}}) {
        const geometry::SurfaceFound found =
            geometry::surface_of({row.mesh.points, row.mesh.triangles});
        CHECK(!found.surface.has_value());
        CHECK(found.what == row.what);
        CHECK(!found.remedy.empty());
    }
}

TEST_CASE("corners given apart, turned over or twice: the same surface") {
    const test::Mesh plain = test::cap(100, .5, 4);
    test::Mesh odd;
    for (const Triangle& t : plain.triangles) {
        const int n = static_cast<int>(odd.points.size());
        for (const int corner : t)
            odd.points.push_back(plain.points[static_cast<std::size_t>(corner)]);
        odd.triangles.push_back({n, n + 1, n + 2});
        if (odd.triangles.size() % 5 == 0)
            std::swap(odd.triangles.back()[0], odd.triangles.back()[1]);
        if (odd.triangles.size() % 7 == 0)
            odd.triangles.push_back({n + 1, n + 2, n});
    }
    const Surface a = surface_of(plain);
    const Surface b = surface_of(odd);
    CHECK(b.points.size() == a.points.size());
    CHECK(b.triangles.size() == a.triangles.size());
    CHECK(b.loops.size() == 1);
    for (const Triangle& t : b.triangles) {
        const auto at = [&](std::size_t k) { return b.points[static_cast<std::size_t>(t[k])]; };
        CHECK((at(1).x - at(0).x) * (at(2).y - at(0).y) -
                  (at(2).x - at(0).x) * (at(1).y - at(0).y) >
              0);
    }
}

TEST_CASE("a fine scan is thinned out: few triangles, near to it, asking the same") {
    const double a = 40 * degree;
    const Surface fine = surface_of(test::cap(400, a, 50));
    const Thinned thin = thinned(fine, 2'000);
    CHECK(thin.surface.triangles.size() <= 2'000);
    CHECK(thin.surface.triangles.size() > 1'900);
    REQUIRE(thin.surface.loops.size() == 1);
    CHECK(thin.surface.points.size() + thin.surface.triangles.size() + 1 ==
          (3 * thin.surface.triangles.size() + thin.surface.loops[0].size()) / 2 + 2);
    CHECK(thin.off_mm < 1);
    CHECK(std::abs(geometry::area_of(thin.surface.points, thin.surface.triangles) /
                       geometry::area_of(fine.points, fine.triangles) -
                   1) < .003);
    Faults faults;
    const DevelopedPanel out =
        develop(panel_of({thin.surface.points, thin.surface.triangles}), faults);
    CHECK(std::abs(out.stretch.percent / 100 / (a / std::sin(a) - 1) - 1) < .03);
}

TEST_CASE("the noise of a scan is found, borne where it is small, and refused where it is large") {
    const double radius = 500;
    const double a = 30 * degree;
    const double spacing = radius * a / 20;
    const double clean = a / std::sin(a) - 1;
    test::Mesh some = test::cap(radius, a, 20);
    roughen(some, .02 * spacing, {0, 0, 0});
    const double found = roughness_of(surface_of(some)).noise_mm;
    CHECK(found > .6 * .02 * spacing);
    CHECK(found < 1.4 * .02 * spacing);
    Faults faults;
    const DevelopedPanel borne = develop(panel_of(some), faults);
    CHECK(borne.stretch.is == StretchAsked::Is::estimate);
    // Within two percent of the clean mesh, which itself lies one above the exact value.
    CHECK(std::abs(borne.stretch.percent / 100 / (1.01 * clean) - 1) < .02);
    CHECK(!stops(faults));

    test::Mesh rough = test::cap(radius, a, 20);
    roughen(rough, .2 * spacing, {0, 0, 0});
    faults.clear();
    const DevelopedPanel refused = develop(panel_of(rough), faults);
    CHECK(refused.stretch.is == StretchAsked::Is::unknown);
    CHECK(std::any_of(faults.begin(), faults.end(), [](const Fault& fault) {
        return fault.severity == Severity::warning &&
               fault.what.find("its stretch is not checked: the scan is rough by") == 0;
    }));
}

TEST_CASE("girths that are all equal say nothing of the stretch, which may be large") {
    // The zone of a sphere of radius 200, 240 from edge to edge and 500 along its middle.
    const test::Mesh zone = test::grid(40, 20, [](double u, double v) {
        const double lon = 2.5 * (u - .5);
        const double lat = 1.2 * (v - .5);
        return Point3{200 * std::cos(lat) * std::sin(lon), 200 * std::sin(lat),
                      200 * std::cos(lat) * std::cos(lon)};
    });
    const auto flat = flattened({zone.points, zone.triangles, zone.triangles.size(),
                                 geometry::loops_of(zone.points, zone.triangles).front()});
    REQUIRE(flat.has_value());
    CHECK(flat->least_stretch > .12);
    GirthsForm form;
    for (int i = 0; i <= 6; ++i)
        form.stations.push_back({500. * i / 6, 120, 120, {}});
    Panel panel;
    panel.name = "band";
    panel.form = form;
    Faults faults;
    const StretchAsked told = develop(panel, faults).stretch;
    CHECK(told.is == StretchAsked::Is::unknown);
    CHECK_FALSE(told.natural_percent.has_value());
    CHECK_FALSE(told.bound_percent.has_value());
    CHECK(faults.empty());
}

} // namespace
} // namespace pelt::develop
