// SPDX-License-Identifier: MIT
// Film divided on one axis into strips, measured from the end where strips begin. Inside piece/
// only.
#pragma once

#include "piece/allowed.hpp"
#include "piece/divide.hpp"
#include "piece/stand.hpp"

#include "model/piece.hpp"

#include <cstddef>
#include <vector>

namespace pelt::piece {

/// Film to be divided, piece frame.
struct TooWide {
    Box film;  ///< what has to be covered, tucks and all
    Box panel; ///< the panel's outline: seams are placed in whole millimetres from its edges
};

/// How wide each strip may be, finished.
using Limits = std::vector<Um>;

/// Distances of the seams from the end where strips begin, rising.
using SeamsAt = std::vector<Um>;

enum class Rounded { down, nearest, up };

class Stretch {
public:
    Stretch(std::size_t axis, const TooWide& job, const Stand& stand, Um overlap);

    Um film() const { return film_; }
    Um overlap() const { return overlap_; }
    Um panel_from() const { return panel_from_; }
    Um panel_to() const { return panel_to_; }
    Um middle() const { return (panel_from_ + panel_to_) / 2; }

    /// The sum of so many strips' widths: at every seam one of them runs under the other.
    Um needed(std::size_t strips) const;
    /// Whether the strip before a seam lies on top of the one behind it.
    bool first_is_over(Um seam) const;
    /// Widths of the strips between these seams, laps and all.
    std::vector<Um> widths(const SeamsAt& seams) const;
    /// The other way round; the last width is what is left.
    SeamsAt seams(const std::vector<Um>& widths) const;
    /// Every strip is there and no wider than it may be.
    bool holds(const SeamsAt& seams, const Limits& limits) const;
    /// Whole millimetres from the panel's nearer edge.
    Um rounded(Um seam, Rounded way) const;
    /// From a coordinate of the piece frame, and the line there.
    Um from_frame(Um coordinate) const { return high_ ? end_ - coordinate : coordinate - end_; }
    Divide line_at(Um seam) const;

private:
    std::size_t axis_;
    Box panel_;
    bool high_; ///< strips begin at the high end of the axis
    int over_;  ///< 1: the strip before a seam lies on top, -1: the one behind it, 0: the inner one
    Um end_;    ///< of the film, where strips begin
    Um film_;
    Um panel_from_;
    Um panel_to_;
    Um overlap_;
};

/// How wide so many strips may be with margins as wanted, or the least ones; bleed only at the two
/// outer sides.
Limits limits_for(std::size_t strips, bool least, const Allowed& allowed, CutBy by);

/// With the margins wanted if so many strips then hold the film, else with the least ones. Empty:
/// so many do not hold it.
Limits limits_that_hold(const Stretch& stretch, std::size_t strips, const Allowed& allowed,
                        CutBy by);

/// The fewest strips that hold the film; 0: none do.
std::size_t fewest_strips(const Stretch& stretch, const Allowed& allowed, CutBy by);

} // namespace pelt::piece
