// SPDX-License-Identifier: MIT
#include "order/order.hpp"

#include "develop/develop.hpp"
#include "model/error.hpp"
#include "piece/piece.hpp"
#include "verify/verify.hpp"

namespace pelt::order {

Order buy(const Plan& plan) {
    Order order;
    order.currency = plan.job().film.currency;
    for (const UsedRoll& used : plan.layout().rolls)
        order.lines.push_back({Length::from_um(used.length), 1, std::nullopt, ""});
    return order;
}

Outcome run(Request request) {
    Outcome out;
    auto job = std::make_shared<Job>();
    job->film = request.film;
    job->by = request.by;
    job->times = request.times;
    job->vehicles = std::move(request.vehicles);
    for (std::size_t v = 0; v < job->vehicles.size(); ++v) {
        job->developed.emplace_back();
        for (std::size_t p = 0; p < job->vehicles[v].panels.size(); ++p) {
            const Panel& panel = job->vehicles[v].panels[p];
            job->developed.back().push_back(develop::develop(panel, out.faults));
            if (stops(out.faults))
                return out;
            auto ways = piece::ways_to_cut(panel, job->developed.back().back(), job->film,
                                           {request.by, request.times, {}, true},
                                           static_cast<int>(v), static_cast<int>(p), out.faults);
            if (ways.empty())
                return out;
            for (Piece& piece : ways.front().pieces)
                job->pieces.push_back(std::move(piece));
        }
    }
    if (stops(out.faults))
        return out;
    job->rolls.push_back(
        {"new 1", true, "", job->film.width, job->film.trim, std::nullopt, true, {}});
    const nest::Goal goal{request.by, job->film.allowances.gap, job->film.allowances.ruler, 3, {}};
    nest::Result result = nest::nest(job->pieces, job->rolls, goal, request.effort, request.watch);
    if (!result.layout)
        throw ProgramError("no layout for pieces that fit the roll");
    verify::Verdict verdict = verify::verify(job, std::move(*result.layout));
    if (!verdict.plan)
        throw ProgramError("the layout failed its check: " + verdict.faults.front());
    out.order = buy(*verdict.plan);
    out.plan = std::move(verdict.plan);
    return out;
}

} // namespace pelt::order
