// SPDX-License-Identifier: MIT
#include "piece/tuck_check.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace pelt::piece {
namespace {

/// Between neighbouring sides, more than this is a corner, less is a bend.
constexpr double corner = std::numbers::pi / 9;

/// How tightly a ring is bent at its tightest, on either side of straight. Radii in mm; infinite
/// where it is straight.
struct Bend {
    double hollow = std::numeric_limits<double>::infinity();
    double bulging = std::numeric_limits<double>::infinity();
};

class Bends {
public:
    /// `width`: of each edge's tuck.
    Bends(const TaggedRing& ring, std::vector<double> width)
        : ring_(ring), width_(std::move(width)), bend_(width_.size()) {
        const std::size_t n = ring.points.size();
        for (std::size_t i = 0; i < n; ++i) {
            const Point a = at(i);
            const Point b = at(i + 1);
            length_.push_back(std::hypot(b.x - a.x, b.y - a.y));
            way_.push_back(std::atan2(b.y - a.y, b.x - a.x));
        }
    }

    /// Of each edge.
    std::vector<Bend> found() {
        for (std::size_t i = 0; i < ring_.points.size(); ++i) {
            const auto edge = static_cast<std::size_t>(ring_.edge[i]);
            if (width_[edge] > 0)
                look_from(i, edge, width_[edge]);
        }
        return bend_;
    }

private:
    const Point& at(std::size_t i) const { return ring_.points[i % ring_.points.size()]; }

    /// Counter-clockwise from side i to the next one, -pi to pi.
    double turn_after(std::size_t i) const {
        const std::size_t n = way_.size();
        return std::remainder(way_[(i + 1) % n] - way_[i % n], 2 * std::numbers::pi);
    }

    /// The turning over the tuck's width from the middle of side i on, up to the next corner or the
    /// end of the tuck.
    void look_from(std::size_t i, std::size_t edge, double width) {
        const std::size_t n = ring_.points.size();
        double run = length_[i] / 2;
        double turned = 0;
        std::size_t sides = 1;
        for (std::size_t k = i; sides < n; ++k, ++sides) {
            const double turn = turn_after(k);
            const std::size_t next = (k + 1) % n;
            if (std::abs(turn) > corner ||
                !(width_[static_cast<std::size_t>(ring_.edge[next])] > 0))
                return;
            // A bulging corner between two edges is folded, not gathered.
            if (turn > 0 && static_cast<std::size_t>(ring_.edge[next]) != edge)
                return;
            turned += turn;
            const double half = length_[next] / 2;
            run += half;
            if (run >= width || sides + 1 == n) {
                note(edge, run, turned);
                return;
            }
            run += half;
        }
    }

    void note(std::size_t edge, double run, double turned) {
        Bend& bend = bend_[edge];
        if (turned < 0)
            bend.hollow = std::min(bend.hollow, run / -turned);
        else if (turned > 0)
            bend.bulging = std::min(bend.bulging, run / turned);
    }

