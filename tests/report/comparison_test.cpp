// SPDX-License-Identifier: MIT
#include "report/job.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>

using namespace pelt;

namespace {

report::Comparison two_rows() {
    report::Comparison comparison;
    comparison.vehicles = "Small van";
    comparison.demonstration = true;
    comparison.rows.push_back(
        {"Plain", 1'524'000, test::sheet(test::two_panels, test::plain_film), ""});
    comparison.rows.push_back(
        {"=Narrow, \"cheap\"", 600'000, std::nullopt, "the roof is too wide"});
    return comparison;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::istringstream stream(text);
    std::vector<std::string> lines;
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

} // namespace

TEST_CASE("a comparison as JSON says what the sheets say, and null where there is none") {
    const auto json = nlohmann::json::parse(report::to_json(two_rows()));
    const auto cut =
        nlohmann::json::parse(report::to_json(test::sheet(test::two_panels, test::plain_film)));
    CHECK(json.at("schema") == "pelt.compare/1");
    CHECK(json.at("demonstration") == true);
    REQUIRE(json.at("rows").size() == 2);
    const auto& first = json.at("rows")[0];
    for (const char* key : {"length_mm", "bound_mm", "waste_percent", "roll_width_mm"})
        CHECK(first.at(key) == cut.at(key));
    CHECK(first.at("order").at("length_mm") == cut.at("order").at("length_mm"));
    CHECK(first.at("pieces") == cut.at("rolls")[0].at("pieces").size());
    CHECK(first.at("problem").is_null());
    const auto& second = json.at("rows")[1];
    CHECK(second.at("length_mm").is_null());
    CHECK(second.at("order").is_null());
    CHECK(second.at("problem") == "the roof is too wide");
}

TEST_CASE("a comparison tells the price of each film") {
    report::Comparison comparison = two_rows();
    comparison.rows[0].sheet = test::sheet(test::two_panels, test::priced_film);
    const auto json = nlohmann::json::parse(report::to_json(comparison));
    CHECK(json.at("rows")[0].at("order").at("total") == "42.60");
    CHECK(report::to_csv(comparison).find(",42.60,") != std::string::npos);
    CHECK(report::to_table(comparison).find("42.60") != std::string::npos);
}

TEST_CASE("a comparison as CSV has a row a film, safe for spreadsheets") {
    const auto lines = lines_of(report::to_csv(two_rows()));
    REQUIRE(lines.size() == 3);
    CHECK(std::count(lines[0].begin(), lines[0].end(), ',') == 16);
    CHECK(lines[1].find("Small van,Plain,1524,") == 0);
    CHECK(lines[2] == "Small van,\"'=Narrow, \"\"cheap\"\"\",600,,,,,,,,,the roof is too wide,,,,,");
}

TEST_CASE("a comparison for people names what cannot be done and that it is invented") {
    const std::string table = report::to_table(two_rows());
    CHECK(table.find("DEMONSTRATION") != std::string::npos);
    CHECK(table.find("Plain") != std::string::npos);
    CHECK(table.find("none") != std::string::npos);
    CHECK(table.find("600 mm: the roof is too wide") != std::string::npos);
    for (const std::string& line : lines_of(table))
        CHECK(line.size() <= 80);
    CHECK(report::to_markdown(two_rows()).find("| Plain |") != std::string::npos);
}

namespace {

std::string film_with(const std::string& price, const std::string& currency) {
    std::string text = test::priced_film;
    text.replace(text.find("sold:"), std::string::npos,
                 "sold: [{by: 1 m, price: " + price + "}]\ncurrency: " + currency + "\n");
    return text;
}

report::ComparisonRow row(const std::string& name, const std::string& panels,
                          const std::string& film) {
    return {name, 1'524'000, test::sheet(panels, film), ""};
}

const std::string one_more = test::two_panels + "  lid: {size: [900, 1400], forward: up, edges: "
                                                "none}\n";

report::Comparison by_money() {
    report::Comparison comparison;
    comparison.rows = {row("dear", test::two_panels, film_with("20.00", "EUR")),
                       row("foreign", test::two_panels, film_with("9.00", "USD")),
                       row("no price", test::two_panels, test::plain_film),
                       row("cheap", test::two_panels, film_with("10.00", "EUR")),
                       row("long", one_more, film_with("9.50", "EUR"))};
    return comparison;
}

} // namespace

TEST_CASE("films rank by money, each currency by itself: the rows of programs keep their order") {
    const auto json = nlohmann::json::parse(report::to_json(by_money()));
    const auto& rows = json.at("rows");
    CHECK(rows[0].at("rank") == 3);
    CHECK(rows[1].at("rank") == 1);
    CHECK(rows[2].at("rank").is_null());
    CHECK(rows[3].at("rank") == 1);
    CHECK(rows[4].at("rank") == 2);
    CHECK(rows[0].at("more") == "30.00");
    CHECK(rows[3].at("more") == "0.00");
    const std::string table = report::to_table(by_money());
    std::size_t last = 0;
    for (const char* name : {"cheap ", "long ", "dear ", "foreign ", "no price "}) {
        CAPTURE(name);
        const std::size_t at = table.find(name);
        REQUIRE(at != std::string::npos);
        CHECK(at > last);
        last = at;
    }
}

TEST_CASE("a row whose price is for another width has none, and other currencies are told") {
    report::Comparison comparison = by_money();
    comparison.rows[0].priced_width = 1'220'000;
    comparison.rows[2].priced_width = 1'220'000; // no price known: nothing to mind
    const std::string table = report::to_table(comparison);
    CHECK(table.find("! dear, 1524 mm: no price, since") != std::string::npos);
    // Without a price it has no rank, and is not held against the others.
    CHECK(table.find("30.00 EUR more") == std::string::npos);
    CHECK(table.find("60.00") == std::string::npos);
    const auto rows = nlohmann::json::parse(report::to_json(comparison)).at("rows");
    CHECK(rows[0].at("rank").is_null());
    CHECK(rows[0].at("order").at("total").is_null());
    CHECK(table.find("! no price") == std::string::npos);
    CHECK(table.find("! The prices are in several currencies") != std::string::npos);
    comparison.rows.erase(comparison.rows.begin() + 1);
    CHECK(report::to_table(comparison).find("several currencies") == std::string::npos);
}

TEST_CASE("what makes the difference: length and price add up to it") {
    // 3 m at 10.00; 3 m at 20.00: all of it for the price. 4 m at 9.50: a metre more at 10.00, and
    // half a unit less for each of four.
    const std::string table = report::to_table(by_money());
    CHECK(table.find("dear, 1524 mm: 30.00 EUR more, all because a meter of it costs more.") !=
          std::string::npos);
    CHECK(table.find(
              "long, 1524 mm: 8.00 EUR more: 10.00 EUR for 1 m more film to order, 2.00 EUR") !=
          std::string::npos);
    CHECK(table.find("saved by the price of a meter.") != std::string::npos);
    for (const std::string& line : lines_of(table))
        CHECK(line.size() <= 80);
}
