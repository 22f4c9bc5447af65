// SPDX-License-Identifier: MIT
// Looking on until somebody says stop (--time alone): never worse than the plain search, often
// better, and over by itself where nothing can be shorter. Stopped by counting, not by a clock.
#include "job.hpp"

#include <doctest/doctest.h>

namespace pelt::order_test {
namespace {

std::string panels(Chance& chance, std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i)
        text += "  p" + std::to_string(i) + ": {size: [" + std::to_string(chance.between(90, 700)) +
                ", " + std::to_string(chance.between(90, 700)) +
                "], forward: up, edges: none, direction: any}\n";
    return text;
}

order::Request request(const std::string& panels, const std::string& shelf = "") {
    order::Request made;
    made.vehicles = {vehicle(panels)};
    made.film = film("roll: {width: 1012 mm, trim: 6 mm}\ndirection: any\n"
                     "allowances: {handling: 0, gap: 0, bleed: 0}\n");
    if (!shelf.empty())
        made.stock = stock(shelf);
    return made;
}

Um new_length_of(const order::Outcome& outcome) {
    REQUIRE(outcome.plan);
    Um length = 0;
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        length += outcome.plan->job().rolls[used.roll].is_new ? used.length : 0;
    return length;
}

/// The same request with so many questions of the watch answered by "go on".
order::Outcome looked_on(order::Request asked, int questions) {
    asked.until_stopped = true;
    asked.watch = [questions](const nest::Progress&) mutable { return --questions > 0; };
    return order::run(std::move(asked));
}

int questions_of(order::Request asked) {
    int questions = 0;
    asked.watch = [&questions](const nest::Progress&) {
        ++questions;
        return true;
    };
    order::run(std::move(asked));
    return questions;
}

void never_worse_and_sometimes_better(const std::string& shelf) {
    Um plain = 0;
    Um longer = 0;
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
        CAPTURE(seed);
        Chance chance(seed);
        const order::Request asked = request(panels(chance, 24), shelf);
        const Um before = new_length_of(order::run(asked));
        const Um after = new_length_of(looked_on(asked, 12 * questions_of(asked)));
        CHECK(after <= before);
        plain += before;
        longer += after;
    }
    CHECK(longer < plain);
}

TEST_CASE("looking on is never worse than the plain search: one roll, one search goes on") {
    never_worse_and_sometimes_better("");
}

TEST_CASE("looking on is never worse than the plain search: several rolls, all weighed again") {
    never_worse_and_sometimes_better("  - {name: one, film: F, width: 1012 mm, length: 1.1 m, batch: A}\n"
                                     "  - {name: two, film: F, width: 1012 mm, length: 0.9 m, batch: A}\n");
}

TEST_CASE("looking on ends by itself where nothing can be shorter") {
    order::Request asked = request("  long: {size: [900, 600], forward: right, edges: none}\n");
    asked.until_stopped = true; // and nobody who would stop it
    const order::Outcome outcome = order::run(std::move(asked));
    CHECK(new_length_of(outcome) == 600'000);
    CHECK_FALSE(outcome.plan->layout().stopped);
}

TEST_CASE("looking on that is stopped at once still has the best layout so far, and says so") {
    Chance chance(3);
    const order::Outcome outcome = looked_on(request(panels(chance, 24)), 2);
    CHECK(new_length_of(outcome) > 0);
    CHECK(outcome.plan->layout().stopped);
}

} // namespace
} // namespace pelt::order_test
