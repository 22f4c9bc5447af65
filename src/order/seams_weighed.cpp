// SPDX-License-Identifier: MIT
#include "order/seams_weighed.hpp"

#include "order/buying.hpp"
#include "order/extents.hpp"
#include "order/fill.hpp"
#include "order/selection.hpp"
#include "order/settle.hpp"
#include "order/ways.hpp"
#include "trade/margins.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace pelt::order {
namespace {

/// Less film than this on either side cannot be gripped at all. Common practice, no source.
constexpr Um least_to_grip = 3 * um_per_mm;

bool rises_little(const Panel& panel) {
    if (!panel.crown)
        return true;
    const std::optional<Extents> size = extents_of(panel);
    return size && std::abs(panel.crown->wide_mm) <= trade::nearly_flat_rise * size->wide() &&
           std::abs(panel.crown->high_mm) <= trade::nearly_flat_rise * size->tall();
}

bool is_flat(const Panel& panel) {
    return std::holds_alternative<OutlineForm>(panel.form) && !panel.allowances.handling &&
           trade::is_flat_by_nature(panel.is.value_or(PanelKind::plain_panel)) &&
           rises_little(panel);
}

class Weighing {
public:
    Weighing(const Job& job, const Layout& layout, const std::vector<piece::Way>& ways,
             const Request& request)
        : job_(job), ways_(ways), request_(request), effort_(request.effort) {
        effort_.amount = 1;
        effort_.trial = true;
        now_ = bought(layout, job);
    }

    SeamsWeighed all(const std::vector<std::vector<bool>>& flat) {
        for (std::size_t i = 0; i < ways_.size(); ++i)
            if (!ways_[i].seams.empty())
                weigh(i);
        weigh_narrow_margins(flat);
        return std::move(out_);
    }

private:
    static std::optional<Length> bought(const Layout& layout, const Job& job) {
        if (job.film.sold.empty())
            return std::nullopt;
        return buy(job.film, new_lengths(job, layout), {}).length();
    }

    const Panel& panel_of_way(std::size_t i) const {
        const WhichPanel which = panel_of(ways_[i]);
        return job_.vehicles[static_cast<std::size_t>(which.vehicle)]
            .panels[static_cast<std::size_t>(which.panel)];
    }

    std::vector<piece::Way> cut_otherwise(std::size_t i, const Panel& panel, Seams seams) const {
        const WhichPanel which = panel_of(ways_[i]);
        Faults none_told;
        return piece::ways_to_cut(panel,
                                  job_.developed[static_cast<std::size_t>(which.vehicle)]
                                                [static_cast<std::size_t>(which.panel)],
                                  job_.film, wishes_of(job_, seams), which.vehicle, which.panel,
                                  none_told);
    }

    /// What is bought where panel number `i` is cut so.
    std::optional<Length> with(std::size_t i, const piece::Way& way) const {
        std::vector<piece::Way> ways = ways_;
        ways[i] = way;
        return with(ways);
    }

    std::optional<Length> with(const std::vector<piece::Way>& ways) const {
        if (!now_)
            return std::nullopt;
        Job job = job_;
        job.not_cut.clear();
        set_pieces(job, ways);
        Faults none_told;
        leave_out_pieces(request_.selection, job, none_told);
        if (job.pieces.empty())
            return std::nullopt;
        set_rolls(job);
        const nest::Result result =
            fill(job, effort_, while_doing("weighing other seams", request_.watch));
        return result.layout ? bought(*result.layout, job) : std::nullopt;
    }

    void weigh(std::size_t i) {
        const Panel& panel = panel_of_way(i);
        whole_with_less_margin(i, panel);
        whole_across_the_arrow(i, panel);
        if (request_.seams == Seams::fitter)
            where_film_is_shortest(i, panel);
    }

    void add(std::size_t i, CutOtherwise::Is is, Um margin, std::optional<Length> order) {
        const WhichPanel which = panel_of(ways_[i]);
        out_.panels.push_back({which.vehicle, which.panel, is, margin, order});
    }

    /// The way without a seam that is not always there, if there is one.
    std::optional<piece::Way> whole(std::size_t i, const Panel& panel) const {
        std::vector<piece::Way> ways = cut_otherwise(i, panel, Seams::never);
        if (ways.empty() || ways.front().seams.size() >= ways_[i].seams.size())
            return std::nullopt;
        return std::move(ways.front());
    }

