// SPDX-License-Identifier: MIT
// Numbers above a drawing, each joined by a line to what it is the number of.
#pragma once

#include "report/draw/picture.hpp"

#include <string>
#include <vector>

namespace pelt::report::draw {

class Leaders {
public:
    /// Above the line y = 0, from x = `left` to `right`, in letters of this size.
    Leaders(double left, double right, double size, const Letters& letters)
        : left_(left), right_(right), size_(size), letters_(letters) {}

    void add(const Point& what, const std::string& number);

    const Picture& picture() const { return picture_; }
    /// How far they reach above the line, and to the right; 0 where there are none.
    double height() const;
    double right() const;

private:
    Box free_place(double x, double width) const;

    double left_;
    double right_;
    double size_;
    const Letters& letters_;
    std::vector<Box> taken_;
    Picture picture_;
};

} // namespace pelt::report::draw
