// SPDX-License-Identifier: MIT
#include "report/draw/laps.hpp"

#include <algorithm>
#include <utility>

namespace pelt::report::draw {
namespace {

bool meet_at(const Seam& seam, const PieceId& a, const PieceId& b) {
    return seam.vehicle == a.vehicle && seam.panel == a.panel && seam.side == a.side &&
           std::minmax({a.part, b.part}) == std::minmax({seam.upper_part, seam.under_part});
}

bool is_met(const Job& job, const PieceId& a, const PieceId& b) {
    return std::any_of(job.seams.begin(), job.seams.end(),
                       [&](const Seam& seam) { return meet_at(seam, a, b); });
}

/// Whether both are main pieces of one panel, side and copy.
bool are_parts_of_one(const PieceId& a, const PieceId& b) {
    PieceId same = a;
    same.part = b.part;
    return a.kind == PieceKind::main && same == b;
}

/// All pieces of a panel have one frame, in which they lie as on the vehicle: the other's outline
/// is put where this piece's frame lies on the roll.
pelt::Ring beside(const Piece& other, const PlacedPiece& p) {
    const GridPoint turned = placed(p.piece.wrapped.outer, p.turn, {}).front();
    const GridPoint by{p.wrapped.outer.front().x - turned.x, p.wrapped.outer.front().y - turned.y};
    return placed(other.wrapped.outer, p.turn, by);
}

} // namespace

std::vector<pelt::Ring> lap_lines(const Job& job, const PlacedPiece& p) {
    std::vector<pelt::Ring> lines;
    for (const auto* pieces : {&job.pieces, &job.not_cut})
        for (const Piece& other : *pieces)
            for (const PieceId& id : other.ids) {
                if (!are_parts_of_one(p.id, id) || !is_met(job, p.id, id))
                    continue;
                const pelt::Ring edge = beside(other, p);
                for (std::size_t i = 0; i < edge.size(); ++i) {
                    const GridPoint a = edge[i];
                    const GridPoint b = edge[(i + 1) % edge.size()];
                    if (holds(p.wrapped, {(a.x + b.x) / 2, (a.y + b.y) / 2}))
                        lines.push_back({a, b});
                }
            }
    return lines;
}

} // namespace pelt::report::draw
