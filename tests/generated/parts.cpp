// SPDX-License-Identifier: MIT
#include "panel.hpp"

#include <algorithm>

namespace pelt::generated {
namespace {

std::string edge_work(Draw& draw, Pen& pen, const std::vector<std::string>& hardware) {
    const int kind = draw.within(1, 10);
    std::string text = kind <= 7   ? "wrap: " + pen.rough(draw.within(0, 35) * 10)
                       : kind <= 9 ? "stop: " + pen.rough(draw.within(10, 120))
                                   : "wrap: " + pen.length(draw.within(50, 500));
    if (!hardware.empty() && draw.one_in(10))
        text += ", behind: " + draw.of(hardware);
    return "{" + text + "}";
}

std::string rectangle(Pen& pen, int x, int y, int half_wide, int half_high) {
    return joined({"[", pen.point(x - half_wide, y - half_high), ", ",
                   pen.point(x + half_wide, y - half_high), ", ",
                   pen.point(x + half_wide, y + half_high), ", ",
                   pen.point(x - half_wide, y + half_high), "]"});
}

/// Two arcs, from the left point and back to it.
std::string circle(Pen& pen, int x, int y, int radius) {
    const std::string begin = pen.point(x - radius, y);
    return joined({"[", begin, ", {through: ", pen.point(x, y - radius),
                   ", to: ", pen.point(x + radius, y), "}, {through: ", pen.point(x, y + radius),
                   ", to: ", begin, "}]"});
}

std::string opening_extras(Draw& draw, Pen& pen, int room,
                           const std::vector<std::string>& hardware) {
    std::string text;
    if (draw.one_in(2))
        text += ", wrap: " + pen.rough(draw.within(0, std::max(1, std::min(150, room / 3))));
    if (draw.one_in(3))
        text += ", cut: " + draw.of({"table", "table", "vehicle"});
    if (!hardware.empty() && draw.one_in(3))
        text += ", behind: " + draw.of(hardware);
    if (draw.one_in(4))
        text += ", keep clear: " +
                draw.of({"radar", "camera", "ultrasonic", "aerial", "lamp", "plate"});
    return text;
}

} // namespace

std::string draw_edges(Draw& draw, Pen& pen, const Form& form,
                       const std::vector<std::string>& hardware) {
    if (draw.one_in(6))
        return ", edges: none";
    std::vector<std::string> names;
    if (!draw.one_in(5))
        names.emplace_back("all");
    if (draw.one_in(3))
        names.push_back(draw.of({"bottom", "top"}));
    if (draw.one_in(2))
        for (int more = draw.within(1, 2); more > 0; --more)
            names.push_back(draw.of(form.edges));
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (std::find(names.begin(), names.begin() + static_cast<std::ptrdiff_t>(i), names[i]) ==
            names.begin() + static_cast<std::ptrdiff_t>(i))
            texts.push_back(names[i] + ": " + edge_work(draw, pen, hardware));
    return texts.empty() ? "" : ", edges: {" + listed(texts) + "}";
}

std::string draw_openings(Draw& draw, Pen& pen, const Form& form, const Spot& spot,
                          const std::vector<std::string>& hardware) {
    if (form.is_scan)
        return form.has_hole && draw.one_in(2)
                   ? joined({", openings: {lamp: {hole: 1",
                             opening_extras(draw, pen, 100, hardware), "}}"})
                   : "";
    if (spot.room < 300 || !draw.one_in(4))
        return "";
    const int count = draw.within(1, 3);
    const int share = spot.room * 2 / count;
    std::vector<std::string> texts;
    for (int i = 0; i < count; ++i) {
        const int half = draw.within(share / 6, share * 2 / 5);
        const int x = spot.x - spot.room + share * i + share / 2;
        const int y = spot.y + draw.within(-spot.room / 4, spot.room / 4);
        const int half_high = draw.within(half / 2, std::max(half / 2, spot.room / 2));
        texts.push_back(joined({"hole ", std::to_string(i + 1), ": {outline: ",
                                draw.one_in(3) ? circle(pen, x, y, std::min(half, spot.room / 2))
                                               : rectangle(pen, x, y, half, half_high),
                                opening_extras(draw, pen, half, hardware), "}"}));
    }
    return ", openings: {" + listed(texts) + "}";
}

std::string draw_seams(Draw& draw, Pen& pen, const Form& form) {
    std::string text;
    const bool never = draw.one_in(16);
    if (never || draw.one_in(16))
        text += never ? ", seam: never" : ", seam: anywhere";
    if (form.is_scan || !draw.one_in(5))
        return text;
    const int wide = form.right - form.left;
    const int high = form.high - form.low;
    std::vector<std::string> lines;
    const int count = draw.one_in(3) ? 2 : 1;
    const bool upright = draw.one_in(2);
    for (int i = 0; i < count; ++i) {
        const int along = draw.one_in(6) ? draw.within(0, 100) : draw.within(15, 85);
        const int slant = draw.one_in(4) ? draw.within(-10, 10) : 0;
        std::string line;
        if (upright) {
            const int x = form.left + wide / 100 * ((along + 50 * i) % 100);
            line = joined({pen.point(x, form.low - 2'000), ", ",
                           pen.point(x + wide / 100 * slant, form.high + 2'000)});
        } else {
            const int y = form.low + high / 100 * ((along + 50 * i) % 100);
            line = joined({pen.point(form.left - 2'000, y), ", ",
                           pen.point(form.right + 2'000, y + high / 100 * slant)});
        }
        lines.push_back(joined({"{line: [", line, "]",
                                draw.one_in(2)   ? (never ? "" : ", use: always")
                                : draw.one_in(2) ? ", use: needed"
                                                 : "",
                                "}"}));
    }
    if (text.empty() && draw.one_in(2))
        text = ", seam: at lines";
    return text + ", seam lines: [" + listed(lines) + "]";
}

std::string draw_inlays(Draw& draw, Pen& pen, const Spot& spot, DrawnPanel& panel) {
    std::string text;
    if (spot.room >= 400 && draw.one_in(10)) {
        const int wide = draw.within(spot.room / 8, spot.room / 2);
        const int high = draw.within(spot.room / 8, spot.room / 2);
        text +=
            joined({", inlays: {plate: {at: ", pen.point(spot.x, spot.y),
                    ", size: ", pen.point(wide, high),
                    draw.one_in(2) ? ", overlap: " + pen.rough(draw.within(0, 120)) : "", "}}"});
        panel.inlays.emplace_back("plate");
    }
    if (spot.room >= 400 && draw.one_in(10))
        text += joined({", recesses: {cup: {at: ", pen.point(spot.x, spot.y),
                        ", size: ", pen.point(spot.room / 2, spot.room / 3),
                        ", depth: ", pen.length(draw.within(50, 600)), "}}"});
    return text;
}

std::string draw_allowances(Draw& draw, Pen& pen) {
    std::vector<std::string> texts;
    if (draw.one_in(3))
        texts.push_back("wrap: " + pen.rough(draw.within(0, 250)));
    if (draw.one_in(4))
        texts.push_back("bleed: " + pen.rough(draw.within(0, 200)));
    if (draw.one_in(3))
        texts.push_back("handling: " +
                        (draw.one_in(2)
                             ? pen.rough(draw.within(0, 700))
                             : joined({"{want: ", pen.length(draw.within(300, 700)),
                                       ", least: ", pen.length(draw.within(0, 300)), "}"})));
    if (draw.one_in(3))
        texts.push_back("overlap: " + pen.rough(draw.within(0, 250)));
    if (draw.one_in(6))
        texts.push_back("flush: " + pen.length(draw.within(0, 60)));
    return texts.empty() ? "" : ", allowances: {" + listed(texts) + "}";
}

} // namespace pelt::generated
