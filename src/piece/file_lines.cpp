// SPDX-License-Identifier: MIT
#include "piece/file_lines.hpp"

#include "geometry/geometry.hpp"
#include "model/marked_length.hpp"
#include "piece/frame.hpp"
#include "piece/lying_double.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace pelt::piece {
namespace {

Box box_around(const PanelJob& job) {
    Ring corners;
    for (const std::vector<Polygon>* film : {&job.whole.sheet, &job.whole.core})
        for (const Polygon& polygon : *film)
            corners.insert(corners.end(), polygon.outer.begin(), polygon.outer.end());
    return box_of(corners);
}

} // namespace

std::optional<PlacedLine> place(const PanelJob& job, Divide line) {
    std::optional<DividedPlane> plane =
        divided(line, box_around(job), job.allowed.overlap, job.stand, job.outline_box());
    if (!plane)
        return std::nullopt;
    return PlacedLine{std::move(line), std::move(*plane)};
}

FileLines file_lines(const PanelJob& job, Faults& faults) {
    FileLines out;
    const auto wrong = [&](const Place& place, std::string what, std::string remedy) {
        faults.push_back(
            {Severity::file, place, job.panel->name, std::move(what), std::move(remedy)});
    };
    for (std::size_t i = 0; i < job.blank->seam_lines.size(); ++i) {
        const BlankSeamLine& drawn = job.blank->seam_lines[i];
        const Place& at = job.panel->seam_lines[i].place;
        Divide line{{}, false, "its seam line " + std::to_string(i + 1)};
        for (const Point& p : drawn.points)
            line.points.push_back(in_piece_frame(p, job.heading));
        line.points.erase(std::unique(line.points.begin(), line.points.end()), line.points.end());
        if (line.points.size() < 2) {
            wrong(at, "the seam line has no two different points", "check its points");
            continue;
        }
        std::optional<PlacedLine> placed = place(job, std::move(line));
        if (!placed)
            wrong(at, "the seam line crosses itself when it is lengthened straight at both ends",
                  "draw it from one edge of the panel to another");
        else if (divided(job.whole, placed->plane, job.outline_area).empty())
            wrong(at, "the seam line does not divide the panel", "check its points");
        else if (drawn.always && job.panel->seam == SeamRule::never)
            wrong(at, "the seam line is to be used always, but the panel says 'seam: never'",
                  "leave one of them out");
        else {
            (drawn.always ? out.always : out.needed).push_back(std::move(*placed));
            if (drawn.always)
                out.always_at.push_back(at);
        }
    }
    return out;
}

bool has_a_seam_at(const DividedPanel& divided, std::size_t line) {
    return std::any_of(divided.seams.begin(), divided.seams.end(),
                       [&](const PanelSeam& seam) { return seam.line == line; });
}

Fault divides_nothing(const FileLines& lines, std::size_t line, const PanelJob& job) {
    return {Severity::file, lines.always_at[line], job.panel->name,
            "the seam line divides nothing that the lines before it leave",
            "check its points, or leave it out"};
}

Fault lines_in_the_way(const PanelJob& job) {
    return {
        Severity::job, job.panel->place, job.panel->name,
        "its seam lines cross at so small an angle, or lie so near one another, that its pieces "
        "cannot be laid over one another in any order",
        "draw the lines farther apart or more squarely, or leave one of them out"};
}

void check_always(const FileLines& lines, DividedPanel divided, const PanelJob& job,
                  Faults& faults) {
    const DividedPanel before = divided;
    leave_out_doubled(divided);
    const std::string overlap = marked(job.allowed.overlap, Told::up);
    const std::string farther =
        "draw it farther in than the overlap, or give the panel a smaller 'overlap'";
    const auto tell = [&](Severity severity, std::size_t line, std::string what,
                          std::string remedy) {
        faults.push_back(
            {severity, lines.always_at[line], job.panel->name, std::move(what), std::move(remedy)});
    };
    if (!before.can_be_laid)
        faults.push_back(lines_in_the_way(job));
    for (std::size_t line = 0; line < lines.always.size(); ++line)
        if (!has_a_seam_at(before, line))
            faults.push_back(divides_nothing(lines, line, job));
        else if (!has_a_seam_at(divided, line))
            tell(Severity::job, line,
                 "the seam line leaves a strip no wider than the overlap, " + overlap +
                     ": the film under it covers all of that strip",
                 farther);
    for (const PanelSeam& seam : divided.seams)
        if (seam.line < lines.always.size() && lies_double_to_the_edge(divided, seam, job.outline))
            tell(Severity::warning, seam.line,
                 "its seam line runs within the overlap, " + overlap + ", of its edge",
                 "draw it farther in");
}

} // namespace pelt::piece
