// SPDX-License-Identifier: MIT
#include "model/marked_length.hpp"
#include "report/estimate.hpp"
#include "report/facts.hpp"
#include "report/json_parts.hpp"
#include "report/words.hpp"
#include "report/work_told.hpp"

namespace pelt::report {
namespace {

Json mm_or_null(const std::optional<Um>& length) {
    return length ? json_mm(*length) : json_null;
}

Json share(const Job& job, const PanelShare& of) {
    const Vehicle& vehicle = job.vehicles.at(static_cast<std::size_t>(of.vehicle));
    return JsonObject()
        .add("panel", json_text(vehicle.panels.at(static_cast<std::size_t>(of.panel)).name))
        .add("share", json_number(rounded_percent(of.percent / 100)))
        .add("rank", json_whole(of.rank))
        .on_one_line();
}

/// What needs a decision before film is bought.
std::vector<Mark> marks_of(const EstimateSheet& sheet) {
    std::vector<Mark> out;
    for (const PanelOf& panel : sheet.estimate.too_wide)
        out.push_back({panel_label(*sheet.estimate.as_scaled, panel.vehicle, panel.panel), "",
                       "of some drawn vehicles it goes on no roll", "measure it first"});
    for (const Fault& fault : sheet.warnings)
        if (fault.severity == Severity::warning)
            out.push_back(
                {fault.panel, "", in_unit(fault.what, Unit::mm), in_unit(fault.remedy, Unit::mm)});
    return out;
}

} // namespace

Json json_guess(const Estimate& estimate) {
    std::vector<Json> first;
    for (const PanelShare& of : estimate.measure_first)
        first.push_back(share(*estimate.as_scaled, of));
    return JsonObject()
        .add("panels", json_whole(static_cast<std::int64_t>(estimate.guessed.size())))
        .add("length_mm", JsonObject()
                              .add("low", mm_or_null(estimate.length.low))
                              .add("middle", mm_or_null(estimate.length.middle))
                              .add("high", mm_or_null(estimate.length.high))
                              .on_one_line())
        .add("as_scaled_mm", json_mm(estimate.as_scaled_length))
        .add("sure_percent", json_number(rounded_percent(estimate.sure_percent)))
        .add("measure_first", json_array(first))
        .on_one_line();
}

std::string to_json(const EstimateSheet& sheet) {
    const Estimate& estimate = sheet.estimate;
    const Job& job = *estimate.as_scaled;
    JsonObject out;
    out.add("schema", json_text("pelt.cut/1"))
        .add("vehicle", json_text(vehicles_of(job)))
        .add("film", json_text(job.film.name))
        .add("check_code", json_text_or_null(check_code_of(job)))
        .add("by", json_text(name_of(job.by)))
        .add("demonstration", json_bool(is_demonstration(job)))
        .add("direction", json_text(name_of(job.film.direction)))
        .add("turns", json_text(job.free_turns ? "any" : "quarter"))
        .add("stopped", json_null)
        .add("roll_width_mm", json_mm(job.film.width))
        .add("usable_width_mm", json_mm(job.film.usable_width()))
        .add("gap_mm", json_mm(job.film.allowances.gap))
        .add("handling_least_mm", json_null)
        .add("length_mm", mm_or_null(estimate.length.middle));
    for (const char* name :
         {"bound_mm", "bound_by", "shortest", "straight", "area_mm2", "waste_percent"})
        out.add(name, json_null);
    const Json nothing = json_array({});
    out.add("order", estimate.order.lines.empty() ? json_null : json_order(job, estimate.order))
        .add("half_done", json_null)
        .add("measuring", json_null)
        .add("rolls", nothing)
        .add("seams", nothing)
        .add("cut_otherwise", nothing)
        .add("offcuts", nothing)
        .add("warnings", json_marks(marks_of(sheet)))
        .add("notes", json_notes(notes_of(sheet, Measures(Unit::mm))))
        .add("guess", json_guess(estimate));
    if (sheet.quote)
        out.add("job", json_quote(*sheet.quote));
    return out.on_lines().text + "\n";
}

} // namespace pelt::report
