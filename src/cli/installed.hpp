// SPDX-License-Identifier: MIT
// Vehicles and films that can be called by their name alone.
#pragma once

#include "cli/world.hpp"
#include "model/fault.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

/// What an operand should name.
enum class Wanted { vehicle, film, either };

struct InstalledFile {
    std::string name; ///< of the file, without folder and ending
    std::string path;
    bool is_film = false;
};

/// The folders that hold installed data, in the order in which they are looked through: those of
/// $PELT_PATH, `../share/pelt` beside the binary, then the build tree's own.
std::vector<std::string> data_folders(const World& world);

/// All installed files, vehicles before films, sorted by name; of equal names the first found.
std::vector<InstalledFile> installed_files(const World& world);

/// The path that an operand means: itself when it is `-`, has a `/` or names a file, else the
/// installed file of that name. An operand that is nothing of this is a fault of severity access.
std::string path_of(const std::string& operand, Wanted wanted, const World& world, Faults& faults);

} // namespace pelt::cli
