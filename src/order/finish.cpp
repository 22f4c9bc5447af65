// SPDX-License-Identifier: MIT
#include "order/order.hpp"
#include "piece/piece.hpp"

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

} // namespace

std::optional<Heading> forward_of(const Job& job, const PieceId& id) {
    return piece::forward_of(panel_of(job, id), job.film);
}

PieceFinish finish_of(const Job& job, const Piece& piece, const PieceId& id) {
    return piece::finish_of(panel_of(job, id), developed_of(job, id), job.film, job.left_on, piece,
                            id);
}

bool is_mirrored(const Job& job, const PieceId& id) {
    return piece::is_mirrored(panel_of(job, id), id);
}

} // namespace pelt::order
