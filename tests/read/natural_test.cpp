// SPDX-License-Identifier: MIT
// What people write of themselves is read, and older words are.
#include "files.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace pelt::read_test {
namespace {

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

Point far_corner(const std::string& size, const std::string& units = "mm") {
    const auto reading = read::vehicle(
        file("vehicle: T\nunits: " + units + "\npanels: {hood: {size: " + size + "}}\n"));
    for (const std::string& line : told(reading))
        FAIL_CHECK(line);
    REQUIRE(reading.value.has_value());
    return std::get<OutlineForm>(reading.value->panels.at(0).form).segments.at(2).to;
}

std::string faults_with(const std::string& panel_lines) {
    return faults_of_vehicle(vehicle_with(panel_lines));
}

TEST_CASE("a size as x by y") {
    CHECK(far_corner("1380 x 850") == Point{1380, 850});
    CHECK(far_corner("1380x850") == Point{1380, 850});
    CHECK(far_corner("1380 × 850 mm") == Point{1380, 850});
    CHECK(far_corner("138 x 85", "cm") == Point{1380, 850});
    CHECK(far_corner("54 x 33 1/2 in") == Point{1371.6, 850.9});
    CHECK(far_corner("1.38 m X 85 cm") == Point{1380, 850});
    CHECK(has(faults_with("size: 1380 x"), "size: y"));
    CHECK(has(faults_with("size: x 850"), "size: x"));
    CHECK(has(faults_with("size: 0 x 850"), "less than 1 mm"));
    CHECK(has(faults_with("size: 1380"), "size is not two numbers"));
    CHECK(has(faults_with("size: 54 in * 33 1/2 in"), "; write it as 54 in x 33 1/2 in"));
    CHECK(has(faults_with("size: wide by high"), "write it as [x, y]"));
}

TEST_CASE("a length in place of a map of an edge is its tuck") {
    const Panel all = panel_of("size: [100, 50]\nedges: 12");
    REQUIRE(all.edges.size() == 1);
    CHECK(all.edges[0].word == "all");
    CHECK(all.edges[0].wrap == 12'000);
    const Panel some = panel_of("size: [100, 50]\nedges: {all: 12, top: 1 cm, bottom: {stop: 3}}");
    REQUIRE(some.edges.size() == 3);
    CHECK(some.edges[0].wrap == 12'000);
    CHECK(some.edges[1].wrap == 10'000);
    CHECK(some.edges[2].stop == 3'000);
    CHECK(has(faults_with("size: [100, 50]\nedges: 12 apples"), "edge 'all' '12 apples'"));
    CHECK(has(faults_with("size: [100, 50]\nedges: {top: 2 km}"), "edge 'top' '2 km'"));
    CHECK(has(faults_with("size: [100, 50]\nedges: {top: wide}"), "edge 'top' is 'wide', not a map"));
}

TEST_CASE("front and rear are edges of sides and tops, by forward") {
    const auto words = [](const std::string& lines) {
        std::string out;
        for (const EdgeRule& rule : panel_of(lines).edges)
            out += rule.word + " ";
        return out;
    };
    const std::string edges = "size: [100, 50]\nedges: {front: 15, rear: 4}\n";
    CHECK(words(edges + "forward: up") == "top bottom ");
    CHECK(words(edges + "forward: right") == "right left ");
    CHECK(words(edges + "sides: both") == "left right ");
    CHECK(words(edges + "sides: right") == "right left ");
    CHECK(words("girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 9, down: 9}]\nforward: left\n"
                "edges: {front: 3, rear: 4}") == "start end ");
    CHECK(words("outline: [[0, 0], [90, 0], {to: [90, 50], name: front}, [0, 50]]\nforward: left\n"
                "edges: {front: 3}") == "front ");
    CHECK(has(faults_with("size: [100, 50]\nedges: {front: 15}"),
              "which edge is the front one is not known; give 'forward'"));
    CHECK(has(faults_with("size: [100, 50]\nlies: rear\nedges: {rear: 15}"),
              "'rear' is no edge of a panel on the front or the rear face"));
}

TEST_CASE("a round panel has one crown") {
    const std::string round =
        "outline: [[-50, 0], {through: [0, -50], to: [50, 0]}, {through: [0, 50], to: [-50, 0]}]\n";
    const Panel panel = panel_of(round + "crown: 9");
    REQUIRE(panel.crown.has_value());
    CHECK(panel.crown->wide_mm == 9);
    CHECK(panel.crown->high_mm == 9);
    CHECK(panel_of(round + "crown: -9").crown->high_mm == -9);
    CHECK(panel_of("size: [100, 50]\ncrown: 0").crown->wide_mm == 0);
    CHECK(has(faults_with("size: [100, 100]\ncrown: 9"),
              "'crown' is one figure, and the panel is not round; give the rise over the width"));
    CHECK(has(faults_with("outline: [[-50, 0], {through: [0, -40], to: [50, 0]}, {through: [0, 40], "
                          "to: [-50, 0]}]\ncrown: 9"),
              "not round"));
}

TEST_CASE("an opening and an inlay by two corners") {
    const Panel panel = panel_of("size: [400, 300]\n"
                                 "openings:\n"
                                 "  a: {corners: [[100, 80], [40, 20]]}\n"
                                 "  b: {outline: [[200, 20], [300, 80]]}\n"
                                 "inlays:\n"
                                 "  c: {corners: [[100, 250], [200, 150]]}");
    REQUIRE(panel.openings.size() == 2);
    CHECK(panel.openings[0].form.segments.at(0).to == Point{40, 20});
    CHECK(panel.openings[0].form.segments.at(2).to == Point{100, 80});
    CHECK(panel.openings[1].form.segments.at(1).to == Point{300, 20});
    REQUIRE(panel.inlays.size() == 1);
    CHECK(panel.inlays[0].at == Point{150, 200});
    CHECK(panel.inlays[0].wide_mm == 100);
    CHECK(panel.inlays[0].high_mm == 100);
    const std::string size = "size: [400, 300]\n";
    CHECK(has(faults_with(size + "openings: {a: {corners: [[1, 2], [1, 9]]}}"),
              "corners enclose less than 1 mm"));
    CHECK(has(faults_with(size + "openings: {a: {corners: [[1, 2]]}}"), "corners is not two points"));
    CHECK(has(faults_with(size + "openings: {a: {corners: [[1, 2], [3, 4]], outline: [[0, 0], [1, 0], "
                                 "[1, 1]]}}"),
              "both 'outline' and 'corners'"));
    CHECK(has(faults_with(size + "openings: {a: {behind: x}}"), "has no 'outline'; add 'outline"));
    CHECK(has(faults_with(size + "inlays: {a: {at: [9, 9]}}"), "inlay 'a' has no 'size'"));
    CHECK(has(faults_with(size + "inlays: {a: {at: [9, 9], corners: [[1, 1], [5, 5]]}}"),
              "has 'corners' beside 'at' or 'size'"));
}

TEST_CASE("older words of keys are read, and both words in one map are a repeated key") {
    const Panel panel = panel_of("size: [100, 50]\nedges: {all: {wrap: 12}}\n"
                                 "allowances: {wrap: 3, handling: 40}");
    CHECK(panel.edges.at(0).wrap == 12'000);
    CHECK(panel.allowances.wrap == 3'000);
    CHECK(panel.allowances.handling->want == 40'000);
    const auto film = read::film(file("film: F\nroll: {width: 1524}\n"
                                      "allowances: {wrap: 1, handling: {want: 9, least: 2}, gap: 4}\n"));
    REQUIRE(film.value.has_value());
    CHECK(film.value->allowances.wrap == 1'000);
    CHECK(film.value->allowances.handling.least == 2'000);
    CHECK(film.value->allowances.gap == 4'000);
    const auto now = read::film(
        file("film: F\nroll: {width: 1524}\n"
             "allowances: {tuck: 1, margin: {want: 9, least: 2}, spacing: 4}\n"));
    REQUIRE(now.value.has_value());
    CHECK(now.value->allowances.gap == 4'000);
    CHECK(faults_with("size: [100, 50]\nedges: {all: {wrap: 12, tuck: 12}}") ==
          "t.yaml:5:29: panel 'hood': 'tuck' is another word for 'wrap', which stands in line 5; keep "
          "one of the two\n");
    CHECK(has(faults_of_film("film: F\nroll: {width: 1524}\nallowances:\n  spacing: 4\n  gap: 4\n"),
              "t.yaml:5:3: 'gap' is another word for 'spacing', which stands in line 4"));
    CHECK(has(faults_with("size: [100, 50]\nedges: {all: {wrap: far}}"), "wrap 'far' is not a length"));
}

TEST_CASE("the rises of a panel with girths go together, and with nothing else") {
    const std::string girths = "girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 9, down: 9}]\n";
    const Panel panel = panel_of(girths + "rise over spine: 8\nrise over girth: -2");
    CHECK(std::get<GirthsForm>(panel.form).rise_over_spine_mm == 8);
    CHECK(std::get<GirthsForm>(panel.form).rise_over_girth_mm == -2);
    CHECK(has(faults_with(girths + "rise over spine: 8"),
              "'rise over spine' needs 'rise over girth' beside it"));
    CHECK(has(faults_with("size: [9, 9]\nrise over spine: 1\nrise over girth: 1"),
              "'rise over spine' is for panels with 'girths'; give the rise as 'crown' instead"));
    CHECK(has(faults_with(girths + "crown: {wide: 3}"),
              "'crown' does not go with 'girths'; give 'rise over spine' and 'rise over girth'"));
}

TEST_CASE("what is never covered is no panel") {
    for (const char* what : {"lamp", "plate", "camera", "ultrasonic"}) {
        CAPTURE(what);
        CHECK(has(faults_with(std::string("size: [90, 90]\nkeep clear: ") + what),
                  "film never covers what is kept clear for a"));
    }
    CHECK(panel_of("size: [90, 90]\nkeep clear: radar").keep_clear == "radar");
    CHECK(panel_of("size: [90, 90]\nkeep clear: aerial").keep_clear == "aerial");
}

TEST_CASE("parts belong to panels, to groups and to sides of panels that there are") {
    const std::string head = "vehicle: T\npanels:\n  door: {sides: both, size: [90, 90], group: g}\n"
                             "hardware: {card: {with: ";
    for (const char* with : {"door", "g", "door/left", "[door/left, g]"}) {
        CAPTURE(with);
        CHECK(faults_of_vehicle(head + with + "}}\n").empty());
    }
    CHECK(has(faults_of_vehicle(head + "doors}}\n"), "with: the file has no panel 'doors'; did you "
                                                     "mean 'door'?"));
    CHECK(has(faults_of_vehicle(head + "door/center}}\n"), "has no panel 'door/center'"));
}

TEST_CASE("a rear door is a van's where the file tells, and in doubt where nothing does") {
    const auto rear_door = [](const std::string& head, const std::string& panels) {
        const auto reading = read::vehicle(
            file("vehicle: T\n" + head + "panels:\n  rear door: {sides: both, size: [700, 1700]}\n" +
                 panels));
        REQUIRE(reading.value.has_value());
        return reading.value->panels.front();
    };
    const std::string other = "{sides: both, size: [900, 900]}\n";
    CHECK(rear_door("body: medium panel van\n", "").forward == Heading::up);
    CHECK(rear_door("", "  sliding door: " + other).forward == Heading::up);
    CHECK(rear_door("", "  side wall: " + other).forward == Heading::up);
    CHECK(rear_door("body: wagon\n", "").forward == Heading::left);
    // A pickup's cab has a rear wall, too.
    CHECK(rear_door("body: pickup\n", "  cab rear wall: " + other).forward == Heading::left);
    CHECK(rear_door("", "  bed side: " + other + "  cab rear wall: " + other).forward ==
          Heading::left);
    const Panel of_car = rear_door("", "  front door: " + other);
    CHECK(of_car.forward == Heading::left);
    CHECK_FALSE(of_car.lies_in_doubt);
    CHECK(rear_door("", "").lies_in_doubt);
    CHECK(rear_door("", "  cab door: " + other).lies_in_doubt);
}

TEST_CASE("a word that no key has asks for the key that is meant") {
    const auto asks = [](const std::string& line, const std::string& meant) {
        const std::string said = faults_with(line);
        CAPTURE(said);
        return has(said, "did you mean " + meant + "?");
    };
    CHECK(asks("width: 9", "'size'"));
    CHECK(asks("size: [9, 9]\ncurvature: 9", "'crown', 'rise over spine' or 'rise over girth'"));
    CHECK(asks("size: [9, 9]\nholes: 9", "'openings'"));
    CHECK(asks("size: [9, 9]\ngrain: up", "'forward'"));
    CHECK(asks("size: [9, 9]\nquantity: 2", "'count'"));
    CHECK(asks("size: [9, 9]\nsplits: 2", "'seam lines' or 'seam'"));
    CHECK(asks("sizes: [9, 9]", "'size'"));
    CHECK(has(faults_of_vehicle("vehicle: T\nbody: lorry\npanels: {a: {size: [9, 9]}}\n"),
              "did you mean 'box van'?"));
}

TEST_CASE("where nothing is near, the keys that share a word come first") {
    const std::string said = faults_with("size: [9, 9]\nclear view zone: 9");
    CHECK(has(said, "its keys are 'keep clear'"));
}

} // namespace
} // namespace pelt::read_test
