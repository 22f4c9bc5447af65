// SPDX-License-Identifier: MIT
#include "piece/inlays.hpp"

#include "geometry/geometry.hpp"
#include "model/marked_length.hpp"
#include "piece/frame.hpp"

#include <utility>

namespace pelt::piece {
namespace {

Part part_of(const BlankInlay& inlay, Um overlap, Heading heading) {
    const GridPoint low = geometry::on_grid(inlay.low);
    const GridPoint high = geometry::on_grid(inlay.high);
    const Ring drawn = geometry::rectangle(
        {{low.x - overlap, low.y - overlap}, {high.x + overlap, high.y + overlap}});
    const Polygon film = geometry::normalised({placed(drawn, to_piece_frame(heading), {}), {}});
    return {film, film, {}};
}

Fault too_wide(const InlayPiece& piece, const Inlay& inlay, const PanelJob& job) {
    const Box film = box_of(piece.part.wrapped.outer);
    return {Severity::job, inlay.place, job.panel->name,
            "the inlay '" + piece.name + "' is too wide for the film: with its overlap it is " +
                marked(film.along(), Told::up) + " along × " + marked(film.across(), Told::up) +
                " across the roll; the usable width is " + marked(job.allowed.usable, Told::down),
            "a wider film, or two smaller inlays, would help"};
}

} // namespace

std::vector<InlayPiece> inlay_pieces(const PanelJob& job, Faults& faults) {
    std::vector<InlayPiece> out;
    for (std::size_t i = 0; i < job.blank->inlays.size(); ++i) {
        const Inlay& inlay = job.panel->inlays[i];
        const Um overlap = inlay.overlap.value_or(job.allowed.overlap);
        InlayPiece piece{inlay.name, part_of(job.blank->inlays[i], overlap, job.heading), {}};
        piece.shapes = shapes_of(piece.part, job.allowed, job.by);
        if (piece.shapes.empty())
            faults.push_back(too_wide(piece, inlay, job));
        out.push_back(std::move(piece));
    }
    return out;
}

} // namespace pelt::piece
