// SPDX-License-Identifier: MIT
#include "order/wide_pieces.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace pelt::order {
namespace {

/// None: there is a way to lie in which another piece as wide fits beside it.
std::optional<Um> length_if_wide(const Piece& piece, Um usable, bool free_turns) {
    if (free_turns && piece.direction == Direction::any)
        return std::nullopt; // askew it may take less room across than upright
    std::optional<Um> least;
    for (const CutShape& shape : piece.shapes) {
        const Box box = box_of(shape.outline.outer);
        for (const Turn turn : shape.turns) {
            const bool upright = turn == no_turn || turn == half_turn;
            const Um along = upright ? box.along() : box.across();
            const Um across = upright ? box.across() : box.along();
            if (2 * across <= usable)
                return std::nullopt;
            least = std::min(least.value_or(along), along);
        }
    }
    return least;
}

class Division {
public:
    Division(const std::vector<WidePiece>& pieces, std::vector<Um> rolls)
        : pieces_(pieces), free_(std::move(rolls)) {}

    Divided run() {
        Divided out;
        out.possible = put(0);
        if (looks_ <= most_looks)
            out.rolls = rolls_;
        return out;
    }

private:
    static constexpr int most_looks = 20'000;

    bool put(std::size_t next) {
        if (next == pieces_.size() || ++looks_ > most_looks)
            return true;
        for (std::size_t i = 0; i < free_.size(); ++i) {
            const auto here = free_.begin() + static_cast<std::ptrdiff_t>(i);
            if (std::find(free_.begin(), here, *here) != here || *here < pieces_[next].along)
                continue;
            free_[i] -= pieces_[next].along;
            rolls_.push_back(i);
            if (put(next + 1))
                return true;
            rolls_.pop_back();
            free_[i] += pieces_[next].along;
        }
        return false;
    }

    const std::vector<WidePiece>& pieces_;
    std::vector<Um> free_;
    std::vector<std::size_t> rolls_;
    int looks_ = 0;
};

} // namespace

std::vector<WidePiece> wide_pieces(const Job& job, const Copies& copies) {
    std::vector<WidePiece> out;
    for (std::size_t i = 0; i < copies.size() && job.by == CutBy::straight; ++i)
        if (const auto along =
                length_if_wide(job.pieces[i], job.film.usable_width(), job.free_turns))
            for (const std::size_t copy : copies[i])
                out.push_back({i, copy, *along});
    std::stable_sort(out.begin(), out.end(),
                     [](const WidePiece& a, const WidePiece& b) { return a.along > b.along; });
    return out;
}

Divided divided(const std::vector<WidePiece>& pieces, const std::vector<Um>& rolls) {
    return Division(pieces, rolls).run();
}

Copies copies_on_roll(const Job& job, const std::vector<WidePiece>& pieces, const Divided& ways,
                      std::size_t roll) {
    Copies own(job.pieces.size());
    for (std::size_t i = 0; i < pieces.size(); ++i)
        if (ways.rolls[i] == roll)
            own[pieces[i].piece].push_back(pieces[i].copy);
    for (auto& some : own)
        std::sort(some.begin(), some.end());
    return own;
}

} // namespace pelt::order
