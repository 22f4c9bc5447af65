// SPDX-License-Identifier: MIT
#include "order/develop_all.hpp"

#include "model/parallel.hpp"
#include "order/selection.hpp"

#include <algorithm>
#include <utility>
#include <variant>

namespace pelt::order {
namespace {

bool is_scan(const Panel& panel) {
    return std::holds_alternative<SurfaceForm>(panel.form);
}

/// Places of `panels`: scans first, so that no thread begins one when the others are done.
std::vector<std::size_t> long_ones_first(const std::vector<Developing>& panels) {
    std::vector<std::size_t> order(panels.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    const auto triangles = [&](std::size_t i) {
        const auto* form = std::get_if<SurfaceForm>(&panels[i].panel->form);
        return form != nullptr && form->surface ? form->surface->triangles.size() : 0;
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return triangles(a) > triangles(b); });
    return order;
}

} // namespace

void develop_each(std::vector<Developing>& panels, int threads, const develop::Purpose& purpose) {
    const std::vector<std::size_t> order = long_ones_first(panels);
    const auto scans = std::count_if(panels.begin(), panels.end(),
                                     [](const Developing& one) { return is_scan(*one.panel); });
    // Only scans take long: where there are none, starting a thread costs more than it saves.
    run_all(order.size(), std::min(threads, static_cast<int>(scans)), [&](std::size_t i) {
        Developing& one = panels[order[i]];
        one.developed = develop::develop(*one.panel, one.faults, purpose);
    });
}

void develop_all(Job& job, int threads, const std::shared_ptr<develop::LaidScans>& scans,
                 bool left_out_scans_too, Faults& faults) {
    struct Destination {
        DevelopedPanel* out;
        bool is_cut;
    };
    std::vector<Developing> panels;
    std::vector<Destination> destinations;
    job.developed.resize(job.vehicles.size());
    for (std::size_t v = 0; v < job.vehicles.size(); ++v) {
        job.developed[v].resize(job.vehicles[v].panels.size());
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p) {
            const Panel& panel = job.vehicles[v].panels[p];
            const bool is_cut =
                !is_left_out(job.left_out, static_cast<int>(v), static_cast<int>(p), panel.sides);
            if (!is_cut && is_scan(panel) && !left_out_scans_too)
                continue;
            panels.push_back({&panel});
            destinations.push_back({&job.developed[v][p], is_cut});
        }
    }
    develop_each(panels, threads, {job.film.stretch_panel_percent, false, scans});
    for (std::size_t i = 0; i < panels.size(); ++i) {
        *destinations[i].out = std::move(panels[i].developed);
        // Of a panel that is left out only what is wrong with the file is told.
        for (const Fault& fault : panels[i].faults)
            if (destinations[i].is_cut || stops({fault}))
                faults.push_back(fault);
    }
}

} // namespace pelt::order
