// SPDX-License-Identifier: MIT
// A vehicle as its file describes it, validated: names are unique, numbers are finite and within
// bounds, outlines are simple. Panel frame: seen from outside, x right, y up, millimetres.
#pragma once

#include "model/fault.hpp"
#include "model/length.hpp"
#include "model/panel_name.hpp"
#include "model/polygon.hpp"
#include "model/surface.hpp"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace pelt {

enum class Side { left, right, centre };
std::string_view name_of(Side side);

/// `sides:` of a panel. `both` is drawn as the left one.
enum class Sides { left, right, both, centre };
std::vector<Side> sides_of(Sides sides);

/// The way towards the nose (on a front face down, on a rear face up) in the panel's drawing.
enum class Heading { right, up, left, down };
std::string_view name_of(Heading heading);

/// How a film may lie: 0 degrees; 0 and 180; quarter turns (finer on request).
enum class Direction { one_way, two_way, any };
std::string_view name_of(Direction direction);

/// Margin around a rectangle in straight cutting.
struct Handling {
    Um want = 0;
    Um least = 0;
};

/// The allowances that a panel may override.
struct PanelAllowances {
    std::optional<Um> wrap;
    std::optional<Um> bleed;
    std::optional<Handling> handling;
    std::optional<Handling> placing; ///< seams are placed by this margin; none: by the other
    std::optional<Um> overlap;
    std::optional<Um> flush;
};

/// One stretch of an outline: from the previous corner to `to`, straight or through a point (an
/// arc).
struct OutlineSegment {
    Point to;
    std::optional<Point> through;
    std::string name; ///< `name:`, empty where there is none
    Place place;
};

/// A taped distance between two corners of an outline, straight across: the others are checked by
/// it.
struct Diagonal {
    int from = 1; ///< corners as the file counts them
    int to = 3;
    double length_mm = 0;
    Place place;
};

/// Corners in the order typed: corner i+1 is the end of segment i (0-based) except that segment 0
/// ends at corner 1, that is: segment 0 is the closing edge n-1 and segment i the edge i-(i+1).
/// The corners may run clockwise; `develop` turns them round and keeps the numbers.
struct OutlineForm {
    std::vector<OutlineSegment> segments;
    bool from_size = false; ///< typed as `size`
    std::optional<Diagonal> diagonal = std::nullopt;
};

/// Girths along a spine: how far up and down at each station.
struct GirthStation {
    double at_mm = 0;
    double up_mm = 0;
    double down_mm = 0;
    Place place;
};
struct GirthsForm {
    std::vector<GirthStation> stations; ///< at least two, `at` rising
    bool smooth = false;                ///< `through stations: smooth`
    /// Rise of the surface over a straightedge across the whole spine, and across the girth at its
    /// middle; below 0 where it is hollow. Stretch is checked where both were read.
    std::optional<double> rise_over_spine_mm = {};
    std::optional<double> rise_over_girth_mm = {};
};

/// A scanned surface. `across` and `upward` are the drawing's x and y in the scan's frame, square
/// to one another and to the way that the panel faces on the whole. `times_x` and `times_y` scale it
/// along them once it is laid flat.
struct SurfaceForm {
    std::string file;   ///< as the vehicle file names it
    std::string digest; ///< of the scan's bytes: tells one state of the file from another
    Unit unit = Unit::mm;
    std::shared_ptr<const Surface> surface; ///< none: not read
    Point3 across{};
    Point3 upward{};
    Place place;
    double times_x = 1;
    double times_y = 1;
};

/// Rise over the full extent along x (`wide`) and y (`high`); signs matter to the stretch only.
struct Crown {
    double wide_mm = 0;
    double high_mm = 0;
    bool measured_over = false; ///< `measured: over`: lengths are already true
};

/// What an `edges` entry asks of the edges it names.
struct EdgeRule {
    std::string word; ///< `all`, `top`, `2-3`, a name …
    std::optional<Um> wrap;
    std::optional<Um> stop;
    std::string behind; ///< hardware, empty where there is none
    Place place;
};

enum class OpeningCut { on_vehicle, at_table };

struct Opening {
    std::string name;
    OutlineForm form;
    std::optional<Um> wrap;
    OpeningCut cut = OpeningCut::on_vehicle;
    std::string behind;
    std::string keep_clear;
    std::optional<int> hole;    ///< of a surface: which hole, 1 the one of the longest rim
    std::optional<Point3> near; ///< of a surface: the hole whose rim comes nearest to this point
    Place place;
};

struct SeamLine {
    std::vector<Point> line; ///< at least two points
    bool always = false;     ///< else only when needed
    Place place;
};
enum class SeamRule { never, at_lines, anywhere };

struct Inlay {
    std::string name;
    Point at; ///< centre
    double wide_mm = 0;
    double high_mm = 0;
    std::optional<Um> overlap;
    Place place;
};

/// A hollow that the film is laid into: the stretch it asks is checked, nothing is cut for it.
struct Recess {
    std::string name;
    double wide_mm = 0;
    double high_mm = 0;
    double depth_mm = 0;
    Place place;
};

/// A part to take off before wrapping.
struct Hardware {
    std::string name;
    std::string tool;
    int count = 1;
    std::optional<double> minutes_each;
    int clips_each = 0;
    std::vector<std::string> after;
    std::vector<std::string> with; ///< panels that it belongs to, beside those by `behind`
    Place place;
};

struct Panel {
    std::string name;
    Place place;
    std::optional<PanelKind> is; ///< none: not known by its name; reckoned as a plain panel
    std::optional<LiesOn> lies;  ///< none: not known
    bool lies_in_doubt = false;  ///< nothing in the file tells a side door from a van's rear one
    std::variant<OutlineForm, GirthsForm, SurfaceForm> form;
    Sides sides = Sides::centre;
    int faces = 1; ///< 2 adds the mirrored inner face
    int count = 1; ///< per side and face
    std::string group;
    std::string extra; ///< left out unless asked for by this name
    std::optional<Heading> forward;
    std::optional<Direction> direction;
    std::optional<Crown> crown;
    std::vector<EdgeRule> edges;
    bool edges_none = false;
    std::vector<Opening> openings;
    std::vector<SeamLine> seam_lines;
    SeamRule seam = SeamRule::anywhere;
    std::vector<Inlay> inlays;
    std::vector<Recess> recesses;
    PanelAllowances allowances;
    std::optional<double> redo_percent;
    std::optional<Um> tolerance; ///< how far its readings may be off; none: as the job's
    std::string keep_clear;
    bool batch_free = false;
    bool guessed = false; ///< scaled from another vehicle, not measured
};

/// Sizes over all in mm: the width without mirrors, the height without rails and aerial.
struct Overall {
    std::optional<double> length_mm;
    std::optional<double> width_mm;
    std::optional<double> height_mm;
};

struct Vehicle {
    std::string name;
    std::string file; ///< as messages call it
    Place place;
    bool demonstration = false;
    std::string body; ///< empty: not said
    Unit unit = Unit::mm;
    std::vector<Panel> panels; ///< in the file's order
    std::vector<Hardware> hardware;
    Overall overall;
    std::string like; ///< the vehicle from which its guessed panels are scaled; empty: none
    std::vector<std::shared_ptr<const Source>> also_read; ///< other files that belong to it
};

/// True where a panel is scaled from another vehicle.
bool is_guessed(const Vehicle& vehicle);

} // namespace pelt
