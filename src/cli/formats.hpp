// SPDX-License-Identifier: MIT
// Which format goes where. Inside cli/ only.
#pragma once

#include "cli/context.hpp"
#include "cli/messages.hpp"
#include "cli/parse.hpp"
#include "cli/world.hpp"
#include "model/fault.hpp"
#include "model/length.hpp"
#include "report/report.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

enum class Format { table, csv, json, markdown, svg, pdf };

/// One wanted output: a file, or standard output where `path` is "-".
struct Target {
    std::string path;
    Format format = Format::table;
    report::CsvDialect csv = report::CsvDialect::comma; ///< of a CSV
    bool is_standard_output() const { return path == "-"; }
};

std::vector<std::string> paths_of(const std::vector<Target>& targets);

/// What `--out` and `--format` ask for; standard output where there is no `--out`. A file's format
/// is that of its ending, and --format's where the ending says nothing. Wrong wishes, two names of
/// one file, and files that cannot be written, are faults.
std::vector<Target> targets_of(const Arguments& arguments, Faults& faults);

/// The same for what is made in these formats only, on standard output in the first; `what` names
/// it: "a form".
std::vector<Target> targets_in(const std::vector<Format>& formats, std::string_view what,
                               const Arguments& arguments, Faults& faults);

std::string_view name_of(Format format);

/// What keeps a PDF from being made: it would go to a terminal, or this machine lacks what it
/// needs.
Faults faults_of_paper(const std::vector<Target>& targets, const World& world);

/// What `--paper` asks for.
report::Paper paper_of(const Arguments& arguments);

/// Where the target is a terminal: as wide as that, with drawings, in colour if it is wanted, in
/// ASCII if its locale has no UTF-8. Anything else gets the same bytes everywhere.
report::TextStyle style_for(const Target& target, const Context& context);

/// What `--units` asks for.
Unit unit_of(const Arguments& arguments);
/// The same where nothing is asked for: that of the film's roll width, though never meters, which
/// no ruler has.
Unit unit_of(const Arguments& arguments, const Film& film);
Unit unit_of(const Arguments& arguments, const std::optional<Film>& film);

/// Bytes of a target's format as it wants them: CSV in its dialect, others as they are.
std::string as_wanted(std::string bytes, const Target& target);

/// Renders everything, then writes the files and at last standard output, which may be a pipe that
/// closes early. Tells what was written and what could not be. An exit status.
int write_results(const std::vector<Target>& targets,
                  const std::function<std::string(const Target&)>& render,
                  const Messages& messages);

} // namespace pelt::cli
