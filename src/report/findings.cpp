// SPDX-License-Identifier: MIT
#include "report/findings.hpp"

#include "model/marked_length.hpp"
#include "report/facts.hpp"
#include "report/job_panels.hpp"
#include "report/plausibility.hpp"
#include "report/verdict.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <iterator>

namespace pelt::report {
namespace {

std::vector<Mark> warnings_of(const Sheet& sheet, Unit unit) {
    std::vector<Mark> out;
    for (const Fault& fault : sheet.warnings)
        if (fault.severity == Severity::warning && is_of_this_job(sheet, fault.panel))
            out.push_back({fault.panel, in_unit(own_of(fault), unit),
                           in_unit(fault.common.empty() ? fault.what : fault.common, unit),
                           in_unit(fault.remedy, unit)});
    return out;
}

std::vector<Mark> stretch_marks(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    const std::optional<double> limit = job.film.stretch_panel_percent;
    if (!limit)
        return {};
    std::vector<Mark> over;
    std::vector<Mark> near;
    for (const auto& [key, id] : panels_cut(sheet.plan)) {
        const StretchAsked stretch = stretch_of(job, id);
        const std::string label = panel_label(job, key.first, key.second);
        const auto asked = how_much_it_asks(stretch, *limit);
        if (asked == Asked::too_much)
            over.push_back({label, stretch_text(stretch), over_the_limit(stretch, *limit),
                            remedy_for(stretch)});
        else if (asked == Asked::nearly_all)
            near.push_back({label, stretch_text(stretch), near_the_limit(*limit),
                            "warm it all over first, or take softer film"});
    }
    over.insert(over.end(), near.begin(), near.end());
    return over;
}

std::vector<Mark> about_the_length(const Sheet& sheet) {
    const auto unusual = how_unusual(sheet.plan);
    if (!unusual)
        return {};
    return {{"", "",
             std::string(*unusual == Unusual::little ? "far less" : "far more") +
                 " film than is usual for its body",
             *unusual == Unusual::little ? "look for a missing panel or a wrong unit"
                                         : "look for a panel that is there twice, or a wrong unit"}};
}

} // namespace

std::vector<std::string> added_seams(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    std::vector<std::string> out;
    for (const Seam& seam : job.seams)
        if (seam.added)
            out.push_back(panel_label(job, seam.vehicle, seam.panel, seam.side) +
                          ": seam added, " + measures.size_with_unit(seam.length) + " long, " +
                          place_text(seam.place, measures) + "; piece " +
                          std::to_string(seam.upper_part) + " laps over piece " +
                          std::to_string(seam.under_part));
    return out;
}

std::vector<Mark> marks_of(const Sheet& sheet, const Measures& measures) {
    std::vector<Mark> out;
    for (const std::vector<Mark>& some :
         {stretch_marks(sheet), warnings_of(sheet, measures.unit()), about_the_length(sheet)})
        std::copy_if(some.begin(), some.end(), std::back_inserter(out), [&](const Mark& mark) {
            return std::find(out.begin(), out.end(), mark) == out.end();
        });
    return out;
}

} // namespace pelt::report
