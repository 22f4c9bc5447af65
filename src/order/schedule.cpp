// SPDX-License-Identifier: MIT
#include "order/schedule.hpp"

#include "model/error.hpp"

#include <algorithm>
#include <limits>
#include <numeric>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::int64_t minutes_a_day_and_night = 24 * 60;
/// When work begins in the morning (common practice, no source). Only waiting depends on it, and
/// only on where the evening ends.
constexpr std::int64_t work_begins = 8 * 60;
/// Lists tried beyond the first two: few where there are many tasks, for a list costs their square.
constexpr std::size_t work_for_exchanges = 150'000;
constexpr std::size_t most_lists = 3'000;

using List = std::vector<std::size_t>;

/// Builds schedules of the same tasks from lists.
class Builder {
public:
    Builder(const std::vector<Task>& tasks, int crew, const WorkClock& clock)
        : tasks_(tasks), crew_(std::max(crew, 1)), clock_(clock) {}

    /// Given up, and meaningless but for its end, once it ends no earlier than `too_late`.
    Schedule by(const List& list,
                std::int64_t too_late = std::numeric_limits<std::int64_t>::max()) const {
        Schedule out;
        out.slots.resize(tasks_.size());
        std::vector<bool> placed(tasks_.size(), false);
        List waiting = list;
        List busy; // tasks that hold hands
        while (!waiting.empty()) {
            const auto next = std::find_if(waiting.begin(), waiting.end(), [&](std::size_t t) {
                return std::all_of(tasks_[t].after.begin(), tasks_[t].after.end(),
                                   [&](std::size_t before) { return placed[before]; });
            });
            if (next == waiting.end())
                throw ProgramError("tasks wait for one another in a circle");
            const std::size_t task = *next;
            out.slots[task] = place(task, out.slots, busy);
            placed[task] = true;
            if (hands_of(task) > 0)
                busy.push_back(task);
            waiting.erase(next);
            out.end = std::max(out.end, out.slots[task].to);
            if (out.end >= too_late)
                break;
        }
        return out;
    }

    int hands_of(std::size_t task) const { return std::min(tasks_[task].hands, crew_); }

    Slot with_all_hands(std::size_t task, const std::vector<Slot>& slots) const {
        std::int64_t ready = 0;
        for (const std::size_t before : tasks_[task].after)
            ready = std::max(ready, slots[before].to);
        if (tasks_[task].hands == 0)
            return {ready, clock_.after_waiting(ready, tasks_[task].minutes)};
        return {ready, ready + tasks_[task].minutes};
    }

    std::int64_t bound() const {
        std::vector<Slot> slots(tasks_.size());
        std::int64_t longest = 0;
        std::int64_t work = 0;
        for (std::size_t t = 0; t < tasks_.size(); ++t) {
            slots[t] = with_all_hands(t, slots);
            longest = std::max(longest, slots[t].to);
            work += hands_of(t) * tasks_[t].minutes;
        }
        return std::max(longest, (work + crew_ - 1) / crew_);
    }

private:
    Slot place(std::size_t task, const std::vector<Slot>& slots, const List& busy) const {
        const Slot wanted = with_all_hands(task, slots);
        if (hands_of(task) == 0 || tasks_[task].minutes == 0)
            return wanted;
        std::vector<std::int64_t> starts{wanted.from};
        for (const std::size_t other : busy)
            if (slots[other].to > wanted.from)
                starts.push_back(slots[other].to);
        std::sort(starts.begin(), starts.end());
        for (const std::int64_t start : starts)
            if (has_hands(task, start, slots, busy))
                return {start, start + tasks_[task].minutes};
        throw ProgramError("a task finds no hands");
    }

    /// Hands in use only rise where a task begins, so these places and the start decide.
    bool has_hands(std::size_t task, std::int64_t start, const std::vector<Slot>& slots,
                   const List& busy) const {
        const std::int64_t end = start + tasks_[task].minutes;
        const auto used_at = [&](std::int64_t minute) {
            int used = 0;
            for (const std::size_t other : busy)
                if (slots[other].from <= minute && minute < slots[other].to)
                    used += hands_of(other);
            return used;
        };
        const int free = crew_ - hands_of(task);
        if (used_at(start) > free)
            return false;
        return std::all_of(busy.begin(), busy.end(), [&](std::size_t other) {
            const std::int64_t from = slots[other].from;
            return from <= start || from >= end || used_at(from) <= free;
        });
    }

    const std::vector<Task>& tasks_;
    int crew_;
    const WorkClock& clock_;
};

