// SPDX-License-Identifier: MIT
#include "piece/too_wide.hpp"

#include "geometry/geometry.hpp"
#include "model/marked_length.hpp"
#include "piece/fitter.hpp"

#include <algorithm>
#include <string>

namespace pelt::piece {
namespace {

/// What is needed beside the finished film on both sides.
Um least_beside(const PanelJob& job) {
    return job.by == CutBy::straight ? job.allowed.handling.least : job.allowed.bleed;
}

std::string beside_in_words(const PanelJob& job) {
    const std::string each = marked(least_beside(job), Told::up);
    return job.by == CutBy::straight ? "a margin of " + each + " on either side"
                                     : each + " to trim off on either side";
}

/// A seam would be possible, but for one of these.
std::string seam_advice(const PanelJob& job) {
    if (job.panel->seam == SeamRule::never)
        return "'seam: anywhere' for the panel";
    if (!job.may_add_seams)
        return "'--seams fitter'";
    if (job.panel->seam == SeamRule::at_lines)
        return "another seam line, or 'seam: anywhere'";
    if (!job.keep_clear.empty() && !job.weighs_every_way)
        return "a seam line of its own: none in one direction stays " +
               marked(clear_of_zones, Told::up) + " away from all that must stay clear";
    return "";
}

} // namespace

Fault too_wide_fault(const PanelJob& job) {
    const Box film = box_of(job.whole.wrapped.front().outer);
    const Um beside = 2 * least_beside(job);
    std::string what =
        "is too wide for the film: with its tuck it is " + marked(film.along(), Told::up) +
        " along × " + marked(film.across(), Told::up) + " across the roll, and needs " +
        beside_in_words(job) + "; the usable width is " + marked(job.allowed.usable, Told::down);
    const bool turns = job.allowed.direction == Direction::any;
    const Um narrower = std::min(film.along(), film.across());
    std::string remedy = "a film with a usable width of " +
                         marked((turns ? narrower : film.across()) + beside, Told::up);
    if (!turns && film.along() + beside <= job.allowed.usable)
        remedy += ", or 'direction: any' for the panel";
    if (job.by == CutBy::contour && turns && !job.allowed.free_turns &&
        geometry::narrowest(job.whole.wrapped.front().outer).across + beside <= job.allowed.usable)
        remedy += ", or '--turns any'";
    const std::string seam = seam_advice(job);
    if (!seam.empty())
        remedy += ", or " + seam;
    return {Severity::job, job.panel->place, job.panel->name, std::move(what),
            remedy + " would help"};
}

} // namespace pelt::piece
