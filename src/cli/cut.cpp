// SPDX-License-Identifier: MIT
#include "cli/complaints.hpp"
#include "cli/context.hpp"
#include "cli/estimated.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/interrupt.hpp"
#include "cli/rendering.hpp"
#include "cli/request.hpp"
#include "cli/run_time.hpp"
#include "cli/seen.hpp"
#include "cli/shop_asked.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "cli/why.hpp"
#include "report/report.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {
namespace {

std::string in_small_letters(std::string word) {
    std::transform(word.begin(), word.end(), word.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return word;
}

/// Reads every operand, the film last, so that all faults of all files are told at once.
bool read_operands(Files& files, const std::vector<std::string>& operands,
                   order::Request& request) {
    for (std::size_t i = 0; i + 1 < operands.size(); ++i)
        if (auto vehicle = files.vehicle(operands[i]))
            request.vehicles.push_back(std::move(*vehicle));
    auto film = files.film(operands.back());
    if (!film || request.vehicles.size() + 1 != operands.size())
        return false;
    request.film = std::move(*film);
    return true;
}

/// Rolls of two files may have the same name; on a sheet they may not.
void add_stock(const Stock& stock, order::Request& request, Files& files) {
    request.invented_stock = request.invented_stock || stock.demonstration;
    for (const StockRoll& roll : stock.rolls) {
        const bool twice = std::any_of(request.stock.begin(), request.stock.end(),
                                       [&](const StockRoll& r) { return r.name == roll.name; });
        if (twice)
            files.tell({{Severity::file, roll.place, "",
                         "another roll is called " + in_quotes(roll.name) + " too",
                         "give one of them another name"}});
        request.stock.push_back(roll);
    }
}

/// Reads every `--stock`. False when something is wrong, which has then been told.
bool read_stock(Files& files, const Arguments& arguments, order::Request& request) {
    if (arguments.count(Opt::flaw) > 0 && arguments.count(Opt::on_hand) == 0) {
        files.tell({usage("--flaw tells where the roll of --on-hand is spoiled",
                          "give --on-hand LENGTH as well")});
        return false;
    }
    const auto paths = arguments.values.find(Opt::stock);
    if (paths != arguments.values.end())
        for (const std::string& path : paths->second)
            if (const auto stock = files.stock(path))
                add_stock(*stock, request, files);
    return files.status() == status::done;
}

bool agrees(const std::optional<ShopAsked>& shop, order::Request& request, Files& files) {
    if (!shop)
        return true;
    const Faults faults = faults_of_currencies(shop->shop, request.film);
    files.tell(faults);
    request.film.demonstration = request.film.demonstration || shop->shop.demonstration;
    return faults.empty();
}

/// --summary and --pattern ask for another file of the same format.
std::string sheet_or_pattern(const Target& target, const report::Sheet& sheet,
                             const Context& context) {
    const Arguments& arguments = context.arguments;
    const bool summary = arguments.count(Opt::summary) > 0;
    if (summary && target.format == Format::csv)
        return report::to_summary_csv({sheet});
    if (summary && target.format == Format::table)
        return report::to_text(report::summary(sheet), style_for(target, context));
    if (summary && target.format == Format::markdown)
        return report::to_markdown(report::summary(sheet));
    if (target.format == Format::svg && arguments.count(Opt::pattern) > 0)
        return report::to_pattern_svg(sheet);
    if (target.format == Format::pdf && arguments.count(Opt::pattern) > 0)
        return report::to_pattern_pdf(sheet, paper_of(arguments));
    return rendered(target, sheet, context);
}

/// Full size eats paper: a whole vehicle takes hundreds of pages.
void tell_of_many_pages(const std::vector<Target>& targets, const report::Sheet& sheet,
                        const Context& context) {
    constexpr std::size_t many = 40;
    const bool prints = std::any_of(targets.begin(), targets.end(),
                                    [](const Target& t) { return t.format == Format::pdf; });
    if (!prints || context.arguments.count(Opt::pattern) == 0)
        return;
    const std::size_t pages = report::pages_of_patterns(sheet, paper_of(context.arguments));
    if (pages > many)
        context.messages.say("the patterns take " + std::to_string(pages) +
                             " pages; '--only PANEL' gives those of one panel");
}

bool allows_for_errors(const order::Request& request) {
    return request.tolerance > 0 ||
           std::any_of(request.vehicles.begin(), request.vehicles.end(), [](const Vehicle& v) {
               return std::any_of(v.panels.begin(), v.panels.end(),
                                  [](const Panel& panel) { return panel.tolerance.has_value(); });
           });
}

/// What fills the blanks; a blank's word is the same in capitals. A blank that is filled twice is a
/// fault of usage.
report::Fillings fillings_of(const Arguments& arguments, Faults& faults) {
    report::Fillings out;
    const auto given = arguments.values.find(Opt::fill);
    if (given == arguments.values.end())
        return out;
    const bool dated = arguments.count(Opt::date) > 0;
    for (const std::string& value : given->second) {
        auto [word, text] = *filling_in(value);
        const std::string small = in_small_letters(word);
        const std::vector<std::string>& blanks = report::names_of_blanks();
        if (std::find(blanks.begin(), blanks.end(), small) != blanks.end())
            word = small;
        const bool twice = (word == "date" && dated) ||
                           std::any_of(out.begin(), out.end(),
                                       [&](const auto& other) { return other.first == word; });
        if (twice)
            faults.push_back(usage("the blank " + in_quotes(word) + " is filled twice",
                                   "fill it once"));
        out.emplace_back(std::move(word), std::move(text));
    }
    return out;
}

} // namespace

int run_cut(const Context& context) {
    Files files(context);
    Faults faults;
    const RunTime time(context.arguments);
    const std::vector<Target> targets = targets_of(context.arguments, faults);
    for (const Fault& fault : faults_of_paper(targets, context.world))
        faults.push_back(fault);
    const report::Fillings fillings = fillings_of(context.arguments, faults);
    files.tell(faults);
    if (stops(faults))
        return files.status();
    order::Request request = wishes_of(context.arguments);
    request.weigh_the_rules = true;
    if (context.arguments.count(Opt::like_size) > 0 && context.arguments.operands.size() > 2) {
        files.tell({usage("--like-size is for one vehicle, and several are named",
                          "write a file with 'like' for each of the others")});
        return files.status();
    }
    request.weigh_the_seams = true;
    request.weigh_the_spare = true;
    std::optional<ShopAsked> shop;
    const bool right_shop = read_shop(files, context.arguments, shop);
    const bool operands = read_operands(files, context.arguments.operands, request);
    if (!read_stock(files, context.arguments, request) || !operands || !right_shop ||
        !agrees(shop, request, files) || !files.spared_by(paths_of(targets)))
        return files.status();
    if (shop)
        shop->add_to(request);
    if (order::is_guessed(request))
        return cut_estimate(request, shop, targets, fillings, files, time, context);
    const bool says_why =
        context.messages.loudness().verbose > 0 && !context.messages.loudness().quiet;
    request.find_binding = says_why || allows_for_errors(request);
    const Searched found = search(request, time.left(), context);
    files.tell(found.outcome.plan
                   ? not_seen_on_the_page(found.outcome.faults, targets, context.world,
                                          PageHas::warnings_and_remarks)
                   : found.outcome.faults);
    if (!found.outcome.plan && found.interrupted)
        die_by_interrupt();
    if (!found.outcome.plan)
        return files.status();
    const report::Sheet sheet{.plan = *found.outcome.plan,
                              .order = found.outcome.order,
                              .warnings = found.outcome.faults,
                              .unit = unit_of(context.arguments, request.film),
                              .date = context.arguments.value(Opt::date).value_or(""),
                              .filled = fillings,
                              .stopped_by = found.stopped_by,
                              .rules_cost = found.outcome.rules_cost,
                              .binding = found.outcome.binding,
                              .seams_weighed = found.outcome.seams_weighed,
                              .by_shop = shop.has_value(),
                              .quote = shop ? shop->quote(order::film_to_quote(found.outcome))
                                            : std::nullopt};
    const int written = write_results(
        targets, [&](const Target& target) { return sheet_or_pattern(target, sheet, context); },
        context.messages);
    if (written == status::done)
        tell_of_many_pages(targets, sheet, context);
    if (says_why && written == status::done && !found.interrupted)
        tell_why(request, found.outcome, sheet, time, context);
    return written == status::done ? files.status() : written;
}

} // namespace pelt::cli
