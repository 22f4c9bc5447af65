// SPDX-License-Identifier: MIT
// What a shop charges and when it works, as its file tells it, validated.
#pragma once

#include "model/calendar.hpp"
#include "model/fault.hpp"
#include "model/length.hpp"
#include "model/log.hpp"
#include "model/money.hpp"
#include "model/panel_name.hpp"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// A share in exact decimals: a whole number of millionths. 25 % is 250,000.
struct Share {
    std::int64_t millionths = 0;
    friend auto operator<=>(const Share&, const Share&) = default;

    /// So much of an amount, in millionths of the currency's unit, a half up.
    Money of(Money amount) const;
};

/// What a tax is reckoned on.
enum class TaxOn { all, film, labor };
std::string_view name_of(TaxOn on);

struct Tax {
    std::string name;
    Share rate;
    TaxOn on = TaxOn::all;
};

/// How film is charged: the metres that a job takes with its spare, or all that is bought for it.
enum class FilmBy { metre, order };

/// Who makes the quote. Empty texts are left out.
struct ShopAddress {
    std::string name;
    std::string address;
    std::string phone;
    std::string tax_number;
};

struct Shop {
    std::string name;
    std::string file; ///< as messages call it
    Place place;
    bool demonstration = false;
    ShopAddress from;
    std::string currency;      ///< ISO 4217; empty: that of the film
    std::optional<Money> rate; ///< an hour of one person; none: labor is left out
    double pace = 1;           ///< minutes taken for a minute reckoned
    Share film_mark_up;
    Share consumables_mark_up;
    FilmBy film_by = FilmBy::metre;
    std::optional<Money> minimum;  ///< least net price of a job
    std::vector<Tax> taxes;        ///< empty: none
    std::optional<Money> round_to; ///< what the customer's price is a multiple of
    int crew = 1;
    WorkingWeek week;
    std::int64_t dry_minutes = 3 * 60;
    std::optional<std::int64_t> rest_minutes; ///< none: 12 h, polyurethane 24 h
    std::optional<double> sure_percent;
    int valid_days = 14;
    std::string terms;
    std::map<PanelKind, std::int64_t> minutes; ///< of a panel, by what it is
    std::map<std::string, Money> prices;       ///< of one unit of a consumable
    std::shared_ptr<const Log> log;            ///< none: it keeps none
};

} // namespace pelt
