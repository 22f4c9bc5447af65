// SPDX-License-Identifier: MIT
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/pages.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace pelt::report {
namespace paper {
namespace {

constexpr double type = 2.9;
constexpr double row_height = 7.5; ///< room for handwriting
constexpr double square = 5;       ///< of the sketch's grid
constexpr std::size_t points = 9;
constexpr std::size_t openings = 3;

struct Cell {
    std::string words; ///< printed small in the upper left corner, or in the middle of a head
    double share = 1;  ///< of the width
};

/// One row of boxes to write in.
draw::Picture boxes(const std::vector<Cell>& cells, double width, double height, bool head,
                    const draw::Letters& letters) {
    double shares = 0;
    for (const Cell& cell : cells)
        shares += cell.share;
    draw::Picture out{{}, width, height};
    double x = 0;
    for (const Cell& cell : cells) {
        const double wide = width * cell.share / shares;
        out.marks.push_back(
            draw::Rectangle{head ? draw::Look::shade : draw::Look::field, {x, 0, wide, height}});
        if (head)
            out.marks.push_back(draw::Rectangle{draw::Look::field, {x, 0, wide, height}});
        const double size =
            std::min(head ? 2.4 : 2.6,
                     (wide - 1.6) / std::max(0.1, letters.width_em(cell.words, draw::Face::bold)));
        out.marks.push_back(draw::Text{cell.words,
                                       {x + 0.8, height / 2},
                                       size,
                                       draw::Anchor::start,
                                       head ? draw::Face::bold : draw::Face::plain});
        x += wide;
    }
    return out;
}

const std::vector<std::string>& how_to_measure() {
    static const std::vector<std::string> texts{
        "Look at every panel from outside: x runs to the right, y up. Begin at the lower left "
        "corner and go round against the clock. Write every corner down from the same two lines.",
        "Lay a soft tape on the panel without pulling it, and write \"over\"; or measure straight "
        "across, write \"straight\", and give the rise: lay a straightedge across so that it "
        "touches "
        "the middle, the gaps at its two ends alike; the gap at an end is the rise. Once over the "
        "width, once over the height. In a hollow it rests on both ends: the gap in the middle, "
        "with a minus.",
        "Draw an arrow: forward is towards the nose; on a front face down, on a rear face up.",
        "At every edge write how far film can be tucked round it, or where it ends short.",
        "A panel that both sides have is measured on the left; check one length on the right. Left "
        "is the driver's left hand, seated and facing the nose.",
        "Mark what stays uncovered: lamps, plates, cameras, sensors, aerials; and which parts come "
        "off, and what stays on.",
        "Measure the longest panels twice, and a diagonal of each: a slip there costs the most.",
        "Never reach under a vehicle that stands on a jack alone; use a platform for the roof."};
    return texts;
}

Document head_of(const Vehicle* vehicle) {
    const std::string blank = "__________________";
    return {
        Title{"MEASURING FORM",
              vehicle != nullptr && vehicle->demonstration ? "DEMONSTRATION: INVENTED DATA" : ""},
        Line{"Vehicle: " + (vehicle != nullptr ? vehicle->name : blank + blank) +
             " · body: " + (vehicle != nullptr && !vehicle->body.empty() ? vehicle->body : blank)},
        Line{"Number plate: " + blank + " · job: " + blank + " · film: " + blank},
        Line{"Measured by: " + blank + " · date: " + blank + " · unit: mm / cm / in"},
        Heading{"HOW TO MEASURE"},
        Items{"-", how_to_measure()},
        Heading{"PANELS"},
    };
}

const std::vector<double>& panel_shares() {
    static const std::vector<double> shares{5, 4, 2.6, 2.6, 2.2, 2.2, 2.6, 2, 2, 2, 2, 1.4};
    return shares;
}

draw::Picture panel_row(const std::vector<std::string>& words, bool head, double width,
                        const draw::Letters& letters) {
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < panel_shares().size(); ++i)
        cells.push_back({i < words.size() ? words[i] : "", panel_shares()[i]});
    return boxes(cells, width, head ? 6 : row_height, head, letters);
}

std::string sides_text(const Panel& panel) {
    switch (panel.sides) {
    case Sides::left:
        return "left";
    case Sides::right:
        return "right";
    case Sides::both:
        return "left + right";
    case Sides::centre:
        break;
    }
    return "centre";
}

std::string count_text(const Panel& panel) {
    const int count = panel.count * panel.faces;
    return count == 1 ? sides_text(panel) : sides_text(panel) + ", " + std::to_string(count);
}

void add_panels(Flow& flow, const Vehicle* vehicle, const draw::Letters& letters) {
    const draw::Picture head =
        panel_row({"panel", "sides, count", "along x", "along y", "rise x", "rise y", "forward",
                   "tuck top", "bottom", "left", "right", "page"},
                  true, flow.width(), letters);
    // A blank page is filled; a vehicle's panels may run over pages.
    const double left = flow.room() - head.height;
    const auto blank_rows = static_cast<std::size_t>(std::max(0.0, left) / row_height);
    std::vector<std::vector<std::string>> rows(vehicle != nullptr ? 0 : blank_rows);
    if (vehicle != nullptr)
        for (const Panel& panel : vehicle->panels)
            rows.push_back({panel.name, count_text(panel)});
    flow.add(head);
    for (const std::vector<std::string>& row : rows) {
        if (flow.room() < row_height) {
            flow.new_page();
            flow.add(head);
        }
        flow.add(panel_row(row, false, flow.width(), letters));
    }
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

void add_rows(Flow& flow, const std::vector<Cell>& head, std::size_t count, bool numbered,
              const draw::Letters& letters) {
    flow.add(boxes(head, flow.width(), 6, true, letters));
    for (std::size_t i = 1; i <= count; ++i) {
        std::vector<Cell> cells = head;
        for (Cell& cell : cells)
            cell.words = "";
        if (numbered)
            cells.front().words = std::to_string(i);
        flow.add(boxes(cells, flow.width(), row_height, false, letters));
    }
}

void add_sketch(Flow& flow, const Panel* panel, const draw::Letters& letters) {
    flow.new_page();
    const std::string blank = "______________";
    flow.add(Title{"PANEL: " + (panel != nullptr ? panel->name : blank), ""});
    flow.add(Line{"Sides: " + (panel != nullptr ? count_text(*panel) : blank) +
                  " · forward: right / left / up / down · one square is " + blank});
    flow.add(Line{"Rise over x: " + blank + " · rise over y: " + blank + " · a diagonal, from " +
                  "____ to ____: " + blank});
    flow.space(2);
    const double below = 6 + row_height * static_cast<double>(points) + 2 + 6 +
                         row_height * static_cast<double>(openings);
    flow.add(squares(flow.width(), flow.room() - below - 3));
    flow.space(2);
    add_rows(flow,
             {{"point", 1},
              {"x", 2},
              {"y", 2},
              {"edge that ends here: tuck", 2.6},
              {"or ends short by", 2.2},
              {"its name; what it meets", 4}},
             points, true, letters);
    flow.space(2);
    add_rows(flow,
             {{"opening", 3},
              {"from x, y", 2},
              {"to x, y", 2},
              {"cut out / covered", 2},
              {"keep clear: lamp, camera …", 3}},
             openings, false, letters);
}

} // namespace

std::vector<draw::Picture> form_pages(const Vehicle* vehicle, Paper paper,
                                      const draw::Letters& letters) {
    Flow flow(size_of(paper), type, letters);
    flow.add(head_of(vehicle));
    add_panels(flow, vehicle, letters);
    if (vehicle == nullptr)
        add_sketch(flow, nullptr, letters);
    else
        for (const Panel& panel : vehicle->panels)
            add_sketch(flow, &panel, letters);
    std::vector<draw::Picture> pages = std::move(flow).pages();
    add_feet(pages,
             vehicle != nullptr ? "Measuring form · " + vehicle->name
                                : "Measuring form · copy the sketch page for every panel",
             letters);
    return pages;
}

} // namespace paper

std::string measuring_form(const Vehicle* vehicle, Paper size) {
    const paper::PaperLetters letters;
    return paper::to_pdf(paper::form_pages(vehicle, size, letters), "Measuring form");
}

} // namespace pelt::report
