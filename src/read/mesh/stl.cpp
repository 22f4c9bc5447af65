// SPDX-License-Identifier: MIT
#include "read/mesh/bytes.hpp"
#include "read/mesh/words.hpp"

#include <cmath>

namespace pelt::read {
namespace {

constexpr std::size_t head = 80;
constexpr std::size_t counted = 84;
constexpr std::size_t each = 50;

std::uint32_t claimed(std::string_view bytes) {
    return number_in<std::uint32_t>(bytes.substr(head), ByteOrder::little);
}

bool is_binary(std::string_view bytes) {
    return bytes.size() >= counted && (bytes.size() - counted) / each == claimed(bytes) &&
           (bytes.size() - counted) % each == 0;
}

geometry::Mesh read_binary(std::string_view bytes) {
    const std::uint32_t triangles = claimed(bytes);
    MeshMaker maker;
    maker.reserve(3 * std::size_t{triangles}, triangles);
    for (std::size_t t = 0; t < triangles; ++t) {
        const std::size_t from = counted + each * t + 12; // after the normal
        for (std::size_t k = 0; k < 3; ++k) {
            std::array<double, 3> p{};
            for (std::size_t c = 0; c < 3; ++c)
                p[c] = static_cast<double>(
                    number_in<float>(bytes.substr(from + 12 * k + 4 * c), ByteOrder::little));
            for (const double c : p)
                if (!std::isfinite(c) || std::abs(c) > farthest_coordinate)
                    throw BadMesh{"byte " + std::to_string(from + 12 * k) +
                                      ": a coordinate is not a number, or too large",
                                  "export the scan again"};
            maker.add_point({p[0], p[1], p[2]});
        }
        maker.add_triangle_of_last_points();
    }
    return maker.finish();
}

class AsciiStl {
public:
    explicit AsciiStl(std::string_view text) : words_(text) {}

    geometry::Mesh read() {
        while (next_facet()) {
            expect("outer");
            expect("loop");
            for (int k = 0; k < 3; ++k) {
                expect("vertex");
                Point3 p;
                p.x = words_.number(words_.word_anywhere());
                p.y = words_.number(words_.word_anywhere());
                p.z = words_.number(words_.word_anywhere());
                maker_.add_point(p);
            }
            expect("endloop");
            expect("endfacet");
            maker_.add_triangle_of_last_points();
        }
        return maker_.finish();
    }

private:
    /// To the facet's loop, over the names of solids and its normal.
    bool next_facet() {
        for (;;) {
            const std::string_view word = words_.word_anywhere();
            if (word.empty())
                return false;
            if (word == "solid" || word == "endsolid") {
                words_.next_line();
            } else if (word == "facet") {
                expect("normal");
                for (int k = 0; k < 3; ++k)
                    words_.word_anywhere(); // often not a number, never needed
                return true;
            } else {
                words_.fail(shown(word) + " where 'facet' or 'endsolid' belongs",
                            "the file may be spoiled; export it again");
            }
        }
    }

    void expect(std::string_view wanted) {
        const std::string_view word = words_.word_anywhere();
        if (word != wanted)
            words_.fail((word.empty() ? std::string("the file ends") : shown(word)) + " where '" +
                            std::string(wanted) + "' belongs",
                        "the file may have been cut short; export it again");
    }

    Words words_;
    MeshMaker maker_;
};

} // namespace

geometry::Mesh read_stl(std::string_view bytes) {
    if (is_binary(bytes))
        return read_binary(bytes);
    if (Words(bytes).word_anywhere() == "solid")
        return AsciiStl(bytes).read();
    if (bytes.size() < counted)
        throw BadMesh{"is too short for an STL file", "export the scan again"};
    throw BadMesh{"byte 80: claims " + std::to_string(claimed(bytes)) + " triangles, which take " +
                      std::to_string(counted + each * std::size_t{claimed(bytes)}) +
                      " bytes, and has " + std::to_string(bytes.size()),
                  "the file may have been cut short; export it again"};
}

} // namespace pelt::read
