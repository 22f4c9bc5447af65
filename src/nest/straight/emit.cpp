// SPDX-License-Identifier: MIT
#include "nest/straight/emit.hpp"

#include "model/error.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

/// Where a member lies when its box's low corner is at `low` and its box has this size.
Placement placement_of(const Piece& piece, const Member& member, const Box& box) {
    for (std::size_t s = 0; s < piece.shapes.size(); ++s)
        for (const Turn turn : piece.shapes[s].turns) {
            const Box turned = box_of(placed(piece.shapes[s].outline.outer, turn, {0, 0}));
            if (turned.along() == box.along() && turned.across() == box.across())
                return {member.piece,
                        member.copy,
                        s,
                        turn,
                        {box.low.x - turned.low.x, box.low.y - turned.low.y}};
        }
    throw ProgramError("a rectangle was placed that is no way of lying of its piece");
}

class Emitter {
public:
    Emitter(const Problem& problem, std::span<const Piece> pieces, std::span<const Roll> rolls)
        : problem_(problem), pieces_(pieces), rolls_(rolls), given_(problem.kinds.size(), 0) {}

    void emit(const Filled& filled, UsedRoll& used) {
        const Stretch& stretch = problem_.stretches[filled.stretch];
        roll_ = &rolls_[stretch.roll];
        used_ = &used;
        Um x = stretch.from;
        if (x > used.length)
            crosscut(x, {0, roll_->width}); // what lies before it holds a flaw
        for (const Block& section : filled.sections) {
            const Um next = x + section.size[along] * problem_.step;
            crosscut(next, {0, roll_->width});
            emit_section(section, {{x, 0}, {next, roll_->width}});
            x = next;
        }
        used.length = x;
    }

private:
    struct Range {
        Um low = 0;
        Um high = 0;
    };
    void crosscut(Um x, Range y) { used_->cuts.push_back({{x, y.low}, {x, y.high}}); }
    void slit(Um y, Range x) { used_->cuts.push_back({{x.low, y}, {x.high, y}}); }

    /// The upper trim comes off with the last slit, or stays on what is left over.
    void emit_section(const Block& section, Box film) {
        if (roll_->trim > 0) {
            film.low.y = roll_->trim;
            slit(film.low.y, {film.low.x, film.high.x});
        }
        emit_block(section, film);
    }

    /// `film` is what the last cut left: the block from its low corner, and what is free.
    void emit_block(const Block& block, Box film) {
        if (block.is_piece()) {
            emit_piece(block, film);
            return;
        }
        bool last_is_free = false;
        for (std::size_t i = 0; i + (last_is_free ? 1 : 0) < block.children.size(); ++i) {
            const Block& child = block.children[i];
            Box part = film;
            if (block.divided == along) {
                part.high.x = film.low.x + child.size[along] * problem_.step;
                if (part.high.x < film.high.x)
                    crosscut(part.high.x, {film.low.y, film.high.y});
                film.low.x = part.high.x;
            } else {
                part.high.y = film.low.y + child.size[across] * problem_.step;
                if (i + 1 == block.children.size() && is_trimmed_with_its_pieces(child, part, film))
                    part.high.y = film.high.y;
                if (part.high.y < film.high.y)
                    slit(part.high.y, {film.low.x, film.high.x});
                film.low.y = part.high.y;
            }
            // The cut that takes this child off may free the last one too: it is numbered first.
            last_is_free = i + 2 == block.children.size() && !is_just(child, part) &&
                           is_just(block.children.back(), film);
            if (last_is_free)
                emit_block(block.children.back(), film);
            emit_block(child, part);
        }
    }

    /// Whether a slit above the block would take off nothing but the roll edge, while everything in
    /// the block is slit below that anyway: those slits take the roll edge off too.
    bool is_trimmed_with_its_pieces(const Block& block, const Box& part, const Box& film) const {
        return !block.is_piece() && block.divided == along && film.high.y == roll_->width &&
               film.high.y - part.high.y <= roll_->trim &&
               height_of(block) < block.size[across] * problem_.step;
    }

    /// Up to where the highest of its pieces reach.
    Um height_of(const Block& block) const {
        if (block.is_piece())
            return problem_.kinds[static_cast<std::size_t>(block.kind)]
                .orientations[block.orientation]
                .across_um;
        Um height = 0;
        for (const Block& child : block.children)
            height = block.divided == along ? std::max(height, height_of(child))
                     : &child == &block.children.back()
                         ? height + height_of(child)
                         : height + child.size[across] * problem_.step;
        return height;
    }

    /// Whether the film is one whole piece, with nothing to trim.
    bool is_just(const Block& block, const Box& film) const {
        if (!block.is_piece())
            return false;
        const Kind& kind = problem_.kinds[static_cast<std::size_t>(block.kind)];
        return film.along() == block.size[along] * problem_.step &&
               film.across() == kind.orientations[block.orientation].across_um;
    }

    /// Film that is no whole step wide is as wide as its one piece, or a slit makes it so.
    void emit_piece(const Block& block, Box film) {
        const auto k = static_cast<std::size_t>(block.kind);
        const Kind& kind = problem_.kinds[k];
        const Member& member = kind.members[given_[k]++];
        const Um top = film.low.y + kind.orientations[block.orientation].across_um;
        if (top < film.high.y)
            slit(top, {film.low.x, film.high.x});
        film.high.y = top;
        used_->placements.push_back(placement_of(pieces_[member.piece], member, film));
    }

    const Problem& problem_;
    std::span<const Piece> pieces_;
    std::span<const Roll> rolls_;
    std::vector<std::size_t> given_; ///< by kind: members given out
    const Roll* roll_ = nullptr;
    UsedRoll* used_ = nullptr;
};

} // namespace

std::vector<UsedRoll> used_rolls(const Problem& problem, const Sheet& sheet,
                                 std::span<const Piece> pieces, std::span<const Roll> rolls) {
    std::vector<UsedRoll> out;
    Emitter emitter(problem, pieces, rolls);
    for (const Filled& filled : sheet) {
        const std::size_t roll = problem.stretches[filled.stretch].roll;
        if (out.empty() || out.back().roll != roll)
            out.push_back({roll, 0, {}, {}});
        emitter.emit(filled, out.back());
    }
    return out;
}

} // namespace pelt::nest::straight
