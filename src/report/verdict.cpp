// SPDX-License-Identifier: MIT
#include "report/verdict.hpp"

#include "report/numbers.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {

/// Strips of constant curvature ask K W² / 8, so a width needs W sqrt(K / (8 limit)) of them.
std::optional<int> strips_needed(const StretchAsked& stretch, double limit_percent) {
    constexpr double too_many = 1'000;
    if (!stretch.curvature || !stretch.width_mm || !(limit_percent > 0))
        return std::nullopt;
    const double strips =
        *stretch.width_mm * std::sqrt(std::abs(*stretch.curvature) / (8 * limit_percent / 100));
    if (!(strips < too_many))
        return std::nullopt;
    return std::max(2, static_cast<int>(std::ceil(strips)));
}

Asked how_much_it_asks(const StretchAsked& stretch, double limit_percent) {
    constexpr double nearly_all = .8;
    if (stretch.is == StretchAsked::Is::unknown)
        return Asked::little;
    const double asked = stretch.percent;
    if (asked > limit_percent)
        return Asked::too_much;
    // An estimate is right within a tenth, so its margin lies within the last fifth.
    if (asked > nearly_all * limit_percent)
        return Asked::nearly_all;
    return stretch.natural_percent.value_or(asked) > limit_percent ? Asked::warming
                                                                   : Asked::little;
}

std::string over_the_limit(const StretchAsked& stretch, double limit_percent) {
    const bool saddle = stretch.curvature && *stretch.curvature < 0;
    return std::string(saddle ? "hollow one way and " : "") + "over the film's " +
           percent(limit_percent) + " stretch";
}

std::string near_the_limit(double limit_percent) {
    return "near the film's " + percent(limit_percent) + " stretch";
}

std::string remedy_for(const StretchAsked& stretch) {
    return stretch.curvature && *stretch.curvature < 0
               ? "lay an inlay first, or take softer film"
               : "cut in at its edges, or take softer film";
}

std::string_view name_of(Lies lies) {
    switch (lies) {
    case Lies::ok:
        return "ok";
    case Lies::care:
        return "care";
    case Lies::split:
        break;
    }
    return "split";
}

std::optional<Lies> how_it_lies(const StretchAsked& stretch, std::optional<double> limit_percent) {
    if (!limit_percent || stretch.is == StretchAsked::Is::unknown)
        return std::nullopt;
    if (stretch.percent > *limit_percent)
        return Lies::split;
    return stretch.natural_percent.value_or(stretch.percent) <= *limit_percent ? Lies::ok
                                                                               : Lies::care;
}

std::string in_words(Lies lies) {
    switch (lies) {
    case Lies::ok:
        return "lies down";
    case Lies::care:
        return "warm it and spread it, then post-heat it";
    case Lies::split:
        break;
    }
    return "will not go in one piece";
}

std::string advice_on(const StretchAsked& stretch, double limit_percent) {
    if (stretch.curvature && *stretch.curvature < 0)
        return "it is hollow one way and bulges the other: lay an inlay into the hollow first, or "
               "take a softer film";
    std::string text;
    if (const auto strips = strips_needed(stretch, limit_percent))
        text = "split its short width: about " + std::to_string(*strips) +
               " strips, the seams along it, would lie down; or ";
    return text + "cut in at the middles of its edges, a third to half of the way to the middle; "
                  "or take a softer film";
}

std::optional<Division> division_for(const StretchAsked& stretch, std::optional<double> limit) {
    if (how_it_lies(stretch, limit) != Lies::split)
        return std::nullopt;
    if (stretch.division || !stretch.length_mm)
        return stretch.division;
    const auto strips = strips_needed(stretch, *limit);
    if (!strips)
        return std::nullopt;
    Division out;
    out.pieces = *strips;
    out.cuts = *strips - 1;
    out.cut_mm = (*strips - 1) * *stretch.length_mm;
    const double width = *stretch.width_mm / *strips;
    out.stretch_percent = 100 * std::abs(*stretch.curvature) * width * width / 8;
    out.estimate = true;
    return out;
}

std::string_view name_of(Division::Kind kind) {
    return kind == Division::Kind::relief ? "relief" : "seam";
}

std::string division_text(const Division& division, const StretchAsked& stretch, Unit unit) {
    const Measures measures(unit);
    const std::string length =
        measures.size_with_unit(static_cast<Um>(std::lround(division.cut_mm)) * um_per_mm);
    const std::string cuts = std::to_string(division.cuts);
    std::string what;
    if (division.kind == Division::Kind::relief)
        what = division.cuts == 1 ? "a relief cut from the rim, " + length + ", lapped as it closes"
                                  : cuts + " relief cuts from the rim, " + length +
                                        " in all, lapped as they close";
    else
        what =
            (division.cuts == 1 ? "one seam, " + length : cuts + " seams, " + length + " in all") +
            ", so " + std::to_string(division.pieces) + " pieces";
    if (division.own_lines)
        what += ", along the file's seam lines";
    if (division.estimate)
        what += ", along its length (an estimate)";
    return what + ": " + percent(division.stretch_percent) + " instead of " +
           percent(stretch.percent);
}

bool is_much_the_same(const StretchMap& map) {
    constexpr double nearly = .9;
    double area = 0;
    double near = 0;
    for (const StretchMap::Cell& cell : map.cells) {
        const auto& c = cell.corners;
        const double doubled =
            std::abs((c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[2].x - c[0].x) * (c[1].y - c[0].y));
        area += doubled;
        near += cell.percent >= nearly * map.peak_percent ? doubled : 0;
    }
    return near > area / 2;
}

std::string where_most(const StretchMap& map) {
    if (map.peak_percent < .05)
        return "none anywhere";
    if (is_much_the_same(map))
        return "much the same all over";
    double wide = 0;
    double high = 0;
    for (const StretchMap::Cell& cell : map.cells)
        for (const Point& p : cell.corners) {
            wide = std::max(wide, p.x);
            high = std::max(high, p.y);
        }
    const auto third = [](double at, double of) {
        return at < of / 3 ? 0 : at > 2 * of / 3 ? 2 : 1;
    };
    const int x = third(map.peak.x, wide);
    const int y = third(map.peak.y, high);
    const std::string up = y == 0 ? "lower" : y == 2 ? "upper" : "";
    const std::string across = x == 0 ? "left" : x == 2 ? "right" : "";
    std::string where = "in the middle";
    if (!up.empty() && !across.empty())
        where = "at the " + up + " " + across;
    else if (!up.empty())
        where = up == "upper" ? "at the top" : "at the bottom";
    else if (!across.empty())
        where = "at the " + across;
    const double slope = std::abs(map.pull.x) > 0 ? std::abs(map.pull.y / map.pull.x) : 100;
    const std::string pull = slope > 2    ? "up and down"
                             : slope < .5 ? "from side to side"
                                          : "aslant";
    return "most " + where + ", pulling " + pull;
}

} // namespace pelt::report
