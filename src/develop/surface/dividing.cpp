// SPDX-License-Identifier: MIT
#include "develop/surface/dividing.hpp"

#include "develop/surface/ways_to_divide.hpp"
#include "geometry/geometry.hpp"
#include "geometry/predicates.hpp"
#include "trade/seam_cost.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace pelt::develop {
namespace {

constexpr double smallest_piece = .02; ///< of the panel

double cost_of(const WayToDivide& way, const SlitSheet& slit) {
    using Cost = trade::SeamCost;
    if (way.own_lines)
        return Cost::own_line * slit.length_mm;
    const double seen = Cost::elsewhere * slit.length_over_third +
                        Cost::lower_third * (slit.length_mm - slit.length_over_third);
    return way.kind == Division::Kind::relief ? Cost::relief * seen : seen;
}

bool lies_over_itself(const Flat& flat, const std::vector<int>& outline) {
    Ring ring;
    for (const Point p : outline_in(flat, outline)) {
        const GridPoint at = geometry::on_grid(p);
        if (ring.empty() || ring.back() != at)
            ring.push_back(at);
    }
    while (ring.size() > 1 && ring.front() == ring.back())
        ring.pop_back();
    return ring.size() < 3 || geometry::arrange({ring}).contact.has_value();
}

struct Priced {
    const WayToDivide* way;
    int pieces;
    double cost;
};

/// Ways that make whole pieces, fewest first and then by cost.
std::vector<Priced> priced(const std::vector<WayToDivide>& ways, const LaidSheet& coarse) {
    std::vector<Priced> out;
    for (const WayToDivide& way : ways) {
        const auto slit = slit_along(coarse.sheet, coarse.flat, way.slits);
        if (!slit || (slit->parts.size() == 1) != (way.kind == Division::Kind::relief) ||
            !(slit->length_mm > 0))
            continue;
        out.push_back(
            {&way, std::max(2, static_cast<int>(slit->parts.size())), cost_of(way, *slit)});
    }
    std::stable_sort(out.begin(), out.end(), [](const Priced& a, const Priced& b) {
        return std::pair(a.pieces, a.cost) < std::pair(b.pieces, b.cost);
    });
    return out;
}

} // namespace

std::optional<Judged> judged(const LaidSheet& laid, const std::vector<Slit>& slits, double enough) {
    const auto slit = slit_along(laid.sheet, laid.flat, slits);
    if (!slit)
        return std::nullopt;
    const double whole = std::accumulate(slit->areas.begin(), slit->areas.end(), 0.0);
    if (*std::min_element(slit->areas.begin(), slit->areas.end()) < smallest_piece * whole)
        return std::nullopt;
    Judged out{static_cast<int>(slit->parts.size()), 0, slit->length_mm, slit->edges};
    for (const Sheet3& part : slit->parts) {
        const auto least = laid_least(part);
        if (!least || lies_over_itself(least->flat, part.outline))
            return std::nullopt;
        out.stretch = std::max(out.stretch, least->stretch);
        if (out.stretch > enough)
            break;
    }
    return out;
}

std::optional<Division> divided_within(double limit, const LaidSheet& coarse, const LaidSheet& fine,
                                       Point peak,
                                       const std::vector<std::vector<Point>>& own_lines) {
    // Coarse meshes read high by one or two in a hundred of the stretch.
    constexpr double coarse_room = 1.03;
    constexpr int fine_trials = 6;
    const std::vector<WayToDivide> ways =
        ways_to_divide({outline_in(fine.flat, fine.sheet.outline), peak, own_lines});
    int tried = 0;
    for (const Priced& one : priced(ways, coarse)) {
        const auto roughly = judged(coarse, one.way->slits, coarse_room * limit);
        if (!roughly || roughly->stretch > coarse_room * limit)
            continue;
        const auto found = judged(fine, one.way->slits, limit);
        if (found && found->stretch <= limit)
            return Division{one.way->kind,
                            found->pieces,
                            static_cast<int>(one.way->slits.size()),
                            found->length_mm,
                            100 * found->stretch,
                            one.way->own_lines,
                            false,
                            found->edges};
        if (++tried == fine_trials)
            break;
    }
    return std::nullopt;
}

} // namespace pelt::develop
