// SPDX-License-Identifier: MIT
// Plane vectors of the search: doubles that hold micrometres.
#pragma once

#include "model/polygon.hpp"

#include <cmath>

namespace pelt::nest::contour {

struct Vec {
    double x = 0;
    double y = 0;
    friend bool operator==(const Vec&, const Vec&) = default;
    friend Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
    friend Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
    friend Vec operator-(Vec a) { return {-a.x, -a.y}; }
    friend Vec operator*(double k, Vec a) { return {k * a.x, k * a.y}; }
};

inline double dot(Vec a, Vec b) {
    return a.x * b.x + a.y * b.y;
}
inline double cross(Vec a, Vec b) {
    return a.x * b.y - a.y * b.x;
}
inline double norm(Vec a) {
    return std::sqrt(dot(a, a));
}
inline Vec vec_of(GridPoint p) {
    return {static_cast<double>(p.x), static_cast<double>(p.y)};
}

/// `a` turned counter-clockwise by quarters of a full turn; exact.
inline Vec quarter_turned(Vec a, int quarters) {
    switch (quarters & 3) {
    case 0:
        return a;
    case 1:
        return {-a.y, a.x};
    case 2:
        return {-a.x, -a.y};
    default:
        return {a.y, -a.x};
    }
}

/// An upright box of doubles.
struct Span {
    Vec low;
    Vec high;
};

} // namespace pelt::nest::contour
