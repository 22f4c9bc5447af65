// SPDX-License-Identifier: MIT
// Straight cuts replayed as a person makes them: each divides one sheet that is still whole, from
// edge to edge; the roll itself is a sheet without end.
#include "verify/checks.hpp"
#include "verify/exact.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <optional>

namespace pelt::verify {
namespace {

constexpr Um endless = std::numeric_limits<Um>::max();

struct Sheet {
    Um x0, y0, x1, y1;
    friend bool operator==(const Sheet&, const Sheet&) = default;
};

struct Divided {
    Sheet first;
    Sheet second;
};

/// A sheet in hand, and how often the cuts that made it changed between across and along.
struct InHand {
    Sheet sheet;
    int turns = 0;
    bool last_across = false;
};

/// The two halves when the cut runs from edge to edge of this sheet, strictly inside it.
std::optional<Divided> divided_by(const Cut& cut, const Sheet& s) {
    const auto [ax, bx] = std::minmax(cut.from.x, cut.to.x);
    const auto [ay, by] = std::minmax(cut.from.y, cut.to.y);
    if (ax == bx && ax > s.x0 && ax < s.x1 && ay == s.y0 && by == s.y1)
        return Divided{{s.x0, s.y0, ax, s.y1}, {ax, s.y0, s.x1, s.y1}};
    if (ay == by && ay > s.y0 && ay < s.y1 && ax == s.x0 && bx == s.x1)
        return Divided{{s.x0, s.y0, s.x1, ay}, {s.x0, ay, s.x1, s.y1}};
    return std::nullopt;
}

bool on_the_ruler(const Cut& cut, const Roll& roll, Um ruler) {
    if (cut.from.x == cut.to.x)
        return cut.from.x % ruler == 0;
    return (cut.from.y - roll.trim) % ruler == 0 || cut.from.y == roll.width - roll.trim;
}

struct Piece0 {
    Sheet box;
    PieceId id;
    std::optional<std::size_t> freed_by; ///< number of the cut
};

std::vector<Piece0> boxes_of(const Job& job, const UsedRoll& used) {
    std::vector<Piece0> out;
    for (const Placement& p : used.placements) {
        const Ring ring = lying(job.pieces[p.piece].shapes[p.shape].outline.outer, p.turn, p.at);
        Sheet box{endless, endless, -endless, -endless};
        for (const GridPoint& q : ring)
            box = {std::min(box.x0, q.x), std::min(box.y0, q.y), std::max(box.x1, q.x),
                   std::max(box.y1, q.y)};
        out.push_back({box, job.pieces[p.piece].ids[p.copy], std::nullopt});
    }
    return out;
}

void free_with(std::vector<Piece0>& pieces, const Sheet& sheet, std::size_t cut) {
    for (Piece0& piece : pieces)
        if (piece.box == sheet)
            piece.freed_by = cut;
}

std::size_t pieces_in(const std::vector<Piece0>& pieces, const Sheet& s) {
    return static_cast<std::size_t>(
        std::count_if(pieces.begin(), pieces.end(), [&](const Piece0& piece) {
            const Sheet& b = piece.box;
            return b.x0 >= s.x0 && b.x1 <= s.x1 && b.y0 >= s.y0 && b.y1 <= s.y1;
        }));
}

/// The first cut across the roll is the first turn; what stays on the roll has had none, and its
/// end counts as the cut that makes it a sheet.
int turns_after(const Cut& cut, const InHand& in_hand) {
    const bool across = cut.from.x == cut.to.x;
    if (in_hand.turns == 0)
        return across ? 1 : 2;
    return across == in_hand.last_across ? in_hand.turns : in_hand.turns + 1;
}

/// Beyond the turns allowed one more may trim a piece that is alone in its sheet.
void check_turns(const Job& job, const std::vector<Piece0>& pieces, const Sheet& sheet, int turns,
                 const std::string& name, Sentences& faults) {
    if (!job.stages || turns <= *job.stages)
        return;
    if (turns > *job.stages + 1 || pieces_in(pieces, sheet) != 1)
        faults.push_back(name + ": the film has been turned too often");
}

void check_table(const Job& job, const std::vector<Piece0>& pieces, const InHand& in_hand,
                 const std::string& name, Sentences& faults) {
    if (job.table && in_hand.sheet.x1 - in_hand.sheet.x0 > *job.table &&
        pieces_in(pieces, in_hand.sheet) > 0)
        faults.push_back(name + ": what it takes off is longer than the table");
}

/// Where the strips that come off the roll end, from its free end.
std::vector<Um> strip_ends(const Roll& roll, const UsedRoll& used) {
    std::vector<Um> ends;
    for (const Cut& cut : used.cuts)
        if (cut.from.x == cut.to.x && std::abs(cut.to.y - cut.from.y) == roll.width)
            ends.push_back(cut.from.x);
    std::sort(ends.begin(), ends.end());
    return ends;
}

/// Every strip holds pieces that are laid after all those of the strips before it.
void check_order(const Job& job, const UsedRoll& used, Sentences& faults) {
    const std::vector<Um> ends = strip_ends(job.rolls[used.roll], used);
    struct Laid {
        std::ptrdiff_t strip;
        std::size_t place;
        PieceId id;
    };
    std::vector<Laid> laid;
    for (const Placement& p : used.placements) {
        const Ring ring = lying(job.pieces[p.piece].shapes[p.shape].outline.outer, p.turn, p.at);
        Um start = endless;
        for (const GridPoint& q : ring)
            start = std::min(start, q.x);
        laid.push_back({std::upper_bound(ends.begin(), ends.end(), start) - ends.begin(),
                        job.laying[p.piece][p.copy], job.pieces[p.piece].ids[p.copy]});
    }
    std::sort(laid.begin(), laid.end(),
              [](const Laid& a, const Laid& b) { return a.place < b.place; });
    for (std::size_t i = 1; i < laid.size(); ++i)
        if (laid[i].strip < laid[i - 1].strip)
            faults.push_back(called(job, laid[i].id) +
                             ": comes off the roll before pieces that are laid earlier");
}

/// What is left on a roll that ends with its last strip is in hand with the cut at its end, like
/// every strip before it: what comes free, and when, does not hang on how much film there is.
bool takes_the_last_strip(const Cut& cut, Um end, std::vector<InHand>& sheets) {
    const auto rest = std::find_if(sheets.begin(), sheets.end(), [&](const InHand& in_hand) {
        return in_hand.turns == 0 && in_hand.sheet.x1 == end &&
               std::min(cut.from.y, cut.to.y) == in_hand.sheet.y0 &&
               std::max(cut.from.y, cut.to.y) == in_hand.sheet.y1;
    });
    if (rest == sheets.end())
        return false;
    rest->turns = 1;
    rest->last_across = true;
    std::rotate(rest, rest + 1, sheets.end());
    return true;
}

void check_roll(const Job& job, const UsedRoll& used, Sentences& faults) {
    const Roll& roll = job.rolls[used.roll];
    const Um end = roll.available.value_or(endless);
    std::vector<Piece0> pieces = boxes_of(job, used);
    std::vector<InHand> sheets{{{0, 0, end, roll.width}, 0, false}};
    for (std::size_t n = 0; n < used.cuts.size(); ++n) {
        const Cut& cut = used.cuts[n];
        const std::string name = roll.name + ", cut " + std::to_string(n + 1);
        if (!on_the_ruler(cut, roll, job.film.allowances.ruler))
            faults.push_back(name + ": not on a whole step of the ruler");
        if (cut.from.x == cut.to.x && cut.from.x == end) {
            if (takes_the_last_strip(cut, end, sheets)) {
                free_with(pieces, sheets.back().sheet, n + 1);
                check_table(job, pieces, sheets.back(), name, faults);
            }
            continue;
        }
        bool found = false;
        // The sheet just made is the likeliest to be cut next.
        for (std::size_t k = sheets.size(); k-- > 0 && !found;)
            if (const auto halves = divided_by(cut, sheets[k].sheet)) {
                found = true;
                const int turns = turns_after(cut, sheets[k]);
                check_turns(job, pieces, sheets[k].sheet, turns, name, faults);
                const bool across = cut.from.x == cut.to.x;
                const bool stays_on_the_roll = across && sheets[k].turns == 0;
                sheets[k] = {halves->second, stays_on_the_roll ? 0 : turns, across};
                sheets.push_back({halves->first, turns, across});
                free_with(pieces, halves->first, n + 1);
                if (!stays_on_the_roll)
                    free_with(pieces, halves->second, n + 1);
                check_table(job, pieces, sheets.back(), name, faults);
                if (!stays_on_the_roll)
                    check_table(job, pieces, sheets[k], name, faults);
            }
        if (!found)
            faults.push_back(name + ": does not run from edge to edge of anything that is left");
    }
    std::size_t before = 0;
    for (const Piece0& piece : pieces) {
        const bool is_left = std::any_of(sheets.begin(), sheets.end(), [&](const InHand& in_hand) {
            return in_hand.sheet == piece.box;
        });
        if (!is_left || !piece.freed_by)
            faults.push_back(called(job, piece.id) + ": the cuts do not free it");
        else if (*piece.freed_by < before)
            faults.push_back(called(job, piece.id) +
                             ": its number is not the order of coming free");
        else
            before = *piece.freed_by;
    }
}

} // namespace

void check_cuts(const Job& job, const Layout& layout, Sentences& faults) {
    for (const UsedRoll& used : layout.rolls) {
        if (job.by == CutBy::straight) {
            check_roll(job, used, faults);
            if (job.in_order)
                check_order(job, used, faults);
        } else if (!used.cuts.empty()) {
            faults.push_back(job.rolls[used.roll].name + ": straight cuts in contour cutting");
        }
    }
}

} // namespace pelt::verify
