// SPDX-License-Identifier: MIT
#include "geometry/geometry.hpp"
#include "nest/contour/convex_parts.hpp"
#include "nest/contour/problem.hpp"
#include "nest/contour/simplify.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace pelt::nest::contour {
namespace {

// Simplification: by at most this share of a piece's side, until this many points are left.
constexpr double simplify_share = 0.001;
constexpr std::size_t enough_points = 24;
constexpr double free_depth_um = 0.5;

constexpr int quarter = 90'000;

double area_of(const Polygon& polygon) {
    DoubleArea doubled = doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        doubled += doubled_area(hole);
    return static_cast<double>(doubled) / 2;
}

Span span_of(const std::vector<Ring>& rings) {
    Span span{vec_of(rings.front().front()), vec_of(rings.front().front())};
    for (const Ring& ring : rings)
        for (const GridPoint& p : ring) {
            const Vec v = vec_of(p);
            span.low = {std::min(span.low.x, v.x), std::min(span.low.y, v.y)};
            span.high = {std::max(span.high.x, v.x), std::max(span.high.y, v.y)};
        }
    return span;
}

Span turned(const Span& box, int quarters) {
    const Vec a = quarter_turned(box.low, quarters);
    const Vec b = quarter_turned(box.high, quarters);
    return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

Form form_of(const Polygon& polygon) {
    const double side = std::sqrt(area_of(polygon));
    const Polygon plain = simplified(polygon, simplify_share * side, enough_points, free_depth_um);
    Form form;
    form.body = body_of(plain);
    form.box = span_of(form.body.parts);
    return form;
}

// The largest first; then by the outline itself, so that names and places in files do not matter.
std::vector<std::size_t> canonical_order(std::span<const Piece> pieces) {
    std::vector<double> areas;
    for (const Piece& piece : pieces)
        areas.push_back(area_of(piece.shapes.front().outline));
    std::vector<std::size_t> order(pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto key = [&](std::size_t i) {
        const Piece& piece = pieces[i];
        const CutShape& shape = piece.shapes.front();
        return std::tuple(-areas[i], std::cref(shape.outline.outer), std::cref(shape.outline.holes),
                          std::cref(shape.turns), piece.shapes.size(), piece.ids.size(),
                          piece.direction);
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const auto ka = key(a);
        const auto kb = key(b);
        if (std::get<0>(ka) != std::get<0>(kb))
            return std::get<0>(ka) < std::get<0>(kb);
        if (std::get<1>(ka).get() != std::get<1>(kb).get())
            return std::get<1>(ka).get() < std::get<1>(kb).get();
        if (std::get<2>(ka).get() != std::get<2>(kb).get())
            return std::get<2>(ka).get() < std::get<2>(kb).get();
        if (std::get<3>(ka).get() != std::get<3>(kb).get())
            return std::get<3>(ka).get() < std::get<3>(kb).get();
        return std::tuple(std::get<4>(ka), std::get<5>(ka), std::get<6>(ka)) <
               std::tuple(std::get<4>(kb), std::get<5>(kb), std::get<6>(kb));
    });
    return order;
}

// Forms of one shape: quarter turns of each other share one.
class OptionMaker {
public:
    OptionMaker(Problem& problem, std::vector<Form>& forms, Memory& memory)
        : problem_(problem), forms_(forms), memory_(memory) {}

    void add(const CutShape& shape, std::size_t index) {
        std::vector<std::pair<int, std::uint32_t>> made;
        for (const Turn turn : shape.turns) {
            const int base = turn.millidegrees % quarter;
            auto known = std::find_if(made.begin(), made.end(),
                                      [&](const auto& entry) { return entry.first == base; });
            if (known == made.end()) {
                made.emplace_back(base, static_cast<std::uint32_t>(forms_.size()));
                const Polygon outline = placed(shape.outline, Turn{base}, {});
                forms_.push_back(
                    memory_.form(outline, false, [&outline] { return form_of(outline); }));
                known = std::prev(made.end());
            }
            add_option(known->second, turn, index);
        }
    }

private:
    void add_option(std::uint32_t form, Turn turn, std::size_t shape) {
        Option option;
        option.form = form;
        option.quarters = turn.millidegrees / quarter;
        option.shape = shape;
        option.turn = turn;
        option.box = turned(forms_[form].box, option.quarters);
        option.centre = 0.5 * (option.box.low + option.box.high);
        const Vec sides = option.box.high - option.box.low;
        option.size = std::min(sides.x, sides.y) / 2;
        problem_.options.push_back(option);
    }

    Problem& problem_;
    std::vector<Form>& forms_;
    Memory& memory_;
};

double longest_side(const Problem& problem, const Kind& kind) {
    double longest = 0;
    for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o) {
        const Span& box = problem.options[o].box;
        longest = std::max({longest, box.high.x - box.low.x, box.high.y - box.low.y});
    }
    return longest;
}

// One roll's bays and obstacles, `length` long, `shift` along in the search's frame.
void add_roll(Problem& problem, std::vector<Form>& forms, Memory& memory, const Roll& roll,
              std::size_t index, double length, double shift) {
    const auto low = static_cast<double>(roll.trim);
    const auto high = static_cast<double>(roll.width - roll.trim);
    std::vector<Flaw> across;
    for (const Flaw& flaw : roll.flaws) {
        if (is_full_width(flaw, roll)) {
            across.push_back(flaw);
            continue;
        }
        const Um flaw_low = flaw.low.value_or(0);
        const Um flaw_high = flaw.high.value_or(roll.width);
        const GridPoint far{flaw.to - flaw.from, flaw_high - flaw_low};
        if (far.x <= 0 || far.y <= 0)
            continue;
        const Polygon bare{{{0, 0}, {far.x, 0}, far, {0, far.y}}, {}};
        Form form = memory.form(bare, true, [&] {
            Form made;
            made.body = body_of(bare);
            made.box = {{0, 0}, vec_of(far)};
            return made;
        });
        Option option;
        option.form = static_cast<std::uint32_t>(forms.size());
        option.box = form.box;
        forms.push_back(std::move(form));
        problem.obstacles.push_back(
            {static_cast<std::uint32_t>(problem.options.size()),
             {shift + static_cast<double>(flaw.from), static_cast<double>(flaw_low)}});
        problem.options.push_back(option);
    }
    std::sort(across.begin(), across.end(), [](const Flaw& a, const Flaw& b) {
        return std::pair(a.from, a.to) < std::pair(b.from, b.to);
    });
    double from = 0;
    const auto add_bay = [&](double to) {
        to = std::min(to, length);
        if (to > from)
            problem.bays.push_back(
                {index, shift, {{shift + from, low}, {shift + to, high}}, roll.arrow_known});
    };
    for (const Flaw& flaw : across) {
        add_bay(static_cast<double>(flaw.from));
        from = std::max(from, static_cast<double>(flaw.to));
    }
    add_bay(length);
}

} // namespace

