// SPDX-License-Identifier: MIT
#include "read/mesh/words.hpp"

namespace pelt::read {
namespace {

class Obj {
public:
    explicit Obj(std::string_view text) : words_(text) {}

    geometry::Mesh read() {
        do {
            const std::string_view keyword = words_.word(true);
            if (keyword == "v")
                read_point();
            else if (keyword == "f" || keyword == "fo")
                read_face();
            else if (keyword == "curv" || keyword == "curv2" || keyword == "surf")
                words_.fail("curves and curved patches are not read",
                            "export the scan as triangles");
            else
                skip();
        } while (words_.next_line());
        return maker_.finish();
    }

private:
    void read_point() {
        Point3 p;
        p.x = words_.number(words_.word(true));
        p.y = words_.number(words_.word(true));
        p.z = words_.number(words_.word(true));
        maker_.add_point(p);
        skip();
    }

    /// Normals, textures, groups, materials, remarks, and weights or colours of points.
    void skip() {
        while (!words_.word(true).empty()) {
        }
    }

    /// `7`, `7/1`, `7/1/3`, `7//3`; below 0 counted back from the last point so far.
    std::int64_t corner(std::string_view word) const {
        const std::int64_t number = words_.whole(word.substr(0, word.find('/')));
        const auto points = static_cast<std::int64_t>(maker_.points());
        if (number == 0 || number < -points)
            words_.fail("a face has the corner " + shown(word) + ", which is no point",
                        "points count from 1; -1 is the last one so far");
        return number > 0 ? number - 1 : points + number;
    }

    void read_face() {
        std::size_t corners = 0;
        for (std::string_view word = words_.word(true); !word.empty(); word = words_.word(true)) {
            if (++corners > MeshMaker::most_corners)
                words_.fail("a face has more than " + std::to_string(MeshMaker::most_corners) +
                                " corners",
                            "export the scan as triangles");
            maker_.add_corner(corner(word));
        }
        if (corners < 3)
            words_.fail("a face has fewer than three corners");
        maker_.end_polygon();
    }

    Words words_;
    MeshMaker maker_;
};

} // namespace

geometry::Mesh read_obj(std::string_view text) {
    return Obj(text).read();
}

} // namespace pelt::read
