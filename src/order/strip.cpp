// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"
#include "order/consumables.hpp"
#include "order/order.hpp"
#include "order/parts_off.hpp"
#include "order/selection.hpp"
#include "piece/piece.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace pelt::order {
namespace {

using Names = std::vector<std::string>;

/// A panel that is wrapped, with its flat shape.
struct WantedPanel {
    const Panel* panel;
    int index;
    DevelopedPanel developed;
    int copies;
};

class Strip {
public:
    Strip(const StripRequest& request, StripOutcome& out) : request_(request), out_(out) {}

    void run() {
        const std::vector<Vehicle> vehicles{request_.vehicle};
        left_out_ = left_out_by(request_.selection, vehicles, out_.faults);
        out_.list.stay = left_on_by(request_.leave, vehicles, out_.faults);
        if (stops(out_.faults))
            return;
        develop_wanted();
        const PartsOff parts = parts_off(request_.vehicle, 0, left_out_, out_.list.stay);
        out_.list.not_needed = parts.not_needed;
        for (const PartNeeded& needed : in_order_of_taking_off(parts.off))
            take_off(needed);
        for (const WantedPanel& wanted : wanted_)
            reckon(wanted);
        out_.list.used_up = consumables_of(drivers_, request_.shop);
    }

private:
    void develop_wanted() {
        for (std::size_t i = 0; i < request_.vehicle.panels.size(); ++i) {
            const Panel& panel = request_.vehicle.panels[i];
            const int index = static_cast<int>(i);
            const int sides = sides_in(request_.vehicle, 0, index, left_out_);
            if (sides == 0)
                continue;
            wanted_.push_back(
                {&panel, index, developed(panel), sides * panel.count * panel.faces});
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
                     [](const Fault& fault) {
                         return fault.severity != Severity::warning &&
                                fault.severity != Severity::remark;
                     });
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

    void take_off(const PartNeeded& needed) {
        Hardware part = *needed.part;
        part.count = needed.count;
        drivers_.clips += part.count * part.clips_each;
        drivers_.badges += trade::is_badge(part.name) ? part.count : 0;
        out_.list.off.push_back({std::move(part), panels_of(*needed.part)});
    }

    Names panels_of(const Hardware& part) const {
        Names names;
        for (const WantedPanel& wanted : wanted_)
            if (is_tied(wanted, part))
                names.push_back(wanted.panel->name);
        return names;
    }

    bool is_tied(const WantedPanel& wanted, const Hardware& part) const {
        const std::vector<Side> sides = sides_of(wanted.panel->sides);
        return std::any_of(sides.begin(), sides.end(), [&](Side side) {
            return !std::binary_search(left_out_.begin(), left_out_.end(),
                                       LeftOut{0, wanted.index, side}) &&
                   tied_to(*wanted.panel, side, part);
        });
    }

    /// What the panel uses up, and what film runs over on it.
    void reckon(const WantedPanel& wanted) {
        if (stops(out_.faults))
            return;
        const Film film = request_.film.value_or(Film{});
        const Names& stay = out_.list.stay;
        const piece::RimLengths rims =
            piece::rims_of(*wanted.panel, wanted.developed, film, stay);
        Names covered = piece::openings_covered(*wanted.panel, wanted.developed, film, stay);
        const double copies = wanted.copies;
        drivers_.pieces += wanted.copies;
        drivers_.covered_m2 += copies * wanted.developed.visible_mm2 / 1e6;
        drivers_.over_the_limit_m += copies * rims.over_the_limit / 1'000;
        drivers_.cut_out_m += copies * rims.cut_out / 1'000;
        if (!covered.empty())
            out_.list.covered.push_back({wanted.panel->name, std::move(covered)});
    }

    const StripRequest& request_;
    StripOutcome& out_;
    std::vector<LeftOut> left_out_;
    std::vector<WantedPanel> wanted_;
    Drivers drivers_;
};

} // namespace

StripOutcome strip(const StripRequest& request) {
    StripOutcome out;
    Strip(request, out).run();
    return out;
}

} // namespace pelt::order
