// SPDX-License-Identifier: MIT
#include "piece/panel_job.hpp"

#include "geometry/geometry.hpp"
#include "model/marked_length.hpp"
#include "piece/cover.hpp"
#include "piece/edge_work.hpp"
#include "piece/frame.hpp"
#include "piece/tuck_check.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace pelt::piece {
namespace {

std::string tuck_of(const Film& film) {
    return "tuck of " + marked(film.allowances.wrap.value_or(0), Told::nearest) +
           " by the film file, where the vehicle file gives none";
}

void warn(const Panel& panel, const Film& film, const Work& work, Faults& faults) {
    const auto tell = [&](Severity severity, const std::string& what, std::string remedy) {
        faults.push_back({severity, panel.place, panel.name, what, std::move(remedy)});
    };
    const std::string metal = film.holds_metal == HoldsMetal::yes ? "this film holds metal"
                                                                  : "this film may hold metal";
    if (work.tuck_missing)
        tell(Severity::warning, "no tuck given, so film ends at its edges",
             "give edges or film a 'tuck', or write 'edges: none'");
    for (const std::string& opening : work.openings_without_tuck)
        tell(Severity::remark, "no tuck given into its opening '" + opening + "'", "");
    if (work.tuck_of_film)
        faults.push_back({Severity::remark, panel.place, panel.name, tuck_of(film), "",
                          tuck_of(film)});
    if (!panel.keep_clear.empty() && film.holds_metal != HoldsMetal::no)
        tell(Severity::warning, metal + " and covers its " + panel.keep_clear,
             "leave it out, or take another film");
    for (const std::string& opening : work.bare_openings)
        tell(Severity::warning, "its '" + opening + "' stays bare, since " + metal,
             "take another film to cover it");
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
                          "needs 'forward': the way toward the nose in its drawing",
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
    const Polygon wrapped = turned(covered->wrapped, job.heading);
    job.whole = {
        core_of(job.outline, wrapped), {wrapped}, {turned(covered->sheet, job.heading)}, {}};
    return job;
}

} // namespace pelt::piece
