// SPDX-License-Identifier: MIT
#include "piece/numbering.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace pelt::piece {
namespace {

std::size_t index_of(int part) {
    return static_cast<std::size_t>(part) - 1;
}

/// Film of less width cannot be laid as a piece of its own. Common practice, no source.
constexpr Um narrowest_piece = um_per_mm;

bool is_too_narrow(const Part& part) {
    return geometry::narrowest(part.wrapped.outer).across < narrowest_piece;
}

/// Old indices in the new order; fewer than there are parts where some lie in a ring.
std::vector<std::size_t> from_below(const DividedPanel& divided) {
    std::vector<std::size_t> order;
    std::vector<bool> is_laid(divided.parts.size(), false);
    const auto can_be_laid = [&](std::size_t part) {
        return !is_laid[part] &&
               std::all_of(divided.seams.begin(), divided.seams.end(), [&](const PanelSeam& seam) {
                   return index_of(seam.upper_part) != part || is_laid[index_of(seam.under_part)];
               });
    };
    for (std::size_t part = 0; part < is_laid.size();) {
        if (!can_be_laid(part)) {
            ++part;
            continue;
        }
        is_laid[part] = true;
        order.push_back(part);
        part = 0;
    }
    return order;
}

} // namespace

bool number_by_laps(DividedPanel& divided) {
    const std::vector<std::size_t> order = from_below(divided);
    if (order.size() < divided.parts.size() ||
        (order.size() > 1 &&
         std::any_of(divided.parts.begin(), divided.parts.end(), is_too_narrow)))
        return false;
    DividedPanel out;
    std::vector<int> number(order.size());
    for (const std::size_t part : order) {
        out.parts.push_back(std::move(divided.parts[part]));
        out.shapes.push_back(std::move(divided.shapes[part]));
        number[part] = static_cast<int>(out.parts.size());
    }
    out.seams = std::move(divided.seams);
    for (PanelSeam& seam : out.seams) {
        seam.upper_part = number[index_of(seam.upper_part)];
        seam.under_part = number[index_of(seam.under_part)];
    }
    divided = std::move(out);
    return true;
}

} // namespace pelt::piece
