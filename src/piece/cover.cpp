// SPDX-License-Identifier: MIT
#include "piece/cover.hpp"

#include "geometry/geometry.hpp"
#include "piece/stops.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace pelt::piece {
namespace {

double in_mm(Um length) {
    return static_cast<double>(length) / um_per_mm;
}

std::vector<Polygon> with_tucks(const TaggedRing& outline, const std::vector<EdgeWork>& work) {
    std::vector<double> moves;
    for (const int edge : outline.edge)
        moves.push_back(in_mm(work[static_cast<std::size_t>(edge)].move));
    return geometry::grown(outline, moves);
}

/// Most film has nothing to be taken off, and grown outlines are tidy already.
std::vector<Polygon> less(const std::vector<Polygon>& film, const std::vector<Polygon>& away) {
    return away.empty() ? film : geometry::subtract(film, away);
}

struct CutOut {
    std::vector<Polygon> all;
    std::vector<Polygon> at_table;
};

CutOut cut_out(const Blank& blank, const std::vector<OpeningWork>& work) {
    CutOut out;
    for (std::size_t i = 0; i < work.size(); ++i) {
        if (work[i].covered)
            continue;
        const TaggedRing& ring = blank.openings[i].ring;
        const std::vector<double> moves(ring.points.size(), in_mm(work[i].move));
        for (const Polygon& hole : geometry::shrunk(ring, moves)) {
            out.all.push_back(hole);
            if (work[i].at_table)
                out.at_table.push_back(hole);
        }
    }
    return out;
}

void largest_first(std::vector<Polygon>& parts) {
    std::stable_sort(parts.begin(), parts.end(), [](const Polygon& a, const Polygon& b) {
        return geometry::doubled_area(a) > geometry::doubled_area(b);
    });
}

std::string in_square_mm(const Polygon& polygon) {
    return std::to_string(std::lround(to_mm2(geometry::doubled_area(polygon)))) + " mm²";
}

/// The largest part, with a word on what is left out.
std::optional<Polygon> one_part(std::vector<Polygon> parts, const Panel& panel, const Blank& blank,
                                Faults& faults) {
    if (parts.empty()) {
        faults.push_back({Severity::file, panel.place, panel.name,
                          "nothing is left of it within its stops, openings and inlays",
                          "check the lengths given as 'stop'"});
        return std::nullopt;
    }
    largest_first(parts);
    const DoubleArea outline = doubled_area(geometry::on_grid(blank.outline.points));
    if (parts.size() > 1 && 1000 * geometry::doubled_area(parts[1]) > outline) {
        faults.push_back({Severity::file, panel.place, panel.name,
                          "its stops, openings and inlays leave it in " +
                              std::to_string(parts.size()) + " parts, the second of " +
                              in_square_mm(parts[1]),
                          "make the stops shorter, or describe the parts as panels of their own"});
        return std::nullopt;
    }
    for (std::size_t i = 1; i < parts.size(); ++i)
        faults.push_back({Severity::note, panel.place, panel.name,
                          "a bit of " + in_square_mm(parts[i]) + " beyond its stops is left out",
                          ""});
    return parts.front();
}

} // namespace

std::optional<Cover> cover(const Panel& panel, const Blank& blank, const Work& work,
                           Faults& faults) {
    const std::vector<Polygon> film =
        less(with_tucks(blank.outline, work.edges), stop_bands(blank.outline, work.edges));
    const CutOut openings = cut_out(blank, work.openings);
    std::vector<Polygon> away = openings.all;
    for (const BlankInlay& inlay : blank.inlays)
        away.push_back(
            {geometry::rectangle({geometry::on_grid(inlay.low), geometry::on_grid(inlay.high)}),
             {}});
    std::optional<Polygon> wrapped = one_part(less(film, away), panel, blank, faults);
    if (!wrapped)
        return std::nullopt;
    // What tucks enclose between them is cut on the vehicle too: the sheet has holes only where
    // they are cut at the table.
    std::vector<Polygon> sheet = film;
    largest_first(sheet);
    sheet.front().holes.clear();
    sheet = less({sheet.front()}, openings.at_table);
    largest_first(sheet);
    return Cover{std::move(*wrapped), std::move(sheet.front())};
}

} // namespace pelt::piece
