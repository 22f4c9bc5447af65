// SPDX-License-Identifier: MIT
// Scans as files: the same mesh in every format, and what is wrong with bad ones.
#include "read/mesh/mesh_file.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace pelt::read {
namespace {

using geometry::Mesh;

template <class Number>
void append(std::string& out, Number value, bool big = false) {
    std::string raw(sizeof(Number), '\0');
    std::memcpy(raw.data(), &value, sizeof(Number));
    out += big ? std::string(raw.rbegin(), raw.rend()) : raw;
}

Mesh roof() {
    return {{{0, 0, 0}, {2, 0, .5}, {2, 1, .25}, {0, 1, -1.5}}, {{0, 1, 2}, {0, 2, 3}}};
}

bool same(const Mesh& a, const Mesh& b) {
    return a.points == b.points && a.triangles == b.triangles;
}

/// As STL gives it: three points of its own for every triangle.
Mesh apart(const Mesh& mesh) {
    Mesh out;
    for (const Triangle& t : mesh.triangles) {
        const int n = static_cast<int>(out.points.size());
        for (const int corner : t)
            out.points.push_back(mesh.points[static_cast<std::size_t>(corner)]);
        out.triangles.push_back({n, n + 1, n + 2});
    }
    return out;
}

std::string binary_stl(const Mesh& mesh) {
    std::string out(80, 'x');
    append(out, static_cast<std::uint32_t>(mesh.triangles.size()));
    for (const Triangle& t : mesh.triangles) {
        for (int k = 0; k < 3; ++k)
            append(out, 0.0F);
        for (const int corner : t) {
            const Point3& p = mesh.points[static_cast<std::size_t>(corner)];
            for (const double c : {p.x, p.y, p.z})
                append(out, static_cast<float>(c));
        }
        append(out, std::uint16_t{0});
    }
    return out;
}

std::string binary_ply(const Mesh& mesh, bool big) {
    std::string out = "ply\nformat binary_" + std::string(big ? "big" : "little") +
                      "_endian 1.0\ncomment a test\nelement vertex " +
                      std::to_string(mesh.points.size()) +
                      "\nproperty double x\nproperty float y\nproperty double z\n"
                      "property uchar red\nelement edge 1\nproperty list uchar short what\n"
                      "element face " +
                      std::to_string(mesh.triangles.size()) +
                      "\nproperty list uchar int vertex_indices\nend_header\n";
    for (const Point3& p : mesh.points) {
        append(out, p.x, big);
        append(out, static_cast<float>(p.y), big);
        append(out, p.z, big);
        append(out, std::uint8_t{7});
    }
    append(out, std::uint8_t{2});
    append(out, std::int16_t{-1}, big);
    append(out, std::int16_t{5}, big);
    for (const Triangle& t : mesh.triangles) {
        append(out, std::uint8_t{3});
        for (const int corner : t)
            append(out, static_cast<std::int32_t>(corner), big);
    }
    return out;
}

constexpr std::string_view ascii_ply =
    "ply\r\nformat ascii 1.0\r\nobj_info made by hand\r\n"
    "element vertex 4\r\nproperty float x\r\nproperty float y\r\n"
    "property float z\r\nelement face 1\r\n"
    "property list uchar uint vertex_index\r\nend_header\r\n"
    "0 0 0\r\n2 0 .5\r\n2 1 0.25\r\n0 1 -15e-1\r\n4 0 1 2 3";
constexpr std::string_view ascii_stl = "solid roof of a shed\n"
                                       "facet normal 0 nan 1\nouter loop\nvertex 0 0 0\n"
                                       "vertex 2 0 .5\nvertex 2 1 .25\nendloop\nendfacet\n"
                                       "endsolid\nsolid other\nfacet normal 0 0 1 outer loop\n"
                                       "vertex 0 0 0 vertex 2 1 +.25 vertex 0 1 -1.5 endloop\n"
                                       "endfacet\nendsolid other";

TEST_CASE("one mesh in every format") {
    const auto is_roof = [](std::string_view name, std::string_view bytes) {
        const MeshRead read = parse_mesh(name, bytes);
        CAPTURE(read.what);
        return read.mesh && same(*read.mesh, roof());
    };
    CHECK(is_roof("a.obj", "# roof\nv 0 0 0\nv 2 0 .5\nv 2 1 .25 1.0\nv 0 1 -1.5\n"
                           "vn 0 0 1\nf 1 2 3\nf 1//1 3//1 4//1\n"));
    CHECK(is_roof("a.OBJ", "v 0 0 0\rv 2 0 .5\rv 2 \\\r 1 .25\rv 0 1 -1.5\rg x\rf -4/1 \\\r -3/2/1 "
                           "-2/3 -1/4"));
    CHECK(is_roof("folder.d/a.ply", ascii_ply));
    CHECK(is_roof("a.ply", binary_ply(roof(), false)));
    CHECK(is_roof("a.ply", binary_ply(roof(), true)));
    for (const std::string& bytes : {binary_stl(roof()), std::string(ascii_stl)}) {
        const MeshRead read = parse_mesh("a.stl", bytes);
        CAPTURE(read.what);
        REQUIRE(read.mesh.has_value());
        CHECK(same(*read.mesh, apart(roof())));
    }
}

TEST_CASE("what is wrong is told with its place") {
    struct Row {
        std::string name;
        std::string bytes;
        std::string what;
    };
    const std::string head = "ply\nformat ascii 1.0\nelement vertex ";
    std::string cut_short = binary_stl(roof());
    cut_short.resize(150);
    for (const Row& row : std::vector<Row>{
             {"a.obj", "", "is empty"},
             {"a.off", "OFF", "has an ending that is not known"},
             {"a.obj", "v 0 0\n", "line 1: a number is missing"},
             {"a.obj", "v 0 0 0\nv 1 0 0\nv 0,5 1 0\n", "line 3: '0,5' is not a number"},
             {"a.obj", "v 0 0 nan\n", "line 1: 'nan' is too large or too small a number"},
             {"a.obj", "v 0 0 1e400\n", "line 1: '1e400' is too large or too small a number"},
             {"a.obj", "v 0 0 0\nf 1 2 0\n",
              "line 2: a face has the corner '0', which is no point"},
             {"a.obj", "v 0 0 0\nf 1 1 -2\n",
              "line 2: a face has the corner '-2', which is no point"},
             {"a.obj", "v 0 0 0\nf 1 2 3\n",
              "has a triangle with a corner that is none of its 1 points"},
             {"a.obj", "v 0 0 0\nf 1 99999999999 3\n",
              "has a triangle with a corner that is none of its 1 points"},
             {"a.obj", "v 0 0 0\nf 1 1\n", "line 2: a face has fewer than three corners"},
             {"a.obj", "v 0 0 0\n", "holds no triangles"},
             {"a.obj", "surf 1 2 3\n", "line 1: curves and curved patches are not read"},
             {"a.obj", std::string("v\0 1 2", 6), "byte 1: is not a text in ASCII or UTF-8"},
             {"a.ply", "plx\n", "line 1: does not begin with 'ply'"},
             {"a.ply", "ply\nformat ascii 1.0\n", "line 3: the header has no 'end_header'"},
             {"a.ply", "ply\nformat packed 1.0\n", "line 2: the format 'packed' is not known"},
             {"a.ply", "ply\nend_header\n", "line 2: the header has no 'format'"},
             {"a.ply", "ply\nformat ascii 1.0\nproperty float x\n",
              "line 3: a property stands before any element"},
             {"a.ply", head + "-1\n", "line 3: there cannot be -1 of 'vertex'"},
             {"a.ply",
              head + "4000000000\nproperty float x\nproperty float y\nproperty float z\n"
                     "element face 1\nproperty list uchar int vertex_index\nend_header\n",
              "line 10: claims 4000000000 of 'vertex', and ends before them"},
             {"a.ply", head + "1\nproperty float x\nend_header\n", "has no points with x, y and z"},
             {"a.ply",
              head + "1\nproperty float x\nproperty float y\nproperty float z\nend_header\n0 0 0\n",
              "has no faces"},
             {"a.stl", "solid x\nfacet normal 0 0 1\nouter loop\nvertex 0 0\n",
              "line 5: a number is missing"},
             {"a.stl", "solid x\nbox\n", "line 2: 'box' where 'facet' or 'endsolid' belongs"},
             {"a.stl", "abc", "is too short for an STL file"},
             {"a.stl", cut_short,
              "byte 80: claims 2 triangles, which take 184 bytes, and has 150"}}) {
        CAPTURE(row.bytes);
        const MeshRead read = parse_mesh(row.name, row.bytes);
        CHECK(!read.mesh.has_value());
        CHECK(read.what == row.what);
    }
}

/// A generator of our own: the same files on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}
    std::size_t below(std::size_t n) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<std::size_t>(state_ >> 33U) % n;
    }

