// SPDX-License-Identifier: MIT
#include "nest/contour/constructor.hpp"

#include <numeric>

namespace pelt::nest::contour {
namespace {

constexpr int random_rows = 8;
constexpr std::size_t recent_rows = 8;
constexpr int most_steps = 60;  // of one walk along a row
constexpr double least_um = 20; // of one step
constexpr double least_slope = 0.3;
constexpr int most_settles = 12;
/// Beside every gap, so that no pair is too close once both are rounded to whole micrometres: each
/// moves by at most half the diagonal of one.
constexpr double margin_um = 2;

} // namespace

Constructor::Constructor(const Problem& problem, Random& random)
    : problem_(&problem), random_(&random), scene_(problem), mover_(problem, random) {
    mover_.keep_margin(margin_um);
}

std::vector<std::uint32_t> Constructor::run(const std::vector<std::uint32_t>& order) {
    std::vector<std::uint32_t> left;
    for (const std::uint32_t item : order)
        if (!place(item))
            left.push_back(item);
    return left;
}

double Constructor::score(const Pose& pose) const {
    const Option& option = problem_->options[pose.option];
    return pose.at.x + option.box.high.x + 0.01 * (pose.at.y + option.box.high.y);
}

bool Constructor::place(std::uint32_t item) {
    const Kind& kind = problem_->kind_of(item);
    for (std::uint32_t bay = 0; bay < problem_->bays.size(); ++bay) {
        if (!admits(problem_->bays[bay], kind))
            continue;
        Found best;
        for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o)
            try_option(item, o, bay, best);
        if (best.score == std::numeric_limits<double>::infinity())
            continue;
        scene_.place(item, best.pose);
        recent_.push_back(item);
        if (recent_.size() > recent_rows)
            recent_.erase(recent_.begin());
        return true;
    }
    return false;
}

// Heights at which to walk along: both edges of the film, beside what was placed last, and others.
std::vector<double> Constructor::rows(const Option& option, const Span& room) {
    std::vector<double> rows{room.low.y, room.high.y};
    const double need = problem_->fields->most_need() + margin_um;
    for (const std::uint32_t item : recent_) {
        const Pose& pose = scene_.pose(item);
        const Span box = scene_.box_at(pose.option, pose.at);
        rows.push_back(box.high.y + need - option.box.low.y);
        rows.push_back(box.low.y - need - option.box.high.y);
    }
    for (int k = 0; k < random_rows; ++k)
        rows.push_back(random_->between(room.low.y, room.high.y));
    std::erase_if(rows, [&](double y) { return y < room.low.y || y > room.high.y; });
    std::sort(rows.begin(), rows.end());
    rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
    return rows;
}

void Constructor::try_option(std::uint32_t item, std::uint32_t option, std::uint32_t bay,
                             Found& best) {
    const std::optional<Span> room =
        room_before(*problem_, option, bay, std::numeric_limits<double>::infinity());
    if (!room)
        return;
    for (const double y : rows(problem_->options[option], *room))
        try_row(item, {{room->low.x, y}, option, bay}, *room, best);
}

// Walks along the film: a step as long as the present overlap is deep passes no free place.
void Constructor::try_row(std::uint32_t item, Pose pose, const Span& room, Found& best) {
    for (int step = 0; step < most_steps && pose.at.x <= room.high.x && score(pose) < best.score;
         ++step) {
        double forward = 0;
        for (const Border& border : mover_.borders(scene_, item, pose, 0))
            if (border.shortfall > tolerance_um)
                forward =
                    std::max(forward, border.away.x > least_slope ? border.shortfall / border.away.x
                                                                  : border.shortfall);
        if (forward <= 0) {
            Found found{pose, score(pose)};
            settle(item, found);
            if (found.score < best.score)
                best = found;
            return;
        }
        pose.at.x += std::max(forward, least_um);
    }
}

// Slides towards the free end for as long as that frees film.
void Constructor::settle(std::uint32_t item, Found& found) {
    const Option& option = problem_->options[found.pose.option];
    const std::optional<Span> room = room_before(*problem_, found.pose.option, found.pose.bay,
                                                 std::numeric_limits<double>::infinity());
    const double ahead = 0.3 * option.size;
    for (int k = 0; k < most_settles; ++k) {
        std::vector<Border> borders = mover_.borders(scene_, item, found.pose, ahead);
        for (Border& border : borders)
            border.weight = 1000;
        borders.push_back({{-1, -0.01}, 2 * ahead, 1});
        const Vec at = found.pose.at;
        const Span bounds{
            {std::max(-ahead, room->low.x - at.x), std::max(-ahead, room->low.y - at.y)},
            {std::min(ahead, room->high.x - at.x), std::min(ahead, room->high.y - at.y)}};
        Pose next = found.pose;
        next.at = at + best_move(borders, bounds);
        const double next_score = score(next);
        if (next_score > found.score - 1 || mover_.cost(scene_, item, next.option, next.at, 1) > 0)
            return;
        found = {next, next_score};
    }
}

std::vector<std::uint32_t> item_order(const Problem& problem, std::size_t variant, Random& random) {
    std::vector<double> key(problem.items.size());
    for (std::size_t i = 0; i < key.size(); ++i) {
        const Kind& kind = problem.kind_of(i);
        double longest = 0;
        double widest = 0;
        for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o) {
            const Vec sides = problem.options[o].box.high - problem.options[o].box.low;
            longest = std::max({longest, sides.x, sides.y});
            widest = std::max(widest, sides.y);
        }
        switch (variant) {
        case 0:
            key[i] = kind.area;
            break;
        case 1:
            key[i] = longest;
            break;
        case 2:
            key[i] = kind.hull;
            break;
        case 3:
            key[i] = widest;
            break;
        default:
            key[i] = kind.area * random.between(0.6, 1.4);
            break;
        }
    }
    std::vector<std::uint32_t> order(problem.items.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return key[a] > key[b]; });
    return order;
}

} // namespace pelt::nest::contour
