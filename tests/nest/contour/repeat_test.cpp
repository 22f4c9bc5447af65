// SPDX-License-Identifier: MIT
// Jobs of many like pieces: places copied from like neighbours, and patterns that repeat.
#include "nest/contour/alike.hpp"
#include "nest/contour/jobs.hpp"
#include "nest/contour/memory.hpp"
#include "nest/contour/repeat.hpp"

#include <doctest/doctest.h>

#include <random>
#include <set>

namespace pelt::test {
namespace {

using namespace nest::contour;

constexpr Um gap = 4'000;

std::vector<Piece> fleet(unsigned seed, std::size_t kinds, std::size_t copies) {
    std::mt19937 random(seed);
    std::vector<Piece> pieces = random_pieces(random, kinds);
    for (Piece& piece : pieces) {
        piece.ids.resize(1, piece.ids.front());
        while (piece.ids.size() < copies) {
            piece.ids.push_back(piece.ids.front());
            piece.ids.back().copy = static_cast<int>(piece.ids.size());
        }
    }
    return pieces;
}

Problem problem_of(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls) {
    std::vector<std::size_t> misfits;
    Problem problem = prepare(pieces, rolls, gap, nest::new_memory(), misfits);
    REQUIRE(misfits.empty());
    return problem;
}

nest::Result nested_with(const std::shared_ptr<nest::Memory>& memory,
                         const std::vector<Piece>& pieces, const std::vector<Roll>& rolls) {
    nest::Goal goal;
    goal.by = CutBy::contour;
    goal.gap = gap;
    nest::Effort effort;
    effort.threads = 2;
    effort.memory = memory;
    return nest::nest(pieces, rolls, goal, effort,
                      [](const nest::Progress& progress) { return progress.share < 0.1; });
}

TEST_CASE("a scene with a period sees every repeat that comes near, and no other") {
    std::mt19937 random(41);
    const Problem problem = problem_of(fleet(41, 4, 3), {roll_of(1'520'000)});
    std::uniform_real_distribution<double> along(-3e6, 3e6);
    std::uniform_real_distribution<double> across(0, 1.5e6);
    constexpr double period = 1.2e6;
    for (int round = 0; round < 20; ++round) {
        std::vector<Pose> poses;
        for (std::size_t i = 0; i < problem.items.size(); ++i)
            poses.push_back({{along(random), across(random)}, problem.kind_of(i).first_option, 0});
        Scene scene(problem);
        scene.place_all(poses, period);
        CHECK(scene.end() == period);
        const Span box = scene.box_at(0, {along(random), across(random)});
        std::multiset<std::pair<std::uint32_t, long>> seen; // item, micrometres along
        scene.near(box, 0, [&](std::uint32_t item, const Pose& pose) {
            seen.emplace(item, std::lround(pose.at.x));
            return true;
        });
        for (std::uint32_t i = 0; i < poses.size(); ++i)
            for (int k = -10; k <= 10; ++k) {
                const Vec at = scene.pose(i).at + Vec{k * period, 0};
                const Span other = scene.box_at(poses[i].option, at);
                constexpr double clearly = 10; // boxes are rounded outwards
                const auto meet = [&](double by) {
                    return other.low.x < box.high.x + by && box.low.x < other.high.x + by &&
                           other.low.y < box.high.y + by && box.low.y < other.high.y + by;
                };
                const auto count = seen.count({i, std::lround(at.x)});
                if (meet(-clearly))
                    CHECK(count == 1);
                if (!meet(clearly))
                    CHECK(count == 0);
            }
    }
}

TEST_CASE("a place is copied from a like pair, turned as its partner lies") {
    // A is 300 by 200, B 100 by 50; A lies right of a B, and a second B lies a quarter turn askew.
    const std::vector<Turn> turns{no_turn, quarter_turn, half_turn, three_quarter_turn};
    const std::vector<Piece> pieces{piece_of({rectangle(0, 0, 300'000, 200'000), {}}, turns, 2),
                                    piece_of({rectangle(0, 0, 100'000, 50'000), {}}, turns, 2)};
    const Problem problem = problem_of(pieces, {roll_of(1'520'000)});
    const auto option = [&](std::size_t item, int quarters) {
        std::uint32_t o = problem.kind_of(item).first_option;
        while (problem.options[o].quarters != quarters)
            ++o;
        return o;
    };
    Scene scene(problem);
    scene.place_all({{{104'000, 0}, option(0, 0), 0},         // an A beside …
                     {{700'000, 1'300'000}, option(1, 2), 0}, // the A that looks for a place
                     {{0, 0}, option(2, 0), 0},               // … this B
                     {{500'000, 500'000}, option(3, 1), 0}});
    const Alike alike(problem);
    REQUIRE(alike.helps(1));
    nest::Random random(5);
    int found = 0;
    for (int k = 0; k < 200; ++k) {
        const std::optional<Pose> place = alike.place(scene, 1, 800'000, random);
        if (!place)
            continue;
        ++found;
        // A quarter turn about the other B takes (104, 0) to (0, 104).
        CHECK(problem.options[place->option].quarters == 1);
        CHECK(place->at.x == doctest::Approx(500'000));
        CHECK(place->at.y == doctest::Approx(604'000));
    }
    CHECK(found > 50);
    // Where the copy would leave the film, there is no place.
    for (int k = 0; k < 50; ++k)
        CHECK_FALSE(alike.place(scene, 1, 450'000, random));
}

TEST_CASE("small jobs, single pieces and trials repeat no pattern") {
    nest::Effort effort;
    CHECK_FALSE(repeat_for(problem_of(fleet(42, 10, 6), {roll_of(1'520'000)}), effort));
    CHECK_FALSE(repeat_for(problem_of(fleet(42, 110, 1), {roll_of(1'520'000)}), effort));
    const Problem many = problem_of(fleet(42, 30, 6), {roll_of(1'520'000)});
    const auto repeat = repeat_for(many, effort);
    REQUIRE(repeat);
    CHECK(repeat->times == 6);
    CHECK(repeat->items == 30);
    effort.amount = 2; // enough to search among all 180
    CHECK_FALSE(repeat_for(many, effort));
    effort.amount = 1;
    effort.trial = true;
    CHECK_FALSE(repeat_for(many, effort));
}

// Pairs of a kind that lie alike, the one a period before the other.
int one_period_apart(const Problem& problem, const std::vector<Pose>& poses, std::uint32_t kind,
                     double period) {
    int pairs = 0;
    for (std::size_t i = 0; i < poses.size(); ++i)
        for (std::size_t j = 0; j < poses.size(); ++j) {
            const Pose& a = poses[i];
            const Pose& b = poses[j];
            pairs += problem.items[i] == kind && problem.items[j] == kind && a.option == b.option &&
                     a.bay == b.bay && std::abs(a.at.y - b.at.y) < 1e-3 &&
                     std::abs(a.at.x + period - b.at.x) < 1e-3;
        }
    return pairs;
}

TEST_CASE("a pattern comes again unchanged, the rest lies around it, on rolls with ends") {
    std::vector<Piece> pieces = fleet(43, 26, 7);
    pieces[3].ids.pop_back(); // so that not all of it repeats
    std::vector<Roll> rolls;
    for (int i = 0; i < 4; ++i)
        rolls.push_back(roll_of(1'520'000, 12'000'000));
    rolls[1].flaws.push_back({900'000, 1'000'000, 300'000, 500'000});
    const Problem problem = problem_of(pieces, rolls);
    Repeat repeat;
    repeat.times = 6;
    repeat.each.assign(problem.kinds.size(), 1);
    repeat.items = problem.kinds.size();
    const auto pattern = pattern_for(problem, repeat, nest::Effort{}, {}, {2, 0, 1});
    REQUIRE(pattern);
    const double period = pattern->found.end;
    CHECK(period == std::round(period));
    const auto poses = laid_in_repeats(problem, repeat, pattern->found, 1);
    REQUIRE(poses);
    for (std::uint32_t kind = 0; kind < problem.kinds.size(); ++kind) {
        CAPTURE(kind);
        CHECK(one_period_apart(problem, *poses, kind, period) >=
              3); // six times, on at most three rolls
    }
    const Finisher finisher(problem, pieces, rolls, gap);
    const std::optional<Layout> layout = finisher.layout(*poses);
    REQUIRE(layout);
    CHECK(faults_of(pieces, rolls, gap, *layout) == "");
}

TEST_CASE("a fleet is laid in patterns: all there, apart, the same for any threads") {
    const std::vector<Piece> pieces = fleet(44, 25, 5);
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    REQUIRE(repeat_for(problem_of(pieces, rolls), nest::Effort{}));
    const nest::Result one = nested(pieces, rolls, gap, 1, 0.3);
    REQUIRE(one.layout);
    CHECK(faults_of(pieces, rolls, gap, *one.layout) == "");
    const nest::Result two = nested(pieces, rolls, gap, 2, 0.3);
    CHECK(numbers(*one.layout) == numbers(two.layout.value()));
}

TEST_CASE("the threads do not change a trial") {
    const std::vector<Piece> pieces = fleet(46, 20, 1);
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    const nest::Result one = tried(pieces, rolls, gap, 1);
    const nest::Result two = tried(pieces, rolls, gap, 2);
    REQUIRE(one.layout);
    CHECK(faults_of(pieces, rolls, gap, *one.layout) == "");
    CHECK(numbers(*one.layout) == numbers(two.layout.value()));
}

TEST_CASE("a strand that is given a layout before its first goes on from that one") {
    const Problem problem = problem_of(fleet(47, 12, 2), {roll_of(1'520'000)});
    Strand first(problem, 1, 0);
    first.run(2'000'000);
    REQUIRE(first.best());
    Strand late(problem, 2, 5);
    late.adopt(*first.best());
    late.run(1);
    CHECK(late.best()->end <= first.best()->end);
}

TEST_CASE("what earlier searches left in the memory changes nothing") {
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    const std::vector<Piece> pieces = fleet(45, 12, 2);
    const auto memory = nest::new_memory();
    nested_with(memory, fleet(45, 13, 1), rolls);
    const nest::Result before = nested_with(nullptr, pieces, rolls);
    const nest::Result after = nested_with(memory, pieces, rolls);
    const nest::Result again = nested_with(memory, pieces, rolls);
    REQUIRE(before.layout);
    CHECK(numbers(*before.layout) == numbers(after.layout.value()));
    CHECK(numbers(*before.layout) == numbers(again.layout.value()));
}

} // namespace
} // namespace pelt::test
