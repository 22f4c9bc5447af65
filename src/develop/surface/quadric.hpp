// SPDX-License-Identifier: MIT
// How far a point lies from several planes. Inside develop/ only.
#pragma once

#include "model/surface.hpp"

#include <array>
#include <cstddef>

namespace pelt::develop {

/// The weighted sum of squared distances to planes, as a symmetric 3 × 3 matrix, a vector and a
/// number.
struct Quadric {
    std::array<double, 10> q{};

    void add_plane(Point3 n, double offset, double weight) {
        const std::array<double, 4> v{n.x, n.y, n.z, offset};
        std::size_t k = 0;
        for (std::size_t i = 0; i < 4; ++i)
            for (std::size_t j = i; j < 4; ++j)
                q[k++] += weight * v[i] * v[j];
    }
    friend Quadric operator+(Quadric a, const Quadric& b) {
        for (std::size_t k = 0; k < a.q.size(); ++k)
            a.q[k] += b.q[k];
        return a;
    }
    double at(Point3 p) const {
        return q[0] * p.x * p.x + 2 * q[1] * p.x * p.y + 2 * q[2] * p.x * p.z + 2 * q[3] * p.x +
               q[4] * p.y * p.y + 2 * q[5] * p.y * p.z + 2 * q[6] * p.y + q[7] * p.z * p.z +
               2 * q[8] * p.z + q[9];
    }
};

} // namespace pelt::develop
