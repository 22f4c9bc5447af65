// SPDX-License-Identifier: MIT
// Sheets for the tests: small jobs taken through the real stages, so that every plan is one that
// `verify` has passed.
#pragma once

#include "order/order.hpp"
#include "read/read.hpp"
#include "report/report.hpp"

#include <memory>
#include <stdexcept>
#include <string>

namespace pelt::test {

inline std::shared_ptr<const Source> source(const std::string& name, const std::string& text) {
    return std::make_shared<const Source>(Source{name, text});
}

template <class T>
T value_of(const read::Reading<T>& reading) {
    if (!reading.value)
        throw std::runtime_error(to_string(reading.faults.at(0)));
    return *reading.value;
}

inline order::Request request(const std::string& vehicle, const std::string& film) {
    order::Request request;
    request.vehicles = {value_of(read::vehicle(source("van.yaml", vehicle)))};
    request.film = value_of(read::film(source("film.yaml", film)));
    return request;
}

inline report::Sheet sheet(order::Request request) {
    order::Outcome outcome = order::run(std::move(request));
    std::string why;
    for (const Fault& fault : outcome.faults)
        why += to_string(fault) + "\n";
    if (!outcome.plan)
        throw std::runtime_error(why);
    return {*outcome.plan, outcome.order, outcome.faults};
}

inline report::Sheet sheet(const std::string& vehicle, const std::string& film) {
    return sheet(request(vehicle, film));
}

inline const std::string plain_film = "film: Plain\n"
                                      "demonstration: yes\n"
                                      "roll: {width: 1524 mm, trim: 6 mm}\n"
                                      "direction: one-way\n"
                                      "allowances: {handling: 40 mm, gap: 4 mm}\n";

inline const std::string two_panels = "vehicle: Small van\n"
                                      "demonstration: yes\n"
                                      "panels:\n"
                                      "  roof:\n"
                                      "    size: [1450.4, 1120]\n"
                                      "    forward: up\n"
                                      "  hood:\n"
                                      "    size: [1380, 905]\n"
                                      "    forward: up\n";

/// A job with everything that a sheet has to tell: sides, copies, an inlay, a panel wider than the
/// film, hardware, a zone to keep clear, an extra, stretch over the film's limit.
inline const std::string whole_van =
    "vehicle: Test van\n"
    "demonstration: yes\n"
    "body: city car\n"
    "panels:\n"
    "  mirror cap: {sides: both, size: [240, 190], crown: {wide: 60, high: 60}}\n"
    "  front bumper:\n"
    "    size: [2100, 500]\n"
    "    forward: down\n"
    "    inlays: {grille: {at: [1050, 200], size: [300, 100], overlap: 8}}\n"
    "  roof:\n"
    "    size: [1700, 1800]\n"
    "    forward: up\n"
    "    crown: {wide: 0, high: 0}\n"
    "    openings:\n"
    "      aerial: {outline: [[800, 100], [900, 100], [900, 180], [800, 180]], keep clear: "
    "aerial}\n"
    "  hood: {size: [1300, 900], forward: up, edges: {all: {wrap: 12}}}\n"
    "  front door:\n"
    "    sides: both\n"
    "    size: [1040, 655]\n"
    "  step plate: {sides: both, size: [400, 90], count: 2}\n"
    "  door jamb: {sides: both, size: [900, 110], extra: jambs}\n"
    "hardware:\n"
    "  door handles: {tool: screwdriver, minutes: 12, clips: 2, count: 4, with: front door}\n";

inline const std::string priced_film =
    "film: Test hybrid\n"
    "demonstration: yes\n"
    "kind: hybrid\n"
    "holds metal: no\n"
    "roll: {width: 1524 mm, trim: 6 mm, length: 22.86 m}\n"
    "direction: one-way\n"
    "stretch: {edge: 4 %, panel: 8 %}\n"
    "allowances: {wrap: 10 mm, bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, overlap: 10 mm,"
    " gap: 4 mm, flush: 2 mm}\n"
    "sold: [{by: 1 m, price: 14.20}]\n"
    "currency: EUR\n";

} // namespace pelt::test
