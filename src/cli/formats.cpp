// SPDX-License-Identifier: MIT
#include "cli/formats.hpp"

#include "cli/colour.hpp"
#include "cli/complaints.hpp"
#include "cli/context.hpp"
#include "cli/csv_wish.hpp"
#include "cli/output.hpp"
#include "cli/progress.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"

#include <unistd.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <optional>
#include <set>

namespace pelt::cli {
namespace {

struct FormatRow {
    Format format;
    std::string_view name; ///< as --format takes it
    std::string_view ending;
};

constexpr std::array<FormatRow, 6> format_rows{{
    {Format::table, "table", ".txt"},
    {Format::csv, "csv", ".csv"},
    {Format::json, "json", ".json"},
    {Format::markdown, "markdown", ".md"},
    {Format::svg, "svg", ".svg"},
    {Format::pdf, "pdf", ".pdf"},
}};

bool works(const FormatRow& row, Command command) {
    const std::vector<Choice> choices = as_of(row_of(Opt::format), command).choices;
    return std::any_of(choices.begin(), choices.end(),
                       [&](const Choice& c) { return c.word == row.name && c.works; });
}

Format format_named(const std::string& name) {
    for (const FormatRow& row : format_rows)
        if (row.name == name)
            return row.format;
    throw ProgramError("no format is called " + name);
}

const FormatRow* row_for_ending(const std::string& path) {
    const std::string ending = std::filesystem::path(path).extension().string();
    for (const FormatRow& row : format_rows)
        if (row.ending == ending)
            return &row;
    return nullptr;
}

std::string known_endings(Command command) {
    std::string text;
    for (const FormatRow& row : format_rows)
        if (works(row, command))
            text += (text.empty() ? "" : ", ") + std::string(row.ending);
    return text;
}

std::optional<Format> format_of_file(const std::string& path, const Arguments& arguments,
                                     Faults& faults) {
    const Command command = *arguments.command;
    const FormatRow* row = row_for_ending(path);
    if (row != nullptr && works(*row, command))
        return row->format;
    const std::optional<std::string> asked = arguments.value(Opt::format);
    if (row != nullptr)
        faults.push_back(usage("--out " + in_quotes(path) + ": 'pelt " +
                                   std::string(row_of(command).name) + "' does not make " +
                                   std::string(row->name),
                               "the endings that it makes: " + known_endings(command)));
    else if (asked)
        return format_named(*asked);
    else
        faults.push_back(usage("--out " + in_quotes(path) + ": the ending says no format",
                               "end the name in one of " + known_endings(command) +
                                   ", or say --format as well"));
    return std::nullopt;
}

/// "pdf or csv", or their endings.
std::string joined(const std::vector<Format>& formats, bool endings) {
    std::string text;
    for (const Format format : formats)
        for (const FormatRow& row : format_rows)
            if (row.format == format)
                text += (text.empty() ? "" : " or ") + std::string(endings ? row.ending : row.name);
    return text;
}

Fault given_twice(const std::string& path) {
    return usage("--out " + in_quotes(path) + " is given twice", "give it once");
}

using Paths = std::vector<std::string>;

bool is_pdf(const Target& target) {
    return target.format == Format::pdf;
}

bool is_table(const Target& target) {
    return target.format == Format::table || target.format == Format::csv ||
           target.format == Format::markdown;
}

bool is_drawn(const Target& target) {
    return target.format == Format::svg || is_pdf(target);
}

/// The same words twice are told where they are read.
void tell_of_one_file_twice(const std::vector<Target>& targets, Faults& faults) {
    for (std::size_t i = 0; i < targets.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            const auto place = place_of_output(targets[i].path);
            if (targets[i].path == targets[k].path || !place ||
                place != place_of_output(targets[k].path))
                continue;
            faults.push_back(usage(name_of_output(targets[i].path) + " is the same file as " +
                                       name_of_output(targets[k].path),
                                   "write every result to a file of its own"));
            break;
        }
}

/// A --format that no output follows is a wish that would be forgotten in silence.
bool is_followed(Format asked, const std::vector<Target>& targets) {
    return std::any_of(targets.begin(), targets.end(), [&](const Target& t) {
        return t.is_standard_output() || t.format == asked;
    });
}

} // namespace

std::string_view name_of(Format format) {
    for (const FormatRow& row : format_rows)
        if (row.format == format)
            return row.name;
    throw ProgramError("a format has no name");
}

std::vector<std::string> paths_of(const std::vector<Target>& targets) {
    std::vector<std::string> paths;
    for (const Target& target : targets)
        paths.push_back(target.path);
    return paths;
}

std::vector<Target> targets_of(const Arguments& arguments, Faults& faults) {
    const std::optional<std::string> asked = arguments.value(Opt::format);
    const Format printed = format_named(arguments.value_or_initial(Opt::format));
    const auto outs = arguments.values.find(Opt::out);
    std::vector<Target> targets;
    if (outs == arguments.values.end())
        targets = {{"-", printed}};
    std::set<std::string> seen;
    for (const std::string& path : outs == arguments.values.end() ? Paths{} : outs->second) {
        if (!seen.insert(path).second)
            faults.push_back(given_twice(path));
        else if (path == "-")
            targets.push_back({path, printed});
        else if (const auto format = format_of_file(path, arguments, faults))
            targets.push_back({path, *format});
    }
    if (asked && faults.empty() && !is_followed(printed, targets))
        faults.push_back(usage("--format " + *asked + " says another format than the ending of " +
                                   in_quotes(targets.front().path),
                               "leave --format out, or add '-o -' to print as well"));
    for (const Target& target : targets)
        if (!target.is_standard_output())
            if (const auto fault = cannot_write(target.path))
                faults.push_back(*fault);
    tell_of_one_file_twice(targets, faults);
    const bool draws = std::any_of(targets.begin(), targets.end(), is_drawn);
    if (arguments.count(Opt::pattern) > 0 && faults.empty() && !draws)
        faults.push_back(usage("--pattern goes with SVG and PDF only", "add '--out pieces.svg'"));
    const bool lists = std::any_of(targets.begin(), targets.end(), is_table);
    if (arguments.count(Opt::summary) > 0 && faults.empty() && !lists)
        faults.push_back(
            usage("--summary goes with table, CSV and Markdown only", "add '--format csv'"));
    const bool prints = std::any_of(targets.begin(), targets.end(), is_pdf);
    if (arguments.count(Opt::paper) > 0 && faults.empty() && !prints)
        faults.push_back(usage("--paper goes with PDF only", "add '--out sheet.pdf'"));
    set_dialect(arguments, targets, faults);
    return targets;
}

std::vector<Target> targets_in(const std::vector<Format>& formats, std::string_view what,
                               const Arguments& arguments, Faults& faults) {
    const auto outs = arguments.values.find(Opt::out);
    std::vector<Target> targets;
    if (outs == arguments.values.end())
        targets = {{"-", formats.front()}};
    std::set<std::string> seen;
    for (const std::string& path : outs == arguments.values.end() ? Paths{} : outs->second) {
        if (!seen.insert(path).second) {
            faults.push_back(given_twice(path));
            continue;
        }
        const FormatRow* row = path == "-" ? nullptr : row_for_ending(path);
        const bool made = row != nullptr && std::find(formats.begin(), formats.end(),
                                                      row->format) != formats.end();
        targets.push_back({path, made ? row->format : formats.front()});
        if (targets.back().is_standard_output())
            continue;
        if (!made)
            faults.push_back(usage("--out " + in_quotes(path) + ": " + std::string(what) +
                                       " is made as " + joined(formats, false) + " only",
                                   "end the name in " + joined(formats, true)));
        if (const auto fault = cannot_write(path))
            faults.push_back(*fault);
    }
    tell_of_one_file_twice(targets, faults);
    set_dialect(arguments, targets, faults);
    return targets;
}

Faults faults_of_paper(const std::vector<Target>& targets, const World& world) {
    Faults faults;
    if (std::none_of(targets.begin(), targets.end(), is_pdf))
        return faults;
    if (world.output_is_terminal &&
        std::any_of(targets.begin(), targets.end(),
                    [&](const Target& t) { return is_pdf(t) && t.is_standard_output(); }))
        faults.push_back(usage("a PDF is nothing for a terminal to show",
                               "write it to a file: '--out sheet.pdf'"));
    if (const std::string lacks = report::what_paper_lacks(); !lacks.empty())
        faults.push_back(
            {Severity::access, {}, "", lacks, "install the package fonts-dejavu-core"});
    return faults;
}

report::Paper paper_of(const Arguments& arguments) {
    return arguments.value_or_initial(Opt::paper) == "letter" ? report::Paper::letter
                                                              : report::Paper::a4;
}

report::TextStyle style_for(const Target& target, const Context& context) {
    const World& world = context.world;
    report::TextStyle style;
    if (!target.is_standard_output() || !world.output_is_terminal)
        return style;
    style.width = static_cast<int>(terminal_columns(STDOUT_FILENO));
    style.on_a_terminal = true;
    style.ascii = !speaks_utf8(world);
    style.colour = wants_colour(context.arguments.value_or_initial(Opt::color), world, true);
    return style;
}

Unit unit_of(const Arguments& arguments) {
    const auto unit = unit_named(arguments.value(Opt::units).value_or("mm"));
    if (!unit)
        throw ProgramError("a unit that --units takes has no name");
    return *unit;
}

Unit unit_of(const Arguments& arguments, const Film& film) {
    if (arguments.count(Opt::units) > 0)
        return unit_of(arguments);
    return film.tape_unit == Unit::m ? Unit::mm : film.tape_unit;
}

Unit unit_of(const Arguments& arguments, const std::optional<Film>& film) {
    return film ? unit_of(arguments, *film) : unit_of(arguments);
}

int write_results(const std::vector<Target>& targets,
                  const std::function<std::string(const Target&)>& render,
                  const Messages& messages) {
    std::vector<Output> files;
    std::optional<std::string> printed;
    for (const Target& target : targets)
        if (target.is_standard_output())
            printed = as_wanted(render(target), target);
        else
            files.push_back({target.path, as_wanted(render(target), target)});
    if (const auto fault = write_files(files)) {
        messages.tell(*fault);
        return status_of({*fault});
    }
    for (const Output& file : files)
        messages.say("wrote " + file_in_quotes(file.path));
    return printed ? print(*printed, messages) : status::done;
}

} // namespace pelt::cli
