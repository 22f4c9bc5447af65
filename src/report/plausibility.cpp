// SPDX-License-Identifier: MIT
#include "report/plausibility.hpp"

#include "model/body.hpp"
#include "report/facts.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr double table_width_mm = 1520;
constexpr double unusually_short = 0.75;
constexpr double unusually_long = 1.30;
constexpr double one_way_low = 1.05; // one-way film takes 5 to 10 % more
constexpr double one_way_high = 1.10;

struct Expected {
    double low_mm = 0;
    double high_mm = 0;
};

bool leaves_out_more_than_extras(const Job& job) {
    return std::any_of(job.left_out.begin(), job.left_out.end(), [&](const LeftOut& left) {
        return job.vehicles.at(static_cast<std::size_t>(left.vehicle))
            .panels.at(static_cast<std::size_t>(left.panel))
            .extra.empty();
    });
}

std::optional<Expected> expected(const Job& job) {
    const bool known_width = job.film.width >= 1'370'000 && job.film.width <= 1'670'000;
    if (!known_width || leaves_out_more_than_extras(job))
        return std::nullopt;
    Expected sum;
    for (const Vehicle& vehicle : job.vehicles) {
        const std::optional<BodyKind> kind = body_kind_named(vehicle.body);
        if (!kind)
            return std::nullopt;
        sum.low_mm += kind->nested_least_m * 1000 * job.times;
        sum.high_mm += kind->nested_most_m * 1000 * job.times;
    }
    const double wider = table_width_mm * 1000 / static_cast<double>(job.film.width);
    const bool one_way = job.film.direction == Direction::one_way;
    return Expected{sum.low_mm * wider * (one_way ? one_way_low : 1),
                    sum.high_mm * wider * (one_way ? one_way_high : 1)};
}

enum class Verdict { usual, little, much };

Verdict verdict(const Expected& expected, Um length) {
    const double mm = static_cast<double>(length) / 1000;
    if (mm < unusually_short * expected.low_mm)
        return Verdict::little;
    return mm > unusually_long * expected.high_mm ? Verdict::much : Verdict::usual;
}

std::string bodies_of(const Job& job) {
    std::string text;
    for (const Vehicle& vehicle : job.vehicles)
        text += (text.empty() ? "" : " + ") + vehicle.body;
    return job.times > 1 ? std::to_string(job.times) + " times " + text : text;
}

Um nearest_tenth_of_a_metre(double mm) {
    return static_cast<Um>(mm / 100 + 0.5) * 100'000;
}

} // namespace

bool is_unusual(const Plan& plan) {
    const std::optional<Expected> range = expected(plan.job());
    return range && verdict(*range, length_of(plan)) != Verdict::usual;
}

std::optional<std::string> plausibility(const Plan& plan, const Measures& measures) {
    const std::optional<Expected> range = expected(plan.job());
    if (!range)
        return std::nullopt;
    const std::string usual = "Usual for " + bodies_of(plan.job()) + " on film of this width: " +
                              measures.film(nearest_tenth_of_a_metre(range->low_mm)) + " to " +
                              measures.film(nearest_tenth_of_a_metre(range->high_mm)) +
                              " (an assumption from common practice)";
    switch (verdict(*range, length_of(plan))) {
    case Verdict::usual:
        return usual + ".";
    case Verdict::little:
        return usual + "; this is far less: is a panel missing, or a unit wrong?";
    case Verdict::much:
        return usual + "; this is far more: is a panel there twice, or a unit wrong?";
    }
    return usual + ".";
}

} // namespace pelt::report
