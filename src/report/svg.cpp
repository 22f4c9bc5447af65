// SPDX-License-Identifier: MIT
#include "report/facts.hpp"
#include "report/figures.hpp"
#include "report/svg_roll.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr double title_size = 90;
constexpr double note_size = 56;
constexpr double page_margin = 80;

constexpr std::string_view style = R"(<style>
text { font-family: sans-serif; fill: #000; text-anchor: middle }
.title, .note { text-anchor: start }
.title { font-weight: bold }
.left-over { fill: #cfd4d8; stroke: #000; stroke-width: 4 }
.roll-edge { fill: #8d979f; stroke: none }
.blank { fill: #fff; stroke: #000; stroke-width: 3 }
.wrapped { fill: #e4edf5; stroke: #33475b; stroke-width: 2; stroke-dasharray: 14 8; fill-rule: evenodd }
.inlay .wrapped { fill: #f3ead2 }
.cut { fill: none; stroke: #000; stroke-width: 5; stroke-dasharray: 40 12 }
.cut-number circle { fill: #fff; stroke: #000; stroke-width: 2 }
.arrow { fill: #4a5a68; stroke: none }
.tick, .leader { fill: none; stroke: #000; stroke-width: 2 }
</style>
)";

struct LegendRow {
    std::string_view css_class;
    std::string_view text;
};

std::vector<LegendRow> legend_of(CutBy by) {
    std::vector<LegendRow> rows{{"blank", "as cut from the roll"},
                                {"wrapped", "stays on the vehicle"},
                                {"left-over", "left over"},
                                {"roll-edge", "roll edge not used"}};
    if (by == CutBy::straight)
        rows.push_back({"cut", "cuts, numbered in the order made"});
    rows.push_back({"arrow", "forward on the vehicle"});
    return rows;
}

std::string swatch(const LegendRow& row, double y) {
    if (row.css_class == "arrow")
        return svg_arrow(page_margin + 60, y + 30, 110, 0);
    if (row.css_class == "cut")
        return "<path class=\"cut\" d=\"M" + svg_number(page_margin) + " " + svg_number(y + 30) +
               "h120\"/>\n";
    return "<rect class=\"" + std::string(row.css_class) + "\" x=\"" + svg_number(page_margin) +
           "\" y=\"" + svg_number(y) + "\" width=\"120\" height=\"60\"/>\n";
}

std::string left_text(std::string_view css_class, double x, double y, double size,
                      std::string_view text) {
    return "<text class=\"" + std::string(css_class) + "\" x=\"" + svg_number(x) + "\" y=\"" +
           svg_number(y) + "\" font-size=\"" + svg_number(size) + "\">" + xml_text(text) +
           "</text>\n";
}

class Drawing {
public:
    explicit Drawing(const Sheet& sheet) : sheet_(sheet), measures_(sheet.unit) {}

    std::string written() {
        titles();
        rolls();
        legend();
        return head() + body_ + "</svg>\n";
    }

private:
    void put_left(std::string_view css_class, double size, const std::string& text) {
        y_ += size * 1.35;
        body_ += left_text(css_class, page_margin, y_, size, text);
        width_ = std::max(width_, 2 * page_margin + text_width_em(text) * size * 1.1);
    }

    bool has_arrow() const { return sheet_.plan.job().film.direction != Direction::any; }

    void titles() {
        const Job& job = sheet_.plan.job();
        y_ = page_margin / 2;
        put_left("title", title_size,
                 vehicles_of(job) + (is_demonstration(job) ? " · DEMONSTRATION" : ""));
        put_left("note", note_size,
                 "Film: " + job.film.name + " · " + by_text(job.by) +
                     " · face up, free end on the left" +
                     (has_arrow() ? ", film arrow to the right" : ""));
        const std::string code = check_code_of(sheet_);
        put_left("note", note_size,
                 "Files: " + (code.empty() ? std::string("____________") : code) + " · sizes in " +
                     measures_.size_unit());
    }

    void rolls() {
        const std::vector<PlacedPiece> pieces = pieces_by_number(sheet_.plan);
        for (std::size_t i = 0; i < sheet_.plan.layout().rolls.size(); ++i) {
            y_ += page_margin / 2;
            put_left("note", note_size, roll_title(i));
            const RollDrawing roll = draw_roll(sheet_, pieces, i, measures_);
            body_ += "<g id=\"roll-" + std::to_string(i + 1) + "\" transform=\"translate(" +
                     svg_number(page_margin) + " " + svg_number(y_ + page_margin / 2) + ")\">\n" +
                     roll.svg + "</g>\n";
            y_ += page_margin / 2 + roll.height;
            width_ = std::max(width_, roll.width + 2 * page_margin);
        }
    }

    std::string roll_title(std::size_t i) const {
        const UsedRoll& used = sheet_.plan.layout().rolls[i];
        const Roll& roll = sheet_.plan.job().rolls.at(used.roll);
        return "Roll " + roll.name + ": " + measures_.film(used.length) + " × " +
               measures_.size_with_unit(roll.width);
    }

    void legend() {
        y_ += page_margin / 2;
        for (const LegendRow& row : legend_of(sheet_.plan.job().by)) {
            body_ += swatch(row, y_);
            body_ += left_text("note", page_margin + 160, y_ + 50, note_size, row.text);
            width_ = std::max(width_, 2 * page_margin + 160 + text_width_em(row.text) * note_size);
            y_ += 85;
        }
    }

    std::string head() const {
        const std::string width = svg_number(width_);
        const std::string height = svg_number(y_ + page_margin / 2);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
               "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
               width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height +
               "\">\n<title>" + xml_text(vehicles_of(sheet_.plan.job())) + "</title>\n" +
               std::string(style) + "<rect width=\"" + width + "\" height=\"" + height +
               "\" fill=\"#fff\"/>\n";
    }

    const Sheet& sheet_;
    Measures measures_;
    std::string body_;
    double width_ = 0;
    double y_ = 0;
};

} // namespace

std::string to_svg(const Sheet& sheet) {
    return Drawing(sheet).written();
}

} // namespace pelt::report
