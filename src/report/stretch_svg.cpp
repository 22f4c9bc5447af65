// SPDX-License-Identifier: MIT
#include "report/area.hpp"
#include "report/draw/letters.hpp"
#include "report/estimate.hpp"
#include "report/numbers.hpp"
#include "report/stretch_cells.hpp"
#include "report/svg_text.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace pelt::report {
namespace {

constexpr std::string_view style_before_lines = R"(<style>
text { font-family: sans-serif; fill: #000 }
.title { font-weight: bold }
.peak { fill: #fff; stroke: #000 }
.arrow { fill: #000; stroke: none }
.b0 { fill: #fff; stroke: #fff } .b1 { fill: #e2e2e2; stroke: #e2e2e2 }
.b2 { fill: #c8c8c8; stroke: #c8c8c8 } .b3 { fill: #adadad; stroke: #adadad }
.b4 { fill: #929292; stroke: #929292 } .b5 { fill: #767676; stroke: #767676 }
.b6 { fill: #5a5a5a; stroke: #5a5a5a } .b7 { fill: #3c3c3c; stroke: #3c3c3c }
.shade { stroke-linejoin: round }
.swatch { stroke: #000 }
.wrapped, .rim, .rise, .pull, .proposed { fill: none; stroke: #000; stroke-linecap: round }
)";

/// Lines as thick as letters of that size ask for.
std::string style_of(double text) {
    const auto width = [&](std::string_view of, double share) {
        return std::string(of) + " { stroke-width: " + svg_number(share * text) + " }\n";
    };
    return std::string(style_before_lines) + width(".wrapped", .1) +
           ".wrapped { stroke-dasharray: " + svg_number(.5 * text) + " " + svg_number(.4 * text) +
           " }\n" + width(".rim", .1) + width(".rise, .pull, .peak", .15) + width(".proposed", .3) +
           width(".swatch", .1) + ".shade { stroke-width: .3 }\n</style>\n";
}

/// A round figure that no stretch exceeds: 1, 2, 5, 10, 20, 50 … percent.
double round_above(double percent) {
    double step = 1;
    for (;; step *= 10)
        for (const double times : {1.0, 2.0, 5.0})
            if (percent <= times * step)
                return times * step;
}

double largest_stretch(const std::vector<const PanelArea*>& drawn) {
    double most = 0;
    for (const PanelArea* row : drawn)
        most = std::max(most, row->map ? row->map->peak_percent : row->stretch.percent);
    return most;
}

double mm_along(const PanelArea& row) {
    return static_cast<double>(box_of(row.wrapped.outer).along()) / um_per_mm;
}

/// About as wide as it is going to be high, and as wide as the widest panel.
double width_for(const std::vector<const PanelArea*>& drawn) {
    constexpr double with_what_stands_beside = 1.5;
    double area = 0;
    double widest = 380;
    for (const PanelArea* row : drawn) {
        const Box box = box_of(row->wrapped.outer);
        area += mm_along(*row) * static_cast<double>(box.across()) / um_per_mm;
        widest = std::max(widest, mm_along(*row));
    }
    return std::max(widest, std::sqrt(1.4 * with_what_stands_beside * area));
}

/// One of a mirrored pair.
std::vector<const PanelArea*> rows_to_draw(const AreaSheet& sheet) {
    std::vector<const PanelArea*> out;
    for (const PanelArea& row : sheet.rows)
        if (is_drawn(row) && (out.empty() || out.back()->panel != row.panel))
            out.push_back(&row);
    return out;
}

class Picture {
public:
    explicit Picture(const AreaSheet& sheet)
        : sheet_(sheet), drawn_(rows_to_draw(sheet)), width_(width_for(drawn_)) {
        constexpr double letters_across = 85;
        scale_.full_percent = round_above(largest_stretch(drawn_));
        scale_.text = std::clamp(width_ / letters_across, 12.0, 60.0);
        margin_ = 2 * scale_.text;
    }

    std::string written() {
        y_ = margin_;
        title();
        panels();
        if (!drawn_.empty())
            scale();
        below();
        const double wide = width_ + 2 * margin_;
        const double high = y_ + margin_;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + svg_number(wide) +
               "mm\" height=\"" + svg_number(high) + "mm\" viewBox=\"0 0 " + svg_number(wide) +
               " " + svg_number(high) + "\">\n<title>" + xml_text("Stretch: " + sheet_.vehicle) +
               "</title>\n" + style_of(scale_.text) + body_ + "</svg>\n";
    }

private:
    void words(const std::string& text, double times = 1, std::string_view css_class = "") {
        const double size = times * scale_.text;
        // Bold letters are a little wider than plain ones.
        for (const std::string& line : lines_within(text, width_ / (times > 1 ? 1.15 : 1), size)) {
            y_ += 1.4 * size;
            body_ += svg_text_at(margin_, y_, line, size, css_class);
        }
    }

    void title() {
        words(sheet_.vehicle + (sheet_.demonstration ? ": demonstration, invented data" : ""), 1.5,
              "title");
        if (std::any_of(sheet_.rows.begin(), sheet_.rows.end(),
                        [](const PanelArea& row) { return row.guessed; }))
            words(not_measured);
        if (!sheet_.film.empty())
            words("Film: " + sheet_.film +
                  (sheet_.stretch_limit ? ", gives " + percent(*sheet_.stretch_limit) : ""));
    }

    /// Side by side from the left, in the order of the file, a new row where one is full.
    void panels() {
        std::vector<StretchCell> cells;
        for (const PanelArea* row : drawn_) {
            cells.push_back(stretch_cell(*row, sheet_.stretch_limit, scale_));
            width_ = std::max(width_, cells.back().width);
        }
        double x = 0;
        double highest = 0;
        for (const StretchCell& cell : cells) {
            if (x > 0 && x + cell.width > width_) {
                y_ += highest;
                x = highest = 0;
            }
            if (x == 0)
                y_ += scale_.text;
            body_ += "<g transform=\"translate(" + svg_number(margin_ + x) + " " + svg_number(y_) +
                     ")\">\n" + cell.svg + "</g>\n";
            x += cell.width + 2 * scale_.text;
            highest = std::max(highest, cell.height);
        }
        y_ += highest;
    }

    void scale() {
        const double wide = 4 * scale_.text;
        y_ += 2 * scale_.line_height();
        for (int band = 0; band < stretch_bands; ++band) {
            const double x = margin_ + wide * band;
            body_ += "<rect class=\"b" + std::to_string(band) + " swatch\" x=\"" + svg_number(x) +
                     "\" y=\"" + svg_number(y_) + "\" width=\"" + svg_number(wide) +
                     "\" height=\"" + svg_number(1.2 * scale_.text) + "\"/>\n";
            mark(x, scale_.full_percent * band / stretch_bands);
        }
        mark(margin_ + wide * stretch_bands, scale_.full_percent);
        y_ += 3.2 * scale_.text;
        length_bar();
    }

    void mark(double x, double at_percent) {
        body_ += svg_text_at(x, y_ + 2.3 * scale_.text, percent(at_percent), scale_.text);
    }

    /// A round length about eight letters long.
    void length_bar() {
        const bool inches = Measures(sheet_.unit).size_unit() == "in";
        const double unit = inches ? 25.4 : 1;
        const double steps = round_above(8 * scale_.text / unit);
        const double tick = .7 * scale_.text;
        body_ +=
            "<path class=\"pull\" d=\"M" + svg_number(margin_) + " " + svg_number(y_ + tick) +
            "v-" + svg_number(tick) + "h" + svg_number(steps * unit) + "v" + svg_number(tick) +
            "\"/>\n" +
            svg_text_at(margin_ + steps * unit + .7 * scale_.text, y_ + .6 * scale_.text,
                        std::to_string(std::lround(steps)) + (inches ? " in" : " mm"), scale_.text);
        y_ += 1.2 * scale_.text;
    }

    void below() {
        if (!drawn_.empty())
            words("Thin line: the panel. Broken line: the film that stays on.");
        if (has(true))
            words("Cross: the largest stretch; the line through it shows which way it pulls.");
        if (std::any_of(drawn_.begin(), drawn_.end(),
                        [](const PanelArea* row) { return row->stretch.division.has_value(); }))
            words("Thick line: where to divide what the film will not cover in one piece.");
        if (has(false))
            words("One grey all over: measured by tape, an estimate for the whole panel. The arcs "
                  "over it and beside it are its rises as measured, with the straightedge as a "
                  "broken line.");
        std::vector<std::string> others;
        for (const PanelArea& row : sheet_.rows)
            if (!is_drawn(row))
                add_once(others, row.panel);
        if (!others.empty())
            words("Not drawn, since no rise was measured: " + listed(others) + ".");
    }

    bool has(bool scans) const {
        return std::any_of(drawn_.begin(), drawn_.end(),
                           [&](const PanelArea* row) { return (row->map != nullptr) == scans; });
    }

    const AreaSheet& sheet_;
    std::vector<const PanelArea*> drawn_; ///< the other side of a pair is its mirror image
    double width_;                        ///< without the margins
    StretchScale scale_;
    double margin_ = 0;
    double y_ = 0;
    std::string body_;
};

} // namespace

std::string to_svg(const AreaSheet& sheet) {
    return Picture(sheet).written();
}

} // namespace pelt::report
