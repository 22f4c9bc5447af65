// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/output.hpp"
#include "cli/search_watch.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"
#include "order/order.hpp"
#include "read/quantities.hpp"
#include "report/report.hpp"

#include <spdlog/spdlog.h>

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

int threads_of(const Arguments& arguments) {
    if (arguments.count(Opt::threads) > 0)
        return static_cast<int>(number(arguments, Opt::threads));
    return static_cast<int>(std::clamp(std::thread::hardware_concurrency(), 1U, 256U));
}

/// The wishes of the command line, without the files.
order::Request wishes_of(const Arguments& arguments) {
    order::Request request;
    request.by =
        arguments.value_or_initial(Opt::by) == "contour" ? CutBy::contour : CutBy::straight;
    request.selection = {arguments.names(Opt::only), arguments.names(Opt::without),
                         arguments.names(Opt::with)};
    request.leave = arguments.names(Opt::leave);
    request.split = arguments.value_or_initial(Opt::seams) == "auto";
    request.times = static_cast<int>(number(arguments, Opt::times));
    if (const auto width = arguments.value(Opt::width))
        if (const auto parsed = read::parse_length(*width, Unit::mm); parsed.value)
            request.width = parsed.value->length.floor_um();
    request.effort = {static_cast<int>(number(arguments, Opt::effort)), threads_of(arguments),
                      static_cast<std::uint64_t>(number(arguments, Opt::seed))};
    return request;
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

ProgressLine progress_line(const Context& context) {
    const bool shows = context.world.errors_are_terminal && !context.messages.loudness().quiet;
    return {shows ? ProgressLine::Sink(to_standard_error) : ProgressLine::Sink{},
            terminal_columns()};
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

void add_stop_warning(const Plan& plan, const std::string& stopped_by, Faults& faults) {
    if (plan.layout().stopped)
        faults.push_back({Severity::warning,
                          {},
                          "",
                          "the search was stopped by " + stopped_by +
                              "; this is the best layout so far, checked like any other",
                          "another run may give a shorter one"});
}

std::string rendered(Format format, const report::Sheet& sheet) {
    switch (format) {
    case Format::json:
        return report::to_json(sheet);
    case Format::table:
        return report::to_table(sheet);
    case Format::csv:
        return report::to_csv(sheet);
    case Format::markdown:
        return report::to_markdown(sheet);
    case Format::svg:
        return report::to_svg(sheet);
    case Format::pdf:
        break;
    }
    throw ProgramError("no report is made as " + std::string(name_of(format)));
}

/// Files first: standard output may be a pipe that closes early.
int write(const std::vector<Target>& targets, const report::Sheet& sheet,
          const Messages& messages) {
    std::vector<Output> files;
    std::optional<std::string> printed;
    for (const Target& target : targets)
        if (target.is_standard_output())
            printed = rendered(target.format, sheet);
        else
            files.push_back({target.path, rendered(target.format, sheet)});
    std::optional<Fault> fault = write_files(files);
    if (!fault)
        for (const Output& file : files)
            messages.say("wrote " + file_in_quotes(file.path));
    if (!fault && printed)
        fault = write_standard_output(*printed);
    if (fault)
        messages.tell(*fault);
    return fault ? status_of({*fault}) : status::done;
}

} // namespace

int run_cut(const Context& context) {
    Files files(context);
    Faults faults;
    const std::vector<Target> targets = targets_of(context.arguments, faults);
    files.tell(faults);
    if (stops(faults))
        return files.status();
    order::Request request = wishes_of(context.arguments);
    if (!read_operands(files, context.arguments.operands, request))
        return files.status();
    const auto time = context.arguments.value(Opt::time);
    SearchWatch watch(time ? seconds(*time) : std::nullopt, progress_line(context));
    request.watch = [&](const nest::Progress& progress) { return watch.go_on(progress); };
    spdlog::debug("planning {} vehicle(s) with {} thread(s)", request.vehicles.size(),
                  request.effort.threads);
    order::Outcome outcome = order::run(std::move(request));
    watch.finish();
    const std::string stopped_by = text_of(watch.stopped_by());
    if (outcome.plan)
        add_stop_warning(*outcome.plan, stopped_by, outcome.faults);
    files.tell(outcome.faults);
    if (!outcome.plan && watch.interrupted())
        die_by_interrupt();
    if (!outcome.plan)
        return files.status();
    return write(targets,
                 {.plan = *outcome.plan,
                  .order = outcome.order,
                  .warnings = outcome.faults,
                  .stopped_by = stopped_by},
                 context.messages);
}

} // namespace pelt::cli
