// SPDX-License-Identifier: MIT
#include "report/svg_roll.hpp"

#include "report/words.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace pelt::report {
namespace {

constexpr double room_left = 200;  ///< for "free end" and the film's arrow
constexpr double room_above = 120; ///< for numbers with leaders
constexpr double tick_size = 48;
constexpr double tick_row = 62;
constexpr double leader_size = 48;

double in_mm(Um um) {
    return static_cast<double>(um) / 1000.0;
}

class RollPainter {
public:
    RollPainter(const Sheet& sheet, std::size_t used_roll, const Measures& measures)
        : job_(sheet.plan.job()), used_(sheet.plan.layout().rolls.at(used_roll)),
          roll_(job_.rolls.at(used_.roll)), measures_(measures),
          top_(static_cast<Um>(room_above) * um_per_mm),
          left_(static_cast<Um>(room_left) * um_per_mm) {}

    RollDrawing drawn(const std::vector<const PlacedPiece*>& pieces) {
        film();
        for (const PlacedPiece* p : pieces)
            piece(*p);
        for (std::size_t i = 0; i < used_.cuts.size(); ++i)
            cut(used_.cuts[i], static_cast<int>(i) + 1);
        svg_ += cut_numbers_;
        const double rows = distances();
        ends();
        return {svg_, std::max(room_left + in_mm(used_.length), rightmost_) + 60,
                in_mm(top_ + roll_.width) + 30 + rows};
    }

private:
    // Roll frame to the drawing's, exactly: y turns over.
    GridPoint on_page(GridPoint p) const { return {left_ + p.x, top_ + roll_.width - p.y}; }
    SvgPoint point(GridPoint p) const {
        const GridPoint q = on_page(p);
        return {in_mm(q.x), in_mm(q.y)};
    }
    SvgRing ring(const Ring& r) const {
        SvgRing out;
        for (const GridPoint& p : r)
            out.push_back(point(p));
        return out;
    }
    std::string coordinates(GridPoint p) const {
        const GridPoint q = on_page(p);
        return svg_mm(q.x) + " " + svg_mm(q.y);
    }
    std::string path_of(const Polygon& polygon) const {
        std::string d;
        const auto add = [&](const Ring& r) {
            for (std::size_t i = 0; i < r.size(); ++i)
                d += (i == 0 ? "M" : "L") + coordinates(r[i]);
            d += "Z";
        };
        add(polygon.outer);
        for (const Ring& hole : polygon.holes)
            add(hole);
        return d;
    }
    std::string rectangle(std::string_view css_class, GridPoint low, GridPoint high) const {
        const GridPoint corner = on_page({low.x, high.y});
        return "<rect class=\"" + std::string(css_class) + "\" x=\"" + svg_mm(corner.x) +
               "\" y=\"" + svg_mm(corner.y) + "\" width=\"" + svg_mm(high.x - low.x) +
               "\" height=\"" + svg_mm(high.y - low.y) + "\"/>\n";
    }

    void film() {
        svg_ += rectangle("left-over", {0, 0}, {used_.length, roll_.width});
        if (roll_.trim == 0)
            return;
        svg_ += rectangle("roll-edge", {0, 0}, {used_.length, roll_.trim});
        svg_ += rectangle("roll-edge", {0, roll_.width - roll_.trim}, {used_.length, roll_.width});
    }

    void piece(const PlacedPiece& p) {
        const Box cut = p.cut_box();
        const std::string name =
            label_of(job_, p.id) +
            (p.id.side == Side::centre ? "" : ", " + std::string(name_of(p.id.side)));
        svg_ += "<g class=\"piece " + std::string(name_of(p.id.kind)) + "\" id=\"piece-" +
                std::to_string(p.number) + "\">\n<title>" +
                xml_text(std::to_string(p.number) + " · " + name) + "</title>\n<desc>" +
                xml_text(description(p)) +
                "</desc>\n<path class=\"blank\" fill-rule=\"evenodd\" d=\"" + path_of(p.outline) +
                "\"/>\n<path class=\"wrapped\" d=\"" + path_of(p.wrapped) + "\"/>\n";
        const PieceLabel label{std::to_string(p.number),
                               {name, measures_.sides(cut.along(), cut.across())},
                               p.turn.millidegrees / 1000.0};
        svg_ += label_for(p, label) + "</g>\n";
    }

    std::string description(const PlacedPiece& p) const {
        const Box cut = p.cut_box();
        const Box finished = p.finished_box();
        return "cut " + measures_.sides(cut.along(), cut.across()) + " " + measures_.size_unit() +
               ", finished " + measures_.sides(finished.along(), finished.across()) +
               ", from the free end " + measures_.size(cut.low.x) + ", from the near edge " +
               measures_.size(cut.low.y - roll_.trim);
    }

    std::string label_for(const PlacedPiece& p, const PieceLabel& label) {
        std::vector<SvgRing> clear;
        for (const std::vector<Ring>& holes : {p.outline.holes, p.wrapped.holes})
            for (const Ring& hole : holes)
                clear.push_back(ring(hole));
        const LabelSpace space(ring(p.wrapped.outer), clear);
        if (const auto set = set_label(label, space))
            return svg_of(*set);
        return leader_to(space.middle(), label.number);
    }

