// SPDX-License-Identifier: MIT
#include "nest/straight/problem.hpp"

#include "model/error.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace pelt::nest::straight {
namespace {

struct Size {
    Um along = 0;
    Um across = 0;
    friend auto operator<=>(const Size&, const Size&) = default;
};

void check_rectangle(const Ring& ring) {
    const Box box = box_of(ring);
    const DoubleArea doubled = static_cast<DoubleArea>(2) * box.along() * box.across();
    if (ring.size() != 4 || doubled_area(ring) != doubled || doubled == 0)
        throw ProgramError("straight cutting was given a piece that is not an upright rectangle");
}

/// The sizes in which a piece may lie, each once, in rising order.
std::vector<Size> sizes_of(const Piece& piece) {
    std::vector<Size> sizes;
    for (const CutShape& shape : piece.shapes) {
        check_rectangle(shape.outline.outer);
        const Box box = box_of(shape.outline.outer);
        for (const Turn turn : shape.turns) {
            if (turn.millidegrees % quarter_turn.millidegrees != 0)
                throw ProgramError("straight cutting was given a turn that is not a quarter turn");
            const bool upright = turn == no_turn || turn == half_turn;
            sizes.push_back(upright ? Size{box.along(), box.across()}
                                    : Size{box.across(), box.along()});
        }
    }
    std::sort(sizes.begin(), sizes.end());
    sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
    return sizes;
}

/// Whether a width may lie across some roll: it is the roll's usable width, or a slit at a whole
/// step frees it.
bool suits_a_roll(Um across, std::span<const Roll> rolls, Um step) {
    return std::any_of(rolls.begin(), rolls.end(), [&](const Roll& roll) {
        const Um usable = roll.width - 2 * roll.trim;
        return across == usable || (across < usable && across % step == 0);
    });
}

bool is_on_the_ruler(const Size& size, std::span<const Roll> rolls, Um ruler) {
    return size.along % ruler == 0 &&
           (size.across % ruler == 0 || suits_a_roll(size.across, rolls, ruler));
}

/// The ruler's step, or the grid's where a piece has no size on the ruler: a cut must free the
/// rectangle itself, so a side can then not be rounded.
Um step_for(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal) {
    for (const Piece& piece : pieces) {
        const std::vector<Size> sizes = sizes_of(piece);
        if (std::none_of(sizes.begin(), sizes.end(), [&](const Size& size) {
                return is_on_the_ruler(size, rolls, goal.ruler);
            }))
            return 1;
    }
    return goal.ruler;
}

/// A width that is no whole step is for rolls of just that width.
bool serves_as_well(const Orientation& other, const Orientation& orientation, Um step) {
    return other != orientation && other.along <= orientation.along &&
           other.across_um <= orientation.across_um &&
           (other.across_um % step == 0 || other.across_um == orientation.across_um);
}

/// Those on the ruler that some roll may take.
std::vector<Orientation> lies_of(const Piece& piece, std::span<const Roll> rolls, Um step,
                                 const std::optional<Steps>& table) {
    std::vector<Orientation> orientations;
    for (const Size& size : sizes_of(piece)) {
        const Orientation orientation{size.along / step, size.across / step, size.across};
        if (size.along % step == 0 && suits_a_roll(size.across, rolls, step) &&
            (!table || orientation.along <= *table))
            orientations.push_back(orientation);
    }
    std::vector<Orientation> kept;
    for (const Orientation& orientation : orientations)
        if (std::none_of(orientations.begin(), orientations.end(), [&](const Orientation& other) {
                return serves_as_well(other, orientation, step);
            }))
            kept.push_back(orientation);
    return kept;
}

std::vector<Kind> kinds_of(std::span<const Piece> pieces, std::span<const Roll> rolls,
                           const Goal& goal, Um step, const std::optional<Steps>& table,
                           std::vector<std::size_t>& misfits) {
    std::map<std::tuple<std::vector<Orientation>, bool>, std::vector<Member>> groups;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        std::vector<Orientation> orientations = lies_of(pieces[i], rolls, step, table);
        if (orientations.empty()) {
            misfits.push_back(i);
            continue;
        }
        const bool directed = pieces[i].direction != Direction::any;
        std::vector<Member>& members = groups[{std::move(orientations), directed}];
        for (std::size_t copy = 0; copy < pieces[i].ids.size(); ++copy)
            members.push_back(
                {pieces[i].ids[copy], i, copy, goal.laying.empty() ? 0 : goal.laying[i][copy]});
    }
    std::vector<Kind> kinds;
    for (auto& [key, members] : groups) {
        std::sort(members.begin(), members.end(), [](const Member& a, const Member& b) {
            return std::tie(a.place, a.id, a.piece, a.copy) <
                   std::tie(b.place, b.id, b.piece, b.copy);
        });
        kinds.push_back({std::get<0>(key), std::get<1>(key), std::move(members)});
    }
    std::sort(kinds.begin(), kinds.end(), [](const Kind& a, const Kind& b) {
        const Steps area_a = a.least_area();
        const Steps area_b = b.least_area();
        return std::tie(area_b, a.orientations, a.directed) <
               std::tie(area_a, b.orientations, b.directed);
    });
    return kinds;
}

