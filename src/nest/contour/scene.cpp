// SPDX-License-Identifier: MIT
#include "nest/contour/scene.hpp"

namespace pelt::nest::contour {

Scene::Scene(const Problem& problem) : problem_(&problem), item_count_(problem.items.size()) {
    poses_.resize(item_count_ + problem.obstacles.size());
    for (const Option& option : problem.options)
        widest_ = std::max(widest_, option.box.high.x - option.box.low.x);
    for (std::size_t k = 0; k < problem.obstacles.size(); ++k) {
        poses_[item_count_ + k] = {problem.obstacles[k].at, problem.obstacles[k].option, 0};
        insert(item_count_ + k);
    }
}

std::vector<Pose> Scene::poses() const {
    return {poses_.begin(), poses_.begin() + static_cast<std::ptrdiff_t>(item_count_)};
}

void Scene::insert(std::size_t item) {
    const Span box = box_at(poses_[item].option, poses_[item].at);
    const auto k = std::upper_bound(low_x_.begin(), low_x_.end(), box.low.x) - low_x_.begin();
    low_x_.insert(low_x_.begin() + k, box.low.x);
    reach_.insert(reach_.begin() + k, {box.high.x, box.low.y, box.high.y});
    order_.insert(order_.begin() + k, static_cast<std::uint32_t>(item));
}

void Scene::lift(std::size_t item) {
    const double low_x = poses_[item].at.x + problem_->options[poses_[item].option].box.low.x;
    auto k = std::lower_bound(low_x_.begin(), low_x_.end(), low_x) - low_x_.begin();
    const auto size = static_cast<std::ptrdiff_t>(order_.size());
    while (k < size && order_[static_cast<std::size_t>(k)] != item)
        ++k;
    if (k == size)
        return;
    low_x_.erase(low_x_.begin() + k);
    reach_.erase(reach_.begin() + k);
    order_.erase(order_.begin() + k);
}

void Scene::place(std::size_t item, const Pose& pose) {
    lift(item);
    poses_[item] = pose;
    insert(item);
}

void Scene::place_all(const std::vector<Pose>& poses) {
    low_x_.clear();
    reach_.clear();
    order_.clear();
    std::copy(poses.begin(), poses.end(), poses_.begin());
    std::vector<std::pair<double, std::uint32_t>> sorted;
    for (std::size_t i = 0; i < poses_.size(); ++i)
        sorted.emplace_back(box_at(poses_[i].option, poses_[i].at).low.x,
                            static_cast<std::uint32_t>(i));
    std::sort(sorted.begin(), sorted.end());
    for (const auto& [low_x, item] : sorted) {
        const Span box = box_at(poses_[item].option, poses_[item].at);
        low_x_.push_back(low_x);
        reach_.push_back({box.high.x, box.low.y, box.high.y});
        order_.push_back(item);
    }
}

double Scene::end() const {
    double end = 0;
    for (std::size_t i = 0; i < item_count_; ++i)
        end = std::max(end, box_at(poses_[i].option, poses_[i].at).high.x);
    return end;
}

} // namespace pelt::nest::contour
