// SPDX-License-Identifier: MIT
// Files that are no scans, by the hundred: every one of them gets a sentence.
#include "mesh_files.hpp"
#include "meshes.hpp"
#include "read/mesh/mesh_file.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace pelt::read {
namespace {

using namespace std::string_literals;

struct File {
    std::string name;
    std::string bytes;
    friend auto operator<=>(const File&, const File&) = default;
};
using Files = std::vector<File>;

/// Cut off before every one of their bytes: counts at their head then claim too much.
void add_cut_short(Files& out) {
    for (const File& whole :
         {File{"a.stl", binary_stl(roof())}, File{"a.ply", binary_ply(roof(), false)},
          File{"a.ply", binary_ply(roof(), true)}})
        for (std::size_t length = 0; length < whole.bytes.size(); ++length)
            out.push_back({whole.name, whole.bytes.substr(0, length)});
}

/// Every word from `from` on that begins a number replaced by what is none.
void add_no_numbers(Files& out, const std::string& name, const std::string& text,
                    std::string_view from) {
    const std::string_view figures = "-.0123456789";
    for (std::size_t at = text.find(from); at < text.size(); ++at) {
        const bool begins = figures.find(text[at]) != std::string_view::npos &&
                            (text[at - 1] == ' ' || text[at - 1] == '\n');
        if (!begins)
            continue;
        const std::size_t end = std::min(text.find_first_of(" \r\n", at), text.size());
        for (const char* other : {"nan", "inf", "-infinity", "1e400", "0x1f", "1,5", "--1", "1e",
                                  "..", "99999999999999999999", "\xff\xfe", "'", "1_000"})
            out.push_back({name, text.substr(0, at) + other + text.substr(end)});
    }
}

void add_binary_numbers(Files& out) {
    const auto spoilt = [](std::string bytes, std::size_t at, const std::string& with) {
        return bytes.replace(at, with.size(), with);
    };
    std::string nan;
    append(nan, std::numeric_limits<float>::quiet_NaN());
    std::string infinite;
    append(infinite, -std::numeric_limits<float>::infinity());
    std::string far;
    append(far, 1e30F);
    const std::string stl = binary_stl(roof());
    for (std::size_t t = 0; t < 2; ++t)
        for (std::size_t c = 0; c < 9; ++c)
            for (const std::string& with : {nan, infinite, far})
                out.push_back({"a.stl", spoilt(stl, 84 + 50 * t + 12 + 4 * c, with)});
    for (const std::uint32_t count : {0U, 1U, 3U, 4U, 1000U, 0x7fffffffU, 0xffffffffU}) {
        std::string with;
        append(with, count);
        out.push_back({"a.stl", spoilt(stl, 80, with)});
    }
    // The corners of the faces are the last 2 × (1 + 3 × 4) bytes, lists with a length before them.
    for (const bool big : {false, true}) {
        const std::string ply = binary_ply(roof(), big);
        for (std::size_t face = 0; face < 2; ++face)
            for (std::size_t corner = 0; corner < 3; ++corner)
                for (const std::int32_t index : {-1, 4, 1000, 0x7fffffff, -0x7fffffff - 1}) {
                    std::string with;
                    append(with, index, big);
                    out.push_back(
                        {"a.ply", spoilt(ply, ply.size() - 26 + 13 * face + 1 + 4 * corner, with)});
                }
        for (const char length : {'\x04', '\x07', '\xff'})
            out.push_back({"a.ply", spoilt(ply, ply.size() - 13, std::string(1, length))});
    }
}

void add_headers(Files& out) {
    const std::string points = "property float x\nproperty float y\nproperty float z\n";
    const auto ply = [&](const std::string& vertices, const std::string& faces,
                         const std::string& more) {
        return File{"a.ply", "ply\nformat ascii 1.0\nelement vertex " + vertices + "\n" + points +
                                 "element face " + faces +
                                 "\nproperty list uchar int vertex_index\n" + more +
                                 "end_header\n0 0 0\n1 0 0\n0 1 0\n3 0 1 2\n"};
    };
    for (const char* count : {"-1", "4", "1000", "2147483648", "4294967295", "18446744073709551615",
                              "99999999999999999999999", "many", "", "1.5", "1e3"}) {
        out.push_back(ply(count, "1", ""));
        out.push_back(ply("3", count, ""));
    }
    std::string elements;
    for (int i = 0; i < 100; ++i)
        elements += "element kind" + std::to_string(i) + " 0\n";
    std::string properties;
    for (int i = 0; i < 100; ++i)
        properties += "property float p" + std::to_string(i) + "\n";
    std::string comments;
    for (int i = 0; i < 5000; ++i)
        comments += "comment " + std::to_string(i) + "\n";
    for (const std::string& more :
         {elements, properties, comments, "property list float int x\n"s, "property word x\n"s,
          "property list uchar word x\n"s, "property\n"s, "element\n"s, "include /etc/passwd\n"s,
          "format binary_little_endian 1.0\n"s, std::string(1'000'000, 'x') + "\n"})
        out.push_back(ply("3", "1", more));
    for (const char* start :
         {"PLY\n", "ply", "ply\nformat\n", "ply\nformat ascii", "\xef\xbb\xbf", "ply\n\0"})
        out.push_back({"a.ply", start});
}

void add_texts(Files& out) {
    // Every word of an STL text taken away, but for names and normals.
    const std::string stl(ascii_stl);
    for (const char* word : {"outer", "loop", "vertex", "endloop", "endfacet", "facet"})
        for (std::size_t at = stl.find(word); at != std::string::npos; at = stl.find(word, at + 1))
            if (at == 0 || stl[at - 1] == ' ' || stl[at - 1] == '\n')
                out.push_back(
                    {"a.stl", stl.substr(0, at) + stl.substr(at + std::string(word).size())});
    const std::string obj = "v 0 0 0\nv 1 0 0\nv 0 1 0\n";
    for (const char* face : {"f",
                             "f 1",
                             "f 1 2",
                             "f 0 1 2",
                             "f 1 2 4",
                             "f -4 1 2",
                             "f a b c",
                             "f 1.5 2 3",
                             "f /1/2 2 3",
                             "f 1 2 2147483648",
                             "f 1 2 -2147483649",
                             "f 1 2 99999999999999999999",
                             "fo 1 2",
                             "curv 0 1 1 2",
                             "surf 0 1 0 1 1 2",
                             "v 1 2",
                             "v",
                             "v 1 2 3 4 5 6 7 8\nf 9 9 9",
                             "f \\\n1 2",
                             "l 1 2",
                             "p 1"})
        out.push_back({"a.obj", obj + face});
    std::string round = "f";
    for (int i = 0; i < 1001; ++i)
        round += " 1";
    out.push_back({"a.obj", obj + round});
    out.push_back({"a.obj", obj + std::string(3'000'000, ' ')});
    out.push_back({"a.obj", obj + "f " + std::string(1'000'000, '1')});
    for (const char* name : {"a.obj", "a.ply", "a.stl", "a.off", "a", ".obj", "a.obj.", "a.gltf"})
        for (const std::string& bytes : {""s, "\n"s, "\0\0\0\0"s, "\xff\xfe\0v\0 \0"s, "<xml/>"s,
                                         "%PDF-1.4\n"s, std::string(4096, '\xff')})
            out.push_back({name, bytes});
}

/// One line that can be printed and read.
bool is_a_sentence(const std::string& text) {
    return text.size() > 5 && text.size() < 250 &&
           std::none_of(text.begin(), text.end(),
                        [](char c) { return static_cast<unsigned char>(c) < ' ' || c == 0x7f; });
}

TEST_CASE("more than five hundred files that are no scans: a sentence each") {
    Files files;
    add_cut_short(files);
    add_no_numbers(files, "a.ply", std::string(ascii_ply), "0 0 0\r\n");
    add_no_numbers(files, "a.obj", "v 0 0 0\nv 2 0 .5\nv 2 1 .25\nv 0 1 -1.5\nf 1 2 3\nf 1 3 4\n",
                   "0");
    add_no_numbers(files, "a.stl", std::string(ascii_stl).substr(0, 130) + "\nendsolid\n", "0 0 0");
    add_binary_numbers(files);
    add_headers(files);
    add_texts(files);
    std::set<std::string> sentences;
    std::set<File> different(files.begin(), files.end());
    CHECK(different.size() > 1500);
    for (const File& file : different) {
        const MeshRead read = parse_mesh(file.name, file.bytes);
        if (read.mesh || !is_a_sentence(read.what)) {
            CAPTURE(file.name);
            CAPTURE(file.bytes.substr(0, 600));
            CAPTURE(read.what);
            FAIL_CHECK("read as a mesh, or no sentence");
        }
        sentences.insert(read.what);
    }
    CHECK(sentences.size() > 300);
}

/// Meshes that are read and are no panels.
TEST_CASE("surfaces that are no panels: a sentence each, of whatever size they are") {
    using test::grid;
    std::vector<test::Mesh> meshes;
    const auto closed = [](int across, int up, bool twisted, double turns) {
        // A band that closes on itself, half a twist in it or none.
        test::Mesh mesh = grid(across, up, [=](double u, double v) {
            const double a = turns * 2 * std::numbers::pi * u;
            const double tilt = twisted ? a / 2 : 0;
            const double r = 100 + 60 * (v - .5) * std::cos(tilt);
            return Point3{r * std::cos(a), r * std::sin(a),
                          60 * (v - .5) * std::sin(tilt) + (twisted ? 0 : 60 * v)};
        });
        return mesh;
    };
    meshes.push_back(closed(24, 4, false, 1));
    meshes.push_back(closed(24, 4, true, 1));
    // A torus; one with a hole in it (a handle); a ball.
    const auto torus = grid(24, 16, [](double u, double v) {
        const double a = 2 * std::numbers::pi * u;
        const double b = 2 * std::numbers::pi * v;
        return Point3{(300 + 100 * std::cos(b)) * std::cos(a),
                      (300 + 100 * std::cos(b)) * std::sin(a), 100 * std::sin(b)};
    });
    meshes.push_back(torus);
    test::Mesh holed = torus;
    holed.triangles.resize(holed.triangles.size() - 6);
    meshes.push_back(holed);
    meshes.push_back(grid(24, 12, [](double u, double v) {
        const double a = 2 * std::numbers::pi * u;
        const double b = std::numbers::pi * v;
        return Point3{100 * std::sin(b) * std::cos(a), 100 * std::sin(b) * std::sin(a),
                      100 * std::cos(b)};
    }));
    // No area: all points one, on a line, of a size that vanishes beside another point.
    meshes.push_back(grid(3, 3, [](double, double) { return Point3{5, 5, 5}; }));
    meshes.push_back(grid(3, 3, [](double u, double v) { return Point3{u + v, 2 * (u + v), 0}; }));
    // Three leaves at one edge, in many places.
    test::Mesh book = grid(4, 4, [](double u, double v) { return Point3{100 * u, 100 * v, 0}; });
    book.points.push_back({50, 50, 80});
    for (const Triangle& t : {Triangle{12, 7, 25}, Triangle{12, 13, 25}, Triangle{11, 12, 25}})
        book.triangles.push_back(t);
    meshes.push_back(book);
    // Two panels; as many as there are triangles.
    for (const int skipped : {5, 2}) {
        test::Mesh loose = grid(6, 6, [](double u, double v) {
            return Point3{100 * u, 100 * v, 0};
        });
        std::vector<Triangle> some;
        for (std::size_t t = 0; t < loose.triangles.size(); ++t)
            if (static_cast<int>(t / 12) % skipped != 1)
                some.push_back(loose.triangles[t]);
        loose.triangles = some;
        meshes.push_back(loose);
    }
    for (const test::Mesh& mesh : meshes)
        for (const double scale : {1e-7, 1.0, 1e6}) {
            geometry::Mesh scaled{mesh.points, mesh.triangles};
            for (Point3& p : scaled.points)
                p = {scale * p.x, scale * p.y, scale * p.z};
            const geometry::SurfaceFound found = geometry::surface_of(scaled);
            CHECK(!found.surface.has_value());
            CHECK(is_a_sentence(found.what));
            CHECK(is_a_sentence(found.remedy));
        }
}

} // namespace
} // namespace pelt::read
