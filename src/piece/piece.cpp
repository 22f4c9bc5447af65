// SPDX-License-Identifier: MIT
#include "piece/piece.hpp"

#include "geometry/geometry.hpp"
#include "piece/allowed.hpp"
#include "piece/cover.hpp"
#include "piece/edge_work.hpp"
#include "piece/frame.hpp"
#include "piece/shapes.hpp"

#include <optional>
#include <string>
#include <utility>

namespace pelt::piece {
namespace {

/// Millimetres, rounded up.
std::string whole_mm(Um length) {
    return std::to_string((length + um_per_mm - 1) / um_per_mm) + " mm";
}

Part turned(const Cover& cover, Heading heading) {
    const Turn turn = to_piece_frame(heading);
    return {geometry::normalised(placed(cover.wrapped, turn, {})),
            geometry::normalised(placed(cover.sheet, turn, {})),
            {}};
}

Piece piece_of(const Part& part, std::vector<CutShape> shapes, const Panel& panel,
               const Allowed& allowed) {
    return {{}, part.wrapped, allowed.direction, std::move(shapes), panel.batch_free};
}

/// The same piece for the other side: never the same film turned over, but a shape of its own.
Piece twin_of(const Piece& piece) {
    Piece twin = piece;
    twin.wrapped = mirrored(piece.wrapped);
    for (CutShape& shape : twin.shapes)
        shape.outline = mirrored(shape.outline);
    return twin;
}

void too_wide(const Panel& panel, const Part& part, const Allowed& allowed, Faults& faults) {
    const Box box = box_of(part.wrapped.outer);
    faults.push_back({Severity::job, panel.place, panel.name,
                      "is too wide for the film: " + whole_mm(box.across()) +
                          " across the roll with its tuck, usable width " +
                          whole_mm(allowed.usable),
                      "a wider film or a seam would help"});
}

void warn(const Panel& panel, const Film& film, const Work& work, Faults& faults) {
    if (work.tuck_missing)
        faults.push_back(
            {Severity::warning, panel.place, panel.name,
             "no tuck given: its film ends at the edges",
             "give its edges a 'wrap', the film an allowance, or write 'edges: none'"});
    if (!panel.keep_clear.empty() && film.holds_metal != HoldsMetal::no)
        faults.push_back({Severity::warning, panel.place, panel.name,
                          "film that holds metal must not lie over its " + panel.keep_clear +
                              (film.holds_metal == HoldsMetal::yes
                                   ? ", and this film does"
                                   : ", and whether this film does is not known"),
                          "leave the panel out, or take another film for it"});
}

} // namespace

std::vector<Way> ways_to_cut(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                             const Wishes& wishes, int vehicle_index, int panel_index,
                             Faults& faults) {
    const Allowed allowed = allowed_for(panel, film);
    const std::optional<Heading> heading = heading_of(panel, film);
    if (!heading) {
        faults.push_back({Severity::file, panel.place, panel.name,
                          "needs 'forward': the way towards the nose in its drawing",
                          "add 'forward: right', 'left', 'up' or 'down'"});
        return {};
    }
    const Blank& blank = developed.blanks.front();
    const Work work = work_on(panel, blank, allowed, wishes.left_on);
    const std::optional<Cover> covered = cover(panel, blank, work, faults);
    if (!covered)
        return {};
    warn(panel, film, work, faults);
    const Part part = turned(*covered, *heading);
    std::vector<CutShape> shapes = shapes_of(part, allowed, wishes.by);
    if (shapes.empty()) {
        too_wide(panel, part, allowed, faults);
        return {};
    }
    const Piece drawn = piece_of(part, std::move(shapes), panel, allowed);
    Way way;
    for (const Side side : sides_of(panel.sides)) {
        for (int face = 1; face <= panel.faces; ++face) {
            const bool mirror = (panel.sides == Sides::both && side == Side::right) != (face == 2);
            Piece piece = mirror ? twin_of(drawn) : drawn;
            for (int copy = face; copy <= panel.count * panel.faces * wishes.times;
                 copy += panel.faces)
                piece.ids.push_back(
                    {vehicle_index, panel_index, side, copy, 1, 1, PieceKind::main, ""});
            way.pieces.push_back(std::move(piece));
        }
    }
    return {way};
}

} // namespace pelt::piece
