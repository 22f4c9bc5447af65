// SPDX-License-Identifier: MIT
#include "develop/surface/surface_edges.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace pelt::develop {
namespace {

constexpr std::array<Point, 4> ways{Point{0, -1}, Point{1, 0}, Point{0, 1}, Point{-1, 0}};
constexpr int down = 0;

/// Ties go to down and up, as with drawn outlines.
int way_of(Point normal) {
    if (std::abs(normal.y) >= std::abs(normal.x))
        return normal.y > 0 ? 2 : 0;
    return normal.x > 0 ? 1 : 3;
}

/// A stretch of sides that look one way.
struct Run {
    std::size_t first = 0;
    std::size_t count = 0;
    int way = 0;
    double length = 0;
};

class Divider {
public:
    explicit Divider(const std::vector<Point>& ring) : ring_(ring), n_(ring.size()) {
        for (std::size_t i = 0; i < n_; ++i) {
            const Point a = ring_[i];
            const Point b = ring_[(i + 1) % n_];
            length_.push_back(std::hypot(b.x - a.x, b.y - a.y));
            around_ += length_.back();
        }
    }

    DividedRing run() {
        find_runs();
        absorb_short_ones();
        std::size_t best = 0;
        for (std::size_t i = 0; i < runs_.size(); ++i)
            if ((runs_[i].way == down) > (runs_[best].way == down) ||
                ((runs_[i].way == down) == (runs_[best].way == down) &&
                 runs_[i].length > runs_[best].length))
                best = i;
        std::rotate(runs_.begin(), runs_.begin() + static_cast<std::ptrdiff_t>(best), runs_.end());
        return result();
    }

private:
    /// The direction of the chord over a little of the ring about the middle of a side.
    int smoothed_way(std::size_t side) const {
        const double reach = around_ / 50;
        std::size_t from = side;
        std::size_t to = (side + 1) % n_;
        double back = length_[side] / 2;
        double ahead = back;
        for (std::size_t steps = 0; steps < n_ / 4 && back < reach; ++steps) {
            from = (from + n_ - 1) % n_;
            back += length_[from];
        }
        for (std::size_t steps = 0; steps < n_ / 4 && ahead < reach; ++steps) {
            ahead += length_[to];
            to = (to + 1) % n_;
        }
        const Point a = ring_[from];
        const Point b = ring_[to];
        return way_of({b.y - a.y, a.x - b.x});
    }

    void find_runs() {
        for (std::size_t i = 0; i < n_; ++i) {
            const int way = smoothed_way(i);
            if (runs_.empty() || runs_.back().way != way)
                runs_.push_back({i, 0, way, 0});
            ++runs_.back().count;
            runs_.back().length += length_[i];
        }
        join_ends();
    }

    void join_ends() {
        if (runs_.size() < 2 || runs_.front().way != runs_.back().way)
            return;
        runs_.front().first = runs_.back().first;
        runs_.front().count += runs_.back().count;
        runs_.front().length += runs_.back().length;
        runs_.pop_back();
    }

    void absorb_short_ones() {
        const double least = around_ / 40;
        while (runs_.size() > 2) {
            const auto shortest =
                std::min_element(runs_.begin(), runs_.end(),
                                 [](const Run& a, const Run& b) { return a.length < b.length; });
            if (shortest->length >= least)
                return;
            const auto at = static_cast<std::size_t>(shortest - runs_.begin());
            const std::size_t before = (at + runs_.size() - 1) % runs_.size();
            const std::size_t after = (at + 1) % runs_.size();
            // Two of one way are joined over it, else it goes to the longer neighbour.
            runs_[at].way =
                runs_[before].length >= runs_[after].length ? runs_[before].way : runs_[after].way;
            join_equal_neighbours();
        }
    }

    void join_equal_neighbours() {
        std::vector<Run> joined;
        for (const Run& run : runs_) {
            if (!joined.empty() && joined.back().way == run.way) {
                joined.back().count += run.count;
                joined.back().length += run.length;
            } else {
                joined.push_back(run);
            }
        }
        runs_ = std::move(joined);
        join_ends();
    }

    DividedRing result() const {
        DividedRing out;
        for (std::size_t e = 0; e < runs_.size(); ++e) {
            const Run& run = runs_[e];
            for (std::size_t k = 0; k < run.count; ++k) {
                out.ring.points.push_back(ring_[(run.first + k) % n_]);
                out.ring.edge.push_back(static_cast<int>(e));
            }
            out.edges.push_back(
                {std::to_string(e + 1) + "-" + std::to_string((e + 1) % runs_.size() + 1), "",
                 ways[static_cast<std::size_t>(run.way)], false});
        }
        return out;
    }

    const std::vector<Point>& ring_;
    std::size_t n_;
    std::vector<double> length_;
    double around_ = 0;
    std::vector<Run> runs_;
};

} // namespace

DividedRing divided_ring(const std::vector<Point>& ring) {
    return Divider(ring).run();
}

} // namespace pelt::develop