    static void set_least(Panel& panel, Um least, const Film& film, CutBy by) {
        const Handling now = panel.allowances.handling.value_or(film.allowances.handling);
        if (by == CutBy::straight)
            panel.allowances.handling = Handling{now.want, least};
        else
            panel.allowances.bleed = least;
    }

    void whole_with_less_margin(std::size_t i, const Panel& as_it_is) {
        Panel panel = as_it_is;
        set_least(panel, least_to_grip, job_.film, job_.by);
        const std::optional<piece::Way> way = whole(i, panel);
        if (!way)
            return;
        Um widest = 0;
        for (const Piece& piece : way->pieces)
            if (piece.ids.front().kind == PieceKind::main)
                widest = std::max(widest, least_across(piece));
        const Um margin =
            (job_.film.usable_width() - widest) / 2 / um_per_mm * um_per_mm;
        set_least(panel, margin, job_.film, job_.by);
        if (const auto so = margin < least_to_grip ? std::nullopt : whole(i, panel))
            add(i, CutOtherwise::Is::whole_with_less_margin, margin, with(i, *so));
    }

    /// Across the roll, in whichever way of lying that is least.
    static Um least_across(const Piece& piece) {
        const Box box = box_of(piece.wrapped.outer);
        return piece.direction == Direction::any ? std::min(box.along(), box.across())
                                                 : box.across();
    }

    void whole_across_the_arrow(std::size_t i, const Panel& as_it_is) {
        if (as_it_is.direction.value_or(job_.film.direction) == Direction::any)
            return;
        Panel panel = as_it_is;
        panel.direction = Direction::any;
        if (const auto way = whole(i, panel))
            add(i, CutOtherwise::Is::whole_across_the_arrow, 0, with(i, *way));
    }

    void where_film_is_shortest(std::size_t i, const Panel& panel) {
        if (!now_)
            return;
        std::optional<Length> best;
        for (const piece::Way& way : cut_otherwise(i, panel, Seams::thrifty)) {
            const std::optional<Length> order = with(i, way);
            if (order && (!best || *order < *best))
                best = order;
        }
        if (best && *best < *now_)
            add(i, CutOtherwise::Is::where_film_is_shortest, 0, best);
    }

    void weigh_narrow_margins(const std::vector<std::vector<bool>>& flat) {
        Job narrow = job_;
        if (!now_ || job_.by != CutBy::straight ||
            !narrow_the_margins(narrow.vehicles, job_.film, flat, trade::comfortable_margin,
                                trade::comfortable_margin))
            return;
        Faults none_told;
        const std::vector<piece::Way> ways = settled_ways(narrow, request_, none_told);
        if (ways.size() == ways_.size())
            out_.narrow_margins = with(ways);
    }

    const Job& job_;
    const std::vector<piece::Way>& ways_;
    const Request& request_;
    nest::Effort effort_;
    std::optional<Length> now_;
    SeamsWeighed out_;
};

} // namespace

std::vector<std::vector<bool>> flat_panels(const std::vector<Vehicle>& vehicles) {
    std::vector<std::vector<bool>> out;
    for (const Vehicle& vehicle : vehicles) {
        std::vector<bool>& of = out.emplace_back();
        for (const Panel& panel : vehicle.panels)
            of.push_back(is_flat(panel));
    }
    return out;
}

bool narrow_the_margins(std::vector<Vehicle>& vehicles, const Film& film,
                        const std::vector<std::vector<bool>>& flat, Um want, Um least) {
    const Handling films = film.allowances.handling;
    bool any = false;
    for (std::size_t v = 0; v < vehicles.size(); ++v)
        for (std::size_t p = 0; p < vehicles[v].panels.size(); ++p)
            if (flat[v][p] && want < films.want) {
                PanelAllowances& own = vehicles[v].panels[p].allowances;
                // What an uncertain reading adds stays.
                const Handling now = own.handling.value_or(films);
                if (!own.placing)
                    own.placing = now;
                own.handling =
                    Handling{now.want - films.want + want,
                             now.least - films.least + std::min({films.least, least, want})};
                any = true;
            }
    return any;
}

SeamsWeighed weigh_the_seams(const Job& job, const Layout& layout,
                             const std::vector<piece::Way>& ways, const Request& request,
                             const std::vector<std::vector<bool>>& flat) {
    return Weighing(job, layout, ways, request).all(flat);
}

} // namespace pelt::order
