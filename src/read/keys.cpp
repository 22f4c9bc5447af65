// SPDX-License-Identifier: MIT
#include "read/keys.hpp"

#include "read/key_tables.hpp"
#include "read/suggest.hpp"
#include "trade/bodies.hpp"
#include "trade/names.hpp"

#include <algorithm>

namespace pelt::read {

std::string_view name_of(In map) {
    switch (map) {
    case In::vehicle:
        return "a vehicle file";
    case In::panel:
        return "a panel";
    case In::point:
        return "a point of an outline";
    case In::crown:
        return "'crown'";
    case In::station:
        return "a station of 'girths'";
    case In::opening:
        return "an opening";
    case In::edge:
        return "an edge";
    case In::panel_allowances:
    case In::allowances:
        return "'allowances'";
    case In::handling:
        return "'margin'";
    case In::seam_line:
        return "a seam line";
    case In::inlay:
        return "an inlay";
    case In::recess:
        return "a recess";
    case In::hardware:
        return "a piece of hardware";
    case In::overall:
        return "'overall'";
    case In::diagonal:
        return "'diagonal'";
    case In::film:
        return "a film file";
    case In::roll:
        return "'roll'";
    case In::stretch:
        return "'stretch'";
    case In::offer:
        return "an entry of 'sold'";
    case In::keep:
        return "'worth keeping'";
    case In::stock:
        return "a stock file";
    case In::stock_roll:
        return "a roll of 'stock'";
    case In::stock_cost:
        return "'cost'";
    case In::flaw:
        return "an entry of 'flaws'";
    case In::shop:
        return "a shop file";
    case In::shop_address:
        return "'from'";
    case In::mark_up:
        return "'mark up'";
    case In::tax:
        return "an entry of 'tax'";
    case In::working_day:
        return "'day'";
    case In::consumables:
        return "'prices'";
    case In::jobs:
        return "a jobs file";
    case In::job:
        return "a job";
    case In::film_of_job:
        return "an entry of 'films'";
    }
    return "a map";
}

std::span<const Key> all_keys() {
    static const std::vector<Key> all = [] {
        std::vector<Key> keys = vehicle_keys();
        for (const std::vector<Key>& more :
             {like_keys_of_vehicles(), film_keys(), stock_keys(), shop_keys(), jobs_keys()})
            keys.insert(keys.end(), more.begin(), more.end());
        return keys;
    }();
    return all;
}

std::vector<const Key*> keys_of(In map) {
    std::vector<const Key*> out;
    for (const Key& key : all_keys())
        if (key.in == map)
            out.push_back(&key);
    return out;
}

const Key* find_key(In map, std::string_view name) {
    for (const Key& key : all_keys())
        if (key.in == map && key.goes_by(name))
            return &key;
    return nullptr;
}

std::vector<std::string_view> choices_of(const Key& key) {
    std::vector<std::string_view> out;
    if (key.kind == ValueKind::body) {
        for (const trade::BodyKind& kind : trade::body_kinds())
            out.push_back(kind.name);
        return out;
    }
    if (key.kind == ValueKind::panel_kind) {
        for (const trade::PanelName& name : trade::panel_names())
            out.push_back(name.word);
        return out;
    }
    constexpr std::string_view joint = " | ";
    std::string_view rest = key.choices;
    for (auto at = rest.find(joint); at != std::string_view::npos; at = rest.find(joint)) {
        out.push_back(rest.substr(0, at));
        rest.remove_prefix(at + joint.size());
    }
    if (!rest.empty())
        out.push_back(rest);
    return out;
}

namespace {

/// The keys that open a map of this sort: 'allowances' for the allowances.
std::vector<std::string> openers_of(In map) {
    std::vector<std::string> out;
    for (const Key& key : all_keys())
        if (key.of == map && key.works)
            out.emplace_back(key.name);
    return out;
}

/// The top of the kind of file that has such a map.
In file_of(In map) {
    switch (map) {
    case In::film:
    case In::roll:
    case In::stretch:
    case In::allowances:
    case In::offer:
    case In::keep:
        return In::film;
    case In::stock:
    case In::stock_roll:
    case In::stock_cost:
    case In::flaw:
        return In::stock;
    case In::shop:
    case In::shop_address:
    case In::mark_up:
    case In::tax:
    case In::working_day:
    case In::consumables:
        return In::shop;
    case In::jobs:
    case In::job:
    case In::film_of_job:
        return In::jobs;
    default:
        return In::vehicle;
    }
}

} // namespace

std::string home_of(std::string_view name, In map) {
    std::vector<std::string> homes;
    for (const Key& key : all_keys()) {
        if (!key.goes_by(name) || key.in == map || file_of(key.in) != file_of(map))
            continue;
        if (key.in == In::overall && map != In::vehicle)
            continue; // a panel's width is its size
        for (std::string& opener : openers_of(key.in))
            if (std::find(homes.begin(), homes.end(), opener) == homes.end())
                homes.push_back(std::move(opener));
    }
    return homes.empty() ? std::string{}
                         : "'" + std::string(name) + "' belongs under " + listed(homes);
}

} // namespace pelt::read
