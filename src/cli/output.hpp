// SPDX-License-Identifier: MIT
// Where results go: standard output, or files that appear whole or not at all.
#pragma once

#include "model/fault.hpp"

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

/// What would keep `path` from being written, found without touching it, so that a wrong name is
/// told before the work and not after it. Severity access.
std::optional<Fault> cannot_write(const std::string& path);

/// Writes every file beside its target and then renames it there: either all of the temporaries
/// are whole and every target is replaced, or no target is touched. What is no regular file (a
/// device, a pipe) is written to directly. Signals that end a program wait meanwhile.
std::optional<Fault> write_files(const std::vector<Output>& files);

/// Writes to standard output and closes it, since only then every failure has been reported.
std::optional<Fault> write_standard_output(std::string_view bytes);

} // namespace pelt::cli