    const TaggedRing& ring_;
    std::vector<double> width_;
    std::vector<double> length_;
    std::vector<double> way_;
    std::vector<Bend> bend_;
};

std::string whole_mm(double mm) {
    return std::to_string(static_cast<long long>(std::floor(mm))) + " mm";
}

std::string in_percent(double percent) {
    const long long tenths = std::llround(10 * percent);
    return std::to_string(tenths / 10) +
           (tenths % 10 != 0 ? "." + std::to_string(tenths % 10) : "") + " %";
}

/// A tuck that asks more than the film gives.
struct TooMuch {
    std::string where;
    bool named = false; ///< by a name of its own
    bool hollow = false;
    double width = 0;
    double radius = 0;
    double asked = 0; ///< infinite where no stretch is enough
    double longest = 0;
    int more = 0; ///< edges that ask too much as well, but less
};

/// Stretching counts before gathering: gathered film opens again.
std::optional<TooMuch> too_much(double width, const Bend& bend, double limit) {
    const double stretched = bend.hollow > width ? width / (bend.hollow - width)
                                                 : std::numeric_limits<double>::infinity();
    if (width > 0 && stretched > limit)
        return TooMuch{
            "", false, true, width, bend.hollow, stretched, bend.hollow * limit / (1 + limit), 0};
    const double gathered = width / (bend.bulging + width);
    if (width > 0 && gathered > limit)
        return TooMuch{
            "", false, false, width, bend.bulging, gathered, bend.bulging * limit / (1 - limit), 0};
    return std::nullopt;
}

/// Of the edges without a name the worst hollow and the worst bulging one stand for the others.
void add(std::vector<TooMuch>& all, TooMuch one) {
    const auto alike = std::find_if(all.begin(), all.end(), [&](const TooMuch& other) {
        return !one.named && !other.named && one.hollow == other.hollow;
    });
    if (alike == all.end()) {
        all.push_back(std::move(one));
        return;
    }
    one.more = alike->more + 1;
    if (one.asked > alike->asked)
        *alike = std::move(one);
    else
        ++alike->more;
}

void warn(const Panel& panel, const TooMuch& tuck, double limit, Faults& faults) {
    const std::string others =
        tuck.more == 0 ? "" : " and " + std::to_string(tuck.more) + " more like it";
    faults.push_back(
        {Severity::warning, panel.place, panel.name,
         "turning " + whole_mm(tuck.width) + " of film round " + tuck.where + others +
             (tuck.hollow ? " stretches it by " : " gathers it by ") +
             (std::isfinite(tuck.asked) ? in_percent(100 * tuck.asked) : "more than it can") +
             " (film: " + in_percent(100 * limit) + " on an edge); it is " +
             (tuck.hollow ? "hollow" : "bulging") + ", radius " + whole_mm(std::round(tuck.radius)),
         "a tuck of " + whole_mm(tuck.longest) +
             " holds; for a wider one cut the film in along the edge"});
}

std::string name_of(const BlankEdge& edge) {
    return "the edge " + (edge.name.empty() ? edge.number : "'" + edge.name + "'");
}

} // namespace

void check_tucks(const Panel& panel, const Blank& blank, const Work& work, const Film& film,
                 Faults& faults) {
    if (!film.stretch_edge_percent || !(*film.stretch_edge_percent > 0))
        return;
    constexpr double um = um_per_mm;
    const double limit = *film.stretch_edge_percent / 100;
    std::vector<TooMuch> all;
    std::vector<double> widths;
    for (const EdgeWork& edge : work.edges)
        widths.push_back(static_cast<double>(edge.move) / um);
    const std::vector<Bend> bends = Bends(blank.outline, widths).found();
    for (std::size_t i = 0; i < bends.size(); ++i)
        if (auto found = too_much(widths[i], bends[i], limit); found && !blank.edges[i].seam) {
            found->where = name_of(blank.edges[i]);
            found->named = !blank.edges[i].name.empty();
            add(all, std::move(*found));
        }
    for (std::size_t i = 0; i < blank.openings.size() && i < work.openings.size(); ++i) {
        const double width = static_cast<double>(work.openings[i].move) / um;
        if (work.openings[i].covered)
            continue;
        const Bend bend = Bends(blank.openings[i].ring, {width}).found().front();
        if (auto found = too_much(width, bend, limit)) {
            found->where = "the opening '" + blank.openings[i].name + "'";
            found->named = true;
            add(all, std::move(*found));
        }
    }
    for (const TooMuch& tuck : all)
        warn(panel, tuck, limit, faults);
}

void check_recesses(const Panel& panel, const Film& film, Faults& faults) {
    if (!film.stretch_panel_percent)
        return;
    for (const Recess& recess : panel.recesses) {
        const double asked = 200 * recess.depth_mm / std::min(recess.wide_mm, recess.high_mm);
        if (asked > *film.stretch_panel_percent)
            faults.push_back(
                {Severity::warning, recess.place, panel.name,
                 "film laid into the recess '" + recess.name + "' stretches by " +
                     in_percent(asked) + " (film: " + in_percent(*film.stretch_panel_percent) + ")",
                 "lay an inlay of " + whole_mm(recess.wide_mm) + " × " + whole_mm(recess.high_mm) +
                     " into it first: give it under "
                     "'inlays'"});
    }
}

} // namespace pelt::piece
