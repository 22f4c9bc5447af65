// SPDX-License-Identifier: MIT
#include "nest/contour/repeat.hpp"

#include <algorithm>
#include <limits>

namespace pelt::nest::contour {
namespace {

// A pattern of fewer items leaves little to choose, one of more is as hard as the whole; and it has
// to come back a few times, since its ends are ragged.
constexpr std::size_t fewest_items = 24;
constexpr std::size_t most_items = 200;
constexpr std::size_t fewest_times = 3;
constexpr double least_share = 0.9;   // of the job's area
constexpr double least_lengths = 1.5; // of the longest piece, in the film that the pattern covers

constexpr std::size_t starts = 4;

std::vector<std::size_t> counts_of(const Problem& problem) {
    std::vector<std::size_t> counts(problem.kinds.size());
    for (const std::uint32_t kind : problem.items)
        ++counts[kind];
    return counts;
}

double area_of(const Problem& problem, const std::vector<std::size_t>& each) {
    double area = 0;
    for (std::size_t k = 0; k < each.size(); ++k)
        area += problem.kinds[k].area * static_cast<double>(each[k]);
    return area;
}

bool holds_obstacle(const Problem& problem, const Bay& bay) {
    return std::any_of(problem.obstacles.begin(), problem.obstacles.end(),
                       [&](const Obstacle& obstacle) {
                           const Span& box = problem.options[obstacle.option].box;
                           return obstacle.at.x + box.high.x > bay.film.low.x &&
                                  obstacle.at.x + box.low.x < bay.film.high.x;
                       });
}

bool takes_all(const Problem& problem, const Bay& bay) {
    return !holds_obstacle(problem, bay) &&
           std::all_of(problem.kinds.begin(), problem.kinds.end(),
                       [&](const Kind& kind) { return takes(problem, bay, kind); });
}

// The longest bay that could hold the pattern, the first of several.
const Bay* model_bay(const Problem& problem) {
    const Bay* longest = nullptr;
    const auto length = [](const Bay& bay) { return bay.film.high.x - bay.film.low.x; };
    for (const Bay& bay : problem.bays)
        if (takes_all(problem, bay) && (longest == nullptr || length(bay) > length(*longest)))
            longest = &bay;
    return longest;
}

Repeat repeat_of(const std::vector<std::size_t>& counts, std::size_t times) {
    Repeat repeat;
    repeat.times = times;
    for (const std::size_t count : counts) {
        repeat.each.push_back(count / times);
        repeat.items += count / times;
    }
    return repeat;
}

bool is_most_of(const Problem& problem, const Repeat& repeat) {
    return area_of(problem, repeat.each) * static_cast<double>(repeat.times) >=
           least_share * problem.area;
}

bool has_room_to_repeat(const Problem& problem, const Repeat& repeat) {
    const Span& film = model_bay(problem)->film;
    const double period = area_of(problem, repeat.each) / (film.high.y - film.low.y);
    return period >= least_lengths * longest_along(problem);
}

Problem pattern_of(const Problem& problem, const Repeat& repeat) {
    Problem pattern = problem;
    pattern.obstacles.clear();
    pattern.items.clear();
    for (std::uint32_t k = 0; k < repeat.each.size(); ++k)
        pattern.items.insert(pattern.items.end(), repeat.each[k], k);
    pattern.proven_least = 0;
    pattern.area = area_of(problem, repeat.each);
    Bay endless = *model_bay(problem);
    endless.film.low.x = 0;
    endless.film.high.x = 1e12;
    pattern.bays = {endless};
    return pattern;
}

// The shortest of some layouts with straight ends: repeats of one do not meet.
std::optional<Found> with_straight_ends(const Problem& pattern, Random& random) {
    std::optional<Found> best;
    for (std::size_t variant = 0; variant < starts; ++variant) {
        Constructor constructor(pattern, random);
        if (!constructor.run(item_order(pattern, variant, random)).empty())
            continue;
        Scene scene(pattern);
        scene.place_all(constructor.poses());
        if (!best || scene.end() < best->end)
            best = Found{scene.poses(), scene.end()};
    }
    return best;
}

// Where to begin the pattern so that its first and last repeat stick out least; poses from there.
struct Cut {
    std::vector<Pose> poses;
    double length = std::numeric_limits<double>::infinity(); // of one repeat, ragged ends included
};

Cut best_cut(const Problem& problem, const Found& pattern) {
    std::vector<double> low;
    std::vector<double> wide;
    for (const Pose& pose : pattern.poses) {
        const Span& box = problem.options[pose.option].box;
        low.push_back(pose.at.x + box.low.x);
        wide.push_back(box.high.x - box.low.x);
    }
    const auto from = [&](double start, std::size_t i) {
        const double x = low[i] - start;
        return x - pattern.end * std::floor(x / pattern.end);
    };
    Cut best;
    double best_start = 0;
    for (std::size_t c = 0; c < low.size(); ++c) {
        double length = 0;
        for (std::size_t i = 0; i < low.size(); ++i)
            length = std::max(length, from(low[c], i) + wide[i]);
        if (length < best.length) {
            best.length = length;
            best_start = low[c];
        }
    }
    best.poses = pattern.poses;
    for (std::size_t i = 0; i < low.size(); ++i)
        best.poses[i].at.x += from(best_start, i) - low[i];
    return best;
}

// Lays the repeats into every bay that is like the one the pattern was made for.
class Laying {
public:
    Laying(const Problem& problem, const Repeat& repeat, const Found& pattern,
           Constructor& constructor)
        : repeat_(repeat), cut_(best_cut(problem, pattern)), constructor_(constructor),
          lies_(problem.items.size()) {
        std::uint32_t first = 0; // items come kind by kind
        for (const std::size_t count : counts_of(problem)) {
            next_.push_back(first);
            first += static_cast<std::uint32_t>(count);
        }
        const Span film = model_bay(problem)->film;
        for (std::uint32_t b = 0; b < problem.bays.size(); ++b) {
            const Bay& bay = problem.bays[b];
            if (!takes_all(problem, bay) || bay.film.low.y != film.low.y ||
                bay.film.high.y != film.high.y)
                continue;
            for (double at = bay.film.low.x;
                 times_ < repeat.times && at + cut_.length <= bay.film.high.x;
                 at += pattern.end, ++times_)
                lay_one(b, at);
        }
    }

