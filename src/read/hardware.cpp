// SPDX-License-Identifier: MIT
#include "read/hardware.hpp"

#include "read/quantities.hpp"

#include <algorithm>
#include <map>

namespace pelt::read {
namespace {

Hardware read_part(const Entry& entry, const Names& names, Context& context) {
    Hardware part;
    part.name = entry.key;
    part.place = entry.place;
    check_name(entry.key, "the name of the hardware", entry.place, context);
    const Fields fields(entry.value, In::hardware, "hardware " + quoted(entry.key), entry.place,
                        context);
    part.tool = fields.text("tool").value_or("");
    part.count = fields.count("count").value_or(1);
    part.minutes_each = fields.number("minutes");
    part.clips_each = fields.count("clips").value_or(0);
    part.after = fields.names("after");
    part.with = fields.names_with_sides("with");
    if (const Entry* after = fields.entry("after"))
        for (const std::string& name : part.after)
            check_reference(name, "after", after->value.place, names, context);
    return part;
}

/// Takes parts away that wait for none of the others, as on the stand; what remains waits in a
/// circle, or for one.
class OrderCheck {
public:
    explicit OrderCheck(const std::vector<Hardware>& parts) : parts_(parts) {
        for (std::size_t i = 0; i < parts.size(); ++i)
            index_.emplace(parts[i].name, i);
    }

    /// The parts of one circle, in the order in which they wait for each other; empty: none.
    std::vector<std::size_t> circle() const {
        const std::vector<bool> off = taken_off();
        const auto stuck = std::find(off.begin(), off.end(), false);
        if (stuck == off.end())
            return {};
        std::vector<std::size_t> path{static_cast<std::size_t>(stuck - off.begin())};
        for (;;) {
            const std::size_t next = waits_for(path.back(), off);
            const auto seen = std::find(path.begin(), path.end(), next);
            if (seen != path.end())
                return {seen, path.end()};
            path.push_back(next);
        }
    }

private:
    std::vector<bool> taken_off() const {
        std::vector<std::size_t> waiting(parts_.size(), 0);
        std::vector<std::vector<std::size_t>> waiters(parts_.size());
        for (std::size_t i = 0; i < parts_.size(); ++i)
            for (const std::string& name : parts_[i].after)
                if (const auto before = index_.find(name); before != index_.end()) {
                    ++waiting[i];
                    waiters[before->second].push_back(i);
                }
        std::vector<std::size_t> ready;
        for (std::size_t i = 0; i < parts_.size(); ++i)
            if (waiting[i] == 0)
                ready.push_back(i);
        std::vector<bool> off(parts_.size(), false);
        while (!ready.empty()) {
            const std::size_t part = ready.back();
            ready.pop_back();
            off[part] = true;
            for (const std::size_t waiter : waiters[part])
                if (--waiting[waiter] == 0)
                    ready.push_back(waiter);
        }
        return off;
    }

    /// The first part still on that a stuck part waits for; there is one.
    std::size_t waits_for(std::size_t part, const std::vector<bool>& off) const {
        for (const std::string& name : parts_[part].after)
            if (const auto before = index_.find(name);
                before != index_.end() && !off[before->second])
                return before->second;
        return part;
    }

    const std::vector<Hardware>& parts_;
    std::map<std::string, std::size_t> index_;
};

void check_order(const std::vector<Hardware>& parts, Context& context) {
    const std::vector<std::size_t> circle = OrderCheck(parts).circle();
    if (circle.empty())
        return;
    constexpr std::size_t most_told = 5;
    std::string text = quoted(parts[circle.front()].name);
    for (std::size_t i = 1; i <= circle.size() && i <= most_told; ++i)
        text += " comes after " + quoted(parts[circle[i % circle.size()]].name);
    if (circle.size() == 1)
        text = quoted(parts[circle.front()].name) + " comes after itself";
    if (circle.size() > most_told)
        text += " ...";
    context.fault(parts[circle.front()].place, text + ": none of them can come off first",
                  "take one name out of 'after'");
}

} // namespace

Names hardware_names(const Fields& vehicle) {
    Names names{"hardware", std::set<std::string>{}};
    const Entry* entry = vehicle.entry("hardware");
    if (entry == nullptr)
        return names;
    if (entry->value.kind != Node::Kind::map)
        return {"hardware", std::nullopt};
    for (const Entry& part : entry->value.entries)
        names.known->insert(part.key);
    return names;
}

std::vector<Hardware> read_hardware(const Fields& vehicle, const Names& names, Context& context) {
    std::vector<Hardware> parts;
    const std::vector<Entry>* entries = vehicle.named("hardware");
    if (entries == nullptr)
        return parts;
    for (const Entry& entry : *entries)
        parts.push_back(read_part(entry, names, context));
    check_order(parts, context);
    return parts;
}

void check_with(const std::vector<Hardware>& parts, const std::vector<Panel>& panels,
                Context& context) {
    Names names{"panel", std::set<std::string>{}};
    for (const Panel& panel : panels) {
        names.known->insert(panel.name);
        if (!panel.group.empty())
            names.known->insert(panel.group);
        for (const Side side : sides_of(panel.sides))
            if (side != Side::centre)
                names.known->insert(panel.name + "/" + std::string(name_of(side)));
    }
    for (const Hardware& part : parts)
        for (const std::string& name : part.with)
            check_reference(name, "with", part.place, names, context);
}

} // namespace pelt::read
