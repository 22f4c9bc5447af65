// SPDX-License-Identifier: MIT
// The one place that includes libpolyclipping. Its unit is our grid: one micrometre.
#include "geometry/geometry.hpp"

#include <clipper.hpp>

namespace pelt::geometry {
namespace {

ClipperLib::Path path_of(const Ring& ring) {
    ClipperLib::Path path;
    path.reserve(ring.size());
    for (const GridPoint& p : ring)
        path.emplace_back(p.x, p.y);
    return path;
}

Ring ring_of(const ClipperLib::Path& path) {
    Ring ring;
    ring.reserve(path.size());
    for (const ClipperLib::IntPoint& p : path)
        ring.push_back({p.X, p.Y});
    return ring;
}

void collect(const ClipperLib::PolyNode& parent, std::vector<Polygon>& out) {
    for (const ClipperLib::PolyNode* outer : parent.Childs) {
        Polygon polygon{ring_of(outer->Contour), {}};
        for (const ClipperLib::PolyNode* hole : outer->Childs) {
            polygon.holes.push_back(ring_of(hole->Contour));
            collect(*hole, out);
        }
        out.push_back(std::move(polygon));
    }
}

} // namespace

std::vector<Polygon> positive_union(const std::vector<Ring>& curves) {
    ClipperLib::Clipper clipper;
    for (const Ring& curve : curves)
        clipper.AddPath(path_of(curve), ClipperLib::ptSubject, true);
    ClipperLib::PolyTree tree;
    clipper.Execute(ClipperLib::ctUnion, tree, ClipperLib::pftPositive, ClipperLib::pftPositive);
    std::vector<Polygon> out;
    collect(tree, out);
    return out;
}

} // namespace pelt::geometry
