// SPDX-License-Identifier: MIT
// Quotes as rows: for scripts a line of JSON each, for spreadsheets a row of CSV each, for people a
// table; and the shop's own look at one.
#pragma once

#include "model/fault.hpp"
#include "model/jobs.hpp"
#include "model/learnt.hpp"
#include "model/length.hpp"
#include "model/quote.hpp"
#include "model/shop.hpp"
#include "report/document.hpp"
#include "report/paper_size.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// One job of a file of jobs.
struct QuoteRow {
    std::string job;
    int status = 0; ///< an exit status, as `pelt cut` would have for this job alone
    std::string vehicle;
    std::string film; ///< several joined by " + "
    bool demonstration = false;
    std::optional<Length> length; ///< off the rolls; none: not planned
    std::optional<Length> order;  ///< new film to buy
    std::optional<Quote> quote;   ///< none: `warnings` say why
    std::vector<std::string> warnings;
    ForCustomer for_customer = {};
    Covered covered = {};
    std::vector<std::string> condition = {}; ///< panels that are resprayed or rusty
};

/// Schema pelt.quote/1: one object on one line, ended. Lengths in mm, hours with two decimals,
/// money as text; null for what is not known.
std::string to_json_line(const QuoteRow& row);

/// job status vehicle film length_mm order_mm film_cost consumables hours_low hours_taken
/// hours_high labor adjustment net tax total currency ready_on working_days guessed warnings. New
/// columns may be added at the end.
std::string quote_csv_head();
std::string to_csv_row(const QuoteRow& row);

/// All jobs in one table, and what must be known of each.
Document quotes_in_a_table(const std::vector<QuoteRow>& rows, Unit unit);

/// The shop's page of one job: cost, hours by stage and panel, the days, what to have ready.
Document inside_page(const QuoteRow& row, Unit unit);

/// How pages of quotes are made.
struct QuotePages {
    bool inside = false; ///< the shop's own page in place of the customer's
    Unit unit = Unit::mm;
    std::string date; ///< as the user gave it; empty: a blank to write in
};

/// The customer's page of one job: who offers what to whom, what is covered and what is not, the
/// price, the days, what it does not include, a place to sign. It holds no hours, no spare, no
/// purchase price.
Document customers_page(const QuoteRow& row, const Shop& shop, const QuotePages& pages);

/// What a shop's log teaches, a line a matter: rows, pace, every kind of panel with its chance,
/// guesses.
std::vector<std::string> what_was_learnt(const Learnt& learnt);

/// One page a job, more where it does not fit.
std::string to_pdf(const std::vector<QuoteRow>& rows, const Shop& shop, const QuotePages& pages,
                   Paper paper);

} // namespace pelt::report
