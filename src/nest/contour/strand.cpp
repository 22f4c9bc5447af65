// SPDX-License-Identifier: MIT
#include "nest/contour/strand.hpp"

#include <utility>

namespace pelt::nest::contour {
double film_before(const Problem& problem, double end) {
    double sum = 0;
    for (const Bay& bay : problem.bays)
        sum += std::max(0.0, std::min(end, bay.film.high.x) - bay.film.low.x);
    return sum;
}

namespace {

// No repeat of an item may meet the item itself.
double least_period(const Problem& problem) {
    return longest_along(problem) + problem.fields->most_need() + 2 * pattern_margin_um;
}

// No end before which every item has room somewhere can be nearer than this.
double least_end(const Problem& problem) {
    if (problem.repeats)
        return least_period(problem);
    double least = problem.bays.size() == 1 ? problem.proven_least : 0;
    for (const Kind& kind : problem.kinds) {
        double own = std::numeric_limits<double>::infinity();
        for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o)
            for (const Bay& bay : problem.bays)
                if (admits(bay, kind) && room(problem.options[o], bay))
                    own = std::min(own, bay.film.low.x + problem.options[o].box.high.x -
                                            problem.options[o].box.low.x);
        least = std::max(least, own);
    }
    return least;
}

} // namespace

Strand::Strand(const Problem& problem, std::uint64_t seed, std::size_t index)
    : problem_(&problem), random_(seed), index_(index), separator_(problem, random_),
      mover_(problem, random_), stride_(tuning::stride_first) {
    if (problem.repeats)
        separator_.keep_margin(pattern_margin_um);
}

void Strand::construct() {
    started_ = true;
    Constructor constructor(*problem_, random_);
    left_over_ = constructor.run(item_order(*problem_, index_, random_));
    extra_work_ += constructor.work();
    std::vector<Pose> poses = constructor.poses();
    if (left_over_.empty()) {
        Scene scene(*problem_);
        scene.place_all(poses);
        best_ = Found{poses, scene.end()};
        constructed_ = best_;
        aim();
        return;
    }
    target_ = problem_->bays.back().film.high.x;
    for (const std::uint32_t item : left_over_)
        poses[item] = mover_.anywhere(item, target_).value_or(poses[item]);
    separator_.begin(poses, target_);
}

// Starts on a slightly shorter film: what lies beyond a random cut moves with the end.
void Strand::aim() {
    failed_.clear();
    sweeps_ = 0;
    const double step = stride_ * film_before(*problem_, best_->end);
    target_ = std::max(best_->end - step, least_end(*problem_));
    std::vector<Pose> poses = best_->poses;
    const double cut = random_.between(0, best_->end);
    for (Pose& pose : poses)
        if (pose.at.x + problem_->options[pose.option].centre.x > cut) {
            const std::optional<Span> span =
                room_before(*problem_, pose.option, pose.bay, best_->end);
            if (span)
                pose.at.x = std::max(span->low.x, pose.at.x - step);
        }
    separator_.begin(poses, target_);
}

void Strand::succeed() {
    best_ = Found{separator_.scene().poses(), separator_.scene().end()};
    if (sweeps_ <= tuning::stride_quick)
        stride_ = std::min(stride_ * tuning::stride_grow, tuning::stride_most);
    aim();
}

// A long stride that fails is halved; the shortest one is tried again from another layout.
void Strand::give_up() {
    if (!best_ || stride_ <= tuning::shrink_share) {
        retry();
        return;
    }
    stride_ = std::max(stride_ / 2, tuning::shrink_share);
    aim();
}

void Strand::swap_two_large(std::vector<Pose>& poses) {
    if (poses.size() < 2)
        return;
    // Items come largest first; the larger half takes part, the very largest more often.
    const auto draw = [&] {
        const double u = random_.unit();
        return static_cast<std::size_t>(u * u * static_cast<double>(poses.size()) * 0.75);
    };
    const std::size_t a = draw();
    std::size_t b = draw();
    for (int k = 0; k < 20 && problem_->items[a] == problem_->items[b]; ++k)
        b = draw();
    const auto may_lie = [&](std::size_t item, std::uint32_t bay) {
        return admits(problem_->bays[bay], problem_->kind_of(item)) &&
               room(problem_->options[poses[item].option], problem_->bays[bay]);
    };
    if (a == b || !may_lie(a, poses[b].bay) || !may_lie(b, poses[a].bay))
        return;
    const auto centre = [&](std::size_t i) {
        return poses[i].at + problem_->options[poses[i].option].centre;
    };
    const Vec centre_a = centre(a);
    const Vec centre_b = centre(b);
    std::swap(poses[a].bay, poses[b].bay);
    poses[a].at = poses[a].at + centre_b - centre_a;
    poses[b].at = poses[b].at + centre_a - centre_b;
}

void Strand::retry() {
    const Failed now{separator_.least_total(), separator_.least_poses()};
    const auto place =
        std::upper_bound(failed_.begin(), failed_.end(), now,
                         [](const Failed& a, const Failed& b) { return a.total < b.total; });
    failed_.insert(place, now);
    if (failed_.size() > tuning::failed_kept)
        failed_.pop_back();
    const double u = random_.unit();
    std::vector<Pose> poses =
        failed_[static_cast<std::size_t>(u * u * static_cast<double>(failed_.size()))].poses;
    swap_two_large(poses);
    separator_.begin(poses, target_);
}

void Strand::run(std::uint64_t quota) {
    const std::uint64_t until = work() + quota;
    if (!started_)
        construct();
    while (work() < until) {
        if (best_ && target_ >= best_->end)
            return;
        ++sweeps_;
        const bool long_stride = best_ && stride_ > tuning::shrink_share;
        if (separator_.separated() || separator_.sweep())
            succeed();
        else if (separator_.idle_sweeps() >
                 (long_stride ? tuning::stride_patience : tuning::patience))
            give_up();
    }
}

void Strand::start_from(const Found& found) {
    started_ = true;
    best_ = found;
    aim();
}

void Strand::adopt(const Found& found) {
    const bool own_way = index_ >= tuning::narrow_strands;
    if (best_ && best_->end <= found.end * (1 + (own_way ? tuning::own_way_share : 0)))
        return;
    best_ = found;
    if (!std::exchange(started_, true) || target_ >= found.end)
        aim();
}

void Strand::reject() {
    const bool again = constructed_ && best_->end < constructed_->end;
    best_.reset();
    if (!again)
        return;
    best_ = constructed_;
    aim();
}

} // namespace pelt::nest::contour
