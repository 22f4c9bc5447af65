// SPDX-License-Identifier: MIT
#include "nest/contour/constructor.hpp"

#include <numeric>

namespace pelt::nest::contour {
namespace {

constexpr double nowhere = std::numeric_limits<double>::infinity();
constexpr int random_rows = 8;
constexpr std::size_t recent_rows = 8;
constexpr int most_steps = 60;  // of one walk along a row
constexpr double least_um = 20; // of one step
constexpr double least_slope = 0.3;
constexpr int most_settles = 12;
constexpr double lengths_back = 3; // of the item, before the end of the layout
/// Beside every gap, so that no pair is too close once both are rounded to whole micrometres: each
/// moves by at most half the diagonal of one.
constexpr double margin_um = 2;

} // namespace

Constructor::Constructor(const Problem& problem, Random& random)
    : problem_(&problem), random_(&random), scene_(problem), mover_(problem, random) {
    for (const Bay& bay : problem.bays)
        ends_.push_back(bay.film.low.x);
    full_before_.resize(problem.kinds.size(), {0, problem.bays.front().film.low.x});
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

void Constructor::keep(std::uint32_t item, const Pose& pose) {
    scene_.place(item, pose);
    ends_[pose.bay] = std::max(ends_[pose.bay], scene_.box_at(pose.option, pose.at).high.x);
}

// Walks along much film end before the film does: they begin again near where the layout ends, now
// and for the next pieces of the kind.
Constructor::Found Constructor::best_in(std::uint32_t item, std::uint32_t bay) {
    const Kind& kind = problem_->kind_of(item);
    Known& full = full_before_[problem_->items[item]];
    if (full.bay != bay)
        full = {bay, problem_->bays[bay].film.low.x};
    Found best;
    for (int attempt = 0; attempt < 2 && best.score == nowhere; ++attempt) {
        if (attempt > 0)
            full.from = near_the_end(kind, bay);
        for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o)
            try_option(item, o, bay, full.from, best);
    }
    return best;
}

double Constructor::near_the_end(const Kind& kind, std::uint32_t bay) const {
    return ends_[bay] - lengths_back * longest_along(*problem_, kind);
}

bool Constructor::place(std::uint32_t item) {
    const Kind& kind = problem_->kind_of(item);
    for (std::uint32_t bay = 0; bay < problem_->bays.size(); ++bay) {
        if (!admits(problem_->bays[bay], kind))
            continue;
        const Found best = best_in(item, bay);
        if (best.score == nowhere)
            continue;
        keep(item, best.pose);
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
                             double from, Found& best) {
    const std::optional<Span> room = room_before(*problem_, option, bay, nowhere);
    if (!room)
        return;
    const double x = std::max(room->low.x, from - problem_->options[option].box.low.x);
    for (const double y : rows(problem_->options[option], *room))
        try_row(item, {{x, y}, option, bay}, *room, best);
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
    const std::optional<Span> room =
        room_before(*problem_, found.pose.option, found.pose.bay, nowhere);
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
