// SPDX-License-Identifier: MIT
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/form_rows.hpp"
#include "report/paper/form_sketch.hpp"
#include "report/paper/pages.hpp"

#include <cmath>
#include <string>
#include <utility>

namespace pelt::report {
namespace paper {
namespace {

constexpr double type = 2.9;
constexpr double gap = 3;

const std::vector<std::string>& how_to_measure() {
    static const std::vector<std::string> texts{
        "Width and height first: for cutting by hand a panel needs two readings, at its widest and "
        "at its highest, and two rises. Outlines are for plotters: the pages behind.",
        "Measure straight across and circle \"straight\": lay a straightedge so that it touches the "
        "middle, the gaps at its two ends alike; the gap at an end is the rise. Once over the "
        "width, once over the height. In a hollow it rests on both ends: the gap in the middle, "
        "with a minus. Or lay a soft tape on the panel without pulling it, and circle \"over\".",
        "Stand before the panel, outside: width runs to the right, height up. Forward is toward "
        "the nose; on a front face down, on a rear face up.",
        "The tuck is how far film can go round the edge; write what differs at the top, the "
        "bottom, the left, the right.",
        "What both sides have is measured on the left, the driver's left hand, seated and facing "
        "the nose; check one length on the right. Measure the longest panels twice.",
        "Never reach under a vehicle that stands on a jack alone; use a platform for the roof."};
    return texts;
}

std::string over_all(const Overall& overall, const Measures& measures) {
    const auto written = [&](const std::optional<double>& mm) {
        return mm ? measures.size(std::llround(*mm * um_per_mm)) : std::string("__________");
    };
    return "Over all: length " + written(overall.length_mm) + " · width without mirrors " +
           written(overall.width_mm) + " · height without rails " + written(overall.height_mm);
}

Document head_of(const Vehicle* vehicle, const Measures& measures) {
    const std::string blank = "__________________";
    return {
        Title{"MEASURING FORM", vehicle != nullptr && vehicle->demonstration ? invented_data : ""},
        Line{"Vehicle: " + (vehicle != nullptr ? vehicle->name : blank + blank) +
             " · body: " + (vehicle != nullptr && !vehicle->body.empty() ? vehicle->body : blank)},
        Line{over_all(vehicle != nullptr ? vehicle->overall : Overall{}, measures) +
             " · units: " + (vehicle != nullptr ? measures.size_unit() : "mm / cm / in")},
        Line{"Number plate: " + blank + " · measured by: " + blank + " · date: " + blank},
        Items{"-", how_to_measure()},
        Heading{vehicle != nullptr ? "WIDTH AND HEIGHT (SMALL: WHAT THE FILE SAYS)"
                                   : "WIDTH AND HEIGHT"},
    };
}

/// The unit that the vehicle file is written in, as far as a tape has it.
Unit tape_unit(const Vehicle* vehicle) {
    return vehicle != nullptr ? vehicle->unit : Unit::mm;
}

} // namespace

std::vector<draw::Picture> form_pages(const Vehicle* vehicle, Paper paper,
                                      const draw::Letters& letters) {
    const Measures measures(tape_unit(vehicle));
    Flow flow(size_of(paper), type, letters);
    flow.add(head_of(vehicle, measures));
    add_panel_rows(flow, vehicle, height_of_part_rows(vehicle) + gap, measures, letters);
    flow.space(gap);
    add_part_rows(flow, vehicle, letters);
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
