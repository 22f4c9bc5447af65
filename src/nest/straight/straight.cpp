// SPDX-License-Identifier: MIT
#include "nest/straight/straight.hpp"

#include "nest/straight/bounds/bounds.hpp"
#include "nest/straight/ease.hpp"
#include "nest/straight/emit.hpp"
#include "nest/straight/in_order.hpp"
#include "nest/straight/many.hpp"
#include "nest/straight/narrower.hpp"
#include "nest/straight/run.hpp"

#include <algorithm>
#include <map>

namespace pelt::nest::straight {
namespace {

void count_pieces(const Block& block,
                  std::map<std::pair<std::int32_t, std::uint8_t>, std::size_t>& counts) {
    if (block.is_piece())
        ++counts[{block.kind, block.orientation}];
    for (const Block& child : block.children)
        count_pieces(child, counts);
}

/// For the pieces on new film as they are cut, in any turn that their direction allows.
std::vector<Demand> demands_as_cut(const Problem& problem, const Sheet& sheet) {
    std::map<std::pair<std::int32_t, std::uint8_t>, std::size_t> counts;
    for (const Filled& filled : sheet)
        if (problem.stretches[filled.stretch].is_new)
            for (const Block& section : filled.sections)
                count_pieces(section, counts);
    std::vector<Demand> demands;
    for (const auto& [way, count] : counts) {
        const Kind& kind = problem.kinds[static_cast<std::size_t>(way.first)];
        const Orientation& orientation = kind.orientations[way.second];
        demands.push_back({{orientation}, count});
        if (!kind.directed && orientation.along <= new_width(problem))
            demands.back().orientations.push_back(
                {orientation.across, orientation.along, orientation.along * problem.step});
    }
    return demands;
}

/// Whether the search looked at all these ways to lie, so that what it proved holds for them.
bool were_offered(const Problem& problem, const std::vector<Demand>& demands) {
    return std::all_of(demands.begin(), demands.end(), [&](const Demand& demand) {
        return std::any_of(problem.kinds.begin(), problem.kinds.end(), [&](const Kind& kind) {
            return std::all_of(demand.orientations.begin(), demand.orientations.end(),
                               [&](const Orientation& orientation) {
                                   return std::any_of(
                                       kind.orientations.begin(), kind.orientations.end(),
                                       [&](const Orientation& offered) {
                                           return offered.along <= orientation.along &&
                                                  offered.across <= orientation.across;
                                       });
                               });
        });
    });
}

/// `known`: for the pieces in all ways in which they may lie, or nothing. `proved`: for all layouts
/// that keep to the problem's rules.
Bound bound_as_cut(const Problem& problem, const Sheet& sheet, const Proof& known, Steps proved) {
    const std::vector<Demand> demands = demands_as_cut(problem, sheet);
    Proof proof = known.length > 0 && demands == demands_of(problem)
                      ? known
                      : lower_bound(demands, new_width(problem));
    const bool holds_for_all = problem.stages == any_stages && !problem.table;
    if (holds_for_all && proved > proof.length && were_offered(problem, demands))
        proof = {proved, "every way of cutting was looked at"};
    return {proof.length * problem.step, std::move(proof.argument)};
}

/// A sheet and what the search knows of it.
struct Found {
    Sheet sheet;
    Proof proof;      ///< of all pieces in all ways to lie; may be empty
    Steps proved = 0; ///< for all layouts that keep to the problem's rules
    bool stopped = false;
    bool shortest = false;
};

std::optional<Found> find(const Problem& problem, const Goal& goal, const Effort& effort,
                          const Watch& watch) {
    if (goal.in_order) {
        std::optional<Sheet> sheet = in_order(problem, effort.threads);
        return sheet ? std::optional(Found{*std::move(sheet), {}, 0, false, false}) : std::nullopt;
    }
    std::optional<Many> multiples = lay_out_multiples(problem, effort, watch);
    std::optional<Many> many = lay_out_many(problem, effort, watch);
    if (many && multiples && multiples->length() < many->length())
        many = std::move(multiples);
    if (many)
        return Found{std::move(many->sheet), {}, 0, many->stopped, false};
    Run run(problem, effort, watch);
    if (!run.work(multiples ? &multiples->sheet : nullptr))
        return std::nullopt;
    return Found{run.best(), run.proof(), run.bound(), run.stopped(), run.is_shortest()};
}

Result nest_alone(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    const Problem problem = problem_of(pieces, rolls, goal);
    if (!problem.misfits.empty())
        return {std::nullopt, problem.misfits};
    std::optional<Found> found = find(problem, goal, effort, watch);
    if (!found)
        return {std::nullopt, {}};
    if (!goal.in_order)
        put_in_order(problem, found->sheet);
    Layout layout;
    layout.rolls = used_rolls(problem, found->sheet, pieces, rolls);
    layout.bound = bound_as_cut(problem, found->sheet, found->proof, found->proved);
    layout.stopped = found->stopped;
    layout.shortest = found->shortest;
    return {std::move(layout), {}};
}

/// Where a narrower job's layout is shorter, that one.
void take_from_narrower_jobs(Result& found, std::span<const Piece> pieces,
                             std::span<const Roll> rolls, const Goal& goal, const Effort& effort,
                             const Watch& watch) {
    Um best = new_length(*found.layout, rolls);
    for (const Narrower& job : narrower_jobs(pieces, goal)) {
        if (found.layout->stopped || found.layout->shortest)
            return;
        Result narrower = nest_alone(job.pieces, rolls, job.goal, effort, watch);
        if (!narrower.layout)
            continue;
        const bool stopped = narrower.layout->stopped;
        if (const Um length = new_length(*narrower.layout, rolls); length < best) {
            found.layout = std::move(narrower.layout);
            found.layout->shortest = false; // of the narrower job it may be
            best = length;
        }
        found.layout->stopped = stopped;
    }
}

} // namespace

/// A freer job contains the layouts of the narrower ones, but a search of more layouts may miss what
/// a search of fewer finds. So each of them is searched with the same effort; not in trials, which
/// only tell good ways from bad ones, nor where the watch alone ends the search.
Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    Result found = nest_alone(pieces, rolls, goal, effort, watch);
    if (found.layout && !goal.in_order && !effort.trial && effort.amount > 0)
        take_from_narrower_jobs(found, pieces, rolls, goal, effort, watch);
    return found;
}

} // namespace pelt::nest::straight
