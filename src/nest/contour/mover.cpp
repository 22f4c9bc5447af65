// SPDX-License-Identifier: MIT
#include "nest/contour/mover.hpp"

namespace pelt::nest::contour {
namespace {

constexpr std::size_t most_borders = 8;

// Overlap with a large piece is worse: a large piece finds another place less easily. The fourth
// root of the hulls' areas, on average about 1.
std::vector<float> size_weights(const Problem& problem) {
    double mean = 0;
    for (const std::uint32_t kind : problem.items)
        mean += problem.kinds[kind].hull / static_cast<double>(problem.items.size());
    std::vector<float> weights(problem.items.size() + problem.obstacles.size(), 1.0F);
    for (std::size_t i = 0; i < problem.items.size(); ++i)
        weights[i] = static_cast<float>(std::sqrt(std::sqrt(problem.kind_of(i).hull / mean)));
    return weights;
}

// Grows more slowly than the violation (its power 3/4): one deep overlap is better than several
// shallow ones, since it leaves fewer pairs to resolve.
double severity(double violation) {
    return std::sqrt(violation * std::sqrt(violation));
}

Vec point_in(const Span& span, Random& random) {
    const double x = random.between(span.low.x, span.high.x);
    return {x, random.between(span.low.y, span.high.y)};
}

Vec clamped(Vec p, const Span& span) {
    return {std::min(std::max(p.x, span.low.x), span.high.x),
            std::min(std::max(p.y, span.low.y), span.high.y)};
}

} // namespace

std::optional<Span> room_before(const Problem& problem, std::uint32_t option, std::uint32_t bay,
                                double end) {
    const Bay& film = problem.bays[bay];
    const Span& box = problem.options[option].box;
    Span span{film.film.low - box.low,
              {std::min(film.film.high.x, end) - box.high.x, film.film.high.y - box.high.y}};
    if (problem.repeats) { // room to slide past where a period ends
        span.low.x = -end - box.low.x;
        span.high.x = 2 * end - box.low.x;
    }
    if (span.low.x > span.high.x || span.low.y > span.high.y)
        return std::nullopt;
    return span;
}

Mover::Mover(const Problem& problem, Random& random)
    : problem_(&problem), random_(&random), alike_(problem), size_weight_(size_weights(problem)),
      weight_(size_weight_) {}

void Mover::load(const Weights& weights, std::size_t item) {
    for (const Weights::Raised& entry : weights.raised(item))
        weight_[entry.other] = entry.weight * size_weight_[entry.other];
}

void Mover::unload(const Weights& weights, std::size_t item) {
    for (const Weights::Raised& entry : weights.raised(item))
        weight_[entry.other] = size_weight_[entry.other];
}

double Mover::cost(const Scene& scene, std::size_t item, std::uint32_t option, Vec at,
                   double bound) {
    const Fields& fields = *problem_->fields;
    const Option& own = problem_->options[option];
    looks_.clear();
    scene.near(scene.box_at(option, at), fields.most_need() + margin_,
               [&](std::uint32_t j, const Pose& pose) {
                   if (j == item)
                       return true;
                   const Option& other = problem_->options[pose.option];
                   const FieldUse use =
                       fields.between(other.form, other.quarters, own.form, own.quarters);
                   __builtin_prefetch(use.field);
                   looks_.push_back({use.field, nullptr, quarter_turned(at - pose.at, use.quarters),
                                     fields.need(own.form, other.form), j});
                   return true;
               });
    for (Look& look : looks_)
        look.cell = look.field->cell_at(look.p);
    for (const Look& look : looks_)
        look.field->fetch(look.cell);
    double sum = 0;
    for (const Look& look : looks_) {
        ++work_;
        const double violation = look.need + margin_ - look.field->distance(look.p, look.cell);
        if (violation > tolerance_um)
            sum += static_cast<double>(weight_[look.item]) * severity(violation);
        if (sum >= bound)
            break;
    }
    return sum;
}

void Mover::gather(const Scene& scene, std::size_t item, const Candidate& from, double ahead) {
    const Fields& fields = *problem_->fields;
    const Option& own = problem_->options[from.pose.option];
    borders_.clear();
    const Span box = scene.box_at(from.pose.option, from.pose.at);
    scene.near(box, fields.most_need() + margin_ + ahead, [&](std::uint32_t j, const Pose& pose) {
        if (j == item)
            return true;
        ++work_;
        const Option& other = problem_->options[pose.option];
        const FieldUse use = fields.between(other.form, other.quarters, own.form, own.quarters);
        Clearance clearance;
        if (!use.field->clearance(quarter_turned(from.pose.at - pose.at, use.quarters), clearance))
            return true;
        const double shortfall = fields.need(own.form, other.form) + margin_ - clearance.distance;
        if (shortfall > -ahead)
            borders_.push_back({quarter_turned(clearance.away, -use.quarters), shortfall,
                                static_cast<double>(weight_[j])});
        return true;
    });
    if (borders_.size() > most_borders) {
        std::stable_sort(borders_.begin(), borders_.end(), [](const Border& a, const Border& b) {
            return a.shortfall > b.shortfall;
        });
        borders_.resize(most_borders);
    }
}

void Mover::descend(const Scene& scene, std::size_t item, double end, Candidate& candidate) {
    const std::optional<Span> room =
        room_before(*problem_, candidate.pose.option, candidate.pose.bay, end);
    if (!room)
        return;
    const double ahead = tuning::descent_ahead * problem_->options[candidate.pose.option].size;
    for (int step = 0; step < tuning::descent_steps && candidate.cost > 0; ++step) {
        gather(scene, item, candidate, ahead);
        double trust = ahead;
        for (const Border& border : borders_)
            trust = std::max(trust, 2 * border.shortfall);
        const Vec at = candidate.pose.at;
        const Span bounds{clamped(at - Vec{trust, trust}, *room) - at,
                          clamped(at + Vec{trust, trust}, *room) - at};
        Vec move = best_move(borders_, bounds);
        bool better = false;
        for (int halvings = 0; halvings < 3 && !better; ++halvings) {
            if (std::abs(move.x) + std::abs(move.y) < 1e-3)
                return;
            const Vec next = clamped(at + move, *room);
            const double next_cost = cost(scene, item, candidate.pose.option, next, candidate.cost);
            if (next_cost < candidate.cost * (1 - 1e-4)) {
                candidate.pose.at = next;
                candidate.cost = next_cost;
                better = true;
            }
            move = 0.5 * move;
        }
        if (!better)
            return;
    }
}

std::optional<Pose> Mover::anywhere(std::size_t item, double end) {
    const Kind& kind = problem_->kind_of(item);
    const auto option =
        static_cast<std::uint32_t>(kind.first_option + random_->below(kind.options));
    double total = 0;
    const auto length_in = [&](std::uint32_t bay) {
        if (!admits(problem_->bays[bay], kind))
            return -1.0;
        const std::optional<Span> room = room_before(*problem_, option, bay, end);
        return room ? room->high.x - room->low.x : -1.0;
    };
    const auto bays = static_cast<std::uint32_t>(problem_->bays.size());
    for (std::uint32_t b = 0; b < bays; ++b)
        if (const double length = length_in(b); length >= 0)
            total += length + 1;
    double at = total * random_->unit();
    for (std::uint32_t b = 0; b < bays; ++b) {
        const double length = length_in(b);
        if (length < 0)
            continue;
        at -= length + 1;
        if (at < 0)
            return Pose{point_in(*room_before(*problem_, option, b, end), *random_), option, b};
    }
    return std::nullopt;
}

std::optional<Pose> Mover::nearby(const Scene& scene, std::size_t item, double end) {
    const Kind& kind = problem_->kind_of(item);
    const Pose& now = scene.pose(item);
    Pose pose = now;
    if (kind.options > 1 && random_->below(2) == 0)
        pose.option = static_cast<std::uint32_t>(kind.first_option + random_->below(kind.options));
    const Option& before = problem_->options[now.option];
    const Option& after = problem_->options[pose.option];
    const std::optional<Span> room = room_before(*problem_, pose.option, pose.bay, end);
    if (!room)
        return std::nullopt;
    const double reach = tuning::nearby_reach * before.size;
    const Vec centre = now.at + before.centre - after.centre;
    pose.at = clamped(point_in({centre - Vec{reach, reach}, centre + Vec{reach, reach}}, *random_),
                      *room);
    return pose;
}

void Mover::keep(std::size_t count, const Candidate& candidate) {
    if (kept_.size() == count && candidate.cost >= kept_.back().cost)
        return;
    auto place =
        std::upper_bound(kept_.begin(), kept_.end(), candidate,
                         [](const Candidate& a, const Candidate& b) { return a.cost < b.cost; });
    kept_.insert(place, candidate);
    if (kept_.size() > count)
        kept_.pop_back();
}

Candidate Mover::best_place(const Scene& scene, const Weights& weights, std::size_t item,
                            double end, const Sampling& sampling) {
    load(weights, item);
    constexpr double unbounded = std::numeric_limits<double>::infinity();
    const Pose& now = scene.pose(item);
    Candidate best{now, cost(scene, item, now.option, now.at, unbounded)};
    kept_.clear();
    const auto count = static_cast<std::size_t>(sampling.refined);
    const auto try_pose = [&](const std::optional<Pose>& pose) {
        if (!pose)
            return;
        const double bound = kept_.size() == count ? kept_.back().cost : unbounded;
        keep(count, {*pose, cost(scene, item, pose->option, pose->at, bound)});
    };
    const int alike = alike_.helps(item) ? sampling.alike : 0;
    for (int k = 0; k < alike; ++k)
        try_pose(alike_.place(scene, item, end, *random_));
    for (int k = alike; k < sampling.anywhere; ++k)
        try_pose(anywhere(item, end));
    for (int k = 0; k < sampling.nearby; ++k)
        try_pose(nearby(scene, item, end));
    std::vector<Candidate> refined = kept_;
    refined.push_back(best);
    for (Candidate& candidate : refined) {
        descend(scene, item, end, candidate);
        if (candidate.cost < best.cost)
            best = candidate;
        if (best.cost <= 0)
            break;
    }
    unload(weights, item);
    return best;
}

} // namespace pelt::nest::contour
