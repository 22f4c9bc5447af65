// SPDX-License-Identifier: MIT
// What a vehicle file may say. Order is the manual's.
#include "read/key_tables.hpp"

#include <span>

namespace pelt::read {
namespace {

using enum ValueKind;

constexpr double largest_panel = 30'000;
constexpr double widest_margin = 1'000;
constexpr double highest_crown = 5'000;
constexpr double most = 10'000;

constexpr Key file_keys[] = {
    {.in = In::vehicle,
     .name = "vehicle",
     .kind = text,
     .required = true,
     .text = "What the vehicle is called on the sheet."},
    {.in = In::vehicle,
     .name = "demonstration",
     .kind = yes_no,
     .unstated = "no",
     .text = "Marks an invented vehicle; every sheet says so."},
    {.in = In::vehicle,
     .name = "body",
     .kind = body,
     .unstated = "not said: no line on whether the total looks usual",
     .text = "The kind of body, for a line on whether the total looks usual."},
    {.in = In::vehicle,
     .name = "units",
     .kind = choice,
     .choices = "mm | cm | m | in | ft | yd",
     .unstated = "mm",
     .text = "The unit of lengths that are written without one."},
    {.in = In::vehicle,
     .name = "panels",
     .kind = named,
     .of = In::panel,
     .required = true,
     .text = "The panels to cover, each under a name of its own."},
    {.in = In::vehicle,
     .name = "hardware",
     .kind = named,
     .of = In::hardware,
     .unstated = "nothing to take off",
     .text = "Parts that come off before wrapping, each under a name of its own."},
};

constexpr Key form_keys[] = {
    {.in = In::panel,
     .name = "outline",
     .kind = outline,
     .low = -largest_panel,
     .high = largest_panel,
     .text = "The visible boundary: a list of points [x, y] and of arcs and named points as maps."},
    {.in = In::panel,
     .name = "size",
     .kind = size,
     .low = 1,
     .high = largest_panel,
     .text = "A rectangle: its size along x and along y, as [1380, 850] or as 1380 x 850."},
    {.in = In::panel,
     .name = "girths",
     .kind = list,
     .of = In::station,
     .text = "Stations along a spine, with how far the panel reaches up and down at each."},
    {.in = In::panel,
     .name = "through stations",
     .kind = choice,
     .choices = "straight | smooth",
     .unstated = "straight",
     .text = "How the edges of a girth panel run from station to station."},
    {.in = In::panel,
     .name = "rise over spine",
     .kind = length,
     .low = -highest_crown,
     .high = highest_crown,
     .unstated = "stretch not checked",
     .text = "Of a panel with girths: how far it rises over a straightedge or a taut line from the "
             "first station to the last, at the middle of the spine; below 0 where it is hollow."},
    {.in = In::panel,
     .name = "rise over girth",
     .kind = length,
     .low = -highest_crown,
     .high = highest_crown,
     .unstated = "stretch not checked",
     .text = "Of a panel with girths: how far it rises over a straightedge from edge to edge at "
             "the middle of the spine; below 0 where it is hollow, 0 where it is straight."},
    {.in = In::panel,
     .name = "crown",
     .kind = map,
     .of = In::crown,
     .low = -highest_crown,
     .high = highest_crown,
     .unstated = "stretch not checked",
     .text = "How far the panel rises over its width and height: it is curved, and was measured "
             "straight across. A single figure is the rise of a round panel over any way "
             "across it."},
    {.in = In::panel,
     .name = "measured",
     .kind = choice,
     .choices = "straight | over",
     .unstated = "straight",
     .text = "Whether lengths were taken straight across or over the surface with a soft tape."},
    {.in = In::panel,
     .name = "surface",
     .kind = text,
     .text = "A scanned mesh of the panel, seen from outside: an OBJ, PLY or STL file in the "
             "vehicle file's folder or below."},
    {.in = In::panel,
     .name = "surface units",
     .kind = choice,
     .choices = "mm | cm | m | in | ft | yd",
     .text = "The unit of the scan's coordinates; a scan needs it."},
    {.in = In::panel,
     .name = "up",
     .kind = vector,
     .text = "The way up in the scan's frame; a scan needs it."},
    {.in = In::panel,
     .name = "outside",
     .kind = vector,
     .text = "The way from the vehicle out through the panel, in the scan's frame. A scan whose "
             "triangles face the other way is turned; without it they are believed, with a warning "
             "where something speaks against them."},
};

constexpr Key panel_keys[] = {
    {.in = In::panel,
     .name = "is",
     .kind = panel_kind,
     .unstated = "by the words of its name; what could be two things is not guessed, and the sheet "
                 "says so",
     .text = "What the panel is. The order of laying and how often a piece is assumed to be "
             "spoiled hang on it. Names of North America and of Britain are known (hood, bonnet)."},
    {.in = In::panel,
     .name = "lies",
     .kind = choice,
     .choices = "side | top | front | rear",
     .unstated = "by what the panel is; else 'side' on left and right panels",
     .text = "The face of the vehicle that the panel belongs to."},
    {.in = In::panel,
     .name = "forward",
     .kind = choice,
     .choices = "right | left | up | down",
     .unstated = "down on front faces, up on rear ones; left on left panels, right on right ones; "
                 "else needed unless the film lies any way",
     .text = "The way the film arrow points in the drawing: toward the nose; on a front face "
             "down, on a rear face up. For a scan it is the way to the nose as [x, y, z] in the "
             "scan's frame."},
    {.in = In::panel,
     .name = "direction",
     .kind = choice,
     .choices = "one-way | two-way | any",
     .unstated = "the film's",
     .text = "How the film may lie on this panel, where it is freer than the film."},
    {.in = In::panel,
     .name = "sides",
     .kind = choice,
     .choices = "left | right | both | center | centre",
     .unstated = "center",
     .text = "Which sides of the vehicle have it; 'both' is drawn as the left one."},
    {.in = In::panel,
     .name = "faces",
     .kind = count,
     .low = 1,
     .high = 2,
     .unstated = "1",
     .text = "2 adds the mirrored inner face."},
    {.in = In::panel,
     .name = "count",
     .kind = count,
     .low = 1,
     .high = most,
     .unstated = "1",
     .text = "How many there are on each side and face."},
    {.in = In::panel,
     .name = "group",
     .kind = name,
     .text = "A name by which options can choose several panels at once."},
    {.in = In::panel,
     .name = "extra",
     .kind = name,
     .text = "Leaves the panel out unless this name is asked for."},
    {.in = In::panel,
     .name = "edges",
     .kind = named,
     .of = In::edge,
     .unstated = "the film's tuck on every edge",
     .text = "What each edge asks; 'none' leaves every edge as it is, and a length is the tuck of "
             "them all. Entries are named 'all', 'top', 'bottom', 'left', 'right', '2-3' or by an "
             "edge's own name, on sides and tops also 'front' and 'rear', by 'forward'; a length "
             "in place of a map is the edge's tuck. Later ones override earlier ones."},
    {.in = In::panel,
     .name = "openings",
     .kind = named,
     .of = In::opening,
     .text = "Holes in the panel, each under a name of its own."},
    {.in = In::panel,
     .name = "seam",
     .kind = choice,
     .choices = "never | at lines | anywhere",
     .unstated = "anywhere",
     .text = "Where the panel may be cut in two when it is too wide for the film."},
    {.in = In::panel,
     .name = "seam lines",
     .kind = list,
     .of = In::seam_line,
     .text = "Lines along which the panel is, or may be, cut in two."},
    {.in = In::panel,
     .name = "inlays",
     .kind = named,
     .of = In::inlay,
     .text = "Separate pieces that are laid into recesses first, each under a name of its own."},
    {.in = In::panel,
     .name = "recesses",
     .kind = named,
     .of = In::recess,
     .text = "Recesses to be checked for the stretch they ask."},
    {.in = In::panel,
     .name = "allowances",
     .kind = map,
     .of = In::panel_allowances,
     .unstated = "the film's",
     .text = "Allowances of this panel alone."},
    {.in = In::panel,
     .name = "redo",
     .kind = percent,
     .low = 0,
     .high = 95,
     .unstated = "assumed by what it is and the film's kind",
     .text =
         "How often one piece of this panel has to be cut again, for \"--sure\"; the sheet tells "
         "what is assumed."},
    {.in = In::panel,
     .name = "tolerance",
     .kind = length,
     .low = 0,
     .high = widest_margin,
     .unstated = "as \"--tolerance\" says, which is 0 without it",
     .text = "How far every tape reading of this panel may be off: its pieces are cut so much "
             "larger that they cover it all the same."},
    {.in = In::panel,
     .name = "keep clear",
     .kind = choice,
     .choices = "radar | camera | ultrasonic | aerial | lamp | plate",
     .text = "What lies behind the panel and must not be covered without a thought."},
    {.in = In::panel,
     .name = "batch free",
     .kind = yes_no,
     .unstated = "no",
     .text = "The panel may come from another production lot than the rest."},
};

} // namespace

std::vector<Key> vehicle_keys() {
    std::vector<Key> out;
    const std::vector<Key> parts = keys_of_parts();
    for (const std::span<const Key> some :
         {std::span<const Key>(file_keys), std::span<const Key>(form_keys),
          std::span<const Key>(panel_keys), std::span<const Key>(parts)})
        for (const Key& key : some)
            out.push_back(key);
    return out;
}

} // namespace pelt::read
