// SPDX-License-Identifier: MIT
#include "report/half_done.hpp"

#include "report/facts.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

/// Panels whose every side is among the places are named once, without a side.
std::vector<std::string> names_of(const Job& job, const std::vector<LeftOut>& places) {
    std::vector<std::string> names;
    for (const LeftOut& place : places) {
        const Panel& panel = job.vehicles.at(static_cast<std::size_t>(place.vehicle))
                                 .panels.at(static_cast<std::size_t>(place.panel));
        const std::vector<Side> sides = sides_of(panel.sides);
        const bool whole = std::all_of(sides.begin(), sides.end(), [&](Side side) {
            return std::find(places.begin(), places.end(),
                             LeftOut{place.vehicle, place.panel, side}) != places.end();
        });
        const std::string side = whole ? "" : " (" + std::string(name_of(place.side)) + ")";
        const std::string name = place.is_whole_side()
                                     ? panel_label(job, place.vehicle, place.panel) + side
                                     : as_options_name(job, place);
        if (std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    }
    return names;
}

bool has_stock(const Plan& plan) {
    return std::any_of(plan.job().rolls.begin(), plan.job().rolls.end(),
                       [](const Roll& roll) { return !roll.is_new; });
}

std::vector<PlacedPiece> on_new_film(const Plan& plan) {
    std::vector<PlacedPiece> out;
    for (const PlacedPiece& p : pieces_by_number(plan))
        if (plan.job().rolls.at(plan.layout().rolls.at(p.roll).roll).is_new)
            out.push_back(p);
    return out;
}

std::string side_label(const Job& job, const PieceId& id) {
    const std::string name = label_of(job, id);
    return id.side == Side::centre ? name : name + " (" + std::string(name_of(id.side)) + ")";
}

Json places(const Job& job, const std::vector<LeftOut>& all) {
    std::vector<Json> items;
    for (const LeftOut& place : all) {
        const Vehicle& vehicle = job.vehicles.at(static_cast<std::size_t>(place.vehicle));
        const Panel& panel = vehicle.panels.at(static_cast<std::size_t>(place.panel));
        JsonObject item;
        item.add("vehicle", json_text(vehicle.name))
            .add("panel", json_text(panel.name))
            .add("side", json_text(name_of(place.side)));
        if (place.no != LeftOut::all)
            item.add("no", json_whole(place.no));
        if (place.piece > 0)
            item.add("piece", json_whole(place.piece));
        items.push_back(item.on_one_line());
    }
    return json_array(items);
}

std::string why_new_film(const Sheet& sheet, const ShortStock& stock) {
    if (!stock.cost)
        return ". Without a price for new film the two could not be compared.";
    return ", but the job would then cost " +
           money(*stock.cost, sheet.plan.job().film.money_digits, sheet.order.currency) +
           ": new film is cheaper.";
}

std::vector<std::string> whether_stock_is_enough(const Sheet& sheet, const Measures& measures) {
    if (!sheet.order.short_stock)
        return {};
    const ShortStock& stock = *sheet.order.short_stock;
    if (stock.more == 0)
        return {"Not taken from stock: " + stock.stock + " would do" + why_new_film(sheet, stock)};
    return {"NOT ENOUGH IN STOCK: " + stock.stock + " is short of about " +
            measures.film(stock.more) +
            ". All that must be of one batch comes from new film."};
}

} // namespace

std::vector<std::string> what_is_done(const Job& job) {
    std::vector<std::string> out;
    if (!job.half_done.done.empty())
        out.push_back("Done already: " + listed(names_of(job, job.half_done.done)) + ".");
    if (!job.half_done.cut_again.empty())
        out.push_back("Spoiled, and cut again: " + listed(names_of(job, job.half_done.cut_again)) +
                      ".");
    return out;
}

std::vector<std::string> whether_it_is_enough(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    if (!job.half_done.any())
        return whether_stock_is_enough(sheet, measures);
    const std::vector<PlacedPiece> missing = on_new_film(sheet.plan);
    if (missing.empty())
        return {"Enough: what is left takes all that is still to be cut."};
    if (!has_stock(sheet.plan))
        return {"All that is still to be cut comes from new film: order it of the batch that is on "
                "the vehicle."};
    std::string names;
    for (const PlacedPiece& p : missing)
        names +=
            (names.empty() ? "" : "; ") + std::to_string(p.number) + " " + side_label(job, p.id);
    const UsedRoll& last = sheet.plan.layout().rolls.at(missing.back().roll);
    const bool one_batch = !job.rolls.at(last.roll).batch.empty();
    return {"NOT ENOUGH: what is left is short of " + measures.film(new_length_of(sheet.plan)) +
            (one_batch ? " of the same batch" : "") + ". No place on it for: " + names +
            (one_batch ? ". Do not go on with film of another batch." : ".")};
}

Json half_done(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    if (!job.half_done.any())
        return json_null;
    std::vector<Json> numbers;
    for (const PlacedPiece& p : on_new_film(sheet.plan))
        numbers.push_back(json_whole(p.number));
    return JsonObject()
        .add("done", places(job, job.half_done.done))
        .add("cut_again", places(job, job.half_done.cut_again))
        .add("enough", json_bool(numbers.empty()))
        .add("missing_mm", json_mm(new_length_of(sheet.plan)))
        .add("missing_numbers", json_array(numbers))
        .on_one_line();
}

} // namespace pelt::report
