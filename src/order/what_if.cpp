// SPDX-License-Identifier: MIT
#include "order/extents.hpp"
#include "order/order.hpp"
#include "order/seams_weighed.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace pelt::order {
namespace {

std::string in_mm(Um length) {
    return std::to_string(length / um_per_mm) + " mm";
}

void wider(const Request& request, std::vector<WhatIf>& out) {
    const Um width = request.width.value_or(request.film.width);
    const auto next =
        std::upper_bound(trade::common_widths.begin(), trade::common_widths.end(), width);
    if (next == trade::common_widths.end())
        return;
    WhatIf made{"on a roll " + in_mm(*next) + " wide", to_compare(request)};
    made.request.width = *next;
    out.push_back(std::move(made));
}

void freer(const Request& request, std::vector<WhatIf>& out) {
    if (request.film.direction == Direction::one_way) {
        out.push_back({"with a film that may lie either way", to_compare(request)});
        out.back().request.film.direction = Direction::two_way;
    }
    if (request.film.direction != Direction::any) {
        out.push_back({"with a film that may lie any way", to_compare(request)});
        out.back().request.film.direction = Direction::any;
    }
}

void looser(const Request& request, std::vector<WhatIf>& out) {
    if (request.by != CutBy::straight)
        return;
    if (request.stages) {
        out.push_back({"in any number of stages (--stages any)", to_compare(request)});
        out.back().request.stages = std::nullopt;
    }
    if (request.in_order) {
        out.push_back({"with the pieces in any order (without --in-order)", to_compare(request)});
        out.back().request.in_order = false;
    }
}

void exact(const Request& request, std::vector<WhatIf>& out) {
    WhatIf made{"if every tape reading were exact", to_compare(request)};
    bool differs = request.tolerance > 0;
    for (Vehicle& vehicle : made.request.vehicles)
        for (Panel& panel : vehicle.panels) {
            differs = differs || panel.tolerance.value_or(0) > 0;
            panel.tolerance = 0;
        }
    if (differs)
        out.push_back(std::move(made));
}

void narrower(const Request& request, std::vector<WhatIf>& out) {
    if (request.by != CutBy::straight)
        return;
    const Handling films = request.film.allowances.handling;
    const Handling now = request.margin ? request.margin->in_place_of(films) : films;
    Film as_asked = request.film;
    as_asked.allowances.handling = now;
    for (const Um want : {trade::comfortable_margin, now.least}) {
        WhatIf made{"with " + in_mm(want) + " to grip on flat and nearly flat panels",
                    to_compare(request)};
        for (Vehicle& vehicle : made.request.vehicles)
            for (Panel& panel : vehicle.panels)
                if (!panel.allowances.handling)
                    panel.allowances.placing = films;
        if (narrow_the_margins(made.request.vehicles, as_asked, flat_panels(request.vehicles),
                               want, want))
            out.push_back(std::move(made));
    }
}

/// Its own lines where it has some, else one across the middle of the way that lies along the film.
bool add_a_seam(Panel& panel) {
    if (panel.seam == SeamRule::never || !panel.forward)
        return false;
    if (!panel.seam_lines.empty()) {
        for (SeamLine& line : panel.seam_lines)
            line.always = true;
        return true;
    }
    const std::optional<Extents> size = extents_of(panel);
    if (panel.seam == SeamRule::at_lines || !size)
        return false;
    const Point middle{(size->low.x + size->high.x) / 2, (size->low.y + size->high.y) / 2};
    const bool lies_along_x = panel.forward == Heading::left || panel.forward == Heading::right;
    panel.seam_lines.push_back(
        {lies_along_x ? std::vector<Point>{{middle.x, size->low.y}, {middle.x, size->high.y}}
                      : std::vector<Point>{{size->low.x, middle.y}, {size->high.x, middle.y}},
         true, panel.place});
    return true;
}

Um along_of(const Job& job, const PieceId& id) {
    for (const Piece& piece : job.pieces)
        if (std::find(piece.ids.begin(), piece.ids.end(), id) != piece.ids.end())
            return box_of(piece.shapes.front().outline.outer).along();
    return 0;
}

/// Across the longest of the binding pieces that may have one.
void seamed(const Request& request, const Outcome& outcome, std::vector<WhatIf>& out) {
    std::vector<PieceId> pieces = outcome.binding.pieces;
    std::erase_if(pieces,
                  [](const PieceId& id) { return id.kind != PieceKind::main || id.parts > 1; });
    std::stable_sort(pieces.begin(), pieces.end(), [&](const PieceId& a, const PieceId& b) {
        return along_of(outcome.plan->job(), a) > along_of(outcome.plan->job(), b);
    });
    for (const PieceId& id : pieces) {
        WhatIf made{"", to_compare(request)};
        Panel& panel = made.request.vehicles.at(static_cast<std::size_t>(id.vehicle))
                           .panels.at(static_cast<std::size_t>(id.panel));
        if (request.seams == Seams::never || !add_a_seam(panel))
            continue;
        made.what = "with a seam across the " + panel.name;
        out.push_back(std::move(made));
        return;
    }
}

} // namespace

Request to_compare(Request request) {
    request.weigh_the_rules = false;
    request.weigh_the_seams = false;
    request.find_binding = false;
    request.until_stopped = false;
    request.effort.trial = request.effort.trial || request.by == CutBy::contour;
    return request;
}

std::vector<WhatIf> what_ifs(const Request& request, const Outcome& outcome) {
    std::vector<WhatIf> out;
    if (!outcome.plan || outcome.order.lines.empty())
        return out;
    wider(request, out);
    freer(request, out);
    looser(request, out);
    narrower(request, out);
    seamed(request, outcome, out);
    exact(request, out);
    return out;
}

} // namespace pelt::order
