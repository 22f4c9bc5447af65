// SPDX-License-Identifier: MIT
#include "report/seams_told.hpp"

#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/job_panels.hpp"
#include "report/words.hpp"
#include "trade/rolls.hpp"

#include <cmath>
#include <map>

namespace pelt::report {
namespace {

/// On the grid in millimetres, finer than it in other units.
std::string coordinate(double mm, Unit unit) {
    if (unit == Unit::mm)
        return decimal(std::llround(mm * 1000), 3, 0);
    return decimal(std::llround(mm / length_of(unit).mm() * 1e6), 6, 0);
}

std::string written(const std::vector<Point>& line, Unit unit) {
    std::string text;
    for (const Point& p : line)
        text += (text.empty() ? "[" : ", [") + coordinate(p.x, unit) + ", " +
                coordinate(p.y, unit) + "]";
    return "{line: [" + text + "], use: always}";
}

/// "1 m less is bought", "no less is bought".
std::string compared(Length order, Length now, const Measures& measures) {
    if (order < now)
        return measures.as_sold(now - order) + " less is bought";
    return order == now ? "as much is bought" : measures.as_sold(order - now) + " more is bought";
}

std::string with_order(const std::string& text, const CutOtherwise& other, const Sheet& sheet,
                       const Measures& measures) {
    return text + (other.order ? ": " + compared(*other.order, sheet.order.length(), measures) : "");
}

std::string own_margin(const Job& job, const CutOtherwise& other) {
    const auto mm = [](Um um) { return std::to_string((um + um_per_mm - 1) / um_per_mm) + " mm"; };
    if (job.by == CutBy::contour)
        return "{bleed: " + mm(other.margin) + "}";
    const Um want = panel_of(job, {other.vehicle, other.panel})
                        .allowances.handling.value_or(job.film.allowances.handling)
                        .want;
    return "{margin: {want: " + mm(want) + ", least: " + mm(other.margin) + "}}";
}

std::string how(const CutOtherwise& other, const Sheet& sheet, const Measures& measures) {
    switch (other.is) {
    case CutOtherwise::Is::where_film_is_shortest:
        return "divided where the film is shortest (--seams thrifty)";
    case CutOtherwise::Is::whole_with_less_margin:
        return "in one piece with " + measures.size_with_unit(other.margin, Rounding::down) +
               " to grip across the roll ('allowances: " + own_margin(sheet.plan.job(), other) + "')";
    case CutOtherwise::Is::whole_across_the_arrow:
        break;
    }
    return "in one piece across the arrow ('direction: any')";
}

} // namespace

std::vector<std::string> seam_lines_to_copy(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    std::map<PanelKey, std::vector<std::string>> lines;
    for (const Seam& seam : job.seams) {
        if (!seam.added)
            continue;
        const Vehicle& vehicle = job.vehicles.at(static_cast<std::size_t>(seam.vehicle));
        std::vector<std::string>& of = lines[{seam.vehicle, seam.panel}];
        add_once(of, written(seam.place.at, vehicle.unit));
    }
    std::vector<std::string> out;
    for (const auto& [key, of] : lines) {
        const Panel& panel = panel_of(job, key);
        const std::string label = panel_label(job, key.first, key.second);
        out.push_back(panel.seam_lines.empty()
                          ? label + ": seam lines: [" + listed(of) + "]"
                          : label + ", to its own 'seam lines': " + listed(of));
    }
    return out;
}

std::vector<std::string> divided_otherwise(const Sheet& sheet, const Measures& measures) {
    std::vector<std::string> out;
    for (const CutOtherwise& other : sheet.seams_weighed.panels)
        out.push_back(panel_label(sheet.plan.job(), other.vehicle, other.panel) + ": " +
                      with_order(how(other, sheet, measures), other, sheet, measures));
    return out;
}

std::vector<std::string> narrow_margins_save(const Sheet& sheet, const Measures& measures) {
    const std::optional<Length>& order = sheet.seams_weighed.narrow_margins;
    if (!order || *order >= sheet.order.length())
        return {};
    return {"With " + measures.size_with_unit(trade::comfortable_margin) +
            " to grip on flat and nearly flat panels " +
            compared(*order, sheet.order.length(), measures) + " (see --margin)."};
}

} // namespace pelt::report
