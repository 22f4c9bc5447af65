// SPDX-License-Identifier: MIT
#include "verify/rim.hpp"

#include <algorithm>

namespace pelt::verify {
namespace {

void add_edges(const Ring& ring, std::vector<Edge>& edges) {
    for (std::size_t i = 0; i < ring.size(); ++i)
        edges.push_back({ring[i], ring[i + 1 == ring.size() ? 0 : i + 1]});
}

/// The narrowest box on the grid around a point in half micrometres.
Box around_doubled(GridPoint point) {
    const auto down = [](Um v) { return v >= 0 ? v / 2 : (v - 1) / 2; };
    const GridPoint low{down(point.x), down(point.y)};
    return {low, {low.x + (point.x % 2 != 0), low.y + (point.y % 2 != 0)}};
}

} // namespace

Rim::Rim(const std::vector<Ring>& rings) {
    for (const Ring& ring : rings)
        add_edges(ring, edges_);
    index();
}

Rim::Rim(const Polygon& polygon) {
    add_edges(polygon.outer, edges_);
    for (const Ring& hole : polygon.holes)
        add_edges(hole, edges_);
    index();
}

void Rim::index() {
    if (edges_.empty())
        return;
    box_ = box_of_edge(edges_.front());
    for (const Edge& edge : edges_) {
        const Box box = box_of_edge(edge);
        box_ = {{std::min(box_.low.x, box.low.x), std::min(box_.low.y, box.low.y)},
                {std::max(box_.high.x, box.high.x), std::max(box_.high.y, box.high.y)}};
    }
    const Um wanted = std::clamp<Um>(static_cast<Um>(edges_.size()), 1, 1024);
    while ((box_.across() >> band_bits_) > wanted)
        ++band_bits_;
    const std::size_t bands = band_of(box_.high.y) + 1;
    first_.assign(bands + 1, 0);
    const auto each_band = [&](const Edge& edge, auto&& call) {
        const Box box = box_of_edge(edge);
        for (std::size_t band = band_of(box.low.y); band <= band_of(box.high.y); ++band)
            call(band);
    };
    for (const Edge& edge : edges_)
        each_band(edge, [&](std::size_t band) { ++first_[band + 1]; });
    for (std::size_t band = 0; band < bands; ++band)
        first_[band + 1] += first_[band];
    listed_.resize(first_.back());
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for (std::size_t i = 0; i < edges_.size(); ++i)
        each_band(edges_[i],
                  [&](std::size_t band) { listed_[next[band]++] = static_cast<std::uint32_t>(i); });
}

// Every edge that is as high as the point stands in the one band where the point lies.
Rim::Windings Rim::windings_doubled(GridPoint point) const {
    Windings out;
    const auto below = [](Um v) { return v >= 0 ? v / 2 : (v - 1) / 2; };
    if (edges_.empty() || point.y < 2 * box_.low.y || point.y > 2 * box_.high.y ||
        point.x > 2 * box_.high.x)
        return out;
    int through = 0;
    const std::size_t band = band_of(below(point.y));
    for (std::uint32_t i = first_[band]; i < first_[band + 1]; ++i) {
        const GridPoint a = doubled(edges_[listed_[i]].from);
        const GridPoint b = doubled(edges_[listed_[i]].to);
        const bool up = a.y <= point.y && point.y < b.y;
        const bool down = b.y <= point.y && point.y < a.y;
        if (!(up || down) || (a.x < point.x && b.x < point.x))
            continue;
        const bool far_right = a.x > point.x && b.x > point.x;
        const int left_of = far_right ? 1 : up ? side(a, b, point) : -side(a, b, point);
        const int sign = up ? 1 : -1;
        out.right += left_of > 0 ? sign : 0;
        through += left_of == 0 ? sign : 0;
    }
    out.left = out.right + through;
    return out;
}

Where Rim::where_doubled(GridPoint point) const {
    const bool off_rim = each_near(around_doubled(point), [&](const Edge& edge) {
        return !on_segment(doubled(edge.from), doubled(edge.to), point);
    });
    if (!off_rim)
        return Where::on_rim;
    return windings_doubled(point).right != 0 ? Where::inside : Where::outside;
}

bool Rim::near_rim(GridPoint point, Um slack) const {
    return !each_near(grown({point, point}, slack + 1), [&](const Edge& edge) {
        return point_apart(point, edge.from, edge.to, slack + 1);
    });
}

bool Rim::holds(GridPoint point, Um slack) const {
    return where(point) != Where::outside || near_rim(point, slack);
}

} // namespace pelt::verify
