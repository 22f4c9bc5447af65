// SPDX-License-Identifier: MIT
#include "cli/examined.hpp"

#include "model/parallel.hpp"

#include <algorithm>
#include <functional>
#include <memory>
#include <string>

namespace pelt::cli {
namespace {

/// Scans that several requests share.
using Scans = std::shared_ptr<develop::LaidScans>;

/// The panels of the vehicle with all its extras: one that is seldom cut must be right as well.
order::Selection all_panels(const Vehicle& vehicle) {
    order::Selection selection;
    std::vector<std::string>& with = selection.with;
    for (const Panel& panel : vehicle.panels)
        if (!panel.extra.empty() && std::find(with.begin(), with.end(), panel.extra) == with.end())
            with.push_back(panel.extra);
    return selection;
}

order::Request whole_job(const Vehicle& vehicle, const Film& film, const Scans& scans) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    request.selection = all_panels(vehicle);
    request.scans = scans;
    return request;
}

order::AreaRequest all_areas(const Vehicle& vehicle, const Scans& scans) {
    order::AreaRequest request;
    request.vehicle = vehicle;
    request.selection = all_panels(vehicle);
    request.stretch_in_detail = false;
    request.scans = scans;
    return request;
}

} // namespace

std::vector<Examined> examined(const std::vector<Vehicle>& vehicles, const std::vector<Film>& films,
                               int threads) {
    std::vector<Examined> out(vehicles.size());
    std::vector<Scans> scans;
    std::vector<std::function<void()>> tasks;
    for (std::size_t v = 0; v < vehicles.size(); ++v) {
        scans.push_back(std::make_shared<develop::LaidScans>());
        out[v].with_films.resize(films.size());
        tasks.emplace_back(
            [&, v] { out[v].areas = order::areas(all_areas(vehicles[v], scans[v])); });
    }
    for (std::size_t v = 0; v < vehicles.size(); ++v)
        for (std::size_t f = 0; f < films.size(); ++f)
            tasks.emplace_back([&, v, f] {
                out[v].with_films[f] = order::examine(whole_job(vehicles[v], films[f], scans[v]));
            });
    run_all(tasks.size(), threads, [&](std::size_t i) { tasks[i](); });
    return out;
}

} // namespace pelt::cli
