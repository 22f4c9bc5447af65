// SPDX-License-Identifier: MIT
#include "report/estimate.hpp"

#include "report/blanks.hpp"
#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/words.hpp"
#include "trade/likeness.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::report {
namespace {

std::string panel_name(const Estimate& estimate, int vehicle, int panel) {
    return panel_label(*estimate.as_scaled, vehicle, panel);
}

std::string whole_percent(double value) {
    return decimal(std::llround(value), 0, 0) + " %";
}

std::string length_or_none(const std::optional<Um>& length, const Measures& measures) {
    return length ? measures.film(*length) : "longer than any roll takes";
}

class Page {
public:
    explicit Page(const EstimateSheet& sheet)
        : sheet_(sheet), estimate_(sheet.estimate), job_(*sheet.estimate.as_scaled),
          measures_(sheet.unit) {}

    Document made() {
        head();
        order();
        measure_first();
        assumptions();
        decisions();
        return std::move(document_);
    }

private:
    void add(Block block) { document_.push_back(std::move(block)); }

    void head() {
        document_ = page_head(vehicles_and_times(job_), true, is_demonstration(job_));
        add(Line{"Film: " + job_.film.name + " · " + by_text(job_.by)});
        for (const std::string& text : lines_with_blanks(blanks_of(sheet_)))
            add(Line{text});
    }

    void order() {
        add(Heading{"PRICE BY"});
        add(Big{{what_to_price_by(estimate_, measures_) + "; measure before you buy"}});
        std::vector<std::string> texts{
            "It takes " + range_text(estimate_.length, measures_) +
                ": 9 of 10 such vehicles lie between these. As scaled it takes " +
                measures_.film(estimate_.as_scaled_length) + "."};
        if (!estimate_.order.lines.empty())
            texts.push_back(measures_.film(estimate_.order.length()) + " suffices in " +
                            whole_percent(estimate_.enough_percent) +
                            " of such jobs, pieces that are spoiled counted in; " +
                            whole_percent(estimate_.sure_percent) + " were wanted (--sure).");
        if (estimate_.order.total)
            texts.push_back("Price of the film: " +
                            money(*estimate_.order.total, job_.film.money_digits,
                                  estimate_.order.currency) +
                            ".");
        add(Items{"-", texts});
    }

    void measure_first() {
        add(Heading{"MEASURE FIRST"});
        if (estimate_.measure_first.empty()) {
            add(Line{"No panel alone makes the length much less sure: measure all of them."});
            return;
        }
        Table table{{{"panel", Align::left, true, true}, {"share of what is not sure", Align::right}},
                    {}};
        for (const PanelShare& share : estimate_.measure_first)
            table.rows.push_back({panel_name(estimate_, share.vehicle, share.panel),
                                  whole_percent(share.percent)});
        add(std::move(table));
        add(Line{"The width and the height of these panels narrow the range most."});
    }

    void assumptions() {
        add(Heading{"WHAT THIS ASSUMES"});
        add(Items{"-", notes_of(sheet_, measures_)});
    }

    void decisions() {
        std::vector<std::string> texts;
        for (const PanelOf& panel : estimate_.too_wide)
            texts.push_back(panel_name(estimate_, panel.vehicle, panel.panel) +
                            ": of some drawn vehicles it goes on no roll; measure it first.");
        for (const Fault& fault : sheet_.warnings)
            if (fault.severity == Severity::warning)
                texts.push_back(sentence_of(fault, sheet_.unit) + ".");
        if (texts.empty())
            return;
        add(Heading{"MIND"});
        add(Items{"!", texts});
    }

    const EstimateSheet& sheet_;
    const Estimate& estimate_;
    const Job& job_;
    Measures measures_;
    Document document_;
};

std::string size_of(const Overall& overall, const Measures& measures) {
    if (!overall.length_mm || !overall.width_mm || !overall.height_mm)
        return "";
    const auto size = [&](double mm) { return measures.size(std::llround(mm * um_per_mm)); };
    return " to " + size(*overall.length_mm) + " × " + size(*overall.width_mm) + " × " +
           size(*overall.height_mm) + " " + measures.size_unit() + " over all";
}

} // namespace

