// SPDX-License-Identifier: MIT
// Pieces to cut, on the grid. Piece frame: forward is +x, seen from outside; a right piece is its
// left twin with y negated. Pieces are never turned over.
#pragma once

#include "model/polygon.hpp"
#include "model/vehicle.hpp"

#include <string>
#include <vector>

namespace pelt {

enum class CutBy { straight, contour };
std::string_view name_of(CutBy by);

/// Where panels that are too wide are divided: where a fitter would have the seam, where the film is
/// shortest, or nowhere but at lines that are always used.
enum class Seams { fitter, thrifty, never };

enum class PieceKind { main, inlay };
std::string_view name_of(PieceKind kind);

/// Which thing on the vehicle a piece is for.
struct PieceId {
    int vehicle = 0; ///< index into the vehicles of the job
    int panel = 0;   ///< index into that vehicle's panels
    Side side = Side::centre;
    int copy = 1; ///< 1 … count × faces × times
    int part = 1; ///< 1 … parts
    int parts = 1;
    PieceKind kind = PieceKind::main;
    std::string inlay; ///< the inlay's name
    friend auto operator<=>(const PieceId&, const PieceId&) = default;
};

/// One way to cut a piece, and the turns in which it may lie on the roll.
struct CutShape {
    Polygon outline; ///< piece frame; straight cutting: the rectangle with its margins
    std::vector<Turn> turns;
};

/// Pieces that are cut alike. `ids.size()` is the demand.
struct Piece {
    std::vector<PieceId> ids;
    Polygon wrapped; ///< the film that stays on, piece frame
    Direction direction = Direction::one_way;
    std::vector<CutShape> shapes; ///< alternatives; at least one
    bool batch_free = false;
};

/// Where a line runs on a panel, measured from the panel's nearer edge.
struct SeamPlace {
    std::string line;      ///< "its seam line 2"; empty for one that is not the vehicle file's
    std::string run;       ///< "along" the vehicle or "across" it; "upright" or "level"
    std::vector<Point> at; ///< its points in the panel's drawing as measured
    Um nearer = 0;
    Um farther = 0;   ///< as `nearer` unless the line slants or bends
    std::string edge; ///< "front edge"
    friend bool operator==(const SeamPlace&, const SeamPlace&) = default;
};

/// Where two pieces of one panel meet. The upper piece ends at the line and lies on top, laid
/// second; the under piece, which has the lower number, runs `overlap` past it.
struct Seam {
    int vehicle = 0;
    int panel = 0;
    Side side = Side::centre;
    int upper_part = 2;
    int under_part = 1;
    Um overlap = 0;
    Um length = 0;      ///< of the line within the panel
    bool added = false; ///< not one of the vehicle file's `seam lines`
    SeamPlace place;
};

} // namespace pelt
