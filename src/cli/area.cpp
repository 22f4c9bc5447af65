// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/rendering.hpp"
#include "cli/request.hpp"
#include "cli/seen.hpp"
#include "order/order.hpp"
#include "report/report.hpp"

#include <string>
#include <utility>

namespace pelt::cli {
namespace {

std::optional<order::AreaRequest> read_request(Files& files, const Arguments& arguments) {
    auto read = files.vehicle_and_film(arguments.operands);
    if (!read)
        return std::nullopt;
    order::AreaRequest request;
    request.vehicle = std::move(read->vehicle);
    request.film = std::move(read->film);
    request.selection = selection_of(arguments);
    request.leave = arguments.names(Opt::leave);
    request.threads = threads_of(arguments);
    return request;
}

report::AreaSheet sheet_of(const order::AreaRequest& request, order::AreaOutcome outcome,
                           Unit unit) {
    report::AreaSheet sheet;
    sheet.vehicle = request.vehicle.name;
    sheet.demonstration = request.vehicle.demonstration;
    if (request.film) {
        sheet.film = request.film->name;
        sheet.demonstration = sheet.demonstration || request.film->demonstration;
        sheet.stretch_limit = request.film->stretch_panel_percent;
    }
    sheet.rows = std::move(outcome.rows);
    sheet.warnings = std::move(outcome.faults);
    sheet.unit = unit;
    return sheet;
}

} // namespace

int run_area(const Context& context) {
    Files files(context);
    Faults faults;
    const std::vector<Target> targets = targets_of(context.arguments, faults);
    files.tell(faults);
    if (stops(faults))
        return files.status();
    const auto request = read_request(files, context.arguments);
    if (!request || !files.spared_by(paths_of(targets)))
        return files.status();
    order::AreaOutcome outcome = order::areas(*request);
    files.tell(stops(outcome.faults) ? outcome.faults
                                     : not_seen_on_the_page(outcome.faults, targets, context.world,
                                                            PageHas::warnings));
    if (stops(outcome.faults))
        return files.status();
    const Unit unit = unit_of(context.arguments, request->film);
    const report::AreaSheet sheet = sheet_of(*request, std::move(outcome), unit);
    return write_results(
        targets, [&](const Target& target) { return rendered(target, sheet, context); },
        context.messages);
}

} // namespace pelt::cli