bool is_full_width(const Flaw& flaw, const Roll& roll) {
    return flaw.low.value_or(0) <= roll.trim &&
           flaw.high.value_or(roll.width) >= roll.width - roll.trim;
}

std::optional<Span> room(const Option& option, const Bay& bay) {
    const Span span{bay.film.low - option.box.low, bay.film.high - option.box.high};
    if (span.low.x > span.high.x || span.low.y > span.high.y)
        return std::nullopt;
    return span;
}

bool takes(const Problem& problem, const Bay& bay, const Kind& kind) {
    for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o)
        if (admits(bay, kind) && room(problem.options[o], bay))
            return true;
    return false;
}

double longest_along(const Problem& problem, const Kind& kind) {
    double longest = 0;
    for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o)
        longest = std::max(longest, problem.options[o].box.high.x - problem.options[o].box.low.x);
    return longest;
}

double longest_along(const Problem& problem) {
    double longest = 0;
    for (const Kind& kind : problem.kinds)
        longest = std::max(longest, longest_along(problem, kind));
    return longest;
}

Problem prepare(std::span<const Piece> pieces, std::span<const Roll> rolls, Um gap,
                const std::shared_ptr<Memory>& memory, std::vector<std::size_t>& misfits) {
    Problem problem;
    std::vector<Form> forms;
    double enough = 0;
    double longest = 0;
    std::vector<std::pair<Kind, std::size_t>> all;
    for (const std::size_t index : canonical_order(pieces)) {
        const Piece& piece = pieces[index];
        Kind kind;
        kind.piece = index;
        kind.first_option = static_cast<std::uint32_t>(problem.options.size());
        OptionMaker maker(problem, forms, *memory);
        for (std::size_t s = 0; s < piece.shapes.size(); ++s)
            maker.add(piece.shapes[s], s);
        kind.options = static_cast<std::uint32_t>(problem.options.size()) - kind.first_option;
        const Polygon& outline = piece.shapes.front().outline;
        kind.area = area_of(outline);
        kind.hull = static_cast<double>(doubled_area(geometry::convex_hull(outline.outer))) / 2;
        kind.needs_arrow = piece.direction != Direction::any;
        longest = std::max(longest, longest_side(problem, kind));
        enough += (longest_side(problem, kind) + static_cast<double>(gap) + 10) *
                  static_cast<double>(piece.ids.size());
        all.emplace_back(kind, piece.ids.size());
    }
    double shift = 0;
    for (std::size_t r = 0; r < rolls.size(); ++r) {
        double flawed = 0;
        for (const Flaw& flaw : rolls[r].flaws)
            flawed = std::max(flawed, static_cast<double>(flaw.to));
        const double length =
            rolls[r].available ? static_cast<double>(*rolls[r].available) : enough + flawed;
        add_roll(problem, forms, *memory, rolls[r], r, length, shift);
        shift += std::ceil(length + 2 * longest + 2 * static_cast<double>(gap));
    }
    problem.fields =
        std::make_shared<const Fields>(std::move(forms), static_cast<double>(gap), 0, memory);
    for (const auto& [kind, count] : all) {
        const auto takes_it = [&, &kind = kind](const Bay& bay) {
            return takes(problem, bay, kind);
        };
        if (std::none_of(problem.bays.begin(), problem.bays.end(), takes_it)) {
            misfits.push_back(kind.piece);
            continue;
        }
        problem.items.insert(problem.items.end(), count,
                             static_cast<std::uint32_t>(problem.kinds.size()));
        problem.kinds.push_back(kind);
        problem.area += kind.area * static_cast<double>(count);
    }
    std::sort(misfits.begin(), misfits.end());
    return problem;
}

} // namespace pelt::nest::contour
