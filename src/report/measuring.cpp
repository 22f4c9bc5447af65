// SPDX-License-Identifier: MIT
#include "report/measuring.hpp"

#include "report/decimal.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

/// The panels of a job that have a tolerance of their own, and are cut.
std::vector<std::string> own_tolerances(const Job& job, const Measures& measures) {
    std::vector<std::string> out;
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p) {
            const Panel& panel = job.vehicles[v].panels[p];
            const int vehicle = static_cast<int>(v);
            const int index = static_cast<int>(p);
            const bool is_cut =
                std::any_of(job.pieces.begin(), job.pieces.end(), [&](const Piece& piece) {
                    return piece.ids.front().vehicle == vehicle && piece.ids.front().panel == index;
                });
            if (panel.tolerance && is_cut)
                out.push_back(panel_label(job, vehicle, index) + " " +
                              measures.size_with_unit(*panel.tolerance));
        }
    return out;
}

/// Those that pull as hard as the first.
std::vector<Pull> hardest(const Binding& binding) {
    std::vector<Pull> out;
    for (const Pull& pull : binding.panels)
        if (pull.film_a_millimetre == binding.panels.front().film_a_millimetre)
            out.push_back(pull);
    return out;
}

} // namespace

std::vector<std::string> measuring_error(const Job& job, const Measures& measures) {
    const std::vector<std::string> own = own_tolerances(job, measures);
    if (job.tolerance == 0 && own.empty())
        return {};
    std::string text = "Measuring error allowed for: ";
    if (job.tolerance > 0)
        text += "every tape reading may be off by " + measures.size_with_unit(job.tolerance) +
                (own.empty() ? "" : ", but for ");
    return {text + listed(own) +
            ". The pieces are cut so much larger, beside the margin; whatever is not needed is "
            "trimmed off."};
}

std::vector<std::string> measure_twice(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    if (measuring_error(job, measures).empty() || sheet.binding.panels.empty())
        return {};
    constexpr std::size_t most_named = 6;
    const std::vector<Pull> pulls = hardest(sheet.binding);
    std::vector<std::string> names;
    for (const Pull& pull : pulls)
        if (names.size() < most_named)
            names.push_back(panel_label(job, pull.vehicle, pull.panel));
    const std::string others = pulls.size() > most_named
                                   ? " and " + std::to_string(pulls.size() - most_named) + " more"
                                   : "";
    return {"Measure twice: " + listed(names) + others + ". A millimeter more of " +
            (pulls.size() == 1 ? "it" : "any of them") + " along the film makes the film " +
            decimal(pulls.front().film_a_millimetre, 3, 0) + " mm longer, and no other panel " +
            "does more."};
}

Json measuring(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    if (measuring_error(job, Measures(Unit::mm)).empty())
        return json_null;
    std::vector<Json> pulls;
    for (const Pull& pull : sheet.binding.panels) {
        const Vehicle& vehicle = job.vehicles.at(static_cast<std::size_t>(pull.vehicle));
        const Panel& panel = vehicle.panels.at(static_cast<std::size_t>(pull.panel));
        pulls.push_back(JsonObject()
                            .add("vehicle", json_text(vehicle.name))
                            .add("panel", json_text(panel.name))
                            .add("mm_a_mm", json_mm(pull.film_a_millimetre))
                            .on_one_line());
    }
    return JsonObject()
        .add("tolerance_mm", json_mm(job.tolerance))
        .add("moves_the_length", json_array(pulls))
        .on_one_line();
}

} // namespace pelt::report
