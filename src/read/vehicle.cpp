// SPDX-License-Identifier: MIT
#include "read/document.hpp"
#include "read/fields.hpp"
#include "read/hardware.hpp"
#include "read/panel.hpp"
#include "read/panel_name.hpp"
#include "read/read.hpp"

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

Vehicle read_vehicle(const Node& root, Context& context) {
    Vehicle vehicle;
    vehicle.place = root.place;
    vehicle.file = root.place.source->name;
    const Fields fields(root, In::vehicle, "the file", root.place, context);
    if (!fields.is_map())
        return vehicle;
    read_head(fields, vehicle, context);
    const Names names = hardware_names(fields);
    vehicle.hardware = read_hardware(fields, names, context);
    if (const std::vector<Entry>* panels = fields.named("panels")) {
        const RearDoors rear_doors = where_rear_doors_are(vehicle.body, *panels);
        for (const Entry& entry : *panels)
            vehicle.panels.push_back(read_panel(entry, names, rear_doors, context));
        check_with(vehicle.hardware, vehicle.panels, context);
    }
    return vehicle;
}

} // namespace

Reading<Vehicle> vehicle(std::shared_ptr<const Source> source) {
    return read_file<Vehicle>(source, FileKind::vehicle, read_vehicle);
}

} // namespace pelt::read
