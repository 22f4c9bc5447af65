// SPDX-License-Identifier: MIT
#include "report/cut_steps.hpp"

#include "model/error.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

bool holds(const Box& outer, const Box& inner) {
    return outer.low.x <= inner.low.x && outer.low.y <= inner.low.y &&
           outer.high.x >= inner.high.x && outer.high.y >= inner.high.y;
}

bool same(const Box& a, const Box& b) {
    return a.low == b.low && a.high == b.high;
}

class CuttingTable {
public:
    CuttingTable(const UsedRoll& used, const Roll& roll, std::vector<std::pair<int, Box>> pieces)
        : length_(used.length), roll_(roll), pieces_(std::move(pieces)) {
        // What lies beyond the used length goes back on the shelf, however much it is.
        const Um beyond = used.length + 1;
        parts_.push_back({{0, 0}, {beyond, roll.width}});
    }

    CutStep make(const Cut& cut, int number) {
        const bool across = cut.from.x == cut.to.x;
        const auto part = std::find_if(parts_.begin(), parts_.end(), [&](const Box& box) {
            return across ? crosses(box.low.x, box.high.x, cut.from.x) &&
                                spans(box.low.y, box.high.y, cut.from.y, cut.to.y)
                          : crosses(box.low.y, box.high.y, cut.from.y) &&
                                spans_along(box, cut.from.x, cut.to.x);
        });
        if (part == parts_.end())
            throw ProgramError("a straight cut divides nothing");
        const Box whole = *part;
        Box low = whole;
        Box high = whole;
        (across ? low.high.x : low.high.y) = across ? cut.from.x : cut.from.y;
        (across ? high.low.x : high.low.y) = across ? cut.from.x : cut.from.y;
        *part = low;
        parts_.insert(part + 1, high);
        return step(number, across, whole, low, high);
    }

private:
    static bool crosses(Um low, Um high, Um at) { return low < at && at < high; }
    static bool spans(Um low, Um high, Um a, Um b) {
        return std::min(a, b) == low && std::max(a, b) == high;
    }
    // A slit along the whole roll ends where the used length ends.
    bool spans_along(const Box& box, Um a, Um b) const {
        return spans(box.low.x, std::min(box.high.x, length_), std::min(a, length_),
                     std::min(b, length_));
    }

    CutStep step(int number, bool across, const Box& whole, const Box& low, const Box& high) const {
        CutStep out;
        out.number = number;
        out.across = across;
        out.ruler = across ? low.along() : low.across();
        out.of = what_is(whole);
        if (!across)
            out.from = RulerFrom::near_edge;
        else
            out.from = whole.low.x == 0 ? RulerFrom::free_end : RulerFrom::cut_end;
        out.running = low.high.x;
        out.divides = numbers_in(whole);
        out.takes_off_the_roll = across && high.low.x >= length_;
        for (const Box& part : {low, high})
            look_at(part, out);
        return out;
    }

    CutStep::Divides what_is(const Box& whole) const {
        if (whole.high.x > length_)
            return CutStep::Divides::roll;
        const bool full = whole.low.y <= roll_.trim && whole.high.y >= roll_.width - roll_.trim;
        return full ? CutStep::Divides::strip : CutStep::Divides::part;
    }

    Box usable(const Box& part) const {
        return {{part.low.x, std::max(part.low.y, roll_.trim)},
                {std::min(part.high.x, length_), std::min(part.high.y, roll_.width - roll_.trim)}};
    }

    void look_at(const Box& part, CutStep& out) const {
        const std::vector<int> inside = numbers_in(part);
        for (const auto& [number, box] : pieces_)
            if (same(part, box))
                out.frees.push_back(number);
        if (!inside.empty() || part.low.x >= length_)
            return;
        const bool roll_edge = part.high.y <= roll_.trim || part.low.y >= roll_.width - roll_.trim;
        if (roll_edge)
            out.frees_roll_edge = true;
        else
            out.falls_away.push_back(
                {usable(part), {part.low, {std::min(part.high.x, length_), part.high.y}}});
    }

    std::vector<int> numbers_in(const Box& part) const {
        std::vector<int> numbers;
        for (const auto& [number, box] : pieces_)
            if (holds(part, box))
                numbers.push_back(number);
        return numbers;
    }

    Um length_;
    const Roll& roll_;
    std::vector<std::pair<int, Box>> pieces_;
    std::vector<Box> parts_;
};

} // namespace

std::vector<CutStep> cut_steps(const Plan& plan, const std::vector<PlacedPiece>& pieces,
                               std::size_t used_roll) {
    const UsedRoll& used = plan.layout().rolls.at(used_roll);
    std::vector<std::pair<int, Box>> own;
    for (const PlacedPiece& p : pieces)
        if (p.roll == used_roll)
            own.emplace_back(p.number, p.cut_box());
    CuttingTable table(used, plan.job().rolls.at(used.roll), std::move(own));
    std::vector<CutStep> steps;
    for (const Cut& cut : used.cuts)
        steps.push_back(table.make(cut, static_cast<int>(steps.size()) + 1));
    return steps;
}

} // namespace pelt::report
