// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/estimated.hpp"
#include "cli/faults_of_films.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/interrupt.hpp"
#include "cli/rendering.hpp"
#include "cli/request.hpp"
#include "cli/run_time.hpp"
#include "cli/shop_asked.hpp"
#include "report/report.hpp"

#include <algorithm>
#include <memory>
#include <utility>

namespace pelt::cli {
namespace {

struct Candidate {
    Film film;
    std::optional<Um> width; ///< none: the film's own

    Um roll_width() const { return width.value_or(film.width); }
    std::string name() const {
        return width ? film.name + ", " + std::to_string(*width / um_per_mm) + " mm" : film.name;
    }
};

std::vector<std::optional<Um>> widths_of(const Arguments& arguments) {
    std::vector<std::optional<Um>> out;
    for (const Um width : widths_asked(arguments))
        out.emplace_back(width);
    if (out.empty())
        out.emplace_back();
    return out;
}

std::string first_problem(const Faults& faults, Unit unit) {
    for (const Fault& fault : faults)
        if (stops({fault})) {
            Fault alone = fault;
            alone.place = {};
            return to_string(alone, false, unit);
        }
    return "";
}

class Compare {
public:
    explicit Compare(const Context& context) : context_(context), files_(context) {}

    int run() {
        Faults faults;
        const std::vector<Target> targets = targets_of(context_.arguments, faults);
        files_.tell(faults);
        if (stops(faults) || !read() || !files_.spared_by(paths_of(targets)))
            return files_.status();
        FaultsOfFilms told(choices_.size());
        for (const Candidate& choice : choices_)
            if (!plan(choice, told))
                die_by_interrupt();
        files_.tell(told.all());
        const report::Comparison all = comparison();
        const int written = write_results(
            targets, [&](const Target& target) { return rendered(target, all, context_); },
            context_.messages);
        return written == 0 ? files_.status() : written;
    }

private:
    bool read() {
        const std::vector<std::string>& operands = context_.arguments.operands;
        vehicle_ = files_.vehicle(operands.front());
        bool all = vehicle_.has_value();
        all = read_shop(files_, context_.arguments, shop_) && all;
        for (std::size_t i = 1; i < operands.size(); ++i) {
            const auto film = files_.film(operands[i]);
            all = all && film;
            if (film && shop_) {
                const Faults faults = faults_of_currencies(shop_->shop, *film);
                files_.tell(faults);
                all = all && faults.empty();
            }
            for (const auto& width : widths_of(context_.arguments))
                if (film)
                    choices_.push_back({*film, width});
        }
        return all;
    }

    /// False when Ctrl-C left a row without a layout: half a comparison misleads.
    bool plan(const Candidate& choice, FaultsOfFilms& told) {
        order::Request request = wishes_of(context_.arguments);
        request.vehicles = {*vehicle_};
        request.film = choice.film;
        request.width = choice.width;
        request.scans = scans_;
        if (shop_)
            shop_->add_to(request);
        if (order::is_guessed(request))
            return guess(choice, request, told);
        Searched found = search(std::move(request), seconds_of_one(), context_);
        told.add(found.outcome.faults, choice.name());
        report::ComparisonRow row{choice.film.name, choice.roll_width(), std::nullopt,
                                  first_problem(found.outcome.faults, unit())};
        if (choice.roll_width() != choice.film.width)
            row.priced_width = choice.film.width;
        if (found.outcome.plan)
            row.sheet = report::Sheet{.plan = *found.outcome.plan,
                                      .order = found.outcome.order,
                                      .warnings = found.outcome.faults,
                                      .stopped_by = found.stopped_by};
        if (found.outcome.plan && shop_)
            row.quote = shop_->quote(order::film_to_quote(found.outcome));
        rows_.push_back(std::move(row));
        return !found.interrupted;
    }

    /// The same of a vehicle that was not measured.
    bool guess(const Candidate& choice, const order::Request& request, FaultsOfFilms& told) {
        Estimated found = estimate(request, seconds_of_one(), context_);
        told.add(found.outcome.faults, choice.name());
        report::ComparisonRow row{choice.film.name, choice.roll_width(), std::nullopt,
                                  first_problem(found.outcome.faults, unit())};
        if (choice.roll_width() != choice.film.width)
            row.priced_width = choice.film.width;
        row.estimate = std::move(found.outcome.estimate);
        if (row.estimate && shop_)
            row.quote = shop_->quote(order::film_to_quote(*row.estimate));
        rows_.push_back(std::move(row));
        return !found.interrupted;
    }

    /// Every choice gets its share of the time that is left.
    std::optional<double> seconds_of_one() const {
        return time_.share_of(choices_.size() - rows_.size());
    }

    Unit unit() const { return unit_of(context_.arguments, choices_.front().film); }

    report::Comparison comparison() const {
        report::Comparison out;
        out.vehicles = vehicle_->name;
        out.unit = unit();
        out.rows = rows_;
        out.by_shop = shop_.has_value();
        out.demonstration = vehicle_->demonstration || (shop_ && shop_->shop.demonstration) ||
                            std::any_of(choices_.begin(), choices_.end(),
                                        [](const Candidate& c) { return c.film.demonstration; });
        return out;
    }

    const Context& context_;
    const RunTime time_{context_.arguments};
    Files files_;
    std::optional<Vehicle> vehicle_;
    std::vector<Candidate> choices_;
    std::optional<ShopAsked> shop_;
    std::vector<report::ComparisonRow> rows_;
    std::shared_ptr<develop::LaidScans> scans_ = std::make_shared<develop::LaidScans>();
};

} // namespace

int run_compare(const Context& context) {
    return Compare(context).run();
}

} // namespace pelt::cli