private:
    std::uint64_t state_;
};

std::string spoilt(std::string bytes, Dice& dice) {
    constexpr std::string_view odd = "-0129.e/ \\\n\0\xff\x7fnif,";
    const std::size_t times = 1 + dice.below(4);
    for (std::size_t i = 0; i < times && !bytes.empty(); ++i) {
        const std::size_t at = dice.below(bytes.size());
        switch (dice.below(5)) {
        case 0:
            bytes[at] = odd[dice.below(odd.size())];
            break;
        case 1:
            bytes.resize(at);
            break;
        case 2:
            bytes.insert(at, bytes.substr(at / 2, dice.below(40)));
            break;
        case 3:
            bytes.erase(at, 1 + dice.below(8));
            break;
        default:
            bytes[at] = static_cast<char>(dice.below(256));
        }
    }
    return bytes;
}

TEST_CASE("twelve hundred spoilt files: a mesh that holds together, or a sentence") {
    const std::vector<std::pair<std::string, std::string>> seeds{
        {"a.obj", "v 0 0 0\nv 2 0 .5\nv 2 1 .25 1.0\nv 0 1 -1.5\nvn 0 0 1\nf 1/2/3 2 3 -1\n"},
        {"a.ply", std::string(ascii_ply)},
        {"a.ply", binary_ply(roof(), false)},
        {"a.ply", binary_ply(roof(), true)},
        {"a.stl", std::string(ascii_stl)},
        {"a.stl", binary_stl(roof())}};
    Dice dice(20261125);
    int read_well = 0;
    for (int round = 0; round < 1200; ++round) {
        const auto& [name, bytes] = seeds[static_cast<std::size_t>(round) % seeds.size()];
        const std::string file = spoilt(bytes, dice);
        const MeshRead read = parse_mesh(name, file);
        if (!read.mesh) {
            CHECK(!read.what.empty());
            continue;
        }
        ++read_well;
        const int points = static_cast<int>(read.mesh->points.size());
        bool valid = !read.mesh->triangles.empty();
        for (const Triangle& t : read.mesh->triangles)
            for (const int corner : t)
                valid = valid && corner >= 0 && corner < points;
        CHECK(valid);
        // Whatever it has become, mending ends with a surface or a sentence.
        const geometry::SurfaceFound found = geometry::surface_of(*read.mesh);
        CHECK(found.surface.has_value() != !found.what.empty());
    }
    CHECK(read_well > 50);
}

} // namespace
} // namespace pelt::read
