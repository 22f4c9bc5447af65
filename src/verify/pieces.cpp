// SPDX-License-Identifier: MIT
// Are the pieces themselves right: well formed, large enough, the panel's own, the right way round?
#include "verify/covering.hpp"
#include "verify/edges.hpp"
#include "verify/figures.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace pelt::verify {
namespace {

void check_rings(const std::string& who, const Polygon& polygon, Sentences& faults) {
    bool simple = is_simple(polygon.outer);
    for (const Ring& hole : polygon.holes)
        simple = simple && is_simple(hole);
    if (!simple || (!polygon.holes.empty() && !is_sound(polygon)) || twice_area(polygon.outer) <= 0)
        faults.push_back(who + ": its outline is not a simple counter-clockwise ring with simple "
                               "clockwise holes in it");
}

Um up_to(Um value, Um step) {
    return (value + step - 1) / step * step;
}

/// The sides of a rectangle about its film, along one axis.
struct Span {
    Um film_low, film_high, cut_low, cut_high;

    Um film() const { return film_high - film_low; }
    Um cut() const { return cut_high - cut_low; }
    /// What is odd goes to one of the sides.
    bool is_centred() const {
        const Um low = film_low - cut_low;
        const Um high = cut_high - film_high;
        return low >= 0 && high >= 0 && std::abs(low - high) <= 1;
    }
};

bool right_along(const Span& span, const Handling& margin, Um ruler) {
    return span.is_centred() && span.cut() == up_to(span.film() + 2 * margin.want, ruler);
}

/// Across the roll the margins may shrink, to the usable width, down to the least; on a roll that
/// is wider than the film that is asked for, to the next whole step, or to that roll's own width
/// where the step lies beyond it.
bool right_across(const Span& span, const Handling& margin, const Job& job) {
    const Film& film = job.film;
    const Um usable = film.usable_width();
    const Um whole = up_to(usable, film.allowances.ruler);
    const bool is_a_rolls_own =
        span.cut() > usable && span.cut() < whole &&
        std::any_of(job.rolls.begin(), job.rolls.end(), [&](const Roll& roll) {
            return !roll.is_new && roll.width - 2 * roll.trim == span.cut();
        });
    if (up_to(span.film() + 2 * margin.want, film.allowances.ruler) <= usable)
        return right_along(span, margin, film.allowances.ruler);
    return span.is_centred() && (span.cut() == usable || span.cut() == whole || is_a_rolls_own) &&
           span.film() + 2 * margin.least <= usable;
}

void check_rectangle(const Job& job, const std::string& who, const Piece& piece,
                     const CutShape& shape, Sentences& faults) {
    const Ring& ring = shape.outline.outer;
    const Box film = box_around(piece.wrapped.outer);
    const Box cut = box_around(ring);
    const Int128 twice_box = 2 * static_cast<Int128>(cut.along()) * cut.across();
    if (ring.size() != 4 || !shape.outline.holes.empty() || twice_area(ring) != twice_box)
        faults.push_back(who + ": not an upright rectangle");
    const Handling margin = handling_of(job, panel_of(job, piece.ids.front()));
    const Span x{film.low.x, film.high.x, cut.low.x, cut.high.x};
    const Span y{film.low.y, film.high.y, cut.low.y, cut.high.y};
    for (const Turn turn : shape.turns) {
        const bool lies = turn.millidegrees % 180'000 == 0;
        if (!right_along(lies ? x : y, margin, job.film.allowances.ruler) ||
            !right_across(lies ? y : x, margin, job))
            faults.push_back(who + ": not the margins to grip that are wanted");
    }
}

bool may_be_turned(Direction direction, Turn turn, bool free_turns) {
    switch (direction) {
    case Direction::one_way:
        return turn.millidegrees == 0;
    case Direction::two_way:
        return turn.millidegrees % 180'000 == 0;
    case Direction::any:
        return free_turns || turn.millidegrees % 90'000 == 0;
    }
    return false;
}

void check_shape(const Job& job, const Piece& piece, Sentences& faults) {
    const std::string who = called(job, piece.ids.front());
    const Panel& panel = panel_of(job, piece.ids.front());
    if (piece.direction != direction_of(job, panel))
        faults.push_back(who + ": its direction is not its panel's");
    if (piece.batch_free != panel.batch_free)
        faults.push_back(who + ": it may not come from any batch, or may");
    check_rings(who, piece.wrapped, faults);
    for (const CutShape& shape : piece.shapes) {
        check_rings(who, shape.outline, faults);
        if (shape.turns.empty())
            faults.push_back(who + ": it may not lie in any way");
        for (const Turn turn : shape.turns)
            if (!may_be_turned(piece.direction, turn, job.free_turns))
                faults.push_back(who + ": turned as its film may not lie");
        if (job.by == CutBy::straight)
            check_rectangle(job, who, piece, shape, faults);
    }
}

/// A piece is for one panel; only copies on its sides and faces are cut alike.
bool is_of_one_panel(const Job& job, const Piece& piece, Sentences& faults) {
    const PieceId& first = piece.ids.front();
    const bool one = std::all_of(piece.ids.begin(), piece.ids.end(), [&](const PieceId& id) {
        return id.vehicle == first.vehicle && id.panel == first.panel && id.kind == first.kind &&
               id.inlay == first.inlay && id.part == first.part && id.parts == first.parts;
    });
    if (!one)
        faults.push_back(called(job, first) + ": cut as one piece with another panel's");
    return one;
}

using PanelKey = std::pair<int, int>;
/// By part, from 1.
using Parts = std::map<int, const Piece*>;

/// What is cut for one panel: the parts of each side and copy, and its inlays.
struct PanelPieces {
    std::map<std::pair<Side, int>, Parts> films;
    std::vector<std::pair<const Piece*, PieceId>> inlays;
};

std::map<PanelKey, PanelPieces> pieces_by_panel(const Job& job) {
    std::map<PanelKey, PanelPieces> out;
    for (const auto* pieces : {&job.pieces, &job.not_cut})
        for (const Piece& piece : *pieces)
            for (const PieceId& id : piece.ids) {
                PanelPieces& panel = out[{id.vehicle, id.panel}];
                if (id.kind == PieceKind::inlay)
                    panel.inlays.emplace_back(&piece, id);
                else
                    panel.films[{id.side, id.copy}][id.part] = &piece;
            }
    return out;
}

/// What is cut and what is not are different pieces.
void check_told_once(const Job& job, Sentences& faults) {
    std::set<PieceId> cut;
    for (const Piece& piece : job.pieces)
        cut.insert(piece.ids.begin(), piece.ids.end());
    for (const Piece& piece : job.not_cut)
        for (const PieceId& id : piece.ids)
            if (!cut.insert(id).second)
                faults.push_back(called(job, id) + ": cut, and not cut");
}

/// Without points along straight sides, beginning at its least point.
void begin(Ring& ring) {
    Ring corners;
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (side(ring[(i + ring.size() - 1) % ring.size()], ring[i], ring[(i + 1) % ring.size()]))
            corners.push_back(ring[i]);
    std::rotate(corners.begin(), std::min_element(corners.begin(), corners.end()), corners.end());
    ring = std::move(corners);
}

/// Holes stand in order.
Polygon in_order(Polygon polygon) {
    begin(polygon.outer);
    for (Ring& hole : polygon.holes)
        begin(hole);
    std::sort(polygon.holes.begin(), polygon.holes.end());
    return polygon;
}

/// Film and cut outlines of all parts as they lie in the panel's drawing.
std::vector<Polygon> drawn(const Parts& parts, const Frame& frame) {
    std::vector<Polygon> out;
    for (const auto& [part, piece] : parts) {
        out.push_back(in_order(in_drawing(piece->wrapped, frame)));
        for (const CutShape& shape : piece->shapes)
            out.push_back(in_order(in_drawing(shape.outline, frame)));
    }
    return out;
}

std::vector<Seam> seams_of(const Job& job, const PieceId& id) {
    std::vector<Seam> out;
    for (const Seam& seam : job.seams)
        if (seam.vehicle == id.vehicle && seam.panel == id.panel && seam.side == id.side)
            out.push_back(seam);
    return out;
}

void check_film(const Job& job, const PieceId& id, const Parts& parts, Sentences& faults) {
    const Panel& panel = panel_of(job, id);
    const Blank& blank =
        job.developed[static_cast<std::size_t>(id.vehicle)][static_cast<std::size_t>(id.panel)]
            .blanks.front();
    const Frame frame = frame_of(panel, id);
    Covering covering{job,
                      panel,
                      blank,
                      called_whole(job, id),
                      frame.forward,
                      Wanted(panel, blank, asked_of(job, panel, blank)),
                      {},
                      seams_of(job, id),
                      {}};
    for (const auto& [part, piece] : parts) {
        Polygon film = in_drawing(piece->wrapped, frame);
        Rim rim(film);
        covering.parts.push_back({std::move(film), std::move(rim)});
    }
    find_stretches(covering);
    check_cover(covering, faults);
    check_laps(covering, faults);
    std::size_t part = 0;
    for (const auto& [number, piece] : parts) {
        if (job.by == CutBy::contour)
            for (const CutShape& shape : piece->shapes)
                check_cut_outline(covering, part, in_drawing(shape.outline, frame), faults);
        ++part;
    }
}

void check_inlay(const Job& job, const Piece& piece, const PieceId& id, Sentences& faults) {
    const Panel& panel = panel_of(job, id);
    const Blank& blank =
        job.developed[static_cast<std::size_t>(id.vehicle)][static_cast<std::size_t>(id.panel)]
            .blanks.front();
    const Frame frame = frame_of(panel, id);
    for (std::size_t i = 0; i < panel.inlays.size(); ++i) {
        if (panel.inlays[i].name != id.inlay)
            continue;
        const BlankInlay& recess = blank.inlays[i];
        const Um overlap = panel.inlays[i].overlap.value_or(overlap_of(job, panel));
        const Box wanted = grown({nearest(recess.low), nearest(recess.high)}, overlap);
        const auto is = [&](const Polygon& polygon, Um more) {
            const Polygon there = in_drawing(polygon, frame);
            const Box box = box_around(there.outer);
            const Box right = grown(wanted, more);
            return box.low == right.low && box.high == right.high && there.holes.empty() &&
                   twice_area(there.outer) == 2 * static_cast<Int128>(box.along()) * box.across();
        };
        if (!is(piece.wrapped, 0))
            faults.push_back(called(job, id) + ": not its recess with the overlap all round");
        if (job.by == CutBy::contour)
            for (const CutShape& shape : piece.shapes)
                if (!is(shape.outline, bleed_of(job, panel)))
                    faults.push_back(called(job, id) + ": not its film with the bleed all round");
    }
}

/// One side and copy is looked at closely; the others are that, or its mirror image.
void check_panel(const Job& job, PanelKey key, const PanelPieces& pieces, Sentences& faults) {
    std::vector<Polygon> first;
    std::set<std::pair<std::vector<const Piece*>, bool>> same;
    for (const auto& [of, parts] : pieces.films) {
        const PieceId id{key.first, key.second, of.first, of.second, 1, 1, PieceKind::main, ""};
        const Frame frame = frame_of(panel_of(job, id), id);
        std::vector<const Piece*> list;
        for (const auto& [part, piece] : parts)
            list.push_back(piece);
        if (!same.insert({list, frame.mirrored}).second)
            continue;
        const std::vector<Polygon> lying = drawn(parts, frame);
        if (first.empty()) {
            first = lying;
            check_film(job, id, parts, faults);
        } else if (lying != first) {
            faults.push_back(called_whole(job, id) +
                             ": not the same film as on the other side, seen the right way round");
        }
    }
    for (const auto& [piece, id] : pieces.inlays)
        check_inlay(job, *piece, id, faults);
}

auto told(const Seam& seam) {
    return std::tuple(seam.upper_part, seam.under_part, seam.overlap, seam.length, seam.added);
}

/// Seams are told alike of every side, and of nothing that is not cut.
void check_seams_told(const Job& job, const std::map<PanelKey, PanelPieces>& panels,
                      Sentences& faults) {
    using Told = decltype(told(Seam{}));
    std::map<PanelKey, std::map<Side, std::multiset<Told>>> of;
    for (const Seam& seam : job.seams)
        of[{seam.vehicle, seam.panel}][seam.side].insert(told(seam));
    for (const auto& [key, by_side] : of) {
        const auto panel = panels.find(key);
        for (const auto& [side, seams] : by_side) {
            const Side at = side;
            const bool cut = panel != panels.end() &&
                             std::any_of(panel->second.films.begin(), panel->second.films.end(),
                                         [&](const auto& film) { return film.first.first == at; });
            if (!cut || seams != by_side.begin()->second)
                faults.emplace_back("seams are told of a panel or side that has none");
        }
    }
    for (const auto& [key, pieces] : panels)
        for (const auto& [film, parts] : pieces.films)
            if (parts.size() > 1 && of[key].count(film.first) == 0)
                faults.emplace_back("a divided panel has no seam told");
}

} // namespace

void check_pieces(const Job& job, Sentences& faults) {
    for (const auto* pieces : {&job.pieces, &job.not_cut})
        for (const Piece& piece : *pieces) {
            if (!is_of_one_panel(job, piece, faults))
                return;
            check_shape(job, piece, faults);
        }
    check_told_once(job, faults);
    const std::map<PanelKey, PanelPieces> panels = pieces_by_panel(job);
    for (const auto& [key, pieces] : panels)
        check_panel(job, key, pieces, faults);
    check_seams_told(job, panels, faults);
}

} // namespace pelt::verify
