// SPDX-License-Identifier: MIT
// The one table of what a file may say. Reading, suggestions, bounds, manual pages and schemas are
// all drawn from it.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// The maps of a file that have keys of their own.
enum class In {
    vehicle,
    panel,
    point,
    crown,
    station,
    opening,
    edge,
    panel_allowances,
    handling,
    seam_line,
    inlay,
    recess,
    hardware,
    overall,
    diagonal,
    film,
    roll,
    stretch,
    allowances,
    offer,
    keep,
    stock,
    stock_roll,
    stock_cost,
    flaw,
    shop,
    shop_address,
    mark_up,
    tax,
    working_day,
    consumables,
    jobs,
    job,
    film_of_job,
};

/// "a panel", "the roll": what messages and manuals call a map.
std::string_view name_of(In map);

enum class ValueKind {
    text,       ///< a line of text
    name,       ///< a text that options can hold: no / , = and control characters
    names,      ///< a list of names; one alone stands for a list of one
    yes_no,     ///< yes | no
    choice,     ///< one of a few words
    body,       ///< a kind of body (trade/bodies.hpp)
    panel_kind, ///< what a panel is (trade/names.hpp)
    count,      ///< a whole number
    number,     ///< a decimal number
    length,     ///< a length with its unit, or in the file's unit
    percent,    ///< with its sign
    money,      ///< a decimal number of the file's currency
    currency,   ///< three capitals of ISO 4217
    point,      ///< [x, y]
    size,       ///< [x, y] or x × y
    outline,    ///< a list of points and arcs
    line,       ///< a list of points
    corners,    ///< two points that face one another
    vector,     ///< [x, y, z]
    map,        ///< a map with keys of its own
    list,       ///< a list of such maps
    named,      ///< a map from names that the user chooses to such maps
    duration,   ///< hours and minutes: 8 h, 90 min; bounds in minutes
    durations,  ///< a map from kinds of panels to durations
    date,       ///< a day of ISO 8601: 2026-12-24
    dates,      ///< a list of days and spans of days: 2026-12-24..2027-01-01
    words,      ///< a list of words of a choice
};

struct Key {
    In in;
    std::string_view name;
    std::string_view also = {}; ///< an older word for it, which files may use in its place
    ValueKind kind = ValueKind::text;
    std::string_view choices = {};  ///< of a choice: "left | right"
    std::optional<In> of = {};      ///< of map, list, named: the keys inside
    double low = 0;                 ///< bounds in mm, percent or plain numbers; no bounds when
    double high = 0;                ///< both are 0
    std::string_view unstated = {}; ///< what holds without the key, as the manual says it
    bool required = false;
    bool works = true; ///< false: refused as not known yet
    std::string_view text = {};

    bool goes_by(std::string_view word) const {
        return word == name || (!also.empty() && word == also);
    }
    bool bounded() const { return low != 0 || high != 0; }
};

std::span<const Key> all_keys();

/// The keys of one map, in the manual's order.
std::vector<const Key*> keys_of(In map);

/// By the key's name or its other word; none where the map has no such key.
const Key* find_key(In map, std::string_view name);

/// The words of a choice.
std::vector<std::string_view> choices_of(const Key& key);

/// Where a key of that name is at home when it is not in `map`: "'trim' belongs under 'roll'".
/// Empty when nowhere.
std::string home_of(std::string_view name, In map);

} // namespace pelt::read
