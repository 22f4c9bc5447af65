// SPDX-License-Identifier: MIT
// What estimates of vehicles that were not measured are worth, on the shipped vehicles:
//   how many of 1,000 independent draws lie in the range, and what a draw takes
//   how much narrower the range is with the first three panels known, and with three at random
//   every vehicle scaled from every other of its kind of body, and where its own length falls
// Run as: bench_guesses [FOLDER OF THE REPOSITORY] [DRAWS]
#include "guesses.hpp"
#include "order/measure_first.hpp"
#include "read/read.hpp"
#include "trade/bodies.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <thread>

namespace pelt {
namespace {

constexpr std::uint64_t other_seed = 20'261'130;

std::vector<Vehicle> shipped(const std::string& top) {
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(top + "/vehicles"))
        if (entry.path().extension() == ".yaml")
            paths.push_back(entry.path().string());
    std::sort(paths.begin(), paths.end());
    std::vector<Vehicle> out;
    for (const std::string& path : paths)
        if (auto vehicle = read::vehicle(*read::load(path).value).value)
            out.push_back(std::move(*vehicle));
    return out;
}

double seconds_since(std::chrono::steady_clock::time_point begin) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

double metres(const std::optional<Um>& length) {
    return length ? static_cast<double>(*length) / 1e6 : -1;
}

std::string names_of(const Vehicle& vehicle, const std::vector<PanelShare>& shares) {
    std::string text;
    for (const PanelShare& share : shares)
        text += (text.empty() ? "" : ", ") + std::to_string(share.rank) + " " +
                vehicle.panels[static_cast<std::size_t>(share.panel)].name + " " +
                std::to_string(static_cast<int>(share.percent + .5)) + " %";
    return text;
}

void tell_range(const Vehicle& vehicle, const Film& film, std::size_t draws, int threads) {
    const order::Request request = test::all_guessed(vehicle, film, threads);
    const auto begin = std::chrono::steady_clock::now();
    const auto outcome = order::estimate(request);
    const double took = seconds_since(begin);
    if (!outcome.estimate) {
        std::printf("%-28s no estimate\n", vehicle.name.c_str());
        return;
    }
    const Estimate& e = *outcome.estimate;
    const std::vector<PanelOf> panels = test::guessed_panels(request);
    const auto checked = test::planned_draws(request, panels, draws, other_seed);
    std::printf("%-28s %2zu panels, %5.2f s: %6.2f %6.2f %6.2f m, as scaled %6.2f, order %5.2f; "
                "inside %4.1f %%; first: %s\n",
                vehicle.name.c_str(), panels.size(), took, metres(e.length.low),
                metres(e.length.middle), metres(e.length.high), metres(e.as_scaled_length),
                e.order.length().mm() / 1e3, 100 * test::share_inside(checked, e.length),
                names_of(vehicle, e.measure_first).c_str());
}

void tell_measure_first(const Vehicle& vehicle, const Film& film, int threads) {
    const order::Request request = test::all_guessed(vehicle, film, threads);
    const std::vector<PanelOf> panels = test::guessed_panels(request);
    const order::Factors factors = order::stratified_factors(panels, 200, 1);
    const auto draws = order::draws_of(request, factors);
    std::vector<PanelOf> first;
    for (const PanelShare& share : order::measure_first(draws, factors, 1))
        if (first.size() < 3)
            first.push_back({share.vehicle, share.panel});
    // Not the draws that the panels were found by, and more of them: a range of 200 draws is itself
    // off by some 6 %, which is as much as three panels make.
    const order::Factors fresh = order::stratified_factors(panels, 400, other_seed);
    const double all = test::width_when_known(request, fresh, {});
    const double known = test::width_when_known(request, fresh, first);
    Random random(other_seed);
    double mean = 0;
    constexpr int choices = 20;
    for (int i = 0; i < choices; ++i) {
        std::vector<PanelOf> some = panels;
        random.shuffle(some);
        some.resize(first.size());
        mean += test::width_when_known(request, fresh, some) / choices;
    }
    const order::Factors again = order::stratified_factors(panels, 200, 2);
    const auto second =
        order::measure_first(order::draws_of(request, again), again, 2);
    std::printf(
        "%-28s range %5.2f m; first %zu known %5.2f; as many at random %5.2f; first: %s; by "
        "another seed: %s\n",
        vehicle.name.c_str(), all / 1e6, first.size(), known / 1e6, mean / 1e6,
        names_of(vehicle, order::measure_first(draws, factors, 1)).c_str(),
        names_of(vehicle, second).c_str());
}

bool are_alike(const Vehicle& a, const Vehicle& b) {
    return trade::is_motorcycle(a.body) == trade::is_motorcycle(b.body) &&
           (a.body.find("van") == std::string::npos) == (b.body.find("van") == std::string::npos);
}

void tell_scaled(const Vehicle& vehicle, const Vehicle& from, const Film& film, int threads) {
    const auto scaled = read::scaled_to(from, vehicle.overall);
    order::Request own;
    own.vehicles = {vehicle};
    own.film = film;
    own.effort.threads = threads;
    const auto plan = order::run(own);
    if (!scaled.value || !plan.plan)
        return;
    order::Request request = own;
    request.vehicles = {*scaled.value};
    const auto outcome = order::estimate(request);
    if (!outcome.estimate)
        return;
    Um length = 0;
    for (const UsedRoll& used : plan.plan->layout().rolls)
        length += used.length;
    const LengthRange& range = outcome.estimate->length;
    std::printf("%-28s from %-28s %6.2f to %6.2f m; its own %6.2f m: %s\n", vehicle.name.c_str(),
                from.name.c_str(), metres(range.low), metres(range.high), metres(length),
                length < *range.low ? "below" : range.high && length > *range.high ? "above"
                                                                                   : "inside");
}

int run(const std::string& top, std::size_t draws) {
    std::setvbuf(stdout, nullptr, _IOLBF, 0);
    const auto film = read::film(*read::load(top + "/films/satin-hybrid.yaml").value).value;
    const std::vector<Vehicle> vehicles = shipped(top);
    const int threads = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
    for (const Vehicle& vehicle : vehicles)
        if (draws > 0) // else only what follows
            tell_range(vehicle, *film, draws, threads);
    for (const Vehicle& vehicle : vehicles)
        tell_measure_first(vehicle, *film, threads);
    for (const Vehicle& vehicle : vehicles)
        for (const Vehicle& from : vehicles)
            if (&vehicle != &from && are_alike(vehicle, from))
                tell_scaled(vehicle, from, *film, threads);
    return 0;
}

} // namespace
} // namespace pelt

int main(int count, char** words) {
    const std::string top = count > 1 ? words[1] : ".";
    return pelt::run(top, count > 2 ? static_cast<std::size_t>(std::atoi(words[2])) : 1'000);
}
