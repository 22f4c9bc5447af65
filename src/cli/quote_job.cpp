// SPDX-License-Identifier: MIT
#include "cli/quote_job.hpp"

#include "cli/like_size.hpp"
#include "cli/statuses.hpp"
#include "order/order.hpp"

#include <algorithm>
#include <memory>
#include <utility>

namespace pelt::cli {
namespace {

std::vector<std::string> sentences(const Faults& faults) {
    std::vector<std::string> out;
    for (const Fault& fault : told_together(faults))
        if (fault.severity > Severity::remark) {
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
        auto vehicle = files_.vehicle(job_.vehicle, job_.place, faults_);
        if (vehicle && !job_.like_size.empty())
            vehicle = scaled(*std::move(vehicle));
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
            request.scans = scans_;
            plan_or_guess(std::move(request));
        }
        return std::move(faults_);
    }

    bool is_planned() const { return films_.size() == job_.films.size(); }
    const std::vector<order::FilmToQuote>& films() const { return films_; }

private:
    void tell(const Faults& faults) {
        faults_.insert(faults_.end(), faults.begin(), faults.end());
    }

    void plan_or_guess(order::Request request) {
        if (order::is_guessed(request)) {
            const order::EstimateOutcome guess = order::estimate(request);
            tell(guess.faults);
            if (guess.estimate)
                films_.push_back(order::film_to_quote(*guess.estimate));
            return;
        }
        const order::Outcome outcome = order::run(std::move(request));
        tell(outcome.faults);
        if (outcome.plan)
            films_.push_back(order::film_to_quote(outcome));
    }

    /// As the job's `like size` has it.
    std::optional<Vehicle> scaled(Vehicle vehicle) {
        read::Reading<Vehicle> reading = scaled_to(std::move(vehicle), job_.like_size);
        tell(reading.faults);
        return std::move(reading.value);
    }

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
    std::vector<order::FilmToQuote> films_;
    std::shared_ptr<develop::LaidScans> scans_ = std::make_shared<develop::LaidScans>();
};

/// Lengths off the rolls, without what is spare; of an estimate the middle one.
void set_lengths(report::QuoteRow& row, const std::vector<order::FilmToQuote>& films) {
    if (row.quote->range) {
        row.length = row.quote->range->middle;
    } else {
        Length length;
        for (const order::FilmToQuote& film : films)
            length = length + film.taken -
                     Length::from_um(film.order.spare ? film.order.spare->needed : 0);
        row.length = length;
    }
    row.order = Length{};
    for (const order::FilmToQuote& film : films)
        if (film.range && film.order.lines.empty())
            row.order.reset(); // no length is sure enough
        else if (row.order)
            row.order = *row.order + film.order.length();
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
    order::QuoteWishes wishes;
    wishes.old_film_everywhere = job.old_film_everywhere;
    wishes.old_film = job.old_film;
    wishes.start = job.start ? job.start : run.start;
    wishes.film_arrives = job.film_arrives;
    row.quote = order::quote(planning.films(), run.shop, wishes);
    row.covered = order::what_is_covered(planning.films());
    set_lengths(row, planning.films());
    row.condition = job.condition;
    return row;
}

} // namespace pelt::cli
