// SPDX-License-Identifier: MIT
#include "nest/straight/replay.hpp"

#include <algorithm>
#include <map>

namespace pelt::test {
namespace {

/// A part of the film, and how often film was turned to cut it free.
struct Part {
    Box box;
    int stage = 0;
    bool last_across = false;
    std::size_t made_by = 0; ///< number of the cut, from 1
};

class Replay {
public:
    Replay(const UsedRoll& used, const Roll& roll, const nest::Goal& goal,
           std::vector<std::string>& faults)
        : roll_(roll), goal_(goal), faults_(faults) {
        parts_.push_back({{{0, 0}, {used.length + 1, roll.width}}, 0, false, 0});
        for (std::size_t n = 0; n < used.cuts.size(); ++n)
            make(used.cuts[n], n + 1);
    }

    /// Boxes come in the order of their numbers, which is that of coming free.
    void look_for(const Box& box) {
        const auto part = std::find_if(parts_.begin(), parts_.end(), [&](const Part& p) {
            return p.box.low == box.low && p.box.high == box.high;
        });
        if (part == parts_.end())
            faults_.push_back("a piece is not freed by the cuts");
        else if (goal_.stages && part->stage > *goal_.stages + 1)
            faults_.push_back("a piece needs more turns of the film than are allowed");
        if (part == parts_.end())
            return;
        if (part->made_by < freed_before_)
            faults_.push_back("a piece has a higher number than one that comes free later");
        freed_before_ = part->made_by;
    }

private:
    void make(const Cut& cut, std::size_t number) {
        const bool across = cut.from.x == cut.to.x;
        if (across == (cut.from.y == cut.to.y)) {
            faults_.push_back("a cut is not straight");
            return;
        }
        check_ruler(cut, across);
        for (std::size_t i = 0; i < parts_.size(); ++i)
            if (divides(cut, across, parts_[i].box)) {
                divide(i, cut, across, number);
                return;
            }
        faults_.push_back("a cut does not run from edge to edge of a part");
    }

    void check_ruler(const Cut& cut, bool across) {
        const Um usable = roll_.width - 2 * roll_.trim;
        const Um at = across ? cut.from.x : cut.from.y - roll_.trim;
        if (at % goal_.ruler != 0 && (across || at != usable))
            faults_.push_back("a cut is not at a whole step of the ruler");
    }

    static bool divides(const Cut& cut, bool across, const Box& b) {
        const Um cut_low = across ? std::min(cut.from.y, cut.to.y) : std::min(cut.from.x, cut.to.x);
        const Um cut_high =
            across ? std::max(cut.from.y, cut.to.y) : std::max(cut.from.x, cut.to.x);
        if (across)
            return b.low.x < cut.from.x && cut.from.x < b.high.x && cut_low == b.low.y &&
                   cut_high == b.high.y;
        return b.low.y < cut.from.y && cut.from.y < b.high.y && cut_low == b.low.x &&
               cut_high == b.high.x;
    }

    /// Slits along the trim are not turns of the film: they are of the second stage.
    void divide(std::size_t i, const Cut& cut, bool across, std::size_t number) {
        Part near = parts_[i];
        near.made_by = number;
        if (near.stage == 0 || near.last_across != across) {
            ++near.stage;
            near.last_across = across;
        }
        Part far = near;
        (across ? near.box.high.x : near.box.high.y) = across ? cut.from.x : cut.from.y;
        (across ? far.box.low.x : far.box.low.y) = across ? cut.from.x : cut.from.y;
        if (goal_.table && near.stage > 1 && near.box.along() > *goal_.table)
            faults_.push_back("a part is longer than the table");
        parts_[i] = near;
        parts_.push_back(far);
    }

    const Roll& roll_;
    const nest::Goal& goal_;
    std::vector<std::string>& faults_;
    std::vector<Part> parts_;
    std::size_t freed_before_ = 0;
};

Box box_of_placement(const Placement& p, std::span<const Piece> pieces) {
    return box_of(placed(pieces[p.piece].shapes[p.shape].outline.outer, p.turn, p.at));
}

bool overlap(const Box& a, const Box& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

void check_place(const Box& box, const UsedRoll& used, const Roll& roll,
                 std::vector<std::string>& faults) {
    if (box.low.x < 0 || box.high.x > used.length || box.low.y < roll.trim ||
        box.high.y > roll.width - roll.trim)
        faults.push_back("a piece lies outside the usable film");
    for (const Flaw& flaw : roll.flaws)
        if (overlap(box,
                    {{flaw.from, flaw.low.value_or(0)}, {flaw.to, flaw.high.value_or(roll.width)}}))
            faults.push_back("a piece lies on a flaw");
}

void check_turn(const Placement& p, std::span<const Piece> pieces, const Roll& roll,
                std::vector<std::string>& faults) {
    const Piece& piece = pieces[p.piece];
    const std::vector<Turn>& turns = piece.shapes[p.shape].turns;
    if (std::find(turns.begin(), turns.end(), p.turn) == turns.end())
        faults.push_back("a piece is turned as it must not be");
    if (piece.direction != Direction::any && !roll.arrow_known)
        faults.push_back("a directed piece lies on a roll whose arrow is not known");
}

void check_counts(const Layout& layout, std::span<const Piece> pieces,
                  std::vector<std::string>& faults) {
    std::map<std::pair<std::size_t, std::size_t>, int> seen;
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& p : used.placements)
            ++seen[{p.piece, p.copy}];
    std::size_t wanted = 0;
    for (const Piece& piece : pieces)
        wanted += piece.ids.size();
    for (const auto& [key, count] : seen)
        if (count != 1 || key.first >= pieces.size() || key.second >= pieces[key.first].ids.size())
            faults.push_back("a piece lies there that was not asked for, or twice");
    if (seen.size() != wanted)
        faults.push_back("a piece is missing");
}

void check_rolls(const Layout& layout, std::span<const Roll> rolls,
                 std::vector<std::string>& faults) {
    std::size_t next = 0;
    for (const UsedRoll& used : layout.rolls) {
        if (used.roll < next)
            faults.push_back("rolls are not in their order");
        next = used.roll + 1;
        if (rolls[used.roll].available && used.length > *rolls[used.roll].available)
            faults.push_back("more is taken than the roll holds");
    }
}

} // namespace

std::vector<std::string> faults_of(const Layout& layout, std::span<const Piece> pieces,
                                   std::span<const Roll> rolls, const nest::Goal& goal) {
    std::vector<std::string> faults;
    for (const UsedRoll& used : layout.rolls) {
        const Roll& roll = rolls[used.roll];
        Replay replay(used, roll, goal, faults);
        std::vector<Box> boxes;
        Um last = 0;
        for (const Placement& p : used.placements) {
            const Box box = box_of_placement(p, pieces);
            check_place(box, used, roll, faults);
            check_turn(p, pieces, roll, faults);
            replay.look_for(box);
            for (const Box& other : boxes)
                if (overlap(box, other))
                    faults.push_back("two pieces overlap");
            boxes.push_back(box);
            last = std::max(last, box.high.x);
        }
        if (last != used.length)
            faults.push_back("the length does not end at the last piece");
    }
    check_counts(layout, pieces, faults);
    check_rolls(layout, rolls, faults);
    if (layout.bound.length > new_length(layout, rolls))
        faults.push_back("the bound is above the length");
    return faults;
}

Um new_length(const Layout& layout, std::span<const Roll> rolls) {
    Um sum = 0;
    for (const UsedRoll& used : layout.rolls)
        if (rolls[used.roll].is_new)
            sum += used.length;
    return sum;
}

} // namespace pelt::test
