// SPDX-License-Identifier: MIT
#include "report/draw/label.hpp"

#include <algorithm>

namespace pelt::report::draw {
namespace {

// All in terms of the number's size.
constexpr double arrow_length = 0.9;
constexpr double arrow_room = 1.15;
constexpr double number_room = 1.0;
constexpr double pitch_of_lines = 1.37; ///< of a line's own size
constexpr double before_line = 0.3;
constexpr double clearance = 0.1; ///< on every side

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

double room_for_arrow(const PieceLabel& label) {
    return label.forward_degrees ? arrow_room : 0;
}

double number_width(const PieceLabel& label, const Letters& letters) {
    return letters.width_em(label.number, Face::bold);
}

Extent extent_of(const PieceLabel& label, LabelForm form, double line, const Letters& letters) {
    Extent extent{room_for_arrow(label) + number_width(label, letters), number_room};
    if (form == LabelForm::beside)
        extent.width += before_line + letters.width(in_one_line(label), line);
    if (form != LabelForm::below)
        return extent;
    for (const std::string& text : label.lines) {
        extent.width = std::max(extent.width, letters.width(text, line));
        extent.height += pitch_of_lines * line;
    }
    return extent;
}

Box inner(const Box& box, double clear) {
    return {box.x + clear / 2, box.y + clear / 2, box.width - clear, box.height - clear};
}

std::optional<SetLabel> set_at(const PieceLabel& label, const LabelSpace& space, double size,
                               LabelForm form, double line, const Letters& letters) {
    const Extent e = extent_of(label, form, line, letters);
    const double width = e.width * size;
    const double height = e.height * size;
    const double clear = 2 * clearance * size;
    if (const auto box = space.room_for(width + clear, height + clear))
        return SetLabel{label, inner(*box, clear), size, line, false, form};
    if (const auto box = space.room_for(height + clear, width + clear))
        return SetLabel{label, inner(*box, clear), size, line, true, form};
    return std::nullopt;
}

/// Sets one label in its reading direction, whichever way that is.
class LabelPainter {
public:
    LabelPainter(const SetLabel& set, const Letters& letters)
        : set_(set), letters_(letters), along_(-(set.turned ? set.box.height : set.box.width) / 2),
          down_(-(set.turned ? set.box.width : set.box.height) / 2) {}

    Picture painted() {
        const double size = set_.size;
        const Extent alone = extent_of(set_.label, LabelForm::number_only, set_.line, letters_);
        const double row = down_ + number_room * size / 2;
        // What stands below is centred; what stands beside follows on.
        double begin = set_.form == LabelForm::beside ? along_ : -alone.width * size / 2;
        if (set_.label.forward_degrees)
            out_.marks.push_back(Arrow{at(begin + arrow_length * size / 2, row),
                                       arrow_length * size, *set_.label.forward_degrees});
        begin += room_for_arrow(set_.label) * size;
        const double width = number_width(set_.label, letters_) * size;
        put(begin + width / 2, row, size, Face::bold, set_.label.number);
        if (set_.form == LabelForm::beside) {
            const std::string line = in_one_line(set_.label);
            const double line_size = set_.line * size;
            begin += width + before_line * size;
            put(begin + letters_.width(line, line_size) / 2, row, line_size, Face::plain, line);
        }
        if (set_.form == LabelForm::below)
            put_lines_below(down_ + number_room * size);
        return std::move(out_);
    }

private:
    Point at(double along, double down) const {
        const double x = set_.box.x + set_.box.width / 2;
        const double y = set_.box.y + set_.box.height / 2;
        return set_.turned ? Point{x + down, y - along} : Point{x + along, y + down};
    }

    void put(double along, double down, double size, Face face, const std::string& text) {
        out_.marks.push_back(Text{text, at(along, down), size, Anchor::middle, face, set_.turned});
    }

    void put_lines_below(double down) {
        const double size = set_.line * set_.size;
        for (const std::string& line : set_.label.lines) {
            put(0, down + pitch_of_lines * size / 2, size, Face::plain, line);
            down += pitch_of_lines * size;
        }
    }

    const SetLabel& set_;
    const Letters& letters_;
    double along_; ///< the label's beginning, from its middle
    double down_;  ///< its upper side, from its middle
    Picture out_;
};

} // namespace

std::optional<SetLabel> set_label(const PieceLabel& label, const LabelSpace& space,
                                  const LabelSizes& sizes, const Letters& letters) {
    for (PieceLabel some = label; !some.lines.empty(); some.lines.pop_back())
        for (const double size : sizes.with_lines)
            for (const LabelForm form : {LabelForm::below, LabelForm::beside})
                if (auto set = set_at(some, space, size, form, sizes.line, letters))
                    return set;
    for (const double size : sizes.alone)
        if (auto set = set_at(label, space, size, LabelForm::number_only, sizes.line, letters))
            return set;
    return std::nullopt;
}

Picture picture_of(const SetLabel& set, const Letters& letters) {
    return LabelPainter(set, letters).painted();
}

} // namespace pelt::report::draw
