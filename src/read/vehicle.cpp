// SPDX-License-Identifier: MIT
#include "read/document.hpp"
#include "read/fields.hpp"
#include "read/hardware.hpp"
#include "read/like.hpp"
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

/// What of a vehicle is another one's.
struct Likeness {
    std::optional<Other> other;
    Inherited inherited;
    Growth growth = {};

    void take_over(Vehicle& vehicle, const Node& root, Context& context) {
        if (!other)
            return;
        const Entry* stated = root.entry("overall");
        growth = growth_to(vehicle.overall, other->vehicle,
                           (stated != nullptr ? stated : root.entry("like"))->place, context);
        vehicle.demonstration = vehicle.demonstration || other->vehicle.demonstration;
        vehicle.like = other->vehicle.name;
        vehicle.also_read.push_back(other->source);
    }
    PanelChange change_of(const std::string& panel) const {
        const auto found = inherited.find(panel);
        if (found == inherited.end())
            return {};
        return [this, what = found->second](Panel& made) { be_like(made, growth, what); };
    }
};

Overall read_overall(const Fields& fields) {
    const auto map = fields.map("overall");
    return map ? Overall{map->mm("length"), map->mm("width"), map->mm("height")} : Overall{};
}

void read_panels(const Fields& fields, const Names& names, const Likeness& likeness,
                 Vehicle& vehicle, Context& context) {
    const std::vector<Entry>* panels = fields.named("panels");
    if (panels == nullptr)
        return;
    const RearDoors rear_doors = where_rear_doors_are(vehicle.body, *panels);
    for (const Entry& entry : *panels)
        vehicle.panels.push_back(
            read_panel(entry, names, rear_doors, likeness.change_of(entry.key), context));
    check_with(vehicle.hardware, vehicle.panels, context);
}

/// `root` may hold what another vehicle says, as `likeness` tells.
Vehicle read_whole(const Node& root, Likeness likeness, Context& context) {
    Vehicle vehicle;
    vehicle.place = root.place;
    vehicle.file = root.place.source->name;
    const Fields fields(root, In::vehicle, "the file", root.place, context);
    if (!fields.is_map())
        return vehicle;
    read_head(fields, vehicle, context);
    vehicle.overall = read_overall(fields);
    if (const Entry* like = fields.entry("like"))
        vehicle.like = fields.text("like").value_or(like->value.text);
    likeness.take_over(vehicle, root, context);
    const Names names = hardware_names(fields);
    vehicle.hardware = read_hardware(fields, names, context);
    read_panels(fields, names, likeness, vehicle, context);
    return vehicle;
}

Vehicle read_vehicle(const Node& root, const FindInstalled& find, Context& context) {
    const Entry* like = root.entry("like");
    if (like == nullptr)
        return read_alone(root, context);
    std::optional<Other> other = read_other(*like, find, context);
    if (!other)
        return read_alone(root, context);
    context.units_of_others[other->source.get()] = other->vehicle.unit;
    Likeness likeness;
    const Node both = merged(root, other->root, likeness.inherited, context);
    likeness.other = std::move(other);
    return read_whole(both, std::move(likeness), context);
}

} // namespace

Vehicle read_alone(const Node& root, Context& context) {
    return read_whole(root, {}, context);
}

Reading<Vehicle> vehicle(std::shared_ptr<const Source> source, const FindInstalled& find) {
    Reading<Vehicle> out = read_file<Vehicle>(
        source, FileKind::vehicle,
        [&](const Node& root, Context& context) { return read_vehicle(root, find, context); });
    call_by_headings(out.faults);
    return out;
}

Reading<Vehicle> scaled_to(Vehicle vehicle, const Overall& size) {
    Reading<Vehicle> out;
    Context context;
    if (is_guessed(vehicle))
        context.fault(vehicle.place, "it is like another vehicle already",
                      "change its 'overall', or name the vehicle that it is like");
    Overall wanted = size;
    const Growth growth = growth_to(wanted, vehicle, vehicle.place, context);
    for (Panel& panel : vehicle.panels)
        be_like(panel, growth, {});
    vehicle.like = vehicle.name;
    vehicle.overall = wanted;
    std::move(context).finish(out.faults, out.unlisted);
    if (!stops(out.faults))
        out.value = std::move(vehicle);
    return out;
}

} // namespace pelt::read
