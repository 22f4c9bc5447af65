// SPDX-License-Identifier: MIT
#include "report/draw/leaders.hpp"

#include <algorithm>

namespace pelt::report::draw {
namespace {

// In terms of the letters' size.
constexpr double lowest = 3.0; ///< the upper side of the first row above the line
constexpr double row_height = 1.1;
constexpr double apart = 0.25;
constexpr double dot = 0.14;

} // namespace

/// As near to x as there is room; a second row where the first is full.
Box Leaders::free_place(double x, double width) const {
    const double step = 0.25 * size_;
    const double right = std::max(right_, left_ + width) - width;
    for (int row = 0;; ++row)
        for (int i = 0; i * step <= right - left_ + step; ++i)
            for (const int way : {1, -1}) {
                const double at = std::clamp(x - width / 2 + way * i * step, left_, right);
                const Box box{at, -(lowest + row_height * row) * size_, width, size_};
                if (std::none_of(taken_.begin(), taken_.end(),
                                 [&](const Box& other) { return box.overlaps(other); }))
                    return box;
            }
}

void Leaders::add(const Point& what, const std::string& number) {
    const double width = letters_.width(number, size_, Face::bold) + apart * size_;
    const Box box = free_place(what.x, width);
    taken_.push_back(box);
    const double middle = box.x + width / 2;
    picture_.marks.push_back(
        Path{Look::leader, {{{middle, box.bottom() + 0.1 * size_}, what}}, false});
    picture_.marks.push_back(Circle{Look::arrow, what, dot * size_});
    picture_.marks.push_back(
        Text{number, {middle, box.y + box.height / 2}, size_, Anchor::middle, Face::bold, false});
}

double Leaders::height() const {
    double height = 0;
    for (const Box& box : taken_)
        height = std::max(height, -box.y);
    return height;
}

double Leaders::right() const {
    double right = 0;
    for (const Box& box : taken_)
        right = std::max(right, box.right());
    return right;
}

} // namespace pelt::report::draw
