// SPDX-License-Identifier: MIT
#include "report/draw/svg.hpp"

#include "report/decimal.hpp"
#include "report/draw/looks.hpp"
#include "report/svg_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace pelt::report::draw {
namespace {

std::string exact(double mm) {
    return decimal(std::llround(mm * 1000), 3, 0);
}

std::string colour_text(Colour colour) {
    if (colour == none)
        return "none";
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text = "#";
    for (int shift = 20; shift >= 0; shift -= 4)
        text += digits[static_cast<std::size_t>((colour >> shift) & 15)];
    return text;
}

std::string rule_of(const LookRow& row, double scale) {
    std::string text = "." + std::string(row.name) + " { fill: " + colour_text(row.fill) +
                       "; stroke: " + colour_text(row.stroke);
    if (row.stroke != none)
        text += "; stroke-width: " + svg_number(row.stroke_width * scale);
    std::string dashes;
    for (const double dash : row.dashes)
        dashes += (dashes.empty() ? "" : " ") + svg_number(dash * scale);
    if (!dashes.empty())
        text += "; stroke-dasharray: " + dashes;
    return text + " }\n";
}

std::string class_of(Look look) {
    return "class=\"" + std::string(row_of(look).name) + "\"";
}

std::string_view anchor_class(Anchor anchor) {
    static constexpr std::array<std::string_view, 3> names{"start", "middle", "end"};
    return names[static_cast<std::size_t>(anchor)];
}

class Writer {
public:
    std::string written(const Picture& picture) {
        for (const Mark& mark : picture.marks)
            std::visit(*this, mark);
        return std::move(out_);
    }

    void operator()(const Path& path) {
        out_ += "<path " + class_of(path.look) + " d=\"";
        for (const Ring& ring : path.rings) {
            for (std::size_t i = 0; i < ring.size(); ++i)
                out_ += (i == 0 ? "M" : "L") + exact(ring[i].x) + " " + exact(ring[i].y);
            out_ += path.closed ? "Z" : "";
        }
        out_ += "\"/>\n";
    }
    void operator()(const Rectangle& r) {
        out_ += "<rect " + class_of(r.look) + " x=\"" + exact(r.box.x) + "\" y=\"" +
                exact(r.box.y) + "\" width=\"" + exact(r.box.width) + "\" height=\"" +
                exact(r.box.height) + "\"/>\n";
    }
    void operator()(const Circle& c) {
        out_ += "<circle " + class_of(c.look) + " cx=\"" + svg_number(c.middle.x) + "\" cy=\"" +
                svg_number(c.middle.y) + "\" r=\"" + svg_number(c.radius) + "\"/>\n";
    }
    void operator()(const Arrow& a) {
        out_ += svg_arrow(a.middle.x, a.middle.y, a.length, a.degrees);
    }
    void operator()(const Text& t) {
        const double below = capital_height / 2 * t.size;
        const std::string place =
            t.turned ? " transform=\"translate(" + svg_number(t.at.x + below) + " " +
                           svg_number(t.at.y) + ") rotate(-90)\""
                     : " x=\"" + svg_number(t.at.x) + "\" y=\"" + svg_number(t.at.y + below) + "\"";
        out_ += "<text class=\"" + std::string(anchor_class(t.anchor)) +
                (t.face == Face::bold ? " bold" : "") + "\"" + place + " font-size=\"" +
                svg_number(t.size) + "\">" + xml_text(t.words) + "</text>\n";
    }
    void operator()(const GroupBegin& g) {
        out_ += "<g class=\"" + xml_text(g.css_class) + "\" id=\"" + xml_text(g.id) +
                "\">\n<title>" + xml_text(g.title) + "</title>\n";
        if (!g.description.empty())
            out_ += "<desc>" + xml_text(g.description) + "</desc>\n";
    }
    void operator()(GroupEnd) { out_ += "</g>\n"; }
    void operator()(const ClipBegin& c) {
        const std::string id = "clip-" + std::to_string(++clips_);
        out_ += "<clipPath id=\"" + id + "\"><rect x=\"" + exact(c.box.x) + "\" y=\"" +
                exact(c.box.y) + "\" width=\"" + exact(c.box.width) + "\" height=\"" +
                exact(c.box.height) + "\"/></clipPath>\n<g clip-path=\"url(#" + id + ")\">\n";
    }
    void operator()(ClipEnd) { out_ += "</g>\n"; }

private:
    std::string out_;
    int clips_ = 0;
};

/// In true millimetres; whatever the size, a user unit is one. Programs that draw a page in points
/// of the usual 96 an inch refuse more than 32,767 of them, so a long roll gets no size of its own,
/// and is drawn as large as there is room; a very long one a size that they take.
std::string size_of_page(const Picture& picture) {
    constexpr double most_points = 32'000;
    constexpr double most_mm = most_points * 25.4 / 96;
    const double larger = std::max(picture.width, picture.height);
    const auto attributes = [&](double scale) {
        return " width=\"" + exact(picture.width * scale) + "mm\" height=\"" +
               exact(picture.height * scale) + "mm\"";
    };
    if (larger <= most_mm)
        return attributes(1);
    return larger <= most_points ? "" : attributes(most_mm / larger);
}

} // namespace

std::string svg_style(double line_scale) {
    std::string text = "text { font-family: sans-serif; fill: #000 }\n"
                       ".middle { text-anchor: middle }\n.end { text-anchor: end }\n"
                       ".bold { font-weight: bold }\npath { fill-rule: evenodd }\n";
    for (const LookRow& row : looks())
        text += rule_of(row, line_scale);
    return text;
}

std::string to_svg(const Picture& picture) {
    return Writer().written(picture);
}

std::string svg_file(const std::string& title, const std::string& style, const Picture& picture,
                     Ground ground) {
    const std::string width = exact(picture.width);
    const std::string height = exact(picture.height);
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<svg xmlns=\"http://www.w3.org/2000/svg\"" +
                       size_of_page(picture) + " viewBox=\"0 0 " + width + " " + height +
                       "\">\n<title>" + xml_text(title) + "</title>\n<style>\n" + style +
                       "</style>\n";
    if (ground == Ground::white)
        text += "<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\"/>\n";
    return text + to_svg(picture) + "</svg>\n";
}

} // namespace pelt::report::draw
