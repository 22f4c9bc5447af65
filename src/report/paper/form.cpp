// SPDX-License-Identifier: MIT
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/form_boxes.hpp"
#include "report/paper/form_sketch.hpp"
#include "report/paper/pages.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace pelt::report {
namespace paper {
namespace {

constexpr double type = 2.9;
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
    return boxes(cells, width, head ? head_row_height : row_height, head, letters);
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

} // namespace

std::vector<draw::Picture> form_pages(const Vehicle* vehicle, Paper paper,
                                      const draw::Letters& letters) {
    Flow flow(size_of(paper), type, letters);
    flow.add(head_of(vehicle));
    add_panels(flow, vehicle, letters);
    if (vehicle == nullptr) {
        add_sketch(flow, SketchOf{}, letters);
        add_sketch(flow, SketchOf{"", "", true}, letters);
    } else {
        for (const Panel& panel : vehicle->panels)
            add_sketch(flow, sketch_of(panel), letters);
    }
    std::vector<draw::Picture> pages = std::move(flow).pages();
    add_feet(pages,
             vehicle != nullptr ? "Measuring form · " + vehicle->name
                                : "Measuring form · copy a sketch page for every panel",
             letters);
    return pages;
}

} // namespace paper

std::string measuring_form(const Vehicle* vehicle, Paper size) {
    const paper::PaperLetters letters;
    return paper::to_pdf(paper::form_pages(vehicle, size, letters), "Measuring form");
}

} // namespace pelt::report
