// SPDX-License-Identifier: MIT
#include "order/order.hpp"
#include "piece/piece.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::order {
namespace {

const Panel& panel_of(const Job& job, const PieceId& id) {
    return job.vehicles.at(static_cast<std::size_t>(id.vehicle))
        .panels.at(static_cast<std::size_t>(id.panel));
}

const DevelopedPanel& developed_of(const Job& job, const PieceId& id) {
    return job.developed.at(static_cast<std::size_t>(id.vehicle))
        .at(static_cast<std::size_t>(id.panel));
}

/// Also of those that are not cut; none: there is none.
const Piece* piece_of(const Job& job, const PieceId& id) {
    for (const auto* pieces : {&job.pieces, &job.not_cut})
        for (const Piece& piece : *pieces)
            if (std::find(piece.ids.begin(), piece.ids.end(), id) != piece.ids.end())
                return &piece;
    return nullptr;
}

GridPoint doubled_middle(const Piece& piece) {
    const Box box = box_of(piece.wrapped.outer);
    return {box.low.x + box.high.x, box.low.y + box.high.y};
}

} // namespace

std::optional<Heading> forward_of(const Job& job, const PieceId& id) {
    return piece::forward_of(panel_of(job, id), job.film);
}

PieceFinish finish_of(const Job& job, const Piece& piece, const PieceId& id) {
    return piece::finish_of(panel_of(job, id), developed_of(job, id), job.film, job.left_on, piece,
                            id);
}

std::string where_on_panel(const Job& job, const PieceId& id) {
    PieceId other_id = id;
    other_id.part = 3 - id.part;
    const Piece* own = id.parts == 2 ? piece_of(job, id) : nullptr;
    const Piece* other = own != nullptr ? piece_of(job, other_id) : nullptr;
    if (other == nullptr)
        return "";
    const GridPoint a = doubled_middle(*own);
    const GridPoint b = doubled_middle(*other);
    if (std::abs(a.x - b.x) > std::abs(a.y - b.y))
        return piece::end_called(panel_of(job, id), job.film, true, a.x > b.x);
    const bool high = (a.y > b.y) != is_mirrored(job, id);
    return piece::end_called(panel_of(job, id), job.film, false, high);
}

bool is_mirrored(const Job& job, const PieceId& id) {
    return piece::is_mirrored(panel_of(job, id), id);
}

} // namespace pelt::order
