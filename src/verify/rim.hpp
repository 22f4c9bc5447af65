// SPDX-License-Identifier: MIT
// A polygon's edges, in bands across y, so that a look at one place costs little however many
// points the polygon has. Inside verify/ only.
#pragma once

#include "verify/exact.hpp"

#include <cstdint>
#include <vector>

namespace pelt::verify {

/// A directed edge; the film lies to its left.
struct Edge {
    GridPoint from;
    GridPoint to;
};
inline Box box_of_edge(const Edge& edge) {
    const bool right = edge.from.x < edge.to.x;
    const bool up = edge.from.y < edge.to.y;
    return {{right ? edge.from.x : edge.to.x, up ? edge.from.y : edge.to.y},
            {right ? edge.to.x : edge.from.x, up ? edge.to.y : edge.from.y}};
}

enum class Where { inside, on_rim, outside };

class Rim {
public:
    /// Every coordinate is within the range of exact.hpp; rings may be unsound, and there may be
    /// none.
    explicit Rim(const std::vector<Ring>& rings);
    explicit Rim(const Polygon& polygon);

    const std::vector<Edge>& edges() const { return edges_; }
    const Box& box() const { return box_; }

    /// Calls `visit(edge)` once for every edge whose box meets `place`, until it returns false.
    /// Gives back whether it never did.
    template <class Visit>
    bool each_near(const Box& place, Visit&& visit) const;

    /// `point` is given in half micrometres, so that the middle between two grid points has its
    /// place too.
    Where where_doubled(GridPoint point) const;
    Where where(GridPoint point) const { return where_doubled(doubled(point)); }

    /// How often the rings wind around the places just right (towards +x) of the point and just
    /// left of it. Half micrometres; the point is not the height of a vertex that it touches.
    struct Windings {
        int right = 0;
        int left = 0;
    };
    Windings windings_doubled(GridPoint point) const;

    /// How often the rings wind around a place half a micrometre above the point, where no vertex
    /// has its height.
    int winding(GridPoint point) const {
        return windings_doubled({2 * point.x, 2 * point.y + 1}).right;
    }

    /// The point lies in or on the polygon, or nearer than `slack` + 1 to it.
    bool holds(GridPoint point, Um slack) const;
    /// The point lies nearer than `slack` + 1 to the rim.
    bool near_rim(GridPoint point, Um slack) const;

private:
    void index();
    std::size_t band_of(Um y) const {
        const Um inside = y < box_.low.y ? box_.low.y : y > box_.high.y ? box_.high.y : y;
        return static_cast<std::size_t>(inside - box_.low.y) >> band_bits_;
    }

    std::vector<Edge> edges_;
    Box box_{};
    int band_bits_ = 0;                ///< a band is so many bits high
    std::vector<std::uint32_t> first_; ///< by band: where its edges begin in listed_
    std::vector<std::uint32_t> listed_;
};

template <class Visit>
bool Rim::each_near(const Box& place, Visit&& visit) const {
    if (edges_.empty() || !meet(place, box_))
        return true;
    const std::size_t lowest = band_of(place.low.y);
    const std::size_t highest = band_of(place.high.y);
    for (std::size_t band = lowest; band <= highest; ++band)
        for (std::uint32_t i = first_[band]; i < first_[band + 1]; ++i) {
            const Edge& edge = edges_[listed_[i]];
            const Box box = box_of_edge(edge);
            if (!meet(box, place))
                continue;
            // An edge stands in every band that it runs through; it counts in the first of these.
            const std::size_t begins = lowest == highest ? lowest : band_of(box.low.y);
            if (band == (begins > lowest ? begins : lowest) && !visit(edge))
                return false;
        }
    return true;
}

} // namespace pelt::verify
