// SPDX-License-Identifier: MIT
// Jobs to quote, as a file of jobs tells them, validated one by one.
#pragma once

#include "model/calendar.hpp"
#include "model/fault.hpp"
#include "model/film.hpp"
#include "model/length.hpp"
#include "model/piece.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// A film and the panels that it is for; without panels all of the job's.
struct FilmOfJob {
    std::string film; ///< a path beside the jobs file, or the name of an installed one
    std::vector<std::string> only;
};

/// What a job says for the customer's page; empty texts are left out.
struct ForCustomer {
    std::string customer;
    std::string phone;
    std::string plate;
    std::string color;
    std::string quote_number;
    std::string notes;
};

/// One job. The words are those of `pelt cut`.
struct QuoteJob {
    std::string name;
    Place place;
    std::string vehicle; ///< a path beside the jobs file, or the name of an installed one
    std::vector<FilmOfJob> films;
    CutBy by = CutBy::straight;
    std::vector<std::string> without;
    std::vector<std::string> with;
    std::vector<std::string> leave;
    int times = 1;
    Seams seams = Seams::fitter;
    std::optional<MarginWish> margin;
    std::optional<Um> width;
    std::string stock; ///< a file; empty: none
    std::optional<double> sure_percent;
    Um tolerance = 0;
    std::string like_size; ///< "L,W,H", checked; empty: as the vehicle file is

    ForCustomer for_customer;
    std::optional<Day> start;
    std::optional<Day> film_arrives;
    bool old_film_everywhere = false;
    std::vector<std::string> old_film;  ///< panels that bear old film
    std::vector<std::string> condition; ///< panels that are resprayed or rusty
};

/// A job, or what is wrong with it. Its name is there where it could be read.
struct ReadJob {
    std::string name;
    std::optional<QuoteJob> job;
    Faults faults;
};

struct Jobs {
    std::string file; ///< as messages call it
    bool demonstration = false;
    std::vector<ReadJob> jobs;
};

} // namespace pelt
