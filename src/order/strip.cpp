// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"
#include "order/order.hpp"
#include "order/parts_off.hpp"
#include "order/selection.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace pelt::order {
namespace {

using Names = std::vector<std::string>;

/// A panel that is wrapped, with its flat shape.
struct WantedPanel {
    const Panel* panel;
    DevelopedPanel developed;
    int copies;
};

class Strip {
public:
    Strip(const StripRequest& request, StripOutcome& out) : request_(request), out_(out) {}

    void run() {
        const std::vector<Vehicle> vehicles{request_.vehicle};
        const std::vector<LeftOut> left_out =
            left_out_by(request_.selection, vehicles, out_.faults);
        out_.list.stay = left_on_by(request_.leave, vehicles, out_.faults);
        if (stops(out_.faults))
            return;
        develop_wanted(left_out);
        const PartsOff parts = parts_off(request_.vehicle, 0, left_out, out_.list.stay);
        for (const std::string& name : parts.not_needed)
            out_.list.not_needed.push_back(name);
        for (const Hardware* part : in_order_of_taking_off(request_.vehicle, parts.off))
            out_.list.off.push_back({*part, panels_of(*part)});
    }

private:
    void develop_wanted(const std::vector<LeftOut>& left_out) {
        for (std::size_t i = 0; i < request_.vehicle.panels.size(); ++i) {
            const Panel& panel = request_.vehicle.panels[i];
            const int sides = sides_in(request_.vehicle, 0, static_cast<int>(i), left_out);
            if (sides == 0)
                continue;
            wanted_.push_back({&panel, developed(panel), sides * panel.count * panel.faces});
            note_zones(panel);
            out_.list.pieces += wanted_.back().copies;
            out_.list.edge_mm += wanted_.back().copies * edge_of(wanted_.back().developed);
        }
    }

    /// Warnings about the film on a panel are for `pelt cut` and `pelt area` to tell.
    DevelopedPanel developed(const Panel& panel) {
        Faults faults;
        DevelopedPanel flat = develop::develop(panel, faults, {std::nullopt, false, nullptr});
        std::copy_if(faults.begin(), faults.end(), std::back_inserter(out_.faults),
                     [](const Fault& fault) { return fault.severity != Severity::warning; });
        return flat;
    }

    void note_zones(const Panel& panel) {
        std::set<std::string>& zones = out_.list.zones;
        zones.insert(panel.keep_clear);
        for (const Opening& opening : panel.openings)
            zones.insert(opening.keep_clear);
        zones.erase("");
    }

    static double edge_of(const DevelopedPanel& developed) {
        double length = 0;
        for (const Blank& blank : developed.blanks) {
            const std::vector<Point>& ring = blank.outline.points;
            for (std::size_t i = 0; i < ring.size(); ++i) {
                const Point& from = ring[i];
                const Point& to = ring[(i + 1) % ring.size()];
                length += std::hypot(to.x - from.x, to.y - from.y);
            }
        }
        return length;
    }

    Names panels_of(const Hardware& part) const {
        Names names;
        for (const WantedPanel& wanted : wanted_)
            if (tied_to(*wanted.panel, part.name))
                names.push_back(wanted.panel->name);
        return names;
    }

    const StripRequest& request_;
    StripOutcome& out_;
    std::vector<WantedPanel> wanted_;
};

} // namespace

StripOutcome strip(const StripRequest& request) {
    StripOutcome out;
    Strip(request, out).run();
    return out;
}

} // namespace pelt::order
