// SPDX-License-Identifier: MIT
#include "develop/crown.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace pelt::develop {
namespace {

/// A bow of half angle a has the rise arc (1 - cos a)/(2 a). That grows up to this a, the root of
/// tan(a/2) = a, and falls beyond it, where the bow closes to a loop.
constexpr double fullest_half_angle = 2.331122370414423;

double rise_over_arc(double half_angle) {
    const double s = std::sin(half_angle / 2);
    return s * s / half_angle;
}

/// Least stretch of a rectangle of constant small curvature, t = c K b², by aspect; computed on
/// meshes to ±0.002, the last value exact. Points between are interpolated in 1 - 1/A.
struct Row {
    double aspect;
    double factor;
};
constexpr std::array<Row, 8> rows{
    {{1, .187}, {1.25, .229}, {1.5, .263}, {2, .313}, {3, .371}, {4, .402}, {6, .433}, {10, .453}}};
/// The same for the layout of least elastic energy.
constexpr std::array<Row, 8> natural_rows{
    {{1, .277}, {1.25, .374}, {1.5, .437}, {2, .4915}, {3, .5025}, {4, .501}, {6, .5}, {10, .5}}};
constexpr double endless_strip = .5;

double interpolated(const std::array<Row, 8>& table, double aspect) {
    const double u = 1 - 1 / aspect;
    double u_low = 0;
    double factor_low = table.front().factor;
    for (const Row& row : table) {
        const double u_high = 1 - 1 / row.aspect;
        if (u <= u_high && u_high > u_low)
            return factor_low + (row.factor - factor_low) * (u - u_low) / (u_high - u_low);
        u_low = u_high;
        factor_low = row.factor;
    }
    return factor_low + (endless_strip - factor_low) * (u - u_low) / (1 - u_low);
}

} // namespace

Bow bow_over(double chord, double rise) {
    if (rise == 0)
        return {chord, chord, 0};
    const double h = std::abs(rise);
    const double radius = (chord * chord + 4 * h * h) / (8 * h);
    return {chord, 4 * radius * std::atan(2 * h / chord), std::copysign(1 / radius, rise)};
}

std::optional<Bow> bow_along(double arc, double rise) {
    if (rise == 0)
        return Bow{arc, arc, 0};
    const double wanted = std::abs(rise) / arc;
    double low = 0;
    double high = fullest_half_angle;
    if (wanted > rise_over_arc(high))
        return std::nullopt;
    for (int halving = 0; halving < 100; ++halving) {
        const double middle = (low + high) / 2;
        (rise_over_arc(middle) < wanted ? low : high) = middle;
    }
    const double half_angle = (low + high) / 2;
    const double radius = arc / (2 * half_angle);
    return Bow{2 * radius * std::sin(half_angle), arc, std::copysign(1 / radius, rise)};
}

double rectangle_factor(double aspect) {
    return interpolated(rows, aspect);
}

double natural_factor(double aspect) {
    return interpolated(natural_rows, aspect);
}

double natural_of_dome(double a) {
    constexpr double shallow = .02; // below, the closed form loses its digits
    if (a < shallow)
        return 3 * a * a / 16;
    const double t = std::tan(a / 2);
    const double c = (std::sin(a) + 2 * std::log(std::cos(a / 2)) / t) / t;
    return 2 / (c + 1) - 1;
}

StretchAsked stretch_of(const Bow& wide, const Bow& high, bool round_outline) {
    using Is = StretchAsked::Is;
    if (wide.curvature == 0 || high.curvature == 0)
        return {.is = Is::exact, .percent = 0, .natural_percent = 0, .bound_percent = 0};
    const double shorter = std::min(wide.arc, high.arc);
    const double longer = std::max(wide.arc, high.arc);
    StretchAsked out;
    out.curvature = wide.curvature * high.curvature;
    out.width_mm = shorter;
    const bool same_rise =
        std::abs(wide.curvature - high.curvature) <= 1e-9 * std::abs(high.curvature);
    if (round_outline && same_rise) {
        out.is = Is::exact;
        out.percent = 100 * (wide.arc / wide.chord - 1);
        out.bound_percent = out.percent;
        out.natural_percent =
            std::max(out.percent, 100 * natural_of_dome(wide.arc * std::abs(wide.curvature) / 2));
        return out;
    }
    const double aspect = longer / shorter;
    const double unit = 100 * std::abs(*out.curvature) * shorter * shorter / 4;
    out.is = Is::estimate;
    out.percent = rectangle_factor(aspect) * unit;
    out.natural_percent = natural_factor(aspect) * unit;
    // The roof over a rectangle 2a x 2b: (a/2 - b/6) / (a + b).
    out.bound_percent = (aspect / 2 - 1.0 / 6) / (aspect + 1) * unit;
    return out;
}

} // namespace pelt::develop
