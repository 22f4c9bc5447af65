// SPDX-License-Identifier: MIT
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/findings.hpp"
#include "report/half_done.hpp"
#include "report/json_parts.hpp"
#include "report/measuring.hpp"
#include "report/offcuts.hpp"
#include "report/words.hpp"

#include <cmath>

namespace pelt::report {
namespace {

Json stretch_percent(const StretchAsked& stretch) {
    return stretch.is == StretchAsked::Is::unknown ? json_null
                                                   : json_number(rounded_percent(stretch.percent));
}

Json money(const std::optional<Money>& amount, int digits) {
    return amount ? json_text(to_string(*amount, digits)) : json_null;
}

JsonObject piece_names(const PlacedPiece& p) {
    JsonObject out;
    out.add("number", json_whole(p.number))
        .add("vehicle", json_text(p.vehicle.name))
        .add("panel", json_text(p.panel.name))
        .add("side", json_text(name_of(p.id.side)))
        .add("copy", json_whole(p.id.copy))
        .add("part", json_whole(p.id.part))
        .add("parts", json_whole(p.id.parts))
        .add("kind", json_text(name_of(p.id.kind)))
        .add("name", p.id.kind == PieceKind::inlay ? json_text(p.id.inlay) : json_null)
        .add("direction", json_text(name_of(p.piece.direction)));
    return out;
}

Json piece(const Job& job, const PlacedPiece& p) {
    const Box box = p.cut_box();
    const StretchAsked stretch = stretch_of(job, p.id);
    JsonObject out = piece_names(p);
    out.add("at_mm", json_point(box.low))
        .add("size_mm", json_point({box.along(), box.across()}))
        .add("turn_deg", json_number(decimal(p.turn.millidegrees, 3, 0)))
        .add("cut_mm2", json_mm2(doubled_area(p.shape.outline)))
        .add("wrapped_mm2", json_mm2(doubled_area(p.piece.wrapped)))
        .add("stretch_percent", stretch_percent(stretch))
        .add("stretch_is", json_text(name_of(stretch.is)))
        .add("wrapped_mm", json_ring(p.piece.wrapped.outer))
        .add("wrapped_holes_mm", json_rings(p.piece.wrapped.holes))
        .add("blank_mm", json_ring(p.shape.outline.outer))
        .add("blank_holes_mm", json_rings(p.shape.outline.holes))
        .add("outline_mm", json_ring(p.outline.outer))
        .add("holes_mm", json_rings(p.outline.holes));
    return out.on_one_line();
}

Json cut(const Cut& cut) {
    return JsonObject()
        .add("from_mm", json_point(cut.from))
        .add("to_mm", json_point(cut.to))
        .on_one_line();
}

Json roll(const Sheet& sheet, const std::vector<PlacedPiece>& pieces, std::size_t index) {
    const UsedRoll& used = sheet.plan.layout().rolls[index];
    const Roll& roll = sheet.plan.job().rolls.at(used.roll);
    std::vector<Json> own_pieces;
    for (const PlacedPiece& p : pieces)
        if (p.roll == index)
            own_pieces.push_back(piece(sheet.plan.job(), p));
    std::vector<Json> cuts;
    for (const Cut& c : used.cuts)
        cuts.push_back(cut(c));
    const std::optional<Length> available = available_of(sheet, index);
    return JsonObject()
        .add("roll", json_text(roll.name))
        .add("batch", json_text_or_null(roll.batch))
        .add("width_mm", json_mm(roll.width))
        .add("trim_mm", json_mm(roll.trim))
        .add("length_mm", json_mm(used.length))
        .add("is_new", json_bool(roll.is_new))
        .add("available_mm", available ? json_mm(*available) : json_null)
        .add("pieces", json_lines(own_pieces))
        .add("cuts", json_lines(cuts))
        .on_lines();
}

Json order_line(const OrderLine& line, int digits) {
    return JsonObject()
        .add("by_mm", json_mm(line.by))
        .add("count", json_whole(line.count))
        .add("length_mm", json_mm(line.length()))
        .add("price", money(line.price, digits))
        .add("batch", json_text_or_null(line.batch))
        .on_one_line();
}

std::vector<Json> order_lines(const std::vector<OrderLine>& all, int digits) {
    std::vector<Json> lines;
    for (const OrderLine& line : all)
        lines.push_back(order_line(line, digits));
    return lines;
}

Json next_best(const std::optional<NextBest>& next, int digits) {
    if (!next)
        return json_null;
    return JsonObject()
        .add("total", money(next->total, digits))
        .add("more", money(next->more, digits))
        .add("lines", json_array(order_lines(next->lines, digits)))
        .on_one_line();
}

/// A probability, to ten decimals.
std::string exact_percent(double percent) {
    return decimal(std::llround(percent * 1e10), 10, 4);
}

Json panel_of(const Job& job, int vehicle, int panel) {
    const Vehicle& of = job.vehicles.at(static_cast<std::size_t>(vehicle));
    return json_text(of.panels.at(static_cast<std::size_t>(panel)).name);
}

const std::string& vehicle_name(const Job& job, int vehicle) {
    return job.vehicles.at(static_cast<std::size_t>(vehicle)).name;
}

Json redo(const Job& job, const RedoChance& chance) {
    const Vehicle& of = job.vehicles.at(static_cast<std::size_t>(chance.vehicle));
    return JsonObject()
        .add("vehicle", json_text(of.name))
        .add("panel", panel_of(job, chance.vehicle, chance.panel))
        .add("percent", json_number(rounded_percent(chance.percent)))
        .add("assumed", json_bool(chance.assumed))
        .on_one_line();
}

/// How often what is there suffices, and what makes it so.
Json spare(const Job& job, const std::optional<Spare>& spare) {
    if (!spare)
        return json_null;
    std::vector<Json> chances;
    for (const RedoChance& chance : spare->redo)
        chances.push_back(redo(job, chance));
    std::vector<Json> kept;
    for (const KeptForRecuts& some : spare->kept)
        kept.push_back(JsonObject()
                           .add("vehicle", json_text(vehicle_name(job, some.vehicle)))
                           .add("panel", panel_of(job, some.vehicle, some.panel))
                           .add("pieces", json_whole(some.pieces))
                           .on_one_line());
    const bool one = spare->costliest_film > 0;
    return JsonObject()
        .add("needed_mm", json_mm(spare->needed))
        .add("bare_percent", json_number(exact_percent(spare->bare_percent)))
        .add("enough_percent", json_number(exact_percent(spare->enough_percent)))
        .add("surely_percent", json_number(exact_percent(spare->surely_percent)))
        .add("most_for",
             one ? panel_of(job, spare->costliest_vehicle, spare->costliest_panel) : json_null)
        .add("most_for_mm", one ? json_mm(spare->costliest_film) : json_null)
        .add("redo", json_array(chances))
        .add("kept", json_array(kept))
        .on_one_line();
}

Json short_of_stock(const std::optional<ShortStock>& stock) {
    if (!stock)
        return json_null;
    return JsonObject()
        .add("stock", json_text(stock->stock))
        .add("more_mm", json_mm(stock->more))
        .on_one_line();
}

} // namespace

Json json_order(const Job& job, const Order& order) {
    const int digits = job.film.money_digits;
    return JsonObject()
        .add("length_mm", json_mm(order.length()))
        .add("spare_mm", json_mm(order.spare ? order.spare->needed : 0))
        .add("sure_percent",
             order.spare ? json_number(rounded_percent(order.spare->sure_percent)) : json_null)
        .add("total", money(order.total, digits))
        .add("currency", json_text_or_null(order.currency))
        .add("lines", json_array(order_lines(order.lines, digits)))
        .add("next_best", next_best(order.next_best, digits))
        .add("spare", spare(job, order.spare))
        .add("short_of_stock", short_of_stock(order.short_stock))
        .on_one_line();
}

Json json_marks(const std::vector<Mark>& marks) {
    std::vector<Json> items;
    for (const GatheredMark& mark : gathered(marks)) {
        std::vector<Json> panels;
        for (const std::string& panel : mark.panels)
            panels.push_back(json_text(panel));
        items.push_back(JsonObject()
                            .add("panel", mark.panels.size() == 1 ? panels.front() : json_null)
                            .add("panels", json_array(panels))
                            .add("text", json_text(mark.text()))
                            .on_one_line());
    }
    return json_lines(items);
}

Json json_notes(const std::vector<std::string>& notes) {
    std::vector<Json> items;
    for (const std::string& text : notes)
        items.push_back(json_text(text));
    return json_lines(items);
}

namespace {

Json areas(const Plan& plan) {
    const Areas a = areas_of(plan);
    const std::optional<std::int64_t> visible = visible_of(plan);
    return JsonObject()
        .add("film", json_mm2(a.film))
        .add("cut", json_mm2(a.cut))
        .add("wrapped", json_mm2(a.wrapped))
        .add("visible", visible ? json_number(decimal(*visible, 3, 1)) : json_null)
        .add("bleed", json_mm2(a.bleed()))
        .add("offcut", json_mm2(a.offcut()))
        .on_one_line();
}

/// In the panel's drawing, as measured.
std::vector<Json> line_of(const SeamPlace& place) {
    std::vector<Json> points;
    for (const Point& p : place.at)
        points.push_back(json_array({json_number(decimal(thousandths(p.x), 3, 0)),
                                     json_number(decimal(thousandths(p.y), 3, 0))}));
    return points;
}

std::string_view name_of(CutOtherwise::Is is) {
    switch (is) {
    case CutOtherwise::Is::where_film_is_shortest:
        return "thrifty";
    case CutOtherwise::Is::whole_with_less_margin:
        return "whole with less margin";
    case CutOtherwise::Is::whole_across_the_arrow:
        break;
    }
    return "whole across the arrow";
}

/// How divided panels could be cut otherwise, and what is then bought.
Json cut_otherwise(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    std::vector<Json> items;
    for (const CutOtherwise& other : sheet.seams_weighed.panels) {
        const Vehicle& vehicle = job.vehicles.at(static_cast<std::size_t>(other.vehicle));
        items.push_back(
            JsonObject()
                .add("vehicle", json_text(vehicle.name))
                .add("panel", json_text(vehicle.panels.at(static_cast<std::size_t>(other.panel)).name))
                .add("how", json_text(name_of(other.is)))
                .add("margin_mm", other.is == CutOtherwise::Is::whole_with_less_margin
                                      ? json_mm(other.margin)
                                      : json_null)
                .add("order_mm", other.order ? json_mm(*other.order) : json_null)
                .on_one_line());
    }
    return json_lines(items);
}

Json seam(const Job& job, const Seam& s) {
    const Vehicle& vehicle = job.vehicles.at(static_cast<std::size_t>(s.vehicle));
    return JsonObject()
        .add("vehicle", json_text(vehicle.name))
        .add("panel", json_text(vehicle.panels.at(static_cast<std::size_t>(s.panel)).name))
        .add("side", json_text(name_of(s.side)))
        .add("upper_part", json_whole(s.upper_part))
        .add("under_part", json_whole(s.under_part))
        .add("overlap_mm", json_mm(s.overlap))
        .add("length_mm", json_mm(s.length))
        .add("added", json_bool(s.added))
        .add("where", json_text(place_text(s.place, Measures(Unit::mm))))
        .add("line_mm", json_array(line_of(s.place)))
        .on_one_line();
}

Json stopped(const Sheet& sheet) {
    if (!sheet.plan.layout().stopped)
        return json_null;
    return json_text(sheet.stopped_by.empty() ? "early" : sheet.stopped_by);
}

Json json_mm_or_null(const std::optional<Um>& um) {
    return um ? json_mm(*um) : json_null;
}

/// The rules of straight cutting, and the lengths of the layouts found without them.
Json straight(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    if (job.by != CutBy::straight)
        return json_null;
    return JsonObject()
        .add("stages", job.stages ? json_whole(*job.stages) : json_text("any"))
        .add("table_mm", json_mm_or_null(job.table))
        .add("in_order", json_bool(job.in_order))
        .add("any_stages_length_mm", json_mm_or_null(sheet.rules_cost.any_turns))
        .add("any_order_length_mm", json_mm_or_null(sheet.rules_cost.any_order))
        .on_one_line();
}

Json rolls(const Sheet& sheet) {
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    std::vector<Json> items;
    for (std::size_t i = 0; i < sheet.plan.layout().rolls.size(); ++i)
        items.push_back(roll(sheet, pieces, i));
    return json_lines(items);
}

Json offcuts(const Sheet& sheet) {
    std::vector<Json> items;
    for (const Offcut& offcut : offcuts_of(sheet))
        items.push_back(to_json(offcut, sheet.plan.job().film.money_digits));
    return json_lines(items);
}

Json seams(const Job& job) {
    std::vector<Json> items;
    for (const Seam& s : job.seams)
        items.push_back(seam(job, s));
    return json_lines(items);
}

} // namespace

std::string to_json(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    JsonObject out;
    out.add("schema", json_text("pelt.cut/1"))
        .add("vehicle", json_text(vehicles_of(job)))
        .add("film", json_text(job.film.name))
        .add("check_code", json_text_or_null(check_code_of(sheet)))
        .add("by", json_text(name_of(job.by)))
        .add("demonstration", json_bool(is_demonstration(job)))
        .add("direction", json_text(name_of(job.film.direction)))
        .add("turns", json_text(job.free_turns ? "any" : "quarter"))
        .add("stopped", stopped(sheet))
        .add("roll_width_mm", json_mm(job.film.width))
        .add("usable_width_mm", json_mm(job.film.usable_width()))
        .add("gap_mm", json_mm(job.film.allowances.gap))
        .add("handling_least_mm", json_mm(handling_least_of(sheet.plan)))
        .add("length_mm", json_mm(length_of(sheet.plan)))
        .add("bound_mm", json_mm(sheet.plan.layout().bound.length))
        .add("bound_by", json_text_or_null(sheet.plan.layout().bound.argument))
        .add("shortest", json_bool(sheet.plan.layout().shortest))
        .add("straight", straight(sheet))
        .add("area_mm2", areas(sheet.plan))
        .add("waste_percent", json_number(decimal(waste_micropercent(areas_of(sheet.plan)), 6, 4)))
        .add("order", json_order(job, sheet.order))
        .add("half_done", half_done(sheet))
        .add("measuring", measuring(sheet))
        .add("rolls", rolls(sheet))
        .add("seams", seams(job))
        .add("cut_otherwise", cut_otherwise(sheet))
        .add("offcuts", offcuts(sheet))
        .add("warnings", json_marks(marks_of(sheet, Measures(Unit::mm))))
        .add("notes", json_notes(notes_of(sheet, Measures(Unit::mm))))
        .add("guess", json_null);
    return out.on_lines().text + "\n";
}

} // namespace pelt::report
