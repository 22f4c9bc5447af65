// SPDX-License-Identifier: MIT
#include "nest/straight/exact/stairs.hpp"

#include <algorithm>
#include <utility>

namespace pelt::nest::straight {

void Stairs::clear(const States& states) {
    const std::size_t count = static_cast<std::size_t>(states.all()) + 1;
    cells_.assign(count, {});
    wholes_.assign(count, never);
    wastes_.assign(count, never);
    sides_.clear();
    with_stair_.clear(states);
    with_whole_.clear(states);
}

void Stairs::set(State s, Stair stair, Length whole, Length waste) {
    cells_[s] = {static_cast<std::uint32_t>(sides_.size()),
                 static_cast<std::uint32_t>(stair.size())};
    wholes_[s] = whole;
    wastes_[s] = waste;
    sides_.insert(sides_.end(), stair.begin(), stair.end());
    if (!stair.empty())
        with_stair_.add(s);
    if (whole != never)
        with_whole_.add(s);
}

StairMaker::StairMaker(const Problem& problem, const States& states, const Yards& yards,
                       Steps longest)
    : problem_(&problem), states_(&states), yards_(&yards),
      width_(static_cast<Length>(yards.width())), length_(static_cast<Length>(yards.length())),
      longest_(static_cast<Length>(std::min(yards.length(), longest))), spare_(yards.spare()),
      shortest_(static_cast<std::size_t>(yards.width()) + 1, never) {}

void StairMaker::start(State s) {
    state_ = s;
    whole_ = never;
    yards_->measure(*states_, s, rest_);
    largest_ = rest_.area + spare_;
    Steps narrowest = width_;
    for (std::size_t k = 0; k < states_->kinds(); ++k)
        if (states_->copies(s, k) < problem_->kinds[k].demand())
            for (const Orientation& orientation : problem_->kinds[k].orientations)
                narrowest = std::min(narrowest, orientation.across);
    widest_ = static_cast<Length>(width_ - narrowest);
}

// At every length the least width of each; lengths between those of the stairs add nothing.
void StairMaker::offer_beside(Stair a, Stair b) {
    work_ += a.size() + b.size();
    std::size_t i = 0;
    std::size_t j = 0;
    while (true) {
        const Length along = std::max(a[i].along, b[j].along);
        while (i + 1 < a.size() && a[i + 1].along <= along)
            ++i;
        while (j + 1 < b.size() && b[j + 1].along <= along)
            ++j;
        offer(along, a[i].across + b[j].across);
        const bool more_a = i + 1 < a.size();
        const bool more_b = j + 1 < b.size();
        if (more_a && (!more_b || a[i + 1].along <= b[j + 1].along))
            ++i;
        else if (more_b)
            ++j;
        else
            return;
    }
}

void StairMaker::offer_behind(Stair a, Stair b) {
    work_ += a.size() + b.size();
    std::size_t i = a.size() - 1;
    std::size_t j = b.size() - 1;
    while (true) {
        const Length across = std::max(a[i].across, b[j].across);
        while (i > 0 && a[i - 1].across <= across)
            --i;
        while (j > 0 && b[j - 1].across <= across)
            --j;
        offer(a[i].along + b[j].along, across);
        if (i > 0 && (j == 0 || a[i - 1].across <= b[j - 1].across))
            --i;
        else if (j > 0)
            --j;
        else
            return;
    }
}

void StairMaker::finish() {
    Result result{state_, 0, whole_, never};
    if (whole_ != never && whole_ > length_ - rest_.length)
        result.whole = never;
    keep_stair(result);
    if (result.count > 0 || result.whole != never)
        results_.push_back(result);
}

void StairMaker::keep_stair(Result& result) {
    std::sort(touched_.begin(), touched_.end());
    const auto first = static_cast<std::ptrdiff_t>(sides_.size());
    Length best = never;
    for (const Length across : touched_) {
        Length& along = shortest_[static_cast<std::size_t>(across)];
        if (along < best) {
            best = along;
            if (yards_->may_hold(rest_, along, across)) {
                sides_.push_back({along, across});
                result.waste = static_cast<Length>(std::min<std::int64_t>(
                    result.waste, std::int64_t{along} * across - rest_.area));
            }
        }
        along = never;
    }
    touched_.clear();
    std::reverse(sides_.begin() + first, sides_.end());
    result.count = sides_.size() - static_cast<std::size_t>(first);
}

void StairMaker::hand_over(Stairs& stairs) {
    std::size_t at = 0;
    for (const Result& result : results_) {
        stairs.set(result.state, {sides_.data() + at, result.count}, result.whole, result.waste);
        at += result.count;
    }
    results_.clear();
    sides_.clear();
}

std::uint64_t StairMaker::take_work() {
    return std::exchange(work_, 0);
}

} // namespace pelt::nest::straight
