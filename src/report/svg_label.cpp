// SPDX-License-Identifier: MIT
#include "report/svg_label.hpp"

#include "report/decimal.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace pelt::report {
namespace {

// All in terms of the number's height.
constexpr double line_size = 0.38;
constexpr double line_pitch = 0.52;
constexpr double arrow_length = 0.9;
constexpr double arrow_room = 1.15;
constexpr double number_room = 1.0;

constexpr std::array<double, 7> sizes_with_lines{150, 120, 100, 84, 70, 58, 48};
constexpr std::array<double, 9> sizes_alone{120, 100, 84, 70, 58, 48, 38, 30, 22};

struct Extent {
    double width;
    double height;
};

Extent extent_of(const PieceLabel& label, double size, bool with_lines) {
    Extent extent{(arrow_room + text_width_em(label.number)) * size, number_room * size};
    if (!with_lines)
        return extent;
    for (const std::string& line : label.lines) {
        extent.width = std::max(extent.width, text_width_em(line) * line_size * size);
        extent.height += line_pitch * size;
    }
    return extent;
}

std::optional<SetLabel> set_at(const PieceLabel& label, const LabelSpace& space, double size,
                               bool with_lines) {
    const Extent e = extent_of(label, size, with_lines);
    if (const auto box = space.room_for(e.width, e.height))
        return SetLabel{label, *box, size, false, with_lines};
    if (const auto box = space.room_for(e.height, e.width))
        return SetLabel{label, *box, size, true, with_lines};
    return std::nullopt;
}

} // namespace

std::optional<SetLabel> set_label(const PieceLabel& label, const LabelSpace& space) {
    for (const double size : sizes_with_lines)
        if (auto set = set_at(label, space, size, true))
            return set;
    for (const double size : sizes_alone)
        if (auto set = set_at(label, space, size, false))
            return set;
    return std::nullopt;
}

std::string svg_of(const SetLabel& set) {
    const double middle_x = set.box.x + set.box.width / 2;
    const double middle_y = set.box.y + set.box.height / 2;
    // Along the reading direction and down the lines, from the middle of the label.
    const auto at = [&](double along, double down) {
        return set.turned ? SvgPoint{middle_x + down, middle_y - along}
                          : SvgPoint{middle_x + along, middle_y + down};
    };
    const double size = set.size;
    const double height = set.turned ? set.box.width : set.box.height;
    const double first_row = -height / 2 + number_room * size / 2;
    const double number_width = text_width_em(set.label.number) * size;
    const double row_width = arrow_room * size + number_width;
    const SvgPoint arrow = at(-row_width / 2 + arrow_length * size / 2, first_row);
    const SvgPoint number = at(row_width / 2 - number_width / 2, first_row);
    std::string out = svg_arrow(arrow.x, arrow.y, arrow_length * size, set.label.forward_degrees);
    out += svg_label("number", number.x, number.y, size, set.turned, set.label.number);
    double down = first_row + (number_room + line_pitch) * size / 2;
    for (const std::string& line : set.has_lines ? set.label.lines : std::vector<std::string>{}) {
        const SvgPoint place = at(0, down);
        out += svg_label("name", place.x, place.y, line_size * size, set.turned, line);
        down += line_pitch * size;
    }
    return out;
}

std::string svg_arrow(double x, double y, double length, double degrees) {
    const std::string turn =
        degrees == 0 ? "" : " rotate(" + decimal(-std::llround(degrees * 1000), 3, 0) + ")";
    return "<path class=\"arrow\" transform=\"translate(" + svg_number(x) + " " + svg_number(y) +
           ")" + turn + " scale(" + svg_number(length) +
           ")\" d=\"M-0.5-0.08H0.12V-0.26L0.5 0L0.12 0.26V0.08H-0.5Z\"/>\n";
}

} // namespace pelt::report
