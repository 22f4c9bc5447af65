// SPDX-License-Identifier: MIT
#include "report/area.hpp"
#include "report/estimate.hpp"
#include "report/draw/letters.hpp"
#include "report/numbers.hpp"
#include "report/stretch_shades.hpp"
#include "report/svg_text.hpp"
#include "report/verdict.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace pelt::report {
namespace {

constexpr int bands = 8;
constexpr double margin = 30;
constexpr double text_size = 12;
constexpr double line_height = 17;

constexpr std::string_view style = R"(<style>
text { font-family: sans-serif; font-size: 12px; fill: #000 }
.title { font-size: 18px; font-weight: bold }
.wrapped { fill: none; stroke: #000; stroke-width: 1; stroke-dasharray: 6 4 }
.rim { fill: none; stroke: #000; stroke-width: .6; stroke-linecap: round }
.peak { fill: #fff; stroke: #000; stroke-width: 1.5 }
.pull { fill: none; stroke: #000; stroke-width: 2 }
.arrow { fill: #000; stroke: none }
.b0 { fill: #fff; stroke: #fff } .b1 { fill: #e2e2e2; stroke: #e2e2e2 }
.b2 { fill: #c8c8c8; stroke: #c8c8c8 } .b3 { fill: #adadad; stroke: #adadad }
.b4 { fill: #929292; stroke: #929292 } .b5 { fill: #767676; stroke: #767676 }
.b6 { fill: #5a5a5a; stroke: #5a5a5a } .b7 { fill: #3c3c3c; stroke: #3c3c3c }
.shade { stroke-width: .3; stroke-linejoin: round }
.swatch { stroke: #000; stroke-width: 1 }
</style>
)";

std::string text_at(double x, double y, std::string_view text, std::string_view css_class = "") {
    return "<text" + (css_class.empty() ? "" : " class=\"" + std::string(css_class) + "\"") +
           " x=\"" + svg_number(x) + "\" y=\"" + svg_number(y) + "\">" + xml_text(text) +
           "</text>\n";
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
        break;
    }
    return 270;
}

/// A round figure that no stretch exceeds: 1, 2, 5, 10, 20, 50 … percent.
double round_above(double percent) {
    double step = 1;
    for (;; step *= 10)
        for (const double times : {1.0, 2.0, 5.0})
            if (percent <= times * step)
                return times * step;
}

class Picture {
public:
    explicit Picture(const AreaSheet& sheet) : sheet_(sheet) {
        double most = 0;
        for (const PanelArea& row : sheet.rows)
            if (row.map)
                most = std::max(most, row.map->peak_percent);
        full_ = round_above(most);
    }

    std::string written() {
        title();
        std::string others;
        for (const PanelArea& row : sheet_.rows)
            if (row.map && row.map != drawn_)
                panel(row);
            else if (!row.map)
                others += (others.empty() ? "" : ", ") + label(row);
        if (drawn_)
            scale();
        if (!others.empty())
            line("Not scanned, so not drawn: " + others + ".");
        if (drawn_)
            line("Thin line: the panel. Broken line: the film that stays on. Cross: the largest "
                 "stretch; the line through it shows which way it pulls.");
        width_ += margin;
        y_ += margin;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + svg_number(width_) +
               "mm\" height=\"" + svg_number(y_) + "mm\" viewBox=\"0 0 " + svg_number(width_) +
               " " + svg_number(y_) + "\">\n<title>" + xml_text("Stretch: " + sheet_.vehicle) +
               "</title>\n" + std::string(style) + body_ + "</svg>\n";
    }

private:
    static std::string label(const PanelArea& row) {
        return row.panel + (row.side == Side::centre ? "" : ", " + std::string(name_of(row.side)));
    }

    void line(const std::string& text, std::string_view css_class = "") {
        y_ += line_height;
        body_ += text_at(margin, y_, text, css_class);
        width_ =
            std::max(width_, margin + draw::UnknownLetters().width_em(text, draw::Face::plain) *
                                          text_size * (css_class.empty() ? 1.0 : 1.5));
    }

    void title() {
        y_ = margin;
        line(sheet_.vehicle + (sheet_.demonstration ? ": demonstration, invented data" : ""),
             "title");
        if (std::any_of(sheet_.rows.begin(), sheet_.rows.end(),
                        [](const PanelArea& row) { return row.guessed; }))
            line(not_measured);
        if (!sheet_.film.empty())
            line("Film: " + sheet_.film +
                 (sheet_.stretch_limit ? ", gives " + percent(*sheet_.stretch_limit) : ""));
    }

    void panel(const PanelArea& row) {
        drawn_ = row.map;
        const Box box = box_of(row.wrapped.outer);
        const auto mm = [](Um um) { return static_cast<double>(um) / um_per_mm; };
        y_ += line_height;
        std::string head = label(row) + ": " + stretch_text(row.stretch);
        if (const auto lies = how_it_lies(row.stretch, sheet_.stretch_limit))
            head += ", " + in_words(*lies);
        line(head + "; " + where_most(*row.map));
        y_ += line_height / 2;
        // Blank (x, y) to paper: y runs down.
        const double left = margin - mm(box.low.x);
        const double top = y_ + mm(box.high.y);
        body_ += "<g>\n<title>" + xml_text(head) + "</title>\n";
        shades(*row.map, left, top);
        rim(*row.map, left, top);
        outline(row.wrapped, left, top);
        if (!is_much_the_same(*row.map))
            peak(*row.map, left, top);
        body_ += "</g>\n";
        const double right = margin + mm(box.along());
        if (row.forward) {
            body_ += svg_arrow(right + 40, y_ + 40, 60, degrees_of(*row.forward));
            body_ += text_at(right + 10, y_ + 90, "film arrow");
        }
        width_ = std::max(width_, right + 80);
        y_ += std::max(mm(box.across()), 100.0);
    }

    void shades(const StretchMap& map, double left, double top) {
        std::array<std::string, bands> paths;
        for (const Shade& shade : shades_of(map, full_ / bands, bands)) {
            std::string& path = paths[static_cast<std::size_t>(shade.band)];
            for (std::size_t k = 0; k < shade.ring.size(); ++k)
                path += (k == 0 ? "M" : "L") + svg_number(left + shade.ring[k].x) + " " +
                        svg_number(top - shade.ring[k].y);
            path += "Z";
        }
        for (std::size_t band = 0; band < bands; ++band)
            if (!paths[band].empty())
                body_ += "<path class=\"shade b" + std::to_string(band) + "\" d=\"" + paths[band] +
                         "\"/>\n";
    }

    void rim(const StretchMap& map, double left, double top) {
        std::string path;
        for (const auto& [a, b] : rim_of(map))
            path += "M" + svg_number(left + a.x) + " " + svg_number(top - a.y) + "L" +
                    svg_number(left + b.x) + " " + svg_number(top - b.y);
        body_ += "<path class=\"rim\" d=\"" + path + "\"/>\n";
    }

    void outline(const Polygon& polygon, double left, double top) {
        std::vector<Ring> rings = polygon.holes;
        rings.push_back(polygon.outer);
        std::string path;
        for (const Ring& ring : rings) {
            for (std::size_t i = 0; i < ring.size(); ++i)
                path += (i == 0 ? "M" : "L") +
                        svg_number(left + static_cast<double>(ring[i].x) / um_per_mm) + " " +
                        svg_number(top - static_cast<double>(ring[i].y) / um_per_mm);
            path += "Z";
        }
        body_ += "<path class=\"wrapped\" d=\"" + path + "\"/>\n";
    }

    void peak(const StretchMap& map, double left, double top) {
        constexpr double reach = 14;
        const double x = left + map.peak.x;
        const double y = top - map.peak.y;
        body_ += "<path class=\"pull\" d=\"M" + svg_number(x - reach * map.pull.x) + " " +
                 svg_number(y + reach * map.pull.y) + "L" + svg_number(x + reach * map.pull.x) +
                 " " + svg_number(y - reach * map.pull.y) + "\"/>\n<circle class=\"peak\" cx=\"" +
                 svg_number(x) + "\" cy=\"" + svg_number(y) +
                 "\" r=\"4\"/>\n<path class=\"pull\" d=\"M" + svg_number(x - 3) + " " +
                 svg_number(y) + "h6M" + svg_number(x) + " " + svg_number(y - 3) + "v6\"/>\n";
    }

    void scale() {
        y_ += 2 * line_height;
        for (int band = 0; band < bands; ++band) {
            const double x = margin + 44 * band;
            body_ += "<rect class=\"b" + std::to_string(band) + " swatch\" x=\"" + svg_number(x) +
                     "\" y=\"" + svg_number(y_) + "\" width=\"44\" height=\"14\"/>\n";
            body_ += text_at(x, y_ + 28, percent(full_ * band / bands));
        }
        body_ += text_at(margin + 44 * bands, y_ + 28, percent(full_));
        width_ = std::max(width_, margin + 44.0 * (bands + 1));
        y_ += 38;
        const bool inches = Measures(sheet_.unit).size_unit() == "in";
        const double bar = inches ? 101.6 : 100;
        body_ += "<path class=\"pull\" d=\"M" + svg_number(margin) + " " + svg_number(y_ + 8) +
                 "v-8h" + svg_number(bar) + "v8\"/>\n" +
                 text_at(margin + bar + 8, y_ + 6, inches ? "4 in" : "100 mm");
        y_ += 14;
    }

    const AreaSheet& sheet_;
    std::shared_ptr<const StretchMap> drawn_; ///< the other side is its mirror image
    double full_ = 1;
    double y_ = 0;
    double width_ = 420;
    std::string body_;
};

} // namespace

std::string to_svg(const AreaSheet& sheet) {
    return Picture(sheet).written();
}

} // namespace pelt::report
