// SPDX-License-Identifier: MIT
#include "nest/contour/turning.hpp"

#include "geometry/geometry.hpp"
#include "nest/contour/problem.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace pelt::nest::contour {
namespace {

constexpr int full = 360'000;
constexpr int quarter = 90'000;

// Millidegrees.
constexpr int steps[] = {8000, 3000, 1000, 300, 100};

// A field takes about as long to make as a thousand look-ups take: so many forms at a time, of
// which so many are new at least.
constexpr std::size_t most_forms = 48;
constexpr std::size_t fewest_more = 8;
constexpr std::size_t long_sides = 3;
// Sides of the hull below this share of the longest are not worth laying along the film.
constexpr double long_share = 0.3;

bool lies_freely(const Piece& piece) {
    return piece.direction == Direction::any;
}

int base_of(Turn turn) {
    return turn.millidegrees % quarter;
}

void add(std::vector<int>& bases, int base) {
    if (std::find(bases.begin(), bases.end(), base) == bases.end())
        bases.push_back(base);
}

double squared_length(GridPoint a, GridPoint b) {
    const auto dx = static_cast<double>(b.x - a.x);
    const auto dy = static_cast<double>(b.y - a.y);
    return dx * dx + dy * dy;
}

// Angles below a quarter turn that lay the longest sides of the hull along or across.
void add_long_sides(const Polygon& outline, std::vector<int>& bases) {
    const Ring hull = geometry::convex_hull(outline.outer);
    std::vector<std::pair<double, std::size_t>> sides;
    for (std::size_t i = 0; i < hull.size(); ++i)
        sides.emplace_back(-squared_length(hull[i], hull[(i + 1) % hull.size()]), i);
    std::sort(sides.begin(), sides.end());
    const double least = long_share * long_share * sides.front().first;
    for (std::size_t k = 0; k < std::min(long_sides, sides.size()); ++k)
        if (sides[k].first <= least) {
            const std::size_t i = sides[k].second;
            add(bases, base_of(geometry::laying_along(hull[i], hull[(i + 1) % hull.size()])));
        }
}

// Every quarter turn of every base, in order.
std::vector<Turn> turns_of(std::vector<int> bases) {
    std::sort(bases.begin(), bases.end());
    std::vector<Turn> turns;
    for (int quarters = 0; quarters < full; quarters += quarter)
        for (const int base : bases)
            turns.push_back({quarters + base});
    return turns;
}

// In which copies of a shape lie, and the same a step to either side.
std::vector<int> bases_of(const std::vector<Placement>& lying, std::size_t shape, int step) {
    std::vector<int> bases;
    for (const Placement& placement : lying)
        if (placement.shape == shape)
            for (const int beside : {0, -step, step})
                add(bases, (base_of(placement.turn) + beside + quarter) % quarter);
    return bases;
}

// Whether the box fits between the roll's flaws from edge to edge and its ends.
bool takes(const Roll& roll, const Box& box) {
    if (box.across() > roll.width - 2 * roll.trim)
        return false;
    std::vector<std::pair<Um, Um>> across;
    for (const Flaw& flaw : roll.flaws)
        if (is_full_width(flaw, roll))
            across.emplace_back(flaw.from, flaw.to);
    std::sort(across.begin(), across.end());
    Um from = 0;
    for (const auto& [begin, end] : across) {
        if (std::min(begin, roll.available.value_or(begin)) - from >= box.along())
            return true;
        from = std::max(from, end);
    }
    return !roll.available || *roll.available - from >= box.along();
}

bool lies_in_a_listed_turn(const Piece& piece, std::span<const Roll> rolls) {
    for (const CutShape& shape : piece.shapes)
        for (const Turn turn : shape.turns) {
            const Box box = box_of(placed(shape.outline.outer, turn, {}));
            if (std::any_of(rolls.begin(), rolls.end(),
                            [&](const Roll& roll) { return takes(roll, box); }))
                return true;
        }
    return false;
}

std::vector<std::vector<Placement>> by_piece(const Layout& layout, std::size_t pieces) {
    std::vector<std::vector<Placement>> out(pieces);
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& placement : used.placements)
            out[placement.piece].push_back(placement);
    return out;
}

} // namespace

bool any_lies_freely(std::span<const Piece> pieces) {
    return std::any_of(pieces.begin(), pieces.end(), lies_freely);
}

std::vector<Piece> with_askew_turns(std::span<const Piece> pieces, std::span<const Roll> rolls) {
    std::vector<Piece> out(pieces.begin(), pieces.end());
    for (Piece& piece : out) {
        if (!lies_freely(piece) || lies_in_a_listed_turn(piece, rolls))
            continue;
        for (CutShape& shape : piece.shapes) {
            std::vector<int> bases;
            add(bases, base_of(geometry::narrowest(shape.outline.outer).turn));
            add_long_sides(shape.outline, bases);
            shape.turns = turns_of(std::move(bases));
        }
    }
    return out;
}

std::vector<Piece> Turning::next(const Layout& layout) {
    std::vector<Piece> out(pieces_.begin(), pieces_.end());
    const std::vector<std::vector<Placement>> lying = by_piece(layout, out.size());
    std::size_t forms = 0;
    for (std::size_t i = 0; i < out.size(); ++i)
        for (std::size_t s = 0; s < out[i].shapes.size(); ++s) {
            std::vector<int> bases = bases_of(lying[i], s, 0);
            forms += std::max<std::size_t>(bases.size(), 1);
            if (lies_freely(out[i]) && !bases.empty())
                out[i].shapes[s].turns = turns_of(std::move(bases));
        }
    if (forms + fewest_more > most_forms)
        return {};
    for (std::size_t passed = 0; passed < out.size() && forms < most_forms; ++passed) {
        const std::size_t i = at_ % out.size();
        const int step = steps[at_ / out.size() % std::size(steps)];
        ++at_;
        if (!lies_freely(out[i]))
            continue;
        for (std::size_t s = 0; s < out[i].shapes.size(); ++s) {
            std::vector<int> bases = bases_of(lying[i], s, step);
            add_long_sides(out[i].shapes[s].outline, bases);
            forms += bases.size();
            out[i].shapes[s].turns = turns_of(std::move(bases));
        }
    }
    return out;
}

} // namespace pelt::nest::contour
