// SPDX-License-Identifier: MIT
#include "cli/list_names.hpp"

#include "cli/complaints.hpp"
#include "cli/files.hpp"
#include "cli/installed.hpp"
#include "model/utf8.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {
namespace {

/// Each name once, in the order in which they come.
class Names {
public:
    void add(std::string_view kind, const std::string& name) {
        // A comma cannot be said on a command line, and control characters must not reach a
        // terminal.
        if (name.empty() || name.find(',') != std::string::npos || printable(name) != name)
            return;
        std::string line = std::string(kind) + "\t" + name + "\n";
        if (std::find(lines_.begin(), lines_.end(), line) == lines_.end())
            lines_.push_back(std::move(line));
    }
    std::string text() const {
        std::string out;
        for (const std::string& line : lines_)
            out += line;
        return out;
    }

private:
    std::vector<std::string> lines_;
};

Names names_installed(const World& world) {
    Names names;
    for (const InstalledFile& file : installed_files(world))
        names.add(file.is_film ? "film" : "vehicle", file.name);
    return names;
}

/// Every panel, and its sides where it has two.
void add_panel(const Panel& panel, Names& names) {
    names.add("panel", panel.name);
    const std::vector<Side> sides = sides_of(panel.sides);
    for (const Side side : sides.size() > 1 ? sides : std::vector<Side>{})
        names.add("panel", panel.name + "/" + std::string(name_of(side)));
}

Names names_of(const Vehicle& vehicle) {
    Names names;
    for (const Panel& panel : vehicle.panels)
        add_panel(panel, names);
    for (const Panel& panel : vehicle.panels)
        names.add("group", panel.group);
    for (const Panel& panel : vehicle.panels)
        names.add("extra", panel.extra);
    for (const Hardware& part : vehicle.hardware)
        names.add("part", part.name);
    return names;
}

Faults wishes_beside_names(const Arguments& arguments) {
    Faults faults;
    for (const Opt option : {Opt::out, Opt::paper, Opt::csv})
        if (arguments.count(option) > 0)
            faults.push_back(usage(spelled(row_of(option)) + " does not go with --names",
                                   "leave one of the two out"));
    return faults;
}

} // namespace

int list_names(const Context& context) {
    Files files(context);
    files.tell(wishes_beside_names(context.arguments));
    if (files.status() != 0)
        return files.status();
    if (context.arguments.operands.empty())
        return print(names_installed(context.world).text(), context.messages);
    const auto vehicle = files.vehicle(context.arguments.operands.front());
    if (!vehicle || !files.spared_by({"-"}))
        return files.status();
    return print(names_of(*vehicle).text(), context.messages);
}

} // namespace pelt::cli
