// SPDX-License-Identifier: MIT
#include "read/like.hpp"
#include "read/panel.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>
#include <vector>

namespace pelt::read {
namespace {

/// What belongs to a form, and goes with it.
constexpr std::array<std::string_view, 15> of_a_form{
    "outline",         "size",          "girths", "surface", "through stations", "rise over spine",
    "rise over girth", "surface units", "up",     "outside", "openings",         "inlays",
    "seam lines",      "edges",         "diagonal"};

template <std::size_t N>
bool is_one_of(std::string_view key, const std::array<std::string_view, N>& keys) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

bool is_no(const Node& node) {
    return node.kind == Node::Kind::scalar && !node.quoted && node.text == "no";
}

bool gives_form(const Node& panel) {
    return std::any_of(panel.entries.begin(), panel.entries.end(),
                       [](const Entry& entry) { return is_one_of(entry.key, forms_of_panels); });
}

/// Rises go with a straightedge: girths and scans have theirs.
bool takes_no_crown(const Node& own) {
    return own.entry("girths") != nullptr || own.entry("surface") != nullptr;
}

/// Whether a key of the other's panel has no meaning with a form of this file's own.
bool goes_with_the_form(const Entry& other, const Node& own) {
    if (is_one_of(other.key, of_a_form))
        return true;
    if (other.key == "seam")
        return other.value.text == "at lines";
    return takes_no_crown(own) && (other.key == "crown" || other.key == "measured");
}

/// One panel that both files have.
Entry merged_panel(const Entry& own, const Entry& other, Stretched& inherited) {
    Entry out = own;
    const bool new_form = gives_form(own.value);
    const auto keeps = [&](std::string_view key) { return own.value.entry(key) == nullptr; };
    inherited = {!new_form,
                 keeps("crown"),
                 !new_form && keeps("openings"),
                 !new_form && keeps("inlays"),
                 !new_form && keeps("seam lines"),
                 keeps("recesses")};
    for (const Entry& entry : other.value.entries)
        if (own.value.entry(entry.key) == nullptr &&
            !(new_form && goes_with_the_form(entry, own.value)))
            out.value.entries.push_back(entry);
    return out;
}

void tell_no_such(const Entry& own, const Node& others, Context& context) {
    std::vector<std::string> known;
    for (const Entry& entry : others.entries)
        known.push_back(entry.key);
    context.fault(own.place, "the other vehicle has no panel " + quoted(own.key) + " to leave out",
                  did_you_mean(own.key, known, "its panels are", context, "and"));
}

bool is_a_word(const Node& node) {
    return node.kind == Node::Kind::scalar && !is_no(node);
}

/// A word in place of a panel or a part that the other vehicle has: `none`, and meant was `no`.
Entry told_to_write_no(const Entry& own, bool panels, Context& context) {
    const std::string before = std::exchange(context.panel, panels ? own.key : "");
    context.fault(own.value.place,
                  (panels ? "it" : quoted(own.key)) + " is " + quoted(own.value.text) +
                      ", not a map with keys",
                  "write 'no' where this vehicle has none");
    context.panel = before;
    Entry out = own;
    out.value.kind = Node::Kind::refused;
    return out;
}

/// The entries of both, the other's first; `no` takes one away.
Node merged_entries(const Node* own, const Node* other, Inherited& inherited, bool panels,
                    Context& context) {
    Node out = own != nullptr ? *own : *other;
    out.entries.clear();
    const Node none;
    const Node& mine = own != nullptr ? *own : none;
    const Node& theirs = other != nullptr ? *other : none;
    for (const Entry& entry : theirs.entries) {
        const Entry* instead = mine.entry(entry.key);
        if (instead == nullptr) {
            inherited[entry.key] = {};
            out.entries.push_back(entry);
        } else if (panels && instead->value.kind == Node::Kind::map) {
            out.entries.push_back(merged_panel(*instead, entry, inherited[entry.key]));
        } else if (is_a_word(instead->value)) {
            out.entries.push_back(told_to_write_no(*instead, panels, context));
        } else if (!is_no(instead->value)) {
            out.entries.push_back(*instead);
        }
    }
    for (const Entry& entry : mine.entries) {
        if (theirs.entry(entry.key) != nullptr)
            continue;
        if (!is_no(entry.value))
            out.entries.push_back(entry);
        else
            tell_no_such(entry, theirs, context);
    }
    return out;
}

/// Parts that belong to a panel which this vehicle has not, belong to the others they name.
void forget_left_out(Node& hardware, const Node& panels) {
    const auto is_left_out = [&](const Node& name) {
        const Entry* panel = panels.entry(name.text.substr(0, name.text.find('/')));
        return panel != nullptr && is_no(panel->value);
    };
    for (Entry& part : hardware.entries)
        std::erase_if(part.value.entries, [&](Entry& key) {
            if (key.key != "with")
                return false;
            std::erase_if(key.value.items, is_left_out);
            return key.value.kind == Node::Kind::scalar ? is_left_out(key.value)
                                                        : key.value.items.empty();
        });
}

bool is_map(const Entry* entry) {
    return entry != nullptr && entry->value.kind == Node::Kind::map;
}

} // namespace

Node merged(const Node& own, const Node& other, Inherited& inherited, Context& context) {
    Node out = own;
    for (const std::string_view key : {"body", "panels", "hardware"}) {
        const Entry* mine = own.entry(key);
        const Entry* theirs = other.entry(key);
        if (theirs == nullptr || (mine != nullptr && key == "body") ||
            (mine != nullptr && !is_map(mine)))
            continue;
        if (mine == nullptr)
            out.entries.push_back(*theirs);
        Inherited unheard;
        if (is_map(theirs))
            for (Entry& entry : out.entries)
                if (entry.key == key)
                    entry.value = merged_entries(mine != nullptr ? &mine->value : nullptr,
                                                 &theirs->value,
                                                 key == "panels" ? inherited : unheard,
                                                 key == "panels", context);
    }
    if (const Entry* panels = own.entry("panels"))
        for (Entry& entry : out.entries)
            if (entry.key == "hardware")
                forget_left_out(entry.value, panels->value);
    return out;
}

} // namespace pelt::read
