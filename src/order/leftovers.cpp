// SPDX-License-Identifier: MIT
#include "order/leftovers.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

bool overlap(const Box& a, const Box& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

/// The film of one used roll as its cuts divide it, up to the length used.
std::vector<Box> parts_of(const UsedRoll& used, const Roll& roll) {
    std::vector<Box> parts{{{0, 0}, {used.length, roll.width}}};
    for (const Cut& cut : used.cuts) {
        const bool across = cut.from.x == cut.to.x;
        const Um at = across ? cut.from.x : cut.from.y;
        const Um low = across ? std::min(cut.from.y, cut.to.y) : std::min(cut.from.x, cut.to.x);
        const auto part = std::find_if(parts.begin(), parts.end(), [&](const Box& box) {
            return across ? box.low.x < at && at < box.high.x && box.low.y == low
                          : box.low.y < at && at < box.high.y && box.low.x == low;
        });
        if (part == parts.end())
            continue; // it ends the used length
        Box rest = *part;
        (across ? rest.low.x : rest.low.y) = at;
        (across ? part->high.x : part->high.y) = at;
        parts.push_back(rest);
    }
    return parts;
}

std::vector<Box> pieces_on(const Job& job, const UsedRoll& used) {
    std::vector<Box> out;
    for (const Placement& p : used.placements) {
        const CutShape& shape = job.pieces[p.piece].shapes[p.shape];
        out.push_back(box_of(placed(shape.outline, p.turn, p.at).outer));
    }
    return out;
}

bool has_a_flaw(const Roll& roll, const Box& part) {
    return std::any_of(roll.flaws.begin(), roll.flaws.end(), [&](const Flaw& flaw) {
        return overlap(part, {{flaw.from, 0}, {flaw.to, roll.width}});
    });
}

} // namespace

std::vector<Box> offcuts_worth_keeping(const Job& job, const Layout& layout) {
    std::vector<Box> out;
    if (job.by != CutBy::straight || layout.rolls.empty())
        return out;
    const std::string& batch = job.rolls[layout.rolls.front().roll].batch;
    for (const UsedRoll& used : layout.rolls) {
        const Roll& roll = job.rolls[used.roll];
        if (roll.batch != batch || !roll.arrow_known)
            continue;
        const std::vector<Box> pieces = pieces_on(job, used);
        for (Box part : parts_of(used, roll)) {
            part.low.y = std::max(part.low.y, roll.trim);
            part.high.y = std::min(part.high.y, roll.width - roll.trim);
            const bool free = std::none_of(pieces.begin(), pieces.end(),
                                           [&](const Box& piece) { return overlap(part, piece); });
            if (free && part.along() >= job.film.worth_keeping.along &&
                part.across() >= job.film.worth_keeping.across && !has_a_flaw(roll, part))
                out.push_back(part);
        }
    }
    return out;
}

} // namespace pelt::order
