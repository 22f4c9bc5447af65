// SPDX-License-Identifier: MIT
#include "order/look_on.hpp"

#include "order/fill.hpp"

#include <utility>

namespace pelt::order {
namespace {

/// Doubling ends here, should every search be over before the watch is asked.
constexpr int most_effort = 1 << 20;

/// One way to fill the shelf, with the job and the faults that belong to it.
struct Way {
    Job job;
    FromShelf filled;
    Faults faults;
    Score score{};
};

class LookingOn {
public:
    LookingOn(const Job& job, const Shelf& shelf, const SpareToBuy& spare,
              const nest::Effort& effort, const nest::Watch& watch)
        : job_(job), shelf_(shelf), spare_(spare), effort_(effort), watch_(watch) {}

    Way run() {
        Way best = filled_with(effort_);
        if (is_over(best))
            return best;
        if (best.filled.result.layout->rolls.size() == 1)
            go_on_with_one_roll(best);
        else
            go_on_with_all(best);
        return best;
    }

private:
    Way filled_with(const nest::Effort& effort) const {
        Way way{job_, {}, {}};
        way.filled = fill_from_shelf(way.job, shelf_, spare_, effort, watch_, way.faults);
        if (way.filled.result.layout)
            way.score = score_of(way.job, *way.filled.result.layout);
        return way;
    }

    Score score_of(const Job& job, const Layout& layout) const {
        return judged(job, shelf_.costs, spare_, layout);
    }

    static bool is_over(const Way& way) {
        const std::optional<Layout>& layout = way.filled.result.layout;
        return !layout || layout->stopped || layout->shortest;
    }

    void go_on_with_one_roll(Way& best) const {
        nest::Effort endless = effort_;
        endless.amount = 0;
        Layout& known = *best.filled.result.layout;
        nest::Result longer = fill(best.job, all_copies(best.job), {known.rolls.front().roll},
                                   endless, watch_);
        if (!longer.layout)
            return;
        known.stopped = longer.layout->stopped;
        if (score_of(best.job, *longer.layout) < best.score)
            known = *std::move(longer.layout);
    }

    void go_on_with_all(Way& best) const {
        nest::Effort more = effort_;
        while (!best.filled.result.layout->stopped && more.amount < most_effort) {
            more.amount *= 2;
            Way next = filled_with(more);
            const bool stopped = next.filled.result.layout && next.filled.result.layout->stopped;
            if (next.filled.result.layout && next.score < best.score)
                best = std::move(next);
            best.filled.result.layout->stopped = stopped;
        }
    }

    const Job& job_;
    const Shelf& shelf_;
    const SpareToBuy& spare_;
    const nest::Effort& effort_;
    const nest::Watch& watch_;
};

} // namespace

FromShelf look_on_from_shelf(Job& job, const Shelf& shelf, const SpareToBuy& spare,
                             const nest::Effort& effort, const nest::Watch& watch, Faults& faults) {
    Way best = LookingOn(job, shelf, spare, effort, watch).run();
    job = std::move(best.job);
    for (Fault& fault : best.faults)
        faults.push_back(std::move(fault));
    return std::move(best.filled);
}

} // namespace pelt::order
