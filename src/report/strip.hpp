// SPDX-License-Identifier: MIT
// What comes off a vehicle, in which order, with which tools, and what must lie ready.
#pragma once

#include "model/film.hpp"
#include "model/length.hpp"
#include "model/shop.hpp"
#include "model/strip_list.hpp"
#include "report/document.hpp"

#include <optional>
#include <string>

namespace pelt::report {

struct StripSheet {
    std::string vehicle;
    std::optional<Film> film; ///< for whether it may go over what measures or sends
    bool demonstration = false;
    bool motorcycle = false;
    StripList list;
    Unit unit = Unit::mm;
    std::string like = {}; ///< the vehicle from which guessed panels are scaled; empty: none are
    std::optional<Shop> shop = std::nullopt; ///< its prices and its pace; none: not asked for
    int money_digits = 2;
};

Document strip_report(const StripSheet& sheet);
std::string to_table(const StripSheet& sheet, const TextStyle& style = {});
std::string to_markdown(const StripSheet& sheet);

/// Schema pelt.strip/1: "parts" in the order of taking off, each with "part", "count", "tool",
/// "minutes_each" (null where not known), "clips_each", "after", "panels"; "stay",
/// "not_needed"; "guessed" where the parts are another vehicle's; "used_up" with "name", "unit"
/// (null: pieces), "low", "high" and, with a shop, "taken" and "cost" (null: no price); "total"
/// with "minutes" (of the parts that have them), "parts_without_minutes", "clips", "pieces",
/// "edge_mm".
std::string to_json(const StripSheet& sheet);

/// step part count tool minutes_each clips_each after panels guessed; one row a part, no total.
/// Several names in one field are separated by "; ".
std::string to_csv(const StripSheet& sheet);

} // namespace pelt::report
