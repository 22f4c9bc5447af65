// SPDX-License-Identifier: MIT
#include "model/monotone_cubic.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt {

MonotoneCubic::MonotoneCubic(std::vector<double> x, std::vector<double> y)
    : x_(std::move(x)), y_(std::move(y)) {
    for (std::size_t i = 0; i < x_.size(); ++i)
        slope_.push_back(limited(i, parabola_slope(i)));
}

double MonotoneCubic::slope_of_chord(std::size_t interval) const {
    return (y_[interval + 1] - y_[interval]) / (x_[interval + 1] - x_[interval]);
}

/// The slope at a point of the parabola through it and its two neighbours (its two nearest points
/// at an end); of the straight line where there are but two points.
double MonotoneCubic::parabola_slope(std::size_t point) const {
    const std::size_t last = x_.size() - 1;
    if (last == 1)
        return slope_of_chord(0);
    const std::size_t middle = std::clamp<std::size_t>(point, 1, last - 1);
    const double before = x_[middle] - x_[middle - 1];
    const double after = x_[middle + 1] - x_[middle];
    const double chord_before = slope_of_chord(middle - 1);
    const double chord_after = slope_of_chord(middle);
    const double bend = (chord_after - chord_before) / (before + after);
    const double at_middle = chord_before + bend * before;
    return at_middle + 2 * bend * (x_[point] - x_[middle]);
}

double MonotoneCubic::limited(std::size_t point, double slope) const {
    const std::size_t last = x_.size() - 1;
    const double before = slope_of_chord(point == 0 ? 0 : point - 1);
    const double after = slope_of_chord(point == last ? last - 1 : point);
    if (before * after <= 0 || before * slope <= 0)
        return 0;
    return std::copysign(std::min(std::abs(slope), 3 * std::min(std::abs(before), std::abs(after))),
                         before);
}

double MonotoneCubic::at(std::size_t interval, double t) const {
    const double width = x_[interval + 1] - x_[interval];
    const double rise = y_[interval + 1] - y_[interval];
    const double from = width * slope_[interval] - rise;
    const double to = rise - width * slope_[interval + 1];
    return y_[interval] + t * (rise + (1 - t) * (from * (1 - t) + to * t));
}

int MonotoneCubic::chords(std::size_t interval, double tolerance) const {
    const double rise = y_[interval + 1] - y_[interval];
    const double width = x_[interval + 1] - x_[interval];
    const double a = width * slope_[interval];
    const double b = width * slope_[interval + 1];
    // The second derivative by t runs straight between these two; a chord over the share 1/n lies
    // at most its largest value / (8 n²) from the curve.
    const double bend =
        std::max(std::abs(6 * rise - 4 * a - 2 * b), std::abs(2 * a + 4 * b - 6 * rise));
    return std::max(1, static_cast<int>(std::ceil(std::sqrt(bend / (8 * tolerance)))));
}

} // namespace pelt
