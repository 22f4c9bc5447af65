// SPDX-License-Identifier: MIT
// What a vehicle file says arrives, and what is wrong with it is told.
#include "files.hpp"

#include <doctest/doctest.h>

#include <string>

namespace pelt::read_test {
namespace {

const OutlineForm& outline_of(const Panel& panel) {
    REQUIRE(std::holds_alternative<OutlineForm>(panel.form));
    return std::get<OutlineForm>(panel.form);
}

TEST_CASE("the head of a vehicle file") {
    const auto reading = read::vehicle(file("vehicle: Town hatchback, five doors\n"
                                            "demonstration: yes\n"
                                            "body: hatchback\n"
                                            "units: in\n"
                                            "panels: {roof: {size: [40, 50 mm]}}\n"));
    CHECK(told(reading).empty());
    REQUIRE(reading.value.has_value());
    CHECK(reading.value->name == "Town hatchback, five doors");
    CHECK(reading.value->demonstration);
    CHECK(reading.value->body == "hatchback");
    CHECK(reading.value->unit == Unit::in);
    CHECK(reading.value->file == "t.yaml");
    const OutlineForm& roof = outline_of(reading.value->panels.at(0));
    CHECK(roof.from_size);
    REQUIRE(roof.segments.size() == 4);
    CHECK(roof.segments[0].to == Point{0, 0});
    CHECK(roof.segments[1].to == Point{1016, 0});
    CHECK(roof.segments[2].to == Point{1016, 50});
    CHECK(roof.segments[3].to == Point{0, 50});
}

TEST_CASE("an outline keeps its points, arcs and named edges") {
    const Panel panel = panel_of("outline:\n"
                                 "  - [0, 0]\n"
                                 "  - [1040, 0]\n"
                                 "  - {through: [1080, 330], to: [1060, 640]}\n"
                                 "  - {to: [30, 655], name: window seal}");
    const OutlineForm& form = outline_of(panel);
    REQUIRE(form.segments.size() == 4);
    CHECK(!form.from_size);
    CHECK(form.segments[0].to == Point{0, 0});
    CHECK(form.segments[2].to == Point{1060, 640});
    CHECK(form.segments[2].through == Point{1080, 330});
    CHECK(form.segments[3].name == "window seal");
    CHECK(form.segments[3].place.line == 8);
    CHECK(!form.segments[0].through.has_value());
}

TEST_CASE("a closing arc, edge or point that ends on point 1 is no new point") {
    const Panel arc =
        panel_of("outline: [[0, 0], [100, 0], [100, 50], {through: [50, 90], to: [0, 0]}]");
    CHECK(outline_of(arc).segments.size() == 3);
    CHECK(outline_of(arc).segments[0].through == Point{50, 90});
    const Panel named = panel_of("outline: [[0, 0], [100, 0], [100, 50], {to: [0, 0], name: lip}]\n"
                                 "edges: {lip: {wrap: 3}}");
    CHECK(outline_of(named).segments.size() == 3);
    CHECK(outline_of(named).segments[0].name == "lip");
    const Panel plain = panel_of("outline: [[0, 0], [100, 0], [100, 50], [0, 0]]");
    CHECK(outline_of(plain).segments.size() == 3);
    const Panel disc = panel_of("outline: [[0, 0], {through: [50, -50], to: [100, 0]}, "
                                "{through: [50, 50], to: [0, 0]}]");
    CHECK(outline_of(disc).segments.size() == 2);
    const Panel flat = panel_of("outline: [[0, 0], {through: [50, 0], to: [100, 0]}, [50, 50]]");
    CHECK(!outline_of(flat).segments[1].through.has_value());
}

TEST_CASE("clockwise outlines are fine, and keep their numbers") {
    const Panel panel = panel_of("outline: [[0, 0], [0, 50], [100, 50], [100, 0]]\n"
                                 "edges: {bottom: {wrap: 3}, 4-1: {wrap: 4}}");
    CHECK(outline_of(panel).segments[1].to == Point{0, 50});
}

TEST_CASE("girths") {
    const Panel panel = panel_of("girths:\n"
                                 "  - {at: 0, up: 180, down: 240}\n"
                                 "  - {at: 1150, up: 260, down: 300}\n"
                                 "through stations: smooth\n"
                                 "forward: down\n"
                                 "edges: {all: {wrap: 15}, start: {wrap: 12}, end: {stop: 3}}");
    REQUIRE(std::holds_alternative<GirthsForm>(panel.form));
    const auto& form = std::get<GirthsForm>(panel.form);
    CHECK(form.smooth);
    REQUIRE(form.stations.size() == 2);
    CHECK(form.stations[1].at_mm == 1150);
    CHECK(form.stations[1].up_mm == 260);
    CHECK(form.stations[1].down_mm == 300);
    CHECK(panel.forward == Heading::down);
    CHECK(panel.edges.at(2).stop == Um{3000});
}

TEST_CASE("everything else about a panel") {
    const Panel panel =
        panel_of("size: [1000, 600]\n"
                 "crown: {wide: 24, high: -3}\n"
                 "measured: over\n"
                 "sides: both\n"
                 "faces: 2\n"
                 "count: 3\n"
                 "group: front\n"
                 "extra: jambs\n"
                 "direction: any\n"
                 "redo: 15 %\n"
                 "keep clear: radar\n"
                 "batch free: yes\n"
                 "seam: at lines\n"
                 "seam lines: [{line: [[300, 0], [300, 600]], use: always}]\n"
                 "inlays: {grille: {at: [700, 300], size: [200, 100], overlap: 8}}\n"
                 "allowances: {wrap: 1/2 in, bleed: 10, handling: 12, overlap: 9, "
                 "flush: 2}");
    REQUIRE(panel.crown.has_value());
    CHECK(panel.crown->wide_mm == 24);
    CHECK(panel.crown->high_mm == -3);
    CHECK(panel.crown->measured_over);
    CHECK(panel.sides == Sides::both);
    CHECK(panel.forward == Heading::left);
    CHECK(panel.faces == 2);
    CHECK(panel.count == 3);
    CHECK(panel.group == "front");
    CHECK(panel.extra == "jambs");
    CHECK(panel.direction == Direction::any);
    CHECK(panel.redo_percent == 15.0);
    CHECK(panel.keep_clear == "radar");
    CHECK(panel.batch_free);
    CHECK(panel.seam == SeamRule::at_lines);
    CHECK(panel.seam_lines.at(0).always);
    CHECK(panel.seam_lines[0].line.at(1) == Point{300, 600});
    CHECK(panel.inlays.at(0).name == "grille");
    CHECK(panel.inlays[0].at == Point{700, 300});
    CHECK(panel.inlays[0].wide_mm == 200);
    CHECK(panel.inlays[0].overlap == Um{8000});
    CHECK(panel.allowances.wrap == Um{12'700});
    CHECK(panel.allowances.handling->want == 12'000);
    CHECK(panel.allowances.handling->least == 12'000);
    CHECK(panel.allowances.flush == Um{2000});
}

TEST_CASE("what is not said stays open, or takes its stated default") {
    const Panel panel = panel_of("size: [1000, 600]");
    CHECK(panel.sides == Sides::centre);
    CHECK(!panel.forward.has_value());
    CHECK(!panel.direction.has_value());
    CHECK(!panel.crown.has_value());
    CHECK(panel.faces == 1);
    CHECK(panel.count == 1);
    CHECK(panel.edges.empty());
    CHECK(!panel.edges_none);
    CHECK(panel.seam == SeamRule::anywhere);
    CHECK(!panel.redo_percent.has_value());
    CHECK(!panel.allowances.wrap.has_value());
    CHECK(panel_of("{size: [1000, 600], sides: right}").forward == Heading::right);
    CHECK(panel_of("{size: [1000, 600], edges: none}").edges_none);
    const Panel handling =
        panel_of("{size: [1, 1], allowances: {handling: {want: 40, least: 20}}}");
    CHECK(handling.allowances.handling->least == 20'000);
}

TEST_CASE("openings and hardware") {
    const auto reading = read::vehicle(
        file("vehicle: T\n"
             "panels:\n"
             "  door:\n"
             "    size: [1000, 600]\n"
             "    openings:\n"
             "      handle: {outline: [[770, 480], [930, 480], [930, 520]], behind: door handles}\n"
             "      lamp: {outline: [[10, 10], [50, 10], [50, 50]], cut: table, wrap: 5, keep "
             "clear: lamp}\n"
             "    edges: {top: {wrap: 6, behind: door cards}}\n"
             "hardware:\n"
             "  door handles: {tool: six-lobe 25 driver, minutes: 12.5, clips: 2, count: 4, after: "
             "[door "
             "cards]}\n"
             "  door cards: {}\n"));
    CHECK(told(reading).empty());
    REQUIRE(reading.value.has_value());
    const Panel& door = reading.value->panels.at(0);
    CHECK(door.openings.at(0).name == "handle");
    CHECK(door.openings[0].behind == "door handles");
    CHECK(door.openings[0].cut == OpeningCut::on_vehicle);
    CHECK(!door.openings[0].wrap.has_value());
    CHECK(door.openings[1].cut == OpeningCut::at_table);
    CHECK(door.openings[1].wrap == Um{5000});
    CHECK(door.openings[1].keep_clear == "lamp");
    CHECK(door.edges.at(0).behind == "door cards");
    const Hardware& handles = reading.value->hardware.at(0);
    CHECK(handles.tool == "six-lobe 25 driver");
    CHECK(handles.minutes_each == 12.5);
    CHECK(handles.clips_each == 2);
    CHECK(handles.count == 4);
    CHECK(handles.after == std::vector<std::string>{"door cards"});
    CHECK(!reading.value->hardware.at(1).minutes_each.has_value());
}

TEST_CASE("allowances round up to the grid") {
    CHECK(panel_of("{size: [9, 9], allowances: {wrap: 0.0001 mm}}").allowances.wrap == Um{1});
    CHECK(panel_of("{size: [9, 9], edges: {all: {wrap: 1/128 in}}}").edges.at(0).wrap == Um{199});
}

} // namespace
} // namespace pelt::read_test
