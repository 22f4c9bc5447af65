// SPDX-License-Identifier: MIT
#include "read/file.hpp"
#include "read/hardware.hpp"
#include "read/panel.hpp"
#include "read/read.hpp"

namespace pelt::read {
namespace {

void read_body(const Fields& file, Vehicle& vehicle) {
    if (const auto body = file.choice("body"))
        vehicle.body = choices_of(*find_key(In::vehicle, "body"))[*body];
}

Vehicle read_vehicle(const Fields& file, const Place& place, Context& context) {
    Vehicle vehicle;
    vehicle.place = place;
    if (const auto unit = file.choice("units")) {
        vehicle.unit = unit_named(choices_of(*find_key(In::vehicle, "units"))[*unit]).value();
        context.unit = vehicle.unit;
    }
    vehicle.name = file.text("vehicle").value_or("");
    vehicle.demonstration = file.yes_no("demonstration").value_or(false);
    read_body(file, vehicle);
    if (file.has("panels"))
        if (const std::vector<Entry>* panels = file.named("panels"))
            for (const Entry& entry : *panels)
                vehicle.panels.push_back(read_panel(entry, context));
    read_hardware(file, vehicle, context);
    return vehicle;
}

} // namespace

Reading<Vehicle> vehicle(std::shared_ptr<const Source> source) {
    return read_file<Vehicle>(source, FileKind::vehicle, [&](const Node& root, Context& context) {
        const Fields file(root, In::vehicle, "the vehicle file", root.place, context);
        return read_vehicle(file, root.place, context);
    });
}

} // namespace pelt::read
