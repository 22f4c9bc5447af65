// SPDX-License-Identifier: MIT
#include "cli/quote_job.hpp"

#include "cli/statuses.hpp"
#include "order/order.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {
namespace {

std::vector<std::string> sentences(const Faults& faults) {
    std::vector<std::string> out;
    for (const Fault& fault : told_together(faults))
        if (fault.severity != Severity::note) {
            // A warning is about the sheet; only what is to be mended in a file needs its place.
            Fault told = fault;
            if (told.severity == Severity::warning)
                told.place = {};
            std::string text = to_string(told, false);
            if (std::find(out.begin(), out.end(), text) == out.end())
                out.push_back(std::move(text));
        }
    return out;
}

order::Request request_of(const QuoteJob& job, const Vehicle& vehicle, Film film,
                          const FilmOfJob& of_film, const QuoteRun& run) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = std::move(film);
    request.by = job.by;
    request.selection = {of_film.only, job.without, job.with};
    request.leave = job.leave;
    request.seams = job.seams;
    request.margin = job.margin;
    request.times = job.times;
    request.tolerance = job.tolerance;
    request.width = job.width;
    request.sure_percent = job.sure_percent ? job.sure_percent : run.shop.sure_percent;
    request.effort = run.effort;
    return request;
}

/// The planned films of a job; empty where `faults` stop it.
class Planning {
public:
    Planning(const QuoteJob& job, JobFiles& files, const QuoteRun& run, report::QuoteRow& row)
        : job_(job), files_(files), run_(run), row_(row) {}

    Faults plan() {
        const auto vehicle = files_.vehicle(job_.vehicle, job_.place, faults_);
        std::vector<StockRoll> stock;
        bool invented_stock = false;
        if (!job_.stock.empty())
            if (auto read = files_.stock(job_.stock, job_.place, faults_)) {
                stock = std::move(read->rolls);
                invented_stock = read->demonstration;
            }
        std::vector<std::optional<Film>> films;
        for (const FilmOfJob& film : job_.films)
            films.push_back(files_.film(film.film, job_.place, faults_));
        if (stops(faults_) || !vehicle)
            return std::move(faults_);
        row_.vehicle = vehicle->name;
        row_.demonstration =
            vehicle->demonstration || run_.shop.demonstration || run_.demonstration;
        for (std::size_t i = 0; i < films.size() && !stops(faults_); ++i) {
            row_.film += (i > 0 ? " + " : "") + films[i]->name;
            row_.demonstration = row_.demonstration || films[i]->demonstration;
            check_currency(*films[i]);
            order::Request request =
                request_of(job_, *vehicle, *std::move(films[i]), job_.films[i], run_);
            request.stock = stock;
            request.invented_stock = invented_stock;
            outcomes_.push_back(order::run(std::move(request)));
            const Faults& told = outcomes_.back().faults;
            faults_.insert(faults_.end(), told.begin(), told.end());
        }
        return std::move(faults_);
    }

    bool is_planned() const {
        return outcomes_.size() == job_.films.size() &&
               std::all_of(outcomes_.begin(), outcomes_.end(),
                           [](const order::Outcome& o) { return o.plan.has_value(); });
    }
    const std::vector<order::Outcome>& outcomes() const { return outcomes_; }

private:
    /// Money of two currencies cannot be added up.
    void check_currency(const Film& film) {
        const std::string& own = run_.shop.currency;
        if (currency_.empty())
            currency_ = own;
        if (currency_.empty())
            currency_ = film.currency;
        if (!film.currency.empty() && !currency_.empty() && film.currency != currency_)
            faults_.push_back({Severity::file, film.place, "",
                               "the film's prices are in " + film.currency + ", the " +
                                   (own.empty() ? "other film's" : "shop's") + " in " + currency_,
                               "give both in one currency"});
    }

    const QuoteJob& job_;
    JobFiles& files_;
    const QuoteRun& run_;
    report::QuoteRow& row_;
    Faults faults_;
    std::string currency_;
    std::vector<order::Outcome> outcomes_;
};

void set_lengths(report::QuoteRow& row, const std::vector<order::Outcome>& outcomes) {
    Um length = 0;
    Length order;
    for (const order::Outcome& outcome : outcomes) {
        for (const UsedRoll& used : outcome.plan->layout().rolls)
            length += used.length;
        order = order + outcome.order.length();
    }
    row.length = Length::from_um(length);
    row.order = order;
}

} // namespace

report::QuoteRow quoted(const ReadJob& read, JobFiles& files, const QuoteRun& run) {
    report::QuoteRow row;
    row.job = read.name;
    row.status = status_of(read.faults);
    row.warnings = sentences(read.faults);
    if (!read.job)
        return row;
    const QuoteJob& job = *read.job;
    row.for_customer = job.for_customer;
    Planning planning(job, files, run, row);
    const Faults faults = planning.plan();
    row.status = status_of(faults);
    row.warnings = sentences(faults);
    if (!planning.is_planned() || row.status == status::wrong_file)
        return row;
    set_lengths(row, planning.outcomes());
    order::QuoteWishes wishes;
    wishes.old_film_everywhere = job.old_film_everywhere;
    wishes.old_film = job.old_film;
    wishes.start = job.start ? job.start : run.start;
    wishes.film_arrives = job.film_arrives;
    row.quote = order::quote(planning.outcomes(), run.shop, wishes);
    row.covered = order::what_is_covered(planning.outcomes());
    row.condition = job.condition;
    return row;
}

} // namespace pelt::cli
