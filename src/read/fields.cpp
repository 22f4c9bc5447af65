// SPDX-License-Identifier: MIT
#include "read/fields.hpp"

#include "model/error.hpp"
#include "model/limits.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/syntax.hpp"
#include "trade/bodies.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

std::vector<std::string> working_keys(In map) {
    std::vector<std::string> out;
    for (const Key* key : keys_of(map))
        if (key->works)
            out.emplace_back(key->name);
    return out;
}

/// "{want: ..., least: ...}": how a map of this sort is written.
std::string pattern_of(In map) {
    if (map == In::panel) // its first keys are shapes, of which it has one
        return "{size: [X, Y], forward: ..., edges: ...}";
    constexpr std::size_t most = 3;
    std::string text;
    std::size_t shown = 0;
    for (const std::string& key : working_keys(map))
        if (shown++ < most)
            text += (text.empty() ? "" : ", ") + key + ": ...";
    return "{" + text + "}";
}

/// "LENGTH", "[X, Y]", "{want: ..., least: ...}": how the value of a key is written.
std::string pattern_of(const Key& key) {
    switch (key.kind) {
    case ValueKind::name:
    case ValueKind::names:
        return "NAME";
    case ValueKind::length:
        return "LENGTH";
    case ValueKind::money:
        return "PRICE";
    case ValueKind::point:
    case ValueKind::size:
        return "[X, Y]";
    case ValueKind::corners:
        return "[[X, Y], [X, Y]]";
    case ValueKind::outline:
    case ValueKind::line:
        return "[[X, Y], [X, Y], ...]";
    case ValueKind::map:
        return key.of ? pattern_of(*key.of) : "{...}";
    case ValueKind::list:
        return key.of ? "[" + pattern_of(*key.of) + ", ...]" : "[...]";
    case ValueKind::named:
        return key.of ? "{NAME: " + pattern_of(*key.of) + "}" : "{...}";
    case ValueKind::durations:
        return "{NAME: 70 min}";
    default:
        return "...";
    }
}

/// The key for a slip of its older word ("wrp"), else what was written.
std::string present_word(const std::string& written, In map) {
    std::vector<std::string> all = working_keys(map);
    for (const Key* key : keys_of(map))
        if (!key->also.empty())
            all.emplace_back(key->also);
    const std::string near = nearest(written, all);
    const Key* key = near.empty() ? nullptr : find_key(map, near);
    return key != nullptr && near == key->also ? std::string(key->name) : written;
}

} // namespace

Fields::Fields(const Node& node, In map, std::string label, const Place& owner, Context& context)
    : node_(&node), map_(map), label_(std::move(label)), owner_(owner), context_(&context),
      is_map_(!tell_no_map()) {
    if (is_map_)
        check_keys();
}

/// True when the value is no map.
bool Fields::tell_no_map() const {
    if (node_->kind == Node::Kind::map || node_->kind == Node::Kind::refused)
        return node_->kind == Node::Kind::refused;
    const std::string remedy = "write it like " + pattern_of(map_);
    if (node_->kind == Node::Kind::empty)
        context_->fault(owner_, label_ + " has no value", remedy);
    else if (node_->kind == Node::Kind::scalar && !node_->quoted && lacks_blank(node_->text))
        context_->fault(node_->place,
                        "after the colon of " + quoted(node_->text) + " a blank is missing",
                        "put one between the key and its value");
    else
        context_->fault(node_->place,
                        label_ + " is " +
                            (node_->kind == Node::Kind::list ? "a list" : quoted(node_->text)) +
                            ", not a map with keys",
                        remedy);
    return true;
}

void Fields::check_keys() {
    for (const Entry& entry : node_->entries) {
        const Key* known = find_key(map_, entry.key);
        if (known == nullptr)
            tell_unknown(entry);
        else if (!known->works)
            context_->fault(entry.place, quoted(entry.key) + " is not known yet",
                            "leave it out; a later version will read it");
    }
    tell_both_words();
    for (const Key* key : keys_of(map_))
        if (key->required && !mentions(key->name))
            context_->fault(owner_, label_ + " has no '" + std::string(key->name) + "'",
                            "add '" + std::string(key->name) + ": " + pattern_of(*key) + "'");
}

