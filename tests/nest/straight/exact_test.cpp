// SPDX-License-Identifier: MIT
#include "nest/straight/random_job.hpp"
#include "nest/straight/replay.hpp"

#include <doctest/doctest.h>

#include <array>
#include <map>
#include <optional>
#include <tuple>

namespace pelt {
namespace {

struct Item {
    Um along = 0;
    Um across = 0;
    int count = 1;
};

struct Instance {
    const char* name = "";
    Um width = 0;
    std::vector<Item> items;
    std::optional<int> stages;
    int shortest = 0;            ///< without turns
    std::optional<int> turned{}; ///< with quarter turns
};

nest::Result solve(const Instance& instance, bool turns, int effort = 1) {
    std::vector<Piece> pieces;
    for (const Item& item : instance.items)
        pieces.push_back(test::rectangle(
            item.along * um_per_mm, item.across * um_per_mm, static_cast<int>(pieces.size()),
            item.count, turns ? std::vector<Turn>{no_turn, quarter_turn} : std::vector{no_turn}));
    if (turns)
        for (Piece& piece : pieces)
            piece.direction = Direction::any;
    Roll roll;
    roll.width = instance.width * um_per_mm;
    nest::Goal goal;
    goal.stages = instance.stages;
    return nest::nest(pieces, std::vector<Roll>{roll}, goal, {effort, 1, 1}, {});
}

Um length_in_mm(const Layout& layout) {
    Um sum = 0;
    for (const UsedRoll& used : layout.rolls)
        sum += used.length;
    return sum / um_per_mm;
}

// ngcut: Beasley 1985, J. Oper. Res. Soc. 36; cgcut: Christofides & Whitlock 1977, Oper. Res. 25;
// the lists that are used as strip packing instances. Shortest straight layouts: found by an
// exact search that shares nothing with this program.
const std::vector<Instance> published{
    {"ngcut01", 10, {{3, 7, 2}, {8, 2, 2}, {10, 2, 1}, {5, 4, 3}, {2, 9, 2}}, {}, 23, 20},
    {"ngcut02",
     10,
     {{1, 10, 3}, {5, 3, 2}, {9, 3, 3}, {6, 1, 3}, {3, 8, 3}, {4, 1, 1}, {7, 3, 2}},
     {},
     30,
     28},
    {"ngcut04", 10, {{15, 2, 2}, {7, 3, 1}, {9, 1, 1}, {8, 3, 1}, {12, 2, 2}}, {}, 20, 20},
    {"cgcut01",
     10,
     {{8, 4, 2}, {3, 7, 1}, {8, 2, 3}, {3, 4, 5}, {3, 3, 2}, {3, 2, 2}, {2, 1, 1}},
     {},
     24,
     23},
    {"cgcut01, three turns",
     10,
     {{8, 4, 2}, {3, 7, 1}, {8, 2, 3}, {3, 4, 5}, {3, 3, 2}, {3, 2, 2}, {2, 1, 1}},
     3,
     25,
     {}},
};

TEST_CASE("published instances: the known shortest straight layout, with its proof") {
    for (const Instance& instance : published)
        for (const bool turns : {false, true}) {
            const std::optional<int> known = turns ? instance.turned : instance.shortest;
            if (!known)
                continue;
            CAPTURE(instance.name);
            CAPTURE(turns);
            const nest::Result result = solve(instance, turns);
            REQUIRE(result.layout);
            CHECK(length_in_mm(*result.layout) == *known);
            CHECK(result.layout->shortest);
            if (!instance.stages)
                CHECK(result.layout->bound.length == *known * um_per_mm);
        }
}

/// Every way to cut, tried one after the other at every whole position: slow and plain.
class AllCuts {
public:
    AllCuts(const std::vector<Item>& pieces, bool turns, int stages)
        : pieces_(pieces), turns_(turns), stages_(stages) {}

    Um shortest(Um width) {
        const unsigned all = (1U << pieces_.size()) - 1;
        Um length = 1;
        while (!fits(all, length, width, 0, 1))
            ++length;
        return length;
    }

private:
    bool fits_alone(const Item& piece, Um along, Um across) const {
        return (piece.along <= along && piece.across <= across) ||
               (turns_ && piece.across <= along && piece.along <= across);
    }

    /// `slits`: the knife lies along the film; `turn`: how often film lay before it so far.
    bool fits(unsigned set, Um along, Um across, int slits, int turn) {
        if ((set & (set - 1)) == 0)
            for (std::size_t i = 0; i < pieces_.size(); ++i)
                if (set == 1U << i)
                    return fits_alone(pieces_[i], along, across);
        const auto key = std::make_tuple(set, along, across, slits, turn);
        if (const auto known = known_.find(key); known != known_.end())
            return known->second;
        bool found = turn < stages_ && fits(set, along, across, 1 - slits, turn + 1);
        for (unsigned part = (set - 1) & set; part > 0 && !found; part = (part - 1) & set)
            for (Um at = 1; at < (slits == 1 ? across : along) && !found; ++at)
                found = slits == 1 ? fits(part, along, at, 1, turn) &&
                                         fits(set & ~part, along, across - at, 1, turn)
                                   : fits(part, at, across, 0, turn) &&
                                         fits(set & ~part, along - at, across, 0, turn);
        return known_[key] = found;
    }

    std::vector<Item> pieces_;
    bool turns_;
    int stages_;
    std::map<std::tuple<unsigned, Um, Um, int, int>, bool> known_;
};

TEST_CASE("small random jobs: nothing that a plain look at all cuts finds is shorter") {
    nest::Random random(7);
    for (int round = 0; round < 60; ++round) {
        Instance instance;
        instance.width = 5 + static_cast<Um>(random.below(5));
        const std::size_t count = 2 + random.below(4);
        for (std::size_t i = 0; i < count; ++i)
            instance.items.push_back(
                {1 + static_cast<Um>(random.below(5)), 1 + static_cast<Um>(random.below(5)), 1});
        const std::array<std::optional<int>, 3> stages{2, 3, std::nullopt};
        instance.stages = stages[random.below(3)];
        const bool turns = random.below(2) == 0;
        CAPTURE(round);
        CAPTURE(instance.stages.value_or(0));
        CAPTURE(turns);
        const nest::Result result = solve(instance, turns);
        REQUIRE(result.layout);
        CHECK(result.layout->shortest);
        CHECK(length_in_mm(*result.layout) ==
              AllCuts(instance.items, turns, instance.stages.value_or(9)).shortest(instance.width));
        const Um all = AllCuts(instance.items, turns, 9).shortest(instance.width);
        CHECK(result.layout->bound.length <= all * um_per_mm);
    }
}

} // namespace
} // namespace pelt
