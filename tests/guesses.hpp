// SPDX-License-Identifier: MIT
// What tests and benches of estimates share: shipped vehicles as guessed ones, and independent draws.
#pragma once

#include "model/random.hpp"
#include "order/draws.hpp"
#include "order/normal.hpp"
#include "order/order.hpp"
#include "order/sufficing.hpp"

#include <algorithm>
#include <cstdint>
#include <utility>
#include <vector>

namespace pelt::test {

/// A job in which no panel of the vehicle was measured.
inline order::Request all_guessed(Vehicle vehicle, const Film& film, int threads) {
    for (Panel& panel : vehicle.panels)
        panel.guessed = true;
    order::Request request;
    request.vehicles = {std::move(vehicle)};
    request.film = film;
    request.effort.threads = threads;
    request.scans = std::make_shared<develop::LaidScans>();
    return request;
}

inline std::vector<PanelOf> guessed_panels(const order::Request& request) {
    Job job;
    job.vehicles = request.vehicles;
    for (std::size_t p = 0; p < job.vehicles[0].panels.size(); ++p)
        if (!job.vehicles[0].panels[p].extra.empty())
            for (const Side side : sides_of(job.vehicles[0].panels[p].sides))
                job.left_out.push_back({0, static_cast<int>(p), side});
    std::sort(job.left_out.begin(), job.left_out.end());
    return order::guessed_of(job);
}

/// Independent draws from the model: no strata, one generator for all.
inline order::Factors independent_factors(const std::vector<PanelOf>& panels, std::size_t draws,
                                          std::uint64_t seed) {
    Random random(seed);
    const auto normals = [&] {
        order::Normals out;
        for (std::size_t i = 0; i < draws; ++i)
            out.push_back(order::normal_quantile(std::max(1e-12, random.unit())));
        return out;
    };
    order::Factors out;
    for (const PanelOf& panel : panels)
        out.panels.push_back({panel, normals(), normals()});
    for (int axis = 0; axis < 3; ++axis)
        out.axes.push_back(normals());
    return out;
}

/// So many of them, laid out as plans are.
inline std::vector<order::Draw> planned_draws(const order::Request& request,
                                              const std::vector<PanelOf>& panels, std::size_t draws,
                                              std::uint64_t seed) {
    return order::draws_of(request, independent_factors(panels, draws, seed),
                           order::Search::to_its_end);
}

/// The part of them between low and high; none of either end is as far as lengths go.
inline double share_inside(const std::vector<order::Draw>& draws, const LengthRange& range) {
    std::size_t inside = 0;
    for (const order::Draw& draw : draws)
        inside += (draw.length ? *draw.length >= *range.low : true) &&
                          (!range.high || (draw.length && *draw.length <= *range.high))
                      ? 1
                      : 0;
    return static_cast<double>(inside) / static_cast<double>(draws.size());
}

/// From the 5th to the 95th percentile of the draws, where some panels' own factors are known.
inline double width_when_known(const order::Request& request, order::Factors factors,
                               const std::vector<PanelOf>& known) {
    for (order::PanelNormals& panel : factors.panels)
        if (std::find(known.begin(), known.end(), panel.panel) != known.end()) {
            std::fill(panel.x.begin(), panel.x.end(), 0.0);
            std::fill(panel.y.begin(), panel.y.end(), 0.0);
        }
    const std::vector<order::Draw> draws = order::draws_of(request, factors);
    const auto low = order::percentile(draws, 5);
    const auto high = order::percentile(draws, 95);
    return low && high ? static_cast<double>(*high - *low) : 1e18;
}

} // namespace pelt::test
