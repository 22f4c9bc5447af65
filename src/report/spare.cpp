// SPDX-License-Identifier: MIT
#include "report/spare.hpp"

#include "report/facts.hpp"
#include "report/words.hpp"
#include "report/work_told.hpp"

#include <cmath>
#include <cstdint>
#include <map>

namespace pelt::report {
namespace {

/// "3 %: hood, roof; 15 %: front bumper"
std::string by_chance(const Job& job, const std::vector<RedoChance>& chances, bool assumed) {
    std::map<double, std::vector<std::string>> panels;
    for (const RedoChance& chance : chances)
        if (chance.assumed == assumed && !chance.by_log)
            panels[chance.percent].push_back(panel_label(job, chance.vehicle, chance.panel));
    std::string text;
    for (const auto& [percentage, names] : panels)
        text += (text.empty() ? "" : "; ") + percent(percentage) + ": " + listed(names);
    return text;
}

/// "hood 4.1 % (3 of 41)"
std::vector<std::string> by_log(const Job& job, const std::vector<RedoChance>& chances) {
    std::vector<std::string> out;
    for (const RedoChance& chance : chances)
        if (chance.by_log)
            out.push_back(panel_label(job, chance.vehicle, chance.panel) + " " +
                          rounded_percent(chance.percent) + " % (" + tried_text(*chance.by_log) +
                          ")");
    return out;
}

} // namespace

std::string of_jobs(double percent) {
    constexpr double rounding = 1e-9;
    std::int64_t jobs = 100;
    // Near either end hundreds are too coarse: 99 of 100 would stand for 99.9 of them.
    while (jobs < 10'000 && (percent >= 100 - 100.0 / static_cast<double>(jobs) + rounding ||
                             percent < 100.0 / static_cast<double>(jobs) - rounding))
        jobs *= 10;
    const double share = percent / 100 * static_cast<double>(jobs);
    const auto enough = static_cast<std::int64_t>(std::floor(share + rounding));
    if (enough == 0)
        return "fewer than 1 of " + std::to_string(jobs) + " jobs";
    return std::to_string(enough) + " of " + std::to_string(jobs) + " jobs";
}

namespace {

/// How often what is there suffices. A remake cannot be cut from two ends: on several rolls it
/// depends on how the remakes fall, between two figures.
std::string how_often_enough(const Spare& spare) {
    const std::string at_most = of_jobs(spare.enough_percent);
    if (spare.surely_percent == spare.enough_percent)
        return "enough in " + at_most + ".";
    return "enough in at most " + at_most + " and at least " + of_jobs(spare.surely_percent) +
           ": what is left lies on several rolls, and no piece is cut from two ends.";
}

/// "mirror cap 2, door handle 6"
std::string kept(const Job& job, const Spare& spare) {
    std::map<std::string, int> pieces;
    for (const KeptForRecuts& some : spare.kept)
        pieces[panel_label(job, some.vehicle, some.panel)] += some.pieces;
    std::string text;
    for (const auto& [panel, count] : pieces)
        text += (text.empty() ? "" : ", ") + panel + " " + std::to_string(count);
    return text;
}

/// What is bought, or left on the shelf, and what would have to be bought without spare.
std::string what_suffices(const Sheet& sheet, const Spare& spare, const Measures& measures) {
    if (sheet.order.lines.empty())
        return "With what is left of its batch the film is " + how_often_enough(spare);
    const Length ordered = sheet.order.length();
    if (spare.bare_order == ordered)
        return "The order of " + measures.film(ordered) + ", no more than without spare, is " +
               how_often_enough(spare);
    return "Without spare the order of " + measures.film(spare.bare_order) + " is enough in " +
           of_jobs(spare.bare_percent) + ", that of " + measures.film(ordered) + " is " +
           how_often_enough(spare);
}

} // namespace

std::vector<std::string> about_the_spare(const Sheet& sheet, const Measures& measures) {
    if (!sheet.order.spare)
        return {};
    const Spare& spare = *sheet.order.spare;
    const Job& job = sheet.plan.job();
    std::vector<std::string> out{
        "Spare for pieces that are spoiled and cut again: at least " + measures.film(spare.needed) +
        ", to be enough in " + of_jobs(spare.sure_percent) + ". " +
        what_suffices(sheet, spare, measures)};
    if (!spare.kept.empty())
        out.push_back("Offcuts to be kept until the job is done, since pieces that are spoiled are "
                      "cut again from them: " +
                      kept(job, spare) + ". So these chances are the least.");
    if (spare.costliest_film > 0)
        out.push_back("Most of the spare is for the " +
                      panel_label(job, spare.costliest_vehicle, spare.costliest_panel) +
                      ": if it were never spoiled, " + measures.film(spare.costliest_film) +
                      " less would do.");
    return out;
}

std::vector<std::string> how_often_spoilt(const Sheet& sheet) {
    if (!sheet.order.spare)
        return {};
    const Job& job = sheet.plan.job();
    const std::string given = by_chance(job, sheet.order.spare->redo, false);
    const std::string assumed = by_chance(job, sheet.order.spare->redo, true);
    std::vector<std::string> out;
    if (!given.empty())
        out.push_back("Spoiled and cut again, by the vehicle file: " + given + ".");
    if (const auto texts = by_log(job, sheet.order.spare->redo); !texts.empty())
        out.push_back("Spoiled and cut again, by your log: " + listed(texts) + ".");
    if (!assumed.empty())
        out.push_back("Spoiled and cut again, assumed (common practice, for skilled hands; 'redo' "
                      "in the vehicle file says otherwise): " +
                      assumed + ".");
    return out;
}

} // namespace pelt::report
