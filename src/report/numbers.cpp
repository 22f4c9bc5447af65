// SPDX-License-Identifier: MIT
#include "report/numbers.hpp"

#include "report/decimal.hpp"

#include <cmath>
#include <numeric>

namespace pelt::report {
namespace {

constexpr Um eighth_of_an_inch = 3175;

Int128 steps_of(Int128 value, Int128 step, Rounding rounding) {
    return rounding == Rounding::up ? divided_up(value, step) : divided_down(value, step);
}

std::string eighths(std::int64_t count) {
    const std::string sign = count < 0 ? "-" : "";
    const std::int64_t whole = std::abs(count) / 8;
    const std::int64_t rest = std::abs(count) % 8;
    if (rest == 0)
        return sign + std::to_string(whole);
    const std::int64_t common = std::gcd(rest, std::int64_t{8});
    const std::string fraction = std::to_string(rest / common) + "/" + std::to_string(8 / common);
    return sign + (whole == 0 ? fraction : std::to_string(whole) + " " + fraction);
}

// Doubled, in square micrometres.
constexpr Int128 hundredth_of_a_square_metre = Int128{2} * 10'000'000'000;
// 0.3048 m squared is 0.09290304 m², exactly: 9 290 304 × 10^4 µm².
constexpr Int128 square_foot = Int128{2} * 92'903'040'000;

} // namespace

Um Measures::size_step() const {
    return metric() ? um_per_mm : eighth_of_an_inch;
}

std::string Measures::size_unit() const {
    return std::string(metric() ? name_of(unit_) : "in");
}

std::string Measures::size_unit_in_words() const {
    switch (unit_) {
    case Unit::mm:
        return "millimeters";
    case Unit::cm:
        return "centimeters";
    case Unit::m:
        return "meters";
    default:
        return "inches";
    }
}

std::string Measures::sizes_in_words() const {
    return size_unit_in_words() + ", rounded up to " +
           (!metric()           ? "eighths"
            : unit_ == Unit::mm ? "whole ones"
                                : "whole millimeters");
}

std::string Measures::size(Um um, Rounding rounding) const {
    const Int128 steps = steps_of(um, size_step(), rounding);
    if (!metric())
        return eighths(static_cast<std::int64_t>(steps));
    const int places = unit_ == Unit::mm ? 0 : unit_ == Unit::cm ? 1 : 3;
    return decimal(steps, places, places);
}

std::string Measures::size_with_unit(Um um, Rounding rounding) const {
    return size(um, rounding) + " " + size_unit();
}

std::string Measures::sides(Um along, Um across) const {
    return size(along) + " × " + size(across);
}

std::string Measures::film_unit() const {
    return std::string(metric() ? "m" : name_of(unit_));
}

Um Measures::tick() const {
    return length_of(metric() ? Unit::m : Unit::yd).ceil_um();
}

std::string Measures::film(Length length, Rounding rounding) const {
    if (unit_ == Unit::in)
        return size_with_unit(rounding == Rounding::up ? length.ceil_um() : length.floor_um(),
                              rounding);
    const int places = metric() ? 3 : 2;
    const Unit unit = metric() ? Unit::m : unit_;
    const Int128 scaled = Int128{length.pm()} * (metric() ? 1000 : 100);
    const Int128 steps = steps_of(scaled, length_of(unit).pm(), rounding);
    return decimal(steps, places, 0) + " " + film_unit();
}

std::string Measures::as_sold(Length length) const {
    const std::string text = film(length, Rounding::down);
    if (text == film(length, Rounding::up))
        return text;
    for (const Unit unit : {Unit::m, Unit::yd, Unit::ft, Unit::in, Unit::cm, Unit::mm})
        if (length.pm() % length_of(unit).pm() == 0)
            return std::to_string(length.pm() / length_of(unit).pm()) + " " +
                   std::string(name_of(unit));
    return film(length, Rounding::up);
}

std::string Measures::film(Um um, Rounding rounding) const {
    return film(Length::from_um(um), rounding);
}

std::string Measures::area(DoubleArea doubled) const {
    const AreaStep step = area_step();
    return area_of_steps(divided_nearest(doubled * step.times, step.over));
}

Measures::AreaStep Measures::area_step() const {
    return metric() ? AreaStep{1, hundredth_of_a_square_metre} : AreaStep{100, square_foot};
}

std::string Measures::area_of_steps(Int128 steps) const {
    return decimal(steps, 2, 2) + " " + area_unit();
}

std::string Measures::area_number(DoubleArea doubled) const {
    if (metric())
        return decimal(divided_nearest(doubled * 10, hundredth_of_a_square_metre), 3, 3);
    return decimal(divided_nearest(doubled * 100, square_foot), 2, 2);
}

std::string Measures::area_unit() const {
    return metric() ? "m²" : "sq ft";
}

std::string percent(Int128 part, Int128 whole) {
    return percent_of_tenths(divided_nearest(part * 1000, whole));
}

std::string percent_of_tenths(Int128 tenths) {
    return decimal(tenths, 1, 1) + " %";
}

std::string percent(double value) {
    return decimal(std::llround(value * 10), 1, 0) + " %";
}

std::string money(Money amount, int digits, const std::string& currency) {
    const std::string number = to_string(amount, digits);
    return currency.empty() ? number : number + " " + currency;
}

std::string stretch_text(const StretchAsked& stretch) {
    switch (stretch.is) {
    case StretchAsked::Is::exact:
        return percent(stretch.percent);
    case StretchAsked::Is::estimate:
        return "about " + percent(stretch.percent);
    case StretchAsked::Is::unknown:
        return "not checked";
    }
    return "not checked";
}

std::string counted(std::int64_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

} // namespace pelt::report
