// SPDX-License-Identifier: MIT
#include "report/stretch_cells.hpp"

#include "report/crown_section.hpp"
#include "report/draw/letters.hpp"
#include "report/draw/picture.hpp"
#include "report/numbers.hpp"
#include "report/stretch_shades.hpp"
#include "report/svg_text.hpp"
#include "report/verdict.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {
namespace {

double mm_of(Um um) {
    return static_cast<double>(um) / um_per_mm;
}

struct Extent {
    Point low;
    Point high;
};

Extent extent_of(const std::vector<Point>& points) {
    Extent out{points.front(), points.front()};
    for (const Point& p : points) {
        out.low = {std::min(out.low.x, p.x), std::min(out.low.y, p.y)};
        out.high = {std::max(out.high.x, p.x), std::max(out.high.y, p.y)};
    }
    return out;
}

std::string head_of(const PanelArea& row, std::optional<double> limit) {
    std::string text = panel_and_side(row) + ": " + stretch_text(row.stretch);
    if (const auto lies = how_it_lies(row.stretch, limit))
        text += ", " + in_words(*lies);
    return text + (row.map ? "; " + where_most(*row.map) : "");
}

class Drawing {
public:
    Drawing(const PanelArea& row, std::optional<double> limit, const StretchScale& scale)
        : row_(row), scale_(scale), head_(head_of(row, limit)), box_(box_of(row.wrapped.outer)) {}

    StretchCell made() {
        const double across_rise = row_.crown ? std::abs(row_.crown->high_mm) : 0;
        const double along_rise = row_.crown ? std::abs(row_.crown->wide_mm) : 0;
        const double gap = scale_.text;
        const double beside = across_rise > 0 ? across_rise + 2 * gap : gap;
        const double arrow = row_.forward ? 7 * scale_.text : 0;
        cell_.width = std::max(mm_of(box_.along()) + beside + arrow, 24 * scale_.text);
        title();
        cell_.height += along_rise > 0 ? along_rise + 2 * gap : gap / 2;
        left_ = -mm_of(box_.low.x);
        top_ = cell_.height + mm_of(box_.high.y);
        cell_.svg += "<g>\n<title>" + xml_text(head_) + "</title>\n";
        shades();
        rim();
        wrapped();
        seams();
        if (row_.map && !is_much_the_same(*row_.map))
            peak();
        if (!row_.map)
            sections();
        cell_.svg += "</g>\n";
        if (row_.forward)
            film_arrow(mm_of(box_.along()) + beside);
        cell_.height += std::max(mm_of(box_.across()), row_.forward ? 7 * scale_.text : 0);
        return std::move(cell_);
    }

private:
    double x(double blank) const { return left_ + blank; }
    double y(double blank) const { return top_ - blank; }

    std::string path_of(const std::vector<Point>& points) const {
        std::string path;
        for (std::size_t i = 0; i < points.size(); ++i)
            path += (i == 0 ? "M" : "L") + svg_number(x(points[i].x)) + " " +
                    svg_number(y(points[i].y));
        return path;
    }

    void draw(const std::string& css_class, const std::string& path) {
        cell_.svg += "<path class=\"" + css_class + "\" d=\"" + path + "\"/>\n";
    }

    void title() {
        for (const std::string& line : lines_within(head_, cell_.width, scale_.text)) {
            cell_.height += scale_.line_height();
            cell_.svg += svg_text_at(0, cell_.height, line, scale_.text);
        }
    }

    int band_of(double percent) const {
        const double step = scale_.full_percent / stretch_bands;
        return std::clamp(static_cast<int>(percent / step), 0, stretch_bands - 1);
    }

    void shades() {
        std::array<std::string, stretch_bands> paths;
        if (row_.map)
            for (const Shade& shade :
                 shades_of(*row_.map, scale_.full_percent / stretch_bands, stretch_bands))
                paths[static_cast<std::size_t>(shade.band)] += path_of(shade.ring) + "Z";
        else if (row_.stretch.is != StretchAsked::Is::unknown)
            paths[static_cast<std::size_t>(band_of(row_.stretch.percent))] =
                path_of(row_.outline) + "Z";
        for (std::size_t band = 0; band < paths.size(); ++band)
            if (!paths[band].empty())
                draw("shade b" + std::to_string(band), paths[band]);
    }

    void rim() {
        std::string path;
        if (row_.map)
            for (const auto& [a, b] : rim_of(*row_.map))
                path += path_of({a, b});
        else
            path = path_of(row_.outline) + "Z";
        draw("rim", path);
    }

