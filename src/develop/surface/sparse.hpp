// SPDX-License-Identifier: MIT
// Large symmetric systems of equations with few entries. The only place that knows Eigen.
// Inside develop/ only.
#pragma once

#include "develop/surface/plane.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace pelt::develop {

/// One entry of a symmetric matrix, given once: of (i, j) and (j, i) the one with row >= column.
/// Entries of the same place are added up.
struct Entry {
    int row = 0;
    int column = 0;
    double value = 0;
};

/// A symmetric positive definite matrix, factorised. Same bits on every machine with IEEE doubles:
/// only + − × ÷ √, in one order.
class Factor {
public:
    /// None where the matrix is not positive definite, or too ill for a trustworthy solution (the
    /// residual of a test equation is over 1e-8 of its right-hand side).
    static std::optional<Factor> of(int size, const std::vector<Entry>& entries);

    /// The solution of A x = b.
    std::vector<double> solve(const std::vector<double>& b) const;
    /// Of two right-hand sides at once, as real and imaginary parts.
    std::vector<Cx> solve(const std::vector<Cx>& b) const;

    Factor(Factor&&) noexcept;
    Factor& operator=(Factor&&) noexcept;
    ~Factor();

private:
    struct Inner;
    explicit Factor(std::unique_ptr<const Inner> inner);
    std::unique_ptr<const Inner> inner_;
};

} // namespace pelt::develop
