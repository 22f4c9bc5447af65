// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/faults_of_films.hpp"
#include "cli/files.hpp"
#include "cli/output.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"
#include "order/order.hpp"
#include "read/kind.hpp"
#include "report/report.hpp"

#include <algorithm>
#include <atomic>
#include <future>
#include <map>
#include <string>
#include <thread>
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

std::string direction_of(const Film& film) {
    return film.direction == Direction::any ? "any way" : std::string(name_of(film.direction));
}

std::string line_for(const Film& film) {
    return film.file + ": film " + in_quotes(film.name) + ", " +
           std::to_string(film.width / um_per_mm) + " mm wide, " + direction_of(film) +
           (film.demonstration ? ", demonstration\n" : "\n");
}

/// "3 rolls, 14.250 m", and how much of every film.
std::string line_for(const Stock& stock) {
    std::map<std::string, Um> lengths;
    for (const StockRoll& roll : stock.rolls)
        lengths[roll.film] += roll.length;
    std::string text = stock.file + ": stock, " + counted(stock.rolls.size(), "roll");
    for (const auto& [film, length] : lengths)
        text += ", " + std::to_string(length / um_per_mm) + " mm of " + in_quotes(film);
    return text + (stock.demonstration ? ", demonstration\n" : "\n");
}

/// The panels of the vehicle with all its extras: one that is seldom cut must be right as well.
order::Selection all_panels(const Vehicle& vehicle) {
    order::Selection selection;
    std::vector<std::string>& with = selection.with;
    for (const Panel& panel : vehicle.panels)
        if (!panel.extra.empty() && std::find(with.begin(), with.end(), panel.extra) == with.end())
            with.push_back(panel.extra);
    return selection;
}

order::Request whole_job(const Vehicle& vehicle, const Film& film) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    request.selection = all_panels(vehicle);
    return request;
}

/// The faults of the vehicle with each film, in their order. The films are shared out among
/// threads, which know nothing of each other.
std::vector<Faults> examined(const Vehicle& vehicle, const std::vector<Film>& films) {
    std::vector<Faults> faults(films.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < films.size(); i = next++)
            faults[i] = order::examine(whole_job(vehicle, films[i]));
    };
    const std::size_t threads = std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::future<void>> others;
    for (std::size_t i = 1; i < std::min(threads, films.size()); ++i)
        others.push_back(std::async(std::launch::async, work));
    work();
    for (std::future<void>& other : others)
        other.get();
    return faults;
}

class Check {
public:
    explicit Check(const Context& context) : context_(context), files_(context) {}

    int run() {
        for (const std::string& operand : context_.arguments.operands)
            read(operand);
        for (const Vehicle& vehicle : vehicles_)
            tell_of(vehicle);
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
        else if (*kind == read::FileKind::film)
            keep(files_.value_of(read::film(text), text->name), films_);
        else if (*kind == read::FileKind::stock)
            keep(files_.value_of(read::stock(text), text->name), stocks_);
        else
            throw ProgramError("files of this kind are known and cannot be checked");
    }

    template <class T>
    void keep(std::optional<T> value, std::vector<T>& among) {
        if (!value)
            return;
        lines_ += line_for(*value);
        among.push_back(std::move(*value));
    }

    void tell_of(const Vehicle& vehicle) {
        const order::AreaOutcome areas =
            order::areas({vehicle, std::nullopt, all_panels(vehicle), {}});
        if (!stops(areas.faults))
            weigh(vehicle, areas.rows);
        else if (films_.empty()) // else they are told with the films
            tell_faults(areas.faults);
        examine(vehicle);
    }

    /// Without the warnings: most of them are about what a film may give.
    void tell_faults(Faults faults) {
        std::erase_if(faults, [](const Fault& fault) { return !stops({fault}); });
        files_.tell(faults);
    }

    /// Looks for missing panels and slips of units.
    void weigh(const Vehicle& vehicle, const std::vector<PanelArea>& areas) {
        const auto opinion = report::opinion_on_area(vehicle, areas);
        if (opinion && opinion->unusual)
            files_.tell({{Severity::warning, vehicle.place, "", opinion->text, ""}});
        else if (opinion)
            lines_ += vehicle.file + ": " + opinion->text + "\n";
    }

    /// What the films have in common is told once.
    void examine(const Vehicle& vehicle) {
        FaultsOfFilms told(films_.size());
        std::string suited;
        const std::vector<Faults> faults = examined(vehicle, films_);
        for (std::size_t i = 0; i < films_.size(); ++i) {
            told.add(faults[i], films_[i].name);
            if (!stops(faults[i]))
                suited += (suited.empty() ? "" : ", ") + in_quotes(films_[i].name);
        }
        if (!suited.empty())
            lines_ += vehicle.file + ": every panel can be cut from " + suited + "\n";
        files_.tell(told.all());
    }

    const Context& context_;
    Files files_;
    std::vector<Vehicle> vehicles_;
    std::vector<Film> films_;
    std::vector<Stock> stocks_;
    std::string lines_;
};

} // namespace

int run_check(const Context& context) {
    return Check(context).run();
}

} // namespace pelt::cli
