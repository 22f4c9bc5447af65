// SPDX-License-Identifier: MIT
#include "develop/girths.hpp"

#include "develop/arc.hpp"
#include "develop/crown.hpp"
#include "model/marked_length.hpp"
#include "model/monotone_cubic.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>

namespace pelt::develop {
namespace {

/// The upper and the lower edge at the same places along the spine.
struct Profile {
    std::vector<double> at;
    std::vector<double> high;
    std::vector<double> low;
    EndWays high_ways = {}; ///< along the spine
    EndWays low_ways = {};
};

EndWays end_ways(const MonotoneCubic& curve, std::size_t last) {
    const auto way = [&](std::size_t point) {
        const double slope = curve.slope(point);
        const double length = std::hypot(1, slope);
        return Point{1 / length, slope / length};
    };
    return {way(0), way(last)};
}

Profile straight(const GirthsForm& form) {
    Profile profile;
    for (const GirthStation& station : form.stations) {
        profile.at.push_back(station.at_mm);
        profile.high.push_back(station.up_mm);
        profile.low.push_back(-station.down_mm);
    }
    return profile;
}

Profile smooth(const GirthsForm& form) {
    const Profile stations = straight(form);
    const MonotoneCubic high(stations.at, stations.high);
    const MonotoneCubic low(stations.at, stations.low);
    const std::size_t last = stations.at.size() - 1;
    Profile profile{{stations.at.front()},
                    {stations.high.front()},
                    {stations.low.front()},
                    end_ways(high, last),
                    end_ways(low, last)};
    for (std::size_t i = 0; i + 1 < stations.at.size(); ++i) {
        const int chords = std::max(high.chords(i, flattening_mm), low.chords(i, flattening_mm));
        const double width = stations.at[i + 1] - stations.at[i];
        for (int k = 1; k <= chords; ++k) {
            const double t = static_cast<double>(k) / chords;
            profile.at.push_back(stations.at[i] + t * width);
            profile.high.push_back(high.at(i, t));
            profile.low.push_back(low.at(i, t));
        }
    }
    return profile;
}

bool stations_are_right(const GirthsForm& form, const Panel& panel, Faults& faults) {
    const std::size_t before = faults.size();
    const auto wrong = [&](const GirthStation& station, std::string what, std::string remedy) {
        faults.push_back(
            {Severity::file, station.place, panel.name, std::move(what), std::move(remedy)});
    };
    for (std::size_t i = 0; i < form.stations.size(); ++i) {
        const GirthStation& station = form.stations[i];
        const bool at_an_end = i == 0 || i + 1 == form.stations.size();
        const double width = station.up_mm + station.down_mm;
        if (i > 0 && station.at_mm <= form.stations[i - 1].at_mm)
            wrong(station, "this station is not farther along than the one before it",
                  "list the stations in order along the spine");
        if (width < 0 || (width == 0 && !at_an_end))
            wrong(station, "its girth, up and down together, is not more than zero",
                  "check the signs: 'up' and 'down' are both measured away from the spine");
    }
    return faults.size() == before;
}

void add_edge(Blank& blank, std::string_view word, std::vector<Point> points,
              const EndWays& ways = {}) {
    const Point a = points.front();
    const Point b = points.back();
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    if (length == 0)
        return;
    points.pop_back();
    blank.outline.edge.insert(blank.outline.edge.end(), points.size(),
                              static_cast<int>(blank.edges.size()));
    blank.outline.points.insert(blank.outline.points.end(), points.begin(), points.end());
    blank.outline.ways.resize(blank.outline.points.size());
    blank.outline.ways[blank.outline.points.size() - points.size()].begins = ways.begins;
    blank.outline.ways.back().ends = ways.ends;
    blank.edges.push_back(
        {std::string(word), "", {(b.y - a.y) / length, (a.x - b.x) / length}, false});
}

} // namespace

Blank blank_of(const GirthsForm& form, const Panel& panel, Faults& faults) {
    if (!stations_are_right(form, panel, faults))
        return {};
    const Profile profile = form.smooth ? smooth(form) : straight(form);
    std::vector<Point> bottom;
    std::vector<Point> top;
    for (std::size_t i = 0; i < profile.at.size(); ++i) {
        bottom.push_back({profile.at[i], profile.low[i]});
        top.push_back({profile.at[i], profile.high[i]});
        const bool inside = i > 0 && i + 1 < profile.at.size();
        if (inside && profile.high[i] <= profile.low[i]) {
            faults.push_back({Severity::file, panel.place, panel.name,
                              "its upper and lower edge cross between two stations",
                              "measure a station between them"});
            return {};
        }
    }
    std::reverse(top.begin(), top.end());
    Blank blank;
    const EndWays& high = profile.high_ways;
    add_edge(blank, "bottom", bottom, profile.low_ways);
    add_edge(blank, "end", {bottom.back(), top.front()});
    add_edge(blank, "top", top, {{-high.ends.x, -high.ends.y}, {-high.begins.x, -high.begins.y}});
    add_edge(blank, "start", {top.back(), bottom.front()});
    return blank;
}

namespace {

double girth_at_the_middle(const Profile& profile) {
    const double middle = (profile.at.front() + profile.at.back()) / 2;
    std::size_t i = 1;
    while (i + 1 < profile.at.size() && profile.at[i] < middle)
        ++i;
    const double share = (middle - profile.at[i - 1]) / (profile.at[i] - profile.at[i - 1]);
    const auto between = [&](const std::vector<double>& edge) {
        return edge[i - 1] + share * (edge[i] - edge[i - 1]);
    };
    return between(profile.high) - between(profile.low);
}

/// The bow of a length along the surface; a fault where none of it rises so far.
std::optional<Bow> bow_of(double length, double rise, const std::string& over, const Panel& panel,
                          Faults& faults) {
    const std::optional<Bow> bow = bow_along(length, rise);
    if (!bow)
        faults.push_back({Severity::file, panel.place, panel.name,
                          "a rise of " + marked_mm(std::abs(rise), Told::nearest) + " over its " +
                              over + " is more than " + marked_mm(length, Told::nearest) +
                              " along the surface can rise",
                          "check 'rise over " + over + "'"});
    return bow;
}

} // namespace

StretchAsked stretch_of(const GirthsForm& form, const Panel& panel, Faults& faults) {
    if (!form.rise_over_spine_mm || !form.rise_over_girth_mm)
        return {};
    const Profile profile = form.smooth ? smooth(form) : straight(form);
    const double spine = profile.at.back() - profile.at.front();
    const auto wide = bow_of(spine, *form.rise_over_spine_mm, "spine", panel, faults);
    const auto high =
        bow_of(girth_at_the_middle(profile), *form.rise_over_girth_mm, "girth", panel, faults);
    return wide && high ? stretch_of(*wide, *high, Rim::any) : StretchAsked{};
}

} // namespace pelt::develop
