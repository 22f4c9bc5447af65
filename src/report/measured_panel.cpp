// SPDX-License-Identifier: MIT
#include "report/measured_panel.hpp"

#include "report/crown_section.hpp"
#include "report/measured_outline.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace pelt::report {
namespace {

constexpr double size_share = 0.028; ///< of the letters, in the panel's larger extent
constexpr double least_size = 7;     ///< mm
constexpr double most_size = 34;
constexpr double large_enough = 1400; ///< mm, in the larger extent
constexpr int most_times = 5;

Um in_um(double mm) {
    return std::llround(mm * 1000);
}

double degrees_of(pelt::Heading heading) {
    switch (heading) {
    case pelt::Heading::right:
        return 0;
    case pelt::Heading::up:
        return 90;
    case pelt::Heading::left:
        return 180;
    case pelt::Heading::down:
        return 270;
    }
    return 0;
}

std::string side_words(const Panel& panel) {
    if (panel.sides == Sides::centre)
        return "";
    return panel.sides == Sides::both ? ", drawn left; the right one is its mirror image"
                                      : ", " + sides_text(panel.sides);
}

/// Collects marks in the panel's frame, y up; the page comes last.
class PanelPainter {
public:
    PanelPainter(const Panel& panel, const Measures& measures)
        : panel_(panel), measures_(measures), outline_(measured_outline(panel)) {
        const double extent = std::max(outline_.width(), outline_.height());
        times_ =
            extent > 0 ? std::clamp(static_cast<int>(large_enough / extent), 1, most_times) : 1;
        size_ = std::clamp(extent * times_ * size_share, least_size, most_size) / times_;
    }

    draw::Picture painted() {
        if (outline_.points.empty())
            return named_only();
        path(draw::Look::wrapped, {outline_.curve}, true);
        openings();
        lines();
        for (const OutlinePoint& point : outline_.points)
            corner(point);
        for (const NamedPlace& name : outline_.names)
            words("'" + name.name + "'", toward_middle(name.at, 1.2 * size_), 0.8 * size_);
        forward();
        const double below = extents();
        if (panel_.crown && !panel_.crown->measured_over)
            crown();
        title();
        return framed(below);
    }

private:
    std::string length(double mm) const { return measures_.size_with_unit(in_um(mm)); }
    std::string number(double mm) const { return measures_.size(in_um(mm)); }

    Point middle() const {
        return {(outline_.low.x + outline_.high.x) / 2, (outline_.low.y + outline_.high.y) / 2};
    }
    Point toward_middle(Point p, double by) const {
        const Point m = middle();
        const double far = std::hypot(m.x - p.x, m.y - p.y);
        if (far < 1e-9)
            return p;
        return {p.x + (m.x - p.x) * by / far, p.y + (m.y - p.y) * by / far};
    }

    /// From the panel, y up, to the drawing, y down.
    draw::Point flipped(Point p) const { return {times_ * p.x, -times_ * p.y}; }
    double drawn(double mm) const { return times_ * mm; }

    void path(draw::Look look, const std::vector<std::vector<Point>>& rings, bool closed) {
        draw::Path out{look, {}, closed};
        for (const std::vector<Point>& ring : rings) {
            draw::Ring& points = out.rings.emplace_back();
            for (const Point& p : ring)
                points.push_back(flipped(p));
        }
        marks_.push_back(std::move(out));
    }

    /// On a white plate, moved away from what was written before.
    void words(const std::string& text, Point at, double size,
               draw::Anchor anchor = draw::Anchor::middle, draw::Face face = draw::Face::plain) {
        draw::Text mark{text, flipped(at), drawn(size), anchor, face};
        const draw::UnknownLetters letters;
        draw::Box box = draw::box_of(mark, letters);
        for (int tries = 0; tries < 12 && is_taken(box); ++tries) {
            mark.at.y += (tries % 2 == 0 ? 1 : -1) * (tries + 1) * 0.6 * mark.size;
            box = draw::box_of(mark, letters);
        }
        taken_.push_back(box);
        marks_.push_back(draw::Rectangle{draw::Look::plate, box});
        marks_.push_back(std::move(mark));
    }

