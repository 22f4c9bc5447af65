// SPDX-License-Identifier: MIT
#include "model/marked_length.hpp"

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace pelt {
namespace {

// Shift out and shift in of ASCII.
constexpr char begin_mark = '\x0e';
constexpr char end_mark = '\x0f';
constexpr std::string_view letters = "udnf"; ///< of Told, in its order

Um rounded(Um length, Um step, Told told) {
    const Um down = length / step - (length % step < 0 ? 1 : 0);
    const Um rest = length - down * step;
    const bool up = told == Told::up ? rest > 0 : told != Told::down && 2 * rest >= step;
    return down + (up ? 1 : 0);
}

std::string decimal(Um steps, int places) {
    const std::string sign = steps < 0 ? "-" : "";
    std::string digits = std::to_string(std::abs(steps));
    const auto wanted = static_cast<std::size_t>(places) + 1;
    if (digits.size() < wanted)
        digits.insert(0, wanted - digits.size(), '0');
    if (places > 0)
        digits.insert(digits.size() - static_cast<std::size_t>(places), ".");
    return sign + digits;
}

std::string eighths(Um count) {
    const std::string sign = count < 0 ? "-" : "";
    const Um whole = std::abs(count) / 8;
    const Um rest = std::abs(count) % 8;
    if (rest == 0)
        return sign + std::to_string(whole);
    const Um common = std::gcd(rest, Um{8});
    const std::string part = std::to_string(rest / common) + "/" + std::to_string(8 / common);
    return sign + (whole == 0 ? part : std::to_string(whole) + " " + part);
}

std::string told_in(Um length, Unit unit, Told told) {
    constexpr Um eighth = 3175;
    constexpr Um hundredth = 254;
    const bool finely = told == Told::finely;
    const bool metric = unit == Unit::mm || unit == Unit::cm || unit == Unit::m;
    // What holds is never told as nothing where there is something.
    const bool little = told == Told::down && length > hundredth && length < eighth;
    if (!metric)
        return (finely || little ? decimal(rounded(length, hundredth, told), 2)
                                 : eighths(rounded(length, eighth, told))) +
               " in";
    const int places = (unit == Unit::mm ? 0 : unit == Unit::cm ? 1 : 3) + (finely ? 1 : 0);
    const Um step = finely ? um_per_mm / 10 : um_per_mm;
    return decimal(rounded(length, step, told), places) + " " + std::string(name_of(unit));
}

} // namespace

std::string marked(Um length, Told told) {
    return begin_mark + std::string(1, letters[static_cast<std::size_t>(told)]) +
           std::to_string(length) + end_mark;
}

std::string marked_mm(double mm, Told told) {
    return marked(static_cast<Um>(std::llround(mm * um_per_mm)), told);
}

std::string in_unit(std::string_view sentence, Unit unit) {
    std::string out;
    for (;;) {
        const std::size_t begin = sentence.find(begin_mark);
        out += sentence.substr(0, begin);
        if (begin == std::string_view::npos)
            return out;
        const std::size_t end = sentence.find(end_mark, begin);
        if (end == std::string_view::npos || end < begin + 3)
            return out;
        const std::size_t letter = letters.find(sentence[begin + 1]);
        const std::string_view digits = sentence.substr(begin + 2, end - begin - 2);
        Um length = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), length);
        if (letter != std::string_view::npos)
            out += told_in(length, unit, static_cast<Told>(letter));
        sentence.remove_prefix(end + 1);
    }
}

} // namespace pelt
