// SPDX-License-Identifier: MIT
// Lengths below which no layout can go.
#pragma once

#include "model/layout.hpp"
#include "model/piece.hpp"

#include <span>
#include <vector>

namespace pelt::nest::contour {

/// Bounds for whole and partial demands of the same pieces.
class Bounds {
public:
    /// Measures the pieces; `usable_width` and `gap` are those of the film; with `free_turns`
    /// pieces of any direction lie at any angle.
    Bounds(std::span<const Piece> pieces, Um usable_width, Um gap, bool free_turns);

    /// The best proven bound on the film taken off at most `rolls` rolls together by `demand[i]`
    /// copies of piece i. Length 0 when nothing is asked.
    Bound best(std::span<const std::size_t> demand, std::size_t rolls) const;

private:
    struct Measure {
        DoubleArea doubled_area = 0; // least over the shapes
        Um shortest = 0;             // least extent along in a way that fits across
        std::vector<double> weighed; // by dual, micrometres along; least over the ways to lie
    };
    static Measure measure(const Piece& piece, Um usable_width, Um gap);
    static Measure measure_freely(const Piece& piece, Um usable_width, Um gap);

    Um usable_width_;
    Um gap_;
    std::vector<Measure> measures_;
};

} // namespace pelt::nest::contour