    bool is_taken(const draw::Box& box) const {
        return std::any_of(taken_.begin(), taken_.end(),
                           [&](const draw::Box& other) { return other.overlaps(box); });
    }

    void corner(const OutlinePoint& point) {
        const draw::Point at = flipped(point.at);
        const double radius = point.number ? 0.35 * size_ : 0.2 * size_;
        marks_.push_back(draw::Circle{draw::Look::number_ring, at, drawn(radius)});
        const Point label = toward_middle(point.at, -1.9 * size_);
        const draw::Anchor anchor =
            label.x < outline_.low.x + 0.02 * outline_.width()    ? draw::Anchor::end
            : label.x > outline_.high.x - 0.02 * outline_.width() ? draw::Anchor::start
                                                                  : draw::Anchor::middle;
        if (point.girth) {
            words(point.girth->word + " " + number(point.girth->mm), label, 0.85 * size_, anchor);
            return;
        }
        const std::string place = number(point.at.x) + " / " + number(point.at.y);
        words(point.number ? std::to_string(*point.number) + ":  " + place : "through " + place,
              label, (point.number ? 0.85 : 0.7) * size_, anchor,
              point.number ? draw::Face::bold : draw::Face::plain);
    }

    void openings() {
        for (const Opening& opening : panel_.openings) {
            if (opening.form.segments.empty())
                continue;
            const MeasuredOutline hole = measured_outline(opening.form);
            path(draw::Look::blank, {hole.curve}, true);
            words(opening.name, {(hole.low.x + hole.high.x) / 2, (hole.low.y + hole.high.y) / 2},
                  0.75 * size_);
        }
        for (const Inlay& inlay : panel_.inlays) {
            const double x = inlay.wide_mm / 2;
            const double y = inlay.high_mm / 2;
            const Point& c = inlay.at;
            path(draw::Look::inlay,
                 {{{c.x - x, c.y - y}, {c.x + x, c.y - y}, {c.x + x, c.y + y}, {c.x - x, c.y + y}}},
                 true);
            words("inlay " + inlay.name, c, 0.75 * size_);
        }
    }

    void lines() {
        for (const SeamLine& seam : panel_.seam_lines) {
            path(draw::Look::cut, {seam.line}, false);
            const Point& a = seam.line.front();
            const Point& b = seam.line[1];
            words(seam.always ? "seam" : "seam, if needed", {(a.x + b.x) / 2, (a.y + b.y) / 2},
                  0.75 * size_);
        }
        for (const std::vector<Point>& line : outline_.tapes)
            path(draw::Look::finished_line, {line}, false);
    }

    /// Beside the tapes of a girth panel.
    Point arrow_place() const {
        if (outline_.tapes.empty())
            return middle();
        return {outline_.low.x + 0.39 * outline_.width(), outline_.high.y * 0.5};
    }

    void forward() {
        if (!panel_.forward)
            return;
        const Point m = arrow_place();
        marks_.push_back(draw::Arrow{flipped(m), drawn(3 * size_), degrees_of(*panel_.forward)});
        words("forward", {m.x, m.y - 2.6 * size_}, 0.85 * size_);
    }

    /// How far it reaches along x and y. Gives how far below the panel that is.
    double extents() {
        const double below = outline_.low.y - 4.2 * size_;
        path(draw::Look::tick, {{{outline_.low.x, below}, {outline_.high.x, below}}}, false);
        for (const double x : {outline_.low.x, outline_.high.x})
            path(draw::Look::tick, {{{x, below - 0.5 * size_}, {x, below + 0.5 * size_}}}, false);
        words(length(outline_.width()), {middle().x, below}, size_);
        const double beside = outline_.low.x - 9.5 * size_;
        path(draw::Look::tick, {{{beside, outline_.low.y}, {beside, outline_.high.y}}}, false);
        for (const double y : {outline_.low.y, outline_.high.y})
            path(draw::Look::tick, {{{beside - 0.5 * size_, y}, {beside + 0.5 * size_, y}}}, false);
        words(length(outline_.height()), {beside, middle().y}, size_);
        return below - 2 * size_;
    }

