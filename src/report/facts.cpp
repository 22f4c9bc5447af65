// SPDX-License-Identifier: MIT
#include "report/facts.hpp"

#include "model/error.hpp"
#include "report/check_code.hpp"
#include "report/decimal.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {
namespace {

const Vehicle& vehicle_of(const Job& job, const PieceId& id) {
    return job.vehicles.at(static_cast<std::size_t>(id.vehicle));
}

const Panel& panel_of(const Job& job, const PieceId& id) {
    return vehicle_of(job, id).panels.at(static_cast<std::size_t>(id.panel));
}

const DevelopedPanel* developed_of(const Job& job, const PieceId& id) {
    const auto v = static_cast<std::size_t>(id.vehicle);
    const auto p = static_cast<std::size_t>(id.panel);
    if (v >= job.developed.size() || p >= job.developed[v].size())
        return nullptr;
    return &job.developed[v][p];
}

PlacedPiece placed_piece(const Job& job, std::size_t roll, const Placement& p, int number) {
    const Piece& piece = job.pieces.at(p.piece);
    const PieceId& id = piece.ids.at(p.copy);
    const CutShape& shape = piece.shapes.at(p.shape);
    return {number,
            roll,
            piece,
            id,
            vehicle_of(job, id),
            panel_of(job, id),
            shape,
            p.turn,
            placed(shape.outline, p.turn, p.at),
            placed(piece.wrapped, p.turn, p.at)};
}

} // namespace

std::vector<PlacedPiece> pieces_by_number(const Plan& plan) {
    std::vector<PlacedPiece> pieces;
    const std::vector<UsedRoll>& rolls = plan.layout().rolls;
    for (std::size_t roll = 0; roll < rolls.size(); ++roll)
        for (const Placement& p : rolls[roll].placements)
            pieces.push_back(
                placed_piece(plan.job(), roll, p, static_cast<int>(pieces.size()) + 1));
    return pieces;
}

StretchAsked stretch_of(const Job& job, const PieceId& id) {
    const DevelopedPanel* developed = developed_of(job, id);
    return developed != nullptr ? developed->stretch : StretchAsked{};
}

std::string_view name_of(StretchAsked::Is is) {
    switch (is) {
    case StretchAsked::Is::exact:
        return "exact";
    case StretchAsked::Is::estimate:
        return "estimate";
    case StretchAsked::Is::unknown:
        return "unknown";
    }
    return "unknown";
}

std::string rounded_percent(double value) {
    if (!std::isfinite(value) || std::abs(value) > 1e15)
        throw ProgramError("a figure that cannot be printed");
    return decimal(std::llround(value * 1000), 3, 1);
}

DoubleArea doubled_area(const Polygon& polygon) {
    DoubleArea sum = doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += doubled_area(hole);
    return sum;
}

std::optional<std::int64_t> visible_of(const Plan& plan) {
    std::int64_t sum = 0;
    for (const PlacedPiece& p : pieces_by_number(plan)) {
        if (p.id.kind != PieceKind::main || p.id.part != 1)
            continue;
        const DevelopedPanel* developed = developed_of(plan.job(), p.id);
        if (developed == nullptr)
            return std::nullopt;
        sum += std::llround(developed->visible_mm2 * 1000);
    }
    return sum;
}

Areas areas_of(const Plan& plan) {
    Areas areas;
    for (const UsedRoll& used : plan.layout().rolls) {
        areas.film += DoubleArea{2} * used.length * plan.job().rolls.at(used.roll).width;
        for (const Placement& p : used.placements) {
            const Piece& piece = plan.job().pieces.at(p.piece);
            areas.cut += doubled_area(piece.shapes.at(p.shape).outline);
            areas.wrapped += doubled_area(piece.wrapped);
        }
    }
    return areas;
}

Um length_of(const Plan& plan) {
    return pelt::length_of(plan.layout());
}

