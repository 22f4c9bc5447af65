// SPDX-License-Identifier: MIT
// What the search for where to divide proposes, judged anew: on triangles that it never saw, by
// arithmetic of this page's own.
#include "develop/surface/as_drawn.hpp"
#include "develop/surface/dividing.hpp"
#include "develop/surface/stretch_map.hpp"
#include "develop/surface/ways_to_divide.hpp"
#include "geometry/space.hpp"
#include "surfaces.hpp"

#include <algorithm>
#include <functional>
#include <limits>
#include <string>
#include <vector>

namespace pelt::develop {
namespace {

constexpr double size_mm = 300;

struct Shape {
    std::string name;
    std::function<test::Mesh(int)> mesh; ///< by its fineness: 6 n² triangles or as many
};

/// A grid of about as many triangles as a disc of so many rings has.
int cells(int rings) {
    return static_cast<int>(std::lround(std::sqrt(3.0) * rings));
}

std::vector<Shape> ten_shapes() {
    std::vector<Shape> out;
    for (const int degrees : {30, 45, 60, 80})
        out.push_back({"cap of " + std::to_string(degrees) + " degrees",
                       [=](int n) { return test::cap(1, degrees * degree, n); }});
    out.push_back({"flat spheroid", [](int n) { return spheroid(.7, n); }});
    out.push_back({"long spheroid", [](int n) { return spheroid(1.5, n); }});
    out.push_back({"saddle", [](int n) { return saddle(.5, n); }});
    out.push_back({"deep saddle", [](int n) { return saddle(1, n); }});
    out.push_back(
        {"torus, narrow", [](int n) { return torus_outside(30 * degree, cells(n), cells(n)); }});
    out.push_back(
        {"torus, wide", [](int n) { return torus_outside(50 * degree, cells(n), cells(n)); }});
    return out;
}

struct Laid {
    Sheet3 sheet;
    Patch patch;
    Flat flat;
    double stretch;
};

Laid laid_of(const Shape& shape, int rings) {
    test::Mesh mesh = shape.mesh(rings);
    for (Point3& p : mesh.points)
        p = size_mm * p;
    Sheet3 sheet = sheet_of(mesh);
    auto least = laid_least(sheet);
    REQUIRE(least);
    SurfaceForm form;
    form.upward = {0, 1, 0};
    Flat flat = as_drawn(sheet, least->patch, form, std::move(least->flat));
    return {std::move(sheet), std::move(least->patch), std::move(flat), least->stretch};
}

/// The largest factor over the smallest one, less 1, from the sides of triangles alone; infinite
/// where one is turned over.
double stretch_by_sides(const Sheet3& sheet, const Flat& flat) {
    double most = 0;
    double least = std::numeric_limits<double>::infinity();
    for (const Triangle& t : sheet.triangles) {
        const auto at = [&](std::size_t k) { return static_cast<std::size_t>(t[k]); };
        const double c = geometry::distance(sheet.points[at(0)], sheet.points[at(1)]);
        const double b = geometry::distance(sheet.points[at(0)], sheet.points[at(2)]);
        const double a = geometry::distance(sheet.points[at(1)], sheet.points[at(2)]);
        const double x = (b * b + c * c - a * a) / (2 * c);
        const double y = std::sqrt(b * b - x * x);
        const Cx p = flat[at(1)] - flat[at(0)];
        const Cx q = flat[at(2)] - flat[at(0)];
        // J (c, 0) = p, J (x, y) = q.
        const Cx first = (1 / c) * p;
        const Cx second = (1 / y) * (q - x * first);
        const double squares = first.re * first.re + first.im * first.im + second.re * second.re +
                               second.im * second.im;
        const double determinant = first.re * second.im - first.im * second.re;
        if (!(determinant > 0))
            return std::numeric_limits<double>::infinity();
        const double root =
            std::sqrt(std::max(0.0, squares * squares / 4 - determinant * determinant));
        most = std::max(most, std::sqrt(squares / 2 + root));
        least = std::min(least, determinant / std::sqrt(squares / 2 + root));
    }
    return most / least - 1;
}

/// Of equal triangles of the same area in all.
double side_of(const Sheet3& sheet) {
    const double area = geometry::area_of(sheet.points, sheet.triangles);
    return std::sqrt(area / static_cast<double>(sheet.triangles.size()) * 4 / std::sqrt(3.0));
}

/// The way that was proposed, known by what it slits.
std::vector<Slit> way_of(const Division& division, const Laid& fine, const PlaceToDivide& place) {
    for (const WayToDivide& way : ways_to_divide(place)) {
        const auto slit = slit_along(fine.sheet, fine.flat, way.slits);
        if (slit && way.kind == division.kind && slit->edges == division.lines)
            return way.slits;
    }
    return {};
}

} // namespace

TEST_CASE("what is proposed for ten surfaces holds on finer triangles too") {
    for (const Shape& shape : ten_shapes()) {
        CAPTURE(shape.name);
        const Laid coarse = laid_of(shape, 9);
        const Laid fine = laid_of(shape, 14);
        const double limit = .5 * fine.stretch;
        PlaceToDivide place;
        for (const int i : fine.sheet.outline)
            place.outline.push_back({fine.flat[static_cast<std::size_t>(i)].re,
                                     fine.flat[static_cast<std::size_t>(i)].im});
        place.peak = map_of(fine.sheet, fine.patch, fine.flat).peak;
        const auto division = divided_within(limit, {coarse.sheet, coarse.flat},
                                             {fine.sheet, fine.flat}, place.peak, {});
        CHECK(division);
        if (!division)
            continue;
        CHECK(division->stretch_percent <= 100 * limit);

        const std::vector<Slit> slits = way_of(*division, fine, place);
        REQUIRE_FALSE(slits.empty());
        const Laid finer = laid_of(shape, 20);
        const auto slit = slit_along(finer.sheet, finer.flat, slits);
        REQUIRE(slit);
        CHECK(std::max<int>(division->kind == Division::Kind::relief ? 1 : 2,
                            static_cast<int>(slit->parts.size())) == division->pieces);
        // A relief cut ends at a side of a triangle: right to half a side of either mesh.
        const int tips = division->kind == Division::Kind::relief ? division->cuts : 0;
        CHECK(std::abs(slit->length_mm - division->cut_mm) <=
              .02 * division->cut_mm + tips * (side_of(fine.sheet) + side_of(finer.sheet)) / 2);
        for (const Sheet3& part : slit->parts) {
            const auto laid = laid_least(part);
            REQUIRE(laid);
            // Two hundredths of the limit are what two meshes of one surface read apart.
            CHECK(stretch_by_sides(part, laid->flat) <= 1.02 * limit);
        }
    }
}

} // namespace pelt::develop
