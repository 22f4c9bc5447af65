// SPDX-License-Identifier: MIT
#include "order/parts_off.hpp"

#include <algorithm>
#include <map>

namespace pelt::order {
namespace {

using Names = std::vector<std::string>;

bool holds(const Names& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// The part sits in or at the panel's film.
bool sits_in(const Panel& panel, Side side, const Hardware& part) {
    const auto behind = [&](const auto& at) { return at.behind == part.name; };
    return holds(part.with, panel.name) ||
           holds(part.with, panel.name + "/" + std::string(name_of(side))) ||
           (!panel.group.empty() && holds(part.with, panel.group)) ||
           std::any_of(panel.edges.begin(), panel.edges.end(), behind) ||
           std::any_of(panel.openings.begin(), panel.openings.end(), behind);
}

/// The panel is the part's own cover.
bool covers(const Panel& panel, const Hardware& part) {
    return panel.name == part.name || panel.name + "s" == part.name || panel.group == part.name;
}

/// On one side of the vehicle: how many panels are tied to a part, and how many of them are wrapped.
struct Tied {
    int panels = 0;
    int wrapped = 0;
};
using BySide = std::map<Side, Tied>;

/// How many of `count` alike parts belong to the wrapped panels.
int share_of(int count, const BySide& sides) {
    const auto all_or_none = [](int of, bool any) { return any ? of : 0; };
    const bool any = std::any_of(sides.begin(), sides.end(),
                                 [](const auto& side) { return side.second.wrapped > 0; });
    const int places = static_cast<int>(sides.size());
    if (places == 0 || count % places != 0)
        return all_or_none(count, any);
    const int a_side = count / places;
    int share = 0;
    for (const auto& [side, tied] : sides)
        share += a_side % tied.panels == 0 ? a_side / tied.panels * tied.wrapped
                                           : all_or_none(a_side, tied.wrapped > 0);
    return share;
}

class Needs {
public:
    Needs(const Vehicle& vehicle, int v, const std::vector<LeftOut>& left_out)
        : vehicle_(vehicle), v_(v), left_out_(left_out) {}

    /// As the vehicle's hardware.
    std::vector<int> counts() const {
        std::vector<int> out;
        for (const Hardware& part : vehicle_.hardware)
            out.push_back(by_panels(part));
        // Every round carries on what waits for something; at most as many rounds as parts.
        for (bool grew = true; grew;) {
            grew = false;
            for (std::size_t i = 0; i < out.size(); ++i)
                for (const std::string& before : vehicle_.hardware[i].after)
                    grew = carry_on(i, before, out) || grew;
        }
        return out;
    }

private:
    bool is_left_out(int panel, Side side) const {
        return std::binary_search(left_out_.begin(), left_out_.end(), LeftOut{v_, panel, side});
    }

    bool whole_vehicle() const {
        return std::all_of(left_out_.begin(), left_out_.end(), [&](const LeftOut& left) {
            return left.vehicle != v_ ||
                   !vehicle_.panels[static_cast<std::size_t>(left.panel)].extra.empty();
        });
    }

    int by_panels(const Hardware& part) const {
        BySide seats;
        BySide own;
        for (std::size_t p = 0; p < vehicle_.panels.size(); ++p) {
            const Panel& panel = vehicle_.panels[p];
            for (const Side side : sides_of(panel.sides)) {
                const int wrapped = is_left_out(static_cast<int>(p), side) ? 0 : 1;
                if (sits_in(panel, side, part))
                    add(seats[side], wrapped);
                else if (covers(panel, part))
                    add(own[side], wrapped);
            }
        }
        if (seats.empty() && own.empty())
            return whole_vehicle() ? part.count : 0;
        return std::max(share_of(part.count, seats), share_of(part.count, own));
    }

    static void add(Tied& tied, int wrapped) {
        ++tied.panels;
        tied.wrapped += wrapped;
    }

    /// What comes off before another part, in the same share, where its own panels do not say.
    bool carry_on(std::size_t i, const std::string& before, std::vector<int>& counts) const {
        if (counts[i] == 0)
            return false;
        for (std::size_t k = 0; k < counts.size(); ++k) {
            const Hardware& part = vehicle_.hardware[k];
            if (part.name != before || counts[k] > 0)
                continue;
            const int of = vehicle_.hardware[i].count;
            counts[k] = (part.count * std::min(counts[i], of) + of - 1) / of;
            return true;
        }
        return false;
    }

    const Vehicle& vehicle_;
    int v_;
    const std::vector<LeftOut>& left_out_;
};

} // namespace

bool tied_to(const Panel& panel, Side side, const Hardware& part) {
    return sits_in(panel, side, part) || covers(panel, part);
}

bool tied_to_any(const Vehicle& vehicle, const Panel& panel, const std::vector<std::string>& parts) {
    const std::vector<Side> sides = sides_of(panel.sides);
    return std::any_of(
        vehicle.hardware.begin(), vehicle.hardware.end(), [&](const Hardware& part) {
            return holds(parts, part.name) &&
                   std::any_of(sides.begin(), sides.end(),
                               [&](Side side) { return tied_to(panel, side, part); });
        });
}

int sides_in(const Vehicle& vehicle, int v, int p, const std::vector<LeftOut>& left_out) {
    int sides = 0;
    for (const Side side : sides_of(vehicle.panels[static_cast<std::size_t>(p)].sides))
        if (!std::binary_search(left_out.begin(), left_out.end(), LeftOut{v, p, side}))
            ++sides;
    return sides;
}

PartsOff parts_off(const Vehicle& vehicle, int vehicle_index, const std::vector<LeftOut>& left_out,
                   const std::vector<std::string>& left_on) {
    const std::vector<int> counts = Needs(vehicle, vehicle_index, left_out).counts();
    PartsOff out;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const Hardware& part = vehicle.hardware[i];
        if (holds(left_on, part.name))
            continue;
        if (counts[i] > 0)
            out.off.push_back({&part, counts[i]});
        else
            out.not_needed.push_back(part.name);
    }
    return out;
}

std::vector<PartNeeded> in_order_of_taking_off(const std::vector<PartNeeded>& parts) {
    std::vector<PartNeeded> out;
    std::vector<bool> off(parts.size(), false);
    const auto is_off = [&](const std::string& name) {
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i].part->name == name)
                return static_cast<bool>(off[i]);
        return true; // it is not among them
    };
    for (bool found = true; found;) {
        found = false;
        for (std::size_t i = 0; i < parts.size() && !found; ++i) {
            const Names& after = parts[i].part->after;
            if (off[i] || !std::all_of(after.begin(), after.end(), is_off))
                continue;
            out.push_back(parts[i]);
            off[i] = true;
            found = true;
        }
    }
    return out;
}

std::vector<std::string> coming_off(const std::vector<Vehicle>& vehicles,
                                    const std::vector<LeftOut>& left_out,
                                    const std::vector<std::string>& left_on) {
    Names out;
    for (std::size_t v = 0; v < vehicles.size(); ++v)
        for (const PartNeeded& needed :
             parts_off(vehicles[v], static_cast<int>(v), left_out, left_on).off)
            if (!holds(out, needed.part->name))
                out.push_back(needed.part->name);
    return out;
}

} // namespace pelt::order
