// SPDX-License-Identifier: MIT
#include "report/figures.hpp"

#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/half_done.hpp"
#include "report/measuring.hpp"
#include "report/plausibility.hpp"
#include "report/seams_told.hpp"
#include "report/spare.hpp"
#include "report/words.hpp"

#include <vector>

namespace pelt::report {
namespace {

std::size_t new_rolls(const Plan& plan) {
    std::size_t count = 0;
    for (const UsedRoll& used : plan.layout().rolls)
        count += plan.job().rolls.at(used.roll).is_new ? 1 : 0;
    return count;
}

/// "22.86 m for 289.00 EUR, 76.00 EUR more".
std::vector<std::string> next_best(const Sheet& sheet, const Measures& measures) {
    if (!sheet.order.next_best)
        return {};
    const NextBest& next = *sheet.order.next_best;
    const int digits = sheet.plan.job().film.money_digits;
    std::string text;
    for (const OrderLine& line : next.lines)
        text += (text.empty() ? "" : " + ") + std::to_string(line.count) + " × " +
                measures.as_sold(line.by);
    return {std::string("This is the cheapest way ") + (sheet.order.cheapest ? "" : "found ") +
            "to buy it. Next best: " + text + " for " +
            money(next.total, digits, sheet.order.currency) + ", " +
            money(next.more, digits, sheet.order.currency) + " more."};
}

std::string price_of(const OrderLine& line, const Sheet& sheet, const Measures& measures) {
    const Film& film = sheet.plan.job().film;
    if (!line.price)
        return "price not known";
    return std::to_string(line.count) + " × " + measures.as_sold(line.by) + " at " +
           money(*line.price, film.money_digits, sheet.order.currency);
}

std::vector<std::string> price_lines(const Sheet& sheet, const Measures& measures) {
    const Film& film = sheet.plan.job().film;
    if (film.sold.empty() || sheet.order.lines.empty())
        return {"Price: not known (the film file does not say how it is sold)."};
    std::string text;
    for (const OrderLine& line : sheet.order.lines)
        text += (text.empty() ? "" : " + ") + price_of(line, sheet, measures);
    if (sheet.order.total)
        text += " = " + money(*sheet.order.total, film.money_digits, sheet.order.currency);
    return {"Price: " + text + "."};
}

/// " (53 ft)" where it is sold in another unit.
std::string as_it_is_sold(const OrderLine& line, const Film& film, const Measures& measures) {
    if (film.sold.empty())
        return "";
    const std::string sold = measures.as_sold(line.length());
    return sold == measures.film(line.length()) ? "" : " (" + sold + ")";
}

/// " (batch B12)"; nothing where it is not written down.
std::string batch_of(const Roll& roll) {
    const std::string batch = known_batch_of(roll);
    return batch.empty() ? "" : " (batch " + batch + ")";
}

std::vector<std::string> from_stock(const Sheet& sheet, const Measures& measures) {
    std::vector<std::string> out;
    const std::vector<UsedRoll>& rolls = sheet.plan.layout().rolls;
    for (std::size_t i = 0; i < rolls.size(); ++i) {
        const Roll& roll = sheet.plan.job().rolls.at(rolls[i].roll);
        if (roll.is_new)
            continue;
        std::string text =
            "From " + roll.name + batch_of(roll) + ": " + measures.film(rolls[i].length);
        if (const Money worth = sheet.order.stock_costs.at(rolls[i].roll).of(rolls[i].length);
            worth > Money{})
            text += " (worth " +
                    money(worth, sheet.plan.job().film.money_digits, sheet.order.currency) + ")";
        if (roll.available)
            text +=
                ", left over " + measures.film(*roll.available - rolls[i].length, Rounding::down);
        out.push_back(text + ".");
    }
    return out;
}

std::vector<std::string> full_cuts(const UsedRoll& used, const Roll& roll,
                                   const Measures& measures) {
    std::vector<std::string> out;
    for (const Cut& cut : used.cuts) {
        const Um low = std::min(cut.from.y, cut.to.y);
        const Um high = std::max(cut.from.y, cut.to.y);
        if (cut.from.x == cut.to.x && low <= roll.trim && high >= roll.width - roll.trim)
            out.push_back(measures.size(cut.from.x));
    }
    return out;
}

} // namespace

std::string roll_name(const Sheet& sheet, std::size_t used_roll) {
    const Plan& plan = sheet.plan;
    return plan.job().rolls.at(plan.layout().rolls.at(used_roll).roll).name;
}

std::vector<std::string> what_to_order(const Sheet& sheet, const Measures& measures) {
    const Film& film = sheet.plan.job().film;
    const std::string width = " × " + measures.size_with_unit(film.width);
    std::vector<std::string> out;
    for (const OrderLine& line : sheet.order.lines)
        out.push_back(measures.film(line.length()) + as_it_is_sold(line, film, measures) + width +
                      ", one length, " +
                      (line.batch.empty() ? "one batch" : "batch: " + line.batch));
    if (out.size() > 1)
        out.push_back(out.size() == 2
                          ? "both lengths of one batch"
                          : "all " + std::to_string(out.size()) + " lengths of one batch");
    if (out.empty())
        out.push_back(new_rolls(sheet.plan) == 0 ? "nothing: all of it comes from stock"
                                                 : "not known how it is sold");
    return out;
}

std::string order_in_a_line(const Sheet& sheet, const Measures& measures) {
    const Film& film = sheet.plan.job().film;
    std::string text;
    for (const OrderLine& line : sheet.order.lines)
        text += (text.empty() ? "" : " + ") + measures.film(line.length());
    if (text.empty())
        return new_rolls(sheet.plan) == 0 ? "Nothing to order." : "Not known how the film is sold.";
    return text + " × " + measures.size_with_unit(film.width) + ".";
}

std::vector<std::string> about_the_order(const Sheet& sheet, const Measures& measures) {
    const Length needed = Length::from_um(new_length_of(sheet.plan));
    std::vector<std::string> out = whether_it_is_enough(sheet, measures);
    for (const std::string& text : from_stock(sheet, measures))
        out.push_back(text);
    if (needed > Length{}) {
        std::string text = "Needed: " + measures.film(needed) + ".";
        text += sheet.order.spare ? "" : " No spare included.";
        if (!sheet.order.lines.empty())
            text +=
                " Left over: " + measures.film(sheet.order.length() - needed, Rounding::down) + ".";
        out.push_back(text);
        for (const auto& texts : {price_lines(sheet, measures), next_best(sheet, measures)})
            out.insert(out.end(), texts.begin(), texts.end());
    }
    for (const auto& texts : {about_the_spare(sheet, measures), measure_twice(sheet, measures),
                              narrow_margins_save(sheet, measures)})
        out.insert(out.end(), texts.begin(), texts.end());
    return out;
}

std::vector<std::string> how_the_film_lies(const Sheet& sheet, const Measures& measures) {
    const Plan& plan = sheet.plan;
    const bool has_arrow = plan.job().film.direction != Direction::any;
    std::vector<std::string> out{
        std::string("Face up, the free end on your left") +
        (has_arrow ? ", the film arrow pointing right: away from the free end" : "") +
        ". The near edge is the one in front of you."};
    for (std::size_t i = 0; i < plan.layout().rolls.size(); ++i) {
        const UsedRoll& used = plan.layout().rolls[i];
        const std::string on =
            plan.layout().rolls.size() > 1 ? " on roll " + roll_name(sheet, i) : "";
        for (const Flaw& flaw : plan.job().rolls.at(used.roll).flaws)
            if (flaw.from < used.length)
                out.push_back("Flaw" + on + ": " + measures.size(flaw.from, Rounding::down) +
                              " to " + measures.size_with_unit(flaw.to) +
                              " from the free end; nothing is cut from it.");
    }
    return out;
}

std::vector<std::string> cuts_across_the_roll(const Sheet& sheet, const Measures& measures) {
    const Plan& plan = sheet.plan;
    std::vector<std::string> out;
    for (std::size_t i = 0; i < plan.layout().rolls.size(); ++i) {
        const UsedRoll& used = plan.layout().rolls[i];
        const std::vector<std::string> cuts =
            full_cuts(used, plan.job().rolls.at(used.roll), measures);
        const std::string on =
            plan.layout().rolls.size() > 1 ? " on roll " + roll_name(sheet, i) : "";
        if (!cuts.empty())
            out.push_back("Cuts across the whole roll" + on + ", from the free end (" +
                          measures.size_unit() + "): " + listed(cuts) + ".");
    }
    return out;
}

namespace {

std::string how_near(const Layout& layout, Um fresh) {
    if (fresh <= layout.bound.length)
        return ": this is the shortest possible";
    const std::string over =
        "; this one is " + percent(fresh - layout.bound.length, layout.bound.length) + " over that";
    return layout.shortest ? over + ", and the shortest possible in so few stages"
                           : over;
}

std::string stages_text(const Job& job) {
    if (!job.stages)
        return "A strip is cut in any number of stages.";
    return std::string(*job.stages == 2 ? "A strip is cut in two stages: across the roll, then along"
                                        : "A strip is cut in three stages: across the roll, along, "
                                          "across again") +
           "; one more cut may trim a single piece.";
}

/// "would save 0.250 m", "saves nothing".
std::string saving(const Sheet& sheet, Um without, const Measures& measures) {
    const Um with = new_length_of(sheet.plan);
    if (without < with)
        return "would save " + measures.film(with - without, Rounding::down);
    return with <= sheet.plan.layout().bound.length ? "would save nothing"
                                                    : "would save nothing that was found";
}

std::vector<std::string> rules_of_cutting(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    if (job.by != CutBy::straight)
        return {};
    std::string stages = stages_text(job);
    if (job.stages && sheet.rules_cost.any_turns)
        stages +=
            " Any number of stages " + saving(sheet, *sheet.rules_cost.any_turns, measures) + ".";
    std::vector<std::string> out{stages};
    if (job.table)
        out.push_back("No strip is longer than the table: " + measures.size_with_unit(*job.table) +
                      ".");
    if (job.in_order) {
        std::string text = "Every strip holds the pieces that are laid next.";
        if (sheet.rules_cost.any_order)
            text += " Another order " + saving(sheet, *sheet.rules_cost.any_order, measures) + ".";
        out.push_back(text);
    }
    return out;
}

} // namespace

std::vector<std::string> length_figures(const Sheet& sheet, const Measures& measures) {
    const Um length = length_of(sheet.plan);
    const Um fresh = new_length_of(sheet.plan);
    const Bound& bound = sheet.plan.layout().bound;
    std::vector<std::string> out{"Length of film used: " + measures.film(length) + "."};
    if (fresh > 0 && bound.length > 0) {
        std::string text = "No layout can be shorter than " +
                           measures.film(bound.length, Rounding::down) +
                           (bound.argument.empty() ? "" : " (" + bound.argument + ")");
        out.push_back(text + how_near(sheet.plan.layout(), fresh) + ".");
    }
    for (const std::string& text : rules_of_cutting(sheet, measures))
        out.push_back(text);
    if (const auto usual = plausibility(sheet.plan, measures))
        out.push_back(*usual);
    return out;
}

namespace {

/// Where the film goes, in steps of what is printed, so that the printed rows add up.
struct AreaRows {
    Int128 wrapped;
    Int128 bleed;
    Int128 offcut;
    Int128 film;
    Int128 waste() const { return film - wrapped; }
};

/// Waste and what is on the vehicle are shared out of the film, then the parts of the waste.
AreaRows rows_adding_up(const Areas& areas, Int128 times, Int128 over) {
    const Int128 film = divided_nearest(areas.film * times, over);
    const std::vector<Int128> of_film = divided_to_add_up(
        {areas.wrapped * times, (areas.film - areas.wrapped) * times}, over, film);
    const std::vector<Int128> of_waste =
        divided_to_add_up({areas.bleed() * times, areas.offcut() * times}, over, of_film[1]);
    return {of_film[0], of_waste[0], of_waste[1], film};
}

} // namespace

Table area_table(const Sheet& sheet, const Measures& measures) {
    const Areas areas = areas_of(sheet.plan);
    const Measures::AreaStep step = measures.area_step();
    const AreaRows shown = rows_adding_up(areas, step.times, step.over);
    const AreaRows tenths = rows_adding_up(areas, 1000, areas.film);
    Table table;
    table.columns = {{"where the film goes", Align::left, true},
                     {"area", Align::right, false},
                     {"of the film", Align::right, false}};
    const auto row = [&](const std::string& name, Int128 area, Int128 share) {
        table.rows.push_back({name, measures.area_of_steps(area), percent_of_tenths(share)});
    };
    row("on the vehicle", shown.wrapped, tenths.wrapped);
    row("trimmed off", shown.bleed, tenths.bleed);
    row("left over", shown.offcut, tenths.offcut);
    row("film used", shown.film, tenths.film);
    row("waste (trimmed off and left over)", shown.waste(), tenths.waste());
    return table;
}

} // namespace pelt::report
