// SPDX-License-Identifier: MIT
#define EIGEN_MPL2_ONLY
// Scalar arithmetic, so that every machine adds in the same order.
#define EIGEN_DONT_VECTORIZE
#define EIGEN_DONT_PARALLELIZE
#include "develop/surface/sparse.hpp"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <utility>

namespace pelt::develop {
namespace {

using Matrix = Eigen::SparseMatrix<double>;

constexpr double trusted_residual = 1e-8;

Matrix matrix_of(int size, const std::vector<Entry>& entries) {
    std::vector<Eigen::Triplet<double>> triplets;
    triplets.reserve(entries.size());
    for (const Entry& e : entries)
        triplets.emplace_back(e.row, e.column, e.value);
    Matrix lower(size, size);
    lower.setFromTriplets(triplets.begin(), triplets.end());
    return lower;
}

} // namespace

/// P A P^T = L D L^T, the columns of L below its diagonal of ones one after the other.
struct Factor::Inner {
    std::size_t size = 0;
    std::vector<std::size_t> place; ///< of each unknown in the order of L
    std::vector<std::size_t> first; ///< where each column begins; one more than columns
    std::vector<std::size_t> row;
    std::vector<double> value;
    std::vector<double> inverse_diagonal;

    template <class Number>
    std::vector<Number> solve(const std::vector<Number>& b) const {
        std::vector<Number> y(size);
        for (std::size_t i = 0; i < size; ++i)
            y[place[i]] = b[i];
        for (std::size_t c = 0; c < size; ++c) {
            const Number known = y[c];
            for (std::size_t k = first[c]; k < first[c + 1]; ++k)
                y[row[k]] = y[row[k]] - value[k] * known;
        }
        for (std::size_t c = size; c-- > 0;) {
            Number sum = inverse_diagonal[c] * y[c];
            for (std::size_t k = first[c]; k < first[c + 1]; ++k)
                sum = sum - value[k] * y[row[k]];
            y[c] = sum;
        }
        std::vector<Number> x(size);
        for (std::size_t i = 0; i < size; ++i)
            x[i] = y[place[i]];
        return x;
    }
};

Factor::Factor(std::unique_ptr<const Inner> inner) : inner_(std::move(inner)) {}
Factor::Factor(Factor&&) noexcept = default;
Factor& Factor::operator=(Factor&&) noexcept = default;
Factor::~Factor() = default;

std::optional<Factor> Factor::of(int size, const std::vector<Entry>& entries) {
    const Matrix lower = matrix_of(size, entries);
    const Eigen::SimplicialLDLT<Matrix> ldlt(lower);
    if (ldlt.info() != Eigen::Success || !(ldlt.vectorD().minCoeff() > 0))
        return std::nullopt;
    auto inner = std::make_unique<Inner>();
    inner->size = static_cast<std::size_t>(size);
    const Eigen::Index n = size;
    for (Eigen::Index i = 0; i < n; ++i)
        inner->place.push_back(static_cast<std::size_t>(ldlt.permutationP().indices()[i]));
    const Matrix& factor = ldlt.matrixL().nestedExpression();
    for (Eigen::Index c = 0; c < n; ++c) {
        inner->first.push_back(inner->row.size());
        for (Matrix::InnerIterator it(factor, c); it; ++it)
            if (it.row() > c) {
                inner->row.push_back(static_cast<std::size_t>(it.row()));
                inner->value.push_back(it.value());
            }
        inner->inverse_diagonal.push_back(1 / ldlt.vectorD()[c]);
    }
    inner->first.push_back(inner->row.size());
    Factor made(std::move(inner));
    const Eigen::VectorXd wanted = Eigen::VectorXd::LinSpaced(size, 1, 2);
    const Eigen::VectorXd b = lower.selfadjointView<Eigen::Lower>() * wanted;
    const std::vector<double> found = made.solve(std::vector<double>(b.data(), b.data() + n));
    const Eigen::VectorXd again =
        lower.selfadjointView<Eigen::Lower>() * Eigen::Map<const Eigen::VectorXd>(found.data(), n);
    if (!((again - b).norm() <= trusted_residual * b.norm()))
        return std::nullopt;
    return made;
}

std::vector<double> Factor::solve(const std::vector<double>& b) const {
    return inner_->solve(b);
}
std::vector<Cx> Factor::solve(const std::vector<Cx>& b) const {
    return inner_->solve(b);
}

} // namespace pelt::develop