std::vector<std::string> notes_of(const EstimateSheet& sheet, const Measures& measures) {
    const Job& job = *sheet.estimate.as_scaled;
    std::vector<std::string> texts;
    for (const Vehicle& vehicle : job.vehicles)
        if (!vehicle.like.empty())
            texts.push_back("Scaled from " + vehicle.like + size_of(vehicle.overall, measures) +
                            ".");
    texts.push_back("Guessed panels: " + listed(names_of_guessed(sheet.estimate)) + ".");
    texts.push_back("Each size of a guessed panel is off by about " +
                    whole_percent(100 * trade::panel_size_spread) +
                    ", all along one axis of the vehicle together by " +
                    percent(100 * trade::axis_spread) +
                    " more: an assumption. 200 such vehicles were drawn and laid out straight.");
    if (job.by == CutBy::contour)
        texts.emplace_back("By contour their lengths are taken in the proportion of the two as "
                           "scaled.");
    texts.emplace_back("There are no cuts and no pieces here: film is cut by what was "
                       "measured. '--only' with measured panels gives their sheet.");
    return texts;
}

std::string range_text(const LengthRange& range, const Measures& measures) {
    if (!range.low)
        return "more than any roll takes";
    return measures.film(*range.low) + " to " + length_or_none(range.high, measures) +
           ", most likely " + length_or_none(range.middle, measures);
}

std::string what_to_price_by(const Estimate& estimate, const Measures& measures) {
    if (estimate.order.lines.empty())
        return "No length is sure enough";
    return "Price by " + measures.film(estimate.order.length());
}

std::vector<std::string> names_of_guessed(const Estimate& estimate) {
    std::vector<std::string> out;
    for (const PanelOf& panel : estimate.guessed)
        out.push_back(panel_name(estimate, panel.vehicle, panel.panel));
    return out;
}

Document estimate_page(const EstimateSheet& sheet) {
    return Page(sheet).made();
}

std::string to_table(const EstimateSheet& sheet, const TextStyle& style) {
    return to_text(estimate_page(sheet), style);
}

std::string to_markdown(const EstimateSheet& sheet) {
    return to_markdown(estimate_page(sheet));
}

std::string to_csv(const EstimateSheet& sheet) {
    const Estimate& estimate = sheet.estimate;
    const Job& job = *estimate.as_scaled;
    const auto mm = [](const std::optional<Um>& length) {
        return length ? decimal(*length, 3, 0) : std::string();
    };
    std::string first;
    for (const PanelShare& share : estimate.measure_first)
        first += (first.empty() ? "" : "; ") + panel_name(estimate, share.vehicle, share.panel);
    const bool ordered = !estimate.order.lines.empty();
    return csv_line({"estimate", "vehicle", "film", "by", "demonstration", "roll_width_mm",
                     "guessed_panels", "low_mm", "middle_mm", "high_mm", "as_scaled_mm",
                     "sure_percent", "order_mm", "total", "currency", "measure_first"}) +
           csv_line({"not measured", csv_text(vehicles_of(job)), csv_text(job.film.name),
                     std::string(name_of(job.by)), is_demonstration(job) ? "yes" : "no",
                     decimal(job.film.width, 3, 0), std::to_string(estimate.guessed.size()),
                     mm(estimate.length.low), mm(estimate.length.middle), mm(estimate.length.high),
                     mm(estimate.as_scaled_length), rounded_percent(estimate.sure_percent),
                     ordered ? decimal(estimate.order.length().pm(), 9, 0) : "",
                     estimate.order.total
                         ? to_string(*estimate.order.total, job.film.money_digits)
                         : "",
                     csv_text(estimate.order.currency), csv_text(first)});
}

} // namespace pelt::report
