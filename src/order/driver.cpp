// SPDX-License-Identifier: MIT
#include "model/error.hpp"
#include "model/limits.hpp"
#include "model/marked_length.hpp"
#include "order/binding.hpp"
#include "order/buying.hpp"
#include "order/canonical.hpp"
#include "order/develop_all.hpp"
#include "order/fill.hpp"
#include "order/idle_options.hpp"
#include "order/job_of.hpp"
#include "order/look_on.hpp"
#include "order/order.hpp"
#include "order/parts_off.hpp"
#include "order/seams_weighed.hpp"
#include "order/selection.hpp"
#include "order/settle.hpp"
#include "order/shelf.hpp"
#include "order/spare.hpp"
#include "order/ways.hpp"
#include "piece/piece.hpp"
#include "verify/verify.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <span>

namespace pelt::order {
namespace {

bool all_new(const Job& job, const Layout& layout) {
    return std::all_of(layout.rolls.begin(), layout.rolls.end(),
                       [&](const UsedRoll& used) { return job.rolls[used.roll].is_new; });
}

std::optional<Um> new_length_without_rules(Job job, const Request& request) {
    nest::Effort effort = request.effort;
    effort.trial = effort.amount == 1;
    const nest::Result result =
        fill(job, effort, while_doing("weighing what the rules cost", request.watch));
    if (!result.layout)
        return std::nullopt;
    return nest::new_length(*result.layout, job.rolls);
}

/// Looks for layouts without one rule at a time, the others kept.
RulesCost weigh_the_rules(const Job& job, const Layout& layout, const Request& request) {
    RulesCost cost;
    if (!request.weigh_the_rules || job.by != CutBy::straight)
        return cost;
    const Um length = nest::new_length(layout, job.rolls);
    if (length <= layout.bound.length)
        return {length, length};
    if (job.stages) {
        Job freer = job;
        freer.stages = std::nullopt;
        cost.any_turns = new_length_without_rules(std::move(freer), request);
    }
    if (job.in_order) {
        Job freer = job;
        freer.in_order = false;
        cost.any_order = new_length_without_rules(std::move(freer), request);
    }
    return cost;
}

std::string size_of(const Piece& piece) {
    const Box box = box_of(piece.shapes.front().outline.outer);
    return marked(box.along(), Told::up) + " along × " + marked(box.across(), Told::up) + " across";
}

/// Pieces that no roll takes although they are narrow enough: they are longer than a roll.
void tell_misfits(const Job& job, const std::vector<std::size_t>& misfits, Faults& faults) {
    for (const std::size_t i : misfits) {
        const PieceId& id = job.pieces[i].ids.front();
        const Panel& panel = job.vehicles[static_cast<std::size_t>(id.vehicle)]
                                 .panels[static_cast<std::size_t>(id.panel)];
        faults.push_back({Severity::job, panel.place, panel.name,
                          "its piece, " + size_of(job.pieces[i]) + ", fits on no roll" +
                              (job.table ? " or is longer than the table" : ""),
                          job.table
                              ? "a seam line, a longer table (--table) or a wider film would help"
                              : "a seam line, a longer roll or a wider film would help"});
    }
}

/// Counted before any is made: a line of a file can ask for more than memory holds.
void tell_too_many(const Job& job, Faults& faults) {
    std::size_t pieces = 0;
    for (std::size_t v = 0; v < job.vehicles.size(); ++v)
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p) {
            const Panel& panel = job.vehicles[v].panels[p];
            for (const Side side : sides_of(panel.sides))
                if (!std::binary_search(job.left_out.begin(), job.left_out.end(),
                                        LeftOut{static_cast<int>(v), static_cast<int>(p), side}))
                    pieces += static_cast<std::size_t>(panel.faces) *
                              static_cast<std::size_t>(panel.count) *
                              static_cast<std::size_t>(job.times);
        }
    if (pieces > limit::pieces)
        faults.push_back({Severity::job,
                          {},
                          "",
                          "the job has " + limit::in_groups(pieces) + " pieces, more than " +
                              limit::in_groups(limit::pieces),
                          "plan it in several parts, by --only, --times or 'count'"});
}

/// No silence: an order that is not there must not look like one that is.
Fault nothing_found() {
    return {Severity::job,
            {},
            "",
            "the search ended before it found a layout that holds",
            "give it more time (--time) or effort (--effort), or cut straight"};
}

} // namespace

