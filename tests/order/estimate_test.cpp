// SPDX-License-Identifier: MIT
// Vehicles that were not measured: what is drawn of them, and what is made of the draws.
#include "job.hpp"
#include "model/error.hpp"
#include "model/random.hpp"
#include "order/draws.hpp"
#include "order/measure_first.hpp"
#include "order/normal.hpp"
#include "order/order.hpp"
#include "order/sufficing.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace pelt::order_test {
namespace {

using namespace order;

TEST_CASE("quantiles of the normal distribution") {
    // Published to ten digits in tables of the normal distribution (from memory).
    CHECK(normal_quantile(.5) == doctest::Approx(0).epsilon(1e-15));
    CHECK(std::abs(normal_quantile(.975) - 1.959963984540054) < 1e-13);
    CHECK(std::abs(normal_quantile(.95) - 1.6448536269514722) < 1e-13);
    CHECK(std::abs(normal_quantile(.9999) - 3.719016485455709) < 1e-12);
    CHECK(std::abs(normal_quantile(1e-10) + 6.361340902404056) < 1e-11);
    // Against the error function of the C library, over the whole range.
    for (double p = .0005; p < 1; p += .0005)
        CHECK(std::abs(.5 * std::erfc(-normal_quantile(p) / std::sqrt(2.0)) - p) < 1e-14);
}

TEST_CASE("a factor takes every stratum once, in an order of its own") {
    std::vector<double> a = shuffled_normals(200, 1);
    std::vector<double> b = shuffled_normals(200, 2);
    CHECK(a != b);
    CHECK(a == shuffled_normals(200, 1));
    CHECK(std::abs(std::accumulate(a.begin(), a.end(), 0.0)) < 1e-9);
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    CHECK(a == b);
    CHECK(a.front() == normal_quantile(.0025));
}

Draw draw(std::optional<Um> mm, std::vector<Remakes> remakes = {}) {
    return {mm ? std::optional(*mm * um_per_mm) : std::nullopt, std::move(remakes), {}};
}

TEST_CASE("percentiles, a draw that fits on no roll being longer than any") {
    std::vector<Draw> draws;
    for (Um i = 1; i <= 200; ++i)
        draws.push_back(draw(1000 + i));
    CHECK(percentile(draws, 5) == 1010 * um_per_mm);
    CHECK(percentile(draws, 50) == 1100 * um_per_mm);
    CHECK(percentile(draws, 95) == 1190 * um_per_mm);
    for (std::size_t i = 0; i < 11; ++i)
        draws[i] = draw(std::nullopt);
    CHECK(percentile(draws, 5) == 1021 * um_per_mm);
    CHECK_FALSE(percentile(draws, 95).has_value());
}

TEST_CASE("what suffices, by draws and by what is spoiled") {
    const Sufficing bare({draw(1000), draw(2000)}, um_per_mm, 1);
    CHECK(bare.chance(999 * um_per_mm) == 0);
    CHECK(bare.chance(1000 * um_per_mm) == .5);
    CHECK(bare.least(.5) == 1000 * um_per_mm);
    CHECK(bare.least(.9) == 2000 * um_per_mm);
    // A piece is spoiled k times with probability .1^k .9, and costs 300 mm each time.
    const Sufficing spoiled({draw(1000, {{300 * um_per_mm, .1, 1}})}, um_per_mm, 1);
    CHECK(spoiled.chance(1299 * um_per_mm) == doctest::Approx(.9));
    CHECK(spoiled.chance(1300 * um_per_mm) == doctest::Approx(.99));
    CHECK(spoiled.least(.95) == 1300 * um_per_mm);
    CHECK(spoiled.least(.9) == 1000 * um_per_mm);
    const Sufficing half({draw(1000), draw(std::nullopt)}, um_per_mm, 1);
    CHECK(half.least(.5) == 1000 * um_per_mm);
    CHECK_FALSE(half.least(.6).has_value());
    const Sufficing doubled({draw(1000)}, um_per_mm, 2);
    CHECK(doubled.least(.9) == 2000 * um_per_mm);
}

TEST_CASE("the panel that makes lengths differ is found, and no other") {
    std::vector<PanelOf> panels;
    for (int i = 0; i < 20; ++i)
        panels.push_back({0, i});
    const Factors factors = stratified_factors(panels, 200, 7);
    std::vector<Draw> draws;
    for (std::size_t i = 0; i < 200; ++i)
        draws.push_back(draw(std::llround(10'000 + 100 * factors.panels[3].x[i] -
                                          60 * factors.panels[3].y[i] +
                                          70 * factors.axes[0][i])));
    const std::vector<PanelShare> first = measure_first(draws, factors, 7);
    REQUIRE(first.size() == 1);
    CHECK(first[0].panel == 3);
    // 100² + 60² of 100² + 60² + 70²; the factors are only nearly uncorrelated.
    CHECK(first[0].percent == doctest::Approx(100 * 13'600.0 / 18'500).epsilon(.12));
    CHECK(first[0].rank == 1);
    for (Draw& same : draws)
        same.length = 10'000 * um_per_mm;
    CHECK(measure_first(draws, factors, 7).empty());
}

/// Lengths that follow the widths of the first four panels so far, and a little chance.
std::vector<Draw> following(const Factors& factors, const std::vector<double>& mm, double chance) {
    Random random(11);
    std::vector<Draw> draws;
    for (std::size_t i = 0; i < factors.axes[0].size(); ++i) {
        double length = 10'000 + chance * normal_quantile(.001 + .998 * random.unit());
        for (std::size_t p = 0; p < mm.size(); ++p)
            length += mm[p] * factors.panels[p].x[i];
        draws.push_back(draw(std::llround(length)));
    }
    return draws;
}

TEST_CASE("panels that matter alike have one rank, one that matters clearly less another") {
    std::vector<PanelOf> panels;
    for (int i = 0; i < 20; ++i)
        panels.push_back({0, i});
    const Factors factors = stratified_factors(panels, 200, 7);
    const auto first = measure_first(following(factors, {100, 103, 50, 5}, 40), factors, 7);
    REQUIRE(first.size() == 3); // 5 mm beside a chance of 40 mm is none
    CHECK(first[0].rank == 1);
    CHECK(first[1].rank == 1);
    CHECK(first[2].panel == 2);
    CHECK(first[2].rank == 3);
    // A small panel is told beside large ones where little is left to chance.
    CHECK(measure_first(following(factors, {100, 103, 50, 5}, 2), factors, 7).size() == 4);
}

TEST_CASE("with too many panels for a fit of all at once the largest is still found") {
    std::vector<PanelOf> panels;
    for (int i = 0; i < 120; ++i)
        panels.push_back({0, i});
    const Factors factors = stratified_factors(panels, 200, 7);
    const auto first = measure_first(following(factors, {100}, 60), factors, 7);
    REQUIRE(first.size() == 1);
    CHECK(first[0].panel == 0);
}

Request guessed(const std::string& panels, double length_mm = 4710) {
    const std::string text = "vehicle: V\noverall: {length: 4640, width: 1800, height: 1450}\n"
                             "panels:\n" +
                             panels;
    auto reading = read::vehicle(source(text));
    REQUIRE(reading.value);
    auto scaled = read::scaled_to(*reading.value, {length_mm, 1830, 1480});
    REQUIRE(scaled.value);
    Request request;
    request.vehicles = {*scaled.value};
    request.film = film("kind: cast\nroll: {width: 1524 mm, trim: 6 mm, length: 25 m}\n"
                        "direction: any\nallowances: {wrap: 10 mm, handling: 40 mm, gap: 4 mm}\n"
                        "sold: [{by: 1 m, price: 10.00}]\n");
    request.effort.threads = 1;
    return request;
}

const std::string some_panels = "  hood: {size: [1380, 972], crown: {wide: 42, high: 26}, "
                                "forward: up}\n"
                                "  roof: {size: [1144, 1516], forward: up}\n"
                                "  front door: {sides: both, size: [1016, 656]}\n"
                                "  mirror cap: {sides: both, size: [252, 184]}\n";

TEST_CASE("an estimate has its range in order, and the least order that is sure enough") {
    Request request = guessed(some_panels);
    CHECK(is_guessed(request));
    const EstimateOutcome outcome = estimate(request);
    REQUIRE(outcome.estimate);
    const Estimate& e = *outcome.estimate;
    CHECK(e.guessed.size() == 4);
    REQUIRE(e.length.high);
    CHECK(*e.length.low < *e.length.middle);
    CHECK(*e.length.middle < *e.length.high);
    CHECK(*e.length.low <= e.as_scaled_length);
    CHECK(e.sure_percent == 90);
    CHECK(e.enough_percent >= 90);
    REQUIRE(e.sure_length);
    CHECK(e.order.length() >= Length::from_um(*e.sure_length));
    CHECK(e.order.length() < Length::from_um(*e.sure_length) + Length::from_mm(1000));
    CHECK(e.as_scaled->vehicles[0].panels[0].guessed);
}

TEST_CASE("any number of threads estimates the same, and another seed another range") {
    Request request = guessed(some_panels);
    const Estimate one = *estimate(request).estimate;
    request.effort.threads = 3;
    const Estimate three = *estimate(request).estimate;
    CHECK(one.length.low == three.length.low);
    CHECK(one.length.high == three.length.high);
    CHECK(one.sure_length == three.sure_length);
    REQUIRE(one.measure_first.size() == three.measure_first.size());
    for (std::size_t i = 0; i < one.measure_first.size(); ++i)
        CHECK(one.measure_first[i].percent == three.measure_first[i].percent);
    request.effort.seed = 2;
    CHECK(estimate(request).estimate->length.low != one.length.low);
}

TEST_CASE("a panel is drawn alike whichever others are guessed") {
    const Factors few = stratified_factors({{0, 3}}, 50, 1);
    const Factors more = stratified_factors({{0, 1}, {0, 3}}, 50, 1);
    CHECK(few.panels[0].x == more.panels[1].x);
    CHECK(few.panels[0].y == more.panels[1].y);
    CHECK(few.axes == more.axes);
    CHECK(few.panels[0].x != few.panels[0].y);
}

TEST_CASE("as scaled to its own size a vehicle takes what it takes") {
    Request request = guessed(some_panels, 4640);
    for (Panel& panel : request.vehicles[0].panels)
        panel.guessed = true;
    const Estimate e = *estimate(request).estimate;
    for (Panel& panel : request.vehicles[0].panels)
        panel.guessed = false;
    CHECK_FALSE(is_guessed(request));
    const Outcome measured = run(request);
    REQUIRE(measured.plan);
    CHECK(e.as_scaled_length == measured.plan->layout().rolls[0].length);
}

TEST_CASE("a panel that no roll takes is that of its own vehicle") {
    Request request = guessed("  roof: {size: [1420, 1400], forward: up, seam: never}\n");
    request.vehicles.push_back(
        guessed("  roof: {size: [700, 600], forward: up, seam: never}\n").vehicles[0]);
    const EstimateOutcome outcome = estimate(request);
    REQUIRE(outcome.estimate);
    CHECK(outcome.estimate->too_wide == std::vector<PanelOf>{{0, 0}});
}

TEST_CASE("no plan is made of a panel that was not measured") {
    CHECK_THROWS_AS(run(guessed(some_panels)), ProgramError);
    Request request = guessed(some_panels);
    request.vehicles[0].panels[0].guessed = false;
    request.selection.only = {"hood"};
    CHECK_FALSE(is_guessed(request));
    CHECK(run(request).plan.has_value());
}

TEST_CASE("a panel about as wide as the roll makes a length that may be longer than any") {
    Request request =
        guessed("  wall: {size: [1400, 1340], forward: up, seam: never, direction: one-way}\n");
    const EstimateOutcome outcome = estimate(request);
    REQUIRE(outcome.estimate);
    CHECK_FALSE(outcome.estimate->length.high.has_value());
    CHECK(outcome.estimate->length.low.has_value());
    REQUIRE(outcome.estimate->too_wide.size() == 1);
    CHECK(outcome.estimate->order.lines.empty());
}

TEST_CASE("by contour a range is in proportion to what it is as scaled") {
    Request request = guessed(some_panels);
    const Estimate straight = *estimate(request).estimate;
    request.by = CutBy::contour;
    const Estimate contour = *estimate(request).estimate;
    const double ratio = static_cast<double>(*contour.length.middle) /
                         static_cast<double>(*straight.length.middle);
    CHECK(static_cast<double>(*contour.length.high) ==
          doctest::Approx(ratio * static_cast<double>(*straight.length.high)));
    CHECK(ratio < 1);
}

} // namespace
} // namespace pelt::order_test
