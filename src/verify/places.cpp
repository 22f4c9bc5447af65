// SPDX-License-Identifier: MIT
#include "verify/checks.hpp"
#include "verify/edges.hpp"
#include "verify/figures.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <cstdlib>

namespace pelt::verify {
namespace {

/// A piece where it lies.
struct Lying {
    Polygon outline;
    Box box;
    Rim rim; ///< contour cutting only
    PieceId id;
};

bool covers_flaw(const Box& box, const Flaw& flaw) {
    const bool beside =
        (flaw.low && box.high.y <= *flaw.low) || (flaw.high && box.low.y >= *flaw.high);
    return !beside && box.low.x < flaw.to && box.high.x > flaw.from;
}

/// Exactly, for a piece whose box touches the flaw: a slanted outline may still pass beside it.
bool covers_flaw(const Lying& piece, const Flaw& flaw, const Roll& roll) {
    if (!covers_flaw(piece.box, flaw))
        return false;
    const Um low = flaw.low.value_or(0);
    const Um high = flaw.high.value_or(roll.width);
    const Polygon area{{{flaw.from, low}, {flaw.to, low}, {flaw.to, high}, {flaw.from, high}}, {}};
    return !polygons_apart(piece.outline, area, 0);
}

void check_one(const Job& job, const UsedRoll& used, const Placement& p, const Lying& piece,
               Sentences& faults) {
    const Roll& roll = job.rolls[used.roll];
    const std::string who = called(job, piece.id) + " on " + roll.name;
    const Direction direction = direction_of(job, panel_of(job, piece.id));
    const std::vector<Turn>& turns = job.pieces[p.piece].shapes[p.shape].turns;
    const bool freely = job.free_turns && job.by == CutBy::contour && direction == Direction::any;
    if (!freely && std::find(turns.begin(), turns.end(), p.turn) == turns.end())
        faults.push_back(who + ": turned as its film may not lie");
    if (direction != Direction::any && !roll.arrow_known)
        faults.push_back(who + ": directed film from a roll whose arrow is not known");
    if (piece.box.low.x < 0 || piece.box.high.x > used.length || piece.box.low.y < roll.trim ||
        piece.box.high.y > roll.width - roll.trim)
        faults.push_back(who + ": outside the usable film");
    for (const Flaw& flaw : roll.flaws)
        if (covers_flaw(piece, flaw, roll))
            faults.push_back(who + ": over a flaw");
}

void check_length(const Job& job, const UsedRoll& used, const std::vector<Lying>& pieces,
                  Sentences& faults) {
    const Roll& roll = job.rolls[used.roll];
    Um far = 0;
    for (const Lying& piece : pieces)
        far = std::max(far, piece.box.high.x);
    if (pieces.empty())
        faults.push_back(roll.name + ": used for nothing");
    if (far != used.length)
        faults.push_back(roll.name + ": its length does not end with its last piece");
    if (roll.available && used.length > *roll.available)
        faults.push_back(roll.name + ": more film is used than there is");
    if (roll.is_new && (roll.width != job.film.width || roll.trim != job.film.trim))
        faults.push_back(roll.name + ": not the film's width and trim");
}

bool lie_apart(const Lying& a, const Lying& b, CutBy by, Um gap) {
    if (by == CutBy::contour)
        return apart(a.rim, b.rim, gap);
    return a.box.high.x <= b.box.low.x || b.box.high.x <= a.box.low.x ||
           a.box.high.y <= b.box.low.y || b.box.high.y <= a.box.low.y;
}

/// Sweeps along the roll, so that only pieces side by side are compared.
void check_apart(const Job& job, std::vector<Lying> pieces, Sentences& faults) {
    const Um gap = job.by == CutBy::contour ? job.film.allowances.gap : 0;
    std::sort(pieces.begin(), pieces.end(),
              [](const Lying& a, const Lying& b) { return a.box.low.x < b.box.low.x; });
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t k = i + 1;
             k < pieces.size() && pieces[k].box.low.x < pieces[i].box.high.x + gap; ++k)
            if (!lie_apart(pieces[i], pieces[k], job.by, gap))
                faults.push_back(called(job, pieces[i].id) + " and " + called(job, pieces[k].id) +
                                 ": closer than the spacing");
}

} // namespace

void check_places(const Job& job, const Layout& layout, Sentences& faults) {
    for (const UsedRoll& used : layout.rolls) {
        std::vector<Lying> pieces;
        for (const Placement& p : used.placements) {
            const Piece& piece = job.pieces[p.piece];
            Polygon outline = lying(piece.shapes[p.shape].outline, p.turn, p.at);
            const Box box = box_around(outline.outer);
            Rim rim(job.by == CutBy::contour ? outline : Polygon{});
            const Lying lies{std::move(outline), box, std::move(rim), piece.ids[p.copy]};
            check_one(job, used, p, lies, faults);
            pieces.push_back(lies);
        }
        check_length(job, used, pieces, faults);
        check_apart(job, std::move(pieces), faults);
    }
}

/// A corner that lies askew is rounded to the grid, by less than a micrometre: a piece loses less
/// than a band of one along its outline. Twice that; a side is at most as long as this counts it.
Int128 twice_lost_askew(const Polygon& outline) {
    Int128 sum = 0;
    const auto add = [&sum](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const GridPoint way = ring[i + 1 == ring.size() ? 0 : i + 1] - ring[i];
            sum += 2 * static_cast<Int128>(std::abs(way.x) + std::abs(way.y) + 1);
        }
    };
    add(outline.outer);
    for (const Ring& hole : outline.holes)
        add(hole);
    return sum;
}

void check_bound(const Job& job, const Layout& layout, Sentences& faults) {
    Um fresh = 0;
    Um usable = 0;
    Int128 twice_cut = 0;
    for (const UsedRoll& used : layout.rolls) {
        const Roll& roll = job.rolls[used.roll];
        if (!roll.is_new)
            continue;
        fresh += used.length;
        usable = roll.width - 2 * roll.trim;
        for (const Placement& p : used.placements) {
            const Piece& piece = job.pieces[p.piece];
            const Polygon& outline = piece.shapes[p.shape].outline;
            twice_cut += twice_area(outline);
            if (job.by == CutBy::contour && job.free_turns && piece.direction == Direction::any)
                twice_cut -= twice_lost_askew(outline);
        }
    }
    if (layout.bound.length > fresh)
        faults.emplace_back("the bound is longer than the new film");
    if (2 * static_cast<Int128>(layout.bound.length) * usable < twice_cut)
        faults.emplace_back("the bound is under the pieces' area over the usable width");
}

} // namespace pelt::verify
