// SPDX-License-Identifier: MIT
#include "report/measured_panel.hpp"

#include "report/crown_section.hpp"
#include "report/draw/fit.hpp"
#include "report/measured_marks.hpp"
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
        marks_ = MeasuredMarks(times_);
    }

    draw::Picture painted() {
        if (outline_.points.empty())
            return named_only();
        marks_.path(draw::Look::wrapped, {outline_.curve}, true);
        openings();
        lines();
        for (const OutlinePoint& point : outline_.points)
            corner(point);
        for (const NamedPlace& name : outline_.names)
            marks_.words("'" + name.name + "'", toward_middle(name.at, 1.2 * size_), 0.8 * size_);
        forward();
        const double below = extents();
        if (panel_.crown && !panel_.crown->measured_over)
            crown();
        title();
        return marks_.framed(outline_.low.x, outline_.high.x, top_, below, size_);
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

    void corner(const OutlinePoint& point) {
        const draw::Point at = marks_.flipped(point.at);
        const double radius = point.number ? 0.35 * size_ : 0.2 * size_;
        marks_.add(draw::Circle{draw::Look::number_ring, at, marks_.drawn(radius)});
        const Point label = toward_middle(point.at, -1.9 * size_);
        const draw::Anchor anchor =
            label.x < outline_.low.x + 0.02 * outline_.width()    ? draw::Anchor::end
            : label.x > outline_.high.x - 0.02 * outline_.width() ? draw::Anchor::start
                                                                  : draw::Anchor::middle;
        if (point.girth) {
            marks_.words(point.girth->word + " " + number(point.girth->mm), label, 0.85 * size_,
                         anchor);
            return;
        }
        const std::string place = number(point.at.x) + " / " + number(point.at.y);
        marks_.words(point.number ? std::to_string(*point.number) + ":  " + place
                                  : "through " + place,
                     label, (point.number ? 0.85 : 0.7) * size_, anchor,
                     point.number ? draw::Face::bold : draw::Face::plain);
    }

    void openings() {
        for (const Opening& opening : panel_.openings) {
            if (opening.form.segments.empty())
                continue;
            const MeasuredOutline hole = measured_outline(opening.form);
            marks_.path(draw::Look::blank, {hole.curve}, true);
            marks_.keep_clear(hole.low, hole.high);
            marks_.words(opening.name,
                         {(hole.low.x + hole.high.x) / 2, (hole.low.y + hole.high.y) / 2},
                         0.75 * size_);
        }
        for (const Inlay& inlay : panel_.inlays) {
            const double x = inlay.wide_mm / 2;
            const double y = inlay.high_mm / 2;
            const Point& c = inlay.at;
            marks_.path(
                draw::Look::inlay,
                {{{c.x - x, c.y - y}, {c.x + x, c.y - y}, {c.x + x, c.y + y}, {c.x - x, c.y + y}}},
                true);
            marks_.keep_clear({c.x - x, c.y - y}, {c.x + x, c.y + y});
            marks_.words("inlay " + inlay.name, c, 0.75 * size_);
        }
    }

    void lines() {
        for (const SeamLine& seam : panel_.seam_lines) {
            marks_.path(draw::Look::cut, {seam.line}, false);
            const Point& a = seam.line.front();
            const Point& b = seam.line[1];
            marks_.words(seam.always ? "seam" : "seam, if needed",
                         {(a.x + b.x) / 2, (a.y + b.y) / 2}, 0.75 * size_);
        }
        for (const std::vector<Point>& line : outline_.tapes)
            marks_.path(draw::Look::finished_line, {line}, false);
        const auto* outline = std::get_if<OutlineForm>(&panel_.form);
        if (outline != nullptr && outline->diagonal)
            diagonal(*outline, *outline->diagonal);
    }

    void diagonal(const OutlineForm& outline, const Diagonal& taped) {
        const Point& a = outline.segments.at(static_cast<std::size_t>(taped.from) - 1).to;
        const Point& b = outline.segments.at(static_cast<std::size_t>(taped.to) - 1).to;
        marks_.path(draw::Look::finished_line, {{a, b}}, false);
        constexpr double share = 0.3; // clear of the middle, where the arrow is
        marks_.words("diagonal " + std::to_string(taped.from) + " to " + std::to_string(taped.to) +
                         ": " + length(taped.length_mm),
                     {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)}, 0.75 * size_);
    }

    /// Where the arrow and its word lie on the panel and over nothing else; as near to the middle
    /// as can be.
    Point arrow_place() const {
        const Point m = middle();
        constexpr int most = 12;
        for (int ring = 0; ring <= most; ++ring)
            for (int i = -ring; i <= ring; ++i)
                for (int k = -ring; k <= ring; ++k) {
                    if (std::max(std::abs(i), std::abs(k)) < ring)
                        continue;
                    const Point at{m.x + i * outline_.width() / (2 * most + 2),
                                   m.y + k * outline_.height() / (2 * most + 2)};
                    if (is_free_for_arrow(at))
                        return at;
                }
        return m;
    }

    /// The arrow and the word below it.
    draw::Box arrow_box(Point at) const {
        const draw::Point p = marks_.flipped(at);
        const double half = marks_.drawn(1.9 * size_);
        return {p.x - half, p.y - half, 2 * half, 2 * half + marks_.drawn(1.4 * size_)};
    }

    bool is_free_for_arrow(Point at) const {
        const draw::Box box = arrow_box(at);
        return marks_.lies_in(outline_.curve, box) && marks_.is_free(box) &&
               std::none_of(outline_.tapes.begin(), outline_.tapes.end(), [&](const auto& tape) {
                   return draw::enters(marks_.flipped(tape.front()), marks_.flipped(tape.back()),
                                       box);
               });
    }

    void forward() {
        if (!panel_.forward)
            return;
        const Point m = arrow_place();
        marks_.add(draw::Arrow{marks_.flipped(m), marks_.drawn(3 * size_),
                               draw::degrees_of(*panel_.forward)});
        marks_.words("forward", {m.x, m.y - 2.6 * size_}, 0.85 * size_);
    }

    /// How far it reaches along x and y. Gives how far below the panel that is.
    double extents() {
        const double below = outline_.low.y - 4.2 * size_;
        marks_.path(draw::Look::tick, {{{outline_.low.x, below}, {outline_.high.x, below}}}, false);
        for (const double x : {outline_.low.x, outline_.high.x})
            marks_.path(draw::Look::tick, {{{x, below - 0.5 * size_}, {x, below + 0.5 * size_}}},
                        false);
        marks_.words(length(outline_.width()), {middle().x, below}, size_);
        const double beside = outline_.low.x - 9.5 * size_;
        marks_.path(draw::Look::tick, {{{beside, outline_.low.y}, {beside, outline_.high.y}}},
                    false);
        for (const double y : {outline_.low.y, outline_.high.y})
            marks_.path(draw::Look::tick, {{{beside - 0.5 * size_, y}, {beside + 0.5 * size_, y}}},
                        false);
        marks_.words(length(outline_.height()), {beside, middle().y}, size_);
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
        marks_.path(draw::Look::outline, {drawn.arc}, false);
        marks_.path(draw::Look::cut, {drawn.straightedge}, false);
        for (const std::vector<Point>& gap : drawn.gaps)
            marks_.path(draw::Look::tick, {gap}, false);
        const double h = std::abs(rise);
        const Point label = way.x > 0 ? Point{from.x + chord / 2, from.y + h + 1.2 * size_}
                                      : Point{from.x + h + size_, from.y + chord / 2};
        marks_.words((rise < 0 ? "hollow " : "rise ") + length(h) + " " + where, label,
                     0.85 * size_, way.x > 0 ? draw::Anchor::middle : draw::Anchor::start);
    }

    void title() {
        const double top = outline_.high.y + 9 * size_ + std::abs(crown_rise());
        marks_.add(draw::Text{panel_.name + side_words(panel_) + form_words(),
                              marks_.flipped({outline_.low.x - 9 * size_, top}),
                              marks_.drawn(1.4 * size_), draw::Anchor::start, draw::Face::bold});
        top_ = top + 2 * size_;
    }
    std::string form_words() const {
        const auto* girths = std::get_if<GirthsForm>(&panel_.form);
        std::string text =
            girths != nullptr && girths->smooth ? "; a smooth curve runs through the stations" : "";
        if (panel_.guessed)
            text += "; guessed, scaled from another vehicle";
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

    const Panel& panel_;
    const Measures& measures_;
    MeasuredOutline outline_;
    int times_ = 1;   ///< as large as the panel
    double size_ = 0; ///< of the letters, in millimetres of the panel
    double top_ = 0;
    MeasuredMarks marks_{1};
};

} // namespace

draw::Picture measured_panel(const Panel& panel, const Measures& measures) {
    return PanelPainter(panel, measures).painted();
}

} // namespace pelt::report
