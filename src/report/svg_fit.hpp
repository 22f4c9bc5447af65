// SPDX-License-Identifier: MIT
// Where a label finds room inside a piece.
#pragma once

#include "report/svg_text.hpp"

#include <optional>
#include <vector>

namespace pelt::report {

struct SvgPoint {
    double x = 0;
    double y = 0;
};
using SvgRing = std::vector<SvgPoint>;

/// The figure that labels must stay inside (first ring) and the rings that they must not touch.
class LabelSpace {
public:
    LabelSpace(const SvgRing& outer, const std::vector<SvgRing>& kept_clear);

    /// A box of this size inside the figure, the middle preferred; none where there is no room.
    std::optional<SvgBox> room_for(double width, double height) const;
    SvgPoint middle() const { return middle_; }

private:
    bool holds(const SvgBox& box) const;
    std::vector<SvgRing> rings_;
    std::vector<SvgPoint> centres_; ///< candidates, nearest to the middle first
    SvgPoint middle_;
};

} // namespace pelt::report
