// SPDX-License-Identifier: MIT
// Which work of a job is done when. Inside order/ only.
//
// Solves: tasks with an order between some of them, a crew of so many hands, working days; the end
// as early as can be (resource-constrained project scheduling, strongly NP-hard: Blazewicz, Lenstra
// & Rinnooy Kan 1983, from memory). How: list scheduling. Tasks are taken in a list's order and
// each begins as early as what it waits for and free hands allow (the serial scheme, Kolisch 1996,
// from memory); some list gives the best end. Tried are the order given, the longest rest of the
// way first, and exchanges within the best list. Cost: lists tried × tasks² . The bound that stands
// beside the end tells how much better it could be at most.
#pragma once

#include "model/calendar.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace pelt::order {

/// Minutes are whole ones.
struct Task {
    std::int64_t minutes = 0; ///< of working time; where nobody's hands are needed, of the clock
    int hands = 1;            ///< 0: it waits (dries, rests), nights and closed days too
    std::vector<std::size_t> after = {}; ///< places of tasks before it in the list of tasks
};

/// Working minutes from the first morning: 0 is its beginning, the next morning follows the evening
/// before at once.
struct Slot {
    std::int64_t from = 0;
    std::int64_t to = 0;
    friend bool operator==(const Slot&, const Slot&) = default;
};

struct Schedule {
    std::vector<Slot> slots; ///< of the tasks, in their order
    std::int64_t end = 0;    ///< of the last one
    std::int64_t bound = 0;  ///< no schedule ends before
};

/// Where working minutes stand on the clock.
class WorkClock {
public:
    /// Without a start every day is a working day.
    WorkClock(const WorkingWeek& week, std::optional<Day> start);

    /// The working day, from 0, in which a minute lies; one that ends a day counts to that day
    /// where it is an end.
    std::int64_t day_of(std::int64_t minute, bool as_end) const;
    /// None without a start. The calendar's end (closed for ten years) is a ProgramError: readers
    /// refuse such weeks.
    std::optional<Day> date_of(std::int64_t working_day) const;
    /// The working minute at which what ends at `minute` and then waits for `wait` minutes of the
    /// clock is over.
    std::int64_t after_waiting(std::int64_t minute, std::int64_t wait) const;

private:
    std::int64_t calendar_day(std::int64_t working_day) const;

    const WorkingWeek& week_;
    std::optional<Day> start_;
    mutable std::vector<Day> days_; ///< working days found so far
};

/// A task that needs more hands than the crew has takes all of the crew; help is then booked.
Schedule scheduled(const std::vector<Task>& tasks, int crew, const WorkClock& clock);

/// By the order of one list of all tasks alone; for comparison.
Schedule scheduled_by_list(const std::vector<Task>& tasks, const std::vector<std::size_t>& list,
                           int crew, const WorkClock& clock);

} // namespace pelt::order