/// A key and its older word in one map.
void Fields::tell_both_words() {
    for (const Key* key : keys_of(map_)) {
        const Entry* now = key->also.empty() ? nullptr : node_->entry(key->name);
        const Entry* before = now == nullptr ? nullptr : node_->entry(key->also);
        if (before == nullptr)
            continue;
        const bool now_first = std::pair(now->place.line, now->place.column) <
                               std::pair(before->place.line, before->place.column);
        const Entry& first = now_first ? *now : *before;
        const Entry& second = now_first ? *before : *now;
        context_->fault(second.place,
                        quoted(second.key) + " is another word for " + quoted(first.key) +
                            ", which stands in line " + std::to_string(first.place.line),
                        "keep one of the two");
    }
}

void Fields::tell_unknown(const Entry& entry) {
    const std::string& written = entry.key;
    if (context_->full()) {
        context_->fault(entry.place, {});
        return;
    }
    const std::vector<std::string> known = working_keys(map_);
    if (entry.value.kind == Node::Kind::empty && lacks_blank(written)) {
        context_->fault(entry.place,
                        "after the colon of " + quoted(written) + " a blank is missing",
                        "put one between the key and its value");
        guessed_.push_back(nearest(written.substr(0, written.find(':')), known));
        return;
    }
    std::string remedy = home_of(written, map_);
    if (remedy.empty()) {
        const std::string word = present_word(written, map_);
        remedy = did_you_mean(word, known, "its keys are", "and");
        for (const std::string& meant : likely_meant(word, known))
            guessed_.push_back(meant);
    }
    context_->fault(entry.place, quoted(written) + " is not a key of " + std::string(name_of(map_)),
                    remedy);
}

bool Fields::mentions(std::string_view name) const {
    const Key& wanted = key(name);
    return node_->find(wanted.name) != nullptr ||
           (!wanted.also.empty() && node_->find(wanted.also) != nullptr) ||
           std::find(guessed_.begin(), guessed_.end(), name) != guessed_.end();
}

const Key& Fields::key(std::string_view name) const {
    const Key* found = find_key(map_, name);
    if (found == nullptr)
        throw ProgramError("the table of keys has no '" + std::string(name) + "'");
    return *found;
}

const Entry* Fields::entry(std::string_view name) const {
    if (!is_map_)
        return nullptr;
    const Key& wanted = key(name);
    if (!wanted.works)
        return nullptr;
    for (const Entry& entry : node_->entries)
        if (wanted.goes_by(entry.key))
            return &entry;
    return nullptr;
}

std::optional<std::string> Fields::text(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt : text_value(e->value, e->key, e->place, *context_);
}

std::optional<std::string> Fields::name(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt : name_value(e->value, e->key, e->place, *context_);
}

std::vector<std::string> Fields::names(std::string_view name) const {
    const Entry* e = entry(name);
    if (e == nullptr)
        return {};
    std::vector<std::string> out;
    if (e->value.kind != Node::Kind::list) {
        if (auto one = name_value(e->value, e->key, e->place, *context_))
            out.push_back(std::move(*one));
        return out;
    }
    for (const Node& item : e->value.items)
        if (auto one = name_value(item, e->key, e->place, *context_))
            out.push_back(std::move(*one));
    return out;
}

std::vector<std::string> Fields::names_with_sides(std::string_view name) const {
    const Entry* e = entry(name);
    if (e == nullptr)
        return {};
    const std::vector<Node> one{e->value};
    std::vector<std::string> out;
    for (const Node& item : e->value.kind == Node::Kind::list ? e->value.items : one)
        if (auto text = text_value(item, e->key, e->place, *context_))
            out.push_back(std::move(*text));
    return out;
}

std::optional<bool> Fields::yes_no(std::string_view name) const {
    const Entry* e = entry(name);
    const std::string* text =
        e == nullptr ? nullptr : plain_text(e->value, e->key, e->place, *context_);
    if (text == nullptr)
        return std::nullopt;
    const Parsed<bool> parsed = parse_yes_no(*text);
    if (!parsed.value)
        context_->fault(e->value.place, e->key + " " + parsed.refusal.what,
                        parsed.refusal.remedy);
    return parsed.value;
}

