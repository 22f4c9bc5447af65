// SPDX-License-Identifier: MIT
#include "report/paper/strips.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace pelt::report::paper {
namespace {

constexpr Um longest_stretch = 2'000 * um_per_mm;

std::vector<Strip> straight_strips(const Plan& plan, const std::vector<PlacedPiece>& pieces,
                                   std::size_t roll) {
    std::vector<Strip> strips;
    Um end = 0;
    std::vector<CutStep> before; // slits along the whole roll, before any cut across it
    for (const CutStep& step : cut_steps(plan, pieces, roll)) {
        if (step.across && step.of == CutStep::Divides::roll) {
            strips.push_back({roll, end, step.running, std::move(before)});
            before.clear();
            end = step.running;
        }
        (strips.empty() ? before : strips.back().steps).push_back(step);
    }
    const Um length = plan.layout().rolls.at(roll).length;
    if (end < length)
        strips.push_back({roll, end, length, std::move(before)});
    return strips;
}

/// How many pieces a border at `x` would divide.
int divided(const std::vector<const PlacedPiece*>& pieces, Um x) {
    return static_cast<int>(std::count_if(pieces.begin(), pieces.end(), [&](const PlacedPiece* p) {
        const Box box = p->cut_box();
        return box.low.x < x && x < box.high.x;
    }));
}

Um next_border(const std::vector<const PlacedPiece*>& pieces, Um from, Um length) {
    if (length - from <= longest_stretch)
        return length;
    std::set<Um> candidates{from + longest_stretch};
    for (const PlacedPiece* p : pieces)
        for (const Um x : {p->cut_box().low.x, p->cut_box().high.x})
            if (x > from + longest_stretch / 2 && x <= from + longest_stretch)
                candidates.insert(x);
    return *std::min_element(candidates.begin(), candidates.end(), [&](Um a, Um b) {
        return std::tuple(divided(pieces, a), -a) < std::tuple(divided(pieces, b), -b);
    });
}

std::vector<Strip> contour_strips(const Plan& plan, const std::vector<PlacedPiece>& pieces,
                                  std::size_t roll) {
    std::vector<const PlacedPiece*> own;
    for (const PlacedPiece& p : pieces)
        if (p.roll == roll)
            own.push_back(&p);
    const Um length = plan.layout().rolls.at(roll).length;
    std::vector<Strip> strips;
    for (Um from = 0; from < length;) {
        const Um to = next_border(own, from, length);
        strips.push_back({roll, from, to, {}});
        from = to;
    }
    return strips;
}

} // namespace

std::vector<Strip> strips_of(const Plan& plan, const std::vector<PlacedPiece>& pieces) {
    std::vector<Strip> all;
    for (std::size_t roll = 0; roll < plan.layout().rolls.size(); ++roll) {
        const std::vector<Strip> some = plan.job().by == CutBy::straight
                                            ? straight_strips(plan, pieces, roll)
                                            : contour_strips(plan, pieces, roll);
        all.insert(all.end(), some.begin(), some.end());
    }
    return all;
}

std::vector<Strip> rows_within(const std::vector<Strip>& strips, Um longest) {
    std::vector<Strip> rows;
    for (const Strip& strip : strips)
        if (!rows.empty() && rows.back().roll == strip.roll &&
            strip.to - rows.back().from <= longest)
            rows.back().to = strip.to;
        else
            rows.push_back({strip.roll, strip.from, strip.to, {}});
    return rows;
}

Strip joined(const std::vector<Strip>& strips, StripRun run) {
    Strip whole = strips.at(run.first);
    for (std::size_t i = run.first + 1; i < run.end; ++i) {
        whole.to = strips.at(i).to;
        whole.steps.insert(whole.steps.end(), strips[i].steps.begin(), strips[i].steps.end());
    }
    return whole;
}

Um row_length(const std::vector<Strip>& strips, std::size_t rows) {
    std::set<Um> lengths;
    Um longest_strip = 0;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        longest_strip = std::max(longest_strip, strips[i].to - strips[i].from);
        for (std::size_t k = i; k < strips.size() && strips[k].roll == strips[i].roll; ++k)
            lengths.insert(strips[k].to - strips[i].from);
    }
    for (const Um longest : lengths)
        if (longest >= longest_strip && rows_within(strips, longest).size() <= rows)
            return longest;
    return lengths.empty() ? 0 : *lengths.rbegin();
}

} // namespace pelt::report::paper
