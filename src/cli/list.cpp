// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/installed.hpp"

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

} // namespace

int run_list(const Context& context) {
    if (context.arguments.operands.empty()) {
        const auto files = installed_files(context.world);
        return print(section(files, false) + "\n" + section(files, true), context.messages);
    }
    Files files(context);
    const auto text = files.source(context.arguments.operands.front(), Wanted::either);
    return text ? print(text->text, context.messages) : files.status();
}

} // namespace pelt::cli
