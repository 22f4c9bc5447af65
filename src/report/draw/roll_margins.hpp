// SPDX-License-Identifier: MIT
// What there is of a roll besides pieces and cuts: distances below it, its ends at the left, its
// flaws. Inside draw/ only.
#pragma once

#include "report/draw/picture.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report::draw {

struct Distance {
    double x = 0;
    std::string words;
};

struct DistanceRows {
    Picture picture;
    double height = 0; ///< below the line from which the ticks go down
    double right = 0;  ///< how far they reach
};

/// Distances from left to right under the line `bottom`, in as many rows as keep them apart; `gap`
/// is kept free under the line.
DistanceRows distance_rows(const std::vector<Distance>& distances, double bottom, double gap,
                           double type, const Letters& letters);

/// Room for `ends_of_roll`, in terms of the letters' size.
inline constexpr double room_left = 4.2;

/// Which end lies at the left, and the film's arrow, to the left of a film that is drawn from
/// `left` and from 0 down to `height`; smaller letters where the film is drawn low.
Picture ends_of_roll(const std::string& end, bool has_arrow, double left, double height,
                     double type, const Letters& letters);

/// A flaw, crossed out, and named where there is room.
struct FlawMark {
    Picture picture;
    std::optional<Box> words; ///< where they stand
};
FlawMark flaw_mark(const Box& box, double type, const Letters& letters);

} // namespace pelt::report::draw
