// SPDX-License-Identifier: MIT
// Points of the plane as complex numbers, and linear maps of the plane as pairs of them.
// Inside develop/ only.
#pragma once

#include <cmath>
#include <vector>

namespace pelt::develop {

/// A complex number; std::complex multiplies slowly, since it minds infinities.
struct Cx {
    double re = 0;
    double im = 0;
    friend Cx operator+(Cx a, Cx b) { return {a.re + b.re, a.im + b.im}; }
    friend Cx operator-(Cx a, Cx b) { return {a.re - b.re, a.im - b.im}; }
    friend Cx operator*(Cx a, Cx b) {
        return {a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re};
    }
    friend Cx operator*(double k, Cx a) { return {k * a.re, k * a.im}; }
};
inline Cx conjugate(Cx a) {
    return {a.re, -a.im};
}
inline double size(Cx a) {
    return std::sqrt(a.re * a.re + a.im * a.im);
}
/// Of length 1 and the same direction; 1 where there is none.
inline Cx unit(Cx a) {
    const double n = size(a);
    return n > 0 ? (1 / n) * a : Cx{1, 0};
}

/// The linear map v -> z v + w conj(v). Its singular values are |z| + |w| and, negative where the
/// map turns the plane over, |z| - |w|.
struct Linear {
    Cx z;
    Cx w;
    double larger() const { return size(z) + size(w); }
    double smaller() const { return size(z) - size(w); }
};

/// The map with the same singular directions and other singular values.
inline Linear with_values(const Linear& map, double larger, double smaller) {
    return {((larger + smaller) / 2) * unit(map.z), ((larger - smaller) / 2) * unit(map.w)};
}

/// A place in the plane for every point of a surface.
using Flat = std::vector<Cx>;

} // namespace pelt::develop
