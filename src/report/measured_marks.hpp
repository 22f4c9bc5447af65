// SPDX-License-Identifier: MIT
// The marks of one measured panel as they gather: given in the panel's frame, y up, mm; drawn y
// down, a whole number of times as large.
#pragma once

#include "model/polygon.hpp"
#include "report/draw/picture.hpp"

#include <string>
#include <vector>

namespace pelt::report {

class MeasuredMarks {
public:
    explicit MeasuredMarks(int times) : times_(times) {}

    draw::Point flipped(Point p) const { return {times_ * p.x, -times_ * p.y}; }
    double drawn(double mm) const { return times_ * mm; }

    void add(draw::Mark mark) { marks_.push_back(std::move(mark)); }
    void path(draw::Look look, const std::vector<std::vector<Point>>& rings, bool closed);
    /// On a white plate, moved away from what was written before. `size` of the letters in mm of
    /// the panel.
    void words(const std::string& text, Point at, double size,
               draw::Anchor anchor = draw::Anchor::middle, draw::Face face = draw::Face::plain);

    /// An upright box that nothing but its own words should lie on.
    void keep_clear(Point low, Point high);
    /// Whether a box of the drawing lies over no words and nothing to be kept clear.
    bool is_free(const draw::Box& box) const;
    /// Whether its corners lie in the ring.
    bool lies_in(const std::vector<Point>& ring, const draw::Box& box) const;

    /// Everything in the upper left corner of a page of its own, from `left` to `right` and from
    /// `top` to `below` or as far as words reach, with room of `space` around; all in the panel's
    /// mm. Leaves nothing behind.
    draw::Picture framed(double left, double right, double top, double below, double space);

private:
    bool is_taken(const draw::Box& box) const;

    int times_;
    std::vector<draw::Mark> marks_;
    std::vector<draw::Box> taken_;      ///< where something is written
    std::vector<draw::Box> kept_clear_; ///< openings and inlays
};

} // namespace pelt::report
