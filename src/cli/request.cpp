// SPDX-License-Identifier: MIT
#include "cli/request.hpp"

#include "cli/progress.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"
#include "read/quantities.hpp"

#include <spdlog/spdlog.h>
#include <unistd.h>

#include <algorithm>
#include <thread>
#include <utility>

namespace pelt::cli {
namespace {

std::int64_t number(const Arguments& arguments, Opt option) {
    const OptionRow& row = row_of(option);
    const auto value = whole_number(arguments.value_or_initial(option), row.least, row.most);
    if (!value)
        throw ProgramError(spelled(row) + " has no number");
    return *value;
}

Seams seams_asked(const Arguments& arguments) {
    const std::string word = arguments.value_or_initial(Opt::seams);
    return word == "thrifty" ? Seams::thrifty : word == "never" ? Seams::never : Seams::fitter;
}

std::string text_of(SearchWatch::StoppedBy stopped) {
    switch (stopped) {
    case SearchWatch::StoppedBy::time:
        return "time";
    case SearchWatch::StoppedBy::interrupt:
        return "Ctrl-C";
    case SearchWatch::StoppedBy::nothing:
        return "";
    }
    return "";
}

Fault stop_warning(const std::string& stopped_by) {
    return {Severity::warning,
            {},
            "",
            "the search was stopped by " + stopped_by +
                "; this is the best layout so far, checked like any other",
            "another run may give a shorter one"};
}

/// Where the terminal may be told how far a search is.
ProgressLine progress_line(const Context& context) {
    const bool shows = context.world.errors_are_terminal && !context.messages.loudness().quiet;
    return {shows ? ProgressLine::Sink(to_standard_error) : ProgressLine::Sink{},
            terminal_columns(STDERR_FILENO)};
}

} // namespace

std::vector<Um> widths_asked(const Arguments& arguments) {
    std::vector<Um> out;
    const auto given = arguments.values.find(Opt::width);
    if (given == arguments.values.end())
        return out;
    for (const std::string& text : given->second)
        if (const auto parsed = read::parse_length(text, Unit::mm); parsed.value)
            out.push_back(parsed.value->length.floor_um());
    return out;
}

std::optional<StockRoll> roll_on_hand(const Arguments& arguments) {
    const auto text = arguments.value(Opt::on_hand);
    const auto length = text ? read::parse_length(*text, Unit::mm).value : std::nullopt;
    if (!length)
        return std::nullopt;
    StockRoll roll;
    roll.name = "on hand";
    roll.length = length->length.floor_um();
    const auto flaws = arguments.values.find(Opt::flaw);
    if (flaws != arguments.values.end())
        for (const std::string& flaw : flaws->second)
            if (const auto span = span_in(flaw))
                roll.flaws.push_back({span->first.floor_um(), span->second.ceil_um(), {}, {}});
    return roll;
}

order::Selection selection_of(const Arguments& arguments) {
    return {arguments.names(Opt::only), arguments.names(Opt::without), arguments.names(Opt::with),
            arguments.names(Opt::done), arguments.names(Opt::spoiled)};
}

int threads_of(const Arguments& arguments) {
    if (arguments.count(Opt::threads) > 0)
        return static_cast<int>(number(arguments, Opt::threads));
    return static_cast<int>(std::clamp(std::thread::hardware_concurrency(), 1U, 256U));
}

order::Request wishes_of(const Arguments& arguments) {
    order::Request request;
    request.by =
        arguments.value_or_initial(Opt::by) == "contour" ? CutBy::contour : CutBy::straight;
    request.selection = selection_of(arguments);
    request.leave = arguments.names(Opt::leave);
    request.seams = seams_asked(arguments);
    if (const auto margin = arguments.value(Opt::margin))
        request.margin = margin_in(*margin);
    request.times = static_cast<int>(number(arguments, Opt::times));
    if (const std::vector<Um> widths = widths_asked(arguments); !widths.empty())
        request.width = widths.front();
    if (const std::string stages(arguments.value_or_initial(Opt::stages)); stages == "any")
        request.stages = std::nullopt;
    else
        request.stages = stages == "2" ? 2 : 3;
    request.free_turns = arguments.value_or_initial(Opt::turns) == "any";
    if (const auto table = arguments.value(Opt::table))
        if (const auto parsed = read::parse_length(std::string(*table), Unit::mm); parsed.value)
            request.table = parsed.value->length.floor_um();
    if (const auto tolerance = arguments.value(Opt::tolerance))
        if (const auto parsed = read::parse_length(*tolerance, Unit::mm); parsed.value)
            request.tolerance = parsed.value->length.ceil_um();
    if (auto roll = roll_on_hand(arguments))
        request.stock.push_back(*std::move(roll));
    if (const auto sure = arguments.value(Opt::sure))
        request.sure_percent = chance_percent(*sure);
    request.in_order = arguments.count(Opt::in_order) > 0;
    request.effort = {static_cast<int>(number(arguments, Opt::effort)), threads_of(arguments),
                      static_cast<std::uint64_t>(number(arguments, Opt::seed))};
    request.until_stopped =
        arguments.count(Opt::time) > 0 && arguments.count(Opt::effort) == 0;
    request.scans = std::make_shared<develop::LaidScans>();
    return request;
}

SearchWatch watch_for(std::optional<double> seconds, const Context& context) {
    return {seconds, progress_line(context)};
}

Searched search(order::Request request, std::optional<double> seconds, const Context& context) {
    SearchWatch watch = watch_for(seconds, context);
    request.watch = [&](const nest::Progress& progress) { return watch.go_on(progress); };
    spdlog::debug("planning {} vehicle(s) with {} thread(s)", request.vehicles.size(),
                  request.effort.threads);
    Searched out;
    out.outcome = order::run(std::move(request));
    watch.finish();
    out.interrupted = watch.interrupted();
    if (out.outcome.plan && out.outcome.plan->layout().stopped) {
        out.stopped_by = text_of(watch.stopped_by());
        out.outcome.faults.push_back(stop_warning(out.stopped_by));
    }
    return out;
}

} // namespace pelt::cli
