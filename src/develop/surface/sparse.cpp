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
using Columns = Eigen::Map<const Eigen::MatrixXd>;

constexpr double trusted_residual = 1e-8;

} // namespace

struct Factor::Inner {
    Eigen::SimplicialLDLT<Matrix> ldlt;
    Eigen::Index size = 0;
};

Factor::Factor(std::unique_ptr<Inner> inner) : inner_(std::move(inner)) {}
Factor::Factor(Factor&&) noexcept = default;
Factor& Factor::operator=(Factor&&) noexcept = default;
Factor::~Factor() = default;

std::optional<Factor> Factor::of(int size, const std::vector<Entry>& entries) {
    std::vector<Eigen::Triplet<double>> triplets;
    triplets.reserve(entries.size());
    for (const Entry& e : entries)
        triplets.emplace_back(e.row, e.column, e.value);
    Matrix lower(size, size);
    lower.setFromTriplets(triplets.begin(), triplets.end());
    auto inner = std::make_unique<Inner>();
    inner->size = size;
    inner->ldlt.compute(lower);
    if (inner->ldlt.info() != Eigen::Success || !(inner->ldlt.vectorD().minCoeff() > 0))
        return std::nullopt;
    const Eigen::VectorXd wanted = Eigen::VectorXd::LinSpaced(size, 1, 2);
    const Eigen::VectorXd b = lower.selfadjointView<Eigen::Lower>() * wanted;
    const Eigen::VectorXd found = inner->ldlt.solve(b);
    const Eigen::VectorXd again = lower.selfadjointView<Eigen::Lower>() * found;
    if (inner->ldlt.info() != Eigen::Success ||
        !((again - b).norm() <= trusted_residual * b.norm()))
        return std::nullopt;
    return Factor(std::move(inner));
}

std::vector<double> Factor::solve(const std::vector<double>& b, int columns) const {
    std::vector<double> x(b.size());
    Eigen::Map<Eigen::MatrixXd>(x.data(), inner_->size, columns) =
        inner_->ldlt.solve(Columns(b.data(), inner_->size, columns));
    return x;
}

} // namespace pelt::develop
