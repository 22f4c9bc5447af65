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

/// Stretch = c |K| b² of constant small curvature K, b half the shorter side, by aspect. Computed
/// with the solver that lays scans flat (`bench_crowns`), to ±.003; 1/6 and 3/16 of a disc are
/// exact. Points between are interpolated in 1 - 1/A; an endless strip of any form asks 1/2.
struct Row {
    double aspect;
    double least;   ///< the smallest possible; domes and saddles alike
    double natural; ///< of film that lies by itself, on a dome
    double saddle;  ///< the same on a saddle
};
using Table = std::array<Row, 8>;
constexpr Table rectangle{{{1, .187, .213, .258},
                           {1.25, .229, .289, .337},
                           {1.5, .263, .361, .393},
                           {2, .313, .443, .450},
                           {3, .371, .491, .488},
                           {4, .402, .499, .496},
                           {6, .433, .5, .499},
                           {10, .453, .5, .5}}};
constexpr Table ellipse{{{1, 1. / 6, 3. / 16, .168},
                         {1.25, .204, .268, .237},
                         {1.5, .232, .320, .292},
                         {2, .271, .378, .365},
                         {3, .316, .429, .428},
                         {4, .340, .455, .455},
                         {6, .373, .476, .477},
                         {10, .405, .491, .491}}};
constexpr double endless_strip = .5;

double interpolated(const Table& table, double Row::*factor, double aspect) {
    const double u = 1 - 1 / aspect;
    double u_low = 0;
    double low = table.front().*factor;
    for (const Row& row : table) {
        const double u_high = 1 - 1 / row.aspect;
        if (u <= u_high && u_high > u_low)
            return low + (row.*factor - low) * (u - u_low) / (u_high - u_low);
        u_low = u_high;
        low = row.*factor;
    }
    return low + (endless_strip - low) * (u - u_low) / (1 - u_low);
}

/// The roof of slope 1 over a rectangle 2a x 2b, b = 1, a = A, by its outline: (a/2 - b/6)/(a + b).
double roof_of_rectangle(double aspect) {
    return (aspect / 2 - 1.0 / 6) / (aspect + 1);
}

/// Over an ellipse. The way inwards from a rim point ends on the long axis after w b/a, w the rim's
/// speed at its angle; the rim curves by ab/w³. Summed along the rim: mean(w³)/(2a² mean(w)) -
/// b²/(3a²).
double roof_of_ellipse(double aspect) {
    constexpr int points = 720;
    double w = 0;
    double w3 = 0;
    for (int i = 0; i < points; ++i) {
        const double s = std::sin(2 * std::numbers::pi * i / points);
        const double speed = std::sqrt(1 + (aspect * aspect - 1) * s * s);
        w += speed;
        w3 += speed * speed * speed;
    }
    return (w3 / w / 2 - 1.0 / 3) / (aspect * aspect);
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

Factors factors_of(Rim rim, double aspect, bool saddle) {
    const bool round = rim != Rim::any;
    const Table& table = round ? ellipse : rectangle;
    return {interpolated(table, &Row::least, aspect),
            interpolated(table, saddle ? &Row::saddle : &Row::natural, aspect),
            round ? roof_of_ellipse(aspect) : roof_of_rectangle(aspect)};
}

double natural_of_dome(double a) {
    constexpr double shallow = .02; // below, the closed form loses its digits
    if (a < shallow)
        return 3 * a * a / 16;
    const double t = std::tan(a / 2);
    const double c = (std::sin(a) + 2 * std::log(std::cos(a / 2)) / t) / t;
    return 2 / (c + 1) - 1;
}

StretchAsked stretch_of(const Bow& wide, const Bow& high, Rim rim) {
    using Is = StretchAsked::Is;
    if (wide.curvature == 0 || high.curvature == 0)
        return {.is = Is::exact, .percent = 0, .natural_percent = 0, .bound_percent = 0};
    const double shorter = std::min(wide.arc, high.arc);
    const double longer = std::max(wide.arc, high.arc);
    StretchAsked out;
    out.curvature = wide.curvature * high.curvature;
    out.width_mm = shorter;
    out.length_mm = longer;
    const bool same_rise =
        std::abs(wide.curvature - high.curvature) <= 1e-9 * std::abs(high.curvature);
    if (rim == Rim::circle && same_rise) {
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
    const Factors factors = factors_of(rim, aspect, *out.curvature < 0);
    out.percent = factors.least * unit;
    out.natural_percent = factors.natural * unit;
    out.bound_percent = factors.bound * unit;
    return out;
}

} // namespace pelt::develop
