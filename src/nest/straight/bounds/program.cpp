// SPDX-License-Identifier: MIT
#include "nest/straight/bounds/program.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

constexpr double tiny = 1e-9;

} // namespace

Program::Program(const std::vector<Demand>& demands, Steps width) : rows_(demands.size()) {
    inverse_.assign(rows_ * rows_, 0.0);
    for (std::size_t d = 0; d < rows_; ++d) {
        double covered = 0; // of one rectangle, by a step of length
        for (const Orientation& orientation : demands[d].orientations)
            if (orientation.across <= width)
                covered = std::max(covered, static_cast<double>(std::min<Steps>(
                                                width / orientation.across,
                                                static_cast<Steps>(demands[d].count))) /
                                                static_cast<double>(orientation.along));
        inverse_[d * rows_ + d] = 1 / covered;
        used_.push_back(static_cast<double>(demands[d].count) / covered);
    }
}

std::vector<double> Program::weights() const {
    std::vector<double> out(rows_, 0.0);
    for (std::size_t i = 0; i < rows_; ++i)
        for (std::size_t j = 0; j < rows_; ++j)
            out[j] += inverse_[i * rows_ + j];
    for (double& weight : out)
        weight = std::max(weight, 0.0);
    return out;
}

std::optional<std::size_t> Program::pivot(const Column& column) {
    Column direction(rows_, 0.0);
    for (std::size_t i = 0; i < rows_; ++i)
        for (std::size_t j = 0; j < rows_; ++j)
            direction[i] += inverse_[i * rows_ + j] * column[j];
    std::optional<std::size_t> leaves;
    double least = 0;
    for (std::size_t i = 0; i < rows_; ++i)
        if (direction[i] > tiny && (!leaves || used_[i] / direction[i] < least)) {
            leaves = i;
            least = used_[i] / direction[i];
        }
    if (leaves)
        eliminate(*leaves, direction, least);
    return leaves;
}

void Program::eliminate(std::size_t leaves, const Column& direction, double entering) {
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

} // namespace pelt::nest::straight
