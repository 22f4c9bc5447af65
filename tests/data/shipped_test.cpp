// SPDX-License-Identifier: MIT
// Whatever is shipped is right, says that it is invented, and comes to a length that the trade
// knows.
#include "shipped.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <map>
#include <regex>
#include <string>
#include <utility>

namespace pelt::data_test {
namespace {

struct Metres {
    double least = 0;
    double most = 0;
};

// Film 1.52 m wide that a nest of taped panels should come to, exterior without door jambs (common
// practice, no source).
const std::map<std::string, Metres> usual_by_body{
    {"hatchback", {12.5, 15.5}}, {"coupe", {12, 15.5}},      {"sedan", {14, 17}},
    {"large SUV", {18.5, 23}},   {"pickup", {17, 21}},       {"medium panel van", {20, 25}},
    {"box van", {20, 27}},       {"motorcycle", {1.5, 3.5}},
};
// One-way film takes 5 to 10 % more (common practice, no source).
constexpr double one_way_least = 1.05;
constexpr double one_way_most = 1.10;

std::string value_of(const std::string& text, const std::string& key) {
    std::smatch found;
    const std::regex line("(^|\\n)" + key + ": *([^\\n#]*[^\\n# ])");
    return std::regex_search(text, found, line) ? found[2].str() : std::string{};
}

bool is_wide(const nlohmann::json& plan) {
    const double width = plan.at("roll_width_mm");
    return width > 1510 && width < 1530;
}

nlohmann::json plan_of(const std::string& vehicle, const std::string& film, const char* by) {
    const support::Result result = pelt({"cut", vehicle, film, "--by", by, "--format", "json"});
    INFO(result.errors);
    REQUIRE(result.status == 0);
    return nlohmann::json::parse(result.output);
}

Metres usual(const std::string& vehicle, const nlohmann::json& plan) {
    const std::string body = value_of(text_of(vehicle), "body");
    CAPTURE(body);
    REQUIRE(usual_by_body.count(body) == 1);
    Metres range = usual_by_body.at(body);
    if (plan.at("direction") == "one-way")
        range = {range.least * one_way_least, range.most * one_way_most};
    return range;
}

TEST_CASE("every shipped file passes the check") {
    for (const std::string& path : shipped_files()) {
        CAPTURE(path);
        const support::Result result = pelt({"check", path});
        CHECK(result.status == 0);
        CHECK(result.errors == "");
    }
}

TEST_CASE("every shipped file says that it is invented, and is named in small letters") {
    for (const std::string& path : shipped_files()) {
        CAPTURE(path);
        const std::string text = text_of(path);
        CHECK(value_of(text, "demonstration") == "yes");
        CHECK(std::regex_search(text, std::regex("# .*invented|# An invented")));
        CHECK(std::regex_match(path, std::regex("[a-z]+/[a-z]+(-[a-z]+)*\\.yaml")));
    }
}

TEST_CASE("every shipped vehicle, cut straight, comes to what is usual for its body") {
    for (const std::string& vehicle : files_of("vehicles"))
        for (const std::string& film : files_of("films")) {
            CAPTURE(vehicle);
            CAPTURE(film);
            const nlohmann::json plan = plan_of(vehicle, film, "straight");
            const double metres = plan.at("length_mm").get<double>() / 1000;
            CHECK(plan.at("demonstration") == true);
            if (!is_wide(plan))
                continue; // nothing is known of other widths
            const Metres range = usual(vehicle, plan);
            CHECK(metres >= range.least);
            CHECK(metres <= range.most);
        }
}

TEST_CASE("every shipped vehicle is shorter by contour than straight") {
    const char* film = "films/satin-hybrid.yaml";
    for (const std::string& vehicle : files_of("vehicles")) {
        CAPTURE(vehicle);
        const nlohmann::json straight = plan_of(vehicle, film, "straight");
        const nlohmann::json contour = plan_of(vehicle, film, "contour");
        CHECK(contour.at("length_mm").get<double>() < straight.at("length_mm").get<double>());
    }
}

TEST_CASE("the door jambs of a shipped car cost 3 to 5 m more") {
    // Common practice, no source.
    for (const char* vehicle : {"vehicles/town-hatchback.yaml", "vehicles/family-sedan.yaml",
                                "vehicles/large-suv.yaml", "vehicles/double-cab-pickup.yaml"}) {
        CAPTURE(vehicle);
        const nlohmann::json without = plan_of(vehicle, "films/gloss-cast-yard.yaml", "straight");
        const support::Result result = pelt(
            {"cut", vehicle, "films/gloss-cast-yard.yaml", "--with", "jambs", "--format", "json"});
        REQUIRE(result.status == 0);
        const nlohmann::json with = nlohmann::json::parse(result.output);
        const double more =
            (with.at("length_mm").get<double>() - without.at("length_mm").get<double>()) / 1000;
        CHECK(more >= 2.5);
        CHECK(more <= 5.5);
    }
}

} // namespace
} // namespace pelt::data_test
