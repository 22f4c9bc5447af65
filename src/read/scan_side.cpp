// SPDX-License-Identifier: MIT
#include "read/scan_side.hpp"

#include "geometry/space.hpp"

namespace pelt::read {
namespace {

using geometry::dot;

/// -1 speaks against it, 1 for it, 0 says nothing.
int sign_beyond(double value, double least) {
    return value > least ? 1 : value < -least ? -1 : 0;
}

} // namespace

std::optional<Doubt> doubt_about(const geometry::Facing& facing, Point3 forward, Point3 up,
                                 Sides sides) {
    constexpr double clearly = .5;     // of a direction's length
    constexpr double out_of_it = .93;  // within some twenty degrees of square to the panel
    constexpr double stands_out = .02; // of the root of the area
    const char* const say_it =
        "say which way is out: 'outside: [X, Y, Z]' in the scan's frame; it is turned where its "
        "triangles say otherwise";
    const Point3 left = geometry::cross(up, forward);
    const bool is_right = sides == Sides::right;
    const int side = sides == Sides::centre
                         ? 0
                         : sign_beyond((is_right ? -1 : 1) * dot(facing.normal, left), clearly);
    const int lying = sign_beyond(dot(facing.normal, up), out_of_it);
    const int bulge = sign_beyond(facing.bulge, stands_out);
    const std::string way = is_right ? "left" : "right";
    if (side < 0 && bulge > 0)
        return Doubt{"faces the vehicle's " + way + ", and the panel is its " +
                         (is_right ? "right" : "left") + " one: it seems to be of the other side",
                     "scan the part of the panel's own side, or correct 'sides'; or " +
                         std::string(say_it)};
    if (side < 0)
        return Doubt{"faces the vehicle's " + way + ", and the panel is its " +
                         (is_right ? "right" : "left") + " one: it seems to be inside out",
                     say_it};
    if (bulge < 0 && side <= 0 && lying <= 0)
        return Doubt{"is hollow as seen from outside: it seems to be inside out", say_it};
    if (lying < 0 && side <= 0 && bulge <= 0)
        return Doubt{"faces down: it seems to be inside out", say_it};
    return std::nullopt;
}

} // namespace pelt::read
