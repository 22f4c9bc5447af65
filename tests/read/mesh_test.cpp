// SPDX-License-Identifier: MIT
// Scans as files: the same mesh in every format, and what is wrong with bad ones.
#include "mesh_files.hpp"
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

TEST_CASE("twelve hundred spoiled files: a mesh that holds together, or a sentence") {
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
