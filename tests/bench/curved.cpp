// SPDX-License-Identifier: MIT
// How near the layouts of surfaces come to the exact values, and what they cost. Prints; measures
// nothing against a limit.
#include "develop/develop.hpp"
#include "develop/surface/flatten.hpp"
#include "develop/surface/roof.hpp"
#include "geometry/mesh/mesh.hpp"
#include "mesh_panel.hpp"
#include "meshes.hpp"

#include <sys/resource.h>

#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <ctime>
#include <memory>
#include <numbers>
#include <thread>
#include <utility>

namespace {

using namespace pelt;

constexpr double degree = std::numbers::pi / 180;

/// Of the processor, so that other work on the machine does not count.
double now() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

double by_the_clock() {
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

double megabytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024;
}

void caps() {
    std::printf(
        "cap    triangles  least      exact      over %%   roof bound  off %%    seconds\n");
    for (const double degrees : {15.0, 30.0, 45.0, 60.0, 75.0, 90.0}) {
        const double a = degrees * degree;
        const double exact = a / std::sin(a) - 1;
        const test::Mesh mesh = test::cap(500, a, 32);
        const develop::Sheet3 sheet{mesh.points, mesh.triangles, mesh.triangles.size(),
                                    geometry::loops_of(mesh.points, mesh.triangles).front()};
        const double start = now();
        const auto flat = develop::flattened(sheet);
        const double seconds = now() - start;
        const double roof = develop::roof_bound(sheet, flat->patch).value_or(0);
        std::printf("%3.0f°   %9zu  %.6f   %.6f   %+.2f    %.6f    %+.2f    %.2f\n", degrees,
                    mesh.triangles.size(), flat->least_stretch, exact,
                    100 * (flat->least_stretch / exact - 1), roof, 100 * (roof / exact - 1),
                    seconds);
    }
}

void timed(const char* name, const test::Mesh& mesh) {
    const double start = now();
    const Panel panel = test::panel_of(mesh);
    const double read = now();
    Faults faults;
    const DevelopedPanel out = develop::develop(panel, faults, {6.0});
    const double done = now();
    std::printf("%-24s %7zu triangles: %.2f s to mend, %.2f s to lay flat; least %.3f %%, natural "
                "%.3f %%; peak memory %.0f MB\n",
                name, mesh.triangles.size(), read - start, done - read, out.stretch.percent,
                out.stretch.natural_percent.value_or(-1), megabytes());
    for (const Fault& fault : faults)
        std::printf("    %s\n", sentence_of(fault).c_str());
}

void two_at_once(const test::Mesh& mesh) {
    const Panel panel = test::panel_of(mesh);
    const auto once = [&] {
        Faults faults;
        develop::develop(panel, faults, {6.0});
    };
    const double start = by_the_clock();
    once();
    const double one = by_the_clock() - start;
    const double again = by_the_clock();
    std::thread other(once);
    once();
    other.join();
    std::printf("two panels at once on two threads: %.2f times one panel\n",
                (by_the_clock() - again) / one);
}

/// As a scanner gives it: fine, and rough by a tenth of a millimetre.
test::Mesh scan() {
    test::Mesh mesh = test::crown(600, 80, 400, 60, 274, 183);
    std::uint64_t state = 1;
    for (Point3& p : mesh.points) {
        double sum = -6;
        for (int k = 0; k < 12; ++k) {
            state = state * 6364136223846793005ULL + 1442695040888963407ULL;
            sum += static_cast<double>(state >> 40U) / 16777216.0;
        }
        p.z += .1 * sum;
    }
    return mesh;
}

} // namespace

int main() {
    caps();
    timed("crown 600/80 x 400/60", test::crown(600, 80, 400, 60, 87, 58));
    two_at_once(test::crown(600, 80, 400, 60, 87, 58));
    timed("the same as a clean scan", test::crown(600, 80, 400, 60, 274, 183));
    timed("and as a rough one", scan());
    return 0;
}
