// SPDX-License-Identifier: MIT
// A film as its file specifies it, validated. Allowances are rounded up to the grid.
#pragma once

#include "model/money.hpp"
#include "model/vehicle.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt {

enum class FilmKind { cast, hybrid, calendered, polyurethane };
std::string_view name_of(FilmKind kind);

enum class HoldsMetal { no, yes, unknown };

struct Allowances {
    std::optional<Um> wrap; ///< none: 0, with a warning
    Um bleed = 0;
    Handling handling;
    Um overlap = 0;
    Um gap = 0;
    Um flush = 0;
    Um ruler = um_per_mm; ///< step to which sides and cut positions are rounded
};

/// One way of buying: `by` a length at `price`; an order is a whole number of them, uncut.
struct Offer {
    Length by;
    Money price;
    std::optional<Length> from = std::nullopt;  ///< the shortest length sold so
    std::optional<Length> up_to = std::nullopt; ///< the longest length sold so
};

/// The smallest rectangle of leftover film that is kept.
struct WorthKeeping {
    Um along = 0;
    Um across = 0;
};

/// A margin asked for in place of a film's: without `least` the smaller of `want` and the film's.
struct MarginWish {
    Um want = 0;
    std::optional<Um> least;
    Handling in_place_of(const Handling& films) const {
        return {want, least.value_or(want < films.least ? want : films.least)};
    }
};

struct Film {
    std::string name;
    std::string file;
    Place place;
    bool demonstration = false;
    std::optional<FilmKind> kind;
    HoldsMetal holds_metal = HoldsMetal::unknown;
    Um width = 0;
    /// In which its user measures: that of the width as written, or beside inches that of the
    /// length.
    Unit tape_unit = Unit::mm;
    Um trim = 0;
    std::optional<Um> roll_length;
    Direction direction = Direction::one_way;
    std::optional<double> stretch_edge_percent;
    std::optional<double> stretch_panel_percent;
    Allowances allowances;
    WorthKeeping worth_keeping;
    Um least_piece = 0; ///< pieces of a divided panel are no narrower where that can be
    std::vector<Offer> sold; ///< empty: prices unknown
    std::string currency;    ///< ISO 4217, empty where there is none
    int money_digits = 2;    ///< decimals to print

    Um usable_width() const { return width - 2 * trim; }
};

} // namespace pelt
