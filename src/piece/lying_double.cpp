// SPDX-License-Identifier: MIT
#include "piece/lying_double.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace pelt::piece {
namespace {

std::size_t index_of(int part) {
    return static_cast<std::size_t>(part) - 1;
}

/// Nothing but the rounding of two rims along the seams, at most `rim_mm` wide.
bool is_rounding(const std::vector<Polygon>& film, Um seams) {
    constexpr double rim_mm = 0.009;
    constexpr double corner_mm2 = 0.02;
    return to_mm2(geometry::doubled_area(film)) <=
           corner_mm2 + rim_mm * static_cast<double>(seams) / um_per_mm;
}

/// By part, from 1: whether it is left out.
using LeftOut = std::vector<bool>;

bool is_out(const LeftOut& out, int part) {
    return out[static_cast<std::size_t>(part)];
}

/// Whether the films under its seams, of the parts that stay, cover the part.
bool is_covered_below(const DividedPanel& divided, const LeftOut& out, int part) {
    std::vector<Polygon> left{divided.parts[index_of(part)].wrapped};
    Um seams = 0;
    for (const PanelSeam& seam : divided.seams)
        if (seam.upper_part == part && !is_out(out, seam.under_part)) {
            left = geometry::subtract(left, {divided.parts[index_of(seam.under_part)].wrapped});
            seams += seam.length;
        }
    return seams > 0 && is_rounding(left, seams);
}

/// Whether a part that stays would end over the one that is left out, and over nothing else there.
bool ends_over(const DividedPanel& divided, const LeftOut& out, int part) {
    return std::any_of(divided.seams.begin(), divided.seams.end(), [&](const PanelSeam& seam) {
        return seam.under_part == part && !is_out(out, seam.upper_part) &&
               std::none_of(
                   divided.seams.begin(), divided.seams.end(), [&](const PanelSeam& other) {
                       return other.line == seam.line && other.upper_part == seam.upper_part &&
                              !is_out(out, other.under_part);
                   });
    });
}

LeftOut all_covered(const DividedPanel& divided) {
    LeftOut none(divided.parts.size() + 1, false);
    LeftOut out = none;
    for (int part = 1; part <= static_cast<int>(divided.parts.size()); ++part)
        out[static_cast<std::size_t>(part)] = is_covered_below(divided, none, part);
    return out;
}

/// Fewer, until those that stay cover every part that does not.
LeftOut that_can_go(const DividedPanel& divided, LeftOut out) {
    for (int part = 1; part <= static_cast<int>(divided.parts.size());)
        if (is_out(out, part) &&
            (!is_covered_below(divided, out, part) || ends_over(divided, out, part))) {
            out[static_cast<std::size_t>(part)] = false;
            part = 1;
        } else {
            ++part;
        }
    return out;
}

void leave_out(DividedPanel& divided, int part) {
    const auto at = static_cast<std::ptrdiff_t>(index_of(part));
    divided.parts.erase(divided.parts.begin() + at);
    divided.shapes.erase(divided.shapes.begin() + at);
    std::erase_if(divided.seams, [&](const PanelSeam& seam) {
        return seam.upper_part == part || seam.under_part == part;
    });
    for (PanelSeam& seam : divided.seams) {
        seam.upper_part -= seam.upper_part > part ? 1 : 0;
        seam.under_part -= seam.under_part > part ? 1 : 0;
    }
}

} // namespace

bool leave_out_doubled(DividedPanel& divided) {
    const LeftOut covered = all_covered(divided);
    const LeftOut out = that_can_go(divided, covered);
    for (int part = static_cast<int>(divided.parts.size()); part > 0; --part)
        if (is_out(out, part))
            leave_out(divided, part);
    return out == covered;
}

bool lies_double_to_the_edge(const DividedPanel& divided, const PanelSeam& seam,
                             const Polygon& outline) {
    const Polygon& upper = divided.parts[index_of(seam.upper_part)].wrapped;
    const Polygon& under = divided.parts[index_of(seam.under_part)].wrapped;
    return is_rounding(geometry::subtract(geometry::intersect({upper}, {outline}), {under}),
                       seam.length);
}

} // namespace pelt::piece
