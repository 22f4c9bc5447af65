// SPDX-License-Identifier: MIT
#include "verify/right_plans.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::test {
namespace {

constexpr Um margin = 20'000;
constexpr Um bleed = 10'000;
constexpr Um gap = 4'000;

Film film() {
    Film out;
    out.name = "Test film";
    out.width = 1'524'000;
    out.trim = 6'000;
    out.direction = Direction::one_way;
    out.allowances.handling = {margin, 15'000};
    out.allowances.bleed = bleed;
    out.allowances.gap = gap;
    out.allowances.ruler = 1'000;
    return out;
}

/// Corners of a panel that is wide by high millimetres with two unequal corners cut off, so that
/// no turn and no mirror image of it is itself.
Ring chamfered(Um wide, Um high) {
    return {{0, 0},         {wide, 0},         {wide, high - 30'000}, {wide - 20'000, high},
            {50'000, high}, {0, high - 10'000}};
}

Ring mirrored(const Ring& ring) {
    Ring out(ring.rbegin(), ring.rend());
    for (GridPoint& p : out)
        p.y = -p.y;
    return out;
}

Ring rectangle_around(const Ring& ring) {
    const Box box = box_of(ring);
    return {{box.low.x - margin, box.low.y - margin},
            {box.high.x + margin, box.low.y - margin},
            {box.high.x + margin, box.high.y + margin},
            {box.low.x - margin, box.high.y + margin}};
}

/// The convex ring with every side moved out by the bleed, its corners at the crossings.
Ring around(const Ring& ring) {
    struct Line {
        double x, y, reach; // x·X + y·Y = reach
    };
    std::vector<Line> lines;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        const auto x = static_cast<double>(b.y - a.y);
        const auto y = static_cast<double>(a.x - b.x);
        const double size = std::hypot(x, y);
        lines.push_back({x / size, y / size,
                         (x * static_cast<double>(a.x) + y * static_cast<double>(a.y)) / size +
                             static_cast<double>(bleed)});
    }
    Ring out;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Line& a = lines[(i + ring.size() - 1) % ring.size()];
        const Line& b = lines[i];
        const double size = a.x * b.y - a.y * b.x;
        out.push_back({std::llround((a.reach * b.y - b.reach * a.y) / size),
                       std::llround((b.reach * a.x - a.reach * b.x) / size)});
    }
    return out;
}

void add_panel(Job& job, Dice& dice, int index) {
    Panel panel;
    panel.name = "panel " + std::to_string(index);
    panel.sides = index % 2 == 0 ? Sides::both : Sides::centre;
    panel.count = static_cast<int>(dice.roll(1, 2));
    panel.forward = Heading::right;
    const Ring ring = chamfered(1'000 * dice.roll(300, 900), 1'000 * dice.roll(100, 700));
    Blank blank;
    for (const GridPoint& p : ring) {
        blank.outline.points.push_back(
            {static_cast<double>(p.x) / 1000, static_cast<double>(p.y) / 1000});
        blank.outline.edge.push_back(0);
    }
    blank.edges.push_back({"1-2", "", {0, -1}, false});
    DevelopedPanel developed;
    developed.blanks.push_back(blank);
    job.developed.front().push_back(developed);
    for (const Side side : sides_of(panel.sides)) {
        Piece piece;
        piece.direction = job.film.direction;
        piece.wrapped.outer = side == Side::right ? mirrored(ring) : ring;
        const Ring cut = job.by == CutBy::straight ? rectangle_around(piece.wrapped.outer)
                                                   : around(piece.wrapped.outer);
        piece.shapes.push_back({{cut, {}}, {no_turn}});
        for (int copy = 1; copy <= panel.count; ++copy)
            piece.ids.push_back({0, index, side, copy, 1, 1, PieceKind::main, ""});
        job.pieces.push_back(piece);
    }
    job.vehicles.front().panels.push_back(panel);
}

Job job(Dice& dice, CutBy by) {
    Job out;
    out.film = film();
    out.by = by;
    out.vehicles.emplace_back();
    out.vehicles.front().name = "Test vehicle";
    out.developed.emplace_back();
    const int panels = static_cast<int>(dice.roll(3, 6));
    for (int i = 0; i < panels; ++i)
        add_panel(out, dice, i);
    for (const char* name : {"new 1", "new 2"})
        out.rolls.push_back({name, true, "", out.film.width, out.film.trim, 30'000'000, true, {}});
    return out;
}

void place(UsedRoll& used, const Job& job, std::size_t piece, std::size_t copy) {
    const Um space = job.by == CutBy::contour && used.length > 0 ? job.film.allowances.gap : 0;
    const Box box = box_of(job.pieces[piece].shapes.front().outline.outer);
    const Um x = used.length + space;
    const Um low = job.film.trim;
    used.placements.push_back({piece, copy, 0, no_turn, {x - box.low.x, low - box.low.y}});
    used.length = x + box.along();
    if (job.by == CutBy::contour)
        return;
    used.cuts.push_back({{used.length, 0}, {used.length, job.film.width}});
    used.cuts.push_back({{x, low}, {used.length, low}});
    used.cuts.push_back({{x, low + box.across()}, {used.length, low + box.across()}});
}

Layout layout(const Job& job) {
    Layout out;
    out.rolls.resize(2);
    Int128 twice_cut = 0;
    for (std::size_t i = 0; i < job.pieces.size(); ++i)
        for (std::size_t copy = 0; copy < job.pieces[i].ids.size(); ++copy) {
            place(out.rolls[(i + copy) % 2], job, i, copy);
            twice_cut += doubled_area(job.pieces[i].shapes.front().outline.outer);
        }
    out.rolls[1].roll = 1;
    const Int128 twice_usable = 2 * static_cast<Int128>(job.film.usable_width());
    out.bound = {static_cast<Um>((twice_cut + twice_usable - 1) / twice_usable), "area"};
    return out;
}

/// The order of laying that the layout happens to keep.
std::vector<std::vector<std::size_t>> laying_of(const Job& job, const Layout& layout) {
    std::vector<std::vector<std::size_t>> laying;
    for (const Piece& piece : job.pieces)
        laying.emplace_back(piece.ids.size());
    std::size_t next = 0;
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& placement : used.placements)
            laying[placement.piece][placement.copy] = next++;
    return laying;
}

RightPlan plan(Dice& dice, CutBy by) {
    RightPlan out;
    out.job = job(dice, by);
    out.layout = layout(out.job);
    out.job.laying = laying_of(out.job, out.layout);
    out.job.in_order = by == CutBy::straight;
    return out;
}

} // namespace

RightPlan straight_plan(Dice& dice) {
    return plan(dice, CutBy::straight);
}

RightPlan contour_plan(Dice& dice) {
    return plan(dice, CutBy::contour);
}

} // namespace pelt::test
