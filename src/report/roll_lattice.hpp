// SPDX-License-Identifier: MIT
// A roll looked at in the points of a lattice. A character stands between four of them, and has an
// arm towards each side on which two neighbours see different things: any outline becomes a frame
// of single lines, shared by pieces that touch.
#pragma once

#include "report/roll_sketch.hpp"

#include <optional>
#include <vector>

namespace pelt::report {

struct Scale {
    Um column = 0; ///< film along, a character
    int rows = 0;  ///< for the width of the film
    int columns = 0;
    int strips = 0;
};

/// The size in which a roll fills strips of so many columns.
Scale scale_for(const RollSketch& roll, int columns);

/// What a point sees that is not the index of a piece.
inline constexpr int outside = -1;
inline constexpr int left_over = -2;
inline constexpr int flawed = -3;

/// What the points of the lattice see. Point (i, j) lies at ((i - 1/2) columns, (j - 1/2) rows), so
/// that the first and the last row, and the first point, lie off the film.
class Lattice {
public:
    Lattice(const RollSketch& roll, const Scale& scale);

    int along() const { return along_; }
    int across() const { return across_; }
    int at(int i, int j) const {
        return i >= along_ ? outside : seen_[static_cast<std::size_t>(i * across_ + j)];
    }

private:
    GridPoint point(int i, int j) const;
    int look(int i, int j) const;
    std::optional<int> piece_beside_gap(GridPoint p) const;
    std::optional<int> piece_at(GridPoint p) const;
    bool is_flawed(GridPoint p) const;

    const RollSketch& roll_;
    Scale scale_;
    std::vector<Box> boxes_;
    int across_ = 0;
    int along_ = 0;
    std::vector<int> seen_;
};

} // namespace pelt::report
