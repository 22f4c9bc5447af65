// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/output.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "order/order.hpp"
#include "read/kind.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace pelt::cli {
namespace {

std::string counted(std::size_t count, const std::string& one) {
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

/// How many panels there are on the vehicle: both sides, faces and copies counted.
std::size_t all_of(const Vehicle& vehicle) {
    std::size_t all = 0;
    for (const Panel& panel : vehicle.panels)
        all += sides_of(panel.sides).size() * static_cast<std::size_t>(panel.faces) *
               static_cast<std::size_t>(panel.count);
    return all;
}

std::string line_for(const Vehicle& vehicle) {
    std::string text = vehicle.file + ": vehicle " + in_quotes(vehicle.name) + ", " +
                       counted(vehicle.panels.size(), "panel");
    if (all_of(vehicle) != vehicle.panels.size())
        text += " (" + std::to_string(all_of(vehicle)) + " with both sides and all copies)";
    return text + (vehicle.demonstration ? ", demonstration\n" : "\n");
}

std::string line_for(const Film& film) {
    return film.file + ": film " + in_quotes(film.name) + ", " +
           std::string(name_of(film.direction)) + (film.demonstration ? ", demonstration\n" : "\n");
}

/// Extras too: a panel that is seldom cut must fit as well.
order::Request whole_job(const Vehicle& vehicle, const Film& film) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    for (const Panel& panel : vehicle.panels) {
        std::vector<std::string>& with = request.selection.with;
        if (!panel.extra.empty() && std::find(with.begin(), with.end(), panel.extra) == with.end())
            with.push_back(panel.extra);
    }
    return request;
}

class Check {
public:
    explicit Check(const Context& context) : context_(context), files_(context) {}

    int run() {
        for (const std::string& operand : context_.arguments.operands)
            read(operand);
        for (const Vehicle& vehicle : vehicles_)
            for (const Film& film : films_)
                examine(vehicle, film);
        const auto fault = write_standard_output(lines_);
        if (fault)
            files_.tell({*fault});
        return files_.status();
    }

private:
    void read(const std::string& operand) {
        const auto text = files_.source(operand, Wanted::either);
        if (!text)
            return;
        const auto kind = files_.value_of(read::kind_of(text), text->name);
        if (!kind)
            return;
        if (*kind == read::FileKind::vehicle)
            keep(files_.value_of(read::vehicle(text), text->name), vehicles_);
        else
            keep(files_.value_of(read::film(text), text->name), films_);
    }

    template <class T>
    void keep(std::optional<T> value, std::vector<T>& among) {
        if (!value)
            return;
        lines_ += line_for(*value);
        among.push_back(std::move(*value));
    }

    void examine(const Vehicle& vehicle, const Film& film) {
        Faults faults = order::examine(whole_job(vehicle, film));
        const std::string with =
            films_.size() > 1 ? "with film " + in_quotes(film.name) + ": " : "";
        for (Fault& fault : faults)
            fault.what.insert(0, with);
        files_.tell(faults);
        if (!stops(faults))
            lines_ += vehicle.file + ": every panel can be cut from " + in_quotes(film.name) + "\n";
    }

    const Context& context_;
    Files files_;
    std::vector<Vehicle> vehicles_;
    std::vector<Film> films_;
    std::string lines_;
};

} // namespace

int run_check(const Context& context) {
    return Check(context).run();
}

} // namespace pelt::cli
