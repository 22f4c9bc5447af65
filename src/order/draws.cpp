// SPDX-License-Identifier: MIT
#include "order/draws.hpp"

#include "model/parallel.hpp"
#include "model/scaling.hpp"
#include "order/develop_all.hpp"
#include "order/fill.hpp"
#include "order/job_of.hpp"
#include "order/normal.hpp"
#include "order/selection.hpp"
#include "order/settle.hpp"
#include "order/ways.hpp"
#include "trade/likeness.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::size_t axes = 3;

/// The seed of a factor: far from every other's, whichever panels are guessed.
std::uint64_t seed_of(std::uint64_t seed, int vehicle, int panel, int axis) {
    constexpr std::uint64_t spread = 0x9e3779b97f4a7c15U;
    std::uint64_t out = seed;
    for (const int part : {vehicle, panel, axis})
        out = (out + static_cast<std::uint64_t>(part) + 1) * spread ^ (out >> 29U);
    return out;
}

/// exp() differs in its last digits between machines; what is kept of it does not.
double grown(double exponent) {
    constexpr double steps = 0x1p30;
    return std::nearbyint(std::exp(exponent) * steps) / steps;
}

void draw_sizes(std::vector<Vehicle>& vehicles, const Factors& factors, std::size_t draw) {
    for (const PanelNormals& of : factors.panels) {
        Panel& panel = vehicles[static_cast<std::size_t>(of.panel.vehicle)]
                           .panels[static_cast<std::size_t>(of.panel.panel)];
        const trade::PanelAxes along = trade::axes_of(panel);
        const auto factor = [&](const Normals& own, trade::Axis axis) {
            return grown(trade::panel_size_spread * own[draw] +
                         trade::axis_spread *
                             factors.axes[static_cast<std::size_t>(axis)][draw]);
        };
        stretch(panel, {factor(of.x, along.x), factor(of.y, along.y)});
    }
}

/// Those whose pieces fit on no roll.
std::vector<PanelOf> panels_of(const Job& job, const std::vector<std::size_t>& misfits) {
    std::set<PanelOf> out;
    for (const std::size_t i : misfits)
        out.insert({job.pieces[i].ids.front().vehicle, job.pieces[i].ids.front().panel});
    return {out.begin(), out.end()};
}

/// Several vehicles may have panels of one name: the fault's place tells which is meant.
bool is_about(const Fault& fault, const Panel& panel, const Vehicle& vehicle) {
    const auto& others = vehicle.also_read;
    const auto& source = fault.place.source;
    return stops({fault}) && fault.panel == panel.name &&
           (source == vehicle.place.source || source == panel.place.source ||
            std::find(others.begin(), others.end(), source) != others.end());
}

/// Those of which something is wrong with the drawn sizes, as that no roll is wide enough.
std::vector<PanelOf> panels_of(const Job& job, const Faults& faults) {
    std::vector<PanelOf> out;
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p)
            if (std::any_of(faults.begin(), faults.end(), [&](const Fault& fault) {
                    return is_about(fault, job.vehicles[v].panels[p], job.vehicles[v]);
                }))
                out.push_back({static_cast<int>(v), static_cast<int>(p)});
    return out;
}

Draw laid_out(Request request, Search search) {
    Faults faults;
    request.by = CutBy::straight;
    if (request.seams == Seams::thrifty) // a fitter's places need no trial layouts
        request.seams = Seams::fitter;
    Job job = job_from(request, faults);
    develop_all(job, 1, request.scans, false, faults);
    const std::vector<piece::Way> ways = settled_ways(job, request, faults);
    Draw out;
    if (stops(faults)) {
        out.too_wide = panels_of(job, faults);
        return out;
    }
    set_pieces(job, ways);
    leave_out_pieces(request.selection, job, faults);
    set_rolls(job);
    nest::Effort effort = request.effort;
    effort.amount = 1;
    effort.threads = 1;
    effort.trial = search == Search::cut_short;
    const nest::Result result = fill(job, effort, {});
    if (!result.layout) {
        out.too_wide = panels_of(job, result.misfits);
        return out;
    }
    out.length = length_of(*result.layout);
    out.remakes = remakes_of(job);
    return out;
}

} // namespace

std::vector<PanelOf> guessed_of(const Job& job) {
    std::vector<PanelOf> out;
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p) {
            const PanelOf of{static_cast<int>(v), static_cast<int>(p)};
            const Panel& panel = job.vehicles[v].panels[p];
            if (panel.guessed && !is_left_out(job.left_out, of.vehicle, of.panel, panel.sides))
                out.push_back(of);
        }
    return out;
}

Factors stratified_factors(const std::vector<PanelOf>& guessed, std::size_t draws,
                           std::uint64_t seed) {
    Factors out;
    for (const PanelOf& panel : guessed)
        out.panels.push_back(
            {panel, shuffled_normals(draws, seed_of(seed, panel.vehicle, panel.panel, 0)),
             shuffled_normals(draws, seed_of(seed, panel.vehicle, panel.panel, 1))});
    for (std::size_t axis = 0; axis < axes; ++axis)
        out.axes.push_back(shuffled_normals(draws, seed_of(seed, -1, -1, static_cast<int>(axis))));
    return out;
}

std::vector<Draw> draws_of(const Request& request, const Factors& factors, Search search) {
    const std::size_t all = factors.axes.front().size();
    const auto at_once = static_cast<std::size_t>(8 * std::max(1, request.effort.threads));
    std::vector<Draw> out;
    while (out.size() < all) {
        const std::size_t first = out.size();
        out.resize(std::min(all, first + at_once));
        run_all(out.size() - first, request.effort.threads, [&](std::size_t i) {
            Request one = request;
            draw_sizes(one.vehicles, factors, first + i);
            out[first + i] = laid_out(std::move(one), search);
        });
        const double share = static_cast<double>(out.size()) / static_cast<double>(all);
        if (request.watch && !request.watch({0, 0, share, "drawing vehicles like this one"}))
            break;
    }
    return out;
}

namespace {

/// The factors of every so many-th draw.
Factors every(std::size_t step, const Factors& factors) {
    const auto some = [&](const Normals& all) {
        Normals out;
        for (std::size_t i = step / 2; i < all.size(); i += step)
            out.push_back(all[i]);
        return out;
    };
    Factors out;
    for (const PanelNormals& panel : factors.panels)
        out.panels.push_back({panel.panel, some(panel.x), some(panel.y)});
    for (const Normals& axis : factors.axes)
        out.axes.push_back(some(axis));
    return out;
}

} // namespace

double gain_of_searching_on(const Request& request, const Factors& factors,
                            const std::vector<Draw>& draws) {
    constexpr std::size_t step = 20;
    const std::vector<Draw> whole =
        draws_of(request, every(step, factors), Search::to_its_end);
    std::vector<double> gains;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        const Draw& quick = draws[step / 2 + i * step];
        if (whole[i].length && quick.length)
            gains.push_back(static_cast<double>(*whole[i].length) /
                            static_cast<double>(*quick.length));
    }
    if (gains.empty())
        return 1;
    std::sort(gains.begin(), gains.end());
    return gains[gains.size() / 2];
}

} // namespace pelt::order
