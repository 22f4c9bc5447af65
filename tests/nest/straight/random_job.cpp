// SPDX-License-Identifier: MIT
#include "nest/straight/random_job.hpp"

#include <algorithm>

namespace pelt::test {
namespace {

Ring ring(GridPoint low, Um along, Um across) {
    return {low, {low.x + along, low.y}, {low.x + along, low.y + across}, {low.x, low.y + across}};
}

Um steps_between(nest::Random& random, Um low, Um high, Um step) {
    const Um from = (low + step - 1) / step;
    const Um to = std::max(from, high / step);
    return (from + static_cast<Um>(random.below(static_cast<std::size_t>(to - from + 1)))) * step;
}

Roll random_roll(nest::Random& random, const Roll& like, bool is_new) {
    Roll roll = like;
    roll.is_new = is_new;
    if (!is_new) {
        roll.width = like.width + (random.below(3) == 0 ? 100'000 : 0);
        roll.available = steps_between(random, 300'000, 4'000'000, 1);
        roll.arrow_known = random.below(3) > 0;
    }
    if (random.below(is_new ? 8 : 3) == 0)
        for (std::size_t i = 0; i <= random.below(3); ++i) {
            Flaw flaw;
            flaw.from = steps_between(random, 0, 3'000'000, 1);
            flaw.to = flaw.from + steps_between(random, 1'000, 200'000, 1);
            if (random.below(2) == 0) {
                flaw.low = steps_between(random, 0, roll.width / 2, 1);
                flaw.high = *flaw.low + steps_between(random, 1'000, roll.width / 3, 1);
            }
            roll.flaws.push_back(flaw);
        }
    return roll;
}

Piece random_piece(nest::Random& random, Um usable, Um step, int index) {
    static const std::vector<Turn> turns[3] = {
        {no_turn}, {no_turn, half_turn}, {no_turn, quarter_turn, half_turn, three_quarter_turn}};
    const std::size_t freedom = random.below(3);
    Um along = steps_between(random, step, random.below(4) == 0 ? 2'500'000 : 900'000, step);
    Um across = random.below(12) == 0
                    ? usable
                    : steps_between(random, step, random.below(3) == 0 ? usable : usable / 2, step);
    Piece piece =
        rectangle(along, across, index, 1 + static_cast<int>(random.below(4)), turns[freedom]);
    piece.direction = static_cast<Direction>(freedom);
    const GridPoint low{-steps_between(random, 0, 500'000, 1),
                        -steps_between(random, 0, 500'000, 1)};
    piece.shapes.front().outline.outer = ring(low, along, across);
    if (piece.direction == Direction::any && (across == usable || random.below(4) == 0)) {
        piece.shapes.front().turns = {no_turn, half_turn};
        const Um longer = steps_between(random, across, across + 60'000, step);
        piece.shapes.push_back({{ring(low, along, longer), {}}, {quarter_turn}});
    }
    return piece;
}

} // namespace

void lay_in_random_order(RandomJob& job, std::uint64_t seed) {
    std::size_t count = 0;
    for (const Piece& piece : job.pieces)
        count += piece.ids.size();
    std::vector<std::size_t> places(count);
    for (std::size_t i = 0; i < count; ++i)
        places[i] = i;
    nest::Random(seed).shuffle(places);
    job.goal.laying.clear();
    std::size_t at = 0;
    for (const Piece& piece : job.pieces) {
        job.goal.laying.emplace_back();
        for (std::size_t copy = 0; copy < piece.ids.size(); ++copy)
            job.goal.laying.back().push_back(places[at++]);
    }
}

Piece rectangle(Um along, Um across, int index, int copies, std::vector<Turn> turns) {
    Piece piece;
    piece.wrapped.outer = ring({0, 0}, along, across);
    piece.direction = turns.size() == 1   ? Direction::one_way
                      : turns.size() == 2 ? Direction::two_way
                                          : Direction::any;
    piece.shapes.push_back({piece.wrapped, std::move(turns)});
    for (int copy = 1; copy <= copies; ++copy)
        piece.ids.push_back({0, index, Side::centre, copy, 1, 1, PieceKind::main, ""});
    return piece;
}

RandomJob random_job(std::uint64_t seed) {
    nest::Random random(seed);
    RandomJob job;
    job.goal.ruler = random.below(3) == 0 ? 3175 : 1000;
    const std::size_t stages = random.below(4);
    if (stages == 2 || stages == 3)
        job.goal.stages = static_cast<int>(stages);
    if (random.below(5) == 0)
        job.goal.table = steps_between(random, 2'600'000, 4'000'000, 1);
    Roll like;
    like.width = steps_between(random, 600'000, 1'600'000, 500);
    like.trim = random.below(3) == 0 ? 0 : steps_between(random, 1'000, 10'000, 500);
    const Um usable = like.width - 2 * like.trim;
    const std::size_t count = 1 + random.below(random.below(5) == 0 ? 40 : 14);
    for (std::size_t i = 0; i < count; ++i)
        job.pieces.push_back(random_piece(random, usable, job.goal.ruler, static_cast<int>(i)));
    for (std::size_t i = random.below(3); i > 0; --i)
        job.rolls.push_back(random_roll(random, like, false));
    const bool endless = random.below(2) == 0;
    for (std::size_t i = 0; i < (endless ? 1 : 4 * count); ++i) {
        job.rolls.push_back(random_roll(random, like, true));
        if (!endless)
            job.rolls.back().available = 6'000'000;
    }
    return job;
}

} // namespace pelt::test