    /// Where dividing it is proposed.
    void seams() {
        std::string path;
        if (row_.stretch.division)
            for (const auto& [a, b] : row_.stretch.division->lines)
                path += path_of({a, b});
        if (!path.empty())
            draw("proposed", path);
    }

    void wrapped() {
        std::vector<Ring> rings = row_.wrapped.holes;
        rings.push_back(row_.wrapped.outer);
        std::string path;
        for (const Ring& ring : rings) {
            std::vector<Point> points;
            for (const GridPoint& p : ring)
                points.push_back({mm_of(p.x), mm_of(p.y)});
            path += path_of(points) + "Z";
        }
        draw("wrapped", path);
    }

    void peak() {
        const StretchMap& map = *row_.map;
        const double reach = 1.2 * scale_.text;
        const double arm = scale_.text / 4;
        draw("pull", path_of({{map.peak.x - reach * map.pull.x, map.peak.y - reach * map.pull.y},
                              {map.peak.x + reach * map.pull.x, map.peak.y + reach * map.pull.y}}));
        cell_.svg += "<circle class=\"peak\" cx=\"" + svg_number(x(map.peak.x)) + "\" cy=\"" +
                     svg_number(y(map.peak.y)) + "\" r=\"" + svg_number(scale_.text / 3) + "\"/>\n";
        draw("pull", path_of({{map.peak.x - arm, map.peak.y}, {map.peak.x + arm, map.peak.y}}) +
                         path_of({{map.peak.x, map.peak.y - arm}, {map.peak.x, map.peak.y + arm}}));
    }

    /// Over the panel what bulges over its width, to the right what does over its height.
    void sections() {
        const Extent panel = extent_of(row_.outline);
        const double top = mm_of(box_.high.y) + scale_.text;
        const double right = mm_of(box_.high.x) + scale_.text;
        if (row_.crown->wide_mm != 0)
            section({{panel.low.x, top}, {1, 0}, panel.high.x - panel.low.x, row_.crown->wide_mm});
        if (row_.crown->high_mm != 0)
            section(
                {{right, panel.low.y}, {0, 1}, panel.high.y - panel.low.y, row_.crown->high_mm});
    }

    void section(const CrownLine& line) {
        const CrownSection drawn = crown_section(line);
        draw("rise", path_of(drawn.arc));
        draw("wrapped", path_of(drawn.straightedge));
        for (const std::vector<Point>& gap : drawn.gaps)
            draw("rim", path_of(gap));
    }

    void film_arrow(double from) {
        const double size = scale_.text;
        cell_.svg += svg_arrow(from + 3 * size, cell_.height + 3 * size, 4.5 * size,
                               draw::degrees_of(*row_.forward));
        cell_.svg += svg_text_at(from + .5 * size, cell_.height + 6.5 * size, "film arrow", size);
    }

    const PanelArea& row_;
    const StretchScale& scale_;
    std::string head_;
    Box box_;
    double left_ = 0;
    double top_ = 0;
    StretchCell cell_;
};

} // namespace

bool is_drawn(const PanelArea& row) {
    return row.map || (row.crown && !row.outline.empty() &&
                       (row.crown->wide_mm != 0 || row.crown->high_mm != 0));
}

std::string panel_and_side(const PanelArea& row) {
    return row.panel + (row.side == Side::centre ? "" : ", " + std::string(name_of(row.side)));
}

std::vector<std::string> lines_within(const std::string& text, double width, double text_size) {
    const draw::UnknownLetters letters;
    std::vector<std::string> lines;
    std::string line;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t to = std::min(text.find(' ', from), text.size());
        const std::string longer = (line.empty() ? "" : line + " ") + text.substr(from, to - from);
        if (!line.empty() && letters.width(longer, text_size) > width) {
            lines.push_back(line);
            line = text.substr(from, to - from);
        } else {
            line = longer;
        }
        from = to + 1;
    }
    if (!line.empty())
        lines.push_back(line);
    return lines;
}

std::string svg_text_at(double x, double y, std::string_view text, double size,
                        std::string_view css_class) {
    return "<text" + (css_class.empty() ? "" : " class=\"" + std::string(css_class) + "\"") +
           " x=\"" + svg_number(x) + "\" y=\"" + svg_number(y) + "\" font-size=\"" +
           svg_number(size) + "\">" + xml_text(text) + "</text>\n";
}

StretchCell stretch_cell(const PanelArea& row, std::optional<double> limit_percent,
                         const StretchScale& scale) {
    return Drawing(row, limit_percent, scale).made();
}

} // namespace pelt::report
