// SPDX-License-Identifier: MIT
// The options of a drawn job, and which pieces are wanted by them. What the manual says of --only,
// --without, --with, --done and --spoiled is told here a second time, apart from the program.
#include "job.hpp"

#include <algorithm>
#include <functional>

namespace pelt::generated {
namespace {

struct Side {
    const DrawnPanel* panel = nullptr;
    std::string side;
};
using Sides = std::vector<Side>;

/// By name, or by name and side.
bool calls(const std::string& word, const Side& side) {
    return word == side.panel->name || word == side.panel->name + "/" + side.side;
}

bool is_named_in(const std::vector<std::string>& words, const Side& side) {
    return std::any_of(words.begin(), words.end(),
                       [&](const std::string& word) { return calls(word, side); });
}

/// By name, by name and side, or by group.
bool names(const std::string& word, const Side& side) {
    return calls(word, side) || word == side.panel->group;
}

bool named_by(const std::vector<std::string>& words, const Side& side) {
    return std::any_of(words.begin(), words.end(),
                       [&](const std::string& word) { return names(word, side); });
}

Sides all_sides(const DrawnVehicle& vehicle) {
    Sides out;
    for (const DrawnPanel& panel : vehicle.panels)
        for (const std::string& side : panel.sides)
            out.push_back({&panel, side});
    return out;
}

std::string drawn_name(Draw& draw, const Side& side) {
    if (draw.one_in(3))
        return side.panel->name + "/" + side.side;
    return side.panel->group.empty() || draw.one_in(2) ? side.panel->name : side.panel->group;
}

std::vector<std::string> drawn_names(Draw& draw, const Sides& sides, int most) {
    std::vector<std::string> out;
    for (int i = draw.within(1, most); i > 0; --i)
        out.push_back(drawn_name(draw, draw.of(sides)));
    return out;
}

void keep(Sides& sides, const std::function<bool(const Side&)>& right) {
    std::erase_if(sides, [&](const Side& side) { return !right(side); });
}

void add(Job& job, std::initializer_list<std::string> words) {
    job.words.insert(job.words.end(), words);
}

/// --only, --without, --with: what is left of all sides.
void draw_selection(Draw& draw, const DrawnVehicle& vehicle, Sides& sides, Job& job) {
    const bool with = draw.one_in(8) && std::any_of(sides.begin(), sides.end(), [](const Side& s) {
                          return !s.panel->extra.empty();
                      });
    std::string extra;
    if (with)
        for (const DrawnPanel& panel : vehicle.panels)
            if (!panel.extra.empty())
                extra = panel.extra;
    if (draw.one_in(6)) {
        const auto only = drawn_names(draw, sides, 3);
        // A group brings in no extra, --with brings in its own.
        keep(sides, [&](const Side& side) {
            if (side.panel->extra.empty())
                return named_by(only, side);
            return (with && side.panel->extra == extra) || is_named_in(only, side);
        });
        add(job, {"--only", listed(only, ",")});
    } else {
        keep(sides, [&](const Side& side) {
            return side.panel->extra.empty() || side.panel->extra == extra;
        });
    }
    if (with)
        add(job, {"--with", extra});
    if (sides.size() < 2 || !draw.one_in(8))
        return;
    const auto without = drawn_names(draw, sides, 1);
    Sides left = sides;
    keep(left, [&](const Side& side) { return !named_by(without, side); });
    if (left.empty())
        return;
    sides = left;
    add(job, {"--without", without[0]});
}

/// --done, --spoiled: what of it is still to be cut. What --only and --without leave out stays out.
void draw_half_done(Draw& draw, Sides& sides, Job& job) {
    const bool done = sides.size() > 1 && draw.one_in(14);
    const bool spoiled = draw.one_in(done ? 2 : 16);
    const auto done_words = done ? drawn_names(draw, sides, 2) : std::vector<std::string>{};
    const auto spoiled_words = spoiled ? drawn_names(draw, sides, 2) : std::vector<std::string>{};
    Sides left = sides;
    keep(left, [&](const Side& side) {
        return named_by(spoiled_words, side) || (!spoiled && !done) ||
               (done && !named_by(done_words, side));
    });
    if (left.empty())
        return;
    sides = left;
    if (done)
        add(job, {"--done", listed(done_words, ",")});
    if (spoiled)
        add(job, {"--spoiled", listed(spoiled_words, ",")});
}

void draw_cutting(Draw& draw, Job& job) {
    job.contour = draw.one_in(6);
    if (job.contour) {
        add(job, {"--by", "contour"});
        if (draw.one_in(6))
            add(job, {"--turns", "any"});
        return;
    }
    if (draw.one_in(5))
        add(job, {"--stages", draw.of({"2", "3", "any"})});
    if (draw.one_in(6))
        add(job, {"--table", in_unit(draw.within(15, 60) * 1'000, draw.of({"m", "ft", "mm"}))});
    if (draw.one_in(7))
        add(job, {"--in-order"});
}

void draw_film_on_hand(Draw& draw, const DrawnFilm& film, Job& job) {
    if (draw.one_in(4)) {
        job.files["stock.yaml"] = draw_stock(draw, film, job.stock);
        add(job, {"--stock", "stock.yaml"});
        return;
    }
    if (!draw.one_in(10))
        return;
    const int length = draw.within(5'000, 120'000);
    DrawnRoll roll{length / 10.0, {}};
    add(job, {"--on-hand", in_unit(length, "mm")});
    if (draw.one_in(2)) {
        const int from = draw.within(0, length / 2);
        const int to = from + draw.within(100, 4'000);
        add(job, {"--flaw", in_unit(from, "mm") + ".." + in_unit(to, "mm")});
        roll.flaws.push_back({from / 10.0, to / 10.0});
    }
    job.stock["on hand"] = roll;
}

void draw_amounts(Draw& draw, const DrawnFilm& film, Job& job) {
    static const std::vector<std::string> narrow{"1220", "1.22 m", "48 in", "54in", "760", "1000"};
    if (draw.one_in(10))
        add(job, {"--width", draw.of(narrow)});
    else if (draw.one_in(20))
        add(job, {"--width", in_unit(film.width, "mm")});
    if (draw.one_in(10))
        add(job, {"--sure", draw.of({"80 %", "95 %", "99 %", "60%"})});
    if (draw.one_in(10))
        add(job, {"--tolerance", in_unit(draw.within(0, 120), draw.of({"mm", "in"}))});
}

} // namespace

void draw_command(Draw& draw, const DrawnVehicle& vehicle, const DrawnFilm& film, Job& job) {
    job.words = {"cut", "v.yaml", "film.yaml"};
    Sides sides = all_sides(vehicle);
    draw_cutting(draw, job);
    draw_selection(draw, vehicle, sides, job);
    draw_half_done(draw, sides, job);
    const int times = draw.one_in(10) ? draw.within(2, 6) : 1;
    if (times > 1)
        add(job, {"--times", std::to_string(times)});
    if (!vehicle.hardware.empty() && draw.one_in(2))
        add(job, {"--leave", draw.of(vehicle.hardware)});
    if (draw.one_in(12))
        add(job, {"--seams", draw.of({"auto", "never"})});
    draw_film_on_hand(draw, film, job);
    draw_amounts(draw, film, job);
    if (draw.one_in(4)) {
        job.units = draw.of({"cm", "in", "m", "ft", "yd"});
        add(job, {"--units", job.units});
    }
    if (draw.one_in(12))
        add(job, {"-v"});
    if (draw.one_in(20))
        add(job, {"--seed", std::to_string(draw.within(2, 99))});
    for (const Side& side : sides)
        job.wanted.push_back(
            {side.panel->name, side.side, side.panel->pieces_a_side * times, side.panel->inlays});
}

} // namespace pelt::generated
