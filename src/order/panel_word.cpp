// SPDX-License-Identifier: MIT
#include "order/panel_word.hpp"

#include <algorithm>
#include <charconv>
#include <string_view>

namespace pelt::order {
namespace {

std::vector<std::string_view> divided(std::string_view word) {
    std::vector<std::string_view> out;
    while (true) {
        const std::size_t slash = word.find('/');
        out.push_back(word.substr(0, slash));
        if (slash == std::string_view::npos)
            return out;
        word.remove_prefix(slash + 1);
    }
}

std::optional<Side> side_called(std::string_view word) {
    for (const Side side : {Side::left, Side::right, Side::centre})
        if (word == name_of(side))
            return side;
    return word == "center" ? std::optional(Side::centre) : std::nullopt;
}

/// From 1.
std::optional<int> number_in(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || value < 1)
        return std::nullopt;
    return value;
}

std::optional<int> no_in(std::string_view text) {
    constexpr std::string_view no = "no ";
    return text.substr(0, no.size()) == no ? number_in(text.substr(no.size())) : std::nullopt;
}

bool has_panel(const Vehicle& vehicle, const std::string& name) {
    return std::any_of(vehicle.panels.begin(), vehicle.panels.end(),
                       [&](const Panel& panel) { return panel.name == name; });
}

} // namespace

std::optional<PanelWord> panel_word(const std::string& word) {
    const std::vector<std::string_view> parts = divided(word);
    PanelWord out;
    out.name = parts.front();
    std::size_t next = 1;
    if (next < parts.size() && (out.side = side_called(parts[next])))
        ++next;
    if (next < parts.size())
        if (const auto no = no_in(parts[next])) {
            out.no = *no;
            ++next;
        }
    if (next < parts.size())
        if (const auto piece = number_in(parts[next])) {
            out.piece = *piece;
            ++next;
        }
    return next == parts.size() ? std::optional(out) : std::nullopt;
}

std::string written(const PanelWord& word) {
    return word.name + (word.side ? "/" + std::string(name_of(*word.side)) : "") +
           (word.no == LeftOut::all ? "" : "/no " + std::to_string(word.no)) +
           (word.piece == LeftOut::all ? "" : "/" + std::to_string(word.piece));
}

std::vector<Candidate> candidates_in(const std::vector<Vehicle>& vehicles) {
    std::vector<Candidate> out;
    for (std::size_t v = 0; v < vehicles.size(); ++v)
        for (std::size_t p = 0; p < vehicles[v].panels.size(); ++p)
            for (const Side side : sides_of(vehicles[v].panels[p].sides))
                out.push_back({{static_cast<int>(v), static_cast<int>(p), side},
                               &vehicles[v],
                               &vehicles[v].panels[p]});
    return out;
}

bool names(const PanelWord& word, const Candidate& candidate, const WhichPiece& which) {
    return word.name == candidate.panel->name &&
           (!word.side || *word.side == candidate.place.side) &&
           (word.no == LeftOut::all || word.no == which.no) &&
           (word.piece == LeftOut::all || word.piece == which.piece);
}

bool selects(const PanelWord& word, const Candidate& candidate, const WhichPiece& which) {
    return names(word, candidate, which) ||
           (word.is_name_only() && !candidate.panel->group.empty() &&
            word.name == candidate.panel->group && !has_panel(*candidate.vehicle, word.name));
}

} // namespace pelt::order