/// The tasks with the longest way behind them first.
List longest_way_first(const std::vector<Task>& tasks) {
    std::vector<std::int64_t> way(tasks.size());
    for (std::size_t t = tasks.size(); t-- > 0;) {
        way[t] += tasks[t].minutes;
        for (const std::size_t before : tasks[t].after)
            way[before] = std::max(way[before], way[t]);
    }
    List list(tasks.size());
    std::iota(list.begin(), list.end(), std::size_t{0});
    std::stable_sort(list.begin(), list.end(),
                     [&](std::size_t a, std::size_t b) { return way[a] > way[b]; });
    return list;
}

/// Moves one task at a time to another place in the best list, until nothing gets better or the
/// work is spent.
class Exchanges {
public:
    Exchanges(const Builder& builder, List list, Schedule best)
        : builder_(builder), list_(std::move(list)), best_(std::move(best)) {
        const std::size_t n = list_.size();
        left_ = std::min(most_lists, work_for_exchanges / std::max<std::size_t>(n * n, 1));
    }

    Schedule run() {
        while (left_ > 0 && best_.end > best_.bound && one_is_better()) {
        }
        return std::move(best_);
    }

private:
    bool one_is_better() {
        for (std::size_t from = 0; from < list_.size(); ++from)
            for (std::size_t to = 0; to < list_.size(); ++to)
                if (from != to && left_ > 0 && is_better(from, to))
                    return true;
        return false;
    }

    bool is_better(std::size_t from, std::size_t to) {
        --left_;
        List moved = list_;
        const std::size_t task = moved[from];
        moved.erase(moved.begin() + static_cast<std::ptrdiff_t>(from));
        moved.insert(moved.begin() + static_cast<std::ptrdiff_t>(to), task);
        Schedule tried = builder_.by(moved, best_.end);
        if (tried.end >= best_.end)
            return false;
        tried.bound = best_.bound;
        best_ = std::move(tried);
        list_ = std::move(moved);
        return true;
    }

    const Builder& builder_;
    List list_;
    Schedule best_;
    std::size_t left_ = 0;
};

} // namespace

WorkClock::WorkClock(const WorkingWeek& week, std::optional<Day> start)
    : week_(week), start_(start) {}

std::int64_t WorkClock::day_of(std::int64_t minute, bool as_end) const {
    const std::int64_t counted = as_end && minute > 0 ? minute - 1 : minute;
    return counted / week_.minutes_a_day;
}

std::optional<Day> WorkClock::date_of(std::int64_t working_day) const {
    if (!start_)
        return std::nullopt;
    while (static_cast<std::int64_t>(days_.size()) <= working_day) {
        const auto next =
            week_.first_from(days_.empty() ? *start_ : days_.back() + std::chrono::days(1));
        if (!next)
            throw ProgramError("the shop is closed for ten years");
        days_.push_back(*next);
    }
    return days_[static_cast<std::size_t>(working_day)];
}

std::int64_t WorkClock::calendar_day(std::int64_t working_day) const {
    const auto date = date_of(working_day);
    return date ? (*date - *start_).count() : working_day;
}

std::int64_t WorkClock::after_waiting(std::int64_t minute, std::int64_t wait) const {
    if (wait == 0)
        return minute;
    const std::int64_t day = day_of(minute, true);
    const std::int64_t over = calendar_day(day) * minutes_a_day_and_night + work_begins + minute -
                              day * week_.minutes_a_day + wait;
    std::int64_t next = day;
    while (calendar_day(next) * minutes_a_day_and_night + work_begins + week_.minutes_a_day < over)
        ++next;
    const std::int64_t into_it = over - calendar_day(next) * minutes_a_day_and_night - work_begins;
    return next * week_.minutes_a_day + std::max<std::int64_t>(into_it, 0);
}

Schedule scheduled_by_list(const std::vector<Task>& tasks, const std::vector<std::size_t>& list,
                           int crew, const WorkClock& clock) {
    const Builder builder(tasks, crew, clock);
    Schedule out = builder.by(list);
    out.bound = builder.bound();
    return out;
}

Schedule scheduled(const std::vector<Task>& tasks, int crew, const WorkClock& clock) {
    List list(tasks.size());
    std::iota(list.begin(), list.end(), std::size_t{0});
    Schedule best = scheduled_by_list(tasks, list, crew, clock);
    const List other = longest_way_first(tasks);
    if (Schedule tried = scheduled_by_list(tasks, other, crew, clock); tried.end < best.end) {
        best = std::move(tried);
        list = other;
    }
    return Exchanges(Builder(tasks, crew, clock), list, best).run();
}

} // namespace pelt::order
