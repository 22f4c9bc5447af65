// SPDX-License-Identifier: MIT
#include "nest/contour/relaxation.hpp"

#include "nest/contour/mover.hpp"

namespace pelt::nest::contour {
namespace {

// Pairs this near (share of a typical side) are watched; their list is made anew when an item may
// have left it.
constexpr double ahead_share = 0.1;
// Items keep this much more than the gap, so that the last overlap goes in a finite time.
constexpr double more_um = 1;
constexpr double first_step = 0.25; // resolves a single overlap exactly
constexpr double least_step = 0.05;
constexpr double longest_step = 2;

} // namespace

Relaxation::Relaxation(const Problem& problem) : problem_(&problem), scene_(problem) {
    ahead_ = ahead_share * std::sqrt(problem.area / static_cast<double>(std::max<std::size_t>(
                                                        problem.items.size(), 1)));
}

void Relaxation::find_pairs(const std::vector<Pose>& poses, double end) {
    scene_.place_all(poses, problem_->period(end));
    pairs_.clear();
    for (std::uint32_t i = 0; i < scene_.items(); ++i)
        scene_.near(
            scene_.box_at(poses[i].option, poses[i].at),
            problem_->fields->most_need() + margin_ + ahead_,
            [&](std::uint32_t j, const Pose& pose) {
                if (j > i)
                    pairs_.push_back({i, j, j < poses.size() ? pose.at.x - poses[j].at.x : 0});
                return true;
            });
}

// The worst violation; `downhill` is half the negative gradient of the sum of squares.
double Relaxation::evaluate(const std::vector<Pose>& poses, std::vector<Vec>& downhill) {
    const Fields& fields = *problem_->fields;
    downhill.assign(poses.size(), Vec{});
    double worst = 0;
    for (const Pair& pair : pairs_) {
        const Pose& pose_a = poses[pair.a];
        const Pose& pose_b = pair.b < poses.size() ? poses[pair.b] : scene_.pose(pair.b);
        const Vec b_at = pose_b.at + Vec{pair.b_on, 0};
        const Option& a = problem_->options[pose_a.option];
        const Option& b = problem_->options[pose_b.option];
        const FieldUse use = fields.between(b.form, b.quarters, a.form, a.quarters);
        Clearance clearance;
        ++work_;
        if (!use.field->clearance(quarter_turned(pose_a.at - b_at, use.quarters), clearance))
            continue;
        const double violation =
            fields.need(a.form, b.form) + margin_ + more_um - clearance.distance;
        if (violation <= 0)
            continue;
        worst = std::max(worst, violation - more_um);
        const Vec push = violation * quarter_turned(clearance.away, -use.quarters);
        downhill[pair.a] = downhill[pair.a] + push;
        if (pair.b < poses.size())
            downhill[pair.b] = downhill[pair.b] - push;
    }
    return worst;
}

bool Relaxation::run(std::vector<Pose>& poses, double end, int most_steps) {
    std::vector<Span> rooms;
    for (const Pose& pose : poses) {
        const std::optional<Span> room = room_before(*problem_, pose.option, pose.bay, end);
        if (!room)
            return false;
        rooms.push_back(*room);
    }
    find_pairs(poses, end);
    double strayed = 0;
    double step = 2 * first_step;
    std::vector<Vec> downhill;
    std::vector<Vec> before(poses.size());
    std::vector<Vec> moved(poses.size());
    for (int k = 0; k < most_steps; ++k) {
        if (evaluate(poses, downhill) <= tolerance_um)
            return true;
        if (k > 0) {
            double moved2 = 0;
            double bend = 0;
            for (std::size_t i = 0; i < poses.size(); ++i) {
                moved2 += dot(moved[i], moved[i]);
                bend += dot(moved[i], before[i] - downhill[i]);
            }
            step = bend > 0 ? std::min(std::max(moved2 / bend, least_step), longest_step)
                            : longest_step;
        }
        double farthest = 0;
        for (std::size_t i = 0; i < poses.size(); ++i) {
            const Vec at = poses[i].at + step * downhill[i];
            const Vec to{std::min(std::max(at.x, rooms[i].low.x), rooms[i].high.x),
                         std::min(std::max(at.y, rooms[i].low.y), rooms[i].high.y)};
            moved[i] = to - poses[i].at;
            poses[i].at = to;
            farthest = std::max({farthest, std::abs(moved[i].x), std::abs(moved[i].y)});
        }
        std::swap(before, downhill);
        strayed += 2 * farthest;
        if (strayed > ahead_) {
            find_pairs(poses, end);
            strayed = 0;
        }
    }
    find_pairs(poses, end);
    return evaluate(poses, downhill) <= tolerance_um;
}

} // namespace pelt::nest::contour
