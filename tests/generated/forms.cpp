// SPDX-License-Identifier: MIT
#include "panel.hpp"

#include <algorithm>

namespace pelt::generated {
namespace {

struct Corner {
    int x = 0;
    int y = 0;
};

/// Sixteen ways round, counter-clockwise, in thousandths; whole numbers are alike on all machines.
constexpr Corner ways[16] = {{1000, 0},  {924, 383},   {707, 707},   {383, 924},
                             {0, 1000},  {-383, 924},  {-707, 707},  {-924, 383},
                             {-1000, 0}, {-924, -383}, {-707, -707}, {-383, -924},
                             {0, -1000}, {383, -924},  {707, -707},  {924, -383}};

void box_around(const std::vector<Corner>& ring, Form& form) {
    const auto by_x =
        std::minmax_element(ring.begin(), ring.end(), [](Corner a, Corner b) { return a.x < b.x; });
    const auto by_y =
        std::minmax_element(ring.begin(), ring.end(), [](Corner a, Corner b) { return a.y < b.y; });
    form.left = by_x.first->x;
    form.right = by_x.second->x;
    form.low = by_y.first->y;
    form.high = by_y.second->y;
}

/// A point beside the middle of the edge, out by so many per cent of it.
Corner beside(Corner a, Corner b, int percent) {
    return {(a.x + b.x) / 2 + (b.y - a.y) * percent / 100,
            (a.y + b.y) / 2 - (b.x - a.x) * percent / 100};
}

std::string edge_name(std::size_t from, std::size_t count) {
    return std::to_string(from) + "-" + std::to_string(from % count + 1);
}

/// The ring as an outline, some of its edges bent, some with names.
void write_outline(Draw& draw, Pen& pen, const std::vector<Corner>& ring, int bent_one_in,
                   Form& form) {
    std::vector<std::string> points;
    for (const Corner corner : ring)
        points.push_back(pen.point(corner.x, corner.y));
    const std::size_t count = ring.size();
    std::vector<std::string> texts{points[0]};
    for (std::size_t i = 1; i <= count; ++i) {
        const bool closes = i == count;
        std::string extra;
        if (draw.one_in(bent_one_in)) {
            const Corner through = beside(ring[i - 1], ring[i % count], draw.within(-4, 12));
            extra += joined({"through: ", pen.point(through.x, through.y), ", "});
        }
        const bool named = draw.one_in(5) && (!closes || !extra.empty());
        form.edges.push_back(edge_name(i, count));
        if (named) {
            form.edges.back() = "edge " + std::to_string(i);
            extra += "name: " + form.edges.back() + ", ";
        }
        if (!extra.empty())
            texts.push_back("{" + extra + "to: " + points[i % count] + "}");
        else if (!closes)
            texts.push_back(points[i]);
    }
    form.text = "outline: [" + listed(texts) + "]";
    box_around(ring, form);
}

Form size(Draw& draw, Pen& pen) {
    Form form;
    const int wide = draw.one_in(4) ? draw.within(600, 3'000) : draw.within(3'000, 20'000);
    const int high = draw.one_in(4) ? draw.within(500, 2'000) : draw.within(2'000, 15'000);
    form.text = joined({"size: [", pen.rough(wide), ", ", pen.rough(high), "]"});
    form.right = wide;
    form.high = high;
    form.edges = {"1-2", "2-3", "3-4", "4-1"};
    form.middle.x = wide / 2;
    form.middle.y = high / 2;
    form.middle.room = std::min(wide, high) * 2 / 5;
    form.may_bulge = true;
    return form;
}

/// A figure that is seen whole from its middle.
Form star(Draw& draw, Pen& pen) {
    const int wide = draw.within(600, 9'000);
    const int high = draw.within(400, 6'500);
    const int least = draw.one_in(3) ? 450 : 800;
    const int at_x = draw.one_in(2) ? 0 : draw.within(-5'000, 9'000);
    const int at_y = draw.one_in(2) ? 0 : draw.within(-3'000, 6'000);
    std::vector<Corner> ring;
    int at = draw.within(0, 2);
    while (at < 16) {
        const int reach = draw.within(least, 1'000);
        ring.push_back({at_x + ways[at].x * reach / 1'000 * wide / 1'000,
                        at_y + ways[at].y * reach / 1'000 * high / 1'000});
        at += draw.within(1, 4);
    }
    Form form;
    write_outline(draw, pen, ring, 4, form);
    form.middle.x = at_x;
    form.middle.y = at_y;
    form.middle.room = std::min(wide, high) * least / 1'000 * 2 / 5;
    form.may_bulge = true;
    return form;
}

/// A door above a wheel arch, a quarter with a step: corners that look inwards, mostly square.
Form stepped(Draw& draw, Pen& pen) {
    const int wide = draw.within(4'000, 18'000);
    const int high = draw.within(3'000, 13'000);
    const int in = draw.within(wide / 10, wide / 3);
    const int up = draw.within(high / 10, high / 3);
    const int slant = draw.one_in(2) ? 0 : draw.within(-wide / 20, wide / 20);
    std::vector<Corner> ring{{0, 0},
                             {wide - in, 0},
                             {wide - in + slant, up},
                             {wide, up},
                             {wide - std::max(0, slant), high}};
    if (draw.one_in(2)) {
        ring.push_back({in, high});
        ring.push_back({in - slant, high - up});
        ring.push_back({0, high - up});
    } else {
        ring.push_back({std::max(0, slant), high});
    }
    Form form;
    write_outline(draw, pen, ring, 8, form);
    form.middle.x = wide / 2;
    form.middle.y = high / 2;
    form.middle.room = std::min(wide, high) / 8;
    form.may_bulge = true;
    return form;
}

Form girths(Draw& draw, Pen& pen) {
    const int stations = draw.within(2, 6);
    int at = draw.one_in(2) ? 0 : draw.within(-9'000, 0);
    Form form;
    form.left = at;
    int least = 100'000;
    std::vector<std::string> texts;
    for (int i = 0; i < stations; ++i) {
        const int up = draw.within(500, 3'500);
        const int down = draw.within(400, 3'000);
        texts.push_back(joined({"{at: ", pen.length(at), ", up: ", pen.length(up),
                                ", down: ", pen.length(down), "}"}));
        form.right = at;
        form.high = std::max(form.high, up);
        form.low = std::min(form.low, -down);
        least = std::min({least, up, down});
        at += draw.within(1'200, 7'000);
    }
    form.text = "girths: [" + listed(texts) + "]";
    if (draw.one_in(2))
        form.text += ", through stations: smooth";
    form.middle.x = (form.left + form.right) / 2;
    form.middle.room = std::min(least, (form.right - form.left) / 2) * 2 / 5;
    form.edges = {"top", "bottom"};
    return form;
}

std::string crown(Draw& draw, Pen& pen, const Form& form) {
    const auto rise = [&](int extent) {
        const int percent = draw.one_in(8) ? draw.within(-6, 20) : draw.within(0, 6);
        return extent / 100 * percent;
    };
    return joined({", crown: {wide: ", pen.length(rise(form.right - form.left)),
                   ", high: ", pen.length(rise(form.high - form.low)), "}",
                   draw.one_in(4) ? ", measured: over" : ""});
}

} // namespace

Form draw_form(Draw& draw, Pen& pen, const std::string& scan_name) {
    const int kind = draw.within(1, 20);
    Form form = kind <= 7    ? size(draw, pen)
                : kind <= 12 ? star(draw, pen)
                : kind <= 15 ? stepped(draw, pen)
                : kind <= 19 ? girths(draw, pen)
                             : draw_scan(draw, scan_name);
    if (form.may_bulge && draw.one_in(4))
        form.text += crown(draw, pen, form);
    return form;
}

} // namespace pelt::generated
