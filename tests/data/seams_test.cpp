// SPDX-License-Identifier: MIT
// Every shipped vehicle is divided in one way for each film, whatever else is asked for; names that
// mean the same give the same layout.
#include "order/order.hpp"
#include "read/read.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <map>
#include <memory>
#include <regex>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace pelt::data_test {
namespace {

template <class T>
T value_of(const read::Reading<T>& reading) {
    for (const Fault& fault : reading.faults)
        INFO(to_string(fault, false));
    REQUIRE(reading.value);
    return *reading.value;
}

std::shared_ptr<const Source> source(const std::string& path, std::string text) {
    return std::make_shared<const Source>(
        Source{std::string(PELT_TOP) + "/" + path, std::move(text)});
}

Vehicle vehicle_at(const std::string& path) {
    return value_of(read::vehicle(source(path, text_of(path))));
}

Film film_at(const std::string& path) {
    return value_of(read::film(source(path, text_of(path))));
}

/// By panel and side: which piece laps over which, and where.
using Told = std::tuple<int, int, Um, std::string, std::string, Um, std::string>;
using SeamsOf = std::map<std::pair<int, Side>, std::set<Told>>;

SeamsOf seams_of(const order::Outcome& outcome) {
    SeamsOf out;
    for (const Seam& s : outcome.plan->job().seams)
        out[{s.panel, s.side}].insert({s.under_part, s.upper_part, s.length, s.place.line,
                                       s.place.run, s.place.nearer, s.place.edge});
    return out;
}

order::Outcome planned(const order::Request& request) {
    order::Outcome out = order::run(request);
    std::string all;
    for (const Fault& fault : out.faults)
        if (stops({fault}))
            all += to_string(fault, false) + "\n";
    INFO(all);
    REQUIRE(out.plan);
    return out;
}

/// Every seam is one of the whole vehicle's, and every divided panel has all of its seams.
void check_same(const SeamsOf& whole, const order::Request& request) {
    const SeamsOf own = seams_of(planned(request));
    for (const auto& [panel, seams] : own) {
        const auto known = whole.find(panel);
        REQUIRE(known != whole.end());
        CHECK(known->second == seams);
    }
}

void check_one_way(order::Request asked) {
    asked.effort.trial = true; // the seams must not depend on it
    asked.scans = std::make_shared<develop::LaidScans>();
    const SeamsOf whole = seams_of(planned(asked));
    for (std::size_t p = 0; p < asked.vehicles[0].panels.size(); ++p) {
        const Panel& panel = asked.vehicles[0].panels[p];
        CAPTURE(panel.name);
        order::Request alone = asked;
        alone.selection.only = {panel.name};
        if (panel.extra.empty())
            check_same(whole, alone);
        for (const Side side : sides_of(panel.sides))
            if (whole.count({static_cast<int>(p), side}) > 0) {
                order::Request again = asked;
                again.selection.spoiled = {
                    panel.name + (side == Side::centre ? "" : "/" + std::string(name_of(side))) +
                    "/2"};
                check_same(whole, again);
            }
    }
    order::Request more = asked;
    more.times = 3;
    check_same(whole, more);
    order::Request from_stock = asked;
    from_stock.stock = value_of(read::stock(source("examples/stock.yaml",
                                                   text_of("examples/stock.yaml"))))
                           .rolls;
    for (StockRoll& roll : from_stock.stock)
        roll.film = asked.film.name;
    check_same(whole, from_stock);
    order::Request harder = asked;
    harder.effort.trial = asked.by == CutBy::contour;
    harder.effort.amount = harder.effort.trial ? 1 : 2;
    harder.effort.seed = 9;
    harder.stages = 2;
    check_same(whole, harder);
}

TEST_CASE("every shipped vehicle is divided in one way, cut straight") {
    for (const std::string& vehicle : files_of("vehicles"))
        for (const std::string& film : files_of("films")) {
            CAPTURE(vehicle);
            CAPTURE(film);
            order::Request asked;
            asked.vehicles = {vehicle_at(vehicle)};
            asked.film = film_at(film);
            check_one_way(asked);
        }
}

TEST_CASE("shipped vehicles are divided in one way where film decides, and by contour") {
    for (const char* vehicle : {"vehicles/box-van.yaml", "vehicles/family-sedan.yaml"}) {
        CAPTURE(vehicle);
        order::Request asked;
        asked.vehicles = {vehicle_at(vehicle)};
        asked.film = film_at("films/satin-hybrid-narrow.yaml");
        asked.seams = Seams::thrifty;
        check_one_way(asked);
    }
    order::Request asked;
    asked.vehicles = {vehicle_at("vehicles/street-motorcycle.yaml")};
    asked.film = film_at("films/satin-hybrid-narrow.yaml");
    asked.width = 500'000;
    asked.by = CutBy::contour;
    check_one_way(asked);
}

/// Where everything lies, without names.
using Placed = std::vector<std::tuple<std::size_t, Um, Um, int, Ring>>;

Placed placed_by(const order::Outcome& outcome) {
    Placed out;
    const Job& job = outcome.plan->job();
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        for (const Placement& p : used.placements)
            out.emplace_back(used.roll, p.at.x, p.at.y, p.turn.millidegrees,
                             job.pieces[p.piece].shapes[p.shape].outline.outer);
    return out;
}

TEST_CASE("names that mean the same, and 'is', change no layout") {
    const std::string path = "vehicles/family-sedan.yaml";
    const std::string text = text_of(path);
    const std::vector<std::pair<std::string, std::string>> other_names{
        {"hood", "bonnet"},
        {"front fender", "front wing"},
        {"trunk lid", "boot lid"},
        {"sill", "rocker panel"},
        {"mirror cap", "door mirror cover"}};
    const auto renamed = [&](const std::string& name, const std::string& to) {
        const std::regex key("(^|\\n)  " + name + ":");
        REQUIRE(std::regex_search(text, key));
        return std::regex_replace(text, key, "$1  " + to + ":");
    };
    const auto layout_of = [&](const std::string& of, const char* film) {
        order::Request asked;
        asked.vehicles = {value_of(read::vehicle(source(path, of)))};
        asked.film = film_at(film);
        asked.effort.trial = true;
        return placed_by(planned(asked));
    };
    for (const char* film : {"films/satin-hybrid.yaml", "films/gloss-cast-yard.yaml"}) {
        CAPTURE(film);
        const Placed as_it_is = layout_of(text, film);
        for (const auto& [name, other] : other_names) {
            CAPTURE(name);
            CHECK(layout_of(renamed(name, other), film) == as_it_is);
            const std::string another = renamed(name, "thing 7");
            const std::string key = "  thing 7:";
            std::string told = another;
            told.insert(another.find(key) + key.size(), "\n    is: " + name);
            CHECK(layout_of(told, film) == as_it_is);
        }
    }
}

} // namespace
} // namespace pelt::data_test
