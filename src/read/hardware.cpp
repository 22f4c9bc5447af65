// SPDX-License-Identifier: MIT
#include "read/hardware.hpp"

#include "read/suggest.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace pelt::read {
namespace {

Hardware read_part(const Entry& entry, Context& context) {
    check_name(entry.key, "the part's name", entry.place, context);
    const Fields fields(entry.value, In::hardware, "part " + quoted(entry.key), entry.place,
                        context);
    Hardware part;
    part.name = entry.key;
    part.place = entry.place;
    part.tool = fields.text("tool").value_or("");
    part.minutes_each = fields.number("minutes");
    part.clips_each = fields.count("clips").value_or(0);
    part.count = fields.count("count").value_or(1);
    part.after = fields.names("after");
    return part;
}

class References {
public:
    References(const Vehicle& vehicle, Context& context) : vehicle_(vehicle), context_(context) {
        for (const Hardware& part : vehicle.hardware)
            names_.push_back(part.name);
    }

    void check() {
        for (const Panel& panel : vehicle_.panels)
            check(panel);
        for (const Hardware& part : vehicle_.hardware)
            for (const std::string& before : part.after)
                check_name_of_part(before, "'after'", part.place);
        check_circles();
    }

private:
    void check(const Panel& panel) {
        context_.panel = panel.name;
        for (const EdgeRule& rule : panel.edges)
            if (!rule.behind.empty())
                check_name_of_part(rule.behind, "'behind'", rule.place);
        for (const Opening& opening : panel.openings)
            if (!opening.behind.empty())
                check_name_of_part(opening.behind, "'behind'", opening.place);
        context_.panel.clear();
    }

    void check_name_of_part(const std::string& name, const std::string& key, const Place& place) {
        if (std::find(names_.begin(), names_.end(), name) != names_.end())
            return;
        context_.fault(place, key + " names " + quoted(name) + ", which is not under 'hardware'",
                       names_.empty() ? "list the part under 'hardware'"
                                      : did_you_mean(name, names_, "the parts are"));
    }

    /// A part that, by `after`, has to wait for itself; each circle is told at its first part.
    void check_circles() {
        std::map<std::string, int> seen; // 1: being followed, 2: done
        for (const Hardware& part : vehicle_.hardware)
            follow(part, seen);
    }

    void follow(const Hardware& part, std::map<std::string, int>& seen) {
        int& state = seen[part.name];
        if (state == 2)
            return;
        if (state == 1) {
            context_.fault(part.place, "part " + quoted(part.name) + " has to wait for itself",
                           "its 'after' leads back to it; take one of them out");
            return;
        }
        state = 1;
        for (const std::string& name : part.after)
            for (const Hardware& before : vehicle_.hardware)
                if (before.name == name)
                    follow(before, seen);
        seen[part.name] = 2;
    }

    const Vehicle& vehicle_;
    Context& context_;
    std::vector<std::string> names_;
};

} // namespace

void read_hardware(const Fields& file, Vehicle& vehicle, Context& context) {
    if (file.has("hardware"))
        if (const std::vector<Entry>* parts = file.named("hardware"))
            for (const Entry& entry : *parts)
                vehicle.hardware.push_back(read_part(entry, context));
    References(vehicle, context).check();
}

} // namespace pelt::read
