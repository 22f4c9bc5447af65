// SPDX-License-Identifier: MIT
#include "cli/like_size.hpp"

#include "cli/installed.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"
#include "read/quantities.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace pelt::cli {
namespace {

bool has_unit(const std::string& size) {
    return size.find_first_not_of("0123456789./ ") != std::string::npos;
}

/// "4710 × 1830 × 1480 mm", "15 ft 6 in × 6 ft × 1480 mm": as they were written, with `unit` where
/// none is.
std::string spoken(const std::vector<std::string>& sizes, Unit unit) {
    const std::string bare = " " + std::string(name_of(unit));
    const bool one_unit = std::none_of(sizes.begin(), sizes.end(), has_unit);
    std::string text;
    for (const std::string& size : sizes)
        text += (text.empty() ? "" : " × ") + size + (one_unit || has_unit(size) ? "" : bare);
    return text + (one_unit ? bare : "");
}

} // namespace

read::FindInstalled installed_vehicles(const World& world) {
    return [world](const std::string& name) -> std::optional<std::string> {
        const std::vector<InstalledFile> files = installed_files(world);
        for (const InstalledFile& file : files)
            if (!file.is_film && file.name == name)
                return file.path;
        return std::nullopt;
    };
}

read::Reading<Vehicle> scaled_to(Vehicle vehicle, const std::string& size) {
    const auto parts = names_in(size);
    if (!parts || parts->size() != 3)
        throw ProgramError("--like-size was not checked");
    std::vector<double> mm;
    for (const std::string& part : *parts) {
        const auto parsed = read::parse_length(part, vehicle.unit);
        if (!parsed.value)
            throw ProgramError("--like-size was not checked");
        mm.push_back(parsed.value->length.mm());
    }
    const Unit unit = vehicle.unit;
    read::Reading<Vehicle> scaled =
        read::scaled_to(std::move(vehicle), {mm[0], mm[1], mm[2]});
    if (scaled.value)
        scaled.value->name += ", scaled to " + spoken(*parts, unit);
    return scaled;
}

} // namespace pelt::cli