    void crown() {
        const Crown& crown = *panel_.crown;
        const double over = outline_.high.y + 4.5 * size_;
        if (crown.wide_mm != 0)
            section({outline_.low.x, over}, {1, 0}, outline_.width(), crown.wide_mm,
                    "over the width");
        const double right = outline_.high.x + 10 * size_;
        if (crown.high_mm != 0)
            section({right, outline_.low.y}, {0, 1}, outline_.height(), crown.high_mm,
                    "over the height");
    }

    void section(Point from, Point way, double chord, double rise, const std::string& where) {
        const CrownSection drawn = crown_section({from, way, chord, rise});
        path(draw::Look::outline, {drawn.arc}, false);
        path(draw::Look::cut, {drawn.straightedge}, false);
        for (const std::vector<Point>& gap : drawn.gaps)
            path(draw::Look::tick, {gap}, false);
        const double h = std::abs(rise);
        const Point label = way.x > 0 ? Point{from.x + chord / 2, from.y + h + 1.2 * size_}
                                      : Point{from.x + h + size_, from.y + chord / 2};
        words((rise < 0 ? "hollow " : "rise ") + length(h) + " " + where, label, 0.85 * size_,
              way.x > 0 ? draw::Anchor::middle : draw::Anchor::start);
    }

    void title() {
        const double top = outline_.high.y + 9 * size_ + std::abs(crown_rise());
        marks_.push_back(draw::Text{panel_.name + side_words(panel_) + form_words(),
                                    flipped({outline_.low.x - 9 * size_, top}), drawn(1.4 * size_),
                                    draw::Anchor::start, draw::Face::bold});
        top_ = drawn(top + 2 * size_);
    }
    std::string form_words() const {
        const auto* girths = std::get_if<GirthsForm>(&panel_.form);
        std::string text =
            girths != nullptr && girths->smooth ? "; a smooth curve runs through the stations" : "";
        if (times_ > 1)
            text += "; drawn " + std::to_string(times_) + " times as large";
        return text;
    }
    double crown_rise() const { return panel_.crown ? panel_.crown->wide_mm : 0; }

    draw::Picture named_only() const {
        const auto* scan = std::get_if<SurfaceForm>(&panel_.form);
        const std::string text =
            panel_.name + ": " +
            (scan != nullptr ? "scanned, " + scan->file + " ('pelt area' draws it laid flat)" : "");
        draw::Picture out{{}, 0, 3 * most_size};
        const draw::UnknownLetters letters;
        out.width = letters.width(text, most_size) + most_size;
        out.marks.push_back(draw::Text{text, {0, 1.5 * most_size}, most_size, draw::Anchor::start});
        return out;
    }

    /// Everything moved to the upper left corner of a page of its own.
    draw::Picture framed(double below) {
        const draw::UnknownLetters letters;
        double left = drawn(outline_.low.x);
        double right = drawn(outline_.high.x);
        below = drawn(below);
        for (const draw::Mark& mark : marks_)
            if (const auto* text = std::get_if<draw::Text>(&mark)) {
                const draw::Box box = draw::box_of(*text, letters);
                left = std::min(left, box.x);
                right = std::max(right, box.right());
                below = std::min(below, -box.bottom());
            }
        draw::Picture part{std::move(marks_), 0, 0};
        const double space = drawn(size_);
        draw::Picture out{{}, right - left + 2 * space, top_ - below + space};
        draw::put(out, part, space - left, top_);
        return out;
    }

    const Panel& panel_;
    const Measures& measures_;
    MeasuredOutline outline_;
    int times_ = 1;   ///< as large as the panel
    double size_ = 0; ///< of the letters, in millimetres of the panel
    double top_ = 0;
    std::vector<draw::Mark> marks_;
    std::vector<draw::Box> taken_;
};

} // namespace

draw::Picture measured_panel(const Panel& panel, const Measures& measures) {
    return PanelPainter(panel, measures).painted();
}

} // namespace pelt::report
