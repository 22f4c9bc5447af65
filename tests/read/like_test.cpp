// SPDX-License-Identifier: MIT
// Vehicles that are like others: what is scaled how, what is replaced, what is told.
#include "files.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace pelt::read_test {
namespace {

const std::string other_text = R"(vehicle: Other
demonstration: yes
body: hatchback
units: mm
overall: {length: 4000, width: 1800, height: 1400}
panels:
  hood:
    outline: [[0, 0], [1000, 0], [1000, 800], {through: [500, 900], to: [0, 800]}]
    forward: up
    crown: {wide: 40, high: 20}
    edges: {all: {wrap: 12}, 2-3: {wrap: 30}}
    openings: {jet: {outline: [[100, 100], [200, 100], [200, 200]], behind: jets}}
    inlays: {plate: {at: [500, 300], size: [100, 50]}}
    seam: at lines
    seam lines: [{line: [[500, -10], [500, 910]]}]
  front door: {sides: both, size: [1000, 600], crown: {high: 30}}
  front bumper:
    girths: [{at: 0, up: 100, down: 100}, {at: 2000, up: 200, down: 100}]
    forward: down
  mirror cap: {sides: both, size: [250, 180]}
  roof bars: {sides: both, size: [1500, 60]}
hardware:
  jets: {count: 2}
)";

/// Finds the vehicle above under the name "other".
read::FindInstalled finder() {
    static const std::string path = [] {
        const auto folder = std::filesystem::temp_directory_path() / "pelt-like-test";
        std::filesystem::create_directories(folder);
        std::ofstream(folder / "other.yaml") << other_text;
        return (folder / "other.yaml").string();
    }();
    return [](const std::string& name, Faults&) {
        return name == "other" ? std::optional(path) : std::nullopt;
    };
}

read::Reading<Vehicle> like_other(const std::string& more) {
    return read::vehicle(file("vehicle: V\nlike: other\n" + more, "v.yaml"), finder());
}

std::string faults_like(const std::string& more) {
    std::string out;
    for (const std::string& line : told(like_other(more)))
        out += line + "\n";
    return out;
}

Vehicle vehicle_like(const std::string& more) {
    const auto reading = like_other(more);
    for (const Fault& fault : reading.faults)
        if (stops({fault}))
            FAIL_CHECK(to_string(fault, false));
    REQUIRE(reading.value.has_value());
    return *reading.value;
}

const Panel& panel(const Vehicle& vehicle, const std::string& name) {
    for (const Panel& one : vehicle.panels)
        if (one.name == name)
            return one;
    FAIL("no panel " << name);
    return vehicle.panels.front();
}

const OutlineForm& outline(const Panel& panel) {
    return std::get<OutlineForm>(panel.form);
}

TEST_CASE("panels are scaled along the axes of the vehicle") {
    // Length by 1.1, width by 1.05, height by half of 1.2's excess: 1.1.
    const Vehicle v = vehicle_like("overall: {length: 4400, width: 1890, height: 1680}\n");
    CHECK(is_guessed(v));
    CHECK(v.demonstration);
    CHECK(v.body == "hatchback");
    CHECK(v.like == "Other");
    CHECK(v.also_read.size() == 1);
    REQUIRE(v.panels.size() == 5);
    REQUIRE(v.hardware.size() == 1);

    const Panel& hood = panel(v, "hood"); // forward is up: x is width, y is length
    CHECK(outline(hood).segments[1].to.x == doctest::Approx(1050));
    CHECK(outline(hood).segments[2].to.y == doctest::Approx(880));
    CHECK(outline(hood).segments[3].through->y == doctest::Approx(990));
    CHECK(hood.crown->wide_mm == doctest::Approx(40 * 1.075));
    CHECK(hood.crown->high_mm == doctest::Approx(20 * 1.075));
    CHECK(hood.openings[0].form.segments[1].to.x == doctest::Approx(210));
    CHECK(hood.inlays[0].at.y == doctest::Approx(330));
    CHECK(hood.inlays[0].wide_mm == doctest::Approx(105));
    CHECK(hood.seam_lines[0].line[0].x == doctest::Approx(525));
    CHECK(*hood.edges[0].wrap == 12 * um_per_mm); // tucks keep their size

    const Panel& door = panel(v, "front door"); // the nose to the left: x is length, y height
    CHECK(outline(door).segments[2].to.x == doctest::Approx(1100));
    CHECK(outline(door).segments[2].to.y == doctest::Approx(660));

    const Panel& bumper = panel(v, "front bumper"); // a front: x is width, y height
    const auto& girths = std::get<GirthsForm>(bumper.form);
    CHECK(girths.stations[1].at_mm == doctest::Approx(2100));
    CHECK(girths.stations[1].up_mm == doctest::Approx(220));

    const Panel& mirror = panel(v, "mirror cap"); // keeps its size
    CHECK(outline(mirror).segments[2].to.x == 250);
    CHECK(mirror.guessed);
}

