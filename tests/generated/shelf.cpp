// SPDX-License-Identifier: MIT
#include "job.hpp"

#include <algorithm>

namespace pelt::generated {
namespace {

struct Roll {
    int length = 0; ///< tenths of a millimetre
    int width = 0;
};

std::string draw_flaws(Draw& draw, Pen& pen, const Roll& roll, DrawnRoll& known) {
    std::vector<std::string> texts;
    int at = draw.within(0, roll.length / 2);
    for (int i = draw.within(1, 2); i > 0 && at + 500 < roll.length; --i) {
        const int to = std::min(roll.length, at + draw.within(100, 4'000));
        std::string text = joined({"from: ", pen.bare(at), ", to: ", pen.bare(to)});
        if (draw.one_in(3)) {
            const int low = draw.within(0, roll.width / 2);
            text +=
                joined({", low: ", pen.bare(low),
                        ", high: ", pen.bare(std::min(roll.width, low + draw.within(200, 4'000)))});
        } else {
            known.flaws.push_back({at / 10.0, to / 10.0});
        }
        texts.push_back("{" + text + "}");
        at = to + draw.within(1'000, 9'000);
    }
    return ", flaws: [" + listed(texts) + "]";
}

std::string draw_cost(Draw& draw) {
    if (draw.one_in(2))
        return ", cost: " + std::to_string(draw.within(0, 40));
    return joined({", cost: {by: ", draw.of({"1 m", "1 ft", "0.5 m"}),
                   ", price: ", std::to_string(draw.within(0, 30)), "}"});
}

} // namespace

std::string draw_stock(Draw& draw, const DrawnFilm& film, std::map<std::string, DrawnRoll>& rolls) {
    Pen pen(draw, drawn_unit(draw));
    std::string text = "demonstration: yes\n";
    if (pen.unit() != "mm")
        text += "units: " + pen.unit() + "\n";
    text += "stock:\n";
    for (int i = draw.within(1, 5); i > 0; --i) {
        const std::string name = "shelf " + std::to_string(i);
        Roll roll;
        roll.length = draw.within(3'000, draw.one_in(3) ? 250'000 : 60'000);
        roll.width = draw.one_in(3) ? draw.within(3'000, 16'000) : film.width;
        DrawnRoll known;
        known.length_mm = roll.length / 10.0;
        text += joined({"  - {name: ", name,
                        ", film: ", draw.one_in(8) ? std::string("Another film") : film.name,
                        ", width: ", pen.bare(roll.width), ", length: ", pen.bare(roll.length)});
        if (draw.one_in(3))
            text += ", trim: " + pen.length(draw.within(0, 100));
        if (draw.one_in(2))
            text += ", batch: " + draw.of({"B1", "B1", "B2"});
        if (draw.one_in(2))
            text += draw_cost(draw);
        if (draw.one_in(6))
            text += ", arrow: unknown";
        if (draw.one_in(3))
            text += draw_flaws(draw, pen, roll, known);
        text += "}\n";
        rolls[name] = known;
    }
    return text;
}

} // namespace pelt::generated
