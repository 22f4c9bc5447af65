// SPDX-License-Identifier: MIT
#include "report/measured_marks.hpp"

#include "report/draw/fit.hpp"

#include <algorithm>
#include <utility>

namespace pelt::report {

void MeasuredMarks::path(draw::Look look, const std::vector<std::vector<Point>>& rings,
                         bool closed) {
    draw::Path out{look, {}, closed};
    for (const std::vector<Point>& ring : rings) {
        draw::Ring& points = out.rings.emplace_back();
        for (const Point& p : ring)
            points.push_back(flipped(p));
    }
    marks_.push_back(std::move(out));
}

void MeasuredMarks::words(const std::string& text, Point at, double size, draw::Anchor anchor,
                          draw::Face face) {
    draw::Text mark{text, flipped(at), drawn(size), anchor, face};
    const draw::UnknownLetters letters;
    draw::Box box = draw::box_of(mark, letters);
    for (int tries = 0; tries < 12 && is_taken(box); ++tries) {
        mark.at.y += (tries % 2 == 0 ? 1 : -1) * (tries + 1) * 0.6 * mark.size;
        box = draw::box_of(mark, letters);
    }
    taken_.push_back(box);
    marks_.push_back(draw::Rectangle{draw::Look::plate, box});
    marks_.push_back(std::move(mark));
}

void MeasuredMarks::keep_clear(Point low, Point high) {
    const draw::Point corner = flipped({low.x, high.y});
    kept_clear_.push_back({corner.x, corner.y, drawn(high.x - low.x), drawn(high.y - low.y)});
}

bool MeasuredMarks::is_taken(const draw::Box& box) const {
    return std::any_of(taken_.begin(), taken_.end(),
                       [&](const draw::Box& other) { return other.overlaps(box); });
}

bool MeasuredMarks::is_free(const draw::Box& box) const {
    return !is_taken(box) &&
           std::none_of(kept_clear_.begin(), kept_clear_.end(),
                        [&](const draw::Box& other) { return other.overlaps(box); });
}

bool MeasuredMarks::lies_in(const std::vector<Point>& ring, const draw::Box& box) const {
    draw::Ring outline;
    for (const Point& p : ring)
        outline.push_back(flipped(p));
    const draw::Ring corners{
        {box.x, box.y}, {box.right(), box.y}, {box.right(), box.bottom()}, {box.x, box.bottom()}};
    return std::all_of(corners.begin(), corners.end(),
                       [&](const draw::Point& p) { return draw::is_inside({outline}, p); });
}

draw::Picture MeasuredMarks::framed(double left, double right, double top, double below,
                                    double space) {
    const draw::UnknownLetters letters;
    left = drawn(left);
    right = drawn(right);
    below = drawn(below);
    for (const draw::Mark& mark : marks_)
        if (const auto* text = std::get_if<draw::Text>(&mark)) {
            const draw::Box box = draw::box_of(*text, letters);
            left = std::min(left, box.x);
            right = std::max(right, box.right());
            below = std::min(below, -box.bottom());
        }
    draw::Picture part{std::move(marks_), 0, 0};
    const double around = drawn(space);
    draw::Picture out{{}, right - left + 2 * around, drawn(top) - below + around};
    draw::put(out, part, around - left, drawn(top));
    return out;
}

} // namespace pelt::report
