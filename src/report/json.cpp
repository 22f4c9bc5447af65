// SPDX-License-Identifier: MIT
#include "report/report.hpp"

#include <nlohmann/json.hpp>

namespace pelt::report {
namespace {

using Json = nlohmann::ordered_json;

double mm(Um um) {
    return static_cast<double>(um) / 1000.0;
}
Json point(GridPoint p) {
    return Json::array({mm(p.x), mm(p.y)});
}
Json ring(const Ring& r) {
    Json out = Json::array();
    for (const GridPoint& p : r)
        out.push_back(point(p));
    return out;
}
Json rings(const std::vector<Ring>& many) {
    Json out = Json::array();
    for (const Ring& r : many)
        out.push_back(ring(r));
    return out;
}

Json piece(const Plan& plan, const Placement& p, int number) {
    const Job& job = plan.job();
    const Piece& piece = job.pieces[p.piece];
    const PieceId& id = piece.ids[p.copy];
    const Vehicle& vehicle = job.vehicles[static_cast<std::size_t>(id.vehicle)];
    const CutShape& shape = piece.shapes[p.shape];
    const Polygon lying = placed(shape.outline, p.turn, p.at);
    const Box box = box_of(lying.outer);
    return {{"number", number},
            {"vehicle", vehicle.name},
            {"panel", vehicle.panels[static_cast<std::size_t>(id.panel)].name},
            {"side", name_of(id.side)},
            {"copy", id.copy},
            {"part", id.part},
            {"parts", id.parts},
            {"kind", name_of(id.kind)},
            {"name", id.kind == PieceKind::inlay ? Json(id.inlay) : Json(nullptr)},
            {"direction", name_of(piece.direction)},
            {"at_mm", point(box.low)},
            {"size_mm", Json::array({mm(box.along()), mm(box.across())})},
            {"turn_deg", p.turn.millidegrees / 1000.0},
            {"wrapped_mm", ring(piece.wrapped.outer)},
            {"blank_mm", ring(shape.outline.outer)},
            {"blank_holes_mm", rings(shape.outline.holes)},
            {"outline_mm", ring(lying.outer)},
            {"holes_mm", rings(lying.holes)}};
}

} // namespace

std::string to_json(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    Json rolls = Json::array();
    Um length = 0;
    int number = 0;
    for (const UsedRoll& used : sheet.plan.layout().rolls) {
        const Roll& roll = job.rolls[used.roll];
        Json pieces = Json::array();
        for (const Placement& p : used.placements)
            pieces.push_back(piece(sheet.plan, p, ++number));
        Json cuts = Json::array();
        for (const Cut& cut : used.cuts)
            cuts.push_back({{"from_mm", point(cut.from)}, {"to_mm", point(cut.to)}});
        rolls.push_back({{"roll", roll.name},
                         {"width_mm", mm(roll.width)},
                         {"trim_mm", mm(roll.trim)},
                         {"length_mm", mm(used.length)},
                         {"pieces", pieces},
                         {"cuts", cuts}});
        length += used.length;
    }
    const Json out = {{"schema", "pelt.cut/1"},
                      {"by", name_of(job.by)},
                      {"length_mm", mm(length)},
                      {"bound_mm", mm(sheet.plan.layout().bound.length)},
                      {"rolls", rolls}};
    return out.dump(1) + "\n";
}

Areas areas_of(const Plan& plan) {
    Areas areas;
    for (const UsedRoll& used : plan.layout().rolls) {
        areas.film += static_cast<DoubleArea>(2) * used.length * plan.job().rolls[used.roll].width;
        for (const Placement& p : used.placements) {
            const Piece& piece = plan.job().pieces[p.piece];
            const auto area = [](const Polygon& polygon) {
                DoubleArea sum = doubled_area(polygon.outer);
                for (const Ring& hole : polygon.holes)
                    sum += doubled_area(hole);
                return sum;
            };
            areas.cut += area(piece.shapes[p.shape].outline);
            areas.wrapped += area(piece.wrapped);
        }
    }
    return areas;
}

} // namespace pelt::report
