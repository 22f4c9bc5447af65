// SPDX-License-Identifier: MIT
// What a stock file may say. Order is the manual's.
#include "read/key_tables.hpp"

namespace pelt::read {
namespace {

using enum ValueKind;

constexpr double narrowest_remnant = 20;
constexpr double widest_roll = 6'000;
constexpr double widest_trim = 1'000;
constexpr double longest_roll = 10'000'000;

constexpr Key table[] = {
    {.in = In::stock,
     .name = "stock",
     .kind = list,
     .of = In::stock_roll,
     .required = true,
     .text = "The rolls and remnants on the shelf."},
    {.in = In::stock,
     .name = "demonstration",
     .kind = yes_no,
     .unstated = "no",
     .text = "Marks an invented stock; every sheet says so."},
    {.in = In::stock,
     .name = "units",
     .kind = choice,
     .choices = "mm | cm | m | in | ft | yd",
     .unstated = "mm",
     .text = "The unit of lengths that are written without one."},
    {.in = In::stock_roll,
     .name = "name",
     .kind = name,
     .required = true,
     .text = "What is written on it; no two have the same."},
    {.in = In::stock_roll,
     .name = "film",
     .kind = text,
     .required = true,
     .text = "The film, by the name that its file gives it."},
    {.in = In::stock_roll,
     .name = "width",
     .kind = length,
     .low = narrowest_remnant,
     .high = widest_roll,
     .required = true,
     .text = "From edge to edge."},
    {.in = In::stock_roll,
     .name = "length",
     .kind = length,
     .low = 1,
     .high = longest_roll,
     .required = true,
     .text = "What is left of it, flaws included."},
    {.in = In::stock_roll,
     .name = "trim",
     .kind = length,
     .low = 0,
     .high = widest_trim,
     .unstated = "the film's",
     .text = "What is not used along each edge. Write 0 for a remnant whose edges were cut."},
    {.in = In::stock_roll,
     .name = "batch",
     .kind = text,
     .unstated = "not known, so that it is a batch of its own",
     .text = "The production lot. A job is cut from one batch, but for panels that are batch "
             "free."},
    {.in = In::stock_roll,
     .name = "cost",
     .kind = map,
     .of = In::stock_cost,
     .low = 0,
     .high = 1'000'000,
     .unstated = "0",
     .text = "What it is worth, in the film's currency; a single figure is the price of a meter. "
             "Stock is used where that makes the whole order cheaper."},
    {.in = In::stock_cost,
     .name = "by",
     .kind = length,
     .low = 1,
     .high = longest_roll,
     .required = true,
     .text = "The length that the price is for."},
    {.in = In::stock_cost,
     .name = "price",
     .kind = money,
     .low = 0,
     .high = 1'000'000,
     .required = true,
     .text = "The price of that length."},
    {.in = In::stock_roll,
     .name = "arrow",
     .kind = choice,
     .choices = "known | unknown",
     .unstated = "known",
     .text = "Whether the film's arrow can be told. A remnant without one takes no piece of a film "
             "that has a direction, but of panels that may lie any way."},
    {.in = In::stock_roll,
     .name = "flaws",
     .kind = list,
     .of = In::flaw,
     .unstated = "none",
     .text = "Stretches that must not be used."},
    {.in = In::flaw,
     .name = "from",
     .kind = length,
     .low = 0,
     .high = longest_roll,
     .required = true,
     .text = "Where it begins, from the free end."},
    {.in = In::flaw,
     .name = "to",
     .kind = length,
     .low = 0,
     .high = longest_roll,
     .required = true,
     .text = "Where it ends, from the free end."},
    {.in = In::flaw,
     .name = "low",
     .kind = length,
     .low = 0,
     .high = widest_roll,
     .unstated = "the near edge of the roll",
     .text = "Where it begins across the roll, from the near edge. In straight cutting the whole "
             "width is passed over."},
    {.in = In::flaw,
     .name = "high",
     .kind = length,
     .low = 0,
     .high = widest_roll,
     .unstated = "the far edge of the roll",
     .text = "Where it ends across the roll, from the near edge."},
};

} // namespace

std::vector<Key> stock_keys() {
    return {std::begin(table), std::end(table)};
}

} // namespace pelt::read
