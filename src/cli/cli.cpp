// SPDX-License-Identifier: MIT
#include "cli/cli.hpp"

#include "order/order.hpp"
#include "read/read.hpp"
#include "report/report.hpp"

#include <CLI/CLI.hpp>

#include <cstdio>
#include <iostream>

namespace pelt::cli {
namespace {

int tell(const Faults& faults) {
    int status = 0;
    for (const Fault& fault : faults) {
        std::cerr << to_string(fault) << '\n';
        status = fault.severity == Severity::access ? 4 : fault.severity == Severity::file ? 3 : 1;
    }
    return status;
}

int cut(const std::string& vehicle_path, const std::string& film_path) {
    const auto vehicle_text = read::load(vehicle_path);
    const auto film_text = read::load(film_path);
    if (!vehicle_text.value || !film_text.value)
        return tell(vehicle_text.value ? film_text.faults : vehicle_text.faults);
    const auto vehicle = read::vehicle(*vehicle_text.value);
    const auto film = read::film(*film_text.value);
    if (!vehicle.value || !film.value)
        return tell(vehicle.value ? film.faults : vehicle.faults);
    order::Request request;
    request.vehicles = {*vehicle.value};
    request.film = *film.value;
    order::Outcome outcome = order::run(std::move(request));
    if (!outcome.plan)
        return tell(outcome.faults);
    std::cout << report::to_json({*outcome.plan, outcome.order, outcome.faults, Unit::mm});
    return 0;
}

} // namespace

int run(int argc, char** argv) {
    CLI::App app{"How much film to order for a vehicle, and how to cut it", "pelt"};
    app.require_subcommand(1);
    std::string vehicle;
    std::string film;
    CLI::App* command = app.add_subcommand("cut", "order length, waste, cut sheet");
    command->add_option("VEHICLE", vehicle)->required();
    command->add_option("FILM", film)->required();
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? 0 : 2;
    }
    return cut(vehicle, film);
}

} // namespace pelt::cli
