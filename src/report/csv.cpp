// SPDX-License-Identifier: MIT
#include "order/order.hpp"
#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"

#include <functional>

namespace pelt::report {
namespace {

std::string mm(Um um) {
    return decimal(um, 3, 0);
}

std::string mm2(DoubleArea doubled) {
    return decimal(doubled * 5, 7, 0);
}

std::string yes_no(bool value) {
    return value ? "yes" : "no";
}

std::string known(bool is_known, const std::string& text) {
    return is_known ? text : "";
}

/// One value of a row; the name is the column's head.
template <class Row>
struct CsvColumn {
    std::string_view head;
    std::function<std::string(const Row&)> value;
};

template <class Row>
std::string csv(const std::vector<CsvColumn<Row>>& columns, const std::vector<Row>& rows) {
    std::vector<std::string> fields;
    for (const auto& column : columns)
        fields.emplace_back(column.head);
    std::string text = csv_line(fields);
    for (const Row& row : rows) {
        fields.clear();
        for (const auto& column : columns)
            fields.push_back(column.value(row));
        text += csv_line(fields);
    }
    return text;
}

struct PieceRow {
    const Sheet& sheet;
    const PlacedPiece& piece;
    std::size_t laid = 0; ///< place in the order of laying, from 1

    const Roll& roll() const {
        const Plan& plan = sheet.plan;
        return plan.job().rolls.at(plan.layout().rolls.at(piece.roll).roll);
    }
    StretchAsked stretch() const { return stretch_of(sheet.plan.job(), piece.id); }
};

std::string stretch_figure(const PieceRow& row) {
    const StretchAsked stretch = row.stretch();
    return known(stretch.is != StretchAsked::Is::unknown, rounded_percent(stretch.percent));
}

const std::vector<CsvColumn<PieceRow>>& piece_columns() {
    using Row = PieceRow;
    static const std::vector<CsvColumn<Row>> columns{
        {"number", [](const Row& r) { return std::to_string(r.piece.number); }},
        {"laid", [](const Row& r) { return std::to_string(r.laid); }},
        {"vehicle", [](const Row& r) { return csv_text(r.piece.vehicle.name); }},
        {"panel", [](const Row& r) { return csv_text(r.piece.panel.name); }},
        {"side", [](const Row& r) { return std::string(name_of(r.piece.id.side)); }},
        {"copy", [](const Row& r) { return std::to_string(r.piece.id.copy); }},
        {"part", [](const Row& r) { return std::to_string(r.piece.id.part); }},
        {"parts", [](const Row& r) { return std::to_string(r.piece.id.parts); }},
        {"kind", [](const Row& r) { return std::string(name_of(r.piece.id.kind)); }},
        {"name", [](const Row& r) { return csv_text(r.piece.id.inlay); }},
        {"direction", [](const Row& r) { return std::string(name_of(r.piece.piece.direction)); }},
        {"roll", [](const Row& r) { return csv_text(r.roll().name); }},
        {"batch", [](const Row& r) { return csv_text(r.roll().batch); }},
        {"from_free_end_mm", [](const Row& r) { return mm(r.piece.cut_box().low.x); }},
        {"from_near_edge_mm", [](const Row& r) { return mm(r.piece.cut_box().low.y); }},
        {"along_mm", [](const Row& r) { return mm(r.piece.cut_box().along()); }},
        {"across_mm", [](const Row& r) { return mm(r.piece.cut_box().across()); }},
        {"turn_deg", [](const Row& r) { return decimal(r.piece.turn.millidegrees, 3, 0); }},
        {"finished_along_mm", [](const Row& r) { return mm(r.piece.finished_box().along()); }},
        {"finished_across_mm", [](const Row& r) { return mm(r.piece.finished_box().across()); }},
        {"cut_mm2", [](const Row& r) { return mm2(doubled_area(r.piece.shape.outline)); }},
        {"wrapped_mm2", [](const Row& r) { return mm2(doubled_area(r.piece.piece.wrapped)); }},
        {"stretch_percent", [](const Row& r) { return stretch_figure(r); }},
        {"stretch_is", [](const Row& r) { return std::string(name_of(r.stretch().is)); }},
        {"from_trimmed_edge_mm",
         [](const Row& r) { return mm(r.piece.cut_box().low.y - r.roll().trim); }}};
    return columns;
}

std::vector<PieceRow> piece_rows(const Sheet& sheet, const std::vector<PlacedPiece>& pieces) {
    std::vector<PieceId> ids;
    std::vector<PieceRow> rows;
    for (const PlacedPiece& p : pieces) {
        ids.push_back(p.id);
        rows.push_back({sheet, p, 0});
    }
    const std::vector<std::size_t> order = order::laying_order(sheet.plan.job(), ids);
    for (std::size_t place = 0; place < order.size(); ++place)
        rows[order[place]].laid = place + 1;
    return rows;
}

const std::vector<CsvColumn<Sheet>>& run_columns() {
    static const std::vector<CsvColumn<Sheet>> columns{
        {"vehicle", [](const Sheet& s) { return csv_text(vehicles_of(s.plan.job())); }},
        {"film", [](const Sheet& s) { return csv_text(s.plan.job().film.name); }},
        {"by", [](const Sheet& s) { return std::string(name_of(s.plan.job().by)); }},
        {"demonstration", [](const Sheet& s) { return yes_no(is_demonstration(s.plan.job())); }},
        {"stopped", [](const Sheet& s) { return yes_no(s.plan.layout().stopped); }},
        {"roll_width_mm", [](const Sheet& s) { return mm(s.plan.job().film.width); }},
        {"pieces", [](const Sheet& s) { return std::to_string(pieces_by_number(s.plan).size()); }},
        {"rolls", [](const Sheet& s) { return std::to_string(s.plan.layout().rolls.size()); }},
        {"length_mm", [](const Sheet& s) { return mm(length_of(s.plan)); }},
        {"bound_mm", [](const Sheet& s) { return mm(s.plan.layout().bound.length); }},
        {"film_mm2", [](const Sheet& s) { return mm2(areas_of(s.plan).film); }},
        {"cut_mm2", [](const Sheet& s) { return mm2(areas_of(s.plan).cut); }},
        {"wrapped_mm2", [](const Sheet& s) { return mm2(areas_of(s.plan).wrapped); }},
        {"waste_percent",
         [](const Sheet& s) { return decimal(waste_micropercent(areas_of(s.plan)), 6, 4); }},
        {"order_mm", [](const Sheet& s) { return decimal(s.order.length().pm(), 9, 0); }},
        {"total",
         [](const Sheet& s) {
             return s.order.total ? to_string(*s.order.total, s.plan.job().film.money_digits) : "";
         }},
        {"currency", [](const Sheet& s) { return csv_text(s.order.currency); }},
        {"seams", [](const Sheet& s) { return std::to_string(s.plan.job().seams.size()); }}};
    return columns;
}

} // namespace

std::string to_csv(const Sheet& sheet) {
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    return csv(piece_columns(), piece_rows(sheet, pieces));
}

std::string to_summary_csv(const std::vector<Sheet>& sheets) {
    return csv(run_columns(), sheets);
}

} // namespace pelt::report
