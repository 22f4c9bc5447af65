// SPDX-License-Identifier: MIT
#include "cli/examined.hpp"

#include <algorithm>
#include <atomic>
#include <functional>
#include <future>
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

void do_all(const std::vector<std::function<void()>>& tasks, int threads) {
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < tasks.size(); i = next++)
            tasks[i]();
    };
    std::vector<std::future<void>> others;
    for (int i = 1; i < threads && static_cast<std::size_t>(i) < tasks.size(); ++i)
        others.push_back(std::async(std::launch::async, work));
    work();
    for (std::future<void>& other : others)
        other.get();
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
    do_all(tasks, threads);
    return out;
}

} // namespace pelt::cli
