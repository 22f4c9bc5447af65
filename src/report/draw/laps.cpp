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

/// Whether both are main pieces of one panel, side and copy.
bool are_parts_of_one(const PieceId& a, const PieceId& b) {
    PieceId same = a;
    same.part = b.part;
    return a.kind == PieceKind::main && same == b;
}

/// In the ring, by the parity of what a ray to the right crosses; in doubled coordinates, so that
/// the middle of a stretch is on the grid.
bool is_in(const pelt::Ring& ring, GridPoint twice) {
    bool inside = false;
    for (std::size_t i = 0, k = ring.size() - 1; i < ring.size(); k = i++) {
        const Int128 ay = 2 * ring[i].y;
        const Int128 by = 2 * ring[k].y;
        if ((ay > twice.y) == (by > twice.y))
            continue;
        const Int128 rise = by - ay;
        const Int128 cross = (Int128{2} * ring[i].x - twice.x) * rise +
                             (Int128{twice.y} - ay) * (Int128{2} * ring[k].x - 2 * ring[i].x);
        if ((cross > 0) == (rise > 0))
            inside = !inside;
    }
    return inside;
}

bool is_on(const Polygon& polygon, GridPoint twice) {
    bool inside = is_in(polygon.outer, twice);
    for (const pelt::Ring& hole : polygon.holes)
        inside = inside && !is_in(hole, twice);
    return inside;
}

/// All parts of a panel have one frame, in which they lie as on the vehicle: the other's outline
/// is put where this piece's frame lies on the roll.
pelt::Ring beside(const PlacedPiece& other, const PlacedPiece& p) {
    const GridPoint turned = placed(p.piece.wrapped.outer, p.turn, {}).front();
    const GridPoint by{p.wrapped.outer.front().x - turned.x, p.wrapped.outer.front().y - turned.y};
    return placed(other.piece.wrapped.outer, p.turn, by);
}

} // namespace

std::vector<pelt::Ring> lap_lines(const Job& job, const std::vector<PlacedPiece>& all,
                                  const PlacedPiece& p) {
    std::vector<pelt::Ring> lines;
    for (const Seam& seam : job.seams)
        for (const PlacedPiece& other : all) {
            if (!are_parts_of_one(p.id, other.id) || !meet_at(seam, p.id, other.id))
                continue;
            const pelt::Ring edge = beside(other, p);
            for (std::size_t i = 0; i < edge.size(); ++i) {
                const GridPoint a = edge[i];
                const GridPoint b = edge[(i + 1) % edge.size()];
                if (is_on(p.wrapped, {a.x + b.x, a.y + b.y}))
                    lines.push_back({a, b});
            }
        }
    return lines;
}

} // namespace pelt::report::draw
