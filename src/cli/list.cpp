// SPDX-License-Identifier: MIT
#include "cli/complaints.hpp"
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/installed.hpp"
#include "cli/values.hpp"
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
            return "(wrong: see 'pelt check " + file.name + "')";
        title = film.value->name;
        demonstration = film.value->demonstration;
    } else {
        const auto vehicle = read::vehicle(*text.value);
        if (!vehicle.value)
            return "(wrong: see 'pelt check " + file.name + "')";
        title = vehicle.value->name;
        demonstration = vehicle.value->demonstration;
    }
    return title + (demonstration ? " (demonstration)" : "");
}

std::string section(const std::vector<InstalledFile>& files, bool films) {
    std::size_t longest = 0;
    for (const InstalledFile& file : files)
        longest = std::max(longest, file.name.size());
    std::string text;
    for (const InstalledFile& file : files)
        if (file.is_film == films)
            text += "  " + file.name + std::string(longest + 2 - file.name.size(), ' ') +
                    title_of(file) + "\n";
    return (films ? "Films:\n" : "Vehicles:\n") + (text.empty() ? "  none\n" : text);
}

int make_form(const Context& context) {
    Files files(context);
    Faults faults;
    const std::vector<Target> targets =
        targets_in(Format::pdf, "a form", context.arguments, faults);
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
    return write_results(
        targets,
        [&](const Target&) { return report::measuring_form(vehicle ? &*vehicle : nullptr, paper); },
        context.messages);
}

/// Options that mean nothing for a list.
Faults wishes_without_form(const Arguments& arguments) {
    Faults faults;
    for (const Opt option : {Opt::out, Opt::paper})
        if (arguments.count(option) > 0)
            faults.push_back(usage(spelled(row_of(option)) + " goes with --form only",
                                   "add --form, or copy a file with 'pelt list NAME > FILE'"));
    return faults;
}

} // namespace

int run_list(const Context& context) {
    if (context.arguments.count(Opt::form) > 0)
        return make_form(context);
    if (const Faults faults = wishes_without_form(context.arguments); !faults.empty()) {
        Files files(context);
        files.tell(faults);
        return files.status();
    }
    if (context.arguments.operands.empty()) {
        const auto files = installed_files(context.world);
        return print(section(files, false) + "\n" + section(files, true), context.messages);
    }
    Files files(context);
    const auto text = files.source(context.arguments.operands.front(), Wanted::either);
    if (!text || !files.spared_by({"-"}))
        return files.status();
    return print(text->text, context.messages);
}

} // namespace pelt::cli
