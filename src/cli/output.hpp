// SPDX-License-Identifier: MIT
// Where results go: standard output, or files that appear whole or not at all.
#pragma once

#include "model/fault.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

/// Bytes and the file that they are for.
struct Output {
    std::string path;
    std::string bytes;
};

/// Where an output goes: a regular file, or a name in a folder where none is yet. Two outputs with
/// equal places are one file, whatever they are called.
struct PlaceOfOutput {
    std::uint64_t device = 0; ///< of the file, or else of the folder
    std::uint64_t inode = 0;
    std::string name; ///< in the folder; empty where the file is there
    bool operator==(const PlaceOfOutput&) const = default;
    bool is_file(std::uint64_t on_device, std::uint64_t with_inode) const {
        return name.empty() && device == on_device && inode == with_inode;
    }
};

/// Links followed; "-" is standard output. None for devices, pipes and terminals, which nothing is
/// lost on, and where it cannot be told.
std::optional<PlaceOfOutput> place_of_output(const std::string& path);

/// "--out 'FILE'", or "standard output".
std::string name_of_output(const std::string& path);

/// What would keep `path` from being written, found without touching it, so that a wrong name is
/// told before the work and not after it. Severity access.
std::optional<Fault> cannot_write(const std::string& path);

/// Writes every file beside its target and then renames it there: either all of the temporaries
/// are whole and every target is replaced, or no target is touched. What is no regular file (a
/// device, a pipe) is written to directly, before them. While there are temporaries, signals that
/// end a program wait.
std::optional<Fault> write_files(const std::vector<Output>& files);

/// Writes to standard output and closes it, since only then every failure has been reported.
std::optional<Fault> write_standard_output(std::string_view bytes);

} // namespace pelt::cli
