// SPDX-License-Identifier: MIT
#include "order/measure_first.hpp"

#include "model/random.hpp"

#include <algorithm>
#include <numeric>

namespace pelt::order {
namespace {

constexpr std::size_t reshufflings = 100;
constexpr std::size_t not_reached_by = 95;

/// Less their mean.
std::vector<double> centred(std::vector<double> values) {
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) /
                        static_cast<double>(std::max<std::size_t>(1, values.size()));
    for (double& value : values)
        value -= mean;
    return values;
}

double product(const std::vector<double>& a, const std::vector<double>& b) {
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

/// One panel's two factors, ready for regressions of any lengths on both.
struct Regressors {
    std::vector<double> x;
    std::vector<double> y;
    double xx = 0;
    double xy = 0;
    double yy = 0;

    Regressors(std::vector<double> of_x, std::vector<double> of_y)
        : x(centred(std::move(of_x))), y(centred(std::move(of_y))), xx(product(x, x)),
          xy(product(x, y)), yy(product(y, y)) {}

    /// Of the variance of `lengths`, which are centred and whose squares sum up to `all`.
    double share(const std::vector<double>& lengths, double all) const {
        const double determinant = xx * yy - xy * xy;
        if (all <= 0 || determinant <= 0)
            return 0;
        const double lx = product(x, lengths);
        const double ly = product(y, lengths);
        return (yy * lx * lx - 2 * xy * lx * ly + xx * ly * ly) / determinant / all;
    }
};

/// The draws that have a length.
struct Sample {
    std::vector<double> lengths; ///< centred
    double all = 0;              ///< the sum of their squares
    std::vector<Regressors> panels;
};

Sample sample_of(const std::vector<Draw>& draws, const Factors& factors) {
    const auto with_length = [&](const auto& value_of) {
        std::vector<double> out;
        for (std::size_t i = 0; i < draws.size(); ++i)
            if (draws[i].length)
                out.push_back(value_of(i));
        return out;
    };
    Sample out;
    out.lengths = centred(with_length(
        [&](std::size_t i) { return static_cast<double>(*draws[i].length); }));
    out.all = product(out.lengths, out.lengths);
    for (const PanelNormals& panel : factors.panels)
        out.panels.emplace_back(with_length([&](std::size_t i) { return panel.x[i]; }),
                                with_length([&](std::size_t i) { return panel.y[i]; }));
    return out;
}

double largest_share(const Sample& sample, const std::vector<double>& lengths) {
    double largest = 0;
    for (const Regressors& panel : sample.panels)
        largest = std::max(largest, panel.share(lengths, sample.all));
    return largest;
}

std::vector<PanelShare> shares_in(const Sample& sample, const Factors& factors) {
    std::vector<PanelShare> out;
    for (std::size_t i = 0; i < factors.panels.size(); ++i)
        out.push_back({factors.panels[i].panel.vehicle, factors.panels[i].panel.panel,
                       100 * sample.panels[i].share(sample.lengths, sample.all)});
    return out;
}

} // namespace

std::vector<PanelShare> measure_first(const std::vector<Draw>& draws, const Factors& factors,
                                      std::uint64_t seed) {
    const Sample sample = sample_of(draws, factors);
    std::vector<double> lengths = sample.lengths;
    std::vector<double> by_chance;
    Random random(seed);
    for (std::size_t i = 0; i < reshufflings; ++i) {
        random.shuffle(lengths);
        by_chance.push_back(100 * largest_share(sample, lengths));
    }
    std::sort(by_chance.begin(), by_chance.end());
    std::vector<PanelShare> out = shares_in(sample, factors);
    std::erase_if(out, [&](const PanelShare& share) {
        return share.percent <= by_chance[not_reached_by - 1];
    });
    std::stable_sort(out.begin(), out.end(), [](const PanelShare& a, const PanelShare& b) {
        return a.percent > b.percent;
    });
    return out;
}

} // namespace pelt::order
