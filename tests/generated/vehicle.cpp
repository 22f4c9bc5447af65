// SPDX-License-Identifier: MIT
#include "panel.hpp"

namespace pelt::generated {
namespace {

const std::vector<std::string> groups{"front", "rear", "side walls"};
const std::vector<std::string> extras{"jambs", "sills"};

void draw_sides(Draw& draw, const DrawnFilm& film, const Form& form, DrawnPanel& panel,
                std::string& text) {
    const int kind = draw.within(1, form.is_scan ? 3 : 6);
    if (kind <= 2) {
        text += ", sides: both";
        panel.sides = {"left", "right"};
    } else if (kind == 3) {
        panel.sides = {form.is_scan ? "left" : draw.of({"left", "right"})};
        text += ", sides: " + panel.sides[0];
    } else {
        panel.sides = {"centre"};
    }
    if (form.is_scan)
        return;
    if (kind > 3 && (film.direction != "any" || draw.one_in(2)))
        text += ", forward: " + draw.of({"up", "down", "left", "right"});
    else if (draw.one_in(6))
        text += ", forward: " + draw.of({"up", "down"});
}

void draw_number(Draw& draw, DrawnPanel& panel, std::string& text) {
    if (draw.one_in(10)) {
        text += ", faces: 2";
        panel.pieces_a_side *= 2;
    }
    if (draw.one_in(8)) {
        const int count = draw.within(2, 5);
        text += ", count: " + std::to_string(count);
        panel.pieces_a_side *= count;
    }
}

void draw_remarks(Draw& draw, Pen& pen, const DrawnFilm& film, DrawnPanel& panel,
                  std::string& text) {
    if (draw.one_in(6) && film.direction != "any")
        text += ", direction: " +
                (film.direction == "one-way" ? draw.of({"two-way", "any"}) : std::string("any"));
    if (draw.one_in(4)) {
        panel.group = draw.of(groups);
        text += ", group: " + panel.group;
    }
    if (draw.one_in(14)) {
        panel.extra = draw.of(extras);
        text += ", extra: " + panel.extra;
    }
    if (draw.one_in(8))
        text += ", redo: " + std::to_string(draw.within(0, 30)) + " %";
    if (draw.one_in(12))
        text += ", tolerance: " + pen.length(draw.within(0, 80));
    if (draw.one_in(12))
        // Film never covers a panel that is kept clear for a camera or a lamp.
        text += ", keep clear: " + draw.of({"radar", "radar", "aerial"});
    if (draw.one_in(8))
        text += ", batch free: yes";
}

/// Openings, seam lines, inlays; no inlay lies across an opening.
std::string draw_insides(Draw& draw, Pen& pen, const Form& form,
                         const std::vector<std::string>& hardware, DrawnPanel& panel) {
    const Spot whole = form.middle;
    const int half = whole.room / 2;
    const bool beside = draw.one_in(3);
    const Spot left = beside ? Spot{whole.x - half, whole.y, half * 9 / 10} : whole;
    const Spot right = beside ? Spot{whole.x + half, whole.y, half * 9 / 10} : whole;
    const std::string openings = draw_openings(draw, pen, form, left, hardware);
    const std::string seams = draw_seams(draw, pen, form);
    const bool has_room = !form.is_scan && (beside || openings.empty());
    return joined({openings, seams, has_room ? draw_inlays(draw, pen, right, panel) : ""});
}

std::string draw_panel(Draw& draw, Pen& pen, const DrawnFilm& film, DrawnVehicle& vehicle,
                       DrawnPanel& panel) {
    const std::string scan_name = "scan-" + std::to_string(vehicle.panels.size() + 1) + ".obj";
    const Form form = draw_form(draw, pen, scan_name);
    if (form.is_scan)
        vehicle.scans[scan_name] = form.scan;
    std::string text = form.text;
    draw_sides(draw, film, form, panel, text);
    draw_number(draw, panel, text);
    text += draw_edges(draw, pen, form, vehicle.hardware);
    text += draw_insides(draw, pen, form, vehicle.hardware, panel);
    if (draw.one_in(5))
        text += draw_allowances(draw, pen);
    draw_remarks(draw, pen, film, panel, text);
    return text;
}

std::string draw_hardware(Draw& draw, DrawnVehicle& vehicle) {
    if (!draw.one_in(3))
        return "";
    vehicle.hardware = {"handle", "lamp unit"};
    return joined(
        {"hardware:\n  handle: {tool: hook, minutes: ", std::to_string(draw.within(1, 30)),
         ", clips: ", std::to_string(draw.within(0, 9)), "}\n  lamp unit: {count: ",
         std::to_string(draw.within(1, 3)), draw.one_in(2) ? ", after: handle" : "", "}\n"});
}

} // namespace

DrawnVehicle draw_vehicle(Draw& draw, const DrawnFilm& film) {
    DrawnVehicle vehicle;
    Pen pen(draw, drawn_unit(draw));
    vehicle.text = "vehicle: Drawn vehicle\ndemonstration: yes\n";
    if (pen.unit() != "mm")
        vehicle.text += "units: " + pen.unit() + "\n";
    if (draw.one_in(4))
        vehicle.text += "body: " + draw.of({"hatchback", "coupe", "box van", "pickup"}) + "\n";
    vehicle.text += draw_hardware(draw, vehicle);
    vehicle.text += "panels:\n";
    const int count = draw.one_in(4) ? draw.within(5, 14) : draw.within(1, 5);
    for (int i = 0; i < count; ++i) {
        DrawnPanel panel;
        panel.name = "panel " + std::to_string(i + 1);
        const std::string text = draw_panel(draw, pen, film, vehicle, panel);
        vehicle.text += "  " + panel.name + ": {" + text + "}\n";
        vehicle.panels.push_back(panel);
    }
    if (vehicle.panels[0].extra.empty())
        return vehicle;
    vehicle.panels[0].extra.clear(); // something is left to cut
    const std::size_t at = vehicle.text.find(", extra: ");
    vehicle.text.erase(at, vehicle.text.find_first_of(",}", at + 2) - at);
    return vehicle;
}

} // namespace pelt::generated
