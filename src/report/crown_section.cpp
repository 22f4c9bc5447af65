// SPDX-License-Identifier: MIT
#include "report/crown_section.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {
namespace {

constexpr int steps = 48;

} // namespace

CrownSection crown_section(const CrownLine& line) {
    const double high = std::abs(line.rise);
    const bool hollow = line.rise < 0;
    const double radius = (line.chord * line.chord + 4 * high * high) / (8 * high);
    // Away from the panel: above what lies along x, to the right of what lies along y.
    const Point out = line.way.x > 0 ? Point{0, 1} : Point{1, 0};
    const auto at = [&](double along, double up) {
        return Point{line.from.x + line.way.x * along + out.x * up,
                     line.from.y + line.way.y * along + out.y * up};
    };
    CrownSection section;
    for (int i = 0; i <= steps; ++i) {
        const double along = line.chord * i / steps;
        const double off = along - line.chord / 2;
        const double bulge =
            std::sqrt(std::max(0.0, radius * radius - off * off)) - (radius - high);
        section.arc.push_back(at(along, hollow ? high - bulge : bulge));
    }
    section.straightedge = {at(0, high), at(line.chord, high)};
    if (hollow)
        section.gaps = {{at(line.chord / 2, 0), at(line.chord / 2, high)}};
    else
        section.gaps = {{at(0, 0), at(0, high)}, {at(line.chord, 0), at(line.chord, high)}};
    return section;
}

} // namespace pelt::report
