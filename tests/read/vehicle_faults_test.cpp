// SPDX-License-Identifier: MIT
// What is wrong with a vehicle file as a whole.
#include "files.hpp"
#include "read/kind.hpp"

#include <doctest/doctest.h>

#include <string>

namespace pelt::read_test {
namespace {

const std::string head = "vehicle: T\npanels: {roof: {size: [9, 9], openings: {lamp: {outline: "
                         "[[2, 2], [4, 2], [4, 4]], behind: door handel}}}}\n";

TEST_CASE("the top of the file") {
    CHECK(faults_of_vehicle("vehicle: T\n") ==
          "t.yaml:1:1: the file has no 'panels'; add 'panels: {NAME: {size: [X, Y], forward: "
          "..., edges: ...}}'\n");
    CHECK(faults_of_vehicle("vehicle: T\npanels: {}\n") ==
          "t.yaml:2:9: 'panels' is empty; write it like {NAME: {size: [X, Y], forward: ..., edges: "
          "...}}\n");
    CHECK(faults_of_vehicle("panels: {roof: {size: [9, 9]}}\n") ==
          "t.yaml:1:1: the file has no 'vehicle'; add 'vehicle: ...'\n");
    CHECK(faults_of_vehicle("vehicle: T\npanels: {roof: }\n") ==
          "t.yaml:2:10: panel 'roof': it has no value; write it like {size: [X, Y], forward: "
          "..., edges: ...}\n");
    CHECK(faults_of_vehicle("vehicle: T\nbody: hatchbak\npanels: {roof: {size: [9, 9]}}\n") ==
          "t.yaml:2:7: body 'hatchbak' is not known; did you mean 'hatchback'?\n");
    CHECK(faults_of_vehicle("vehicle: T\nunits: inch\npanels: {roof: {size: [9, 9]}}\n") ==
          "t.yaml:2:8: units 'inch' is not known; did you mean 'in'?\n");
    CHECK(faults_of_vehicle("vehicle: T\npanels: {a/b: {size: [9, 9]}}\n") ==
          "t.yaml:2:10: panel 'a/b': its name 'a/b' holds '/'; names hold no / , or =, since "
          "options list them\n");
    CHECK(faults_of_vehicle("vehicle: T\ncurrency: EUR\npanels: {a: {size: [9, 9]}}\n") ==
          "t.yaml:2:1: 'currency' is not a key of a vehicle file; its keys are 'vehicle', "
          "'demonstration', 'body', 'units', 'panels', 'hardware', 'overall' and 'like'\n");
}

TEST_CASE("what is behind must be listed") {
    CHECK(faults_of_vehicle(head + "hardware: {door handles: {count: 4}}\n") ==
          "t.yaml:2:92: panel 'roof': behind: the file has no hardware 'door handel'; did you mean "
          "'door handles'?\n");
    CHECK(faults_of_vehicle(head) == "t.yaml:2:92: panel 'roof': behind: the file has no hardware "
                                     "'door handel'; list it under 'hardware'\n");
    CHECK(faults_of_vehicle(head + "hardware: none\n") ==
          "t.yaml:3:11: 'hardware' is not a map from names; write it like {NAME: {tool: ..., "
          "minutes: ..., clips: ...}}\n");
}

TEST_CASE("hardware comes off in some order") {
    const std::string panels = "vehicle: T\npanels: {roof: {size: [9, 9]}}\n";
    CHECK(faults_of_vehicle(panels + "hardware:\n  a: {after: [b]}\n  b: {after: c}\n  c: {after: "
                                     "[a]}\n  d: {after: [a]}\n") ==
          "t.yaml:4:3: 'a' comes after 'b' comes after 'c' comes after 'a': none of them can come "
          "off first; take one name out of 'after'\n");
    CHECK(faults_of_vehicle(panels + "hardware: {a: {after: [a]}}\n") ==
          "t.yaml:3:12: 'a' comes after itself: none of them can come off first; take one name out "
          "of 'after'\n");
    CHECK(faults_of_vehicle(panels + "hardware: {a: {after: [b]}}\n") ==
          "t.yaml:3:23: after: the file has no hardware 'b'; it has 'a'\n");
    CHECK(
        faults_of_vehicle(panels + "hardware: {a: {minutes: -1, clips: 1.5}}\n") ==
        "t.yaml:3:25: minutes '-1' is less than 0; give 0 to 10000\n"
        "t.yaml:3:36: clips '1.5' is not a whole number: it has decimals; write digits only, such "
        "as 4\n");
}

TEST_CASE("all faults of a file come at once, by place") {
    CHECK(
        faults_of_vehicle("vehicle: T\n"
                          "units: inch\n"
                          "panels:\n"
                          "  hood: {size: [1, x], color: red}\n"
                          "  hood: {size: [2, 2]}\n"
                          "  roof: {forward: up}\n"
                          "hardware: {a: {tol: x}}\n") ==
        "t.yaml:2:8: units 'inch' is not known; did you mean 'in'?\n"
        "t.yaml:4:20: panel 'hood': size: y 'x' is not a length; write it like 25, 25 mm, 2.5 ft, "
        "23 1/2 in or 5 ft 3 in\n"
        "t.yaml:4:24: panel 'hood': 'color' is not a key of a panel; its keys are 'outline', "
        "'size', 'girths', 'through stations', 'rise over spine', 'rise over girth', 'crown', "
        "'measured' and 25 more\n"
        "t.yaml:5:3: 'hood' stands here again, after line 4; keep one of the two\n"
        "t.yaml:6:3: panel 'roof': it has no shape; give 'outline', 'size', 'girths' or 'surface'\n"
        "t.yaml:7:16: 'tol' is not a key of a piece of hardware; did you mean 'tool'?\n");
}

TEST_CASE("a hundred faults are listed, the rest are counted") {
    std::string text = "vehicle: T\npanels:\n";
    for (int i = 1; i <= 130; ++i)
        text += "  p" + std::to_string(i) + ": {sise: [1, 1]}\n";
    const auto reading = read::vehicle(file(text));
    CHECK(reading.faults.size() == 100);
    CHECK(reading.unlisted == 30);
    CHECK(reading.faults.back().place.line == 102);
}

TEST_CASE("the kind of a file is told by its key") {
    const auto kind = [](const std::string& text) { return read::kind_of(file(text)); };
    // Without parsing, where the first line tells it and no other one could.
    CHECK(kind("# mine\n\nfilm: x\nroll: [\n").value == read::FileKind::film);
    CHECK(!kind("film: x\nvehicle: y\n").value.has_value());
    CHECK(!kind("film: x\n'vehicle': y\n").value.has_value());
    CHECK(kind("units: mm\nvehicle: y\n").value == read::FileKind::vehicle);
    CHECK(kind("vehicle: V\nnonsense: 1\n").value == read::FileKind::vehicle);
    CHECK(kind("roll: {width: 1}\nfilm: F\n").value == read::FileKind::film);
    CHECK(told(kind("vehicle: V\nfilm: F\n")) ==
          std::vector<std::string>{"t.yaml:2:1: the file has both 'vehicle' and 'film'; put each "
                                   "into a file of its own"});
    CHECK(kind("stock: []\n").value == read::FileKind::stock);
    CHECK(kind("shop: S\n").value == read::FileKind::shop);
    CHECK(kind("jobs: []\n").value == read::FileKind::jobs);
    CHECK(kind("# two jobs\n---\njob: A\nvehicle: V\nfilm: F\n").value ==
          read::FileKind::jobs);
    CHECK(told(kind("panels: {}\n")) ==
          std::vector<std::string>{"t.yaml:1:1: the file names neither a vehicle nor a film; begin "
                                   "it with 'vehicle: NAME' or 'film: NAME'"});
    CHECK(told(kind("vehicle: [\n")).empty()); // its reader tells
    CHECK(told(kind("units: mm\nvehicle: [\n")).size() == 1);
}

} // namespace
} // namespace pelt::read_test
