// SPDX-License-Identifier: MIT
#include "order/develop_all.hpp"
#include "order/order.hpp"
#include "order/selection.hpp"
#include "piece/piece.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

/// A film that asks for nothing: no tuck of its own, no margin, no forward, no radar to mind.
Film no_film() {
    Film film;
    film.direction = Direction::any;
    film.holds_metal = HoldsMetal::no;
    film.allowances.ruler = 1;
    return film;
}

class AreasOfPanels {
public:
    AreasOfPanels(const AreaRequest& request, AreaOutcome& out)
        : request_(request), film_(request.film.value_or(no_film())), out_(out) {}

    void run() {
        const std::vector<Vehicle> vehicles{request_.vehicle};
        left_out_ = left_out_by(request_.selection, vehicles, out_.faults);
        wishes_.left_on = left_on_by(request_.leave, vehicles, out_.faults);
        if (stops(out_.faults))
            return;
        std::vector<Developing> panels;
        std::vector<std::vector<Side>> sides;
        for (std::size_t i = 0; i < request_.vehicle.panels.size(); ++i) {
            const Panel& panel = request_.vehicle.panels[i];
            const std::vector<Side> wanted = sides_wanted(panel, static_cast<int>(i));
            if (wanted.empty())
                continue;
            panels.push_back({&panel});
            sides.push_back(wanted);
        }
        develop_each(panels, request_.threads,
                     {request_.film ? request_.film->stretch_panel_percent : std::nullopt,
                      request_.stretch_in_detail, request_.scans, request_.stretch_in_detail});
        for (std::size_t i = 0; i < panels.size(); ++i)
            add(panels[i], sides[i]);
        if (stops(out_.faults))
            out_.rows.clear();
    }

private:
    std::vector<Side> sides_wanted(const Panel& panel, int index) const {
        std::vector<Side> sides = sides_of(panel.sides);
        std::erase_if(sides, [&](Side side) {
            return std::binary_search(left_out_.begin(), left_out_.end(), LeftOut{0, index, side});
        });
        return sides;
    }

    void add(const Developing& one, const std::vector<Side>& sides) {
        const Panel& panel = *one.panel;
        const DevelopedPanel& developed = one.developed;
        out_.faults.insert(out_.faults.end(), one.faults.begin(), one.faults.end());
        if (stops(one.faults))
            return;
        const auto film = piece::film_on(piece::allowing_for_errors(panel, film_, wishes_, 0),
                                         developed, film_, wishes_, out_.faults);
        if (!film)
            return;
        const std::optional<double> cut =
            request_.film ? std::optional(film->cut_mm2) : std::nullopt;
        for (const Side side : sides)
            out_.rows.push_back({panel.name, side, panel.count * panel.faces, developed.visible_mm2,
                                 film->wrapped, cut, developed.stretch, developed.surface_mm2,
                                 developed.map, panel.forward, panel.guessed,
                                 developed.blanks.front().outline.points, panel.crown});
    }

    const AreaRequest& request_;
    Film film_;
    AreaOutcome& out_;
    std::vector<LeftOut> left_out_;
    piece::Wishes wishes_;
};

} // namespace

AreaOutcome areas(const AreaRequest& request) {
    AreaOutcome out;
    AreasOfPanels(request, out).run();
    return out;
}

} // namespace pelt::order
