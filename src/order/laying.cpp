// SPDX-License-Identifier: MIT
// A panel is known by the words of its name (an extra by its own), else of its group; among equals
// the order of the vehicle file holds, so moving a panel in the file moves it in the list.
// Of one panel inlays come first, then the parts, each after those that it laps over.
#include "order/order.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <tuple>

namespace pelt::order {
namespace {

enum class Step { jambs, top, hood, rear, sides, unknown, bumpers, small_parts };

struct Word {
    std::string_view word;
    Step step;
    int place; ///< within the step, front to rear
};

// The first of these that a name holds decides: a door handle is a handle, a roof spoiler a
// spoiler.
constexpr auto words = std::to_array<Word>({
    {"jamb", Step::jambs, 0},         {"shut face", Step::jambs, 0},
    {"aperture", Step::jambs, 0},     {"inside", Step::jambs, 1},
    {"bed wall", Step::jambs, 1},     {"handle", Step::small_parts, 2},
    {"mirror", Step::small_parts, 1}, {"flap", Step::small_parts, 3},
    {"cover", Step::small_parts, 4},  {"trim", Step::small_parts, 4},
    {"flare", Step::small_parts, 4},  {"ring", Step::small_parts, 4},
    {"bumper", Step::bumpers, 0},     {"valance", Step::bumpers, 1},
    {"diffuser", Step::bumpers, 1},   {"grille", Step::bumpers, 1},
    {"front lip", Step::bumpers, 1},  {"belly pan", Step::bumpers, 1},
    {"spoiler", Step::rear, 2},       {"wing", Step::rear, 2},
    {"tailgate", Step::rear, 0},      {"trunk", Step::rear, 0},
    {"lid", Step::rear, 0},           {"loading", Step::rear, 1},
    {"rear wall", Step::rear, 0},     {"tail", Step::rear, 1},
    {"seat", Step::rear, 0},          {"hood", Step::hood, 0},
    {"headlamp", Step::hood, 1},      {"front mudguard", Step::hood, 2},
    {"tank", Step::top, 0},           {"rail", Step::top, 1},
    {"gutter", Step::top, 1},         {"pillar", Step::top, 1},
    {"roof", Step::top, 0},           {"fender", Step::sides, 0},
    {"front door", Step::sides, 1},   {"cab door", Step::sides, 1},
    {"door", Step::sides, 2},         {"quarter", Step::sides, 3},
    {"corner", Step::sides, 3},       {"side", Step::sides, 4},
    {"sill", Step::sides, 5},         {"board", Step::sides, 5},
    {"skirt", Step::sides, 5},        {"front", Step::hood, 3},
    {"rear", Step::rear, 3},
});

const Word* word_in(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    const auto found = std::find_if(words.begin(), words.end(), [&](const Word& w) {
        return text.find(w.word) != std::string::npos;
    });
    return found == words.end() ? nullptr : &*found;
}

struct Place {
    Step step = Step::unknown;
    int place = 0;
};

Place place_of(const Panel& panel) {
    for (const std::string& text : {panel.extra, panel.name, panel.group})
        if (const Word* word = word_in(text))
            return {word->step, word->place};
    return {};
}

int side_rank(Side side) {
    return side == Side::centre ? 0 : side == Side::left ? 1 : 2;
}

/// Parts of one panel's side so that each comes after those that it lies on.
std::vector<int> parts_under_first(const Job& job, const PieceId& id) {
    std::vector<int> order;
    std::set<int> left;
    for (int part = 1; part <= id.parts; ++part)
        left.insert(part);
    const auto waits = [&](int part) {
        return std::any_of(job.seams.begin(), job.seams.end(), [&](const Seam& s) {
            return s.vehicle == id.vehicle && s.panel == id.panel && s.side == id.side &&
                   s.upper_part == part && left.count(s.under_part) > 0;
        });
    };
    while (!left.empty()) {
        auto next = std::find_if_not(left.begin(), left.end(), waits);
        if (next == left.end())
            next = left.begin();
        order.push_back(*next);
        left.erase(next);
    }
    return order;
}

int part_rank(const Job& job, const PieceId& id) {
    if (id.parts == 1)
        return 0;
    const std::vector<int> order = parts_under_first(job, id);
    return static_cast<int>(std::find(order.begin(), order.end(), id.part) - order.begin());
}

auto key_of(const Job& job, const PieceId& id) {
    const Panel& panel = job.vehicles.at(static_cast<std::size_t>(id.vehicle))
                             .panels.at(static_cast<std::size_t>(id.panel));
    const Place place = place_of(panel);
    const int copies_a_vehicle = std::max(1, panel.count * panel.faces);
    const int vehicle_copy = (id.copy - 1) / copies_a_vehicle;
    const int whole_side_first = place.step == Step::sides ? side_rank(id.side) : 0;
    return std::tuple(id.vehicle, vehicle_copy, place.step, whole_side_first, place.place, id.panel,
                      side_rank(id.side), id.copy, id.kind == PieceKind::inlay ? 0 : 1,
                      part_rank(job, id), id.part, id.inlay);
}

} // namespace

std::vector<std::size_t> laying_order(const Job& job, const std::vector<PieceId>& ids) {
    using Key = decltype(key_of(job, ids.front()));
    std::vector<std::pair<Key, std::size_t>> keyed;
    for (std::size_t i = 0; i < ids.size(); ++i)
        keyed.emplace_back(key_of(job, ids[i]), i);
    std::sort(keyed.begin(), keyed.end());
    std::vector<std::size_t> order;
    for (const auto& [key, index] : keyed)
        order.push_back(index);
    return order;
}

std::vector<std::vector<std::size_t>> places_in_laying(const Job& job) {
    std::vector<PieceId> ids;
    std::vector<std::pair<std::size_t, std::size_t>> owners;
    std::vector<std::vector<std::size_t>> places;
    for (std::size_t piece = 0; piece < job.pieces.size(); ++piece) {
        places.emplace_back(job.pieces[piece].ids.size());
        for (std::size_t copy = 0; copy < job.pieces[piece].ids.size(); ++copy) {
            ids.push_back(job.pieces[piece].ids[copy]);
            owners.emplace_back(piece, copy);
        }
    }
    const std::vector<std::size_t> order = laying_order(job, ids);
    for (std::size_t place = 0; place < order.size(); ++place) {
        const auto [piece, copy] = owners[order[place]];
        places[piece][copy] = place;
    }
    return places;
}

} // namespace pelt::order
