// SPDX-License-Identifier: MIT
#include "piece/allowed.hpp"
#include "piece/edge_work.hpp"
#include "piece/piece.hpp"
#include "piece/tuck_check.hpp"

#include <cmath>

namespace pelt::piece {
namespace {

/// Of each edge of a ring, in mm.
std::vector<double> lengths_of(const TaggedRing& ring, std::size_t edges) {
    std::vector<double> out(edges, 0);
    for (std::size_t i = 0; i < ring.points.size(); ++i) {
        const Point& a = ring.points[i];
        const Point& b = ring.points[(i + 1) % ring.points.size()];
        out.at(static_cast<std::size_t>(ring.edge[i])) += std::hypot(b.x - a.x, b.y - a.y);
    }
    return out;
}

void add_edges(const Blank& blank, const Work& work, const Film& film, RimLengths& rims) {
    const std::vector<double> lengths = lengths_of(blank.outline, blank.edges.size());
    const std::vector<bool> over = edges_over_the_limit(blank, work, film);
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        const EdgeWork& edge = work.edges[i];
        if (edge.move == 0 || edge.flush || blank.edges[i].seam)
            continue;
        rims.tucked += lengths[i];
        rims.over_the_limit += over[i] ? lengths[i] : 0;
    }
}

void add_openings(const Blank& blank, const Work& work, RimLengths& rims) {
    for (std::size_t i = 0; i < blank.openings.size() && i < work.openings.size(); ++i) {
        const OpeningWork& opening = work.openings[i];
        if (opening.covered)
            continue;
        const double length = lengths_of(blank.openings[i].ring, 1).front();
        rims.tucked += opening.move > 0 && !opening.flush ? length : 0;
        rims.cut_out += opening.at_table ? 0 : length;
    }
}

} // namespace

std::vector<std::string> openings_covered(const Panel& panel, const DevelopedPanel& developed,
                                          const Film& film,
                                          const std::vector<std::string>& left_on) {
    std::vector<std::string> out;
    if (developed.blanks.empty())
        return out;
    const Work work =
        work_on(panel, developed.blanks.front(), allowed_for(panel, film), left_on);
    for (std::size_t i = 0; i < panel.openings.size() && i < work.openings.size(); ++i)
        if (work.openings[i].covered)
            out.push_back(panel.openings[i].name);
    return out;
}

RimLengths rims_of(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                   const std::vector<std::string>& left_on) {
    RimLengths rims;
    const Allowed allowed = allowed_for(panel, film);
    for (const Blank& blank : developed.blanks) {
        const Work work = work_on(panel, blank, allowed, left_on);
        add_edges(blank, work, film, rims);
        add_openings(blank, work, rims);
    }
    return rims;
}

} // namespace pelt::piece
