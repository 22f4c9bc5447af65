// SPDX-License-Identifier: MIT
// What a job costs, how long it takes, when it is ready.
#pragma once

#include "model/calendar.hpp"
#include "model/learnt.hpp"
#include "model/length.hpp"
#include "model/money.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// Minutes of one skilled person: at best, as reckoned, at worst.
struct Minutes {
    double low = 0;
    double taken = 0;
    double high = 0;

    friend Minutes operator+(const Minutes& a, const Minutes& b) {
        return {a.low + b.low, a.taken + b.taken, a.high + b.high};
    }
    friend Minutes operator*(double factor, const Minutes& time) {
        return {factor * time.low, factor * time.taken, factor * time.high};
    }
};

/// Stages of a job, in their order.
enum class Stage {
    take_in,
    wash,
    strip_down,
    old_film,
    edges,
    inlays,
    panels,
    post_heat,
    badges,
    refit,
    check
};
std::string_view name_of(Stage stage);

struct StageTime {
    Stage stage = Stage::take_in;
    Minutes minutes;
};

/// Where a panel's minutes come from.
enum class TimeFrom { shop, table, shape };

struct PanelTime {
    std::string panel; ///< with its side
    Minutes minutes;
    TimeFrom from = TimeFrom::shape;
};

/// Amounts are thousandths of the unit.
struct ConsumableNeed {
    std::string name;
    std::string unit; ///< "m", "l", "pairs"; empty: pieces
    std::int64_t low = 0;
    std::int64_t taken = 0;
    std::int64_t high = 0;
    std::optional<Money> cost; ///< of what is taken, without mark-up; none: no price
};

/// One day's work.
struct DayOfWork {
    std::int64_t number = 1; ///< of working days
    std::optional<Day> date;
    std::vector<Stage> work;
    bool with_help = false;
};

/// The plan of days, by the minutes at worst.
struct Days {
    std::int64_t working_days = 0;
    std::optional<Day> ready_on;
    std::optional<Day> look_over; ///< about a week later
    std::vector<DayOfWork> days;
    double end_minutes = 0;   ///< working minutes from the start
    double bound_minutes = 0; ///< no plan ends before
    double help_minutes = 0;  ///< of a second person, where the crew is one
};

/// One tax of a quote.
struct TaxLine {
    std::string name;
    Money amount;
};

/// Every amount is a whole number of the currency's minor unit; the parts add up to the total.
struct Price {
    std::optional<Money> film;        ///< with mark-up; none: not known
    std::optional<Money> consumables; ///< of those that have a price
    std::optional<Money> labor;
    Money adjustment;         ///< up to the minimum, and by rounding
    std::optional<Money> net; ///< none where film or labor is not known
    std::vector<TaxLine> taxes;
    Money tax;
    std::optional<Money> total;
    std::string currency;
    int digits = 2;
};

/// What a job covers, in the customer's words.
struct Covered {
    std::vector<std::string> panels;    ///< with their sides
    std::vector<std::string> left_out;  ///< panels and extras that are not covered
    std::vector<std::string> seams;     ///< panels that show a seam
    std::vector<std::string> parts_off; ///< come off and go back
    std::vector<std::string> parts_on;  ///< stay on
};

/// Of a vehicle that was not measured, in place of one price. None: not known, or longer than any
/// roll takes.
struct QuoteRange {
    std::optional<Length> low; ///< of film: 5 of 100 such vehicles take no more
    std::optional<Length> middle;
    std::optional<Length> high;      ///< 95 of 100
    std::optional<Money> low_total;  ///< to pay, with the least film and hours
    std::optional<Money> high_total; ///< with the most
};

struct Quote {
    Minutes hours; ///< of the whole job, in minutes
    std::vector<StageTime> stages;
    std::vector<PanelTime> panels;
    std::vector<ConsumableNeed> consumables;
    Days days;
    Price price;
    std::vector<std::string> left_out; ///< what the price does not hold, a sentence each
    std::vector<RedoByLog> redo_by_log = {}; ///< chances that the spare was reckoned by
    std::optional<PaceLearnt> pace_by_log = std::nullopt; ///< none: nothing was learnt
    std::optional<QuoteRange> range = std::nullopt; ///< none: all was measured
};

} // namespace pelt
