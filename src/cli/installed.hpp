// SPDX-License-Identifier: MIT
// Vehicles and films that can be called by their name alone.
#pragma once

#include "cli/world.hpp"
#include "model/fault.hpp"

#include <optional>
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
    bool is_yours = false; ///< it lies in the user's own folder
    /// The installed file that has the name of this one, which is the user's: then the name alone
    /// does not say which is meant. Empty: there is none.
    std::string also_at = {};
};

/// `pelt` in the user's data folder: $XDG_DATA_HOME, else $HOME/.local/share (XDG Base Directory
/// Specification 0.8, which has relative paths ignored). None where neither says one.
std::optional<std::string> own_folder(const World& world);

/// The folders that hold installed data, in the order in which they are looked through: those of
/// $PELT_PATH, the user's own, `../share/pelt` beside the binary, then the build tree's own.
std::vector<std::string> data_folders(const World& world);

/// All installed files, vehicles before films, sorted by name; of equal names the first found.
std::vector<InstalledFile> installed_files(const World& world);

/// What to say of a file whose name an installed one has too.
Fault called_alike(const InstalledFile& file);

/// The path that an operand means: itself when it is `-`, has a `/` or names a file, else the
/// installed file of that name. An operand that is nothing of this, and a name that the user's own
/// file shares with an installed one, is a fault of severity access.
std::string path_of(const std::string& operand, Wanted wanted, const World& world, Faults& faults);

} // namespace pelt::cli
