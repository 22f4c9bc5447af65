// SPDX-License-Identifier: MIT
// Many vehicles of one kind in one order.
#include "order/order.hpp"
#include "read/read.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <utility>

namespace pelt::data_test {
namespace {

std::shared_ptr<const Source> source_of(const std::string& path) {
    return std::make_shared<const Source>(
        Source{std::string(PELT_TOP) + "/" + path, text_of(path)});
}

TEST_CASE("twenty vehicles at once, cut along outlines: a checked plan at first sight") {
    const auto vehicle = read::vehicle(source_of("vehicles/town-hatchback.yaml"));
    const auto film = read::film(source_of("films/satin-hybrid.yaml"));
    REQUIRE(vehicle.value);
    REQUIRE(film.value);
    order::Request request;
    request.vehicles = {*vehicle.value};
    request.film = *film.value;
    request.by = CutBy::contour;
    request.times = 20;
    request.effort.trial = true;
    request.effort.threads = 2;
    const order::Outcome outcome = order::run(std::move(request));
    REQUIRE(outcome.plan);
    CHECK(outcome.plan->layout().rolls.size() > 8);
}

TEST_CASE("a search that is stopped before it has a layout says so") {
    const auto vehicle = read::vehicle(source_of("vehicles/town-hatchback.yaml"));
    const auto film = read::film(source_of("films/satin-hybrid.yaml"));
    for (const CutBy by : {CutBy::straight, CutBy::contour}) {
        order::Request request;
        request.vehicles = {*vehicle.value};
        request.film = *film.value;
        request.by = by;
        request.watch = [](const nest::Progress&) { return false; };
        const order::Outcome outcome = order::run(std::move(request));
        CHECK((outcome.plan || stops(outcome.faults)));
    }
}

} // namespace
} // namespace pelt::data_test
