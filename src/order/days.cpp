// SPDX-License-Identifier: MIT
#include "order/days.hpp"

#include "order/schedule.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::order {
namespace {

constexpr int look_over_after_days = 7;

using Places = std::vector<std::size_t>;

/// The tasks of a job, each with its stage.
class Plan {
public:
    Plan(const JobWork& work, const Shop& shop, const Calendar& calendar)
        : work_(work), calendar_(calendar), crew_(shop.crew) {
        prepare(shop);
        lay();
        finish();
    }

    const std::vector<Task>& tasks() const { return tasks_; }
    Stage stage_of(std::size_t task) const { return stages_[task]; }
    /// The block in which two people lay; none where no panel needs them.
    std::optional<std::size_t> block() const { return block_; }

private:
    std::size_t add(Stage stage, double minutes, Places after, int hands = 1) {
        tasks_.push_back(
            {static_cast<std::int64_t>(std::ceil(minutes - 1e-9)), hands, std::move(after)});
        stages_.push_back(stage);
        return tasks_.size() - 1;
    }
    /// Work that any number of hands can share: a task for each of the crew.
    Places add_shared(Stage stage, const Places& after) {
        Places out;
        for (int i = 0; i < crew_; ++i)
            out.push_back(add(stage, high(stage) / crew_, after));
        return out;
    }
    double high(Stage stage) const { return work_.stages[static_cast<std::size_t>(stage)].high; }

    void prepare(const Shop& shop) {
        const std::size_t take_in = add(Stage::take_in, high(Stage::take_in), {});
        const std::size_t wash = add(Stage::wash, high(Stage::wash), {take_in});
        const std::size_t dry = add(Stage::wash, static_cast<double>(shop.dry_minutes), {wash}, 0);
        Places off{dry};
        for (const PartWork& part : work_.parts) {
            Places after{dry};
            for (const std::size_t other : part.after)
                after.push_back(parts_[other]);
            parts_.push_back(add(Stage::strip_down, part.off.high, after));
            off.push_back(parts_.back());
        }
        Places bare = add_shared(Stage::edges, add_shared(Stage::old_film, off));
        if (const double wait = waiting_for_film(shop); wait > 0)
            bare.push_back(add(Stage::inlays, wait, {}, 0));
        inlaid_ = add_shared(Stage::inlays, bare);
    }

    /// From the first morning to the morning of the day on which the film is there; 0: it is.
    double waiting_for_film(const Shop& shop) const {
        if (!calendar_.start || !calendar_.film_arrives)
            return 0;
        const Day first = shop.week.first_from(*calendar_.start).value_or(*calendar_.start);
        constexpr double minutes_a_day = 24 * 60;
        return minutes_a_day * static_cast<double>((*calendar_.film_arrives - first).count());
    }

    void lay() {
        Places after = inlaid_;
        double with_help = 0;
        for (const PanelWork& panel : work_.panels)
            with_help += panel.with_help ? panel.time.high * trade::share_with_help : 0;
        if (with_help > 0) {
            block_ = add(Stage::panels, with_help, after, 2);
            after = {*block_};
        }
        double panels = 0;
        for (const PanelWork& panel : work_.panels) {
            panels += panel.time.high;
            laid_.push_back(
                add(Stage::panels,
                    panel.time.high * (panel.with_help ? 1 - trade::share_with_help : 1), after));
        }
        laid_.push_back(add(Stage::panels, high(Stage::panels) - panels, after)); // seams
    }

    /// A part goes back after those that came off later because of it.
    void finish() {
        const std::size_t rested =
            add(Stage::post_heat, static_cast<double>(calendar_.rest_minutes),
                add_shared(Stage::post_heat, laid_), 0);
        Places all{add(Stage::badges, high(Stage::badges), {rested})};
        Places back(work_.parts.size());
        for (std::size_t i = work_.parts.size(); i-- > 0;) {
            Places after{rested};
            for (std::size_t later = i + 1; later < work_.parts.size(); ++later)
                if (std::count(work_.parts[later].after.begin(), work_.parts[later].after.end(),
                               i) > 0)
                    after.push_back(back[later]);
            back[i] = add(Stage::refit, work_.parts[i].off.high * trade::refit_share, after);
            all.push_back(back[i]);
        }
        add(Stage::check, high(Stage::check), all);
    }

    const JobWork& work_;
    const Calendar& calendar_;
    int crew_;
    std::vector<Task> tasks_;
    std::vector<Stage> stages_;
    Places parts_;
    Places laid_;
    Places inlaid_;
    std::optional<std::size_t> block_;
};

void note(DayOfWork& day, Stage stage) {
    if (std::find(day.work.begin(), day.work.end(), stage) == day.work.end())
        day.work.push_back(stage);
}

} // namespace

Days days_of(const JobWork& work, const Shop& shop, const Calendar& calendar) {
    const WorkClock clock(shop.week, calendar.start);
    const Plan plan(work, shop, calendar);
    const Schedule schedule = scheduled(plan.tasks(), shop.crew, clock);
    Days out;
    out.end_minutes = static_cast<double>(schedule.end);
    out.bound_minutes = static_cast<double>(schedule.bound);
    out.working_days = clock.day_of(schedule.end, true) + 1;
    for (std::int64_t d = 0; d < out.working_days; ++d)
        out.days.push_back({d + 1, clock.date_of(d), {}, false});
    for (std::size_t t = 0; t < plan.tasks().size(); ++t) {
        const Slot& slot = schedule.slots[t];
        if (plan.tasks()[t].hands == 0 || slot.from == slot.to)
            continue;
        for (std::int64_t d = clock.day_of(slot.from, false); d <= clock.day_of(slot.to, true);
             ++d) {
            DayOfWork& day = out.days[static_cast<std::size_t>(d)];
            note(day, plan.stage_of(t));
            day.with_help = day.with_help || (plan.block() == t && shop.crew == 1);
        }
    }
    if (plan.block() && shop.crew == 1)
        out.help_minutes = static_cast<double>(plan.tasks()[*plan.block()].minutes);
    for (DayOfWork& day : out.days)
        std::sort(day.work.begin(), day.work.end());
    out.ready_on = clock.date_of(out.working_days - 1);
    if (out.ready_on)
        out.look_over =
            shop.week.first_from(*out.ready_on + std::chrono::days(look_over_after_days));
    return out;
}

} // namespace pelt::order