Steps longest_need(const std::vector<Kind>& kinds) {
    Steps sum = 0;
    for (const Kind& kind : kinds) {
        Steps most = 0;
        for (const Orientation& orientation : kind.orientations)
            most = std::max(most, orientation.along);
        sum += most * static_cast<Steps>(kind.demand());
    }
    return sum;
}

struct Span {
    Um from = 0;
    Um to = 0;
};

/// What lies between the flaws, shrunk to whole steps; a flaw spoils the film from edge to edge.
std::vector<Span> clean_spans(const Roll& roll, Um end, Um step) {
    std::vector<Flaw> flaws = roll.flaws;
    std::sort(flaws.begin(), flaws.end(), [](const Flaw& a, const Flaw& b) {
        return std::tie(a.from, a.to) < std::tie(b.from, b.to);
    });
    std::vector<Span> spans;
    Um from = 0;
    const auto add = [&](Um to) {
        const Span span{(from + step - 1) / step * step, to / step * step};
        if (span.to > span.from)
            spans.push_back(span);
    };
    for (const Flaw& flaw : flaws) {
        add(std::min(flaw.from, end));
        from = std::max(from, flaw.to);
    }
    add(end);
    return spans;
}

/// Where an endless roll may be thought to end: all flaws, then film for everything.
Um end_of(const Roll& roll, Um need) {
    if (roll.available)
        return *roll.available;
    Um last = 0;
    for (const Flaw& flaw : roll.flaws)
        last = std::max(last, flaw.to);
    return last + need;
}

std::vector<Stretch> stretches_of(std::span<const Roll> rolls, const std::vector<Kind>& kinds,
                                  Um step) {
    std::vector<Stretch> stretches;
    const Um need = (longest_need(kinds) + 1) * step;
    Steps reach = 0;
    for (std::size_t i = 0; i < rolls.size(); ++i) {
        const Roll& roll = rolls[i];
        const Um usable = roll.width - 2 * roll.trim;
        const Um end = end_of(roll, need);
        for (const Span& span : clean_spans(roll, end, step))
            stretches.push_back({i, span.from, (span.to - span.from) / step, usable / step, usable,
                                 roll.is_new, roll.arrow_known,
                                 roll.is_new ? reach + span.from / step : 0});
        if (roll.is_new)
            reach += end / step;
    }
    return stretches;
}

void take_out_misfits(Problem& problem) {
    std::erase_if(problem.kinds, [&](const Kind& kind) {
        const bool fits = std::any_of(
            problem.stretches.begin(), problem.stretches.end(), [&](const Stretch& stretch) {
                return std::any_of(kind.orientations.begin(), kind.orientations.end(),
                                   [&](const Orientation& orientation) {
                                       return orientation.along <= stretch.along &&
                                              problem.suits(kind, orientation, stretch);
                                   });
            });
        if (!fits)
            for (const Member& member : kind.members)
                problem.misfits.push_back(member.piece);
        return !fits;
    });
    std::sort(problem.misfits.begin(), problem.misfits.end());
    problem.misfits.erase(std::unique(problem.misfits.begin(), problem.misfits.end()),
                          problem.misfits.end());
}

} // namespace

Steps Kind::least_area() const {
    Steps least = orientations.front().area();
    for (const Orientation& orientation : orientations)
        least = std::min(least, orientation.area());
    return least;
}

std::size_t Problem::pieces() const {
    std::size_t sum = 0;
    for (const Kind& kind : kinds)
        sum += kind.demand();
    return sum;
}

bool Problem::suits(const Kind& kind, const Orientation& orientation,
                    const Stretch& stretch) const {
    if (kind.directed && !stretch.arrow_known)
        return false;
    return orientation.across_um == stretch.across_um ||
           (orientation.across_um < stretch.across_um && orientation.across_um % step == 0);
}

Problem problem_of(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal) {
    Problem problem;
    problem.step = step_for(pieces, rolls, goal);
    problem.stages = goal.stages.value_or(any_stages);
    if (goal.table)
        problem.table = *goal.table / problem.step;
    problem.kinds = kinds_of(pieces, rolls, goal, problem.step, problem.table, problem.misfits);
    problem.stretches = stretches_of(rolls, problem.kinds, problem.step);
    take_out_misfits(problem);
    return problem;
}

} // namespace pelt::nest::straight
