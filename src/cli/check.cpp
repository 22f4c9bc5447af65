// SPDX-License-Identifier: MIT
#include "cli/complaints.hpp"
#include "cli/context.hpp"
#include "cli/examined.hpp"
#include "cli/faults_of_films.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/like_size.hpp"
#include "cli/output.hpp"
#include "cli/request.hpp"
#include "cli/schema.hpp"
#include "cli/shop_asked.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "model/error.hpp"
#include "model/utf8.hpp"
#include "read/kind.hpp"
#include "report/report.hpp"

#include <algorithm>
#include <map>
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
    std::string text = printable(vehicle.file) + ": vehicle " + in_quotes(vehicle.name) + ", " +
                       counted(vehicle.panels.size(), "panel");
    if (all_of(vehicle) != vehicle.panels.size())
        text += " (" + std::to_string(all_of(vehicle)) + " with both sides and all copies)";
    const auto guessed = static_cast<std::size_t>(
        std::count_if(vehicle.panels.begin(), vehicle.panels.end(),
                      [](const Panel& panel) { return panel.guessed; }));
    if (guessed > 0)
        text += ", " + counted(guessed, "panel") + " guessed from " + in_quotes(vehicle.like);
    return text + (vehicle.demonstration ? ", demonstration\n" : "\n");
}

std::string direction_of(const Film& film) {
    return film.direction == Direction::any ? "any way" : std::string(name_of(film.direction));
}

std::string line_for(const Film& film) {
    return printable(film.file) + ": film " + in_quotes(film.name) + ", " +
           std::to_string(film.width / um_per_mm) + " mm wide, " + direction_of(film) +
           (film.demonstration ? ", demonstration\n" : "\n");
}

/// "3 rolls, 14.250 m", and how much of every film.
std::string line_for(const Stock& stock) {
    std::map<std::string, Um> lengths;
    for (const StockRoll& roll : stock.rolls)
        lengths[roll.film] += roll.length;
    std::string text = printable(stock.file) + ": stock, " + counted(stock.rolls.size(), "roll");
    for (const auto& [film, length] : lengths)
        text += ", " + std::to_string(length / um_per_mm) + " mm of " + in_quotes(film);
    return text + (stock.demonstration ? ", demonstration\n" : "\n");
}

std::string line_for(const Shop& shop) {
    return printable(shop.file) + ": shop " + in_quotes(shop.name) + ", crew of " +
           std::to_string(shop.crew) + (shop.demonstration ? ", demonstration\n" : "\n");
}

std::string line_for(const Jobs& jobs) {
    return printable(jobs.file) + ": " + counted(jobs.jobs.size(), "job") +
           (jobs.demonstration ? ", demonstration\n" : "\n");
}

read::FileKind kind_called(const std::string& word) {
    using enum read::FileKind;
    for (const read::FileKind kind : {vehicle, film, stock, shop, jobs})
        if (read::name_of(kind) == word)
            return kind;
    throw ProgramError("no file is called " + word);
}

/// Options that name panels mean the panel where a group is called the same.
Faults groups_called_as_panels(const Vehicle& vehicle) {
    Faults out;
    for (const Panel& panel : vehicle.panels) {
        std::size_t others = 0;
        for (const Panel& other : vehicle.panels)
            others += other.group == panel.name && other.name != panel.name ? 1 : 0;
        if (others > 0)
            out.push_back({Severity::warning, panel.place, panel.name,
                           "a group of " + counted(others, "other panel") + " has its name",
                           "give the group another name, such as 'top': options that name the two "
                           "mean the panel"});
    }
    return out;
}

class Check {
public:
    explicit Check(const Context& context) : context_(context), files_(context) {}

    int run() {
        const bool draws = context_.arguments.count(Opt::out) > 0;
        Faults wishes;
        const std::vector<Target> targets =
            draws ? targets_in({Format::svg}, "a drawing of what was measured", context_.arguments,
                               wishes)
                  : std::vector<Target>{};
        files_.tell(wishes);
        if (stops(wishes))
            return files_.status();
        for (const std::string& operand : context_.arguments.operands)
            read(operand);
        std::vector<std::string> outputs = paths_of(targets);
        outputs.emplace_back("-");
        if (!files_.spared_by(outputs))
            return files_.status();
        const std::vector<Examined> found =
            examined(vehicles_, films_, threads_of(context_.arguments));
        for (const Vehicle& vehicle : vehicles_)
            files_.tell(groups_called_as_panels(vehicle));
        for (std::size_t i = 0; i < vehicles_.size(); ++i)
            tell_of(vehicles_[i], found[i]);
        if (draws && files_.status() == status::done) {
            const int drawn = draw(targets);
            const bool printed = std::any_of(targets.begin(), targets.end(), [](const Target& t) {
                return t.is_standard_output();
            });
            if (drawn != status::done || printed)
                return drawn;
        }
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
            keep(files_.value_of(read::vehicle(text, installed_vehicles(context_.world)), text->name),
                 vehicles_);
        else if (*kind == read::FileKind::film)
            keep(files_.value_of(read::film(text), text->name), films_);
        else if (*kind == read::FileKind::stock)
            keep(files_.value_of(read::stock(text), text->name), stocks_);
        else if (*kind == read::FileKind::shop)
            keep_shop(files_.value_of(read::shop(text), text->name));
        else
            keep_jobs(files_.value_of(read::jobs(text), text->name));
    }

    int draw(const std::vector<Target>& targets) {
        if (vehicles_.empty()) {
            files_.tell({usage("only vehicles can be drawn, and none is named",
                               "name a vehicle file, or leave --out out")});
            return files_.status();
        }
        return write_results(
            targets,
            [&](const Target&) {
                return report::measured_svg(vehicles_, unit_of(context_.arguments));
            },
            context_.messages);
    }

    template <class T>
    void keep(std::optional<T> value, std::vector<T>& among) {
        if (!value)
            return;
        lines_ += line_for(*value);
        among.push_back(std::move(*value));
    }

    /// With what its log teaches.
    void keep_shop(std::optional<Shop> shop) {
        if (!shop)
            return;
        const std::vector<std::string> who = context_.arguments.names(Opt::who);
        const Faults faults = not_in_the_log(*shop, who);
        files_.tell(faults);
        lines_ += line_for(*shop);
        const auto learnt = stops(faults) ? nullptr : order::learnt_from(*shop, who);
        if (learnt)
            for (const std::string& line : report::what_was_learnt(*learnt))
                lines_ += "  " + line + "\n";
    }

    /// What is wrong with a job is told as what is wrong with the file.
    void keep_jobs(std::optional<Jobs> jobs) {
        if (!jobs)
            return;
        bool all = true;
        for (const ReadJob& job : jobs->jobs) {
            files_.tell(job.faults);
            all = all && job.job.has_value();
        }
        if (all)
            lines_ += line_for(*jobs);
    }

    void tell_of(const Vehicle& vehicle, const Examined& found) {
        if (!stops(found.areas.faults))
            weigh(vehicle, found.areas.rows);
        else if (films_.empty()) // else they are told with the films
            tell_faults(found.areas.faults);
        tell_with_films(vehicle, found.with_films);
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
    void tell_with_films(const Vehicle& vehicle, const std::vector<Faults>& faults) {
        FaultsOfFilms told(films_.size());
        std::string suited;
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
    if (const auto kind = context.arguments.value(Opt::schema))
        return print(schema_of(kind_called(*kind)), context.messages);
    return Check(context).run();
}

} // namespace pelt::cli
