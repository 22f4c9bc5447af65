// SPDX-License-Identifier: MIT
#include "piece/piece.hpp"

#include "geometry/geometry.hpp"
#include "piece/dividing.hpp"
#include "piece/frame.hpp"
#include "piece/inlays.hpp"
#include "piece/panel_job.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace pelt::piece {
namespace {

/// The same piece for the other side: never the same film turned over, but a shape of its own.
Piece twin_of(const Piece& piece) {
    Piece twin = piece;
    twin.wrapped = mirrored(piece.wrapped);
    for (CutShape& shape : twin.shapes)
        shape.outline = mirrored(shape.outline);
    return twin;
}

/// Adds a piece, drawn as `part`, for every side and face. Copies 1 … count × faces × times; with
/// two faces the odd ones are the outer face, the even ones the inner one.
class Copies {
public:
    Copies(const PanelJob& job, PieceId id, int times)
        : job_(job), id_(std::move(id)), times_(times) {}

    void add(const Part& part, const std::vector<CutShape>& shapes, int number, int parts,
             const std::string* inlay, Way& way) const {
        const Panel& panel = *job_.panel;
        const Piece drawn{{}, part.wrapped, job_.allowed.direction, shapes, panel.batch_free};
        const Piece twin = twin_of(drawn);
        PieceId id = id_;
        id.part = number;
        id.parts = parts;
        if (inlay != nullptr) {
            id.kind = PieceKind::inlay;
            id.inlay = *inlay;
        }
        for (const Side side : sides_of(panel.sides))
            for (int face = 1; face <= panel.faces; ++face) {
                id.side = side;
                id.copy = face;
                Piece piece = is_mirrored(panel, id) ? twin : drawn;
                for (id.copy = face; id.copy <= panel.count * panel.faces * times_;
                     id.copy += panel.faces)
                    piece.ids.push_back(id);
                way.pieces.push_back(std::move(piece));
            }
    }

private:
    const PanelJob& job_;
    PieceId id_;
    int times_;
};

Way way_of(const DividedPanel& divided, const std::vector<InlayPiece>& inlays, const PanelJob& job,
           const PieceId& id, int times) {
    Way way;
    const Copies copies(job, id, times);
    const int parts = static_cast<int>(divided.parts.size());
    for (int i = 0; i < parts; ++i) {
        const auto part = static_cast<std::size_t>(i);
        copies.add(divided.parts[part], divided.shapes[part], i + 1, parts, nullptr, way);
    }
    for (const InlayPiece& inlay : inlays)
        copies.add(inlay.part, inlay.shapes, 1, 1, &inlay.name, way);
    for (const Side side : sides_of(job.panel->sides))
        for (const PanelSeam& seam : divided.seams)
            way.seams.push_back({id.vehicle, id.panel, side, seam.upper_part, seam.under_part,
                                 job.allowed.overlap, seam.length, seam.added, seam.place});
    return way;
}

} // namespace

std::vector<Way> ways_to_cut(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                             const Wishes& wishes, int vehicle_index, int panel_index,
                             Faults& faults) {
    Faults found;
    std::vector<Way> ways;
    const std::optional<PanelJob> job =
        job_for(panel, developed.blanks.front(), film, wishes, found);
    if (job) {
        const std::vector<InlayPiece> inlays = inlay_pieces(*job, found);
        const PieceId id{vehicle_index, panel_index, Side::centre, 1, 1, 1, PieceKind::main, ""};
        for (const DividedPanel& divided : ways_to_divide(*job, found))
            ways.push_back(way_of(divided, inlays, *job, id, wishes.times));
    }
    if (stops(found))
        ways.clear();
    faults.insert(faults.end(), found.begin(), found.end());
    return ways;
}

} // namespace pelt::piece
