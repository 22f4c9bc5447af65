// SPDX-License-Identifier: MIT
// Scans of the shipped vehicles: the same whoever shares them, however many threads lay them flat.
#include "order/order.hpp"
#include "read/read.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace pelt::data_test {
namespace {

template <class T>
T read_with(const std::function<read::Reading<T>(std::shared_ptr<const Source>)>& reader,
            const std::string& path) {
    auto source = std::make_shared<Source>();
    source->name = std::string(PELT_TOP) + "/" + path;
    source->text = text_of(path);
    read::Reading<T> reading = reader(std::move(source));
    REQUIRE(reading.value.has_value());
    return *std::move(reading.value);
}

order::AreaRequest coupe(int threads, std::shared_ptr<develop::LaidScans> scans = nullptr) {
    order::AreaRequest request;
    request.vehicle = read_with<Vehicle>([](auto source) { return read::vehicle(std::move(source)); }, "vehicles/round-coupe.yaml");
    request.film = read_with<Film>(read::film, "films/matt-calendered.yaml");
    request.threads = threads;
    request.scans = std::move(scans);
    return request;
}

std::string told(const Faults& faults) {
    std::string text;
    for (const Fault& fault : faults)
        text += to_string(fault, false) + "\n";
    return text;
}

void must_be_equal(const order::AreaOutcome& a, const order::AreaOutcome& b) {
    CHECK(told(a.faults) == told(b.faults));
    REQUIRE(a.rows.size() == b.rows.size());
    for (std::size_t i = 0; i < a.rows.size(); ++i) {
        CHECK(a.rows[i].panel == b.rows[i].panel);
        CHECK(a.rows[i].wrapped.outer == b.rows[i].wrapped.outer);
        CHECK(a.rows[i].wrapped.holes == b.rows[i].wrapped.holes);
        CHECK(a.rows[i].stretch.percent == b.rows[i].stretch.percent);
        CHECK(a.rows[i].stretch.natural_percent == b.rows[i].stretch.natural_percent);
        CHECK(a.rows[i].stretch.bound_percent == b.rows[i].stretch.bound_percent);
    }
}

TEST_CASE("areas of scans: the same for any number of threads, and where scans are shared") {
    const order::AreaOutcome alone = order::areas(coupe(1));
    REQUIRE(!alone.rows.empty());
    must_be_equal(alone, order::areas(coupe(4)));
    // Shared with another film first, which wants other layouts.
    const auto scans = std::make_shared<develop::LaidScans>();
    order::AreaRequest soft = coupe(2, scans);
    order::AreaRequest stiff = soft;
    soft.film->stretch_panel_percent = 40;
    CHECK(!order::areas(soft).rows.empty());
    must_be_equal(alone, order::areas(stiff));
}

TEST_CASE("a vehicle is examined with many films as with each alone") {
    const Vehicle vehicle = read_with<Vehicle>([](auto source) { return read::vehicle(std::move(source)); }, "vehicles/round-coupe.yaml");
    const auto scans = std::make_shared<develop::LaidScans>();
    for (const std::string& path : files_of("films")) {
        CAPTURE(path);
        order::Request request;
        request.vehicles = {vehicle};
        request.film = read_with<Film>(read::film, path);
        const Faults alone = order::examine(request);
        request.scans = scans;
        request.effort.threads = 3;
        CHECK(told(order::examine(request)) == told(alone));
    }
}

} // namespace
} // namespace pelt::data_test
