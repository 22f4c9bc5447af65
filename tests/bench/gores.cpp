// SPDX-License-Identifier: MIT
// A hemisphere in equal gores: what each asks of the film, and what is proposed for some limits.
// Prints; measures nothing against a limit. Whole it asks pi / 2 - 1 (J. Milnor 1969).
#include "develop/develop.hpp"
#include "develop/surface/dividing.hpp"
#include "geometry/mesh/mesh.hpp"
#include "mesh_panel.hpp"
#include "meshes.hpp"

#include <cmath>
#include <cstdio>
#include <ctime>
#include <memory>
#include <numbers>
#include <vector>

namespace {

using namespace pelt;

constexpr int rings = 32; // 6,144 triangles

double now() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

void gores(const test::Mesh& mesh) {
    const develop::Sheet3 sheet{mesh.points, mesh.triangles, mesh.triangles.size(),
                                geometry::loops_of(mesh.points, mesh.triangles).front()};
    const auto whole = develop::laid_least(sheet);
    std::printf("gores  asks %%\n    1  %6.2f (exact 57.08)\n", 100 * whole->stretch);
    for (const int n : {2, 3, 4, 6}) {
        std::vector<develop::Slit> slits;
        for (int k = 0; k < n; ++k) {
            const double way = 2 * std::numbers::pi * k / n;
            slits.push_back({Point{0, 0}, Point{2000 * std::cos(way), 2000 * std::sin(way)}});
        }
        develop::Flat flat = whole->flat; // its point 0, the pole, lies at 0
        const auto judged = develop::judged({sheet, flat}, slits, 10);
        std::printf("    %d  %6.2f\n", n, judged ? 100 * judged->stretch : -1.0);
    }
}

void proposals(const test::Mesh& mesh) {
    const Panel panel = test::panel_of(mesh);
    const auto scans = std::make_shared<develop::LaidScans>();
    std::printf("film %%  kind    pieces  cut mm  asks %%  seconds\n");
    for (const double limit : {60.0, 30.0, 20.0, 12.0, 8.0}) {
        Faults faults;
        develop::Purpose purpose{limit, false, scans, false};
        develop::develop(panel, faults, purpose);
        purpose.divide = true;
        const double start = now();
        const auto found = develop::develop(panel, faults, purpose).stretch.division;
        const double seconds = now() - start;
        if (!found)
            std::printf("%5.0f   none                            %.2f\n", limit, seconds);
        else
            std::printf("%5.0f   %-6s  %6d  %6.0f  %6.2f  %.2f\n", limit,
                        found->kind == Division::Kind::relief ? "relief" : "seam", found->pieces,
                        found->cut_mm, found->stretch_percent, seconds);
    }
}

} // namespace

int main() {
    const test::Mesh mesh = test::cap(500, std::numbers::pi / 2, rings);
    gores(mesh);
    proposals(mesh);
}
