// SPDX-License-Identifier: MIT
// The trade's table says where a panel stands (trade/laying.cpp); among equals the order of the
// vehicle file holds, so moving a panel in the file moves it in the list.
// Of one panel inlays come first, then the pieces by number: each after those that it laps over.
#include "trade/laying.hpp"

#include "order/order.hpp"

#include <algorithm>
#include <tuple>
#include <utility>
#include <vector>

namespace pelt::order {
namespace {

/// What is not known by its name is laid as a plain panel.
trade::LayingPlace place_of(const Panel& panel) {
    return trade::laying_place(panel.is.value_or(PanelKind::plain_panel), panel.lies);
}

int side_rank(Side side) {
    return side == Side::centre ? 0 : side == Side::left ? 1 : 2;
}

auto key_of(const Job& job, const PieceId& id) {
    const Panel& panel = job.vehicles.at(static_cast<std::size_t>(id.vehicle))
                             .panels.at(static_cast<std::size_t>(id.panel));
    const trade::LayingPlace place = place_of(panel);
    const int copies_a_vehicle = std::max(1, panel.count * panel.faces);
    const int vehicle_copy = (id.copy - 1) / copies_a_vehicle;
    const int whole_side_first = place.step == trade::LayingStep::sides ? side_rank(id.side) : 0;
    return std::tuple(id.vehicle, vehicle_copy, place.step, whole_side_first, place.within,
                      id.panel, side_rank(id.side), id.copy, id.kind == PieceKind::inlay ? 0 : 1,
                      id.part, id.inlay);
}

} // namespace

std::vector<std::size_t> laying_order(const Job& job, const std::vector<PieceId>& ids) {
    using Key = decltype(key_of(job, ids.front()));
    std::vector<std::pair<Key, std::size_t>> keyed;
    for (std::size_t i = 0; i < ids.size(); ++i)
        keyed.emplace_back(key_of(job, ids[i]), i);
    std::sort(keyed.begin(), keyed.end());
    std::vector<std::size_t> order;
    for (const auto& [key, index] : keyed)
        order.push_back(index);
    return order;
}

std::vector<std::vector<std::size_t>> places_in_laying(const Job& job) {
    std::vector<PieceId> ids;
    std::vector<std::pair<std::size_t, std::size_t>> owners;
    std::vector<std::vector<std::size_t>> places;
    for (std::size_t piece = 0; piece < job.pieces.size(); ++piece) {
        places.emplace_back(job.pieces[piece].ids.size());
        for (std::size_t copy = 0; copy < job.pieces[piece].ids.size(); ++copy) {
            ids.push_back(job.pieces[piece].ids[copy]);
            owners.emplace_back(piece, copy);
        }
    }
    const std::vector<std::size_t> order = laying_order(job, ids);
    for (std::size_t place = 0; place < order.size(); ++place) {
        const auto [piece, copy] = owners[order[place]];
        places[piece][copy] = place;
    }
    return places;
}

} // namespace pelt::order
