// SPDX-License-Identifier: MIT
#include "order/redo.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>
#include <utility>

namespace pelt::order {
namespace {

struct Word {
    std::string_view word;
    double percent;
};

// The middle of what is common for skilled hands with cast film (common practice, no source). The
// first word that a name holds decides.
constexpr auto words = std::to_array<Word>({
    {"jamb", 8},    {"mirror", 20},       {"handle", 20},        {"flap", 3},     {"pillar", 4},
    {"sill", 4},    {"front bumper", 15}, {"rear bumper", 11.5}, {"bumper", 15},  {"spoiler", 17.5},
    {"wing", 17.5}, {"tank", 20},         {"cowl", 11.5},        {"tailgate", 8}, {"trunk", 5.5},
    {"lid", 5.5},   {"quarter", 7},       {"fender", 4},         {"hood", 3},     {"roof", 4},
    {"door", 3},    {"side", 3},          {"wall", 3},
});
constexpr double of_other_names = 5;
constexpr double over_the_stretch_limit = 40;
constexpr double most = 95;

double by_name(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    const auto found = std::find_if(words.begin(), words.end(), [&](const Word& w) {
        return text.find(w.word) != std::string::npos;
    });
    return found == words.end() ? of_other_names : found->percent;
}

bool is_curved(const Panel& panel) {
    return panel.crown.has_value() || !std::holds_alternative<OutlineForm>(panel.form);
}

double factor_of(const Film& film, const Panel& panel) {
    if (!film.kind)
        return 1;
    switch (*film.kind) {
    case FilmKind::cast:
        return 1;
    case FilmKind::hybrid:
        return 1.75;
    case FilmKind::calendered:
        return is_curved(panel) ? 2.5 : 1;
    case FilmKind::polyurethane:
        return 1.3;
    }
    return 1;
}

bool asks_too_much(const Job& job, int vehicle, int panel) {
    const auto v = static_cast<std::size_t>(vehicle);
    const auto p = static_cast<std::size_t>(panel);
    if (!job.film.stretch_panel_percent || v >= job.developed.size() ||
        p >= job.developed[v].size())
        return false;
    const StretchAsked& stretch = job.developed[v][p].stretch;
    return stretch.is != StretchAsked::Is::unknown &&
           stretch.percent > *job.film.stretch_panel_percent;
}

} // namespace

RedoChance redo_chance(const Job& job, int vehicle, int panel) {
    const Panel& of =
        job.vehicles[static_cast<std::size_t>(vehicle)].panels[static_cast<std::size_t>(panel)];
    if (of.redo_percent)
        return {vehicle, panel, *of.redo_percent, false};
    double percent =
        by_name(of.extra.empty() ? of.name : of.extra + " " + of.name) * factor_of(job.film, of);
    if (asks_too_much(job, vehicle, panel))
        percent = std::max(percent, over_the_stretch_limit);
    return {vehicle, panel, std::min(percent, most), true};
}

std::vector<RedoChance> redo_chances(const Job& job) {
    std::set<std::pair<int, int>> panels;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            panels.emplace(id.vehicle, id.panel);
    std::vector<RedoChance> out;
    for (const auto& [vehicle, panel] : panels)
        out.push_back(redo_chance(job, vehicle, panel));
    return out;
}

} // namespace pelt::order
