// SPDX-License-Identifier: MIT
#include "order/buying.hpp"
#include "order/draws.hpp"
#include "order/job_of.hpp"
#include "order/measure_first.hpp"
#include "order/order.hpp"
#include "order/purchase.hpp"
#include "order/sufficing.hpp"
#include "trade/likeness.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::size_t draws_of_an_estimate = 200;
constexpr double low_percent = 5;
constexpr double middle_percent = 50;
constexpr double high_percent = 95;

void set_guessed(std::vector<Vehicle>& vehicles, const std::vector<PanelOf>& guessed, bool value) {
    for (const PanelOf& of : guessed)
        vehicles[static_cast<std::size_t>(of.vehicle)]
            .panels[static_cast<std::size_t>(of.panel)]
            .guessed = value;
}

/// The same job as if its sizes were measured, with new film alone.
Request as_if_measured(Request request, const std::vector<PanelOf>& guessed) {
    set_guessed(request.vehicles, guessed, false);
    request.stock.clear();
    request.sure_percent.reset();
    request.weigh_the_rules = false;
    request.find_binding = false;
    request.weigh_the_seams = false;
    return request;
}

/// By contour the draws' lengths are taken so many times as long as they are straight.
double ratio_of(const Request& request, const std::vector<PanelOf>& guessed, Um as_scaled) {
    if (request.by == CutBy::straight)
        return 1;
    Request straight = as_if_measured(request, guessed);
    straight.by = CutBy::straight;
    const Outcome outcome = run(std::move(straight));
    return outcome.plan ? static_cast<double>(as_scaled) /
                              static_cast<double>(length_of(outcome.plan->layout()))
                        : 1;
}

std::optional<Um> times(std::optional<Um> length, double ratio) {
    return length ? std::optional(std::llround(static_cast<double>(*length) * ratio))
                  : std::nullopt;
}

void set_order(Estimate& estimate, const std::vector<Draw>& draws, double ratio) {
    const Film& film = estimate.as_scaled->film;
    const Sufficing sufficing(draws, film.allowances.ruler, ratio);
    const auto least = sufficing.least(estimate.sure_percent / 100);
    if (!least)
        return;
    estimate.sure_length = least;
    estimate.order = buy(film, lengths_for(film, *least), {});
    estimate.order.next_best.reset();
    estimate.enough_percent = 100 * sufficing.chance(estimate.order.length().floor_um());
}

std::vector<PanelOf> too_wide_in(const std::vector<Draw>& draws) {
    std::set<PanelOf> out;
    for (const Draw& draw : draws)
        out.insert(draw.too_wide.begin(), draw.too_wide.end());
    return {out.begin(), out.end()};
}

/// What a sheet would warn of, panel by panel, waits for the tape.
void keep_what_counts(Faults& faults) {
    std::erase_if(faults, [](const Fault& fault) {
        return !stops({fault}) && !fault.panel.empty();
    });
}

Fault stopped() {
    return {Severity::job,
            {},
            "",
            "stopped before enough vehicles were drawn",
            "give it more time (--time)"};
}

Fault stock_is_passed_over() {
    return {Severity::warning,
            {},
            "",
            "an estimate does not look at stock: what lies there is not taken off",
            "measure the vehicle, and then plan with the stock"};
}

} // namespace

bool is_guessed(const Request& request) {
    if (std::none_of(request.vehicles.begin(), request.vehicles.end(),
                     [](const Vehicle& vehicle) { return pelt::is_guessed(vehicle); }))
        return false;
    Request copy = request;
    Faults unheard;
    return !guessed_of(job_from(copy, unheard)).empty();
}

EstimateOutcome estimate(const Request& request) {
    EstimateOutcome out;
    Request copy = request;
    Faults unheard;
    const std::vector<PanelOf> guessed = guessed_of(job_from(copy, unheard));
    Outcome measured = run(as_if_measured(request, guessed));
    out.faults = std::move(measured.faults);
    keep_what_counts(out.faults);
    if (!measured.plan)
        return out;
    if (!request.stock.empty())
        out.faults.push_back(stock_is_passed_over());
    auto job = std::make_shared<Job>(measured.plan->job());
    set_guessed(job->vehicles, guessed, true);
    Estimate made;
    made.as_scaled = job;
    made.as_scaled_length = length_of(measured.plan->layout());
    made.guessed = guessed;
    made.sure_percent = request.sure_percent.value_or(trade::usual_sure_percent);
    const Factors factors =
        stratified_factors(guessed, draws_of_an_estimate, request.effort.seed);
    std::vector<Draw> draws = draws_of(request, factors);
    if (draws.size() < draws_of_an_estimate) {
        out.faults.push_back(stopped());
        return out;
    }
    const double gain = gain_of_searching_on(request, factors, draws);
    const Um step = request.film.allowances.ruler; // that straight layouts end on
    for (Draw& draw : draws)
        if (draw.length)
            draw.length = (*times(draw.length, gain) + step / 2) / step * step;
    const double ratio = ratio_of(request, guessed, made.as_scaled_length);
    made.length = {times(percentile(draws, low_percent), ratio),
                   times(percentile(draws, middle_percent), ratio),
                   times(percentile(draws, high_percent), ratio)};
    made.measure_first = measure_first(draws, factors, request.effort.seed);
    made.too_wide = too_wide_in(draws);
    set_order(made, draws, ratio);
    out.estimate = std::move(made);
    return out;
}

} // namespace pelt::order
