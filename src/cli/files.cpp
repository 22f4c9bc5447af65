// SPDX-License-Identifier: MIT
#include "cli/files.hpp"

#include "cli/complaints.hpp"
#include "cli/like_size.hpp"
#include "cli/output.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {

std::shared_ptr<const Source> Files::source(const std::string& operand, Wanted wanted) {
    Faults faults;
    const std::string path = path_of(operand, wanted, context_.world, faults);
    tell(faults);
    if (!faults.empty())
        return nullptr;
    if (path == "-" && context_.world.input_is_terminal)
        context_.messages.say("reading from the terminal; Ctrl-D at the start of a line ends it");
    return value_of(read::load(path), path).value_or(nullptr);
}

std::optional<Vehicle> Files::vehicle(const std::string& operand) {
    const auto text = source(operand, Wanted::vehicle);
    auto vehicle = text ? value_of(read::vehicle(text, installed_vehicles(context_.world)),
                                   text->name)
                        : std::nullopt;
    const auto size = context_.arguments.value(Opt::like_size);
    if (!vehicle || !size)
        return vehicle;
    return value_of(scaled_to(*std::move(vehicle), *size), text->name);
}

std::optional<Film> Files::film(const std::string& operand) {
    const auto text = source(operand, Wanted::film);
    return text ? value_of(read::film(text), text->name) : std::nullopt;
}

std::optional<Stock> Files::stock(const std::string& path) {
    const auto text = value_of(read::load(path), path);
    return text ? value_of(read::stock(*text), path) : std::nullopt;
}

std::optional<VehicleAndFilm> Files::vehicle_and_film(const std::vector<std::string>& operands) {
    auto of_vehicle = vehicle(operands.front());
    const bool with_film = operands.size() > 1;
    auto of_film = with_film ? film(operands.back()) : std::nullopt;
    if (!of_vehicle || (with_film && !of_film))
        return std::nullopt;
    return VehicleAndFilm{*std::move(of_vehicle), std::move(of_film)};
}

bool Files::spared_by(const std::vector<std::string>& outputs) {
    Faults faults;
    for (const std::string& output : outputs) {
        const std::optional<PlaceOfOutput> place = place_of_output(output);
        const auto same = std::find_if(inputs_.begin(), inputs_.end(), [&](const auto& input) {
            return place && place->is_file(input.device, input.inode);
        });
        if (same != inputs_.end())
            faults.push_back(
                usage(name_of_output(output) + " would be written over the input " +
                          (same->path == "-" ? "(standard input)" : file_in_quotes(same->path)),
                      "write to another file"));
    }
    tell(faults);
    return faults.empty();
}

void Files::tell(const Faults& faults) {
    context_.messages.tell(faults);
    for (const Fault& fault : faults)
        if (fault.severity > worst_) {
            worst_ = fault.severity;
            status_of_worst_ = status_of({fault});
        }
}

} // namespace pelt::cli
