// SPDX-License-Identifier: MIT
#include "nest/contour/descent.hpp"

#include <algorithm>
#include <limits>

namespace pelt::nest::contour {
namespace {

class Best {
public:
    Best(const std::vector<Border>& borders, const Span& bounds)
        : borders_(borders), bounds_(bounds) {}

    void try_move(Vec d) {
        if (d.x < bounds_.low.x || d.x > bounds_.high.x || d.y < bounds_.low.y ||
            d.y > bounds_.high.y)
            return;
        // A thousandth of a micrometre's violation for each millimetre moved decides ties.
        double value = 1e-6 * (std::abs(d.x) + std::abs(d.y));
        for (const Border& border : borders_) {
            const double left = border.shortfall - dot(border.away, d);
            if (left > 0)
                value += border.weight * left;
            if (value >= value_)
                return;
        }
        value_ = value;
        move_ = d;
    }

    void try_clamped(Vec d) {
        try_move({std::min(std::max(d.x, bounds_.low.x), bounds_.high.x),
                  std::min(std::max(d.y, bounds_.low.y), bounds_.high.y)});
    }

    Vec move() const { return move_; }

private:
    const std::vector<Border>& borders_;
    const Span& bounds_;
    double value_ = std::numeric_limits<double>::infinity();
    Vec move_;
};

} // namespace

Vec best_move(const std::vector<Border>& borders, const Span& bounds) {
    Best best(borders, bounds);
    best.try_move({});
    for (std::size_t i = 0; i < borders.size(); ++i) {
        const Border& a = borders[i];
        if (a.shortfall > 0)
            best.try_clamped(a.shortfall * a.away);
        for (const double x : {bounds.low.x, bounds.high.x})
            if (std::abs(a.away.y) > 1e-3)
                best.try_move({x, (a.shortfall - a.away.x * x) / a.away.y});
        for (const double y : {bounds.low.y, bounds.high.y})
            if (std::abs(a.away.x) > 1e-3)
                best.try_move({(a.shortfall - a.away.y * y) / a.away.x, y});
        for (std::size_t j = i + 1; j < borders.size(); ++j) {
            const Border& b = borders[j];
            const double turn = cross(a.away, b.away);
            if (std::abs(turn) > 1e-3)
                best.try_move({(a.shortfall * b.away.y - b.shortfall * a.away.y) / turn,
                               (a.away.x * b.shortfall - b.away.x * a.shortfall) / turn});
        }
    }
    for (const double x : {bounds.low.x, bounds.high.x})
        for (const double y : {bounds.low.y, bounds.high.y})
            best.try_move({x, y});
    return best.move();
}

} // namespace pelt::nest::contour
