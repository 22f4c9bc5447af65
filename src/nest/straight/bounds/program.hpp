// SPDX-License-Identifier: MIT
// The linear program of covering rectangles by patterns, solved column by column: Gilmore & Gomory
// 1961, Oper. Res. 9, for the cutting stock problem.
#pragma once

#include "nest/straight/bounds/bounds.hpp"

#include <optional>

namespace pelt::nest::straight {

/// Minimises the film over patterns, each used over some length; every rectangle must be covered.
/// Keeps the inverse of the basis. A column says how many of each rectangle a step of a pattern's
/// length covers.
class Program {
public:
    using Column = std::vector<double>;

    /// Begins with a pattern a rectangle: as many side by side as fit and are wanted.
    Program(const std::vector<Demand>& demands, Steps width);

    /// What one more of each rectangle would cost. A pattern helps when its column weighs above 1.
    std::vector<double> weights() const;
    /// Brings a pattern in; gives the row that it takes, none when nothing can leave for it.
    std::optional<std::size_t> pivot(const Column& column);
    /// The length over which the pattern of a row is used.
    double used(std::size_t row) const { return used_[row]; }

private:
    void eliminate(std::size_t leaves, const Column& direction, double entering);

    std::size_t rows_;
    std::vector<double> inverse_; ///< row by row
    std::vector<double> used_;
};

} // namespace pelt::nest::straight
