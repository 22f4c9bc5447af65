// SPDX-License-Identifier: MIT
// Where a label finds room inside a piece.
#pragma once

#include "report/draw/picture.hpp"

#include <optional>
#include <vector>

namespace pelt::report::draw {

/// Whether the stretch from a to b has a point strictly inside the box (Liang and Barsky's
/// clipping).
bool enters(const Point& a, const Point& b, const Box& box);

/// Whether the point is in the first ring and in none of the others.
bool is_inside(const std::vector<Ring>& rings, const Point& p);

/// The figure that labels must stay inside (first ring) and the rings that they must not touch.
class LabelSpace {
public:
    LabelSpace(const Ring& outer, const std::vector<Ring>& kept_clear);
    /// The same, and inside this box.
    LabelSpace(const Ring& outer, const std::vector<Ring>& kept_clear, const Box& within);

    /// A box of this size inside the figure, the middle preferred; none where there is no room.
    std::optional<Box> room_for(double width, double height) const;
    /// A point of the figure, near its middle.
    Point middle() const { return middle_; }

private:
    bool holds(const Box& box) const;
    std::vector<Ring> rings_;
    std::vector<Point> centres_; ///< candidates, nearest to the middle first
    Point middle_;
    Box within_;
};

} // namespace pelt::report::draw
