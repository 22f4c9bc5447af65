// SPDX-License-Identifier: MIT
#include "piece/fitter.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace pelt::piece {
namespace {

/// Between its ends no seam may run.
struct Barred {
    Um from = 0;
    Um to = 0;
};

bool is_barred(Um seam, const std::vector<Barred>& barred) {
    return std::any_of(barred.begin(), barred.end(),
                       [&](const Barred& b) { return b.from < seam && seam < b.to; });
}

/// Of the places from `low` to `high` that are not barred the nearest to what is wished, in whole
/// millimetres where that can be.
std::optional<Um> nearest(Um wished, Um low, Um high, const Stretch& stretch,
                          const std::vector<Barred>& barred) {
    const auto may_be = [&](Um seam) {
        return low <= seam && seam <= high && !is_barred(seam, barred);
    };
    std::vector<std::pair<Um, Rounded>> places{{wished, Rounded::nearest},
                                               {low, Rounded::up},
                                               {high, Rounded::down}};
    for (const Barred& b : barred) {
        places.emplace_back(b.from, Rounded::down);
        places.emplace_back(b.to, Rounded::up);
    }
    std::optional<Um> best;
    for (const auto& [place, way] : places) {
        const Um whole = stretch.rounded(place, way);
        const Um seam = may_be(whole) ? whole : place;
        if (may_be(seam) && (!best || std::abs(seam - wished) < std::abs(*best - wished)))
            best = seam;
    }
    return best;
}

/// Seams on one axis of a cell.
class Axis {
public:
    Axis(std::size_t axis, const TooWide& cell, const PanelJob& job)
        : job_(job), is_level_(axis == job.stand.level),
          stretch_(axis, cell, job.stand, job.allowed.overlap) {
        for (const Box& zone : job.keep_clear) {
            const Um a = stretch_.from_frame(axis == x_axis ? zone.low.x : zone.low.y);
            const Um b = stretch_.from_frame(axis == x_axis ? zone.high.x : zone.high.y);
            if (lies_beside(zone, cell.film, axis))
                barred_.push_back({std::min(a, b) - clear_of_zones, std::max(a, b) + clear_of_zones});
        }
    }

    bool is_level() const { return is_level_; }

    std::size_t fewest() const { return fewest_strips(stretch_, job_.placing, job_.by); }

    /// With so many strips, none narrower than `least`.
    std::optional<std::vector<Divide>> lines(std::size_t strips, Um least) const {
        const Limits limits = limits_that_hold(stretch_, strips, job_.placing, job_.by);
        if (limits.empty())
            return std::nullopt;
        SeamsAt seams;
        for (std::size_t i = 0; i + 1 < strips; ++i) {
            const auto [low, high] = range(seams, limits, least);
            const auto seam = low > high ? std::nullopt
                                         : nearest(wished(i, strips, high), low, high, stretch_,
                                                   barred_);
            if (!seam)
                return std::nullopt;
            seams.push_back(*seam);
        }
        const std::vector<Um> widths = stretch_.widths(seams);
        const bool wide_enough = *std::min_element(widths.begin(), widths.end()) >= least;
        return wide_enough && stretch_.holds(seams, limits) ? std::optional(drawn(seams))
                                                            : std::nullopt;
    }

    /// Two halves, to the micrometre.
    std::optional<std::vector<Divide>> halves() const {
        const Limits limits = limits_that_hold(stretch_, 2, job_.placing, job_.by);
        const SeamsAt seams{stretch_.middle()};
        if (limits.empty() || is_barred(seams.front(), barred_) || !stretch_.holds(seams, limits))
            return std::nullopt;
        return drawn(seams);
    }

private:
    /// A seam runs from edge to edge of the cell: it meets every zone that lies beside it.
    static bool lies_beside(const Box& zone, const Box& film, std::size_t axis) {
        return axis == x_axis ? zone.low.y < film.high.y && film.low.y < zone.high.y
                              : zone.low.x < film.high.x && film.low.x < zone.high.x;
    }

    Um wished(std::size_t seam, std::size_t strips, Um high) const {
        if (is_level_)
            return high;
        const auto n = static_cast<Um>(strips);
        const auto k = static_cast<Um>(seam) + 1;
        return stretch_.panel_from() + (stretch_.panel_to() - stretch_.panel_from()) * k / n;
    }

