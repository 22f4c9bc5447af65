// SPDX-License-Identifier: MIT
// One panel and the film of its parts, both in the panel's drawing, with every stretch of rim along
// which nothing changes on either side. Inside verify/ only.
#pragma once

#include "model/plan.hpp"
#include "verify/checks.hpp"
#include "verify/wanted.hpp"

#include <string>
#include <vector>

namespace pelt::verify {

/// How a piece's frame lies in its panel's drawing: forward to +x, then y negated when mirrored.
struct Frame {
    Heading forward = Heading::right;
    bool mirrored = false;
};
Frame frame_of(const Panel& panel, const PieceId& id);
GridPoint in_drawing(GridPoint p, const Frame& frame);
/// Rings keep their sense.
Polygon in_drawing(const Polygon& polygon, const Frame& frame);
/// From the drawing to the frame of a piece that is not mirrored.
Point forward_along(Heading heading, Point p);

/// Rounding and the flattening of crossings move a rim by less than this.
inline constexpr Um hair = 3;
/// So far beside a rim it is asked what lies there.
inline constexpr Um beside = 8;

/// A stretch of a rim between two places where other rims cross, touch or leave it.
struct Stretch {
    static constexpr int none = -1;
    int part = none; ///< whose rim it is; none: of what is wanted
    Edge edge;       ///< the side that it is a stretch of
    GridPoint from;
    GridPoint to;
    GridPoint middle;
    Point out; ///< unit vector to the right of the way it runs

    GridPoint inside() const { return off(-beside); }
    GridPoint outside() const { return off(beside); }
    /// So far out (or in) from its middle, on the grid.
    GridPoint off(Um by) const;
    double length() const;
};

struct PartFilm {
    Polygon film;
    Rim rim;
};

struct Covering {
    const Job& job;
    const Panel& panel;
    const Blank& blank;
    std::string who;
    Heading forward;
    Wanted wanted;
    std::vector<PartFilm> parts;    ///< by part, from 1
    std::vector<Seam> seams;        ///< between these parts
    std::vector<Stretch> stretches; ///< of all parts and of what is wanted

    bool holds(std::size_t part, GridPoint p) const { return parts[part].rim.winding(p) > 0; }
    bool holds(GridPoint p) const;
    /// Nearer than a hair to a rim of a part or of what is wanted.
    bool near_a_rim(GridPoint p) const;
};

/// The rims' stretches of at least a twentieth of a millimetre.
void find_stretches(Covering& covering);

/// Every place that is wanted is covered, none else; what is missing is less than a square
/// millimetre, or a part of its own of less than a thousandth of the panel. Finds film that is
/// wrong by a twentieth of a millimetre or more.
void check_cover(const Covering& covering, Sentences& faults);

/// Where a part ends within the panel another one goes on under or over it, as the seams tell: the
/// upper one ends along a line of the vehicle's file, or a straight one added along or across the
/// roll; the under one ends the overlap past it; the forward or upper one lies on top.
void check_laps(const Covering& covering, Sentences& faults);

/// Contour cutting: the outline as cut, in the drawing, holds the part's film with its bleed where
/// the film ends, none at seams; holes are cut at the table only where they are asked for.
void check_cut_outline(const Covering& covering, std::size_t part, const Polygon& outline,
                       Sentences& faults);

} // namespace pelt::verify
