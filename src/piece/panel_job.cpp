// SPDX-License-Identifier: MIT
#include "piece/panel_job.hpp"

#include "geometry/geometry.hpp"
#include "piece/cover.hpp"
#include "piece/edge_work.hpp"
#include "piece/frame.hpp"
#include "piece/tuck_check.hpp"

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

/// The panel without the bands along its edges where film stops short of them.
std::vector<Polygon> core_of(const Polygon& outline, const Polygon& wrapped) {
    constexpr double rounding_mm2 = 1;
    const std::vector<Polygon> film{{wrapped.outer, {}}};
    const DoubleArea bare = geometry::doubled_area(geometry::subtract({outline}, film));
    return to_mm2(bare) < rounding_mm2 ? std::vector{outline}
                                       : geometry::intersect({outline}, film);
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
    job.allowed.free_turns =
        wishes.free_turns && wishes.by == CutBy::contour && job.allowed.direction == Direction::any;
    job.heading = *heading;
    job.may_add_seams = wishes.split && panel.seam != SeamRule::never;
    const Work work = work_on(panel, blank, job.allowed, wishes.left_on);
    const std::optional<Cover> covered = cover(panel, blank, work, faults);
    if (!covered)
        return std::nullopt;
    warn(panel, film, work, faults);
    check_tucks(panel, blank, work, film, faults);
    check_recesses(panel, film, faults);
    job.outline = turned({geometry::on_grid(blank.outline.points), {}}, job.heading);
    job.outline_area = geometry::doubled_area(job.outline);
    const Polygon wrapped = turned(covered->wrapped, job.heading);
    job.whole = {
        core_of(job.outline, wrapped), {wrapped}, {turned(covered->sheet, job.heading)}, {}};
    return job;
}

} // namespace pelt::piece
