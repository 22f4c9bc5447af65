// SPDX-License-Identifier: MIT
// The linear program of bars by column generation: Gilmore & Gomory 1961, Oper. Res. 9, for the
// cutting stock problem; the bound that holds before the end: Farley 1990, Oper. Res. 38.
#include "nest/straight/bounds/weights.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

using Column = std::vector<double>;

constexpr double tiny = 1e-9;

/// Minimises the film over patterns of rectangles side by side, each used over some length; every
/// rectangle must be covered. Keeps the inverse of the basis.
class Program {
public:
    Program(const std::vector<Demand>& demands, Steps width) : rows_(demands.size()) {
        inverse_.assign(rows_ * rows_, 0.0);
        for (std::size_t d = 0; d < rows_; ++d) {
            double covered = 0; // of one rectangle, by a step of length
            for (const Lie& lie : demands[d].lies)
                if (lie.across <= width)
                    covered = std::max(
                        covered, static_cast<double>(std::min<Steps>(
                                     width / lie.across, static_cast<Steps>(demands[d].count))) /
                                     static_cast<double>(lie.along));
            inverse_[d * rows_ + d] = 1 / covered;
            used_.push_back(static_cast<double>(demands[d].count) / covered);
        }
    }

    /// The duals: what one more of each rectangle would cost.
    std::vector<double> weights() const {
        std::vector<double> out(rows_, 0.0);
        for (std::size_t i = 0; i < rows_; ++i)
            for (std::size_t j = 0; j < rows_; ++j)
                out[j] += inverse_[i * rows_ + j];
        for (double& weight : out)
            weight = std::max(weight, 0.0);
        return out;
    }

    /// Brings a pattern in; false when nothing can leave for it.
    bool pivot(const Column& column) {
        Column direction(rows_, 0.0);
        for (std::size_t i = 0; i < rows_; ++i)
            for (std::size_t j = 0; j < rows_; ++j)
                direction[i] += inverse_[i * rows_ + j] * column[j];
        std::size_t leaves = rows_;
        double least = 0;
        for (std::size_t i = 0; i < rows_; ++i)
            if (direction[i] > tiny && (leaves == rows_ || used_[i] / direction[i] < least)) {
                leaves = i;
                least = used_[i] / direction[i];
            }
        if (leaves == rows_)
            return false;
        eliminate(leaves, direction, least);
        return true;
    }

private:
    void eliminate(std::size_t leaves, const Column& direction, double entering) {
        double* pivot_row = &inverse_[leaves * rows_];
        for (std::size_t j = 0; j < rows_; ++j)
            pivot_row[j] /= direction[leaves];
        for (std::size_t i = 0; i < rows_; ++i) {
            if (i == leaves || direction[i] == 0)
                continue;
            double* row = &inverse_[i * rows_];
            for (std::size_t j = 0; j < rows_; ++j)
                row[j] -= direction[i] * pivot_row[j];
            used_[i] = std::max(used_[i] - direction[i] * entering, 0.0);
        }
        used_[leaves] = entering;
    }

    std::size_t rows_;
    std::vector<double> inverse_; ///< row by row
    std::vector<double> used_;    ///< length over which each pattern of the basis is used
};

Column column_of(const std::vector<SideBySide>& pattern, const std::vector<Demand>& demands) {
    Column column(demands.size(), 0.0);
    for (const SideBySide& side : pattern)
        column[side.demand] += static_cast<double>(side.count) /
                               static_cast<double>(demands[side.demand].lies[side.lie].along);
    return column;
}

} // namespace

Weights best_weights(const std::vector<Demand>& demands, Steps width, std::size_t pivots) {
    Weights best = weigh(demands, width, area_weights(demands));
    Program program(demands, width);
    for (std::size_t i = 0; i < pivots; ++i) {
        std::vector<SideBySide> pattern;
        Weights now = weigh(demands, width, program.weights(), &pattern);
        const bool at_the_end = now.most.back() < 1 + 1e-7;
        if (now.length() > best.length())
            best = std::move(now);
        if (at_the_end || !program.pivot(column_of(pattern, demands)))
            break;
    }
    return best;
}

} // namespace pelt::nest::straight
