// SPDX-License-Identifier: MIT
// What is wrong with a panel: the sentence, its place, its remedy.
#include "files.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

namespace pelt::read_test {
namespace {

using Cases = std::vector<std::pair<std::string, std::string>>;

/// Lines of a panel, and the faults told without "t.yaml:" and "panel 'hood': ".
void check(const Cases& cases) {
    for (const auto& [lines, wanted] : cases) {
        const auto& told_lines = lines;
        CAPTURE(told_lines);
        std::string got = faults_of_vehicle(vehicle_with(lines));
        const std::string panel = "panel 'hood': ";
        for (std::size_t at = got.find(panel); at != std::string::npos; at = got.find(panel))
            got.erase(at, panel.size());
        const std::string name = "t.yaml:";
        for (std::size_t at = got.find(name); at != std::string::npos; at = got.find(name))
            got.erase(at, name.size());
        CHECK(got == wanted + "\n");
    }
}

TEST_CASE("the whole sentence, once") {
    const auto reading =
        read::vehicle(file(vehicle_with("size: [1380, 905]\nedges: {all: {wrp: 12}}")));
    REQUIRE(reading.faults.size() == 1);
    CHECK(to_string(reading.faults[0]) ==
          "t.yaml:5:19: panel 'hood': 'wrp' is not a key of an edge; did you mean 'tuck'?\n"
          "      edges: {all: {wrp: 12}}\n"
          "                    ^");
    CHECK(!reading.value.has_value());
}

TEST_CASE("one shape, and only one") {
    check({
        {"forward: up", "3:3: it has no shape; give 'outline', 'size', 'girths' or 'surface'"},
        {"size: [1, 1]\noutline: [[0, 0], [9, 0], [9, 9]]",
         "4:5: it has both 'outline' and 'size'; keep the one that was measured"},
        {"surface: cap.obj\nforward: [1, 0, 0]\nup: [0, 0, 1]",
         "4:5: the scan's unit is not given; add 'surface units: mm', or what the scan is in"},
    });
}

TEST_CASE("keys that are unknown, not known yet, or elsewhere at home") {
    check({
        {"size: [1, 1]\nsidess: both",
         "5:5: 'sidess' is not a key of a panel; did you mean 'sides'?"},
        {"size: [1, 1]\nkeep_clear: radar",
         "5:5: 'keep_clear' is not a key of a panel; did you mean 'keep clear'?"},
        {"size: [1, 1]\nwrap: 12", "5:5: 'wrap' is not a key of a panel; 'wrap' belongs under "
                                   "'openings', 'edges' or 'allowances'"},
        {"size: [1, 1]\ntolerance: 2 m",
         "5:16: tolerance '2 m' is more than 1 m; give 0 mm to 1 m"},
        {"size: [1, 1]\nxyzzyplugh: 5", "5:5: 'xyzzyplugh' is not a key of a panel; its keys are "
                                        "'outline', 'size', 'girths', 'through stations', 'rise over "
                                        "spine', 'rise over girth', 'crown', 'measured' and 25 more"},
        {"size: [1, 1]\nedges: {all: {wrap:12}}",
         "5:19: after the colon of 'wrap:12' a blank is missing; put one between the key and its "
         "value"},
        {"size:[1, 1]", "4:5: after the colon of 'size:[1, 1]' a blank is missing; put one between "
                        "the key and its value"},
    });
}

TEST_CASE("lengths, counts and words out of bounds or out of kind") {
    check({
        {"size: [1380, 905 mmm]", "4:18: size: y '905 mmm' is not a length: 'mmm' is not a unit; "
                                  "the units are mm, cm, m, in, ft and yd"},
        {"size: [0, 905]", "4:12: size: x '0' is less than 1 mm; give 1 mm to 30 m"},
        {"size: [31 m, 905]", "4:12: size: x '31 m' is more than 30 m; give 1 mm to 30 m"},
        {"size: [1380]", "4:11: size is not two numbers; write it as [x, y]"},
        {"size: [1,380, 905]", "4:11: size has 3 numbers; write it as [x, y]; decimals stand after "
                               "a point, not a comma"},
        {"size: 1380 by 850",
         "4:11: size '1380 by 850' is not two lengths; write it as 1380 x 850"},
        {"size: 1380", "4:11: size is not two numbers; write it as [x, y]"},
        {"size:", "4:5: size is not two numbers; write it as [x, y]"},
        {"size: [[1], 2]", "4:12: size: x is a list; one plain value belongs here"},
        {"size: [9, 9]\ncount: 0", "5:12: count '0' is less than 1; give 1 to 10000"},
        {"size: [9, 9]\ncount: 10001", "5:12: count '10001' is more than 10000; give 1 to 10000"},
        {"size: [9, 9]\nfaces: 3", "5:12: faces '3' is more than 2; give 1 to 2"},
        {"size: [9, 9]\nforward: front",
         "5:14: forward 'front' is not known; it is one of 'right', "
         "'left', 'up' or 'down'"},
        {"size: [9, 9]\nsides: Both", "5:12: sides 'Both' is not known; did you mean 'both'?"},
        {"size: [9, 9]\nredo: 15",
         "5:11: redo '15' is not a percentage: its sign is missing; write "
         "15 %"},
        {"size: [9, 9]\nbatch free: true", "5:17: batch free 'true' is neither yes nor no; write "
                                           "yes or no"},
        {"size: [9, 9]\ngroup:", "5:5: group has no value; write it after the colon, or take the "
                                 "key out"},
        {"size: [9, 9]\ngroup: a/b", "5:12: group 'a/b' holds '/'; names hold no / , or =, since "
                                     "options list them"},
        {"size: [9, 9]\ngroup: ' a'", "5:12: group ' a' begins or ends with a blank; write plain "
                                      "words on one line"},
        {"size: [9, 9]\ngroup: \"a\\nb\"", "5:12: group 'a?b' holds a control character; write "
                                           "plain words on one line"},
        {"size: [9, 9]\ngroup: ''", "5:12: group is empty; write plain words on one line"},
        {"size: [9, 9]\ncrown: {wide: 6 m}", "5:19: wide '6 m' is more than 5 m; give -5 m to 5 m"},
        {"size: [9, 9]\ncrown: 24",
         "5:12: 'crown' is one figure, and the panel is not round; give the "
         "rise over the width and over the height: {wide: ..., high: "
         "...}"},
        {"size: [9, 9]\ncrown: {}", "5:5: 'crown' says nothing; give the rise over the width, "
                                    "'wide', and over the height, 'high'"},
        {"size: [9, 9]\nallowances: {wrap: 2 m}",
         "5:24: wrap '2 m' is more than 1 m; give 0 mm to 1 m"},
        {"size: [9, 9]\nthrough stations: smooth",
         "5:5: 'through stations' is for panels with 'girths'; take it out"},
    });
}

TEST_CASE("outlines that cannot be") {
    check({
        {"outline: [[0, 0], [9, 0]]", "4:5: the outline has 2 points; give three at least, or two "
                                      "and an arc"},
        {"outline: []", "4:5: the outline has 0 points; give three at least, or two and an arc"},
        {"outline: 12", "4:14: 'outline' is not a list of points; write it like [[0, 0], [400, 0], "
                        "[400, 300]]"},
        {"outline:", "4:5: 'outline' is not a list of points; write it like [[0, 0], [400, 0], "
                     "[400, 300]]"},
        {"outline: [[0, 0], [9, 0], [9, 0], [9, 9]]", "4:31: points 2 and 3 are the same; take one "
                                                      "of them out"},
        {"outline: [[0, 0], [9, 0], 9]", "4:31: point 3 is not two numbers; write it as [x, y]"},
        {"outline: [[0, 0], [9, 0], [9, 9], [0, 12,5]]",
         "4:39: point 4 has 3 numbers; write it as [x, y]; decimals stand after a point, not a "
         "comma"},
        {"outline: [[0, 0], [9, 0], {tp: [9, 9]}]",
         "4:32: 'tp' is not a key of a point of an outline; did you mean 'to'?"},
        {"outline: [{through: [1, 1], to: [0, 0]}, [9, 0], [9, 9]]",
         "4:16: an arc has no point to start from here; begin with a plain point, and put a "
         "closing "
         "arc at the end of the list"},
        {"outline: [[0, 0], {through: [20, 0], to: [9, 0]}, [9, 9]]",
         "4:23: the arc's point lies on the line through its ends, and not between them; give a "
         "point on the arc, about half-way"},
        {"outline: [[0, 0], {to: [9, 0], name: top}, [9, 9]]",
         "4:42: an edge cannot be named 'top', which has a meaning of its own; choose another "
         "name"},
        {"outline: [[0, 0], [9, 9], [9, 0], [0, 9]]",
         "4:39: the outline crosses or touches itself: edge 1-2 and edge 3-4; check these points "
         "and their order"},
        {"outline: [[0, 0], [9, 0], [4, 0], [4, 9]]",
         "4:31: the outline crosses or touches itself: edge 1-2 and edge 2-3; check these points "
         "and their order"},
        {"outline: [[0, 0], [9, 0], [4, 0]]",
         "4:15: the outline encloses no area; check its points"},
        {"outline: [[0, 0], [31 m, 0], [9, 9]]",
         "4:24: point 2: x '31 m' is more than 30 m; give -30 m to 30 m"},
        {"outline: [[-20 m, 0], [20 m, 0], [9, 9]]",
         "4:15: the outline is more than 30 m across; check the points and the units"},
        {"outline: [[0, 0], [9, 0], [9, 0.5]]",
         "4:15: the outline is less than 1 mm across; check the points and the units"},
        {"outline: [[0, 0], {through: [50, 80], to: [100, 0]}, [100, 50], [0, 50]]",
         "4:23: the outline crosses or touches itself: edge 1-2 and edge 4-1; check these points "
         "and their order"},
    });
}

TEST_CASE("girths that cannot be") {
    check({
        {"girths: [{at: 0, up: 9, down: 9}]",
         "4:5: 'girths' has one station; give two at least, at both ends of the panel"},
        {"girths: {at: 0}", "4:13: 'girths' is not a list; write it like [{at: ..., up: ..., down: "
                            "...}, ...]"},
        {"girths: [{at: 0, up: 9, down: 9}, {at: 0, up: 9, down: 9}]",
         "4:39: station 2 is not beyond the one before it; list stations by rising 'at', 1 mm "
         "apart "
         "at least"},
        {"girths: [{at: 0, up: 0, down: 0}, {at: 90, up: 9, down: 9}]",
         "4:14: station 1 reaches less than 1 mm from edge to edge; give 'up' and 'down' of at "
         "least 1 mm together"},
        {"girths: [{at: 0, up: 9}, {at: 90, up: 9, down: 9}]",
         "4:14: station 1 has no 'down'; add 'down: LENGTH'"},
        {"girths: [{at: 0, up: -9, down: 20}, {at: 90, up: 9, down: 9}]",
         "4:26: up '-9' is less than 0 mm; give 0 mm to 30 m"},
        {"girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 9, down: 9}]\ncrown: {wide: 3}",
         "5:5: 'crown' does not go with 'girths'; give 'rise over spine' and "
                     "'rise over girth' instead"},
    });
}

TEST_CASE("openings and inlays lie inside and apart") {
    const std::string size = "size: [100, 50]\n";
    const auto opening = [](const std::string& name, const std::string& points) {
        return name + ": {outline: " + points + "}";
    };
    check({
        {size + "openings: {a: {outline: [[90, 10], [110, 10], [95, 20]]}}",
         "5:16: opening 'a' crosses or touches the outline; it must lie inside"},
        {size + "openings: {a: {outline: [[0, 10], [10, 10], [10, 20]]}}",
         "5:16: opening 'a' crosses or touches the outline; it must lie inside"},
        {size + "openings: {a: {outline: [[200, 10], [210, 10], [210, 20]]}}",
         "5:16: opening 'a' lies outside of the outline; it must lie inside; its points are in the "
         "panel's own drawing"},
        {size + "openings: {" + opening("a", "[[10, 10], [30, 10], [30, 30], [10, 30]]") + ", " +
             opening("b", "[[20, 20], [40, 20], [40, 40]]") + "}",
         "5:72: opening 'b' crosses or touches opening 'a'; they must lie apart"},
        {size + "openings: {" + opening("a", "[[10, 10], [30, 10], [30, 30], [10, 30]]") + ", " +
             opening("b", "[[15, 15], [20, 15], [20, 20]]") + "}",
         "5:72: opening 'b' lies inside opening 'a'; they must lie apart"},
        {size + "inlays: {i: {at: [10, 10], size: [30, 10]}}",
         "5:14: inlay 'i' crosses or touches the outline; it must lie inside"},
        {size + "inlays: {i: {at: [30, 30], size: [10, 10]}, j: {at: [35, 30], size: [10, 10]}}",
         "5:49: inlay 'j' crosses or touches inlay 'i'; they must lie apart"},
        {size + "openings: {" + opening("a", "[[10, 10], [30, 10], [10, 30], [30, 30]]") + "}",
         "5:50: opening 'a' crosses or touches itself: edge 2-3 and edge 4-1; check these points "
         "and their order"},
        {size + "openings: {a: {wrap: 3}}",
         "5:16: opening 'a' has no 'outline'; add 'outline: [[X, Y], [X, Y], ...]', or "
         "'corners: [[X, Y], [X, Y]]'"},
        {size + "openings: {}", "5:15: 'openings' is empty; write it like {NAME: {outline: ..., corners: ..., tuck: ...}}"},
        {"girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 30, down: 9}]\n"
         "inlays: {i: {at: [20, 12], size: [10, 10]}}",
         "5:14: inlay 'i' crosses or touches the panel; it must lie inside"},
    });
    // A smooth edge may lie beyond the straight one, though never beyond its stations.
    check({{"girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 30, down: 9}]\n"
            "through stations: smooth\n"
            "inlays: {i: {at: [20, 12], size: [10, 10]}, j: {at: [50, 28], size: [10, 10]}}",
            "6:49: inlay 'j' crosses or touches the panel; it must lie inside"}});
}

TEST_CASE("edges are chosen by words that select one") {
    const std::string hood =
        "outline: [[0, 0], [100, 0], {to: [100, 50], name: shut line}, [0, 50]]\n";
    check({
        {hood + "edges: {1-3: {wrap: 3}}",
         "5:13: '1-3' is not an edge of this panel; the edge from point 1 is '1-2'"},
        {hood + "edges: {2-1: {wrap: 3}}",
         "5:13: '2-1' runs against the order of the points; write '1-2'"},
        {hood + "edges: {7-8: {wrap: 3}}",
         "5:13: '7-8' is not an edge of this panel; its points are 1 to 4, its edges '1-2' to "
         "'4-1'"},
        {hood + "edges: {shutline: {wrap: 3}}",
         "5:13: 'shutline' is not an edge of this panel; did you mean 'shut line'?"},
        {hood + "edges: {botom: {wrap: 3}}",
         "5:13: 'botom' is not an edge of this panel; did you mean 'bottom'?"},
        {hood + "edges: {xyzzy: {wrap: 3}}",
         "5:13: 'xyzzy' is not an edge of this panel; its edges are numbers such as '1-2', and "
         "'shut line', 'all', 'top', 'bottom', 'left' or 'right'"},
        {hood + "edges: {start: {wrap: 3}}",
         "5:13: 'start' is an edge of panels with girths only; did you mean 'left'?"},
        {hood + "edges: {all: {wrap: 3, stop: 2}}",
         "5:13: edge 'all' has both 'wrap' and 'stop'; film is turned around an edge or ends short "
         "of it; keep one of the two"},
        {hood + "edges: {all: {}}", "5:13: edge 'all' says nothing; give 'tuck', 'stop' or 'behind'"},
        {hood + "edges: {all: twelve}", "5:18: edge 'all' is 'twelve', not a map with keys; write it "
                                      "like {tuck: ..., stop: ..., behind: ...}"},
        {hood + "edges: nome", "5:12: 'edges' is not a map from names; write it like {NAME: {tuck: ..., stop: ..., behind: ...}}"},
        {"outline: [[0, 0], [100, 0], [50, 80]]\nedges: {top: {wrap: 3}}",
         "5:13: no edge of this panel looks to the top within 45 degrees; did you mean '2-3', "
         "which "
         "comes nearest?"},
        {"girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 9, down: 9}]\nedges: {left: {wrap: 3}}",
         "5:13: 'left' is not an edge of a panel with girths; did you mean 'start'?"},
        {"girths: [{at: 0, up: 9, down: 9}, {at: 90, up: 9, down: 9}]\nedges: {1-2: {wrap: 3}}",
         "5:13: '1-2' is not an edge of a panel with girths; its edges are 'top', 'bottom', "
         "'start' "
         "and 'end'"},
    });
}

TEST_CASE("an edge at 45 degrees counts as top or bottom") {
    const std::string diamond = "outline: [[0, -50], [50, 0], [0, 50], [-50, 0]]\n";
    CHECK(panel_of(diamond + "edges: {top: {wrap: 3}, bottom: {wrap: 4}}").edges.size() == 2);
    check({{diamond + "edges: {right: {wrap: 3}}",
            "5:13: no edge of this panel looks to the right within 45 degrees; did you mean '1-2', "
            "which comes nearest?"}});
}

TEST_CASE("seam lines cross the panel") {
    const std::string size = "size: [100, 50]\n";
    check({
        {size + "seam lines: [{line: [[0, 80], [100, 80]]}]",
         "5:18: the seam line does not cross the outline; its points are in the panel's own "
         "drawing"},
        {size + "seam lines: [{line: [[0, 20]]}]",
         "5:19: 'line' is not a list of 2 to 50 points; write it like [[0, 200], [900, 200]]"},
        {size + "seam lines: [{line: [[0, 20], [0, 20]]}]",
         "5:35: points 1 and 2 of the seam line are the same; take one of them out"},
        {size + "seam lines: [{line: [[0, 20], [60, 20], [60, 40], [30, 0]]}]",
         "5:18: the seam line crosses itself; its ends are lengthened straight; check its points"},
        {size + "seam lines: [{use: needed}]",
         "5:18: the seam line has no 'line'; add 'line: [[X, Y], [X, Y], ...]'"},
        {size + "seam: at lines", "5:5: 'seam: at lines' needs lines; give 'seam lines', or write "
                                  "never or anywhere"},
        {size + "seam: never\nseam lines: [{line: [[0, 20], [100, 20]], use: always}]",
         "6:18: a seam line with 'use: always' does not go with 'seam: never'; keep one of the "
         "two"},
    });
    CHECK(panel_of(size + "seam lines: [{line: [[40, 20], [60, 20]]}]").seam_lines.size() == 1);
}

} // namespace
} // namespace pelt::read_test
