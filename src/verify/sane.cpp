// SPDX-License-Identifier: MIT
#include "verify/checks.hpp"
#include "verify/exact.hpp"

#include <cmath>
#include <initializer_list>
#include <optional>
#include <set>

namespace pelt::verify {
namespace {

/// About 550 km: what is placed then stays under the 2^41 of exact.hpp.
constexpr Um farthest = Um{1} << 39;
constexpr double farthest_mm = 1e8;
/// About 134 m: figures that lie near one another then stay within its 2^28.
constexpr Um largest = Um{1} << 27;

bool near_enough(Um value) {
    return -farthest <= value && value <= farthest;
}
bool near_enough(GridPoint point) {
    return near_enough(point.x) && near_enough(point.y);
}
bool near_enough(const std::optional<Um>& value) {
    return !value || near_enough(*value);
}

bool is_allowance(Um value) {
    return 0 <= value && value <= largest;
}

bool are_allowances(std::initializer_list<std::optional<Um>> values) {
    for (const std::optional<Um>& value : values)
        if (value && !is_allowance(*value))
            return false;
    return true;
}

bool usable(const Ring& ring) {
    if (ring.size() < 3)
        return false;
    for (const GridPoint& p : ring)
        if (!near_enough(p))
            return false;
    const Box box = box_around(ring);
    return box.along() <= largest && box.across() <= largest;
}

bool usable(const Polygon& polygon) {
    for (const Ring& hole : polygon.holes)
        if (!usable(hole))
            return false;
    return usable(polygon.outer);
}

bool usable(Point p) {
    return std::abs(p.x) <= farthest_mm && std::abs(p.y) <= farthest_mm; // nor NaN
}

/// A curve begins and ends within a right angle of its first and its last chord.
bool usable(const EndWays& ways, Point a, Point b) {
    for (const Point& way : {ways.begins, ways.ends}) {
        const double length = std::hypot(way.x, way.y);
        const double forward = way.x * (b.x - a.x) + way.y * (b.y - a.y);
        if (!(way == Point{}) && !(std::abs(length - 1) < 1e-9 && forward >= 0))
            return false;
    }
    return true;
}

bool usable(const TaggedRing& ring, std::size_t edges) {
    const std::size_t n = ring.points.size();
    if (n < 3 || ring.edge.size() != n || (!ring.ways.empty() && ring.ways.size() != n))
        return false;
    for (std::size_t i = 0; i < ring.ways.size(); ++i)
        if (!usable(ring.ways[i], ring.points[i], ring.points[(i + 1) % n]))
            return false;
    constexpr double largest_mm = 1e-3 * static_cast<double>(largest);
    for (const Point& p : ring.points)
        if (!usable(p) || !(std::abs(p.x - ring.points.front().x) <= largest_mm / 2) ||
            !(std::abs(p.y - ring.points.front().y) <= largest_mm / 2))
            return false;
    for (const int edge : ring.edge)
        if (edge < 0 || static_cast<std::size_t>(edge) >= edges)
            return false;
    return true;
}

bool usable(const Blank& blank, const Panel& panel) {
    bool right = usable(blank.outline, blank.edges.size()) &&
                 blank.openings.size() == panel.openings.size() &&
                 blank.seam_lines.size() == panel.seam_lines.size() &&
                 blank.inlays.size() == panel.inlays.size();
    for (const BlankOpening& opening : blank.openings)
        right = right && usable(opening.ring, 1);
    for (const BlankInlay& inlay : blank.inlays)
        right = right && usable(inlay.low) && usable(inlay.high);
    for (const BlankSeamLine& line : blank.seam_lines)
        for (const Point& p : line.points)
            right = right && usable(p);
    return right;
}

bool usable(const Piece& piece) {
    if (piece.ids.empty() || piece.shapes.empty() || !usable(piece.wrapped))
        return false;
    for (const CutShape& shape : piece.shapes)
        if (!usable(shape.outline))
            return false;
    return true;
}

bool usable(const Roll& roll) {
    for (const Flaw& flaw : roll.flaws)
        if (!near_enough(flaw.from) || !near_enough(flaw.to) || !near_enough(flaw.low) ||
            !near_enough(flaw.high))
            return false;
    return near_enough(roll.width) && near_enough(roll.trim) && near_enough(roll.available);
}

bool usable(const PanelAllowances& own) {
    const bool grip = !own.handling || are_allowances({own.handling->want, own.handling->least});
    return grip && are_allowances({own.wrap, own.bleed, own.overlap, own.flush});
}

bool is_usable(const Panel& panel) {
    bool right = usable(panel.allowances);
    for (const EdgeRule& rule : panel.edges)
        right = right && are_allowances({rule.wrap, rule.stop});
    for (const Opening& opening : panel.openings)
        right = right && are_allowances({opening.wrap});
    for (const Inlay& inlay : panel.inlays)
        right = right && are_allowances({inlay.overlap});
    return right;
}

bool is_cut(const Job& job, int vehicle, int panel, const std::vector<Side>& sides) {
    for (const Side side : sides) {
        bool left_out = false;
        for (const LeftOut& out : job.left_out)
            left_out = left_out || out == LeftOut{vehicle, panel, side};
        if (!left_out)
            return true;
    }
    return false;
}

void check_film(const Film& film, Sentences& faults) {
    const Allowances& of = film.allowances;
    if (of.ruler <= 0 || film.usable_width() <= 0 ||
        !are_allowances({film.width, film.trim, of.ruler, of.gap, of.bleed, of.overlap, of.flush,
                         of.wrap, of.handling.want, of.handling.least}))
        faults.emplace_back("the film's width, ruler or allowances are out of all bounds");
}

void check_developed(const Job& job, Sentences& faults) {
    bool all = job.developed.size() == job.vehicles.size();
    for (std::size_t v = 0; all && v < job.vehicles.size(); ++v)
        all = job.developed[v].size() == job.vehicles[v].panels.size();
    if (!all) {
        faults.emplace_back("not every panel was developed");
        return;
    }
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p) {
            const Panel& panel = job.vehicles[v].panels[p];
            if (!is_cut(job, static_cast<int>(v), static_cast<int>(p), sides_of(panel.sides)))
                continue;
            const std::vector<Blank>& blanks = job.developed[v][p].blanks;
            if (blanks.size() != 1 || !usable(blanks.front(), panel))
                faults.push_back("panel '" + panel.name + "': it was not developed as one blank");
            if (!is_usable(panel))
                faults.push_back("panel '" + panel.name +
                                 "': its tucks, stops or allowances are out of all bounds");
        }
}

bool names_a_panel(const Job& job, const PieceId& id) {
    return id.vehicle >= 0 && static_cast<std::size_t>(id.vehicle) < job.vehicles.size() &&
           id.panel >= 0 &&
           static_cast<std::size_t>(id.panel) <
               job.vehicles[static_cast<std::size_t>(id.vehicle)].panels.size();
}

void check_all_pieces(const Job& job, Sentences& faults) {
    for (const auto* pieces : {&job.pieces, &job.not_cut})
        for (const Piece& piece : *pieces) {
            if (!usable(piece))
                faults.emplace_back("a piece has no outline, no panel, or points out of all bounds");
            for (const PieceId& id : piece.ids)
                if (!names_a_panel(job, id))
                    faults.emplace_back("a piece is for a panel that no vehicle has");
        }
}

/// Every copy of every piece has a place of its own.
bool has_an_order(const Job& job) {
    if (job.laying.size() != job.pieces.size())
        return false;
    std::set<std::size_t> places;
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        if (job.laying[i].size() != job.pieces[i].ids.size())
            return false;
        for (const std::size_t place : job.laying[i])
            if (!places.insert(place).second)
                return false;
    }
    return true;
}