    std::string leader_to(const SvgPoint& piece, const std::string& number) {
        const double width = text_width_em(number) * leader_size + 20;
        SvgBox box{piece.x - width / 2, 20, width, leader_size};
        const auto taken = [&] {
            return std::find_if(leaders_.begin(), leaders_.end(),
                                [&](const SvgBox& other) { return box.overlaps(other); });
        };
        for (auto other = taken(); other != leaders_.end(); other = taken())
            box.x = other->x + other->width + 1;
        leaders_.push_back(box);
        const double middle = box.x + width / 2;
        rightmost_ = std::max(rightmost_, box.x + width);
        return "<path class=\"leader\" d=\"M" + svg_number(middle) + " " +
               svg_number(box.y + box.height + 4) + "L" + svg_number(piece.x) + " " +
               svg_number(piece.y) + "\"/>\n" +
               svg_label("number", middle, box.y + box.height / 2, leader_size, false, number);
    }

    void cut(const Cut& cut, int number) {
        svg_ += "<path class=\"cut\" d=\"M" + coordinates(cut.from) + "L" + coordinates(cut.to) +
                "\"/>\n";
        const SvgPoint a = point(cut.from);
        const SvgPoint b = point(cut.to);
        const std::string text = std::to_string(number);
        for (const double size : {34.0, 26.0, 18.0, 13.0})
            if (put_cut_number(a, b, size, text))
                return;
        put_beside(a, text);
    }

    static double radius_of(const std::string& text, double size) {
        return std::max(0.62, text_width_em(text) / 2 + 0.2) * size;
    }

    /// Slides the number along its cut until it lies over no other.
    bool put_cut_number(const SvgPoint& a, const SvgPoint& b, double size,
                        const std::string& text) {
        const double radius = radius_of(text, size);
        const double length = std::abs(b.x - a.x) + std::abs(b.y - a.y);
        for (double along = radius + 12; along <= length - radius; along += radius) {
            const double x = a.x + (b.x - a.x) / length * along;
            const double y = a.y + (b.y - a.y) / length * along;
            const SvgBox box{x - radius, y - radius, 2 * radius, 2 * radius};
            if (std::any_of(cut_boxes_.begin(), cut_boxes_.end(),
                            [&](const SvgBox& other) { return box.overlaps(other); }))
                continue;
            cut_boxes_.push_back(box);
            put_circle(x, y, radius, size, text);
            return true;
        }
        return false;
    }

    void put_circle(double x, double y, double radius, double size, const std::string& text) {
        cut_numbers_ += "<g class=\"cut-number\"><circle cx=\"" + svg_number(x) + "\" cy=\"" +
                        svg_number(y) + "\" r=\"" + svg_number(radius) + "\"/>" +
                        svg_label("number", x, y, size, false, text) + "</g>\n";
    }

    /// A cut too short for any number on it: the number goes above the roll, with a leader.
    void put_beside(const SvgPoint& cut, const std::string& text) {
        cut_numbers_ += leader_to(cut, "cut " + text);
    }

    /// Distances from the free end under the roll, in as many rows as keep them apart.
    double distances() {
        std::set<Um> places{0, used_.length};
        for (const Cut& c : used_.cuts)
            if (c.from.x == c.to.x && std::min(c.from.y, c.to.y) <= roll_.trim &&
                std::max(c.from.y, c.to.y) >= roll_.width - roll_.trim)
                places.insert(c.from.x);
        const double under = in_mm(top_ + roll_.width);
        std::vector<double> row_ends;
        for (const Um place : places) {
            const std::string text = measures_.size(place);
            const double x = in_mm(left_ + place);
            const double half = text_width_em(text) * tick_size / 2 + 12;
            std::size_t row = 0;
            while (row < row_ends.size() && row_ends[row] > x - half)
                ++row;
            row_ends.resize(std::max(row_ends.size(), row + 1));
            row_ends[row] = x + half;
            rightmost_ = std::max(rightmost_, x + half);
            const double y = under + 20 + tick_row * static_cast<double>(row);
            svg_ += "<path class=\"tick\" d=\"M" + svg_number(x) + " " + svg_number(under) + "V" +
                    svg_number(y) + "\"/>\n" +
                    svg_label("number", x, y + tick_row / 2, tick_size, false, text);
        }
        return 20 + tick_row * static_cast<double>(row_ends.size());
    }

    void ends() {
        const double middle = in_mm(top_ + roll_.width / 2);
        svg_ += svg_label("name", room_left - 50, middle, tick_size, true, "free end");
        if (job_.film.direction == Direction::any)
            return;
        svg_ += svg_arrow(56, middle - 190, 110, 0);
        svg_ += svg_label("name", 56, middle, tick_size, true, "film arrow");
    }

    const Job& job_;
    const UsedRoll& used_;
    const Roll& roll_;
    const Measures& measures_;
    Um top_;
    Um left_;
    std::string svg_;
    std::string cut_numbers_;
    std::vector<SvgBox> leaders_;
    std::vector<SvgBox> cut_boxes_;
    double rightmost_ = 0;
};

} // namespace

RollDrawing draw_roll(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                      std::size_t used_roll, const Measures& measures) {
    std::vector<const PlacedPiece*> own;
    for (const PlacedPiece& p : pieces)
        if (p.roll == used_roll)
            own.push_back(&p);
    return RollPainter(sheet, used_roll, measures).drawn(own);
}

} // namespace pelt::report
