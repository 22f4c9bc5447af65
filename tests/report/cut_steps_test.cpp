// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "report/cut_steps.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

using namespace pelt;
using namespace pelt::report;

namespace {

struct Told {
    std::multiset<int> freed;
    DoubleArea fallen = 0;
};

Told told_by(const std::vector<CutStep>& steps) {
    Told told;
    for (const CutStep& step : steps) {
        told.freed.insert(step.frees.begin(), step.frees.end());
        for (const FilmAway& film : step.falls_away)
            told.fallen += DoubleArea{2} * film.usable.along() * film.usable.across();
    }
    return told;
}

} // namespace

TEST_CASE("the cuts in words free every piece once, and what falls away is all that is left over") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    std::multiset<int> freed;
    DoubleArea fallen = 0;
    DoubleArea usable = 0;
    for (std::size_t i = 0; i < sheet.plan.layout().rolls.size(); ++i) {
        const Told told = told_by(cut_steps(sheet.plan, pieces, i));
        freed.insert(told.freed.begin(), told.freed.end());
        fallen += told.fallen;
        usable += DoubleArea{2} * sheet.plan.layout().rolls[i].length *
                  sheet.plan.job().film.usable_width();
    }
    std::multiset<int> all;
    for (const PlacedPiece& p : pieces)
        all.insert(p.number);
    CHECK(freed == all);
    CHECK(fallen == usable - areas_of(sheet.plan).cut);
}

TEST_CASE("the ruler is set within the film in hand, running distances within the roll") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    const UsedRoll& used = sheet.plan.layout().rolls.at(0);
    int number = 0;
    bool taken_off = false;
    for (const CutStep& step : cut_steps(sheet.plan, pieces, 0)) {
        CHECK(step.number == ++number);
        CHECK(step.ruler > 0);
        CHECK(step.ruler <= (step.across ? used.length : sheet.plan.job().film.width));
        CHECK(step.running <= used.length);
        CHECK((step.from == RulerFrom::near_edge) == !step.across);
        CHECK((step.from != RulerFrom::free_end || step.running == step.ruler));
        taken_off = taken_off || step.takes_off_the_roll;
    }
    CHECK(taken_off);
}

TEST_CASE("whole steps of the ruler from the near edge, once the roll edge is off") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const Um ruler = sheet.plan.job().film.allowances.ruler;
    for (const CutStep& step : cut_steps(sheet.plan, pieces_by_number(sheet.plan), 0))
        CHECK((step.frees_roll_edge || step.ruler % ruler == 0));
}
