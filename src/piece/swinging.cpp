// SPDX-License-Identifier: MIT
#include "piece/swinging.hpp"

#include "develop/develop.hpp"
#include "geometry/geometry.hpp"
#include "piece/allowed.hpp"
#include "piece/edge_work.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pelt::piece {
namespace {

/// The readings of one point of an outline, or of one station.
using Readings = std::vector<double*>;

std::vector<Readings> readings_by_place(Panel& panel) {
    std::vector<Readings> out;
    if (auto* outline = std::get_if<OutlineForm>(&panel.form); outline && !outline->from_size)
        for (OutlineSegment& segment : outline->segments) {
            Readings& here = out.emplace_back(Readings{&segment.to.x, &segment.to.y});
            if (segment.through)
                here.insert(here.end(), {&segment.through->x, &segment.through->y});
        }
    if (auto* girths = std::get_if<GirthsForm>(&panel.form))
        for (GirthStation& station : girths->stations)
            out.push_back({&station.at_mm, &station.up_mm, &station.down_mm});
    return out;
}

double distance_to_ring(Point p, const Ring& ring) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = geometry::in_mm(ring[i]);
        const Point b = geometry::in_mm(ring[(i + 1) % ring.size()]);
        const Point way{b.x - a.x, b.y - a.y};
        const double share =
            ((p.x - a.x) * way.x + (p.y - a.y) * way.y) / (way.x * way.x + way.y * way.y);
        const double at = std::clamp(share, 0.0, 1.0);
        least = std::min(least, std::hypot(p.x - a.x - at * way.x, p.y - a.y - at * way.y));
    }
    return least;
}

double distance_outside(Point p, const std::vector<Polygon>& film) {
    double least = std::numeric_limits<double>::infinity();
    for (const Polygon& part : film) {
        if (holds({part.outer, {}}, geometry::on_grid(p)))
            return 0;
        least = std::min(least, distance_to_ring(p, part.outer));
    }
    return least;
}

/// The points of the film at the corners between two edges, or between straight sides.
std::vector<Point> corners_of(const TuckedOutline& drawn) {
    const std::vector<geometry::RingSide> sides = geometry::sides_of(drawn.outline);
    std::vector<Point> out;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const geometry::RingSide& before = sides[(i + sides.size() - 1) % sides.size()];
        const geometry::RingSide& after = sides[i];
        if (drawn.outline.edge[before.index] == drawn.outline.edge[after.index])
            continue;
        const std::vector<Point> corner =
            geometry::grown_corner(after.from, {before.ends, drawn.moves[before.index]},
                                   {after.begins, drawn.moves[after.index]});
        out.insert(out.end(), corner.begin(), corner.end());
    }
    return out;
}

class Swinging {
public:
    Swinging(Panel& panel, const Film& film, const Wishes& wishes, double error)
        : panel_(panel), film_(film), wishes_(wishes), error_(error),
          places_(readings_by_place(panel)) {
        if (const auto drawn = tucked_outline(panel_, film_, wishes_))
            as_read_ = geometry::grown(drawn->outline, drawn->moves);
    }

    double farthest() {
        double most = 0;
        for (std::size_t i = 0; i < places_.size() && !as_read_.empty(); ++i)
            most = std::max(most, farthest_around(i));
        return most;
    }

private:
    double outside() const {
        const auto drawn = tucked_outline(panel_, film_, wishes_);
        double most = 0;
        if (drawn)
            for (const Point& p : corners_of(*drawn))
                most = std::max(most, distance_outside(p, as_read_));
        return most;
    }

    /// Each reading in turn as far off as can be, whichever way the corners swing farther.
    double farthest_around(std::size_t place) {
        Readings near;
        for (const std::size_t step : {places_.size() - 1, std::size_t{0}, std::size_t{1}}) {
            const Readings& there = places_[(place + step) % places_.size()];
            near.insert(near.end(), there.begin(), there.end());
        }
        std::vector<double> as_read;
        for (const double* reading : near)
            as_read.push_back(*reading);
        double most = 0;
        constexpr int rounds = 2;
        for (int round = 0; round < rounds; ++round)
            for (std::size_t i = 0; i < near.size(); ++i)
                most = worse(*near[i], as_read[i], most);
        for (std::size_t i = 0; i < near.size(); ++i)
            *near[i] = as_read[i];
        return most;
    }

    double worse(double& reading, double as_read, double most) const {
        double worst = reading;
        for (const double off : {error_, -error_}) {
            reading = as_read + off;
            if (const double now = outside(); now > most) {
                most = now;
                worst = reading;
            }
        }
        reading = worst;
        return most;
    }

    Panel& panel_;
    const Film& film_;
    const Wishes& wishes_;
    double error_;
    std::vector<Readings> places_; ///< of panel_
    std::vector<Polygon> as_read_;
};

} // namespace

std::optional<TuckedOutline> tucked_outline(const Panel& panel, const Film& film,
                                            const Wishes& wishes) {
    Faults faults;
    const DevelopedPanel developed = develop::develop(panel, faults);
    if (stops(faults) || developed.blanks.empty())
        return std::nullopt;
    const Blank& blank = developed.blanks.front();
    const Work work = work_on(panel, blank, allowed_for(panel, film), wishes.left_on);
    TuckedOutline out{blank.outline, {}};
    for (const int edge : blank.outline.edge)
        out.moves.push_back(static_cast<double>(work.edges[static_cast<std::size_t>(edge)].move) /
                            um_per_mm);
    return out;
}

double corners_outside(Panel panel, const Film& film, const Wishes& wishes, double error_mm) {
    panel.openings.clear();
    panel.inlays.clear();
    panel.recesses.clear();
    panel.seam_lines.clear();
    return Swinging(panel, film, wishes, error_mm).farthest();
}

} // namespace pelt::piece
