// SPDX-License-Identifier: MIT
#include "report/assumptions.hpp"

#include "report/findings.hpp"
#include "report/half_done.hpp"
#include "report/measuring.hpp"
#include "report/spare.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

std::vector<std::string> parts(const Job& job) {
    const bool named = std::any_of(job.vehicles.begin(), job.vehicles.end(),
                                   [](const Vehicle& v) { return !v.hardware.empty(); });
    std::vector<std::string> out{
        job.comes_off.empty()
            ? named ? "Parts to take off: none."
                    : "Parts to take off: none named in the vehicle file."
            : "Parts to take off before wrapping: " + listed(job.comes_off) + "."};
    if (!job.left_on.empty())
        out.push_back("Parts left on: " + listed(job.left_on) + ".");
    return out;
}

bool is_left_out(const Job& job, const LeftOut& which) {
    return std::find(job.left_out.begin(), job.left_out.end(), which) != job.left_out.end();
}

/// A panel whose every side is left out is named once, without a side.
std::string name_of_left_out(const Job& job, const LeftOut& left) {
    const Panel& panel = job.vehicles.at(static_cast<std::size_t>(left.vehicle))
                             .panels.at(static_cast<std::size_t>(left.panel));
    const std::vector<Side> sides = sides_of(panel.sides);
    const bool whole = std::all_of(sides.begin(), sides.end(), [&](Side side) {
        return is_left_out(job, {left.vehicle, left.panel, side});
    });
    if (!left.is_whole_side())
        return as_options_name(job, left);
    return whole ? panel_label(job, left.vehicle, left.panel)
                 : panel_label(job, left.vehicle, left.panel, left.side);
}

bool is_done(const Job& job, const LeftOut& left) {
    return std::find(job.half_done.done.begin(), job.half_done.done.end(), left) !=
           job.half_done.done.end();
}

/// Extras are named by the word that includes them, everything else by itself.
std::vector<std::string> not_included(const Job& job) {
    std::vector<std::string> panels;
    std::vector<std::string> extras;
    for (const LeftOut& left : job.left_out) {
        if (is_done(job, left))
            continue;
        const std::string& extra = job.vehicles.at(static_cast<std::size_t>(left.vehicle))
                                       .panels.at(static_cast<std::size_t>(left.panel))
                                       .extra;
        if (extra.empty())
            add_once(panels, name_of_left_out(job, left));
        else
            add_once(extras, extra);
    }
    std::vector<std::string> out;
    if (!panels.empty())
        out.push_back("Not included: " + listed(panels) + ".");
    if (!extras.empty())
        out.push_back("Extras not included: " + listed(extras) + ".");
    return out;
}

std::string gripping(const Film& film, CutBy by, const Measures& measures) {
    const Allowances& a = film.allowances;
    if (by == CutBy::contour)
        return "Film to grip beyond the tuck: " + measures.size_with_unit(a.bleed) +
               "; spacing between pieces: " + measures.size_with_unit(a.gap) + ".";
    std::string text =
        "Margin to grip: " + measures.size_with_unit(a.handling.want) + " on every side of a piece";
    if (a.handling.least < a.handling.want)
        text += ", across the roll at least " + measures.size(a.handling.least) +
                " where the roll is too narrow";
    return text + ".";
}

std::string sizes(const Measures& measures) {
    return "Cut size: with margins. Finished size: with tucks only. Both along the roll × across "
           "it, in " +
           measures.sizes_in_words() + ".";
}

std::vector<std::string> converted(const Job& job, const Measures& measures) {
    if (job.by != CutBy::straight || job.film.allowances.ruler % measures.size_step() == 0)
        return {};
    return {"The layout was checked in steps of another ruler: the sizes here are converted, and "
            "rounded up. To cut, print the sheet in the unit of the film's roll width."};
}

std::vector<std::string> seams_by_the_file(const Job& job) {
    std::vector<std::string> names;
    for (const Seam& seam : job.seams)
        if (!seam.added)
            add_once(names, panel_label(job, seam.vehicle, seam.panel, seam.side) + " (piece " +
                                std::to_string(seam.upper_part) + " over piece " +
                                std::to_string(seam.under_part) + ")");
    if (names.empty())
        return {};
    return {"Seams where the vehicle file has them: " + listed(names) + "."};
}

/// One note for all panels of this job of which nothing is known by name.
std::vector<std::string> not_known_by_name(const Job& job) {
    std::vector<std::string> names;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            if (!job.vehicles.at(static_cast<std::size_t>(id.vehicle))
                     .panels.at(static_cast<std::size_t>(id.panel))
                     .is)
                add_once(names, panel_label(job, id.vehicle, id.panel));
    if (names.empty())
        return {};
    std::sort(names.begin(), names.end());
    return {"Not known by name, reckoned as plain panels: " + listed(names) + "; say 'is'."};
}

/// One note for rear doors of which nothing tells whether they are a van's.
std::vector<std::string> taken_for_side_doors(const Job& job) {
    std::vector<std::string> names;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            if (job.vehicles.at(static_cast<std::size_t>(id.vehicle))
                    .panels.at(static_cast<std::size_t>(id.panel))
                    .lies_in_doubt)
                add_once(names, panel_label(job, id.vehicle, id.panel));
    if (names.empty())
        return {};
    return {"Taken for a door in the side: " + listed(names) +
            "; say 'lies: rear' where it is in a van's rear face."};
}

} // namespace

std::vector<std::string> assumptions(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    std::vector<std::string> out = parts(job);
    for (const auto& some :
         {what_is_done(job), not_included(job), seams_by_the_file(job), not_known_by_name(job),
          taken_for_side_doors(job)})
        out.insert(out.end(), some.begin(), some.end());
    for (const std::string& text : notes_of(sheet, measures))
        out.push_back(text);
    out.push_back(gripping(job.film, job.by, measures));
    out.push_back("Roll edge not used: " + measures.size_with_unit(job.film.trim) +
                  " on either side. " + direction_text(job.film.direction) +
                  lying_otherwise(sheet));
    for (const std::string& text : measuring_error(job, measures))
        out.push_back(text);
    out.push_back(sizes(measures));
    for (const std::string& text : converted(job, measures))
        out.push_back(text);
    for (const std::string& text : how_often_spoilt(sheet))
        out.push_back(text);
    out.push_back("Left is the driver's left hand, seated and facing the nose.");
    return out;
}

} // namespace pelt::report
