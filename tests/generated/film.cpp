// SPDX-License-Identifier: MIT
#include "job.hpp"

#include <algorithm>

namespace pelt::generated {
namespace {

struct Currency {
    const char* name;
    int digits; ///< ISO 4217, minor unit
};
constexpr Currency currencies[] = {{"EUR", 2}, {"USD", 2}, {"GBP", 2},
                                   {"CHF", 2}, {"JPY", 0}, {"KWD", 3}};

std::string money(int thousandths, int digits) {
    std::string text = std::to_string(thousandths / 1'000);
    if (digits == 0)
        return text;
    std::string after = std::to_string(1'000 + thousandths % 1'000).substr(1);
    return text + "." + after.substr(0, static_cast<std::size_t>(digits));
}

/// One way to buy: a whole unit, its price about in step with its length. What is sold is no longer
/// than the roll, and 'up to' no less than what is sold at least.
std::string draw_offer(Draw& draw, const DrawnFilm& film, int a_metre, int digits) {
    static const std::vector<std::pair<std::string, int>> units{
        {"1 m", 10'000}, {"0.5 m", 5'000}, {"0.1 m", 1'000},  {"2 m", 20'000},
        {"3 m", 30'000}, {"5 m", 50'000},  {"10 m", 100'000}, {"25 m", 250'000},
        {"1 yd", 9'144}, {"1 ft", 3'048},  {"7.5 m", 75'000}, {"5 yd", 45'720}};
    const int longest = film.roll_length > 0 ? film.roll_length : 300'000;
    std::vector<std::pair<std::string, int>> sold = units;
    std::erase_if(sold, [&](const auto& unit) { return unit.second > longest; });
    const auto& [by, tenths] = draw.of(sold);
    const int percent = draw.within(70, 115);
    std::string text = "by: " + by;
    text +=
        ", price: " + money(a_metre / 10 * (tenths / 100) / 100 * percent / 100 * 10 + 100, digits);
    int least = tenths;
    if (draw.one_in(4)) {
        const int from = draw.within(1, std::min(12, longest / 10'000 - 1)) * 10'000;
        text += ", from: " + in_unit(from, draw.of({"m", "ft"}));
        least = std::max(least, from);
    }
    if (draw.one_in(4))
        text += ", up to: " +
                in_unit(draw.within(least / 10'000 + 1, 30) * 10'000, draw.of({"m", "yd"}));
    return "{" + text + "}";
}

std::string draw_prices(Draw& draw, const DrawnFilm& film) {
    if (draw.one_in(4))
        return "";
    const int digits_of = draw.within(0, 5);
    const Currency& currency = currencies[digits_of];
    const int a_metre = draw.within(8, 60) * 1'000;
    std::vector<std::string> offers;
    for (int i = draw.within(1, 4); i > 0; --i)
        offers.push_back(draw_offer(draw, film, a_metre, currency.digits));
    std::string text = "sold: [" + listed(offers) + "]\n";
    if (!draw.one_in(8))
        text += joined({"currency: ", currency.name, "\n"});
    return text;
}

std::string draw_allowances_of_film(Draw& draw, Pen& pen) {
    std::vector<std::string> texts;
    const auto maybe = [&](const char* name, int one_in, int most) {
        if (!draw.one_in(one_in))
            texts.push_back(joined({name, ": ", pen.rough(draw.within(0, most))}));
    };
    maybe("wrap", 6, 250);
    maybe("bleed", 4, 200);
    maybe("overlap", 3, 200);
    maybe("gap", 4, 100);
    maybe("flush", 3, 50);
    if (!draw.one_in(5))
        texts.push_back("handling: " +
                        (draw.one_in(2)
                             ? pen.rough(draw.within(0, 600))
                             : joined({"{want: ", pen.length(draw.within(250, 600)),
                                       ", least: ", pen.length(draw.within(0, 250)), "}"})));
    if (draw.one_in(6))
        texts.push_back("ruler: " +
                        draw.of({"1 mm", "5 mm", "1/8 in", "1/4 in", "1 cm", "0.5 mm"}));
    return texts.empty() ? "" : "allowances: {" + listed(texts) + "}\n";
}

std::string draw_roll(Draw& draw, Pen& pen, DrawnFilm& film) {
    static const std::vector<std::pair<std::string, int>> widths{
        {"1524 mm", 15'240}, {"60 in", 15'240},   {"1220 mm", 12'200}, {"1.37 m", 13'700},
        {"760 mm", 7'600},   {"30 in", 7'620},    {"54 in", 13'716},   {"5 ft", 15'240},
        {"1524 mm", 15'240}, {"152.4 cm", 15'240}};
    const auto& [text, tenths] = draw.of(widths);
    film.width = tenths;
    std::string roll = "roll: {width: " + text;
    if (!draw.one_in(3))
        roll += ", trim: " + pen.rough(draw.within(0, 150));
    if (draw.one_in(2)) {
        static const std::vector<std::pair<std::string, int>> lengths{
            {"25 m", 250'000}, {"22.86 m", 228'600}, {"25 yd", 228'600}, {"10 m", 100'000},
            {"50 m", 500'000}, {"75 ft", 228'600},   {"5 m", 50'000}};
        const auto& [length, of_roll] = draw.of(lengths);
        roll += ", length: " + length;
        film.roll_length = of_roll;
    }
    return roll + "}\n";
}

} // namespace

DrawnFilm draw_film(Draw& draw) {
    DrawnFilm film;
    film.name = "Drawn film";
    Pen pen(draw, drawn_unit(draw));
    film.text = "film: Drawn film\ndemonstration: yes\n";
    if (pen.unit() != "mm")
        film.text += "units: " + pen.unit() + "\n";
    if (!draw.one_in(5))
        film.text += "kind: " + draw.of({"cast", "hybrid", "calendered", "polyurethane"}) + "\n";
    if (draw.one_in(2))
        film.text += "holds metal: " + draw.of({"yes", "no", "unknown"}) + "\n";
    film.text += draw_roll(draw, pen, film);
    film.direction = draw.of({"one-way", "one-way", "two-way", "any"});
    film.text += "direction: " + film.direction + "\n";
    if (draw.one_in(2))
        film.text += joined({"stretch: {edge: ", std::to_string(draw.within(1, 15)),
                             " %, panel: ", std::to_string(draw.within(5, 60)), " %}\n"});
    film.text += draw_allowances_of_film(draw, pen);
    film.text += draw_prices(draw, film);
    if (draw.one_in(5))
        film.text += joined({"worth keeping: {length: ", pen.length(draw.within(1'000, 9'000)),
                             ", width: ", pen.length(draw.within(500, 6'000)), "}\n"});
    return film;
}

} // namespace pelt::generated
