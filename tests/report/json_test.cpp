// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "model/error.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/json_text.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <limits>
#include <string>
#include <vector>

using namespace pelt;
using nlohmann::json;

namespace {

void has_keys(const json& object, const std::vector<std::string>& keys) {
    for (const std::string& key : keys) {
        CAPTURE(key);
        CHECK(object.contains(key));
    }
}

// The area after `"key": ` in ten-millionths, read by hand: a double would hide what this
// looks for.
Int128 ten_millionths(const std::string& text, const std::string& key) {
    std::size_t at = text.find("\"" + key + "\": ", text.find("area_mm2")) + key.size() + 4;
    Int128 value = 0;
    int places = -1;
    for (; text[at] == '.' || (text[at] >= '0' && text[at] <= '9'); ++at) {
        if (text[at] == '.')
            places = 0;
        else {
            value = value * 10 + (text[at] - '0');
            places += places >= 0 ? 1 : 0;
        }
    }
    for (places = places < 0 ? 0 : places; places < 7; ++places)
        value *= 10;
    return value;
}

} // namespace

TEST_CASE("JSON has every key of pelt.cut/1") {
    const json doc = json::parse(report::to_json(test::sheet(test::two_panels, test::plain_film)));
    has_keys(doc,
             {"schema", "vehicle", "film", "by", "demonstration", "direction", "turns", "stopped",
              "roll_width_mm", "usable_width_mm", "gap_mm", "handling_least_mm", "length_mm",
              "bound_mm", "area_mm2", "waste_percent", "order", "rolls", "warnings"});
    has_keys(doc["area_mm2"], {"film", "cut", "wrapped", "visible", "bleed", "offcut"});
    has_keys(doc["order"], {"length_mm", "spare_mm", "sure_percent", "total", "currency", "lines"});
    has_keys(doc["order"]["lines"].at(0), {"by_mm", "count", "length_mm", "price", "batch"});
    const json& roll = doc["rolls"].at(0);
    has_keys(roll, {"roll", "batch", "width_mm", "trim_mm", "length_mm", "available_mm", "pieces",
                    "cuts"});
    has_keys(roll["cuts"].at(0), {"from_mm", "to_mm"});
    REQUIRE(roll["pieces"].size() == 2);
    has_keys(roll["pieces"].at(1),
             {"number", "vehicle", "panel", "side", "copy", "part", "parts", "kind", "name",
              "direction", "at_mm", "size_mm", "turn_deg", "wrapped_mm", "blank_mm",
              "blank_holes_mm", "outline_mm", "holes_mm"});
    CHECK(doc["schema"] == "pelt.cut/1");
    CHECK(doc["vehicle"] == "Small van");
    CHECK(doc["demonstration"] == true);
    CHECK(doc["handling_least_mm"] == 15.0);
    CHECK(doc["usable_width_mm"] == 1512.0);
}

TEST_CASE("areas add up to the last digit that is printed") {
    const std::string text = report::to_json(test::sheet(test::two_panels, test::plain_film));
    const auto area = [&](const char* key) { return ten_millionths(text, key); };
    CHECK(area("film") > 0);
    CHECK(area("film") == area("wrapped") + area("bleed") + area("offcut"));
    CHECK(area("cut") == area("wrapped") + area("bleed"));
}

TEST_CASE("what is not known is null, never 0") {
    const json doc = json::parse(report::to_json(test::sheet(test::two_panels, test::plain_film)));
    CHECK(doc["order"]["total"].is_null());
    CHECK(doc["order"]["currency"].is_null());
    CHECK(doc["order"]["sure_percent"].is_null());
    CHECK(doc["order"]["lines"].at(0)["price"].is_null());
    CHECK(doc["rolls"].at(0)["batch"].is_null());
    CHECK(doc["rolls"].at(0)["pieces"].at(0)["stretch_percent"].is_null());
    CHECK(doc["stopped"].is_null());
}

TEST_CASE(
    "what there is of a roll: the stock's own length, and what the order line of new film buys") {
    order::Request request =
        test::request("vehicle: Van\npanels:\n"
                      "  roof: {size: [1000, 1400], forward: right, edges: none}\n"
                      "  cap: {size: [200, 200], forward: right, edges: none, batch free: yes}\n",
                      test::priced_film);
    request.stock =
        test::value_of(
            read::stock(test::source("stock.yaml", "stock: [{name: A, film: Test hybrid, width: "
                                                   "500 mm, length: 700 mm}]\n")))
            .rolls;
    const json rolls = json::parse(report::to_json(test::sheet(request)))["rolls"];
    REQUIRE(rolls.size() == 2);
    CHECK(rolls[0]["roll"] == "stock A");
    CHECK(rolls[0]["available_mm"] == 700);
    CHECK(rolls[1]["length_mm"] == 1080);
    CHECK(rolls[1]["available_mm"] == 2000);
}

TEST_CASE("only warnings are shown, each once, with their remedy") {
    report::Sheet sheet = test::sheet(test::two_panels, test::plain_film);
    const Fault warning{Severity::warning, {}, "hood", "has no tuck", "give it an edge"};
    sheet.warnings = {warning, warning, {Severity::note, {}, "roof", "is flat", ""}};
    const json warnings = json::parse(report::to_json(sheet))["warnings"];
    CHECK(std::count(warnings.begin(), warnings.end(),
                     json{{"panel", "hood"},
                          {"panels", {"hood"}},
                          {"text", "has no tuck; give it an edge."}}) == 1);
    for (const json& entry : warnings) {
        has_keys(entry, {"panel", "panels", "text"});
        CHECK(entry["panel"] != "roof");
    }
}

TEST_CASE("texts are escaped so that a reference parser gives them back") {
    const std::string hard = "a\"b\\c\n\t\r\x01\x7F/é車🚐";
    CHECK(json::parse(report::json_text(hard).text) == hard);
    CHECK(json::parse(report::json_text("\xFF").text) == "\uFFFD");
}

// RFC 8259, section 6: numbers have no NaN and no infinities.
TEST_CASE("JSON refuses numbers that it cannot hold") {
    CHECK_THROWS_AS(report::rounded_percent(std::numeric_limits<double>::quiet_NaN()),
                    ProgramError);
    CHECK_THROWS_AS(report::rounded_percent(std::numeric_limits<double>::infinity()), ProgramError);
    CHECK(report::rounded_percent(-0.00049) == "0.0");
    CHECK(report::rounded_percent(0.0005) == "0.001");
}

TEST_CASE("the same sheet gives the same bytes") {
    const report::Sheet sheet = test::sheet(test::two_panels, test::plain_film);
    CHECK(report::to_json(sheet) == report::to_json(sheet));
}
