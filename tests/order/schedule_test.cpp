// SPDX-License-Identifier: MIT
#include "nest/random.hpp"
#include "order/schedule.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

using pelt::Day;
using pelt::DaySpan;
using pelt::WorkingWeek;
using pelt::order::Schedule;
using pelt::order::scheduled;
using pelt::order::scheduled_by_list;
using pelt::order::Slot;
using pelt::order::Task;
using pelt::order::WorkClock;

namespace {

Day day(const char* text) {
    return pelt::day_in(text).value();
}

/// Up to seven tasks, some waits, an order between some of them.
std::vector<Task> random_tasks(pelt::nest::Random& random) {
    std::vector<Task> tasks(2 + random.below(6));
    for (std::size_t t = 0; t < tasks.size(); ++t) {
        tasks[t].minutes = static_cast<std::int64_t>(random.below(300));
        tasks[t].hands = random.below(6) == 0 ? 0 : random.below(5) == 0 ? 2 : 1;
        for (std::size_t before = 0; before < t; ++before)
            if (random.below(4) == 0)
                tasks[t].after.push_back(before);
    }
    return tasks;
}

std::int64_t best_of_all_orders(const std::vector<Task>& tasks, int crew, const WorkClock& clock) {
    std::vector<std::size_t> list(tasks.size());
    std::iota(list.begin(), list.end(), std::size_t{0});
    std::int64_t best = scheduled_by_list(tasks, list, crew, clock).end;
    while (std::next_permutation(list.begin(), list.end()))
        best = std::min(best, scheduled_by_list(tasks, list, crew, clock).end);
    return best;
}

int hands_in_use(const std::vector<Task>& tasks, const Schedule& schedule, int crew,
                 std::int64_t minute) {
    int used = 0;
    for (std::size_t t = 0; t < tasks.size(); ++t)
        if (schedule.slots[t].from <= minute && minute < schedule.slots[t].to)
            used += std::min(tasks[t].hands, crew);
    return used;
}

} // namespace

TEST_CASE("one pair of hands does one thing after the other") {
    const WorkingWeek week;
    const WorkClock clock(week, std::nullopt);
    const Schedule schedule = scheduled({{60, 1}, {30, 1}, {90, 1, {0, 1}}}, 1, clock);
    CHECK(schedule.end == 180);
    CHECK(schedule.bound == 180);
}

TEST_CASE("what waits takes the night, and nobody's hands") {
    const WorkingWeek week; // 8 to 16
    const WorkClock clock(week, std::nullopt);
    // 7 h of work, then 12 h of rest: from 15:00 to 3:00, so over when the next day begins.
    CHECK(clock.after_waiting(7 * 60, 12 * 60) == 8 * 60);
    // 8 h of work end at 16:00; 18 h later it is 10:00 of the next day.
    CHECK(clock.after_waiting(8 * 60, 18 * 60) == 10 * 60);
    // Within the day.
    CHECK(clock.after_waiting(60, 120) == 180);
    // While one thing rests, another is worked on.
    const Schedule schedule = scheduled({{60, 1}, {120, 0, {0}}, {120, 1}}, 1, clock);
    CHECK(schedule.end == 180);
}

TEST_CASE("no work on closed days, over a change to summer time and over a leap day") {
    WorkingWeek week;
    week.closed = {{day("2026-12-24"), day("2027-01-01")}};
    const WorkClock over_new_year(week, day("2026-12-23")); // a Wednesday
    CHECK(over_new_year.date_of(0) == day("2026-12-23"));
    CHECK(over_new_year.date_of(1) == day("2027-01-04")); // a Monday
    // Clocks go forward in the night to Sunday, 28 March 2027 (last Sunday of March, EU directive
    // 2000/84/EC): Friday, then Monday.
    const WorkClock summer(week, day("2027-03-26"));
    CHECK(summer.date_of(1) == day("2027-03-29"));
    const WorkClock leap(week, day("2028-02-28")); // a Monday; 2028 has a 29 February
    CHECK(leap.date_of(1) == day("2028-02-29"));
    CHECK(leap.date_of(2) == day("2028-03-01"));
    // A rest from Friday evening is over on Monday morning, not later.
    CHECK(summer.after_waiting(8 * 60, 24 * 60) == 8 * 60);
}

TEST_CASE("a start on a closed day begins with the next working day") {
    const WorkingWeek week;
    CHECK(WorkClock(week, day("2026-11-28")).date_of(0) == day("2026-11-30")); // Saturday
}

namespace {

void check_rules(const std::vector<Task>& tasks, const Schedule& schedule, int crew) {
    REQUIRE(schedule.slots.size() == tasks.size());
    CHECK(schedule.end >= schedule.bound);
    for (std::size_t t = 0; t < tasks.size(); ++t) {
        for (const std::size_t before : tasks[t].after)
            CHECK(schedule.slots[t].from >= schedule.slots[before].to);
        CHECK(hands_in_use(tasks, schedule, crew, schedule.slots[t].from) <= crew);
        if (tasks[t].hands > 0)
            CHECK(schedule.slots[t].to - schedule.slots[t].from == tasks[t].minutes);
    }
}

} // namespace

TEST_CASE("schedules keep the order of tasks and the crew, and end no earlier than the bound") {
    pelt::nest::Random random(5);
    const WorkingWeek week;
    const WorkClock clock(week, std::nullopt);
    constexpr int jobs = 100;
    for (int crew = 1; crew <= 4; ++crew) {
        int as_early_as_can_be = 0;
        for (int job = 0; job < jobs; ++job) {
            const std::vector<Task> tasks = random_tasks(random);
            CAPTURE(job);
            CAPTURE(crew);
            const Schedule schedule = scheduled(tasks, crew, clock);
            check_rules(tasks, schedule, crew);
            const std::int64_t best = best_of_all_orders(tasks, crew, clock);
            CHECK(best >= schedule.bound);
            as_early_as_can_be += schedule.end == best ? 1 : 0;
        }
        MESSAGE("crew of " << crew << ": " << as_early_as_can_be << " of " << jobs
                           << " end as early as the best of all orders");
        CHECK(as_early_as_can_be >= jobs * 95 / 100);
    }
}

TEST_CASE("random work over summer time, a leap day and holidays lies on working days, in order") {
    pelt::nest::Random random(6);
    WorkingWeek week;
    week.closed = {{day("2026-12-24"), day("2027-01-01")}, {day("2027-03-29"), day("2027-03-29")}};
    for (const char* start : {"2026-12-22", "2027-03-25", "2027-10-29", "2028-02-27", "2028-02-28"})
        for (int job = 0; job < 60; ++job) {
            const WorkClock clock(week, day(start));
            std::vector<Task> tasks = random_tasks(random);
            for (Task& task : tasks)
                task.minutes *= 4; // over several days
            const int crew = 1 + static_cast<int>(random.below(4));
            CAPTURE(start);
            CAPTURE(job);
            const Schedule schedule = scheduled(tasks, crew, clock);
            check_rules(tasks, schedule, crew);
            for (std::size_t t = 0; t < tasks.size(); ++t) {
                if (tasks[t].hands == 0)
                    continue;
                const auto first = clock.date_of(clock.day_of(schedule.slots[t].from, false));
                const auto last = clock.date_of(clock.day_of(schedule.slots[t].to, true));
                CHECK(week.works_on(*first));
                CHECK(week.works_on(*last));
                CHECK(*first >= day(start));
            }
        }
}
