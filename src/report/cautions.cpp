// SPDX-License-Identifier: MIT
#include "report/cautions.hpp"

#include "report/facts.hpp"
#include "report/words.hpp"
#include "trade/bodies.hpp"
#include "trade/cautions.hpp"
#include "trade/used_up.hpp"

#include <algorithm>
#include <set>

namespace pelt::report {
namespace {

constexpr const char* off_the_ground =
    "Height: work from a platform. A vehicle off the ground rests on stands made for its weight, "
    "never on a jack alone. Tighten bolts as the vehicle's maker lays down.";
constexpr const char* blades =
    "Blades: cut away from hands and body; used tips go into a closed container. Never cut down to "
    "the paint, nor toward airbag seams, wiring, seals or tires.";
constexpr const char* heat =
    "Heat: never on a surface wet with solvent, nor in a closed room, nor near fuel, batteries or "
    "airbag covers. Take the temperatures of the film's maker.";
constexpr const char* solvents =
    "Solvents: fresh air, gloves, eye protection, nothing that can spark; rags go into a closed "
    "metal bin.";
constexpr const char* licensed =
    "Airbags, belt tensioners, pressure sensors in doors, pedestrian protection and high voltage: "
    "trained people, licensed where the law asks, as the vehicle's maker lays down.";
constexpr const char* calibration =
    "Taking off what carries radar, cameras, ultrasonic sensors or aerials can call for "
    "calibration.";
const std::string no_metal =
    "Radar, cameras, ultrasonic sensors, aerials: no film that holds metal over them. ";
constexpr const char* motorcycles =
    "Motorcycles: no heat near fuel; nothing over breather, brake or fork parts; helmets are never "
    "wrapped.";

bool rides_on_two_wheels(const Vehicle& vehicle) {
    return trade::is_motorcycle(vehicle.body);
}

bool all_motorcycles(const Job& job) {
    return std::all_of(job.vehicles.begin(), job.vehicles.end(), rides_on_two_wheels);
}

std::set<std::string> keep_clear_kinds(const Plan& plan) {
    std::set<std::string> kinds;
    for (const PlacedPiece& p : pieces_by_number(plan)) {
        kinds.insert(p.panel.keep_clear);
        for (const Opening& opening : p.panel.openings)
            kinds.insert(opening.keep_clear);
    }
    kinds.erase("");
    return kinds;
}

bool any_measures_or_sends(const std::set<std::string>& zones) {
    return std::any_of(zones.begin(), zones.end(), trade::measures_or_sends);
}

std::string metal_text(HoldsMetal holds_metal) {
    switch (holds_metal) {
    case HoldsMetal::no:
        return "This film's file says that it holds no metal.";
    case HoldsMetal::yes:
        return "This film holds metal.";
    case HoldsMetal::unknown:
        return "Whether this film holds metal is not known: ask its maker.";
    }
    return "";
}

std::vector<std::string> always(const Job& job) {
    std::vector<std::string> out{
        blades,
        heat,
        solvents,
        off_the_ground,
        licensed,
        "Lamps, reflectors, number plates, windows that must stay clear, labels, markings and "
        "exits are covered only where local law allows it.",
        "A change of color may have to be told to the registration office, the insurer and the "
        "owner.",
        "Resprayed, peeling or fresh paint may come off with the film.",
        "Look over all free edges before hand-over, and again after about a week."};
    if (!all_motorcycles(job))
        out.push_back(calibration);
    return out;
}

} // namespace

std::vector<std::string> cautions(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    std::vector<std::string> out = always(job);
    const std::set<std::string> kinds = keep_clear_kinds(sheet.plan);
    if (any_measures_or_sends(kinds))
        out.push_back(no_metal + metal_text(job.film.holds_metal));
    if (std::any_of(job.vehicles.begin(), job.vehicles.end(), rides_on_two_wheels))
        out.push_back(motorcycles);
    return out;
}

namespace {

/// Blades, heat and solvents, where the list has what calls for them.
std::vector<std::string> of_what_is_used(const StripList& list) {
    const auto uses = [&](trade::Hazard hazard) {
        return std::any_of(list.used_up.begin(), list.used_up.end(), [&](const auto& need) {
            return need.high > 0 && trade::hazard_of(need.name) == hazard;
        });
    };
    std::vector<std::string> out;
    if (uses(trade::Hazard::blade))
        out.emplace_back(blades);
    if (list.edge_mm > 0)
        out.emplace_back(heat);
    if (uses(trade::Hazard::solvent))
        out.emplace_back(solvents);
    return out;
}

} // namespace

std::vector<std::string> cautions_of_taking_off(const StripSheet& sheet) {
    std::vector<std::string> out = of_what_is_used(sheet.list);
    out.insert(out.end(), {licensed, off_the_ground});
    out.push_back(sheet.motorcycle ? motorcycles : calibration);
    if (sheet.film && any_measures_or_sends(sheet.list.zones))
        out.push_back(no_metal + metal_text(sheet.film->holds_metal));
    return out;
}

} // namespace pelt::report
