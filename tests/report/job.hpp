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

} // namespace pelt::test
