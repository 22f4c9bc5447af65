// SPDX-License-Identifier: MIT
// A whole run in one row, for people.
#include "report/facts.hpp"
#include "report/report.hpp"
#include "report/words.hpp"

namespace pelt::report {
namespace {

std::string waste_of(const Plan& plan) {
    const Areas areas = areas_of(plan);
    return percent(areas.film - areas.wrapped, areas.film);
}

} // namespace

Document summary(const Sheet& sheet) {
    const Measures measures(sheet.unit);
    const Job& job = sheet.plan.job();
    const auto count = [](std::size_t n) { return std::to_string(n); };
    const Order& order = sheet.order;
    Table table{{{"vehicle", Align::left, true},
                 {"film", Align::left, true},
                 {"cut", Align::left},
                 {"pieces", Align::right},
                 {"seams", Align::right},
                 {"needed", Align::right},
                 {"waste", Align::right},
                 {"order", Align::right},
                 {"price", Align::right}},
                {}};
    table.rows.push_back(
        {vehicles_of(job), job.film.name, std::string(name_of(job.by)),
         count(pieces_by_number(sheet.plan).size()), count(job.seams.size()),
         measures.film(length_of(sheet.plan)), waste_of(sheet.plan), measures.film(order.length()),
         order.total ? money(*order.total, job.film.money_digits, order.currency) : "-"});
    return {std::move(table)};
}

} // namespace pelt::report