namespace {

/// The word of a choice for an older or foreign one.
std::string_view present_word(const Key& key, std::string_view word) {
    const auto body = key.kind == ValueKind::body ? trade::body_kind_named(word) : std::nullopt;
    return body ? body->name : word;
}

} // namespace

std::optional<std::size_t> Fields::choice(std::string_view name) const {
    const Entry* e = entry(name);
    const std::string* text =
        e == nullptr ? nullptr : plain_text(e->value, e->key, e->place, *context_);
    if (text == nullptr)
        return std::nullopt;
    const std::vector<std::string_view> words = choices_of(key(name));
    const auto found = std::find(words.begin(), words.end(), present_word(key(name), *text));
    if (found != words.end())
        return static_cast<std::size_t>(found - words.begin());
    context_->fault(e->value.place, e->key + " " + quoted(*text) + " is not known",
                    did_you_mean(*text, {words.begin(), words.end()}, "it is one of"));
    return std::nullopt;
}

std::optional<int> Fields::count(std::string_view name) const {
    const Entry* e = entry(name);
    const auto count =
        e == nullptr ? std::nullopt : count_value(e->value, key(name), e->key, e->place, *context_);
    return count ? std::optional(static_cast<int>(*count)) : std::nullopt;
}

std::optional<double> Fields::number(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : number_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<WrittenLength> Fields::length(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : length_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<Um> Fields::ceil_um(std::string_view name) const {
    const auto written = length(name);
    return written ? std::optional(written->length.ceil_um()) : std::nullopt;
}

std::optional<double> Fields::mm(std::string_view name) const {
    const auto written = length(name);
    return written ? std::optional(written->length.mm()) : std::nullopt;
}

std::optional<double> Fields::percent(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : percent_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<WrittenMoney> Fields::money(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : money_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<Point> Fields::point(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : point_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<Point> Fields::size(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : size_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<Corners> Fields::corners(std::string_view name) const {
    const Entry* e = entry(name);
    return e == nullptr ? std::nullopt
                        : corners_value(e->value, key(name), e->key, e->place, *context_);
}

std::optional<Fields> Fields::map(std::string_view name) const {
    const Entry* e = entry(name);
    const auto of = key(name).of;
    if (e == nullptr || !of)
        return std::nullopt;
    Fields fields(e->value, *of, quoted(e->key), e->place, *context_);
    return fields.is_map() ? std::optional(std::move(fields)) : std::nullopt;
}

bool Fields::few_enough(const Entry& entry, std::size_t entries) const {
    if (entries <= limit::entries)
        return true;
    context_->fault(entry.place, quoted(entry.key) + " has more than 1000 entries",
                    "leave some out, or make several files of it");
    return false;
}

const std::vector<Node>* Fields::list(std::string_view name) const {
    const Entry* e = entry(name);
    if (e == nullptr || e->value.kind == Node::Kind::refused)
        return nullptr;
    if (e->value.kind == Node::Kind::list && !e->value.items.empty())
        return few_enough(*e, e->value.items.size()) ? &e->value.items : nullptr;
    tell_not(e, "is not a list", name);
    return nullptr;
}

const std::vector<Entry>* Fields::named(std::string_view name) const {
    const Entry* e = entry(name);
    if (e == nullptr || e->value.kind == Node::Kind::refused)
        return nullptr;
    if (e->value.kind == Node::Kind::map && !e->value.entries.empty())
        return few_enough(*e, e->value.entries.size()) ? &e->value.entries : nullptr;
    tell_not(e, "is not a map from names", name);
    return nullptr;
}

/// Tells a value that is empty or of another kind.
void Fields::tell_not(const Entry* e, std::string_view what, std::string_view name) const {
    const Node& value = e->value;
    const bool nothing = value.kind == Node::Kind::empty;
    const bool list = value.kind == Node::Kind::list && value.items.empty();
    const bool map = value.kind == Node::Kind::map && value.entries.empty();
    context_->fault(nothing ? e->place : value.place,
                    quoted(e->key) + " " + (nothing || list || map ? "is empty" : std::string(what)),
                    "write it like " + pattern_of(key(name)));
}

} // namespace pelt::read
