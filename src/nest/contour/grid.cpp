// SPDX-License-Identifier: MIT
#include "nest/contour/grid.hpp"

#include "nest/contour/separator.hpp"

#include <cmath>

namespace pelt::nest::contour {
namespace {

// The fields are exact to far less than this; the check in whole numbers comes after.
constexpr double exact_um = 1e-6;
constexpr int farthest_step = 3;
constexpr int most_rounds = 40;

constexpr double loose_margin_um = 2;
constexpr double loose_film_um = 60;
constexpr int most_loosening = 60;

struct Step {
    int x = 0;
    int y = 0;
};

// The null step first, then by length.
std::vector<Step> steps() {
    std::vector<Step> out;
    for (int x = -farthest_step; x <= farthest_step; ++x)
        for (int y = -farthest_step; y <= farthest_step; ++y)
            out.push_back({x, y});
    std::stable_sort(out.begin(), out.end(),
                     [](Step a, Step b) { return a.x * a.x + a.y * a.y < b.x * b.x + b.y * b.y; });
    return out;
}

double violation(const Scene& scene, std::uint32_t item, Vec at, double bound) {
    const Problem& problem = scene.problem();
    const Fields& fields = *problem.fields;
    const Pose& pose = scene.pose(item);
    const Option& own = problem.options[pose.option];
    double sum = 0;
    scene.near(scene.box_at(pose.option, at), fields.most_need(),
               [&](std::uint32_t j, const Pose& other_pose) {
                   if (j == item)
                       return true;
                   const Option& other = problem.options[other_pose.option];
                   const FieldUse use =
                       fields.between(other.form, other.quarters, own.form, own.quarters);
                   const double distance =
                       use.field->distance(quarter_turned(at - other_pose.at, use.quarters));
                   const double short_by = fields.need(own.form, other.form) - distance;
                   if (short_by > exact_um)
                       sum += short_by;
                   return sum < bound;
               });
    return sum;
}

bool mend(Scene& scene, std::uint32_t item, const std::vector<Step>& steps) {
    const Pose now = scene.pose(item);
    const Problem& problem = scene.problem();
    const std::optional<Span> span = room(problem.options[now.option], problem.bays[now.bay]);
    double least = std::numeric_limits<double>::infinity();
    Vec best = now.at;
    for (const Step step : steps) {
        const Vec at = now.at + Vec{static_cast<double>(step.x), static_cast<double>(step.y)};
        if (at.x < span->low.x || at.x > span->high.x || at.y < span->low.y || at.y > span->high.y)
            continue;
        const double value = violation(scene, item, at, least);
        if (value >= least)
            continue;
        least = value;
        best = at;
        if (least <= 0)
            break;
    }
    if (best != now.at)
        scene.place(item, {best, now.option, now.bay});
    return least <= 0;
}

std::optional<std::vector<Pose>> rounded_and_mended(const Problem& problem,
                                                    const std::vector<Pose>& poses) {
    std::vector<Pose> rounded = poses;
    for (Pose& pose : rounded) {
        const std::optional<Span> span = room(problem.options[pose.option], problem.bays[pose.bay]);
        if (!span)
            return std::nullopt;
        pose.at = {std::min(std::max(std::round(pose.at.x), span->low.x), span->high.x),
                   std::min(std::max(std::round(pose.at.y), span->low.y), span->high.y)};
    }
    Scene scene(problem);
    scene.place_all(rounded);
    const std::vector<Step> around = steps();
    for (int round = 0; round < most_rounds; ++round) {
        bool clear = true;
        for (std::uint32_t i = 0; i < scene.items(); ++i)
            if (violation(scene, i, scene.pose(i).at, exact_um) > 0)
                clear = mend(scene, i, around) && clear;
        if (clear)
            return scene.poses();
    }
    return std::nullopt;
}

// Where pieces are jammed, all are moved apart a little, at the cost of some micrometres of film.
std::optional<std::vector<Pose>> loosened(const Problem& problem, const std::vector<Pose>& poses) {
    Random random(1);
    Separator separator(problem, random);
    separator.keep_margin(loose_margin_um);
    Scene scene(problem);
    scene.place_all(poses);
    separator.begin(poses, scene.end() + loose_film_um);
    for (int sweep = 0; sweep < most_loosening; ++sweep)
        if (separator.separated() || separator.sweep())
            return separator.scene().poses();
    return std::nullopt;
}

} // namespace

std::optional<std::vector<Pose>> onto_grid(const Problem& problem, const std::vector<Pose>& poses) {
    if (std::optional<std::vector<Pose>> mended = rounded_and_mended(problem, poses))
        return mended;
    if (const std::optional<std::vector<Pose>> loose = loosened(problem, poses))
        return rounded_and_mended(problem, *loose);
    return std::nullopt;
}

} // namespace pelt::nest::contour
