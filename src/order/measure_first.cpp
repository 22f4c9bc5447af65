// SPDX-License-Identifier: MIT
#include "order/measure_first.hpp"

#include "model/random.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pelt::order {
namespace {

constexpr std::size_t reshufflings = 100;
constexpr std::size_t not_reached_by = 95;
/// A fit of all factors at once wants so many draws for each of them.
constexpr std::size_t draws_a_factor = 3;
/// Factors are nearly uncorrelated: a few rounds fit them all to many digits.
constexpr int rounds = 12;
/// A difference of two shares so many standard errors large comes by chance in 1 of 20 cases (one
/// side of the normal distribution).
constexpr double clearly = 1.645;

using Numbers = std::vector<double>;

/// Less their mean.
Numbers centered(Numbers values) {
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) /
                        static_cast<double>(std::max<std::size_t>(1, values.size()));
    for (double& value : values)
        value -= mean;
    return values;
}

double product(const Numbers& a, const Numbers& b) {
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

/// One factor in all draws, centered.
struct Column {
    Numbers values;
    double squares = 0;

    explicit Column(Numbers of)
        : values(centered(std::move(of))), squares(product(values, values)) {}
};

/// The draws that have a length. Panel i has the columns 2 i and 2 i + 1; the axes follow them.
struct Sample {
    Numbers lengths; ///< centered
    std::vector<Column> columns;
    std::size_t panels = 0;

    bool fits_at_once() const { return lengths.size() >= draws_a_factor * columns.size(); }
};

Sample sample_of(const std::vector<Draw>& draws, const Factors& factors) {
    const auto with_length = [&](const auto& value_of) {
        Numbers out;
        for (std::size_t i = 0; i < draws.size(); ++i)
            if (draws[i].length)
                out.push_back(value_of(i));
        return out;
    };
    Sample out;
    out.lengths =
        centered(with_length([&](std::size_t i) { return static_cast<double>(*draws[i].length); }));
    const auto add = [&](const Normals& factor) {
        out.columns.emplace_back(with_length([&](std::size_t i) { return factor[i]; }));
    };
    for (const PanelNormals& panel : factors.panels) {
        add(panel.x);
        add(panel.y);
    }
    for (const Normals& axis : factors.axes)
        add(axis);
    out.panels = factors.panels.size();
    return out;
}

/// How lengths follow the factors, and what of them follows none.
struct Fit {
    Numbers slopes; ///< a column each
    Numbers rest;
};

/// Least squares by Gauss and Seidel: each factor in turn is fitted to what the others leave.
Fit fit_at_once(const Sample& sample, const Numbers& lengths) {
    Fit out{Numbers(sample.columns.size(), 0.0), lengths};
    for (int round = 0; round < rounds; ++round)
        for (std::size_t c = 0; c < sample.columns.size(); ++c) {
            const Column& column = sample.columns[c];
            if (column.squares <= 0)
                continue;
            const double step = product(column.values, out.rest) / column.squares;
            out.slopes[c] += step;
            for (std::size_t i = 0; i < out.rest.size(); ++i)
                out.rest[i] -= step * column.values[i];
        }
    return out;
}

/// Each factor as if it were the only one: what the others do is told as chance.
Fit fit_one_by_one(const Sample& sample, const Numbers& lengths) {
    Fit out{{}, lengths};
    for (const Column& column : sample.columns)
        out.slopes.push_back(column.squares > 0 ? product(column.values, lengths) / column.squares
                                                : 0);
    return out;
}

Fit fit(const Sample& sample, const Numbers& lengths) {
    return sample.fits_at_once() ? fit_at_once(sample, lengths) : fit_one_by_one(sample, lengths);
}

/// Of `all`, the sum of the squares of the lengths: what a panel's own two factors make.
Numbers shares_of_panels(const Sample& sample, const Fit& fitted, double all) {
    Numbers out;
    for (std::size_t panel = 0; panel < sample.panels; ++panel) {
        const Column& x = sample.columns[2 * panel];
        const Column& y = sample.columns[2 * panel + 1];
        const double a = fitted.slopes[2 * panel];
        const double b = fitted.slopes[2 * panel + 1];
        out.push_back(
            (a * a * x.squares + 2 * a * b * product(x.values, y.values) + b * b * y.squares) /
            all);
    }
    return out;
}

/// What no factor explains, as large as it is in truth: a fit makes the rest too small.
Numbers chance_in(const Sample& sample, const Fit& fitted) {
    if (!sample.fits_at_once())
        return fitted.rest;
    const auto draws = static_cast<double>(sample.lengths.size());
    const double times =
        std::sqrt(draws / (draws - 1 - static_cast<double>(sample.columns.size())));
    Numbers out = fitted.rest;
    for (double& value : out)
        value *= times;
    return out;
}

/// The largest share that `not_reached_by` of the reshufflings give to no panel.
double share_by_chance(const Sample& sample, Numbers chance, double all, std::uint64_t seed) {
    Numbers largest;
    Random random(seed);
    for (std::size_t i = 0; i < reshufflings; ++i) {
        random.shuffle(chance);
        const Numbers shares = shares_of_panels(sample, fit(sample, chance), all);
        largest.push_back(*std::max_element(shares.begin(), shares.end()));
    }
    std::sort(largest.begin(), largest.end());
    return largest[not_reached_by - 1];
}

/// Equal ranks where the shares are not clearly apart: a slope's error is that of `chance`.
void set_ranks(std::vector<PanelShare>& shares, double chance_a_draw) {
    std::size_t first = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const double sum = (shares[first].percent + shares[i].percent) / 100;
        const double error = 2 * std::sqrt(sum * chance_a_draw);
        if (shares[first].percent - shares[i].percent > 100 * clearly * error)
            first = i;
        shares[i].rank = static_cast<int>(first) + 1;
    }
}

} // namespace

std::vector<PanelShare> measure_first(const std::vector<Draw>& draws, const Factors& factors,
                                      std::uint64_t seed) {
    const Sample sample = sample_of(draws, factors);
    const double all = product(sample.lengths, sample.lengths);
    if (sample.panels == 0 || all <= 0)
        return {};
    const Fit fitted = fit(sample, sample.lengths);
    const Numbers chance = chance_in(sample, fitted);
    const double by_chance = share_by_chance(sample, chance, all, seed);
    const Numbers shares = shares_of_panels(sample, fitted, all);
    std::vector<PanelShare> out;
    for (std::size_t i = 0; i < shares.size(); ++i)
        if (shares[i] > by_chance)
            out.push_back(
                {factors.panels[i].panel.vehicle, factors.panels[i].panel.panel, 100 * shares[i]});
    std::stable_sort(out.begin(), out.end(), [](const PanelShare& a, const PanelShare& b) {
        return a.percent > b.percent;
    });
    const auto count = static_cast<double>(sample.lengths.size());
    set_ranks(out, product(chance, chance) / all / count);
    return out;
}

} // namespace pelt::order