TEST_CASE("what is not said over all is as the other's") {
    const Vehicle v = vehicle_like("overall: {length: 4400}\n");
    CHECK(v.overall.width_mm == 1800);
    CHECK(outline(panel(v, "hood")).segments[1].to.x == doctest::Approx(1000));
    CHECK(outline(panel(v, "hood")).segments[2].to.y == doctest::Approx(880));
    const Vehicle same = vehicle_like("");
    CHECK(same.overall.length_mm == 4000);
    CHECK(is_guessed(same));
}

TEST_CASE("keys of this file replace the other's, and a form of its own drops what lay in it") {
    const Vehicle v = vehicle_like("overall: {length: 4400}\npanels:\n"
                                   "  hood: {size: [990, 780], forward: up, crown: {wide: 45}}\n"
                                   "  front door: {redo: 7 %, crown: {high: 33}}\n"
                                   "  roof bars: no\n"
                                   "  spoiler: {size: [900, 200], forward: up}\n");
    const Panel& hood = panel(v, "hood");
    CHECK_FALSE(hood.guessed);
    CHECK(outline(hood).segments[2].to.x == 990);
    CHECK(hood.crown->wide_mm == 45);
    CHECK(hood.openings.empty());
    CHECK(hood.inlays.empty());
    CHECK(hood.seam_lines.empty());
    CHECK(hood.edges.empty());
    CHECK(hood.seam == SeamRule::anywhere); // "at lines", and the lines are gone
    const Panel& door = panel(v, "front door");
    CHECK(door.guessed);
    CHECK(*door.redo_percent == 7);
    CHECK(door.crown->high_mm == 33); // measured
    CHECK(outline(door).segments[2].to.x == doctest::Approx(1100));
    CHECK_FALSE(panel(v, "spoiler").guessed);
    CHECK(v.panels.size() == 5);
}

TEST_CASE("this file's unit is its own, and the other's the other's") {
    const Vehicle v = vehicle_like("units: in\noverall: {length: 173.228}\npanels:\n"
                                   "  front door: {openings: {hole: {outline: [[1, 1], [2, 1], "
                                   "[2, 2]], wrap: 1/4}}}\n");
    const Panel& door = panel(v, "front door");
    CHECK(outline(door).segments[2].to.x == doctest::Approx(1100).epsilon(1e-4));
    CHECK(door.openings[0].form.segments[1].to.x == doctest::Approx(50.8));
}

TEST_CASE("what does not go together is told") {
    CHECK(faults_like("panels: {roof rack: no}\n") ==
          "v.yaml:3:10: the other vehicle has no panel 'roof rack' to leave out; did you mean "
          "'roof bars'?\n");
    CHECK(
        faults_like("panels: {roof bars: none}\n") ==
        "v.yaml:3:21: panel 'roof bars': it is 'none', not a map with keys; write 'no' where this "
        "vehicle has none\n");
    CHECK(faults_like("overall: {length: 9000}\n") ==
          "v.yaml:3:1: the overall length, 9000 mm, is nothing like the other vehicle's 4000 mm; "
          "check it and its unit, or choose a vehicle that is more like it\n");
    const auto mirrors = like_other("overall: {width: 2000}\n");
    CHECK(mirrors.value.has_value());
    CHECK(told(mirrors) ==
          std::vector<std::string>{"v.yaml:3:1: the overall width, 2000 mm, is 11 % more than the "
                                   "other vehicle's 1800 mm; were the mirrors counted? It is meant "
                                   "without them"});
    CHECK(faults_of_vehicle("vehicle: V\nlike: nobody\n")
              .find("there is no file 'nobody' beside this one, and no installed vehicle of that "
                    "name; 'pelt list' shows what is installed") != std::string::npos);
    CHECK(faults_of_vehicle("vehicle: V\nlike: ../other.yaml\n")
              .find("the vehicle '../other.yaml' is not in this file's folder") !=
          std::string::npos);
}

