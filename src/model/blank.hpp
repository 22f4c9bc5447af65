// SPDX-License-Identifier: MIT
// A panel developed flat: true lengths, panel frame, millimetres, before the grid.
#pragma once

#include "model/division.hpp"
#include "model/polygon.hpp"

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// An edge of a developed panel: what an `edges` entry can name, and what the edge asks.
struct BlankEdge {
    std::string number; ///< "2-3"; "top" and so on for girth panels
    std::string name;   ///< `name:`, empty where there is none
    Point normal;       ///< outward unit normal of the chord, panel frame
    bool seam = false;  ///< made by a seam line, not by the panel's outline
};

/// The ways, unit vectors, of the curve that a segment was flattened from where the segment begins
/// or ends that curve: corners there are the curve's, not its chord's. Zero: the segment's own way.
struct EndWays {
    Point begins;
    Point ends;
};

/// A ring with an edge tag on every segment: segment i runs from points[i] to the next point and
/// belongs to edges[edge[i]] of the blank.
struct TaggedRing {
    std::vector<Point> points;
    std::vector<int> edge;
    std::vector<EndWays> ways = {}; ///< as the segments, or none: all run as they are
};

struct BlankOpening {
    std::string name;
    TaggedRing ring; ///< clockwise; tags are 0
};

/// How far the film must stretch to cover the panel in one piece.
struct StretchAsked {
    enum class Is { exact, estimate, unknown };
    Is is = Is::unknown;
    double percent = 0; ///< the least possible; meaningless when unknown, never print it then
    std::optional<double> natural_percent = std::nullopt; ///< where the film lies down by itself
    std::optional<double> bound_percent = std::nullopt;   ///< below the least, to first order
    std::optional<double> curvature = std::nullopt; ///< of Gauss, mean, 1/mm²; below 0: a saddle
    std::optional<double> width_mm = std::nullopt;  ///< the shorter side
    std::optional<double> length_mm = std::nullopt; ///< the longer side
    std::optional<Division> division =
        std::nullopt; ///< where to divide what the film does not cover
};

/// A line along which the panel may be, or always is, made of two pieces.
struct BlankSeamLine {
    std::vector<Point> points; ///< at least two
    bool always = false;       ///< else only when needed
};

/// A recess that gets a piece of its own: an upright box in true lengths, without its overlap.
struct BlankInlay {
    std::string name;
    Point low;
    Point high;
};

/// One flat part of a panel.
struct Blank {
    TaggedRing outline; ///< counter-clockwise, simple
    std::vector<BlankEdge> edges;
    std::vector<BlankOpening> openings;    ///< as the panel's, inside the outline and apart
    std::vector<BlankSeamLine> seam_lines; ///< as the panel's
    std::vector<BlankInlay> inlays;        ///< as the panel's
    Point scale{1, 1}; ///< from a coordinate of the drawing as measured to one of the blank
};

/// How far the film stretches where on a blank, for pictures: triangles of the blank, each with its
/// larger stretch.
struct StretchMap {
    struct Cell {
        std::array<Point, 3> corners;
        double percent = 0;
    };
    std::vector<Cell> cells;
    Point peak; ///< the middle of the cell of the largest stretch
    Point pull; ///< the way it pulls there, of length 1, up or to the right
    double peak_percent = 0;
};

/// A panel developed: one blank, or several where the surface needs cuts.
struct DevelopedPanel {
    std::vector<Blank> blanks;
    StretchAsked stretch;
    double visible_mm2 = 0;                           ///< outline less openings, true lengths
    std::optional<double> surface_mm2 = std::nullopt; ///< of a scan, in space, less its openings
    std::shared_ptr<const StretchMap> map;            ///< of a scan as its blank is cut
};

} // namespace pelt
