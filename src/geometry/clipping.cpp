// SPDX-License-Identifier: MIT
// The one place that includes libpolyclipping. Its unit is our grid: one micrometre.
#include "geometry/geometry.hpp"
#include "geometry/tidy.hpp"
#include "geometry/untangle.hpp"
#include "model/error.hpp"

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

/// What is to be combined, and whether there is anything: rings without an area are left out, and
/// of nothing the library makes nothing with the same answer as when it fails.
class Operands {
public:
    void add(const Ring& ring, ClipperLib::PolyType role) {
        if (clipper_.AddPath(path_of(ring), role, true))
            any_ = true;
    }
    void add(const std::vector<Polygon>& polygons, ClipperLib::PolyType role) {
        for (const Polygon& polygon : polygons) {
            add(polygon.outer, role);
            for (const Ring& hole : polygon.holes)
                add(hole, role);
        }
    }

    /// The library catches whatever is thrown inside it, also that memory ran out, and then says
    /// false: there is no figure then, which is not the empty one.
    void combine(ClipperLib::ClipType operation, ClipperLib::PolyTree& tree) {
        const bool combined =
            clipper_.Execute(operation, tree, ClipperLib::pftPositive, ClipperLib::pftPositive);
        if (!combined && any_)
            throw ProgramError("outlines could not be put together: memory ran out, or "
                               "libpolyclipping failed");
    }

private:
    ClipperLib::Clipper clipper_;
    bool any_ = false;
};

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

/// Not with StrictlySimple: it sometimes leaves figures with a common side apart (138 of 2,000
/// grids of twelve turned tiles; none without it).
std::vector<Polygon> executed(Operands& operands, ClipperLib::ClipType operation) {
    ClipperLib::PolyTree tree;
    operands.combine(operation, tree);
    std::vector<Polygon> out;
    collect(tree, out);
    return tidy(std::move(out));
}

/// Rounded crossings can leave rings that touch themselves: there a notch parts them.
std::vector<Polygon> untangled(std::vector<Polygon> figures) {
    constexpr int most_rounds = 100;
    for (int round = 0; round < most_rounds; ++round) {
        Operands operands;
        bool touching = false;
        for (const Polygon& figure : figures)
            for (const GridPoint& contact : contact_in(figure)) {
                operands.add(notch_at(contact), ClipperLib::ptClip);
                touching = true;
            }
        if (!touching)
            return figures;
        operands.add(figures, ClipperLib::ptSubject);
        figures = executed(operands, ClipperLib::ctDifference);
    }
    throw ProgramError("a figure touches itself however often it is notched");
}

std::vector<Polygon> combined(const std::vector<Polygon>& a, const std::vector<Polygon>& b,
                              ClipperLib::ClipType operation) {
    Operands operands;
    operands.add(a, ClipperLib::ptSubject);
    operands.add(b, ClipperLib::ptClip);
    return untangled(executed(operands, operation));
}

} // namespace

std::vector<Polygon> positive_union(const std::vector<Ring>& curves) {
    Operands operands;
    for (const Ring& curve : curves)
        operands.add(curve, ClipperLib::ptSubject);
    return untangled(executed(operands, ClipperLib::ctUnion));
}

std::vector<Polygon> unite(const std::vector<Polygon>& a, const std::vector<Polygon>& b) {
    return combined(a, b, ClipperLib::ctUnion);
}

std::vector<Polygon> intersect(const std::vector<Polygon>& a, const std::vector<Polygon>& b) {
    return combined(a, b, ClipperLib::ctIntersection);
}

std::vector<Polygon> subtract(const std::vector<Polygon>& a, const std::vector<Polygon>& b) {
    return combined(a, b, ClipperLib::ctDifference);
}

} // namespace pelt::geometry
