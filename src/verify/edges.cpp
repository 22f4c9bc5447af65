// SPDX-License-Identifier: MIT
#include "verify/edges.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::verify {
namespace {

/// The way an outward normal points in the drawing: within 45 degrees, ties to top and bottom.
std::string way_of(const Point& normal) {
    const bool upright = std::abs(normal.y) >= std::abs(normal.x);
    if (upright)
        return normal.y > 0 ? "top" : "bottom";
    return normal.x > 0 ? "right" : "left";
}

bool is_meant(const BlankEdge& edge, const std::string& word, bool girths) {
    if (word == "all" || word == edge.number)
        return true;
    if (girths) // start is left, end is right
        return (word == "left" && edge.number == "start") ||
               (word == "right" && edge.number == "end");
    return word == way_of(edge.normal) || (!edge.name.empty() && word == edge.name);
}

bool stays_on(const Job& job, const std::string& part) {
    return !part.empty() &&
           std::find(job.left_on.begin(), job.left_on.end(), part) != job.left_on.end();
}

Um flush_of(const Job& job, const Panel& panel) {
    return panel.allowances.flush.value_or(job.film.allowances.flush);
}

Um usual_wrap(const Job& job, const Panel& panel) {
    return panel.allowances.wrap.value_or(job.film.allowances.wrap.value_or(0));
}

// Later entries override earlier ones; naming a wrap clears a stop and the other way round.
AtEdge at_edge(const Job& job, const Panel& panel, const BlankEdge& edge) {
    AtEdge out{panel.edges_none ? 0 : usual_wrap(job, panel), 0};
    const bool girths = std::holds_alternative<GirthsForm>(panel.form);
    std::string behind;
    for (const EdgeRule& rule : panel.edges) {
        if (!is_meant(edge, rule.word, girths))
            continue;
        if (rule.wrap)
            out = {*rule.wrap, 0};
        if (rule.stop)
            out = {0, *rule.stop};
        if (!rule.behind.empty())
            behind = rule.behind;
    }
    return stays_on(job, behind) ? AtEdge{flush_of(job, panel), 0} : out;
}

// What receives or sends through its cover; lamps, plates, cameras and ultrasonic sensors do not.
bool works_through_film(const Opening& opening) {
    return opening.keep_clear == "radar" || opening.keep_clear == "aerial";
}

// What must stay clear is never covered, but for radar and aerials by film without metal, and is no
// edge to turn film around by itself.
AtOpening at_opening(const Job& job, const Panel& panel, const Opening& opening) {
    if (stays_on(job, opening.behind))
        return {false, flush_of(job, panel)};
    const bool clear = !opening.keep_clear.empty();
    const bool metal = job.film.holds_metal != HoldsMetal::no;
    if (!opening.behind.empty() && (!clear || (works_through_film(opening) && !metal)))
        return {true, 0};
    return {false, opening.wrap.value_or(clear ? 0 : usual_wrap(job, panel))};
}

} // namespace

Asked asked_of(const Job& job, const Panel& panel, const Blank& blank) {
    Asked out;
    for (const BlankEdge& edge : blank.edges) {
        out.edges.push_back(at_edge(job, panel, edge));
        out.farthest_move = std::max(out.farthest_move, out.edges.back().move);
        out.deepest_stop = std::max(out.deepest_stop, out.edges.back().stop);
    }
    for (std::size_t i = 0; i < blank.openings.size(); ++i)
        out.openings.push_back(at_opening(job, panel, panel.openings[i]));
    return out;
}

Um overlap_of(const Job& job, const Panel& panel) {
    return panel.allowances.overlap.value_or(job.film.allowances.overlap);
}

Um bleed_of(const Job& job, const Panel& panel) {
    return panel.allowances.bleed.value_or(job.film.allowances.bleed);
}

Handling handling_of(const Job& job, const Panel& panel) {
    return panel.allowances.handling.value_or(job.film.allowances.handling);
}

Direction direction_of(const Job& job, const Panel& panel) {
    return panel.direction.value_or(job.film.direction);
}

} // namespace pelt::verify
