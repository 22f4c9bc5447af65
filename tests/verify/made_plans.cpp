// SPDX-License-Identifier: MIT
#include "verify/made_plans.hpp"

#include "order/order.hpp"
#include "read/read.hpp"

#include <algorithm>
#include <stdexcept>

namespace pelt::test {
namespace {

std::shared_ptr<const Source> source(std::string text) {
    return std::make_shared<const Source>(Source{"t.yaml", std::move(text)});
}

template <class T>
T value_of(const read::Reading<T>& reading) {
    if (!reading.value)
        throw std::runtime_error(to_string(reading.faults.at(0)));
    return *reading.value;
}

constexpr const char* everything = R"(vehicle: Everything
demonstration: yes
units: mm
panels:
  lid:
    outline:
      - [0, 0]
      - [700, 0]
      - {through: [735, 140], to: [700, 300], name: round}
      - [420, 330]
      - [390, 240]
      - {to: [0, 290], name: rear}
    forward: up
    edges: {all: {wrap: 12}, top: {stop: 5}, bottom: {wrap: 25}, round: {stop: 3}, 6-1: {wrap: 20, behind: rubbers}}
    openings:
      lamp: {outline: [[60, 60], [120, 60], [120, 100], [60, 100]], keep clear: lamp}
      pipe: {outline: [[200, 60], [300, 60], [300, 130], [200, 130]], cut: table, wrap: 3}
      cap: {outline: [[330, 60], [380, 60], [380, 110], [330, 110]], behind: caps}
      badge: {outline: [[430, 60], [480, 60], [480, 100], [430, 100]], behind: badges}
      vent: {outline: [[60, 150], [140, 150], [140, 200], [60, 200]], wrap: 6}
    inlays:
      grille: {at: [590, 170], size: [120, 60], overlap: 8}
  quarter:
    sides: both
    outline: [[0, 0], [800, 0], [760, 240], {through: [420, 330], to: [40, 300]}]
    edges: {all: {wrap: 10}, bottom: {wrap: 30}, top: {stop: 2}}
  wing:
    sides: both
    faces: 2
    outline: [[0, 0], [210, 0], [160, 90], [15, 70]]
    edges: {all: {wrap: 6}}
  wall:
    sides: both
    outline: [[0, 0], [1250, 0], [1190, 640], [30, 600]]
    seam lines:
      - {line: [[500, 0], [520, 300], [480, 640]], use: always}
    allowances: {overlap: 14 mm}
  ceiling:
    outline: [[0, 0], [900, 0], [870, 1900], [20, 1880]]
    forward: right
    edges: {all: {wrap: 8}}
  flap: {size: [180, 120], forward: right, direction: any, batch free: yes, edges: none, count: 2}
hardware:
  caps: {tool: key}
  badges: {tool: line}
  rubbers: {tool: hook}
)";

constexpr const char* film = R"(film: Test film
demonstration: yes
holds metal: no
roll: {width: 1524 mm, trim: 6 mm, length: 30 m}
direction: one-way
allowances: {wrap: 12 mm, bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, overlap: 10 mm, gap: 4 mm, flush: 2 mm}
)";

bool is(const PieceId& id, int panel, const Which& which) {
    return id.panel == panel && id.side == which.side && id.part == which.part &&
           id.inlay == which.inlay && id.copy == which.copy;
}

int index_of(const RightPlan& plan, const std::string& panel) {
    const std::vector<Panel>& panels = plan.job.vehicles.front().panels;
    for (std::size_t i = 0; i < panels.size(); ++i)
        if (panels[i].name == panel)
            return static_cast<int>(i);
    throw std::runtime_error("no panel " + panel);
}

struct At {
    std::size_t piece;
    std::size_t copy;
};
At where_is(const RightPlan& plan, const Which& which) {
    const int panel = index_of(plan, which.panel);
    for (std::size_t i = 0; i < plan.job.pieces.size(); ++i)
        for (std::size_t k = 0; k < plan.job.pieces[i].ids.size(); ++k)
            if (is(plan.job.pieces[i].ids[k], panel, which))
                return {i, k};
    throw std::runtime_error("no such piece of " + which.panel);
}

} // namespace

RightPlan made_plan(const std::string& vehicle, const std::string& of_film, CutBy by,
                    const std::vector<std::string>& leave) {
    order::Request request;
    request.vehicles = {value_of(read::vehicle(source(vehicle)))};
    request.film = value_of(read::film(source(of_film)));
    request.by = by;
    request.leave = leave;
    const order::Outcome outcome = order::run(std::move(request));
    if (!outcome.plan)
        throw std::runtime_error(to_string(outcome.faults.at(0)));
    return {outcome.plan->job(), outcome.plan->layout()};
}

RightPlan plan_of_everything(CutBy by) {
    return made_plan(everything, film, by, {"badges", "rubbers"});
}

Piece& piece_of(RightPlan& plan, const Which& which) {
    return plan.job.pieces[where_is(plan, which).piece];
}

Panel& panel_of(RightPlan& plan, const std::string& name) {
    return plan.job.vehicles.front().panels[static_cast<std::size_t>(index_of(plan, name))];
}

DevelopedPanel& developed_of(RightPlan& plan, const std::string& name) {
    return plan.job.developed.front()[static_cast<std::size_t>(index_of(plan, name))];
}

Placement& placement_of(RightPlan& plan, const Which& which) {
    const At at = where_is(plan, which);
    for (UsedRoll& used : plan.layout.rolls)
        for (Placement& placement : used.placements)
            if (placement.piece == at.piece && placement.copy == at.copy)
                return placement;
    throw std::runtime_error("not placed: " + which.panel);
}

} // namespace pelt::test
