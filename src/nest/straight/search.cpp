// SPDX-License-Identifier: MIT
#include "nest/straight/search.hpp"

#include <algorithm>
#include <tuple>

namespace pelt::nest::straight {
namespace {

// Set by measurement on the instances of the bench and the shipped vehicles.
constexpr std::size_t most_taken_out = 14;
constexpr std::size_t climb_percent = 45; ///< a neighbourhood of the piece is taken out with it
constexpr std::size_t overlook_percent = 2;
constexpr double order_noise = 0.3;
constexpr double worth_of_room = 0.05; ///< against the share of the area that is not placed
constexpr double first_heat = 0.3;     ///< in shares of a mean piece

} // namespace

Steps reach_of(const Problem& problem, const Tree& tree) {
    Steps reach = 0;
    for (std::size_t i = 0; i < problem.stretches.size(); ++i)
        if (problem.stretches[i].is_new && tree.used(i) > 0)
            reach = std::max(reach, problem.stretches[i].reach_before + tree.used(i));
    return reach;
}

std::vector<Steps> limits_for(const Problem& problem, Steps reach) {
    std::vector<Steps> limits;
    for (const Stretch& stretch : problem.stretches)
        limits.push_back(stretch.is_new
                             ? std::clamp<Steps>(reach - stretch.reach_before, 0, stretch.along)
                             : stretch.along);
    return limits;
}

Steps greatest_reach(const Problem& problem) {
    Steps reach = 0;
    for (const Stretch& stretch : problem.stretches)
        if (stretch.is_new)
            reach = std::max(reach, stretch.reach_before + stretch.along);
    return reach;
}

Search::Search(const Problem& problem, std::uint64_t seed) : problem_(&problem), random_(seed) {
    for (const Kind& kind : problem.kinds)
        whole_area_ += static_cast<double>(kind.least_area()) * static_cast<double>(kind.demand());
}

bool Search::construct(Steps bound) {
    Steps reach = std::min(bound, greatest_reach(*problem_));
    tree_.emplace(*problem_, limits_for(*problem_, reach));
    for (std::size_t k = 0; k < problem_->kinds.size(); ++k)
        unplaced_.insert(unplaced_.end(), problem_->kinds[k].demand(),
                         static_cast<std::int32_t>(k));
    while (true) {
        fill();
        tree_->commit();
        if (unplaced_.empty()) {
            keep_if_complete();
            return true;
        }
        if (reach == greatest_reach(*problem_))
            return false;
        Steps need = 0;
        for (const std::int32_t k : unplaced_) {
            Steps least = 0;
            for (const Orientation& orientation :
                 problem_->kinds[static_cast<std::size_t>(k)].orientations)
                least = least == 0 ? orientation.along : std::min(least, orientation.along);
            need = std::max(need, least);
        }
        reach = std::min(reach + std::max<Steps>(1, need / 4), greatest_reach(*problem_));
        const std::vector<Steps> limits = limits_for(*problem_, reach);
        for (std::size_t i = 0; i < limits.size(); ++i)
            tree_->set_limit(i, limits[i]);
    }
}

void Search::aim(Steps reach, const Tree& start) {
    tree_ = start;
    unplaced_.clear();
    const std::vector<Steps> limits = limits_for(*problem_, reach);
    for (std::size_t i = 0; i < limits.size(); ++i) {
        while (tree_->used(i) > limits[i]) {
            std::vector<std::int32_t> sections;
            for (std::int32_t c = (*tree_)[tree_->root(i)].first; c != no_node;
                 c = (*tree_)[c].next)
                sections.push_back(c);
            tree_->remove(sections[random_.below(sections.size())], unplaced_);
        }
        tree_->set_limit(i, limits[i]);
    }
    fill();
    tree_->commit();
    current_ = cost();
}

std::uint64_t Search::run(std::uint64_t work) {
    const std::uint64_t before = work_;
    while (!unplaced_.empty() && work_ - before < work) {
        heat_ = first_heat / static_cast<double>(problem_->pieces()) *
                (1 - static_cast<double>(work_ - before) / static_cast<double>(work));
        step();
    }
    if (unplaced_.empty())
        keep_if_complete();
    return work_ - before;
}

void Search::ease(const Tree& start, std::uint64_t work) {
    tree_ = start;
    unplaced_.clear();
    const Steps reach = reach_of(*problem_, *tree_);
    const std::vector<Steps> limits = limits_for(*problem_, reach);
    for (std::size_t i = 0; i < limits.size(); ++i)
        tree_->set_limit(i, limits[i]);
    tree_->commit();
    std::size_t cuts = tree_->cuts();
    best_ = *tree_;
    best_reach_ = reach;
    for (const std::uint64_t before = work_; work_ - before < work;) {
        ruin();
        fill();
        const std::size_t now = unplaced_.empty() ? tree_->cuts() : cuts + 1;
        if (now > cuts) {
            tree_->roll_back();
            unplaced_.clear();
            continue;
        }
        tree_->commit();
        if (now < cuts)
            best_ = *tree_;
        cuts = now;
    }
    best_reach_ = reach_of(*problem_, *best_);
}

void Search::keep_if_complete() {
    const Steps reach = reach_of(*problem_, *tree_);
    if (!best_ || reach < best_reach_) {
        best_ = *tree_;
        best_reach_ = reach;
    }
}

void Search::step() {
    const std::vector<std::int32_t> before = unplaced_;
    ruin();
    fill();
    const double now = cost();
    if (now <= current_ + heat_ * random_.unit()) {
        tree_->commit();
        current_ = now;
    } else {
        tree_->roll_back();
        unplaced_ = before;
    }
}

double Search::cost() const {
    double area = 0;
    for (const std::int32_t k : unplaced_)
        area += static_cast<double>(problem_->kinds[static_cast<std::size_t>(k)].least_area());
    return area / whole_area_ - worth_of_room * tree_->room() / (whole_area_ * whole_area_);
}

std::int32_t Search::some_piece() {
    for (int tries = 0; tries < 10'000; ++tries) {
        const auto i =
            static_cast<std::int32_t>(random_.below(static_cast<std::size_t>(tree_->size())));
        if ((*tree_)[i].alive && (*tree_)[i].is_piece())
            return i;
    }
    return no_node;
}

void Search::ruin() {
    const std::size_t before = unplaced_.size();
    const std::size_t goal =
        1 + random_.below(std::min<std::size_t>(most_taken_out, problem_->pieces()));
    while (unplaced_.size() - before < goal && unplaced_.size() < problem_->pieces()) {
        std::int32_t i = some_piece();
        if (i == no_node)
            return;
        while (random_.below(100) < climb_percent && (*tree_)[(*tree_)[i].parent].parent != no_node)
            i = (*tree_)[i].parent;
        tree_->remove(i, unplaced_);
    }
}

double Search::key(std::int32_t kind, std::size_t rule) const {
    const Kind& k = problem_->kinds[static_cast<std::size_t>(kind)];
    const Orientation& orientation = k.orientations.front();
    switch (rule) {
    case 0:
        return static_cast<double>(orientation.area());
    case 1:
        return static_cast<double>(std::max(orientation.along, orientation.across));
    case 2:
        return static_cast<double>(orientation.along);
    case 3:
        return static_cast<double>(orientation.across);
    default:
        return static_cast<double>(orientation.along + orientation.across);
    }
}

std::vector<std::int32_t> Search::order() {
    const std::size_t rule = random_.below(6);
    std::vector<std::tuple<double, std::int32_t>> keyed;
    for (const std::int32_t k : unplaced_)
        keyed.emplace_back(rule == 5 ? random_.unit()
                                     : -key(k, rule) *
                                           (1 - order_noise / 2 + order_noise * random_.unit()),
                           k);
    std::sort(keyed.begin(), keyed.end());
    std::vector<std::int32_t> out;
    for (const auto& [value, k] : keyed)
        out.push_back(k);
    return out;
}

void Search::fill() {
    std::vector<std::int32_t> left;
    for (const std::int32_t k : order()) {
        work_ += tree_->open_count() + 10;
        const Option option = tree_->best_option(
            static_cast<std::size_t>(k), [&] { return random_.below(100) < overlook_percent; });
        if (option.how == Option::How::none)
            left.push_back(k);
        else
            tree_->insert(static_cast<std::size_t>(k), option);
    }
    unplaced_ = std::move(left);
}

} // namespace pelt::nest::straight
