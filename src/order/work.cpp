// SPDX-License-Identifier: MIT
#include "order/work.hpp"

#include "order/order.hpp"
#include "order/parts_off.hpp"
#include "piece/piece.hpp"
#include "trade/consumables.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace pelt::order {
namespace {

constexpr double mm_a_metre = 1'000;
constexpr double mm2_a_square_metre = 1'000'000;

std::size_t number_of(Stage stage) {
    return static_cast<std::size_t>(stage);
}

bool holds(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

bool is_crowned(const Panel& panel) {
    return panel.crown.has_value() || !std::holds_alternative<OutlineForm>(panel.form);
}

/// What the panel is, by the table of names; a plain panel where it is not known.
PanelKind what_it_is(const Panel& panel) {
    return panel.is.value_or(PanelKind::plain_panel);
}

bool needs_two_people(const DevelopedPanel& developed) {
    return std::any_of(developed.blanks.begin(), developed.blanks.end(), [](const Blank& blank) {
        Point low = blank.outline.points.front();
        Point high = low;
        for (const Point& p : blank.outline.points) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y)};
        }
        const double along = (high.x - low.x) * um_per_mm;
        const double across = (high.y - low.y) * um_per_mm;
        return std::max(along, across) > static_cast<double>(trade::two_people_above) &&
               std::min(along, across) > static_cast<double>(trade::two_people_wider_than);
    });
}

class Work {
public:
    Work(const Job& job, const Shop& shop, const OldFilm& old_film,
         const std::vector<LeftOut>* left_out)
        : job_(job), shop_(shop), old_film_(old_film), left_out_(left_out) {}

    JobWork all() {
        for (const PieceId& id : laid_in_order())
            if (id.kind == PieceKind::inlay)
                ++out_.drivers.inlays;
            else
                lay(id);
        for (const Seam& seam : job_.seams)
            out_.drivers.seam_m += static_cast<double>(seam.length) / um_per_mm / mm_a_metre;
        take_parts_off();
        sum_up();
        return std::move(out_);
    }

private:
    std::vector<PieceId> laid_in_order() const {
        std::vector<PieceId> ids;
        for (const Piece& piece : job_.pieces)
            ids.insert(ids.end(), piece.ids.begin(), piece.ids.end());
        std::vector<PieceId> sorted;
        for (const std::size_t i : laying_order(job_, ids))
            sorted.push_back(ids[i]);
        return sorted;
    }

    /// A panel is reckoned with the first of its pieces.
    void lay(const PieceId& id) {
        ++out_.drivers.pieces;
        if (!seen_.emplace(id.vehicle, id.panel, id.side, id.copy).second)
            return;
        const Panel& panel = job_.vehicles[static_cast<std::size_t>(id.vehicle)]
                                 .panels[static_cast<std::size_t>(id.panel)];
        const DevelopedPanel& developed = job_.developed[static_cast<std::size_t>(id.vehicle)]
                                                        [static_cast<std::size_t>(id.panel)];
        const piece::RimLengths& rims = rims_of(id, panel, developed);
        const double area = developed.visible_mm2 / mm2_a_square_metre;
        PanelWork work;
        work.id = id;
        work.label = panel.name;
        if (id.side != Side::centre)
            work.label += ", " + std::string(name_of(id.side));
        std::tie(work.time, work.from) = time_on(panel, area, rims.tucked / mm_a_metre);
        work.time =
            factor_on(job_.vehicles[static_cast<std::size_t>(id.vehicle)], panel) * work.time;
        work.with_help = needs_two_people(developed);
        out_.panels.push_back(std::move(work));
        Drivers& drivers = out_.drivers;
        drivers.covered_m2 += area;
        drivers.tucked_m += rims.tucked / mm_a_metre;
        drivers.over_the_limit_m += rims.over_the_limit / mm_a_metre;
        drivers.cut_out_m += rims.cut_out / mm_a_metre;
        if (bears_old_film(panel, id.side)) {
            drivers.old_film_m2 += area;
            ++drivers.old_film_pieces;
        }
    }

    const piece::RimLengths& rims_of(const PieceId& id, const Panel& panel,
                                     const DevelopedPanel& developed) {
        const auto [entry, is_new] =
            rims_.emplace(std::pair(id.vehicle, id.panel), piece::RimLengths{});
        if (is_new)
            entry->second = piece::rims_of(panel, developed, job_.film, job_.left_on);
        return entry->second;
    }

    std::pair<Minutes, TimeFrom> time_on(const Panel& panel, double area, double tucked) const {
        const PanelKind is = what_it_is(panel);
        if (const auto own = shop_.minutes.find(is); own != shop_.minutes.end())
            return {trade::about(static_cast<double>(own->second)), TimeFrom::shop};
        if (const auto known = trade::time_on(is))
            return {*known, TimeFrom::table};
        return {trade::time_by_shape(is, area, tucked), TimeFrom::shape};
    }

    double factor_on(const Vehicle& vehicle, const Panel& panel) const {
        const bool left_on = tied_to_any(vehicle, panel, job_.left_on);
        return trade::factor_of(job_.film.kind, is_crowned(panel)) *
               (left_on ? trade::factor_own_part_left_on : 1) * shop_.pace;
    }

    bool bears_old_film(const Panel& panel, Side side) const {
        return old_film_.everywhere || holds(old_film_.panels, panel.name) ||
               (!panel.group.empty() && holds(old_film_.panels, panel.group)) ||
               holds(old_film_.panels, panel.name + "/" + std::string(name_of(side)));
    }

