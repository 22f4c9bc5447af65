// SPDX-License-Identifier: MIT
// The tables of develop/crown.cpp, computed anew: what rectangles and ellipses of constant small
// curvature ask, by the solver that lays scans flat; and how far the estimate lies from meshes of
// real crowns.
#include "develop/crown.hpp"
#include "develop/surface/flatten.hpp"
#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <optional>
#include <utility>

namespace {

using namespace pelt;

enum class Over { rectangle, ellipse };

struct Asked {
    double least = 0;
    double natural = 0;
};

Asked asked_of(const test::Mesh& mesh) {
    const auto flat = develop::flattened({mesh.points, mesh.triangles, mesh.triangles.size(),
                                          geometry::loops_of(mesh.points, mesh.triangles).front()});
    return flat ? Asked{flat->least_stretch, flat->natural_stretch} : Asked{NAN, NAN};
}

struct Chord {
    double length = 0;
    double rise = 0;
};

/// Of a bow of this length and curvature.
Chord chord_of(double arc, double curvature) {
    const double half_angle = arc * curvature / 2;
    return {2 * std::sin(std::abs(half_angle)) / std::abs(curvature),
            (1 - std::cos(half_angle)) / curvature};
}

/// A long ellipse in confocal coordinates, x = f cosh m cos n, y = f sinh m sin n: triangles as
/// wide as high, where those of a disc pulled long are not. `rows` of them from the line between
/// the foci, which the two sides share, to the rim.
test::Mesh confocal(Chord wide, Chord high, int rows) {
    const double a = wide.length / 2;
    const double b = high.length / 2;
    const double focus = std::sqrt(a * a - b * b);
    const double rim = std::atanh(b / a);
    // A multiple of four, so that no triangle at a focus has all its corners on the long axis.
    const int around =
        4 * std::max(4, static_cast<int>(std::lround(std::numbers::pi * rows / rim / 2)));
    const auto surface = [&](double m, double n) {
        const double x = focus * std::cosh(m) * std::cos(n);
        const double y = focus * std::sinh(m) * std::sin(n);
        return Point3{x, y,
                      test::height_at(x, wide.length, wide.rise) +
                          test::height_at(y, high.length, high.rise)};
    };
    test::Mesh mesh;
    for (int i = 0; i <= around / 2; ++i)
        mesh.points.push_back(surface(0, 2 * std::numbers::pi * i / around));
    for (int row = 1; row <= rows; ++row)
        for (int i = 0; i < around; ++i)
            mesh.points.push_back(surface(rim * row / rows, 2 * std::numbers::pi * i / around));
    const auto point = [&](int row, int i) {
        i %= around;
        return row == 0 ? std::min(i, around - i) : around / 2 + 1 + (row - 1) * around + i;
    };
    for (int row = 0; row < rows; ++row)
        for (int i = 0; i < around; ++i) {
            const int p = point(row, i);
            const int q = point(row, i + 1);
            const int r = point(row + 1, i + 1);
            const int s = point(row + 1, i);
            if ((row + i) % 2 == 0) {
                mesh.triangles.push_back({p, s, r});
                mesh.triangles.push_back({p, r, q});
            } else {
                mesh.triangles.push_back({p, s, q});
                mesh.triangles.push_back({s, r, q});
            }
        }
    return mesh;
}

test::Mesh mesh_of(Over over, Chord wide, Chord high, int fineness) {
    constexpr double long_one = 1.8;
    if (over == Over::ellipse && wide.length > long_one * high.length)
        return confocal(wide, high, fineness / 2);
    if (over == Over::ellipse)
        return test::crown_over_ellipse(wide.length, wide.rise, high.length, high.rise, fineness);
    const double ratio = wide.length / high.length;
    const auto cells = [&](double share) {
        return std::max(fineness, static_cast<int>(std::lround(fineness * share)));
    };
    return test::crown(wide.length, wide.rise, high.length, high.rise, cells(ratio),
                       cells(1 / ratio));
}

/// Meshes read too high in proportion to their mesh width: two of them give the limit.
Asked limit_of(Over over, Chord wide, Chord high, int coarse = 24) {
    const Asked one = asked_of(mesh_of(over, wide, high, coarse));
    const Asked two = asked_of(mesh_of(over, wide, high, 2 * coarse));
    return {2 * two.least - one.least, 2 * two.natural - one.natural};
}

/// stretch / (|K| b²), b half the shorter side, where that unit has the size given; the two bows
/// turn by the same angle. `sense` below 0: a saddle.
Asked factors_at(Over over, double aspect, double sense, double unit) {
    const double curvature = std::sqrt(4 * unit * aspect);
    const Asked asked =
        limit_of(over, chord_of(aspect, curvature / aspect), chord_of(1, sense * curvature));
    return {asked.least / unit, asked.natural / unit};
}

/// The same as the curvature goes to nothing.
Asked factors_of(Over over, double aspect, double sense) {
    constexpr double unit = .02;
    const Asked one = factors_at(over, aspect, sense, 2 * unit);
    const Asked half = factors_at(over, aspect, sense, unit);
    return {2 * half.least - one.least, 2 * half.natural - one.natural};
}

void tables() {
    std::printf("         rectangle                          ellipse\n"
                "         dome             saddle            dome             saddle\n"
                "aspect   least   natural  least   natural   least   natural  least   natural\n");
    for (const double aspect : {1.0, 1.25, 1.5, 2.0, 3.0, 4.0, 6.0, 10.0}) {
        std::printf("%6.2f ", aspect);
        for (const Over over : {Over::rectangle, Over::ellipse})
            for (const double sense : {1.0, -1.0}) {
                const Asked c = factors_of(over, aspect, sense);
                std::printf("  %.4f  %.4f ", c.least, c.natural);
            }
        std::printf("\n");
        std::fflush(stdout);
    }
}

/// The lowest and the highest of some, in percent above 1.
struct Spread {
    double low = 1e9;
    double high = -1e9;
    void add(double ratio) {
        low = std::min(low, 100 * (ratio - 1));
        high = std::max(high, 100 * (ratio - 1));
    }
};

/// Of crowns whose bows rise by this share of their chords, the shorter or the longer one also by
/// half of it.
void margin(Over over, double sense, double share) {
    Spread least;
    Spread natural;
    double most = 0;
    for (const double aspect : {1.0, 1.5, 2.5, 4.0})
        for (const auto& [wide_share, high_share] :
             {std::pair{1.0, 1.0}, std::pair{.5, 1.0}, std::pair{1.0, .5}}) {
            const Chord wide{aspect, aspect * wide_share * share};
            const Chord high{1, sense * high_share * share};
            const Asked asked = limit_of(over, wide, high, 16);
            const StretchAsked told = develop::stretch_of(
                develop::bow_over(wide.length, wide.rise), develop::bow_over(1, high.rise),
                over == Over::ellipse ? develop::Rim::ellipse : develop::Rim::any);
            least.add(told.percent / 100 / asked.least);
            natural.add(*told.natural_percent / 100 / asked.natural);
            most = std::max(most, 100 * asked.natural);
        }
    std::printf("%-9s  %-6s  %4.2f  %+5.1f to %+5.1f %%   %+5.1f to %+5.1f %%   %4.1f %%\n",
                over == Over::ellipse ? "ellipse" : "rectangle", sense > 0 ? "dome" : "saddle",
                share, least.low, least.high, natural.low, natural.high, most);
    std::fflush(stdout);
}

void margins() {
    std::printf(
        "\nestimate against meshes   least               natural            natural up to\n");
    for (const Over over : {Over::rectangle, Over::ellipse})
        for (const double sense : {1.0, -1.0})
            for (const double share : {.03, .06, .1, .15})
                margin(over, sense, share);
}

} // namespace

int main() {
    tables();
    margins();
    return 0;
}
