// SPDX-License-Identifier: MIT
#include "cli/estimated.hpp"

#include "cli/interrupt.hpp"
#include "cli/request.hpp"
#include "cli/search_watch.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"
#include "report/report.hpp"

#include <utility>

namespace pelt::cli {
namespace {

std::string rendered(const Target& target, const report::EstimateSheet& sheet,
                     const Context& context) {
    switch (target.format) {
    case Format::table:
        return report::to_table(sheet, style_for(target, context));
    case Format::csv:
        return report::to_csv(sheet);
    case Format::json:
        return report::to_json(sheet);
    case Format::markdown:
        return report::to_markdown(sheet);
    case Format::svg:
        return report::to_svg(sheet);
    case Format::pdf:
        return report::to_pdf(sheet, paper_of(context.arguments));
    }
    throw ProgramError("no estimate is made as " + std::string(name_of(target.format)));
}

Fault no_pattern() {
    return {Severity::job,
            {},
            "",
            "there is no pattern of panels that were not measured",
            "measure them, or name those that were with --only"};
}

} // namespace

Estimated estimate(order::Request request, const Context& context) {
    const auto time = context.arguments.value(Opt::time);
    SearchWatch watch(time ? seconds(*time) : std::nullopt, progress_line(context));
    request.watch = [&](const nest::Progress& progress) { return watch.go_on(progress); };
    Estimated out{order::estimate(request)};
    watch.finish();
    out.interrupted = watch.interrupted();
    return out;
}

int cut_estimate(const order::Request& request, const std::optional<ShopAsked>& shop,
                 const std::vector<Target>& targets, Files& files, const Context& context) {
    if (context.arguments.count(Opt::pattern) > 0) {
        files.tell({no_pattern()});
        return files.status();
    }
    const Estimated found = estimate(request, context);
    files.tell(found.outcome.faults);
    if (!found.outcome.estimate && found.interrupted)
        die_by_interrupt();
    if (!found.outcome.estimate)
        return files.status();
    const report::EstimateSheet sheet{*found.outcome.estimate, found.outcome.faults,
                                      unit_of(context.arguments),
                                      context.arguments.value(Opt::date).value_or(""),
                                      shop ? shop->quote(order::film_to_quote(
                                                 *found.outcome.estimate))
                                           : std::nullopt};
    const int written = write_results(
        targets, [&](const Target& target) { return rendered(target, sheet, context); },
        context.messages);
    return written == status::done ? files.status() : written;
}

} // namespace pelt::cli
