// SPDX-License-Identifier: MIT
#include "report/paper/form_sketch.hpp"

#include "report/paper/form_boxes.hpp"
#include "report/words.hpp"

#include <variant>

namespace pelt::report::paper {
namespace {

constexpr double type = 2.9;
constexpr double square = 5; ///< of the sketch's grid
constexpr double gap = 2;
constexpr std::size_t readings = 12;
constexpr std::size_t openings = 3;

/// A head and empty rows under it.
struct Boxes {
    std::vector<Cell> head;
    std::size_t rows = 0;
    bool numbered = false;
    double height() const { return head_row_height + row_height * static_cast<double>(rows); }
};

Boxes points_table() {
    return {{{"point", 1},
             {"x", 1.7},
             {"y", 1.7},
             {"curve through x, y", 2.5},
             {"tuck to it", 1.6},
             {"or ends short", 2},
             {"edge to it: name; what it meets", 3.6}},
            readings,
            true};
}

Boxes stations_table() {
    return {{{"station", 1.2},
             {"along the spine", 2},
             {"up", 1.6},
             {"down", 1.6},
             {"tuck top", 1.5},
             {"tuck bottom", 1.5},
             {"or ends short", 2},
             {"what the edges meet", 3.2}},
            readings,
            true};
}

Boxes openings_table() {
    return {{{"opening or inlay", 3},
             {"from x, y", 2},
             {"to x, y", 2},
             {"cut out / covered / inlay", 2.4},
             {"keep clear: lamp, camera …", 2.8}},
            openings,
            false};
}

/// Squared paper with its two axes.
draw::Picture squares(double width, double height) {
    const double right = square * static_cast<double>(static_cast<int>(width / square));
    const double bottom = square * static_cast<double>(static_cast<int>(height / square));
    draw::Picture out{{}, width, bottom};
    for (double x = 0; x <= right + 1e-9; x += square)
        out.marks.push_back(draw::Path{draw::Look::rule, {{{x, 0}, {x, bottom}}}, false});
    for (double y = 0; y <= bottom + 1e-9; y += square)
        out.marks.push_back(draw::Path{draw::Look::rule, {{{0, y}, {right, y}}}, false});
    const draw::Point corner{2 * square, bottom - 2 * square};
    out.marks.push_back(draw::Arrow{{corner.x + 5, corner.y}, 10, 0});
    out.marks.push_back(draw::Arrow{{corner.x, corner.y - 5}, 10, 90});
    out.marks.push_back(draw::Text{"x", {corner.x + 12, corner.y}, type});
    out.marks.push_back(draw::Text{"y", {corner.x, corner.y - 12}, type});
    return out;
}

void add(Flow& flow, const Boxes& table, const draw::Letters& letters) {
    flow.add(boxes(table.head, flow.width(), head_row_height, true, letters));
    for (std::size_t i = 1; i <= table.rows; ++i) {
        std::vector<Cell> cells = table.head;
        for (Cell& cell : cells)
            cell.words = "";
        if (table.numbered)
            cells.front().words = std::to_string(i);
        flow.add(boxes(cells, flow.width(), row_height, false, letters));
    }
}

std::string line_of_rises(bool girths) {
    const std::string blank = "______________";
    if (girths)
        return "The spine is the line of y = 0: stations are read along it, girths square to it, "
               "with the tape lying on the panel. Tuck at the first station: " +
               blank + " · at the last: " + blank;
    return "Rise over x: " + blank + " · rise over y: " + blank +
           " · a diagonal, from ____ to ____: " + blank;
}

} // namespace

std::string count_text(const Panel& panel) {
    const int count = panel.count * panel.faces;
    const std::string sides = sides_text(panel.sides);
    return count == 1 ? sides : sides + ", " + std::to_string(count);
}

SketchOf sketch_of(const Panel& panel) {
    return {panel.name, count_text(panel), std::holds_alternative<GirthsForm>(panel.form)};
}

void add_sketch(Flow& flow, const SketchOf& what, const draw::Letters& letters) {
    flow.new_page();
    const std::string blank = "______________";
    flow.add(Title{"PANEL: " + (what.panel.empty() ? blank : what.panel),
                   what.girths ? "BY GIRTHS" : ""});
    flow.add(Line{"Sides: " + (what.sides.empty() ? blank : what.sides) +
                  " · forward: right / left / up / down · one square is " + blank});
    flow.add(Line{line_of_rises(what.girths)});
    flow.space(gap);
    const Boxes table = what.girths ? stations_table() : points_table();
    const double below = table.height() + gap + openings_table().height();
    flow.add(squares(flow.width(), flow.room() - below - 1.5 * gap));
    flow.space(gap);
    add(flow, table, letters);
    flow.space(gap);
    add(flow, openings_table(), letters);
}

} // namespace pelt::report::paper
