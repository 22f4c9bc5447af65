// SPDX-License-Identifier: MIT
#include "piece/stretch.hpp"

#include "geometry/geometry.hpp"
#include "piece/shapes.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pelt::piece {
namespace {

constexpr std::size_t most_strips = 64;

Um low_of(const Box& box, std::size_t axis) {
    return axis == x_axis ? box.low.x : box.low.y;
}

Um high_of(const Box& box, std::size_t axis) {
    return axis == x_axis ? box.high.x : box.high.y;
}

Um sum(const Limits& limits) {
    return std::accumulate(limits.begin(), limits.end(), Um{0});
}

} // namespace

Stretch::Stretch(std::size_t axis, const TooWide& job, const Stand& stand, Um overlap)
    : axis_(axis), panel_(job.panel), high_(stand.axes.at(axis).first > 0),
      over_(stand.axes.at(axis).over * stand.axes.at(axis).first),
      end_(high_ ? high_of(job.film, axis) : low_of(job.film, axis)),
      film_(high_of(job.film, axis) - low_of(job.film, axis)),
      panel_from_(from_frame(high_ ? high_of(job.panel, axis) : low_of(job.panel, axis))),
      panel_to_(from_frame(high_ ? low_of(job.panel, axis) : high_of(job.panel, axis))),
      overlap_(overlap) {}

Um Stretch::needed(std::size_t strips) const {
    return film_ + static_cast<Um>(strips - 1) * overlap_;
}

bool Stretch::first_is_over(Um seam) const {
    StandOnAxis axis;
    axis.over = -over_; // seen from the other end: distances rise where the axis falls
    axis.first = -1;
    const auto mm = [](Um um) { return static_cast<double>(um) / um_per_mm; };
    const double middle = (mm(panel_from_) + mm(panel_to_)) / 2;
    return end_on_top(axis, mm(seam), middle) < 0;
}

std::vector<Um> Stretch::widths(const SeamsAt& seams) const {
    std::vector<Um> out;
    Um from = 0;
    for (const Um seam : seams) {
        const bool over = first_is_over(seam);
        out.push_back(seam + (over ? 0 : overlap_) - from);
        from = seam - (over ? overlap_ : 0);
    }
    out.push_back(film_ - from);
    return out;
}

SeamsAt Stretch::seams(const std::vector<Um>& widths) const {
    SeamsAt out;
    Um from = 0;
    for (std::size_t i = 0; i + 1 < widths.size(); ++i) {
        const bool over = first_is_over(from + widths[i]);
        out.push_back(from + widths[i] - (over ? 0 : overlap_));
        from = out.back() - (over ? overlap_ : 0);
    }
    return out;
}

bool Stretch::holds(const SeamsAt& seams, const Limits& limits) const {
    Um before = 0;
    for (const Um seam : seams) {
        if (seam <= before || seam >= film_)
            return false;
        before = seam;
    }
    const std::vector<Um> all = widths(seams);
    return std::equal(all.begin(), all.end(), limits.begin(), limits.end(),
                      [](Um width, Um limit) { return width <= limit; });
}

Um Stretch::rounded(Um seam, Rounded way) const {
    const bool from_first = seam - panel_from_ <= panel_to_ - seam;
    const Um edge = from_first ? panel_from_ : panel_to_;
    const Um distance = seam - edge;
    const Um lower = distance >= 0 ? distance / um_per_mm * um_per_mm
                                   : -((-distance + um_per_mm - 1) / um_per_mm * um_per_mm);
    if (lower == distance)
        return seam;
    const bool up = way == Rounded::up ||
                    (way == Rounded::nearest && distance - lower >= um_per_mm / 2);
    return edge + lower + (up ? um_per_mm : 0);
}

Divide Stretch::line_at(Um seam) const {
    const Um at = high_ ? end_ - seam : end_ + seam;
    Divide line{{}, true, ""};
    if (axis_ == x_axis)
        line.points = {geometry::in_mm({at, panel_.low.y}), geometry::in_mm({at, panel_.high.y})};
    else
        line.points = {geometry::in_mm({panel_.low.x, at}), geometry::in_mm({panel_.high.x, at})};
    return line;
}

Limits limits_for(std::size_t strips, bool least, const Allowed& allowed, CutBy by) {
    if (by == CutBy::straight) {
        const WidestFilm widest = widest_straight(allowed);
        return Limits(strips, least ? widest.most : widest.wanted);
    }
    Limits limits(strips, allowed.usable);
    limits.front() -= allowed.bleed;
    limits.back() -= allowed.bleed;
    return limits;
}

Limits limits_that_hold(const Stretch& stretch, std::size_t strips, const Allowed& allowed,
                        CutBy by) {
    for (const bool least : {false, true}) {
        Limits limits = limits_for(strips, least, allowed, by);
        if (*std::min_element(limits.begin(), limits.end()) > stretch.overlap() &&
            sum(limits) >= stretch.needed(strips))
            return limits;
    }
    return {};
}

std::size_t fewest_strips(const Stretch& stretch, const Allowed& allowed, CutBy by) {
    for (std::size_t strips = 2; strips <= most_strips; ++strips) {
        const Limits most = limits_for(strips, true, allowed, by);
        if (*std::min_element(most.begin(), most.end()) <= stretch.overlap())
            return 0;
        if (sum(most) >= stretch.needed(strips))
            return strips;
    }
    return 0;
}

} // namespace pelt::piece
