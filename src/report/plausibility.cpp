// SPDX-License-Identifier: MIT
#include "report/plausibility.hpp"

#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "trade/bodies.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

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
    const bool known_width =
        job.film.width >= trade::narrowest_compared && job.film.width <= trade::widest_compared;
    if (job.by != CutBy::straight || !known_width || leaves_out_more_than_extras(job))
        return std::nullopt;
    Expected sum;
    for (const Vehicle& vehicle : job.vehicles) {
        const std::optional<trade::BodyKind> kind = trade::body_kind_named(vehicle.body);
        if (!kind)
            return std::nullopt;
        sum.low_mm += kind->nested_least_m * 1000 * job.times;
        sum.high_mm += kind->nested_most_m * 1000 * job.times;
    }
    const double wider = trade::body_table_width_mm * 1000 / static_cast<double>(job.film.width);
    const bool one_way = job.film.direction == Direction::one_way;
    return Expected{sum.low_mm * wider * (one_way ? trade::one_way_takes_least : 1),
                    sum.high_mm * wider * (one_way ? trade::one_way_takes_most : 1)};
}

enum class Verdict { usual, little, much };

Verdict verdict(double low, double high, double value) {
    if (value < trade::unusually_little * low)
        return Verdict::little;
    return value > trade::unusually_much * high ? Verdict::much : Verdict::usual;
}

Verdict verdict(const Expected& expected, Um length) {
    return verdict(expected.low_mm, expected.high_mm, static_cast<double>(length) / 1000);
}

std::string_view question(Verdict verdict) {
    switch (verdict) {
    case Verdict::usual:
        return "";
    case Verdict::little:
        return "; this is far less: is a panel missing, or a unit wrong?";
    case Verdict::much:
        return "; this is far more: is a panel there twice, or a unit wrong?";
    }
    return "";
}

std::string bodies_of(const Job& job) {
    std::string text;
    for (const Vehicle& vehicle : job.vehicles)
        text += (text.empty() ? "" : " + ") + vehicle.body;
    return job.times > 1 ? std::to_string(job.times) + " times " + text : text;
}

std::string square_metres(double area) {
    const auto tenths = static_cast<std::int64_t>(area * 10 + 0.5);
    return decimal(tenths, 1, 1) + " m²";
}

bool is_extra(const Vehicle& vehicle, const std::string& name) {
    return std::any_of(vehicle.panels.begin(), vehicle.panels.end(), [&](const Panel& panel) {
        return panel.name == name && !panel.extra.empty();
    });
}

double square_metres_on(const Vehicle& vehicle, const std::vector<PanelArea>& areas) {
    double mm2 = 0;
    for (const PanelArea& row : areas)
        if (!is_extra(vehicle, row.panel))
            mm2 += row.count * to_mm2(doubled_area(row.wrapped));
    return mm2 / 1e6;
}

Um nearest_tenth_of_a_metre(double mm) {
    return static_cast<Um>(mm / 100 + 0.5) * 100'000;
}

} // namespace

std::optional<Unusual> how_unusual(const Plan& plan) {
    const std::optional<Expected> range = expected(plan.job());
    const Verdict found = range ? verdict(*range, length_of(plan)) : Verdict::usual;
    if (found == Verdict::usual)
        return std::nullopt;
    return found == Verdict::little ? Unusual::little : Unusual::much;
}

std::optional<std::string> plausibility(const Plan& plan, const Measures& measures) {
    const std::optional<Expected> range = expected(plan.job());
    if (!range)
        return std::nullopt;
    return "Usual for " + bodies_of(plan.job()) + " on film of this width: " +
                              measures.film(nearest_tenth_of_a_metre(range->low_mm)) + " to " +
                              measures.film(nearest_tenth_of_a_metre(range->high_mm)) +
           " (an assumption from common practice).";
}

std::optional<AreaOpinion> opinion_on_area(const Vehicle& vehicle,
                                           const std::vector<PanelArea>& areas) {
    const std::optional<trade::BodyKind> kind = trade::body_kind_named(vehicle.body);
    if (!kind)
        return std::nullopt;
    const double wide_m = trade::body_table_width_mm / 1000;
    const double low = kind->nested_least_m * wide_m * trade::least_share_on_the_vehicle;
    const double high = kind->nested_most_m * wide_m * trade::most_share_on_the_vehicle;
    const double area = square_metres_on(vehicle, areas);
    const Verdict found = verdict(low, high, area);
    return AreaOpinion{square_metres(area) + " of film on the vehicle; usual for " + vehicle.body +
                           ": " + square_metres(low) + " to " + square_metres(high) +
                           " (an assumption from common practice)" + std::string(question(found)),
                       found != Verdict::usual};
}

} // namespace pelt::report