    void take_parts_off() {
        for (std::size_t v = 0; v < job_.vehicles.size() && left_out_ != nullptr; ++v) {
            const std::size_t first = out_.parts.size();
            const PartsOff parts =
                parts_off(job_.vehicles[v], static_cast<int>(v), *left_out_, job_.left_on);
            for (const PartNeeded& needed : in_order_of_taking_off(parts.off))
                take_off(*needed.part, needed.count, first);
        }
        out_.drivers.vehicles = static_cast<int>(job_.vehicles.size()) * job_.times;
    }

    /// `first`: where the parts of its vehicle begin.
    void take_off(const Hardware& part, int of_one_vehicle, std::size_t first) {
        const int count = of_one_vehicle * job_.times;
        PartWork work;
        work.name = part.name;
        work.off = shop_.pace * trade::about(count * part.minutes_each.value_or(0));
        for (std::size_t i = first; i < out_.parts.size(); ++i)
            if (holds(part.after, out_.parts[i].name))
                work.after.push_back(i);
        out_.without_part_minutes = out_.without_part_minutes || !part.minutes_each;
        out_.parts.push_back(std::move(work));
        out_.drivers.clips += count * part.clips_each;
        out_.drivers.badges += trade::is_badge(part.name) ? count : 0;
    }

    Minutes& stage(Stage which) { return out_.stages[number_of(which)]; }

    void sum_up() {
        const Drivers& d = out_.drivers;
        const double pace = shop_.pace;
        stage(Stage::take_in) = d.vehicles * pace * trade::take_in;
        stage(Stage::wash) = d.covered_m2 * pace * trade::wash_a_square_metre;
        for (const PartWork& part : out_.parts)
            stage(Stage::strip_down) = stage(Stage::strip_down) + part.off;
        stage(Stage::old_film) =
            pace *
            (d.old_film_pieces * trade::old_film_a_piece +
             d.old_film_m2 * (trade::old_film_a_square_metre + trade::old_glue_a_square_metre));
        stage(Stage::edges) = d.tucked_m * pace * trade::cleaning_a_metre_of_edge;
        stage(Stage::inlays) = d.inlays * pace * trade::an_inlay;
        for (const PanelWork& panel : out_.panels)
            stage(Stage::panels) = stage(Stage::panels) + panel.time;
        stage(Stage::panels) = stage(Stage::panels) + d.seam_m * pace * trade::a_metre_of_seam;
        stage(Stage::post_heat) = d.tucked_m * pace * trade::post_heat_a_metre;
        stage(Stage::badges) = d.badges * pace * trade::a_badge;
        stage(Stage::refit) = trade::refit_share * stage(Stage::strip_down);
        stage(Stage::check) = d.vehicles * pace * trade::final_check;
    }

    const Job& job_;
    const Shop& shop_;
    const OldFilm& old_film_;
    const std::vector<LeftOut>* left_out_;
    JobWork out_;
    std::set<std::tuple<int, int, Side, int>> seen_;
    std::map<std::pair<int, int>, piece::RimLengths> rims_;
};

} // namespace

JobWork work_of(const Job& job, const Shop& shop, const OldFilm& old_film,
                const std::vector<LeftOut>* left_out) {
    return Work(job, shop, old_film, left_out).all();
}

JobWork together(JobWork first, const JobWork& second) {
    const JobWork before = first;
    first.panels.insert(first.panels.end(), second.panels.begin(), second.panels.end());
    std::vector<std::size_t> place(second.parts.size());
    for (std::size_t i = 0; i < second.parts.size(); ++i) {
        const auto same =
            std::find_if(before.parts.begin(), before.parts.end(),
                         [&](const PartWork& p) { return p.name == second.parts[i].name; });
        if (same != before.parts.end()) {
            place[i] = static_cast<std::size_t>(same - before.parts.begin());
            continue;
        }
        place[i] = first.parts.size();
        PartWork part = second.parts[i];
        for (std::size_t& other : part.after)
            other = place[other];
        first.parts.push_back(std::move(part));
    }
    Drivers& d = first.drivers;
    const Drivers& more = second.drivers;
    d.covered_m2 += more.covered_m2;
    d.old_film_m2 += more.old_film_m2;
    d.tucked_m += more.tucked_m;
    d.over_the_limit_m += more.over_the_limit_m;
    d.cut_out_m += more.cut_out_m;
    d.seam_m += more.seam_m;
    d.pieces += more.pieces;
    d.inlays += more.inlays;
    d.old_film_pieces += more.old_film_pieces;
    d.badges = std::max(d.badges, more.badges);
    d.clips = std::max(d.clips, more.clips);
    for (const Stage stage : {Stage::wash, Stage::old_film, Stage::edges, Stage::inlays,
                              Stage::panels, Stage::post_heat})
        first.stages[number_of(stage)] =
            first.stages[number_of(stage)] + second.stages[number_of(stage)];
    Minutes strip_down;
    for (const PartWork& part : first.parts)
        strip_down = strip_down + part.off;
    first.stages[number_of(Stage::strip_down)] = strip_down;
    first.stages[number_of(Stage::refit)] = trade::refit_share * strip_down;
    first.without_part_minutes = first.without_part_minutes || second.without_part_minutes;
    return first;
}

} // namespace pelt::order
