// SPDX-License-Identifier: MIT
#include "verify/verify.hpp"

#include <set>

namespace pelt::verify {

class Seal {
public:
    static Plan on(std::shared_ptr<const Job> job, Layout layout) {
        return Plan(std::move(job), std::move(layout));
    }
};

Verdict verify(std::shared_ptr<const Job> job, Layout layout) {
    Verdict verdict;
    std::set<PieceId> seen;
    for (const UsedRoll& used : layout.rolls) {
        const Roll& roll = job->rolls[used.roll];
        for (const Placement& p : used.placements) {
            const Piece& piece = job->pieces[p.piece];
            const Box box = box_of(placed(piece.shapes[p.shape].outline.outer, p.turn, p.at));
            if (!seen.insert(piece.ids[p.copy]).second)
                verdict.faults.push_back("a piece lies on the rolls twice");
            if (box.low.x < 0 || box.high.x > used.length || box.low.y < roll.trim ||
                box.high.y > roll.width - roll.trim)
                verdict.faults.push_back("a piece lies outside the film");
        }
    }
    for (std::size_t v = 0; v < job->vehicles.size(); ++v)
        for (std::size_t p = 0; p < job->vehicles[v].panels.size(); ++p)
            for (const Side side : sides_of(job->vehicles[v].panels[p].sides))
                if (seen.count({static_cast<int>(v), static_cast<int>(p), side, 1, 1, 1,
                                PieceKind::main, ""}) == 0)
                    verdict.faults.push_back("panel '" + job->vehicles[v].panels[p].name +
                                             "' is missing");
    if (verdict.faults.empty())
        verdict.plan = Seal::on(std::move(job), std::move(layout));
    return verdict;
}

} // namespace pelt::verify