    /// Where the next seam may be, for its own strip and those behind it.
    std::pair<Um, Um> range(const SeamsAt& seams, const Limits& limits, Um least) const {
        const std::size_t i = seams.size();
        const Um lap = stretch_.overlap();
        const Um from = seams.empty() ? 0
                                      : seams.back() -
                                            (stretch_.first_is_over(seams.back()) ? lap : 0);
        const Um widest = from + limits[i];
        const Um high = stretch_.first_is_over(widest) ? widest : widest - lap;
        Um behind = 0;
        Um least_behind = 0;
        for (std::size_t k = i + 1; k < limits.size(); ++k) {
            behind += limits[k] - (k > i + 1 ? lap : 0);
            least_behind += least - (k > i + 1 ? lap : 0);
        }
        const auto lap_behind = [&](Um seam) { return stretch_.first_is_over(seam) ? lap : 0; };
        const Um low = stretch_.film() - behind;
        const Um highest = stretch_.film() - least_behind;
        return {std::max(from + least - lap + lap_behind(from + least), low + lap_behind(low)),
                std::min(high, highest + lap_behind(highest))};
    }

    std::vector<Divide> drawn(const SeamsAt& seams) const {
        std::vector<Divide> out;
        for (const Um seam : seams)
            out.push_back(stretch_.line_at(seam));
        return out;
    }

    const PanelJob& job_;
    bool is_level_;
    Stretch stretch_;
    std::vector<Barred> barred_;
};

/// Whether a panel is the same on both sides of its middle, openings set aside.
bool is_symmetric(const Ring& outline, std::size_t axis) {
    constexpr double nearly = 1 * um_per_mm;
    const Box box = box_of(outline);
    const auto away = [](GridPoint p, GridPoint a, GridPoint b) {
        const auto dx = static_cast<double>(b.x - a.x);
        const auto dy = static_cast<double>(b.y - a.y);
        const auto px = static_cast<double>(p.x - a.x);
        const auto py = static_cast<double>(p.y - a.y);
        const double length = dx * dx + dy * dy;
        const double at = length > 0 ? std::clamp((px * dx + py * dy) / length, 0.0, 1.0) : 0;
        return std::hypot(px - at * dx, py - at * dy);
    };
    return std::all_of(outline.begin(), outline.end(), [&](const GridPoint& p) {
        const GridPoint twin = axis == x_axis ? GridPoint{box.low.x + box.high.x - p.x, p.y}
                                              : GridPoint{p.x, box.low.y + box.high.y - p.y};
        for (std::size_t i = 0; i < outline.size(); ++i)
            if (away(twin, outline[i], outline[(i + 1) % outline.size()]) <= nearly)
                return true;
        return false;
    });
}

/// The axes that can be divided so that the film's width takes the strips: level lines first.
std::vector<Axis> axes_of(const TooWide& cell, const PanelJob& job) {
    std::vector<Axis> out;
    for (const std::size_t axis : {job.stand.level, 1 - job.stand.level})
        if (axis == y_axis || job.allowed.direction == Direction::any)
            if (Axis made(axis, cell, job); made.fewest() > 0)
                out.push_back(std::move(made));
    return out;
}

} // namespace

std::vector<std::vector<Divide>> fitters_places(const TooWide& cell, const PanelJob& job) {
    constexpr std::size_t more_tried = 2;
    const std::vector<Axis> axes = axes_of(cell, job);
    std::size_t fewest = std::numeric_limits<std::size_t>::max();
    for (const Axis& axis : axes)
        fewest = std::min(fewest, axis.fewest());
    const Box box = job.outline_box();
    const bool whole = cell.panel.low == box.low && cell.panel.high == box.high;
    std::vector<std::vector<Divide>> out;
    const auto add = [&](std::optional<std::vector<Divide>> lines) {
        if (lines)
            out.push_back(*std::move(lines));
    };
    if (axes.empty())
        return out;
    // Beside the lap something of the panel must be left.
    const Um narrowest = job.allowed.overlap + 10 * um_per_mm;
    for (const Um least : {std::max(job.least_piece, narrowest), narrowest})
        for (std::size_t strips = fewest; strips <= fewest + more_tried; ++strips) {
            if (strips == 2 && whole && job.stand.faces_end &&
                is_symmetric(job.outline.outer, 1 - job.stand.level))
                for (const Axis& axis : axes)
                    if (!axis.is_level())
                        add(axis.halves());
            for (const Axis& axis : axes)
                if (strips >= axis.fewest())
                    add(axis.lines(strips, least));
        }
    return out;
}

} // namespace pelt::piece
