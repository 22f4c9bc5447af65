// SPDX-License-Identifier: MIT
#include "piece/strips.hpp"

#include "geometry/geometry.hpp"
#include "piece/shapes.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace pelt::piece {
namespace {

constexpr std::size_t most_strips = 64;

enum class Axis { along, across };

/// The stretch to divide on one axis, measured from the side that lies on top of all others.
struct Stretch {
    Um film = 0;       ///< length of the film
    Um panel_from = 0; ///< where the panel begins and ends in it
    Um panel_to = 0;
    Um overlap = 0;
};

/// How wide each strip may be, finished.
using Limits = std::vector<Um>;

/// Distances of the seams from the top of the stretch, rising.
using Seams = std::vector<Um>;

/// The sum of the strips' widths: every strip but the first runs under the one before it.
Um needed(const Stretch& stretch, std::size_t count) {
    return stretch.film + static_cast<Um>(count - 1) * stretch.overlap;
}

Um sum(const Limits& limits) {
    return std::accumulate(limits.begin(), limits.end(), Um{0});
}

/// With margins as wanted, or the least ones; bleed only at the two outer sides.
Limits limits_for(std::size_t count, bool least, const Allowed& allowed, CutBy by) {
    if (by == CutBy::straight) {
        const WidestFilm widest = widest_straight(allowed);
        return Limits(count, least ? widest.most : widest.wanted);
    }
    Limits limits(count, allowed.usable);
    limits.front() -= allowed.bleed;
    limits.back() -= allowed.bleed;
    return limits;
}

/// The fewest strips that hold the film, as their limits: with the margins wanted if that number
/// allows. Empty: none does.
Limits fewest(const Stretch& stretch, const Allowed& allowed, CutBy by) {
    for (std::size_t count = 2; count <= most_strips; ++count) {
        const Limits most = limits_for(count, true, allowed, by);
        if (*std::min_element(most.begin(), most.end()) <= stretch.overlap)
            return {};
        if (sum(most) < needed(stretch, count))
            continue;
        Limits wanted = limits_for(count, false, allowed, by);
        return sum(wanted) >= needed(stretch, count) ? wanted : most;
    }
    return {};
}

Seams seams_of(const std::vector<Um>& widths, Um overlap) {
    Seams seams;
    Um reached = 0;
    for (std::size_t i = 0; i + 1 < widths.size(); ++i) {
        reached += widths[i] - (i > 0 ? overlap : 0);
        seams.push_back(reached);
    }
    return seams;
}

std::vector<Um> equal_widths(const Stretch& stretch, std::size_t count) {
    const auto n = static_cast<Um>(count);
    return std::vector<Um>(count, (needed(stretch, count) + n - 1) / n);
}

/// Every strip as wide as it may be but those at `narrow`, which share what is left.
std::vector<Um> wide_but(const std::vector<std::size_t>& narrow, const Stretch& stretch,
                         const Limits& limits) {
    std::vector<Um> widths = limits;
    Um left = needed(stretch, limits.size()) - sum(limits);
    for (const std::size_t i : narrow)
        left += limits[i];
    const Um share = std::max(left / static_cast<Um>(narrow.size()), trade::narrowest_strip);
    for (const std::size_t i : narrow)
        widths[i] = share;
    // What a narrow strip was given beyond its share, its neighbour gives up.
    const Um excess = sum(widths) - needed(stretch, limits.size());
    const std::size_t neighbour = narrow.front() == 0 ? 1 : narrow.front() - 1;
    widths[neighbour] -= std::max<Um>(excess, 0);
    return widths;
}

/// Whole millimetres from the panel's nearer edge, rounded up, down or to nearest.
Um rounded(Um seam, const Stretch& stretch, int way) {
    const bool from_top = seam - stretch.panel_from <= stretch.panel_to - seam;
    const Um edge = from_top ? stretch.panel_from : stretch.panel_to;
    const Um distance = seam - edge;
    const Um lower = distance >= 0 ? distance / um_per_mm * um_per_mm
                                   : -((-distance + um_per_mm - 1) / um_per_mm * um_per_mm);
    if (lower == distance)
        return seam;
    const bool up = way > 0 || (way == 0 && distance - lower >= um_per_mm / 2);
    return edge + lower + (up ? um_per_mm : 0);
}

bool holds(const Seams& seams, const Stretch& stretch, const Limits& limits) {
    Um from = 0;
    for (std::size_t i = 0; i < limits.size(); ++i) {
        const Um to = i < seams.size() ? seams[i] : stretch.film;
        if (to <= from || to - from + (i > 0 ? stretch.overlap : 0) > limits[i])
            return false;
        from = to;
    }
    return true;
}

std::vector<Seams> ways_of(const Stretch& stretch, const Limits& limits) {
    const std::size_t last = limits.size() - 1;
    const std::vector<std::pair<std::vector<Um>, int>> tried{
        {equal_widths(stretch, limits.size()), 0},
        {wide_but({0}, stretch, limits), 1},
        {wide_but({last}, stretch, limits), -1},
        {last > 1 ? wide_but({0, last}, stretch, limits) : equal_widths(stretch, limits.size()),
         0}};
    std::vector<Seams> out;
    for (const auto& [widths, way] : tried) {
        Seams seams = seams_of(widths, stretch.overlap);
        Seams whole = seams;
        for (Um& seam : whole)
            seam = rounded(seam, stretch, way);
        if (holds(whole, stretch, limits))
            seams = whole;
        const bool known = std::find(out.begin(), out.end(), seams) != out.end();
        if (!known && holds(seams, stretch, limits))
            out.push_back(seams);
    }
    return out;
}

/// Whether the top of the pile is at the high end of an axis of the piece frame.
bool top_is_high(Axis axis, Heading heading) {
    return axis == Axis::along || heading == Heading::right || heading == Heading::up;
}

Stretch stretch_on(Axis axis, const TooWide& job, Um overlap, bool high) {
    const bool x = axis == Axis::along;
    const Um film_low = x ? job.film.low.x : job.film.low.y;
    const Um film_high = x ? job.film.high.x : job.film.high.y;
    const Um panel_low = x ? job.panel.low.x : job.panel.low.y;
    const Um panel_high = x ? job.panel.high.x : job.panel.high.y;
    if (high)
        return {film_high - film_low, film_high - panel_high, film_high - panel_low, overlap};
    return {film_high - film_low, panel_low - film_low, panel_high - film_low, overlap};
}

/// The line across the stretch at a seam.
Divide line_at(Um seam, Axis axis, const TooWide& job, bool high) {
    const auto place = [&](Um low, Um top) { return high ? top - seam : low + seam; };
    Divide line{{}, true, ""};
    if (axis == Axis::along) {
        const Um x = place(job.film.low.x, job.film.high.x);
        line.points = {geometry::in_mm({x, job.panel.low.y}),
                       geometry::in_mm({x, job.panel.high.y})};
    } else {
        const Um y = place(job.film.low.y, job.film.high.y);
        line.points = {geometry::in_mm({job.panel.low.x, y}),
                       geometry::in_mm({job.panel.high.x, y})};
    }
    return line;
}

struct OnAxis {
    std::size_t seams = 0;
    std::vector<std::vector<Divide>> ways;
};

OnAxis ways_on(Axis axis, const TooWide& job, const Allowed& allowed, CutBy by, Heading heading) {
    const bool high = top_is_high(axis, heading);
    const Stretch stretch = stretch_on(axis, job, allowed.overlap, high);
    const Limits limits = fewest(stretch, allowed, by);
    OnAxis out;
    if (limits.empty())
        return out;
    out.seams = limits.size() - 1;
    for (const Seams& seams : ways_of(stretch, limits)) {
        std::vector<Divide>& lines = out.ways.emplace_back();
        for (const Um seam : seams)
            lines.push_back(line_at(seam, axis, job, high));
    }
    return out;
}

} // namespace

std::vector<std::vector<Divide>> strips(const TooWide& job, const Allowed& allowed, CutBy by,
                                        Heading heading) {
    OnAxis best = ways_on(Axis::across, job, allowed, by, heading);
    if (allowed.direction != Direction::any)
        return best.ways;
    OnAxis other = ways_on(Axis::along, job, allowed, by, heading);
    if (best.ways.empty() || (!other.ways.empty() && other.seams < best.seams))
        return other.ways;
    if (other.seams == best.seams)
        best.ways.insert(best.ways.end(), other.ways.begin(), other.ways.end());
    return best.ways;
}

} // namespace pelt::piece