Job job_from(Request& request, Faults& faults) {
    Job job;
    job.film = request.film;
    const Handling films_own = job.film.allowances.handling;
    if (request.margin && request.by == CutBy::straight)
        job.film.allowances.handling = request.margin->in_place_of(films_own);
    if (request.width && *request.width != job.film.width) {
        job.film.width = *request.width;
        if (!job.film.sold.empty())
            faults.push_back({Severity::warning,
                              {},
                              "",
                              "the prices are the film file's, for its own roll width",
                              "ask the price for this width"});
    }
    job.film.demonstration = job.film.demonstration || request.invented_stock;
    warn_of_idle_options(request, job.film, faults);
    job.by = request.by;
    job.times = request.times;
    job.tolerance = request.tolerance;
    job.stages = request.stages;
    job.free_turns = request.free_turns && request.by == CutBy::contour;
    job.table = request.table;
    job.in_order = request.in_order;
    job.learnt = request.learnt;
    job.also_read = request.also_read;
    job.vehicles = std::move(request.vehicles);
    job.left_out = left_out_by(request.selection, job.vehicles, faults);
    tell_too_many(job, faults);
    job.left_on = left_on_by(request.leave, job.vehicles, faults);
    for (Vehicle& vehicle : job.vehicles)
        for (Panel& panel : vehicle.panels) {
            if (request.margin && !panel.allowances.handling)
                panel.allowances.placing = films_own;
            panel = piece::allowing_for_errors(std::move(panel), job.film,
                                               wishes_of(job, request.seams), job.tolerance);
        }
    job.comes_off = coming_off(job.vehicles, job.left_out, job.left_on);
    return job;
}

namespace {

/// What was weighed is bought beside the same spare.
void add_the_spare(SeamsWeighed& weighed, const Job& job, const Layout& layout,
                   const Order& order) {
    if (job.film.sold.empty())
        return;
    const Length spare =
        order.length() - buy(job.film, new_lengths(job, layout), {}).length();
    for (CutOtherwise& other : weighed.panels)
        if (other.order)
            other.order = *other.order + spare;
    if (weighed.narrow_margins)
        weighed.narrow_margins = *weighed.narrow_margins + spare;
}

} // namespace

Faults examine(Request request) {
    Faults faults;
    Job job = job_from(request, faults);
    if (stops(faults))
        return faults;
    develop_all(job, request.effort.threads, request.scans, false, faults);
    if (!stops(faults)) {
        request.seams = Seams::fitter;
        settled_ways(job, request, faults);
    }
    return faults;
}

Outcome run(Request request) {
    Outcome out;
    std::vector<std::vector<bool>> flat;
    if (request.weigh_the_seams)
        flat = flat_panels(request.vehicles);
    auto job = std::make_shared<Job>(job_from(request, out.faults));
    if (stops(out.faults))
        return out;
    develop_all(*job, request.effort.threads, request.scans, request.seams == Seams::thrifty,
                out.faults);
    if (stops(out.faults))
        return out;
    request.effort.memory = nest::new_memory();
    const std::vector<piece::Way> ways = settled_ways(*job, request, out.faults);
    if (stops(out.faults))
        return out;
    set_pieces(*job, ways);
    leave_out_pieces(request.selection, *job, out.faults);
    if (stops(out.faults))
        return out;
    set_rolls(*job);
    std::optional<Spare> spare;
    if (request.sure_percent)
        spare = spare_for(*job, *request.sure_percent);
    const Shelf shelf = shelf_of(request.stock, job->film, out.faults);
    const SpareToBuy to_buy =
        spare ? SpareToBuy{spare->needed, spare->longest_remake} : SpareToBuy{};
    const auto fill_all = request.until_stopped ? look_on_from_shelf : fill_from_shelf;
    auto [result, short_stock, cheapest] = fill_all(
        *job, shelf, to_buy, request.effort, while_doing("laying out", request.watch), out.faults);
    if (!result.layout) {
        tell_misfits(*job, result.misfits, out.faults);
        if (!stops(out.faults))
            out.faults.push_back(nothing_found());
        return out;
    }
    if (!result.layout->stopped && all_new(*job, *result.layout))
        out.rules_cost = weigh_the_rules(*job, *result.layout, request);
    if (request.weigh_the_seams && !result.layout->stopped && all_new(*job, *result.layout))
        out.seams_weighed = weigh_the_seams(*job, *result.layout, ways, request, flat);
    SpareToBuy still_to_buy = to_buy;
    if (spare) {
        spare = spare_for(*job, *request.sure_percent, &*result.layout);
        if (request.weigh_the_spare)
            find_costliest(*spare, *job, *result.layout);
        still_to_buy = {spare->needed, spare->longest_remake};
    }
    out.order = buy(job->film, new_lengths(*job, *result.layout), still_to_buy);
    add_the_spare(out.seams_weighed, *job, *result.layout, out.order);
    out.order.cheapest = cheapest && still_to_buy.length == to_buy.length;
    out.order.short_stock = std::move(short_stock);
    out.order.stock_costs = shelf.costs;
    if (spare)
        out.order.spare =
            with_what_is_there(*std::move(spare), *job, *result.layout, out.order, out.faults);
    if (request.find_binding)
        out.binding = binding_of(*job, *result.layout);
    set_what_is_bought(*job, *result.layout, out.order);
    verify::Verdict verdict = verify::verify(job, std::move(*result.layout));
    if (!verdict.plan) {
        std::string all;
        for (const std::string& fault : verdict.faults)
            all += "\n  " + fault;
        throw ProgramError("the layout failed its check:" + all);
    }
    out.plan = std::move(verdict.plan);
    return out;
}

} // namespace pelt::order
