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

    /// All of them, from left to right as what they belong to, so that no two lines cross; in
    /// several rows where one is too short.
    struct Set {
        Picture picture;
        double height = 0; ///< above the line; 0 where there are none
        double right = 0;  ///< how far they reach
    };
    Set set() const;

private:
    struct Leader {
        Point what;
        std::string number;
        double width = 0;
    };
    std::vector<double> places_in(const std::vector<const Leader*>& row) const;
    void put(Set& set, const Leader& leader, double x, double y) const;

    double left_;
    double right_;
    double size_;
    const Letters& letters_;
    std::vector<Leader> leaders_;
};

} // namespace pelt::report::draw
