// SPDX-License-Identifier: MIT
// Which parts of a layout may be forgotten: those that waste so much that a whole layout within a
// given length cannot hold them and everything else.
#pragma once

#include "nest/straight/bounds/weights.hpp"
#include "nest/straight/exact/states.hpp"

namespace pelt::nest::straight {

/// Tests for one problem and one length. A part is a rectangle of film with some of the pieces in
/// it and none of the others.
///
/// Weights (weights.hpp) spread along the film: over the part's length the others have only the
/// width beside it, so they weigh at most `most(width - across)` a step there, `most(width)`
/// elsewhere. Weights spread across the film, the same with the two directions exchanged. Areas in
/// both directions at once: beside the part and behind it some film cannot be filled by any choice
/// of the others' sides (reduced raster points, Scheithauer & Terno 1996), and the two places do
/// not overlap.
class Yards {
public:
    Yards(const std::vector<Demand>& demands, Steps width, Steps length,
          const std::vector<std::vector<double>>& weights);

    /// What the tests need to know of the pieces of a state.
    struct Rest {
        Steps area = 0;             ///< of the state's pieces, lying as small as they can
        std::vector<double> weight; ///< of all other pieces, by weights
        Steps length = 0;           ///< that the others need at least on the whole width
    };
    void measure(const States& states, State s, Rest& rest) const;

    /// Whether a part with these outer sides may be in a layout within the length.
    bool may_hold(const Rest& rest, Steps along, Steps across) const;
    Steps width() const { return width_; }
    Steps length() const { return length_; }
    /// Film that no piece takes. A part wastes what its pieces, lying as small as they can, leave
    /// of it. Parts of a part waste no more than it does together, as they do not overlap; so no
    /// part of a layout within the length wastes more than this.
    Steps spare() const { return spare_; }

private:
    bool by_areas(const Rest& rest, Steps along, Steps across) const;

    Steps width_;
    Steps length_;
    Steps spare_;
    std::vector<Steps> areas_;
    std::vector<Weights> along_;  ///< spread along the film; the first one is by area
    std::vector<Weights> across_; ///< spread across it; the first one is by area
};

} // namespace pelt::nest::straight
