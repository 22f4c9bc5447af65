// SPDX-License-Identifier: MIT
#include "order/names.hpp"
#include "order/shelf.hpp"

namespace pelt::order {
namespace {

std::set<std::string> other_films(const std::vector<StockRoll>& stock) {
    std::set<std::string> names;
    for (const StockRoll& roll : stock)
        names.insert(roll.film);
    return names;
}

} // namespace

Shelf shelf_of(const std::vector<StockRoll>& stock, const Film& film, Faults& faults) {
    Shelf shelf;
    for (const StockRoll& roll : stock) {
        if (!roll.film.empty() && roll.film != film.name)
            continue;
        const Um width = roll.width.value_or(film.width);
        const Um trim = roll.trim.value_or(film.trim);
        if (width <= 2 * trim)
            continue;
        shelf.rolls.push_back({"stock " + roll.name, false, roll.batch, width, trim, roll.length,
                               roll.arrow_known, roll.flaws});
        shelf.costs.push_back(roll.cost);
    }
    if (shelf.rolls.empty() && !stock.empty())
        faults.push_back({Severity::warning, stock.front().place, "",
                          "no roll in stock is of the film '" + film.name + "'",
                          "the films in stock are: " + listed(other_films(stock))});
    return shelf;
}

} // namespace pelt::order
