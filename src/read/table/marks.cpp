// SPDX-License-Identifier: MIT
#include "read/table/marks.hpp"

#include "read/decimal.hpp"

namespace pelt::read {
namespace {

bool is_mark(std::string_view text, std::size_t at) {
    return (text[at] == '.' || text[at] == ',') && at > 0 && is_digit(text[at - 1]) &&
           at + 1 < text.size() && is_digit(text[at + 1]);
}

std::size_t digits_behind(std::string_view text, std::size_t mark) {
    std::size_t count = 0;
    while (mark + 1 + count < text.size() && is_digit(text[mark + 1 + count]))
        ++count;
    return count;
}

std::string without(std::string_view text, std::size_t at) {
    return std::string(text.substr(0, at)) + std::string(text.substr(at + 1));
}

std::string name_of_mark(char mark) {
    return mark == ',' ? "comma" : "point";
}

} // namespace

std::optional<Refusal> DecimalMarks::refusal_of(std::string_view text, std::size_t at,
                                                const Place& place) {
    constexpr std::size_t digits_of_thousands = 3;
    const char mark = text[at];
    if (digits_behind(text, at) == digits_of_thousands)
        return Refusal{quoted(text) + " has a " + name_of_mark(mark) +
                           " before three digits: are these thousands?",
                       "write " + without(text, at) + ", or another number of decimals"};
    if (mark == ',' && only_points_)
        return Refusal{quoted(text) + " has a decimal comma, and commas part the cells",
                       "write decimals with a point, or part the cells by semicolons"};
    if (first_mark_ != '\0' && mark != first_mark_)
        return Refusal{quoted(text) + " has a decimal " + name_of_mark(mark) + ", but " +
                           cell_name(first_place_.line, first_place_.column) + " a decimal " +
                           name_of_mark(first_mark_),
                       "write all decimals of the file in one way"};
    if (first_mark_ == '\0') {
        first_mark_ = mark;
        first_place_ = place;
    }
    return std::nullopt;
}

Parsed<std::string> DecimalMarks::with_points(std::string_view text, const Place& place) {
    std::string out(text);
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (!is_mark(text, at))
            continue;
        if (auto refused = refusal_of(text, at, place))
            return *std::move(refused);
        out[at] = '.';
    }
    return out;
}

} // namespace pelt::read
