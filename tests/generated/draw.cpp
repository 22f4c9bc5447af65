// SPDX-License-Identifier: MIT
#include "draw.hpp"

#include <cstdlib>
#include <stdexcept>

namespace pelt::generated {
namespace {

struct Unit {
    const char* name;
    std::int64_t tenths; ///< of a millimetre
    int digits;          ///< behind the point
};

constexpr Unit units[] = {{"mm", 10, 1},  {"cm", 100, 2},  {"m", 10'000, 4},
                          {"in", 254, 4}, {"ft", 3048, 5}, {"yd", 9144, 5}};

const Unit& unit_named(const std::string& name) {
    for (const Unit& unit : units)
        if (name == unit.name)
            return unit;
    throw std::logic_error("no such unit: " + name);
}

std::string decimal(std::int64_t tenths, const Unit& unit) {
    std::int64_t scale = 1;
    for (int i = 0; i < unit.digits; ++i)
        scale *= 10;
    const std::int64_t whole = (std::abs(tenths) * scale + unit.tenths / 2) / unit.tenths;
    std::string digits = std::to_string(whole % scale);
    digits.insert(0, static_cast<std::size_t>(unit.digits) - digits.size(), '0');
    while (digits.ends_with('0'))
        digits.pop_back();
    std::string text = tenths < 0 && whole > 0 ? "-" : "";
    text += std::to_string(whole / scale);
    return digits.empty() ? text : text + "." + digits;
}

} // namespace

std::string joined(std::initializer_list<std::string> texts) {
    std::string out;
    for (const std::string& text : texts)
        out += text;
    return out;
}

std::string listed(const std::vector<std::string>& texts, const std::string& between) {
    std::string out;
    for (std::size_t i = 0; i < texts.size(); ++i)
        out += (i == 0 ? "" : between) + texts[i];
    return out;
}

std::string in_unit(int tenths, const std::string& unit) {
    return decimal(tenths, unit_named(unit)) + " " + unit;
}

std::string Pen::bare(int tenths) const {
    return decimal(tenths, unit_named(unit_));
}

std::string Pen::length(int tenths) {
    if (!draw_.one_in(12))
        return bare(tenths);
    return in_unit(tenths, draw_.of({"mm", "cm", "m", "in", "ft"}));
}

std::string Pen::point(int x, int y) {
    return joined({"[", length(x), ", ", length(y), "]"});
}

std::string Pen::rough(int tenths) {
    const int eighths = tenths * 8 / 254;
    if (eighths < 1 || !draw_.one_in(8))
        return length(tenths);
    std::string text = eighths >= 8 ? std::to_string(eighths / 8) : "";
    if (eighths % 8 != 0)
        text += (text.empty() ? "" : " ") + std::to_string(eighths % 8) + "/8";
    return text + " in";
}

std::string drawn_unit(Draw& draw) {
    return draw.one_in(3) ? draw.of({"cm", "in", "m", "ft", "in"}) : "mm";
}

} // namespace pelt::generated
