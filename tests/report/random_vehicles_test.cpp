// SPDX-License-Identifier: MIT
// What the design promises of every sheet, for vehicles made up at random: a sheet exists only when
// `verify` has passed its plan, so that making one is the check of the layout.
#include "job.hpp"
#include "random_vehicles.hpp"
#include "report/facts.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace pelt;
using namespace pelt::test;

namespace {

const std::vector<std::string> films{
    plain_film,
    "film: Yard\nroll: {width: 60 in, trim: 1/4 in, length: 25 yd}\ndirection: any\n"
    "allowances: {wrap: 1/2 in, handling: {want: 2 in, least: 1/2 in}, overlap: 3/8 in, gap: 0}\n"
    "sold: [{by: 1 yd, price: 20.00}]\ncurrency: USD\n",
    "film: Narrow\nroll: {width: 1220 mm, trim: 8 mm}\ndirection: two-way\n"
    "allowances: {wrap: 9 mm, handling: 30 mm, overlap: 12 mm, gap: 3 mm}\n",
};

report::Sheet planned(const std::string& vehicle, const std::string& film, int threads) {
    order::Request wishes = request(vehicle, film);
    wishes.effort.threads = threads;
    return sheet(std::move(wishes));
}

/// The bound and what is taken off every roll. Which piece lies where may follow the order of
/// laying, and that the panels' names.
std::vector<Um> lengths_of(const report::Sheet& sheet) {
    std::vector<Um> lengths{sheet.plan.layout().bound.length};
    for (const UsedRoll& roll : sheet.plan.layout().rolls)
        lengths.push_back(roll.length);
    return lengths;
}

} // namespace

TEST_CASE("random vehicles: the same sheet for one and two threads, and areas that add up") {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        Chance chance(seed);
        const std::string vehicle = vehicle_of(random_panels(chance), 'p');
        const std::string& film = films[seed % films.size()];
        const report::Sheet sheet = planned(vehicle, film, 1);
        CHECK(report::to_json(sheet) == report::to_json(planned(vehicle, film, 2)));
        const report::Areas areas = report::areas_of(sheet.plan);
        DoubleArea wrapped = 0;
        DoubleArea film_taken = 0;
        Um length = 0;
        for (const UsedRoll& roll : sheet.plan.layout().rolls) {
            film_taken += DoubleArea{2} * roll.length * sheet.plan.job().film.width;
            length += roll.length;
        }
        for (const Piece& piece : sheet.plan.job().pieces)
            wrapped +=
                static_cast<std::int64_t>(piece.ids.size()) * report::doubled_area(piece.wrapped);
        CHECK(areas.film == film_taken);
        CHECK(areas.wrapped == wrapped);
        CHECK(areas.film == areas.wrapped + areas.bleed() + areas.offcut());
        CHECK(areas.bleed() >= 0);
        CHECK(areas.offcut() >= 0);
        CHECK(sheet.plan.layout().bound.length <= length);
    }
}

TEST_CASE("random vehicles: names and the order of panels change no length") {
    for (std::uint64_t seed = 101; seed <= 130; ++seed) {
        CAPTURE(seed);
        Chance chance(seed);
        std::vector<std::string> panels = random_panels(chance);
        const std::string& film = films[seed % films.size()];
        const report::Sheet first = planned(vehicle_of(panels, 'p'), film, 2);
        std::reverse(panels.begin(), panels.end());
        const report::Sheet second = planned(vehicle_of(panels, 'a'), film, 2);
        CHECK(lengths_of(first) == lengths_of(second));
    }
}
