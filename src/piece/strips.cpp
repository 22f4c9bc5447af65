// SPDX-License-Identifier: MIT
#include "piece/strips.hpp"

#include "trade/rolls.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace pelt::piece {
namespace {

Um sum(const Limits& limits) {
    return std::accumulate(limits.begin(), limits.end(), Um{0});
}

std::vector<Um> equal_widths(const Stretch& stretch, std::size_t count) {
    const auto n = static_cast<Um>(count);
    return std::vector<Um>(count, (stretch.needed(count) + n - 1) / n);
}

/// Every strip as wide as it may be but those at `narrow`, which share what is left.
std::vector<Um> wide_but(const std::vector<std::size_t>& narrow, const Stretch& stretch,
                         const Limits& limits) {
    std::vector<Um> widths = limits;
    Um left = stretch.needed(limits.size()) - sum(limits);
    for (const std::size_t i : narrow)
        left += limits[i];
    const Um share = std::max(left / static_cast<Um>(narrow.size()), trade::narrowest_strip);
    for (const std::size_t i : narrow)
        widths[i] = share;
    // What a narrow strip was given beyond its share, its neighbour gives up.
    const Um excess = sum(widths) - stretch.needed(limits.size());
    const std::size_t neighbour = narrow.front() == 0 ? 1 : narrow.front() - 1;
    widths[neighbour] -= std::max<Um>(excess, 0);
    return widths;
}

std::vector<SeamsAt> ways_of(const Stretch& stretch, const Limits& limits) {
    const std::size_t last = limits.size() - 1;
    const std::vector<std::pair<std::vector<Um>, Rounded>> tried{
        {equal_widths(stretch, limits.size()), Rounded::nearest},
        {wide_but({0}, stretch, limits), Rounded::up},
        {wide_but({last}, stretch, limits), Rounded::down},
        {last > 1 ? wide_but({0, last}, stretch, limits) : equal_widths(stretch, limits.size()),
         Rounded::nearest}};
    std::vector<SeamsAt> out;
    for (const auto& [widths, way] : tried) {
        SeamsAt seams = stretch.seams(widths);
        SeamsAt whole = seams;
        for (Um& seam : whole)
            seam = stretch.rounded(seam, way);
        if (stretch.holds(whole, limits))
            seams = whole;
        const bool known = std::find(out.begin(), out.end(), seams) != out.end();
        if (!known && stretch.holds(seams, limits))
            out.push_back(seams);
    }
    return out;
}

struct OnAxis {
    std::size_t seams = 0;
    std::vector<std::vector<Divide>> ways;
};

OnAxis ways_on(std::size_t axis, const TooWide& job, const Stand& stand, const Allowed& allowed,
               CutBy by) {
    const Stretch stretch(axis, job, stand, allowed.overlap);
    const std::size_t strips = fewest_strips(stretch, allowed, by);
    OnAxis out;
    if (strips == 0)
        return out;
    out.seams = strips - 1;
    for (const SeamsAt& seams : ways_of(stretch, limits_that_hold(stretch, strips, allowed, by))) {
        std::vector<Divide>& lines = out.ways.emplace_back();
        for (const Um seam : seams)
            lines.push_back(stretch.line_at(seam));
    }
    return out;
}

} // namespace

std::vector<std::vector<Divide>> strips(const TooWide& job, const Stand& stand,
                                        const Allowed& allowed, CutBy by) {
    OnAxis best = ways_on(y_axis, job, stand, allowed, by);
    if (allowed.direction != Direction::any)
        return best.ways;
    OnAxis other = ways_on(x_axis, job, stand, allowed, by);
    if (best.ways.empty() || (!other.ways.empty() && other.seams < best.seams))
        return other.ways;
    if (other.seams == best.seams)
        best.ways.insert(best.ways.end(), other.ways.begin(), other.ways.end());
    return best.ways;
}

} // namespace pelt::piece
