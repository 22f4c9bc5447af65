// SPDX-License-Identifier: MIT
#include "cli/key_page.hpp"

#include "cli/man_page.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <vector>

namespace pelt::cli {
namespace {

using read::In;
using read::Key;
using read::ValueKind;

/// More words than this are listed in the text and not behind the key.
constexpr std::size_t most_words_behind_key = 6;

bool lists_words_behind_key(const Key& key) {
    return read::choices_of(key).size() <= most_words_behind_key;
}

std::string words_of(const Key& key, std::string_view between) {
    std::string text;
    for (const std::string_view word : read::choices_of(key))
        text += (text.empty() ? "" : std::string(between)) + std::string(word);
    return text;
}

/// What the value is, as the arguments of an mdoc macro line.
std::string value_of(const Key& key) {
    switch (key.kind) {
    case ValueKind::text:
        return "Ar text";
    case ValueKind::name:
        return "Ar name";
    case ValueKind::names:
        return "Ar names";
    case ValueKind::yes_no:
        return "Cm yes | no";
    case ValueKind::choice:
    case ValueKind::body:
    case ValueKind::panel_kind:
        return lists_words_behind_key(key) ? "Cm " + words_of(key, " | ") : "Ar word";
    case ValueKind::count:
        return "Ar whole number";
    case ValueKind::number:
        return "Ar number";
    case ValueKind::length:
        return "Ar length";
    case ValueKind::percent:
        return "Ar percentage";
    case ValueKind::money:
        return "Ar price";
    case ValueKind::currency:
        return "Ar currency";
    case ValueKind::point:
        return "Ar [x, y]";
    case ValueKind::size:
        return "Ar [x, y]";
    case ValueKind::corners:
        return "Ar [[x, y], [x, y]]";
    case ValueKind::outline:
        return "Ar outline";
    case ValueKind::line:
        return "Ar points";
    case ValueKind::vector:
        return "Ar [x, y, z]";
    case ValueKind::map:
        return "Ar map";
    case ValueKind::list:
        return "Ar list of maps";
    case ValueKind::named:
        return "Ar names and their maps";
    case ValueKind::duration:
        return "Ar duration";
    case ValueKind::durations:
        return "Ar names and their durations";
    case ValueKind::date:
        return "Ar date";
    case ValueKind::dates:
        return "Ar list of dates";
    case ValueKind::words:
        return "Ar list of words";
    }
    return "";
}

std::string plain(double number) {
    std::string text = std::to_string(number);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

bool is_length(ValueKind kind) {
    return kind == ValueKind::length || kind == ValueKind::point || kind == ValueKind::size ||
           kind == ValueKind::corners || kind == ValueKind::outline || kind == ValueKind::line || kind == ValueKind::map;
}

bool is_duration(ValueKind kind) {
    return kind == ValueKind::duration || kind == ValueKind::durations;
}

/// A bound with the unit in which people read it.
std::string bound(double number, ValueKind kind) {
    if (number == 0)
        return "0";
    if (kind == ValueKind::percent)
        return plain(number) + " %";
    if (is_duration(kind))
        return std::fmod(number, 60) == 0 ? plain(number / 60) + " h" : plain(number) + " min";
    if (!is_length(kind))
        return plain(number);
    constexpr double km = 1'000'000;
    constexpr double m = 1'000;
    if (std::fmod(number, km) == 0)
        return plain(number / km) + " km";
    return std::fmod(number, m) == 0 ? plain(number / m) + " m" : plain(number) + " mm";
}

std::string remarks_on(const Key& key) {
    std::string text;
    if (!key.also.empty())
        text += "Also written " + std::string(key.also) + ".\n";
    if (!read::choices_of(key).empty() && !lists_words_behind_key(key))
        text += "One of " + words_of(key, ", ") + ".\n";
    if (key.bounded() && key.kind != ValueKind::map)
        text += "From " + bound(key.low, key.kind) + " to " + bound(key.high, key.kind) + ".\n";
    if (key.required)
        text += "Needed.\n";
    else if (!key.unstated.empty())
        text += "Without it: " + std::string(key.unstated) + ".\n";
    return escaped(text);
}

std::string entry_of(const Key& key) {
    return ".It Ic " + std::string(key.name) + " : " + value_of(key) + "\n" + sentences(key.text) +
           "\n" + remarks_on(key);
}

std::string title_of(In map) {
    std::string title(read::name_of(map));
    title.erase(std::remove(title.begin(), title.end(), '\''), title.end());
    title.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(title.front())));
    return title;
}

std::string list_of(In map) {
    // \& since "An" is a macro of its own.
    std::string text = ".Ss \\&" + title_of(map) + "\n.Bl -tag -width Ds\n";
    for (const Key* key : read::keys_of(map))
        if (key->works)
            text += entry_of(*key);
    return text + ".El\n";
}

} // namespace

std::string key_lists(In root) {
    std::vector<In> maps{root};
    for (std::size_t i = 0; i < maps.size(); ++i)
        for (const Key* key : read::keys_of(maps[i]))
            if (key->works && key->of &&
                std::find(maps.begin(), maps.end(), *key->of) == maps.end())
                maps.push_back(*key->of);
    std::string text;
    for (const In map : maps)
        text += list_of(map);
    return text;
}

} // namespace pelt::cli
