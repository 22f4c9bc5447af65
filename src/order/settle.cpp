// SPDX-License-Identifier: MIT
#include "order/settle.hpp"

#include "order/canonical.hpp"
#include "order/selection.hpp"
#include "order/ways.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace pelt::order {
namespace {

/// The ways of one panel of one vehicle.
struct WaysOfPanel {
    WhichPanel which;
    Ways ways;
};

const Panel& panel_at(const Job& job, const WhichPanel& which) {
    return job.vehicles[static_cast<std::size_t>(which.vehicle)]
        .panels[static_cast<std::size_t>(which.panel)];
}

Ways ways_of(const Job& job, const WhichPanel& which, const piece::Wishes& wishes, Faults& faults) {
    const DevelopedPanel& developed = job.developed[static_cast<std::size_t>(which.vehicle)]
                                                   [static_cast<std::size_t>(which.panel)];
    if (developed.blanks.empty())
        return {};
    return piece::ways_to_cut(panel_at(job, which), developed, job.film, wishes, which.vehicle,
                              which.panel, faults);
}

/// Divided at the same places.
bool are_alike(const piece::Way& a, const piece::Way& b) {
    return std::equal(a.seams.begin(), a.seams.end(), b.seams.begin(), b.seams.end(),
                      [](const Seam& x, const Seam& y) { return x.place == y.place; });
}

/// Every way worth trying, and last the fitter's; one way where the panel is not divided.
Ways ways_where_film_decides(const Job& job, const WhichPanel& which, Faults& faults) {
    Ways ways = ways_of(job, which, wishes_of(job, Seams::thrifty), faults);
    if (ways.empty() || ways.front().seams.empty())
        return ways;
    Faults told_already;
    Ways fitters = ways_of(job, which, wishes_of(job, Seams::fitter), told_already);
    const piece::Way last = fitters.empty() ? ways.front() : std::move(fitters.front());
    if (ways.size() > 1 || !are_alike(ways.front(), last))
        ways.push_back(last);
    return ways;
}

std::vector<WhichPanel> panels_to_cut(const Job& job) {
    std::vector<WhichPanel> out;
    for (int v = 0; v < static_cast<int>(job.vehicles.size()); ++v)
        for (int p = 0; p < static_cast<int>(job.vehicles[static_cast<std::size_t>(v)].panels.size());
             ++p)
            if (!is_left_out(job.left_out, v, p, panel_at(job, {v, p}).sides))
                out.push_back({v, p});
    return out;
}

/// Where the film of one vehicle is shortest: which way each of its panels is divided. The last way
/// of each is the fitter's.
class Thrift {
public:
    Thrift(const Job& job, const Request& request, int vehicle)
        : job_(job), request_(request), vehicle_(vehicle) {
        job_.times = 1;
        job_.stages = Job{}.stages;
        job_.table = std::nullopt;
        job_.in_order = false;
        settle_all_but_extras();
    }

    /// Extras are settled one by one, each beside the whole vehicle without other extras.
    std::size_t choice_of(const WhichPanel& which) {
        const auto known = std::find_if(panels_.begin(), panels_.end(), [&](const WaysOfPanel& of) {
            return of.which == which;
        });
        if (known != panels_.end())
            return choice_[static_cast<std::size_t>(known - panels_.begin())];
        std::vector<WaysOfPanel> panels;
        for (std::size_t i = 0; i < panels_.size(); ++i)
            panels.push_back({panels_[i].which, {panels_[i].ways[choice_[i]]}});
        Faults told_elsewhere;
        panels.push_back({which, ways_where_film_decides(job_, which, told_elsewhere)});
        return shortest(panels).back();
    }

private:
    void settle_all_but_extras() {
        const auto& panels = job_.vehicles[static_cast<std::size_t>(vehicle_)].panels;
        Faults told_elsewhere;
        for (int p = 0; p < static_cast<int>(panels.size()); ++p)
            if (panels[static_cast<std::size_t>(p)].extra.empty())
                if (Ways ways = ways_where_film_decides(job_, {vehicle_, p}, told_elsewhere);
                    !ways.empty())
                    panels_.push_back({{vehicle_, p}, std::move(ways)});
        // Panels are settled one after the other: by shape, not by their place in the file.
        std::stable_sort(panels_.begin(), panels_.end(),
                         [](const WaysOfPanel& a, const WaysOfPanel& b) {
                             return come_before(a.ways.front().pieces, b.ways.front().pieces);
                         });
        choice_ = shortest(panels_);
    }

    /// The best that trials find, or the fitter's places where those are as good.
    Choice shortest(const std::vector<WaysOfPanel>& panels) const {
        std::vector<Ways> ways;
        Choice fitters;
        for (const WaysOfPanel& panel : panels) {
            ways.push_back(panel.ways);
            fitters.push_back(panel.ways.size() - 1);
            if (panel.ways.size() > 1)
                ways.back().pop_back();
        }
        const Choice found = best_choice(job_, ways, request_);
        for (std::size_t i = 0; i < panels.size(); ++i)
            ways[i] = panels[i].ways;
        return is_shorter(job_, ways, found, fitters, request_) ? found : fitters;
    }

    Job job_;
    const Request& request_;
    int vehicle_;
    std::vector<WaysOfPanel> panels_;
    Choice choice_;
};

} // namespace

piece::Wishes wishes_of(const Job& job, Seams seams) {
    return {job.by, job.times, job.left_on, seams, job.free_turns};
}

WhichPanel panel_of(const piece::Way& way) {
    const PieceId& id = way.pieces.front().ids.front();
    return {id.vehicle, id.panel};
}

std::vector<piece::Way> settled_ways(const Job& job, const Request& request, Faults& faults) {
    std::vector<WaysOfPanel> panels;
    for (const WhichPanel& which : panels_to_cut(job))
        if (Ways ways = request.seams == Seams::thrifty
                            ? ways_where_film_decides(job, which, faults)
                            : ways_of(job, which, wishes_of(job, request.seams), faults);
            !ways.empty())
            panels.push_back({which, std::move(ways)});
    std::vector<piece::Way> out;
    std::optional<Thrift> thrift;
    int vehicle = -1;
    for (const WaysOfPanel& panel : panels) {
        std::size_t choice = 0;
        if (panel.ways.size() > 1 && !stops(faults)) {
            if (!thrift || vehicle != panel.which.vehicle)
                thrift.emplace(job, request, vehicle = panel.which.vehicle);
            choice = thrift->choice_of(panel.which);
        }
        out.push_back(panel.ways[choice]);
    }
    return out;
}

} // namespace pelt::order
