// SPDX-License-Identifier: MIT
#include "nest/contour/scene.hpp"

#include <limits>

namespace pelt::nest::contour {
namespace {

constexpr float never = std::numeric_limits<float>::infinity();

// Floats hold metres to a tenth of a millimetre; boxes are a first filter only, and err outwards.
float below(double x) {
    return static_cast<float>(x - 1 - 2e-7 * std::abs(x));
}
float above(double x) {
    return static_cast<float>(x + 1 + 2e-7 * std::abs(x));
}

template <class T>
void insert_at(std::vector<T>& values, std::size_t k, T value) {
    values.insert(values.begin() + static_cast<std::ptrdiff_t>(k), value);
}
template <class T>
void erase_at(std::vector<T>& values, std::size_t k) {
    values.erase(values.begin() + static_cast<std::ptrdiff_t>(k));
}

} // namespace

Scene::Scene(const Problem& problem)
    : problem_(&problem), item_count_(problem.items.size()), low_x_(block, never),
      high_x_(block, -never), low_y_(block, never), high_y_(block, -never) {
    poses_.resize(item_count_ + problem.obstacles.size());
    for (const Option& option : problem.options)
        widest_ = std::max(widest_, option.box.high.x - option.box.low.x);
    widest_ += 4;
    for (std::size_t k = 0; k < problem.obstacles.size(); ++k) {
        poses_[item_count_ + k] = {problem.obstacles[k].at, problem.obstacles[k].option, 0};
        insert(item_count_ + k);
    }
    index();
}

std::vector<Pose> Scene::poses() const {
    return {poses_.begin(), poses_.begin() + static_cast<std::ptrdiff_t>(item_count_)};
}

void Scene::insert(std::size_t item) {
    const Span box = box_at(poses_[item].option, poses_[item].at);
    const float low_x = below(box.low.x);
    const auto end = low_x_.end() - static_cast<std::ptrdiff_t>(block);
    const auto k =
        static_cast<std::size_t>(std::upper_bound(low_x_.begin(), end, low_x) - low_x_.begin());
    insert_at(low_x_, k, low_x);
    insert_at(high_x_, k, above(box.high.x));
    insert_at(low_y_, k, below(box.low.y));
    insert_at(high_y_, k, above(box.high.y));
    insert_at(order_, k, static_cast<std::uint32_t>(item));
}

void Scene::lift(std::size_t item) {
    const auto found = std::find(order_.begin(), order_.end(), static_cast<std::uint32_t>(item));
    if (found == order_.end())
        return;
    const auto k = static_cast<std::size_t>(found - order_.begin());
    erase_at(low_x_, k);
    erase_at(high_x_, k);
    erase_at(low_y_, k);
    erase_at(high_y_, k);
    erase_at(order_, k);
    index();
}

// Every item is kept where its box begins in the first period.
Pose Scene::within_period(Pose pose) const {
    if (period_ > 0) {
        const double low = pose.at.x + problem_->options[pose.option].box.low.x;
        pose.at.x -= period_ * std::floor(low / period_);
    }
    return pose;
}

void Scene::place(std::size_t item, const Pose& pose) {
    lift(item);
    poses_[item] = within_period(pose);
    insert(item);
    index();
}

void Scene::place_all(const std::vector<Pose>& poses, double period) {
    period_ = period;
    std::transform(poses.begin(), poses.end(), poses_.begin(),
                   [this](const Pose& pose) { return within_period(pose); });
    std::vector<std::pair<float, std::uint32_t>> sorted;
    for (std::size_t i = 0; i < poses_.size(); ++i)
        sorted.emplace_back(below(box_at(poses_[i].option, poses_[i].at).low.x),
                            static_cast<std::uint32_t>(i));
    std::sort(sorted.begin(), sorted.end());
    const std::size_t n = sorted.size();
    low_x_.assign(n + block, never);
    high_x_.assign(n + block, -never);
    low_y_.assign(n + block, never);
    high_y_.assign(n + block, -never);
    order_.resize(n);
    for (std::size_t k = 0; k < n; ++k) {
        const std::uint32_t item = sorted[k].second;
        const Span box = box_at(poses_[item].option, poses_[item].at);
        low_x_[k] = sorted[k].first;
        high_x_[k] = above(box.high.x);
        low_y_[k] = below(box.low.y);
        high_y_[k] = above(box.high.y);
        order_[k] = item;
    }
    index();
}

// A slack before each column's start covers the boxes' rounding.
void Scene::index() {
    if (order_.empty()) {
        first_.fill(0);
        return;
    }
    const double from = low_x_.front();
    const double to = low_x_[order_.size() - 1];
    column_from_ = from;
    columns_per_um_ = static_cast<double>(columns) / std::max(to - from, 1.0);
    const double slack = 4 + 1e-6 * (std::abs(from) + std::abs(to));
    std::uint32_t k = 0;
    for (std::size_t c = 0; c < columns; ++c) {
        const auto start =
            static_cast<float>(from + static_cast<double>(c) / columns_per_um_ - slack);
        while (k < order_.size() && low_x_[k] < start)
            ++k;
        first_[c] = k;
    }
}

double Scene::end() const {
    if (period_ > 0)
        return period_;
    double end = 0;
    for (std::size_t i = 0; i < item_count_; ++i)
        end = std::max(end, box_at(poses_[i].option, poses_[i].at).high.x);
    return end;
}

} // namespace pelt::nest::contour
