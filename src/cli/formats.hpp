// SPDX-License-Identifier: MIT
// Which format goes where. Inside cli/ only.
#pragma once

#include "cli/parse.hpp"
#include "model/fault.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

enum class Format { table, csv, json, markdown, svg, pdf };

/// One wanted output: a file, or standard output where `path` is "-".
struct Target {
    std::string path;
    Format format = Format::table;
    bool is_standard_output() const { return path == "-"; }
};

/// What `--out` and `--format` ask for; standard output where there is no `--out`. A file's format
/// is that of its ending, and --format's where the ending says nothing. Wrong wishes, and files
/// that cannot be written, are faults.
std::vector<Target> targets_of(const Arguments& arguments, Faults& faults);

std::string_view name_of(Format format);

} // namespace pelt::cli
