// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/rendering.hpp"
#include "cli/request.hpp"
#include "cli/shop_asked.hpp"
#include "order/order.hpp"
#include "report/report.hpp"
#include "trade/bodies.hpp"

#include <string>
#include <utility>

namespace pelt::cli {
namespace {

report::StripSheet sheet_of(const Vehicle& vehicle, std::optional<Film> film, StripList list,
                            Unit unit, const std::optional<ShopAsked>& shop) {
    report::StripSheet sheet;
    sheet.vehicle = vehicle.name;
    sheet.demonstration = vehicle.demonstration || (film && film->demonstration) ||
                          (shop && shop->shop.demonstration);
    if (shop)
        sheet.shop = shop->shop;
    if (sheet.shop && sheet.shop->currency.empty() && film)
        sheet.shop->currency = film->currency;
    if (film)
        sheet.money_digits = film->money_digits;
    sheet.motorcycle = trade::is_motorcycle(vehicle.body);
    sheet.film = std::move(film);
    sheet.list = std::move(list);
    sheet.unit = unit;
    if (is_guessed(vehicle))
        sheet.like = vehicle.like;
    return sheet;
}

} // namespace

int run_strip(const Context& context) {
    Files files(context);
    Faults faults;
    const std::vector<Target> targets = targets_of(context.arguments, faults);
    files.tell(faults);
    if (stops(faults))
        return files.status();
    auto read = files.vehicle_and_film(context.arguments.operands);
    std::optional<ShopAsked> shop;
    if (!read_shop(files, context.arguments, shop) || !read || !files.spared_by(paths_of(targets)))
        return files.status();
    const Arguments& words = context.arguments;
    order::StripOutcome outcome =
        order::strip({read->vehicle, selection_of(words), words.names(Opt::leave), read->film,
                      shop ? shop->shop : Shop{}});
    files.tell(outcome.faults);
    if (stops(outcome.faults))
        return files.status();
    const Unit unit = unit_of(words, read->film);
    const report::StripSheet sheet =
        sheet_of(read->vehicle, std::move(read->film), std::move(outcome.list), unit, shop);
    return write_results(
        targets, [&](const Target& target) { return rendered(target, sheet, context); },
        context.messages);
}

} // namespace pelt::cli
