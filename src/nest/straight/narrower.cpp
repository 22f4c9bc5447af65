// SPDX-License-Identifier: MIT
#include "nest/straight/narrower.hpp"

#include <algorithm>
#include <optional>

namespace pelt::nest::straight {
namespace {

bool is_upright(const Turn& turn) {
    return turn == no_turn || turn == half_turn;
}

/// Empty where nothing is narrower by it: no piece has both.
std::vector<Piece> without_quarter_turns(std::span<const Piece> pieces) {
    std::vector<Piece> out(pieces.begin(), pieces.end());
    bool fewer = false;
    for (Piece& piece : out) {
        const auto has = [&](auto wanted) {
            return std::any_of(piece.shapes.begin(), piece.shapes.end(), [&](const CutShape& shape) {
                return std::any_of(shape.turns.begin(), shape.turns.end(), wanted);
            });
        };
        if (!has(is_upright) || !has([](const Turn& turn) { return !is_upright(turn); }))
            continue;
        for (CutShape& shape : piece.shapes)
            std::erase_if(shape.turns, [](const Turn& turn) { return !is_upright(turn); });
        fewer = true;
    }
    return fewer ? out : std::vector<Piece>{};
}

std::vector<std::optional<int>> fewer_stages(const std::optional<int>& stages) {
    std::vector<std::optional<int>> out;
    for (const int fewer : {3, 2})
        if (!stages || *stages > fewer)
            out.emplace_back(fewer);
    return out;
}

} // namespace

std::vector<Narrower> narrower_jobs(std::span<const Piece> pieces, const Goal& goal) {
    const std::vector<Piece> upright = without_quarter_turns(pieces);
    std::vector<Narrower> out;
    if (!upright.empty())
        out.push_back({upright, goal});
    for (const std::optional<int>& stages : fewer_stages(goal.stages)) {
        Goal fewer = goal;
        fewer.stages = stages;
        out.push_back({{pieces.begin(), pieces.end()}, fewer});
        if (!upright.empty())
            out.push_back({upright, fewer});
    }
    return out;
}

} // namespace pelt::nest::straight
