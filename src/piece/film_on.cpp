// SPDX-License-Identifier: MIT
#include "geometry/geometry.hpp"
#include "piece/frame.hpp"
#include "piece/panel_job.hpp"
#include "piece/piece.hpp"

namespace pelt::piece {
namespace {

/// Wider than anything that the file's bounds allow.
constexpr Um endless = 1'000'000 * um_per_mm;

Turn back(Turn turn) {
    return {(360'000 - turn.millidegrees) % 360'000};
}

} // namespace

std::optional<PanelFilm> film_on(const Panel& panel, const DevelopedPanel& developed,
                                 const Film& film, const Wishes& wishes, Faults& faults) {
    Film wide = film;
    wide.width = endless;
    wide.trim = 0;
    Blank blank = developed.blanks.front();
    blank.inlays.clear();
    const std::optional<PanelJob> job = job_for(panel, blank, wide, wishes, faults);
    if (!job)
        return std::nullopt;
    const Part part = parts_of(job->whole).front();
    const std::vector<CutShape> shapes = shapes_of(part, job->allowed, wishes.by);
    const Turn turn = back(to_piece_frame(job->heading));
    return PanelFilm{geometry::normalised(placed(part.wrapped, turn, {})),
                     to_mm2(geometry::doubled_area(shapes.front().outline))};
}

} // namespace pelt::piece