    bool lies(std::uint32_t item) const { return lies_[item]; }
    std::size_t times() const { return times_; }

private:
    void lay_one(std::uint32_t bay, double at) {
        auto pose = cut_.poses.begin();
        for (std::size_t k = 0; k < repeat_.each.size(); ++k)
            for (std::size_t n = 0; n < repeat_.each[k]; ++n, ++pose) {
                const std::uint32_t item = next_[k]++;
                constructor_.keep(item, {{pose->at.x + at, pose->at.y}, pose->option, bay});
                lies_[item] = true;
            }
    }

    const Repeat& repeat_;
    Cut cut_;
    Constructor& constructor_;
    std::vector<std::uint32_t> next_; // of every kind, the item to lie next
    std::vector<bool> lies_;
    std::size_t times_ = 0;
};

} // namespace

std::optional<Repeat> repeat_for(const Problem& problem, const Effort& effort) {
    const std::uint64_t units =
        effort.amount > 0 ? static_cast<std::uint64_t>(effort.amount) : tuning::timed_units;
    if (effort.trial || problem.items.size() <= tuning::repeating_items_a_unit * units ||
        model_bay(problem) == nullptr)
        return std::nullopt;
    const std::vector<std::size_t> counts = counts_of(problem);
    for (std::size_t times = *std::max_element(counts.begin(), counts.end()); times >= fewest_times;
         --times) {
        Repeat repeat = repeat_of(counts, times);
        if (repeat.items >= fewest_items && is_most_of(problem, repeat) &&
            has_room_to_repeat(problem, repeat))
            return repeat.items <= most_items ? std::optional(std::move(repeat)) : std::nullopt;
    }
    return std::nullopt;
}

std::optional<Pattern> pattern_for(const Problem& problem, const Repeat& repeat,
                                   const Effort& effort, const Watch& watch, const Stint& stint) {
    Problem pattern = pattern_of(problem, repeat);
    Random random(effort.seed);
    std::optional<Found> start = with_straight_ends(pattern, random);
    if (!start)
        return std::nullopt;
    start->end += problem.fields->most_need() + 2 * pattern_margin_um;
    pattern.repeats = true;
    Search search(pattern, effort, watch);
    search.start_from(*start);
    search.run(stint);
    Pattern best{*search.best(), search.stopped()};
    best.found.end = std::ceil(best.found.end); // all repeats alike on the grid
    return best;
}

std::optional<std::vector<Pose>> laid_in_repeats(const Problem& problem, const Repeat& repeat,
                                                 const Found& pattern, std::uint64_t seed) {
    Random random(seed);
    Constructor constructor(problem, random);
    const Laying laying(problem, repeat, pattern, constructor);
    if (laying.times() < fewest_times)
        return std::nullopt;
    std::vector<std::uint32_t> rest = item_order(problem, 0, random);
    std::erase_if(rest, [&](std::uint32_t item) { return laying.lies(item); });
    if (!constructor.run(rest).empty())
        return std::nullopt;
    return constructor.poses();
}

} // namespace pelt::nest::contour
