// SPDX-License-Identifier: MIT
#include "nest/contour/separator.hpp"

namespace pelt::nest::contour {
Pose pushed_before(const Problem& problem, Mover& mover, std::size_t item, Pose pose, double end) {
    const std::optional<Span> room = room_before(problem, pose.option, pose.bay, end);
    if (!room)
        return mover.anywhere(item, end).value_or(pose);
    pose.at = {std::min(std::max(pose.at.x, room->low.x), room->high.x),
               std::min(std::max(pose.at.y, room->low.y), room->high.y)};
    return pose;
}

Separator::Separator(const Problem& problem, Random& random)
    : problem_(&problem), random_(&random), scene_(problem),
      weights_(problem.items.size() + problem.obstacles.size()), mover_(problem, random),
      relaxation_(problem),
      typical_side_(std::sqrt(
          problem.area / static_cast<double>(std::max<std::size_t>(problem.items.size(), 1)))) {}

void Separator::keep_margin(double um) {
    margin_ = um;
    mover_.keep_margin(um);
    relaxation_.keep_margin(um);
}

void Separator::begin(const std::vector<Pose>& poses, double end) {
    end_ = end;
    std::vector<Pose> pushed = poses;
    for (std::size_t i = 0; i < pushed.size(); ++i)
        pushed[i] = pushed_before(*problem_, mover_, i, pushed[i], end);
    scene_.place_all(pushed, problem_->period(end_));
    weights_.reset();
    find_conflicts();
    least_total_ = total_;
    least_poses_ = scene_.poses();
    idle_ = 0;
}

void Separator::find_conflicts_of(std::uint32_t item) {
    const Fields& fields = *problem_->fields;
    const Pose& pose = scene_.pose(item);
    const Option& own = problem_->options[pose.option];
    scene_.near(scene_.box_at(pose.option, pose.at), fields.most_need() + margin_,
                [&](std::uint32_t j, const Pose& other_pose) {
                    if (j <= item)
                        return true;
                    ++work_;
                    const Option& other = problem_->options[other_pose.option];
                    const FieldUse use =
                        fields.between(other.form, other.quarters, own.form, own.quarters);
                    const double distance =
                        use.field->distance(quarter_turned(pose.at - other_pose.at, use.quarters));
                    const double violation = fields.need(own.form, other.form) + margin_ - distance;
                    if (violation > tolerance_um) {
                        conflicts_.push_back({item, j, violation});
                        total_ += violation;
                    }
                    return true;
                });
}

void Separator::find_conflicts() {
    conflicts_.clear();
    total_ = 0;
    for (std::uint32_t i = 0; i < scene_.items(); ++i)
        find_conflicts_of(i);
}

std::vector<std::uint32_t> Separator::items_in_conflict() {
    std::vector<std::uint32_t> items;
    for (const Conflict& conflict : conflicts_)
        for (const std::uint32_t item : {conflict.a, conflict.b})
            if (item < scene_.items())
                items.push_back(item);
    std::sort(items.begin(), items.end());
    items.erase(std::unique(items.begin(), items.end()), items.end());
    random_->shuffle(items);
    return items;
}

void Separator::raise_weights() {
    double most = 0;
    for (const Conflict& conflict : conflicts_)
        most = std::max(most, conflict.violation);
    for (const Conflict& conflict : conflicts_) {
        const double factor = tuning::raise_least + (tuning::raise_most - tuning::raise_least) *
                                                        conflict.violation / most;
        weights_.raise(conflict.a, conflict.b, static_cast<float>(factor));
    }
    weights_.decay(static_cast<float>(tuning::fade));
}

// What is left when the total is small can often not be resolved one item after another.
bool Separator::relax() {
    if (tuning::relax_steps == 0 || ++since_relaxed_ < tuning::relax_every ||
        total_ > tuning::relax_below * typical_side_)
        return false;
    since_relaxed_ = 0;
    std::vector<Pose> poses = scene_.poses();
    if (!relaxation_.run(poses, end_, tuning::relax_steps))
        return false;
    scene_.place_all(poses, problem_->period(end_));
    find_conflicts();
    return conflicts_.empty();
}

bool Separator::sweep() {
    for (const std::uint32_t item : items_in_conflict()) {
        const Pose& now = scene_.pose(item);
        const double present =
            mover_.cost(scene_, item, now.option, now.at, std::numeric_limits<double>::infinity());
        if (present <= 0)
            continue;
        const Candidate best = mover_.best_place(scene_, weights_, item, end_, sampling);
        if (best.pose.at != now.at || best.pose.option != now.option)
            scene_.place(item, best.pose);
    }
    find_conflicts();
    ++idle_;
    if (total_ < least_total_) {
        if (total_ < tuning::progress_share * least_total_)
            idle_ = 0;
        least_total_ = total_;
        least_poses_ = scene_.poses();
    }
    if (conflicts_.empty() || relax())
        return true;
    raise_weights();
    return false;
}

} // namespace pelt::nest::contour
