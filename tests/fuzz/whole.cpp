// SPDX-License-Identifier: MIT
// A film, a line of two percent signs and a vehicle, by way of everything after reading: laid flat,
// cut in pieces, laid out, checked by the second routine, and told in every format.
#include "order/order.hpp"
#include "report/report.hpp"
#include "sources.hpp"

#include <algorithm>
#include <optional>

namespace pelt::fuzzed {
namespace {

/// More is no other kind of input, only more work: what a try may cost is bounded so that there are
/// many. Larger jobs are made up by tests/generated.
constexpr int most_pieces = 24;
constexpr std::size_t most_points = 400;

template <class T>
std::optional<T> read_by(read::Reading<T> reading) {
    expect_sentences(reading.faults);
    return std::move(reading.value);
}

bool small_enough(const Vehicle& vehicle) {
    int pieces = 0;
    std::size_t points = 0;
    for (const Panel& panel : vehicle.panels) {
        if (panel.count > most_pieces || panel.faces > 2)
            return false;
        pieces += panel.count * panel.faces *
                  static_cast<int>(sides_of(panel.sides).size() + panel.inlays.size());
        if (const auto* outline = std::get_if<OutlineForm>(&panel.form))
            points += outline->segments.size();
    }
    return pieces <= most_pieces && points <= most_points;
}

void expect_told(const report::Sheet& sheet) {
    for (const std::string& text :
         {report::to_table(sheet), report::to_markdown(sheet), report::to_csv(sheet),
          report::to_json(sheet), report::to_svg(sheet)})
        expect_printable(text);
    const report::Areas areas = report::areas_of(sheet.plan);
    expect(areas.film >= areas.cut && areas.cut >= areas.wrapped, "areas do not add up");
}

void plan(const Vehicle& vehicle, const Film& film, CutBy by) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    request.by = by;
    request.effort.part = 50;
    if (order::is_guessed(request)) // an estimate is 200 plans of pieces like these
        return;
    const order::Outcome outcome = order::run(request);
    expect_sentences(outcome.faults);
    expect(outcome.plan.has_value() || stops(outcome.faults), "neither a plan nor a fault");
    if (outcome.plan)
        expect_told({.plan = *outcome.plan, .order = outcome.order, .warnings = outcome.faults});
}

} // namespace

void whole(std::string_view bytes) {
    constexpr std::string_view line = "\n%%\n";
    const std::size_t at = bytes.find(line);
    if (at == std::string_view::npos)
        return;
    const auto film = read_by(read::film(source(bytes.substr(0, at + 1))));
    const auto vehicle = read_by(read::vehicle(source(bytes.substr(at + line.size()))));
    if (!film || !vehicle || !small_enough(*vehicle))
        return;
    plan(*vehicle, *film, CutBy::straight);
    plan(*vehicle, *film, CutBy::contour);
}

} // namespace pelt::fuzzed
