// SPDX-License-Identifier: MIT
// What a file may ask for: a sentence where it is too much, before the work is done.
#include "files.hpp"
#include "mesh_files.hpp"
#include "model/limits.hpp"
#include "read/context.hpp"
#include "read/known_scans.hpp"
#include "read/mesh/mesh_file.hpp"
#include "read/stays_inside.hpp"
#include "read/suggest.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <string>
#include <vector>

namespace pelt::read_test {
namespace {

bool says(const std::string& text, const std::string& sentence) {
    return text.find(sentence) != std::string::npos;
}

/// An outline with so many teeth: two points each, and two more.
std::string comb(int teeth) {
    std::string text = "outline: [";
    for (int i = 0; i < teeth; ++i)
        text += "[" + std::to_string(4 * i) + ", 0],\n [" + std::to_string(4 * i + 2) + ", 50],\n ";
    return text + "[" + std::to_string(4 * teeth) + ", 0],\n [" + std::to_string(4 * teeth) +
           ", 200],\n [0, 200]]\n";
}

} // namespace

TEST_CASE("a line is as long as the parser can hold, and no longer") {
    const std::string longest(limit::line_bytes - 9, 'x');
    CHECK_FALSE(says(faults_of_vehicle("vehicle: " + longest + "\n"), "bytes"));
    CHECK(
        faults_of_vehicle("units: mm\nvehicle: " + longest + "x\n") ==
        "t.yaml:2:1: this line is longer than 100,000 bytes; break it after a comma, or put every "
        "entry on a line of its own\n");
    // Where nothing limits the line, a file of 8 MiB of these takes two gigabytes.
    for (const std::string some : {"[", "{", "[],", "&a x,", "a: b,"}) {
        std::string text = "vehicle: [";
        while (text.size() <= limit::line_bytes)
            text += some;
        CHECK(says(faults_of_vehicle(text), "this line is longer than 100,000 bytes"));
    }
}

TEST_CASE(
    "an outline has as many points as can be checked and cut, those along its arcs included") {
    CHECK(faults_of_vehicle(vehicle_with(comb(2'498) + "forward: up\nedges: none")) == "");
    CHECK(says(faults_of_vehicle(vehicle_with(comb(2'500) + "forward: up\nedges: none")),
               "panel 'hood': the outline takes more than 5,000 points, those along its arcs "
               "included; leave out points"));
    // Fifty kilobytes of arcs with far more chords than the file has points.
    std::string arcs = "outline: [[-10000, 0]";
    for (int r = 10'000; r > 9'000; r -= 8)
        arcs += ", {through: [0, " + std::to_string(r) + "], to: [" + std::to_string(r) +
                ", 0]},\n [" + std::to_string(r - 4) + ", 0], {through: [0, " +
                std::to_string(r - 4) + "], to: [" + std::to_string(4 - r) + ", 0]}, [" +
                std::to_string(8 - r) + ", 0]";
    CHECK(says(faults_of_vehicle(vehicle_with(arcs + "]\nforward: up\nedges: none")),
               "the outline takes more than 5,000 points"));
}

TEST_CASE("the outlines of one file together have a limit, told once") {
    std::string text = "vehicle: T\npanels:\n";
    for (int p = 0; p < 25; ++p)
        text +=
            "  p" + std::to_string(p) + ":\n    forward: up\n    edges: none\n    " + comb(2'490);
    const std::string faults = faults_of_vehicle(text);
    CHECK(says(faults, "panel 'p20': the outlines of the file take more than 100,000 points up to "
                       "here, those along arcs included; make several files of it"));
    CHECK(faults.find("100,000") == faults.rfind("100,000"));
}

TEST_CASE("names are compared letter by letter only so often for one file") {
    read::Context context;
    std::vector<std::string> known;
    for (int i = 0; i < 1'000; ++i)
        known.push_back(std::string(60, 'a') + std::to_string(1'000 + i));
    const std::string word(64, 'b');
    const std::size_t one = read::letters_to_compare(word, known);
    CHECK(one == 2U * 64 * 64 * 1'000);
    CHECK(one < limit::letters_compared);
    const std::string told = read::did_you_mean(word, known, "it has", context);
    std::size_t more = 1;
    while (context.may_compare(one))
        ++more;
    CHECK(more == limit::letters_compared / one);
    // What comes after is told all the same, by the first names in their own order.
    CHECK(read::did_you_mean(word, known, "it has", context) == told);
    CHECK(told.starts_with("it has 'aaa"));
    CHECK(told.ends_with(" and 992 more"));
}

TEST_CASE("a wrong reference is looked up once, however often it stands there") {
    std::string text = "vehicle: x\nhardware:\n";
    for (int i = 0; i < 1'000; ++i)
        text += "  " + std::string(60, 'a') + std::to_string(1'000 + i) + ": {tool: a}\n";
    text += "panels:\n";
    for (int p = 0; p < 100; ++p) {
        text += "  p" + std::to_string(p) + ":\n    size: [1000, 500]\n    openings:\n";
        for (int k = 1; k <= 20; ++k)
            text += "      o" + std::to_string(k) + ": {outline: [[" + std::to_string(40 * k) +
                    ", 10], [" + std::to_string(40 * k + 9) + ", 10], [" + std::to_string(40 * k) +
                    ", 20]], behind: " + std::string(64, 'b') + "}\n";
    }
    const auto reading = read::vehicle(file(text));
    REQUIRE(reading.faults.size() == 100);
    CHECK(reading.unlisted >= 1'900);
    for (const Fault& fault : reading.faults)
        if (says(fault.what, "has no hardware"))
            CHECK(says(fault.remedy, "and 992 more"));
}

TEST_CASE("files beside others may have two dots in their names, not as a step") {
    for (const char* inside : {"a..obj", "..a", "a..", "scans/a..b.obj", "./a.obj", "...", "a/./b"})
        CHECK(read::stays_inside(inside));
    for (const char* outside : {"..", "../a.obj", "a/../b.obj", "a/..", "/a.obj", "a\\b.obj", ""})
        CHECK_FALSE(read::stays_inside(outside));
    CHECK(says(faults_of_vehicle(vehicle_with("surface: a..obj\nsurface units: mm\n"
                                              "forward: [1, 0, 0]\nup: [0, 1, 0]")),
               "the scan 'a..obj' cannot be opened"));
}

TEST_CASE("corners of faces that are no whole numbers of points are refused, whatever their type") {
    const auto with_corner = [](double corner) {
        std::string out = "ply\nformat binary_little_endian 1.0\nelement vertex 3\n"
                          "property float x\nproperty float y\nproperty float z\nelement face 1\n"
                          "property list uchar double vertex_indices\nend_header\n";
        for (const float c : {0.F, 0.F, 0.F, 1.F, 0.F, 0.F, 0.F, 1.F, 0.F})
            read::append(out, c);
        read::append(out, static_cast<unsigned char>(3));
        for (const double index : {0.0, 1.0, corner})
            read::append(out, index);
        return read::parse_mesh("a.ply", out);
    };
    CHECK(with_corner(2).mesh.has_value());
    for (const double wrong : {1e300, 9.3e18, 1.9e19, 3e6, 4294967298.0}) {
        CAPTURE(wrong);
        CHECK(says(with_corner(wrong).what, "a corner of a face is no point of the scan"));
    }
    for (const double wrong : {0.5, -1.0, std::numeric_limits<double>::quiet_NaN()})
        CHECK_FALSE(with_corner(wrong).mesh.has_value());
}

TEST_CASE("surfaces that are alike are kept once") {
    read::KnownScans scans;
    const Surface flat{{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, {{0, 1, 2}}, {{0, 1, 2}}};
    Surface other = flat;
    other.points[1].x = 2;
    const auto first = scans.shared(flat);
    CHECK(scans.shared(flat) == first);
    CHECK(scans.shared(other) != first);
}

} // namespace pelt::read_test
