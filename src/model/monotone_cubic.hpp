// SPDX-License-Identifier: MIT
// A smooth curve through measured points that rises and falls only where they do.
#pragma once

#include <cstddef>
#include <vector>

namespace pelt {

/// y over x, a cubic in every interval, with one slope at every point. The slopes are those of the
/// parabola through a point and its neighbours, made smaller where the curve would overshoot, by
/// F. N. Fritsch, R. E. Carlson, "Monotone Piecewise Cubic Interpolation", SIAM J. Numer. Anal.
/// 17 (1980) 238-246 (from memory): zero at a turning point, and within three times the slope of
/// the chord on either side. Reproduces a straight line.
class MonotoneCubic {
public:
    /// x rising, at least two points.
    MonotoneCubic(std::vector<double> x, std::vector<double> y);

    /// The curve in interval i (from point i to point i+1) at the share t of it, 0 … 1.
    double at(std::size_t interval, double t) const;

    /// The curve's slope at a point.
    double slope(std::size_t point) const { return slope_[point]; }

    /// How many equal chords keep within `tolerance` of the curve in interval i, at least 1.
    int chords(std::size_t interval, double tolerance) const;

private:
    double slope_of_chord(std::size_t interval) const;
    double parabola_slope(std::size_t point) const;
    double limited(std::size_t point, double slope) const;

    std::vector<double> x_;
    std::vector<double> y_;
    std::vector<double> slope_;
};

} // namespace pelt
