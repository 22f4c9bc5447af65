// SPDX-License-Identifier: MIT
#include "read/document.hpp"
#include "read/fields.hpp"
#include "read/hardware.hpp"
#include "read/panel.hpp"
#include "read/panel_name.hpp"
#include "read/read.hpp"
#include "read/table/table.hpp"

namespace pelt::read {
namespace {

void read_head(const Fields& fields, Vehicle& vehicle, Context& context) {
    if (const auto unit = fields.choice("units"))
        context.unit = unit_of_choice(*unit);
    vehicle.unit = context.unit;
    vehicle.name = fields.text("vehicle").value_or("");
    vehicle.demonstration = fields.yes_no("demonstration").value_or(false);
    if (const auto body = fields.choice("body"))
        vehicle.body = choices_of(*find_key(In::vehicle, "body"))[*body];
}

Overall read_overall(const Fields& fields) {
    const auto map = fields.map("overall");
    return map ? Overall{map->mm("length"), map->mm("width"), map->mm("height")} : Overall{};
}

Vehicle read_vehicle(const Node& root, Context& context) {
    Vehicle vehicle;
    vehicle.place = root.place;
    vehicle.file = root.place.source->name;
    const Fields fields(root, In::vehicle, "the file", root.place, context);
    if (!fields.is_map())
        return vehicle;
    read_head(fields, vehicle, context);
    vehicle.overall = read_overall(fields);
    const Names names = hardware_names(fields);
    vehicle.hardware = read_hardware(fields, names, context);
    if (const std::vector<Entry>* panels = fields.named("panels")) {
        const bool doors_in_the_rear = has_doors_in_the_rear(vehicle.body, *panels);
        for (const Entry& entry : *panels)
            vehicle.panels.push_back(read_panel(entry, names, doors_in_the_rear, context));
    }
    return vehicle;
}

} // namespace

Reading<Vehicle> vehicle(std::shared_ptr<const Source> source) {
    Reading<Vehicle> out = read_file<Vehicle>(source, FileKind::vehicle, read_vehicle);
    call_by_headings(out.faults);
    return out;
}

} // namespace pelt::read
