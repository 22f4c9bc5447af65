// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "report/area.hpp"
#include "report/draw/letters.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <regex>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;
using nlohmann::json;

namespace {

Polygon rectangle(Um along, Um across) {
    return {{{0, 0}, {along, 0}, {along, across}, {0, across}}, {}};
}

AreaSheet two_rows() {
    AreaSheet sheet;
    sheet.vehicle = "Van";
    PanelArea hood;
    hood.panel = "hood";
    hood.visible_mm2 = 1'000'000.25;
    hood.wrapped = rectangle(1'400'400, 900'000);
    hood.cut_mm2 = 1'300'000;
    hood.stretch = {StretchAsked::Is::estimate, 9.04};
    PanelArea step;
    step.panel = "step, \"left\"";
    step.side = Side::left;
    step.count = 2;
    step.visible_mm2 = 10'000;
    step.wrapped = rectangle(120'000, 100'000);
    step.cut_mm2 = 20'000;
    sheet.rows = {hood, step};
    return sheet;
}

} // namespace

TEST_CASE("areas as JSON: every key of pelt.area/1, the total over all copies") {
    const json doc = json::parse(to_json(two_rows()));
    CHECK(doc["schema"] == "pelt.area/1");
    REQUIRE(doc["panels"].size() == 2);
    for (const char* key : {"panel", "side", "count", "visible_mm2", "wrapped_mm2", "cut_mm2",
                            "size_mm", "stretch_percent", "stretch_is"})
        CHECK(doc["panels"][0].contains(key));
    CHECK(doc["panels"][0]["visible_mm2"] == 1'000'000.25);
    CHECK(doc["panels"][0]["size_mm"] == json({1400.4, 900.0}));
    CHECK(doc["panels"][0]["stretch_percent"] == 9.04);
    CHECK(doc["panels"][0]["stretch_is"] == "estimate");
    CHECK(doc["panels"][1]["stretch_percent"].is_null());
    CHECK(doc["panels"][1]["stretch_is"] == "unknown");
    CHECK(doc["total"]["visible_mm2"] == 1'020'000.25);
    CHECK(doc["total"]["wrapped_mm2"] == 1'284'360.0);
    CHECK(doc["total"]["cut_mm2"] == 1'340'000.0);
}

TEST_CASE("without a film no cut area, not 0") {
    AreaSheet sheet = two_rows();
    sheet.rows[1].cut_mm2 = std::nullopt;
    const json doc = json::parse(to_json(sheet));
    CHECK(doc["panels"][1]["cut_mm2"].is_null());
    CHECK(doc["total"]["cut_mm2"].is_null());
    CHECK(to_text(area_report(sheet), {}).find("0.00 m²") == std::string::npos);
    CHECK(to_csv(sheet).find(",12000,,") != std::string::npos);
}

TEST_CASE("areas as CSV and as a table") {
    const std::string csv = to_csv(two_rows());
    CHECK(csv.find("hood,centre,1,1000000.25,1260360,1300000,1400.4,900,9.04,estimate,,,,,,no\n") !=
          std::string::npos);
    CHECK(csv.find("\"step, \"\"left\"\"\",left,2,10000,12000,20000,120,100,,unknown,,,,,,no\n") !=
          std::string::npos);
    const std::string table = to_text(area_report(two_rows()), {});
    CHECK(table.find("1401 × 900") != std::string::npos);
    CHECK(table.find("about 9 %") != std::string::npos);
    CHECK(table.find("not checked") != std::string::npos);
}

TEST_CASE("how film lies: ok, care, split: null without a film or a figure") {
    AreaSheet sheet = two_rows();
    StretchAsked& hood = sheet.rows[0].stretch;
    hood.natural_percent = 12.5;
    hood.bound_percent = 8.25;
    sheet.rows[0].surface_mm2 = 1'010'000.5;
    const auto verdict = [&](std::size_t row) {
        return json::parse(to_json(sheet))["panels"][row]["verdict"];
    };
    CHECK(verdict(0).is_null());
    const json doc = json::parse(to_json(sheet));
    CHECK(doc["panels"][0]["natural_stretch_percent"] == 12.5);
    CHECK(doc["panels"][0]["bound_stretch_percent"] == 8.25);
    CHECK(doc["panels"][0]["surface_mm2"] == 1'010'000.5);
    CHECK(doc["panels"][1]["surface_mm2"].is_null());
    CHECK(doc["panels"][1]["stretch_at_most_percent"].is_null());
    sheet.stretch_limit = 12.5;
    CHECK(verdict(0) == "ok");
    CHECK(verdict(1).is_null());
    sheet.stretch_limit = 9.04;
    CHECK(verdict(0) == "care");
    sheet.stretch_limit = 5;
    CHECK(verdict(0) == "split");
    CHECK(verdict(1).is_null());
    // 400 mm wide with K = 1/500²: 400 × sqrt(4e-6 / (8 × 0.05)) = 1.26 strips, hence two.
    hood.curvature = 4e-6;
    hood.width_mm = 400;
    CHECK(to_markdown(area_report(sheet)).find("about 2 strips") != std::string::npos);
    hood.curvature = -4e-6;
    CHECK(to_markdown(area_report(sheet)).find("lay an inlay into the hollow") !=
          std::string::npos);
}

namespace {

/// Panels by tape whose names are long, one without rises.
AreaSheet many_by_tape() {
    AreaSheet sheet;
    sheet.vehicle = "Van with a name that is about as long as names of vans ever get in a workshop";
    sheet.film = "Film";
    sheet.stretch_limit = 12;
    for (int i = 0; i < 30; ++i) {
        PanelArea row;
        row.panel = "panel number " + std::to_string(i);
        row.wrapped = rectangle(1'000'000 + 20'000 * i, 700'000);
        row.stretch = {StretchAsked::Is::estimate, 3};
        row.forward = pelt::Heading::up;
        row.outline = {{10, 10}, {900, 10}, {900, 600}, {10, 600}};
        row.crown = Crown{30, i % 2 == 0 ? 20.0 : 0.0};
        if (i % 10 == 9)
            row.crown.reset();
        sheet.rows.push_back(row);
    }
    return sheet;
}

std::vector<std::string> found(const std::string& text, const std::string& pattern) {
    const std::regex regex(pattern);
    std::vector<std::string> out;
    for (std::sregex_iterator it(text.begin(), text.end(), regex), end; it != end; ++it)
        out.push_back((*it)[1]);
    return out;
}

} // namespace

TEST_CASE("a picture of stretch draws panels by tape with their arcs, and names those without") {
    const std::string svg = to_svg(many_by_tape());
    // An arc for each rise that was measured: 27 over the width, 15 over the height.
    CHECK(found(svg, "(class=\"rise\")").size() == 27 + 15);
    CHECK(svg.find("Not drawn, since no rise was measured: panel number 9, panel number 19, panel "
                   "number 29.") != std::string::npos);
    CHECK(svg.find("Cross:") == std::string::npos); // no scan, so no cross
}

TEST_CASE("words of a picture of stretch stay inside it") {
    const std::string svg = to_svg(many_by_tape());
    const double width = std::stod(found(svg, "width=\"([0-9.]+)mm\"").at(0));
    const std::regex text("<text[^>]* x=\"([-0-9.]+)\"[^>]*font-size=\"([0-9.]+)\">([^<]*)<");
    const draw::UnknownLetters letters;
    std::size_t texts = 0;
    for (std::sregex_iterator it(svg.begin(), svg.end(), text), end; it != end; ++it, ++texts)
        CHECK(std::stod((*it)[1]) + letters.width((*it)[3].str(), std::stod((*it)[2])) <= width);
    CHECK(texts > 30);
    // About as high as wide, and not a column of thirty panels.
    CHECK(std::stod(found(svg, "height=\"([0-9.]+)mm\"").at(0)) < 2 * width);
}