void check_placements(const Job& job, const UsedRoll& used, Sentences& faults) {
    for (const Placement& p : used.placements)
        if (p.piece >= job.pieces.size() || p.copy >= job.pieces[p.piece].ids.size() ||
            p.shape >= job.pieces[p.piece].shapes.size())
            faults.emplace_back("something is placed that is no piece of the job");
        else if (!near_enough(p.at) || p.turn.millidegrees < 0 || p.turn.millidegrees >= 360'000)
            faults.emplace_back("a piece lies or is turned out of all bounds");
}

void check_layout(const Job& job, const Layout& layout, Sentences& faults) {
    std::set<std::size_t> rolls;
    for (const UsedRoll& used : layout.rolls) {
        if (used.roll >= job.rolls.size())
            faults.emplace_back("a roll is used that was not offered");
        else if (!rolls.insert(used.roll).second)
            faults.push_back(job.rolls[used.roll].name + ": used twice over");
        if (!near_enough(used.length))
            faults.emplace_back("a roll's length is out of all bounds");
        check_placements(job, used, faults);
        for (const Cut& cut : used.cuts)
            if (!near_enough(cut.from) || !near_enough(cut.to))
                faults.emplace_back("a cut lies out of all bounds");
    }
    if (!near_enough(layout.bound.length))
        faults.emplace_back("the bound is out of all bounds");
}

} // namespace

bool sane(const Job& job, const Layout& layout, Sentences& faults) {
    const std::size_t before = faults.size();
    check_film(job.film, faults);
    for (const Roll& roll : job.rolls)
        if (!usable(roll))
            faults.push_back(roll.name + ": its width, length or flaws are out of all bounds");
    check_developed(job, faults);
    check_all_pieces(job, faults);
    if (job.in_order && !has_an_order(job))
        faults.emplace_back("not every piece has a place of its own in the order of laying");
    check_layout(job, layout, faults);
    return faults.size() == before;
}

} // namespace pelt::verify
