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

/// From the point to the far right.
Box ray_from(GridPoint doubled_point, const Box& polygon) {
    Box ray = around_doubled(doubled_point);
    ray.high.x = std::max(polygon.high.x, ray.high.x);
    return ray;
}

} // namespace

Box box_of_edge(const Edge& edge) {
    return {{std::min(edge.from.x, edge.to.x), std::min(edge.from.y, edge.to.y)},
            {std::max(edge.from.x, edge.to.x), std::max(edge.from.y, edge.to.y)}};
}

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
    const std::size_t bands = std::clamp<std::size_t>(edges_.size() / 2, 1, 1024);
    band_height_ = box_.across() / static_cast<Um>(bands) + 1;
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

std::size_t Rim::band_of(Um y) const {
    const Um band = (std::clamp(y, box_.low.y, box_.high.y) - box_.low.y) / band_height_;
    return std::min(static_cast<std::size_t>(band), first_.size() - 2);
}

Rim::Windings Rim::windings_doubled(GridPoint point) const {
    Windings out;
    int through = 0;
    each_near(ray_from(point, box_), [&](const Edge& edge) {
        const GridPoint a = doubled(edge.from);
        const GridPoint b = doubled(edge.to);
        const bool up = a.y <= point.y && point.y < b.y;
        const bool down = b.y <= point.y && point.y < a.y;
        if (up || down) {
            const int left_of = up ? side(a, b, point) : -side(a, b, point);
            const int sign = up ? 1 : -1;
            out.right += left_of > 0 ? sign : 0;
            through += left_of == 0 ? sign : 0;
        }
        return true;
    });
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
