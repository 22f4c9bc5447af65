// SPDX-License-Identifier: MIT
#include "cli/complaints.hpp"
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/installed.hpp"
#include "cli/list_names.hpp"
#include "cli/modeline.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/utf8.hpp"
#include "report/report.hpp"

#include <algorithm>

namespace pelt::cli {
namespace {

/// What the file calls itself, or that it is wrong; a list names every file, also those.
std::string title_of(const InstalledFile& file) {
    const auto text = read::load(file.path);
    if (!text.value)
        return "(cannot be read)";
    std::string title;
    bool demonstration = false;
    if (file.is_film) {
        const auto film = read::film(*text.value);
        if (!film.value)
            return "(wrong: see 'pelt check " + printable(file.name) + "')";
        title = film.value->name;
        demonstration = film.value->demonstration;
    } else {
        const auto vehicle = read::vehicle(*text.value);
        if (!vehicle.value)
            return "(wrong: see 'pelt check " + printable(file.name) + "')";
        title = vehicle.value->name;
        demonstration = vehicle.value->demonstration;
    }
    return title + (demonstration ? " (demonstration)" : "");
}

std::string padded(std::string text, std::size_t width) {
    text.resize(std::max(width, text.size()), ' ');
    return text;
}

std::string section(const std::vector<InstalledFile>& files, bool films) {
    std::size_t longest = 0;
    for (const InstalledFile& file : files)
        longest = std::max(longest, printable(file.name).size());
    std::string text;
    for (const InstalledFile& file : files)
        if (file.is_film == films)
            text += "  " + padded(printable(file.name), longest + 2) + title_of(file) +
                    (file.is_yours ? " (yours)" : "") + "\n";
    return (films ? "Films:\n" : "Vehicles:\n") + (text.empty() ? "  none\n" : text);
}

/// All of them by name. Whose a file is stands behind it; where the user's own lie, below.
int list_all(const Context& context) {
    const auto files = installed_files(context.world);
    std::string text = section(files, false) + "\n" + section(files, true);
    const bool has_own = std::any_of(files.begin(), files.end(),
                                     [](const InstalledFile& file) { return file.is_yours; });
    const auto own = own_folder(context.world);
    if (has_own && own)
        text += "\nYours are in " + printable(*own) + ".\n";
    Faults alike;
    for (const InstalledFile& file : files)
        if (!file.also_at.empty())
            alike.push_back(called_alike(file));
    context.messages.tell(alike);
    const int printed = print(text, context.messages);
    return printed == status::done ? status_of(alike) : printed;
}

int make_form(const Context& context) {
    Files files(context);
    Faults faults;
    const std::vector<Target> targets =
        targets_in({Format::pdf, Format::csv}, "a form", context.arguments, faults);
    for (const Fault& fault : faults_of_paper(targets, context.world))
        faults.push_back(fault);
    files.tell(faults);
    if (stops(faults))
        return files.status();
    std::optional<Vehicle> vehicle;
    if (!context.arguments.operands.empty()) {
        vehicle = files.vehicle(context.arguments.operands.front());
        if (!vehicle || !files.spared_by(paths_of(targets)))
            return files.status();
    }
    const report::Paper paper = paper_of(context.arguments);
    const Vehicle* known = vehicle ? &*vehicle : nullptr;
    return write_results(
        targets,
        [&](const Target& target) {
            return target.format == Format::csv ? read::table_to_fill_in(known)
                                                : report::measuring_form(known, paper);
        },
        context.messages);
}

/// Options that mean nothing for a list.
Faults wishes_without_form(const Arguments& arguments) {
    Faults faults;
    if (arguments.count(Opt::paper) > 0)
        faults.push_back(usage("--paper goes with --form only", "add --form"));
    if (arguments.count(Opt::out) > 0 && arguments.operands.empty())
        faults.push_back(usage("--out goes with --form or a NAME only",
                               "add --form, or name a vehicle: 'pelt list NAME -o NAME.csv'"));
    return faults;
}

/// What of a vehicle a spreadsheet can hold, and a line on everything that it cannot.
int make_table(const Context& context) {
    Files files(context);
    Faults faults;
    const std::vector<Target> targets =
        targets_in({Format::csv}, "a vehicle", context.arguments, faults);
    files.tell(faults);
    if (stops(faults))
        return files.status();
    const auto vehicle = files.vehicle(context.arguments.operands.front());
    if (!vehicle || !files.spared_by(paths_of(targets)))
        return files.status();
    const read::TableOfVehicle table = read::table_of(*vehicle);
    const int written = write_results(
        targets, [&](const Target&) { return table.text; }, context.messages);
    for (const std::string& what : table.left_out)
        context.messages.say("a table cannot hold " + what);
    return written == 0 ? files.status() : written;
}

} // namespace

int run_list(const Context& context) {
    if (context.arguments.count(Opt::form) > 0)
        return make_form(context);
    if (context.arguments.count(Opt::names) > 0)
        return list_names(context);
    if (const Faults faults = wishes_without_form(context.arguments); !faults.empty()) {
        Files files(context);
        files.tell(faults);
        return files.status();
    }
    if (context.arguments.count(Opt::out) > 0)
        return make_table(context);
    if (context.arguments.operands.empty())
        return list_all(context);
    Files files(context);
    const auto text = files.source(context.arguments.operands.front(), Wanted::either);
    if (!text || !files.spared_by({"-"}))
        return files.status();
    return print(with_schema_found(*text), context.messages);
}

} // namespace pelt::cli