TEST_CASE("no chains") {
    const auto folder = std::filesystem::temp_directory_path() / "pelt-like-test";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "second.yaml") << "vehicle: S\nlike: other\n";
    const auto reading = read::vehicle(
        file("vehicle: V\nlike: second.yaml\n", (folder / "v.yaml").string()), finder());
    CHECK_FALSE(reading.value.has_value());
    bool said = false;
    for (const std::string& line : told(reading))
        said = said || line.find("'second.yaml' is like another vehicle itself; name the one that "
                                 "was measured") != std::string::npos;
    CHECK(said);
}

TEST_CASE("a vehicle scaled without a file of its own") {
    const auto other = read::vehicle(file(other_text));
    REQUIRE(other.value);
    const auto scaled = read::scaled_to(*other.value, {4400, 1800, 1400});
    REQUIRE(scaled.value);
    CHECK(outline(panel(*scaled.value, "hood")).segments[2].to.y == doctest::Approx(880));
    CHECK(panel(*scaled.value, "roof bars").guessed);
    CHECK_FALSE(read::scaled_to(*scaled.value, {4400, 1800, 1400}).value.has_value());
    Vehicle bare = *other.value;
    bare.overall = {};
    CHECK(stops(read::scaled_to(bare, {4400, 1800, 1400}).faults));
}

TEST_CASE("a table does not make measured panels of guessed ones") {
    const Vehicle v = vehicle_like("overall: {length: 4400}\npanels:\n"
                                   "  hood: {size: [990, 780], forward: up}\n");
    const std::string text = read::table_of(v).text;
    CHECK(text.find("\nhood,,,990,780,") != std::string::npos);
    CHECK(text.find("\nfront door,both,,,,") != std::string::npos);
}

TEST_CASE("a part that belongs to a panel which this vehicle has not is none of its mistakes") {
    const auto folder = std::filesystem::temp_directory_path() / "pelt-like-test";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "with.yaml")
        << "vehicle: W\noverall: {length: 4000}\npanels:\n"
           "  hood: {size: [990, 780], forward: up}\n  bars: {size: [990, 78], forward: up}\n"
           "hardware:\n  feet: {with: [bars, hood]}\n  caps: {with: bars}\n";
    const auto reading =
        read::vehicle(file("vehicle: V\nlike: with.yaml\npanels: {bars: no}\n",
                           (folder / "v.yaml").string()));
    for (const std::string& line : told(reading))
        FAIL_CHECK(line);
    REQUIRE(reading.value.has_value());
    CHECK(reading.value->hardware[0].with == std::vector<std::string>{"hood"});
    CHECK(reading.value->hardware[1].with.empty());
}

TEST_CASE("a diagonal must agree with the corners") {
    const std::string good = "outline: [[0, 0], [400, 0], [400, 300], [0, 300]]\nforward: up\n";
    const Panel right = panel_of(good + "diagonal: {from: 1, to: 3, length: 502}");
    REQUIRE(std::get<OutlineForm>(right.form).diagonal.has_value());
    CHECK(std::get<OutlineForm>(right.form).diagonal->length_mm == 502);
    CHECK(faults_of_vehicle(vehicle_with(good + "diagonal: {from: 1, to: 3, length: 504}")) ==
          "t.yaml:6:5: panel 'hood': from corner 1 to 3 the outline is 500 mm, but the tape says "
          "504 mm; measure both again; a corner is read wrong, or the diagonal is\n");
    panel_of(good + "tolerance: 5\ndiagonal: {from: 1, to: 3, length: 504}");
    CHECK(faults_of_vehicle(vehicle_with(good + "diagonal: {from: 1, to: 5, length: 500}")) ==
          "t.yaml:6:29: panel 'hood': the outline has no corner 5; its corners are 1 to 4\n");
    CHECK(faults_of_vehicle(vehicle_with(good + "diagonal: {from: 2, to: 2, length: 500}")) ==
          "t.yaml:6:5: panel 'hood': the diagonal begins and ends at one corner; give two corners "
          "that are not neighbors\n");
    CHECK(faults_of_vehicle(vehicle_with(
              "girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 9, down: 9}]\nforward: up\n"
              "diagonal: {from: 1, to: 3, length: 500}")) ==
          "t.yaml:6:5: panel 'hood': 'diagonal' is for panels with 'outline' or 'size'; take it "
          "out\n");
    panel_of("size: [400, 300]\nforward: up\ndiagonal: {from: 2, to: 4, length: 500}");
}

} // namespace
} // namespace pelt::read_test