Um new_length_of(const Plan& plan) {
    Um sum = 0;
    for (const UsedRoll& used : plan.layout().rolls)
        if (plan.job().rolls.at(used.roll).is_new)
            sum += used.length;
    return sum;
}

std::optional<Length> available_of(const Sheet& sheet, std::size_t used) {
    const std::vector<UsedRoll>& rolls = sheet.plan.layout().rolls;
    const auto roll_of = [&](std::size_t i) -> const Roll& {
        return sheet.plan.job().rolls.at(rolls.at(i).roll);
    };
    const Roll& roll = roll_of(used);
    if (!roll.is_new)
        return roll.available ? std::optional(Length::from_um(*roll.available)) : std::nullopt;
    const Film& film = sheet.plan.job().film;
    if (film.sold.empty() && !film.roll_length && !sheet.order.spare)
        return std::nullopt; // whoever orders says how long it is
    std::size_t line = 0;
    for (std::size_t i = 0; i < used; ++i)
        line += roll_of(i).is_new ? 1 : 0;
    return line < sheet.order.lines.size() ? std::optional(sheet.order.lines[line].length())
                                           : std::nullopt;
}

Um handling_least_of(const Plan& plan) {
    const Job& job = plan.job();
    std::optional<Um> least;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids) {
            const Um own =
                panel_of(job, id).allowances.handling.value_or(job.film.allowances.handling).least;
            least = std::min(least.value_or(own), own);
        }
    return least.value_or(job.film.allowances.handling.least);
}

std::int64_t waste_micropercent(const Areas& areas) {
    if (areas.film == 0)
        return 0;
    const Int128 hundred_percent = 100'000'000;
    return static_cast<std::int64_t>(
        divided_nearest((areas.film - areas.wrapped) * hundred_percent, areas.film));
}

Box box_of(const Flaw& flaw, Um roll_width) {
    return {{flaw.from, flaw.low.value_or(0)}, {flaw.to, flaw.high.value_or(roll_width)}};
}

std::string known_batch_of(const Roll& roll) {
    return roll.batch == "that of " + roll.name ? "" : roll.batch;
}

bool is_demonstration(const Job& job) {
    return job.film.demonstration || std::any_of(job.vehicles.begin(), job.vehicles.end(),
                                                 [](const Vehicle& v) { return v.demonstration; });
}

std::string vehicles_of(const Job& job) {
    std::string text;
    for (const Vehicle& vehicle : job.vehicles)
        text += (text.empty() ? "" : " + ") + vehicle.name;
    return text;
}

std::string vehicles_by_letter(const Job& job) {
    if (job.vehicles.size() < 2)
        return vehicles_of(job);
    std::string text;
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        text += (v == 0 ? "" : "; ") + letter_of(static_cast<int>(v)) + ": " + job.vehicles[v].name;
    return text;
}

std::string vehicles_and_times(const Job& job) {
    return vehicles_by_letter(job) +
           (job.times > 1 ? ", " + std::to_string(job.times) + " times" : "");
}

std::string check_code_of(const Sheet& sheet) {
    return sheet.check_code.empty() ? check_code_of(sheet.plan.job()) : sheet.check_code;
}

std::string check_code_of(const Job& job) {
    std::vector<std::string_view> texts;
    for (const Vehicle& vehicle : job.vehicles) {
        if (vehicle.place.source)
            texts.emplace_back(vehicle.place.source->text);
        for (const std::shared_ptr<const Source>& other : vehicle.also_read)
            texts.emplace_back(other->text);
        for (const Panel& panel : vehicle.panels)
            if (const auto* scan = std::get_if<SurfaceForm>(&panel.form))
                texts.emplace_back(scan->digest);
    }
    if (job.film.place.source)
        texts.emplace_back(job.film.place.source->text);
    for (const std::shared_ptr<const Source>& other : job.also_read)
        texts.emplace_back(other->text);
    return texts.empty() ? "" : check_code(texts);
}

} // namespace pelt::report
