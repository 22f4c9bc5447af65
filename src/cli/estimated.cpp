// SPDX-License-Identifier: MIT
#include "cli/estimated.hpp"

#include "cli/interrupt.hpp"
#include "cli/rendering.hpp"
#include "cli/request.hpp"
#include "cli/seen.hpp"
#include "cli/statuses.hpp"
#include "report/report.hpp"

#include <utility>

namespace pelt::cli {
namespace {

Fault no_pattern() {
    return {Severity::job,
            {},
            "",
            "there is no pattern of panels that were not measured",
            "measure them, or name those that were with --only"};
}

} // namespace

Estimated estimate(order::Request request, std::optional<double> seconds,
                   const Context& context) {
    SearchWatch watch = watch_for(seconds, context);
    request.watch = [&](const nest::Progress& progress) { return watch.go_on(progress); };
    Estimated out{order::estimate(request)};
    watch.finish();
    out.interrupted = watch.interrupted();
    return out;
}

int cut_estimate(const order::Request& request, const std::optional<ShopAsked>& shop,
                 const std::vector<Target>& targets, const report::Fillings& filled, Files& files,
                 const RunTime& time, const Context& context) {
    if (context.arguments.count(Opt::pattern) > 0) {
        files.tell({no_pattern()});
        return files.status();
    }
    const Estimated found = estimate(request, time.left(), context);
    files.tell(found.outcome.estimate ? not_seen_on_the_page(found.outcome.faults, targets,
                                                             context.world, PageHas::warnings)
                                      : found.outcome.faults);
    if (!found.outcome.estimate && found.interrupted)
        die_by_interrupt();
    if (!found.outcome.estimate)
        return files.status();
    const report::EstimateSheet sheet{
        *found.outcome.estimate,
        found.outcome.faults,
        unit_of(context.arguments, request.film),
        context.arguments.value(Opt::date).value_or(""),
        filled,
        shop ? shop->quote(order::film_to_quote(*found.outcome.estimate)) : std::nullopt};
    const int written = write_results(
        targets, [&](const Target& target) { return rendered(target, sheet, context); },
        context.messages);
    return written == status::done ? files.status() : written;
}

} // namespace pelt::cli
