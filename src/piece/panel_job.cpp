// SPDX-License-Identifier: MIT
#include "piece/panel_job.hpp"

#include "geometry/geometry.hpp"
#include "piece/cover.hpp"
#include "piece/edge_work.hpp"
#include "piece/frame.hpp"
#include "piece/tuck_check.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace pelt::piece {
namespace {

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

Polygon turned(const Polygon& polygon, Heading heading) {
    return geometry::normalised(placed(polygon, to_piece_frame(heading), {}));
}

} // namespace

std::optional<PanelJob> job_for(const Panel& panel, const Blank& blank, const Film& film,
                                const Wishes& wishes, Faults& faults) {
    const std::optional<Heading> heading = heading_of(panel, film);
    if (!heading) {
        faults.push_back({Severity::file, panel.place, panel.name,
                          "needs 'forward': the way towards the nose in its drawing",
                          "add 'forward: right', 'left', 'up' or 'down'"});
        return std::nullopt;
    }
    PanelJob job;
    job.panel = &panel;
    job.blank = &blank;
    job.by = wishes.by;
    job.allowed = allowed_for(panel, film);
    job.placing = job.allowed;
    const Handling own = job.allowed.handling;
    const Handling film_files = panel.allowances.placing.value_or(own);
    job.placing.handling = {std::max(film_files.want, own.least),
                            std::max(film_files.least, own.least)};
    job.least_piece = film.least_piece;
    job.weighs_every_way = wishes.seams == Seams::thrifty;
    job.allowed.free_turns =
        wishes.free_turns && wishes.by == CutBy::contour && job.allowed.direction == Direction::any;
    job.heading = *heading;
    job.stand = stand_of(panel, *heading);
    job.may_add_seams = wishes.seams != Seams::never && panel.seam != SeamRule::never;
    const Work work = work_on(panel, blank, job.allowed, wishes.left_on);
    const std::optional<Cover> covered = cover(panel, blank, work, faults);
    if (!covered)
        return std::nullopt;
    warn(panel, film, work, faults);
    check_tucks(panel, blank, work, film, faults);
    check_recesses(panel, film, faults);
    job.outline = turned({geometry::on_grid(blank.outline.points), {}}, job.heading);
    for (std::size_t i = 0; i < panel.openings.size() && i < blank.openings.size(); ++i)
        if (!panel.openings[i].keep_clear.empty()) {
            const Ring ring = geometry::on_grid(blank.openings[i].ring.points);
            job.keep_clear.push_back(box_of(placed(ring, to_piece_frame(job.heading), {})));
        }
    job.outline_area = geometry::doubled_area(job.outline);
    job.whole = {{job.outline},
                 {turned(covered->wrapped, job.heading)},
                 {turned(covered->sheet, job.heading)},
                 {}};
    return job;
}

} // namespace pelt::piece
