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

constexpr double before_line = 0.3;
constexpr double clearance = 0.1; ///< on every side

constexpr std::array<double, 7> sizes_with_lines{150, 120, 100, 84, 70, 58, 48};
constexpr std::array<double, 9> sizes_alone{120, 100, 84, 70, 58, 48, 38, 30, 22};

struct Extent {
    double width;
    double height;
};

std::string in_one_line(const PieceLabel& label) {
    std::string text;
    for (const std::string& line : label.lines)
        text += (text.empty() ? "" : " · ") + line;
    return text;
}

/// In terms of the number's height.
Extent extent_of(const PieceLabel& label, LabelForm form) {
    Extent extent{arrow_room + text_width_em(label.number), number_room};
    if (form == LabelForm::beside)
        extent.width += before_line + text_width_em(in_one_line(label)) * line_size;
    if (form != LabelForm::below)
        return extent;
    for (const std::string& line : label.lines) {
        extent.width = std::max(extent.width, text_width_em(line) * line_size);
        extent.height += line_pitch;
    }
    return extent;
}

SvgBox inner(const SvgBox& box, double clear) {
    return {box.x + clear / 2, box.y + clear / 2, box.width - clear, box.height - clear};
}

std::optional<SetLabel> set_at(const PieceLabel& label, const LabelSpace& space, double size,
                               LabelForm form) {
    const Extent e = extent_of(label, form);
    const double width = e.width * size;
    const double height = e.height * size;
    const double clear = 2 * clearance * size;
    if (const auto box = space.room_for(width + clear, height + clear))
        return SetLabel{label, inner(*box, clear), size, false, form};
    if (const auto box = space.room_for(height + clear, width + clear))
        return SetLabel{label, inner(*box, clear), size, true, form};
    return std::nullopt;
}

/// Writes one label in its reading direction, whichever way that is.
class LabelWriter {
public:
    explicit LabelWriter(const SetLabel& set)
        : set_(set), along_(-(set.turned ? set.box.height : set.box.width) / 2),
          down_(-(set.turned ? set.box.width : set.box.height) / 2) {}

    std::string written() {
        const double size = set_.size;
        const Extent alone = extent_of(set_.label, LabelForm::number_only);
        const double row = down_ + number_room * size / 2;
        // What stands below is centred; what stands beside follows on.
        double begin = set_.form == LabelForm::beside ? along_ : -alone.width * size / 2;
        const SvgPoint arrow = at(begin + arrow_length * size / 2, row);
        out_ = svg_arrow(arrow.x, arrow.y, arrow_length * size, set_.label.forward_degrees);
        begin += arrow_room * size;
        const double number_width = text_width_em(set_.label.number) * size;
        put("number", begin + number_width / 2, row, size, set_.label.number);
        if (set_.form == LabelForm::beside) {
            const std::string line = in_one_line(set_.label);
            begin += number_width + before_line * size;
            put("name", begin + text_width_em(line) * line_size * size / 2, row, line_size * size,
                line);
        }
        if (set_.form == LabelForm::below)
            put_lines_below(row + (number_room + line_pitch) * size / 2);
        return out_;
    }

private:
    SvgPoint at(double along, double down) const {
        const double x = set_.box.x + set_.box.width / 2;
        const double y = set_.box.y + set_.box.height / 2;
        return set_.turned ? SvgPoint{x + down, y - along} : SvgPoint{x + along, y + down};
    }

    void put(std::string_view css_class, double along, double down, double size,
             const std::string& text) {
        const SvgPoint place = at(along, down);
        out_ += svg_label(css_class, place.x, place.y, size, set_.turned, text);
    }

    void put_lines_below(double down) {
        for (const std::string& line : set_.label.lines) {
            put("name", 0, down, line_size * set_.size, line);
            down += line_pitch * set_.size;
        }
    }

    const SetLabel& set_;
    double along_; ///< the label's beginning, from its middle
    double down_;  ///< its upper side, from its middle
    std::string out_;
};

} // namespace

std::optional<SetLabel> set_label(const PieceLabel& label, const LabelSpace& space) {
    for (const double size : sizes_with_lines)
        for (const LabelForm form : {LabelForm::below, LabelForm::beside})
            if (auto set = set_at(label, space, size, form))
                return set;
    for (const double size : sizes_alone)
        if (auto set = set_at(label, space, size, LabelForm::number_only))
            return set;
    return std::nullopt;
}

std::string svg_of(const SetLabel& set) {
    return LabelWriter(set).written();
}

std::string svg_arrow(double x, double y, double length, double degrees) {
    const std::string turn =
        degrees == 0 ? "" : " rotate(" + decimal(-std::llround(degrees * 1000), 3, 0) + ")";
    return "<path class=\"arrow\" transform=\"translate(" + svg_number(x) + " " + svg_number(y) +
           ")" + turn + " scale(" + svg_number(length) +
           ")\" d=\"M-0.5-0.08H0.12V-0.26L0.5 0L0.12 0.26V0.08H-0.5Z\"/>\n";
}

} // namespace pelt::report
