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

std::vector<WhichPanel> panels_to_cut(const Job& job) {
    std::vector<WhichPanel> out;
    for (int v = 0; v < static_cast<int>(job.vehicles.size()); ++v)
        for (int p = 0; p < static_cast<int>(job.vehicles[static_cast<std::size_t>(v)].panels.size());
             ++p)
            if (!is_left_out(job.left_out, v, p, panel_at(job, {v, p}).sides))
                out.push_back({v, p});
    return out;
}

/// Where the film of one vehicle is shortest: which way each of its panels is divided.
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
    std::size_t choice_of(const WaysOfPanel& panel) {
        const auto same = [&](const WaysOfPanel& other) { return other.which == panel.which; };
        const auto known = std::find_if(panels_.begin(), panels_.end(), same);
        if (known != panels_.end())
            return choice_[static_cast<std::size_t>(known - panels_.begin())];
        std::vector<Ways> ways;
        for (std::size_t i = 0; i < panels_.size(); ++i)
            ways.push_back({panels_[i].ways[choice_[i]]});
        ways.push_back(ways_alone(panel.which));
        return best_choice(job_, ways, request_).back();
    }

private:
    Ways ways_alone(const WhichPanel& which) const {
        Faults told_elsewhere;
        return ways_of(job_, which, wishes_of(job_, Seams::thrifty), told_elsewhere);
    }

    void settle_all_but_extras() {
        const auto& panels = job_.vehicles[static_cast<std::size_t>(vehicle_)].panels;
        for (int p = 0; p < static_cast<int>(panels.size()); ++p)
            if (panels[static_cast<std::size_t>(p)].extra.empty())
                if (Ways ways = ways_alone({vehicle_, p}); !ways.empty())
                    panels_.push_back({{vehicle_, p}, std::move(ways)});
        // Panels are settled one after the other: by shape, not by their place in the file.
        std::stable_sort(panels_.begin(), panels_.end(),
                         [](const WaysOfPanel& a, const WaysOfPanel& b) {
                             return come_before(a.ways.front().pieces, b.ways.front().pieces);
                         });
        std::vector<Ways> ways;
        for (const WaysOfPanel& panel : panels_)
            ways.push_back(panel.ways);
        choice_ = best_choice(job_, ways, request_);
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
        if (Ways ways = ways_of(job, which, wishes_of(job, request.seams), faults); !ways.empty())
            panels.push_back({which, std::move(ways)});
    std::vector<piece::Way> out;
    std::optional<Thrift> thrift;
    int vehicle = -1;
    for (const WaysOfPanel& panel : panels) {
        std::size_t choice = 0;
        if (panel.ways.size() > 1 && !stops(faults)) {
            if (!thrift || vehicle != panel.which.vehicle)
                thrift.emplace(job, request, vehicle = panel.which.vehicle);
            choice = thrift->choice_of(panel);
        }
        out.push_back(panel.ways[choice]);
    }
    return out;
}

} // namespace pelt::order
