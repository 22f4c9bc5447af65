// SPDX-License-Identifier: MIT
#include "order/recuts.hpp"

#include "order/leftovers.hpp"
#include "order/redo.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

namespace pelt::order {
namespace {

/// The shorter side that its direction allows to lie along, on the grid.
Um crosscut_of(const Piece& piece, Um usable) {
    std::optional<Um> fitting;
    std::optional<Um> any;
    for (const CutShape& shape : piece.shapes)
        for (const Turn turn : shape.turns) {
            const Box box = box_of(placed(shape.outline, turn, {}).outer);
            any = std::min(any.value_or(box.along()), box.along());
            if (box.across() <= usable)
                fitting = std::min(fitting.value_or(box.along()), box.along());
        }
    return fitting.value_or(any.value_or(0));
}

/// How many of a piece the film holds side by side, as the piece may lie on it.
std::size_t how_many(const Piece& piece, const Box& film) {
    Um most = 0;
    for (const CutShape& shape : piece.shapes)
        for (const Turn turn : shape.turns) {
            const Box box = box_of(placed(shape.outline, turn, {}).outer);
            most = std::max(most, (film.along() / box.along()) * (film.across() / box.across()));
        }
    return static_cast<std::size_t>(most);
}

std::size_t how_many(const KindOfPiece& kind, const Box& film) {
    std::size_t least = kind.remakes.count + 100; // more are hardly ever needed
    for (const Piece* piece : kind.pieces)
        least = std::min(least, how_many(*piece, film));
    return least;
}

/// The film that so many more remakes from offcuts are expected to save.
double saved_by(const KindOfPiece& kind, std::size_t more) {
    const std::size_t kept = kind.remakes.kept;
    const std::vector<double> exactly =
        remakes_needed(kind.remakes.count, kind.remakes.chance, kept + more);
    if (exactly.empty())
        return 0;
    double at_least = 1;
    double expected = 0;
    for (std::size_t i = 0; i < exactly.size(); ++i) {
        at_least -= exactly[i];
        expected += i >= kept ? std::max(0.0, at_least) : 0;
    }
    return expected * static_cast<double>(kind.remakes.cost);
}

/// The largest offcut first.
void sort_by_size(std::vector<Box>& films) {
    const auto size = [](const Box& b) {
        return std::tuple(Int128{b.along()} * b.across(), b.along(), b.low.x, b.low.y);
    };
    std::stable_sort(films.begin(), films.end(),
                     [&](const Box& a, const Box& b) { return size(a) > size(b); });
}

void reserve(std::vector<Box> films, std::vector<KindOfPiece>& kinds) {
    sort_by_size(films);
    for (const Box& film : films) {
        KindOfPiece* best = nullptr;
        double most = 0;
        for (KindOfPiece& kind : kinds) {
            const double saved = saved_by(kind, how_many(kind, film));
            if (saved > most) {
                most = saved;
                best = &kind;
            }
        }
        if (best != nullptr)
            best->remakes.kept += how_many(*best, film);
    }
}

} // namespace

std::vector<KindOfPiece> kinds_of(const Job& job, const Layout* layout) {
    std::map<std::tuple<int, int, Um>, KindOfPiece> by_cost;
    for (const Piece& piece : job.pieces) {
        const Um cost = crosscut_of(piece, job.film.usable_width());
        for (const PieceId& id : piece.ids) {
            KindOfPiece& kind = by_cost[{id.vehicle, id.panel, cost}];
            kind.panel = {id.vehicle, id.panel};
            kind.remakes.cost = cost;
            kind.remakes.count = kind.pieces.empty() ? 1 : kind.remakes.count + 1;
            kind.remakes.chance = redo_chance(job, id.vehicle, id.panel).percent / 100;
            if (kind.pieces.empty() || kind.pieces.back() != &piece)
                kind.pieces.push_back(&piece);
        }
    }
    std::vector<KindOfPiece> out;
    for (auto& [key, kind] : by_cost)
        out.push_back(std::move(kind));
    if (layout != nullptr)
        reserve(offcuts_worth_keeping(job, *layout), out);
    return out;
}

std::vector<double> remakes_needed(std::size_t pieces, double chance, std::size_t terms) {
    constexpr double too_small = 1e-280;
    double exactly = 1;
    for (std::size_t i = 0; i < pieces; ++i)
        exactly *= 1 - chance;
    if (exactly < too_small)
        return {};
    std::vector<double> out;
    for (std::size_t k = 0; k < terms; ++k) {
        out.push_back(exactly);
        exactly *= chance * static_cast<double>(pieces + k) / static_cast<double>(k + 1);
    }
    return out;
}

} // namespace pelt::order
