// SPDX-License-Identifier: MIT
// Vectors in space.
#pragma once

#include "model/surface.hpp"

#include <cmath>

namespace pelt {

inline Point3 operator+(Point3 a, Point3 b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
inline Point3 operator-(Point3 a, Point3 b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
inline Point3 operator*(double k, Point3 a) {
    return {k * a.x, k * a.y, k * a.z};
}

} // namespace pelt

namespace pelt::geometry {

inline double dot(Point3 a, Point3 b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
inline Point3 cross(Point3 a, Point3 b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double norm(Point3 a) {
    return std::sqrt(dot(a, a));
}
inline double distance(Point3 a, Point3 b) {
    return norm(b - a);
}
/// The zero vector stays as it is.
inline Point3 unit(Point3 a) {
    const double n = norm(a);
    return n > 0 ? (1 / n) * a : a;
}

} // namespace pelt::geometry
