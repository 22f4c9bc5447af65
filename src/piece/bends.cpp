// SPDX-License-Identifier: MIT
#include "piece/bends.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace pelt::piece {
namespace {

/// Between neighbouring sides, more than this is a corner, less is a bend.
constexpr double corner = std::numbers::pi / 9;

class Bends {
public:
    /// `width`: of each edge's tuck.
    Bends(const TaggedRing& ring, std::vector<double> width)
        : ring_(ring), width_(std::move(width)), bend_(width_.size()) {
        const std::size_t n = ring.points.size();
        for (std::size_t i = 0; i < n; ++i) {
            const Point a = at(i);
            const Point b = at(i + 1);
            length_.push_back(std::hypot(b.x - a.x, b.y - a.y));
            way_.push_back(std::atan2(b.y - a.y, b.x - a.x));
        }
    }

    /// Of each edge.
    std::vector<Bend> found() {
        for (std::size_t i = 0; i < ring_.points.size(); ++i) {
            const auto edge = static_cast<std::size_t>(ring_.edge[i]);
            if (width_[edge] > 0)
                look_from(i, edge, width_[edge]);
        }
        return bend_;
    }

private:
    const Point& at(std::size_t i) const { return ring_.points[i % ring_.points.size()]; }

    /// Counter-clockwise from side i to the next one, -pi to pi.
    double turn_after(std::size_t i) const {
        const std::size_t n = way_.size();
        return std::remainder(way_[(i + 1) % n] - way_[i % n], 2 * std::numbers::pi);
    }

    /// The turning over the tuck's width from the middle of side i on, up to the next corner or the
    /// end of the tuck.
    void look_from(std::size_t i, std::size_t edge, double width) {
        const std::size_t n = ring_.points.size();
        double run = length_[i] / 2;
        double turned = 0;
        std::size_t sides = 1;
        for (std::size_t k = i; sides < n; ++k, ++sides) {
            const double turn = turn_after(k);
            const std::size_t next = (k + 1) % n;
            if (std::abs(turn) > corner ||
                !(width_[static_cast<std::size_t>(ring_.edge[next])] > 0))
                return;
            // A bulging corner between two edges is folded, not gathered.
            if (turn > 0 && static_cast<std::size_t>(ring_.edge[next]) != edge)
                return;
            turned += turn;
            const double half = length_[next] / 2;
            run += half;
            if (run >= width || sides + 1 == n) {
                note(edge, run, turned, sides);
                return;
            }
            run += half;
        }
    }

    /// Chords run short of their arc: by sin d / d, where each turns by 2 d.
    void note(std::size_t edge, double run, double turned, std::size_t turns) {
        Bend& bend = bend_[edge];
        const double d = std::abs(turned) / (2 * static_cast<double>(turns));
        const double radius = d > 0 ? run / (2 * static_cast<double>(turns) * std::sin(d))
                                    : std::numeric_limits<double>::infinity();
        if (turned < 0)
            bend.hollow = std::min(bend.hollow, radius);
        else if (turned > 0)
            bend.bulging = std::min(bend.bulging, radius);
    }

    const TaggedRing& ring_;
    std::vector<double> width_;
    std::vector<double> length_;
    std::vector<double> way_;
    std::vector<Bend> bend_;
};

} // namespace

std::vector<Bend> bends_of(const TaggedRing& ring, std::vector<double> width) {
    return Bends(ring, std::move(width)).found();
}

} // namespace pelt::piece
