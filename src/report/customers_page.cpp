// SPDX-License-Identifier: MIT
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/pages.hpp"
#include "report/quote.hpp"
#include "report/quote_words.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr const char* blank = "____________";

/// "A · B" of what is there.
std::string joined(const std::vector<std::string>& texts) {
    std::string out;
    for (const std::string& text : texts)
        if (!text.empty())
            out += (out.empty() ? "" : " · ") + text;
    return out;
}

std::string labeled(const std::string& label, const std::string& text) {
    return text.empty() ? "" : label + ": " + text;
}

class CustomersPage {
public:
    CustomersPage(const QuoteRow& row, const Shop& shop, const QuotePages& pages)
        : row_(row), shop_(shop), pages_(pages) {}

    Document written() {
        head();
        if (!row_.quote) {
            add(Items{"!", row_.warnings});
            return std::move(document_);
        }
        what_is_covered();
        price();
        days_and_terms();
        not_included();
        sign();
        return std::move(document_);
    }

private:
    void add(Block block) { document_.push_back(std::move(block)); }
    void line(const std::string& text) {
        if (!text.empty())
            add(Line{text});
    }
    void items(const std::string& heading, std::vector<std::string> texts) {
        std::erase(texts, "");
        if (texts.empty())
            return;
        add(Heading{heading});
        add(Items{"-", std::move(texts)});
    }

    void head() {
        const ForCustomer& to = row_.for_customer;
        const bool guessed = is_guessed(row_);
        document_ = page_head((guessed ? "Estimate " : "Quote ") +
                                  (to.quote_number.empty() ? row_.job : to.quote_number),
                              guessed, row_.demonstration);
        line(labeled("From", joined({shop_.from.name, shop_.from.address, shop_.from.phone,
                                     labeled("tax number", shop_.from.tax_number)})));
        line("For: " +
             (to.customer.empty() ? std::string(blank) : joined({to.customer, to.phone})));
        line(joined({"Date: " + (pages_.date.empty() ? std::string(blank) : pages_.date),
                     "Job: " + row_.job}));
        line(joined({"Vehicle: " + row_.vehicle, labeled("plate", to.plate)}));
        line(joined({"Film: " + row_.film, labeled("color", to.color)}));
    }

    void what_is_covered() {
        const Covered& covered = row_.covered;
        items("WHAT IS COVERED", {listed(covered.panels) + "."});
        items("WHAT IS NOT COVERED",
              {covered.left_out.empty() ? "" : listed(covered.left_out) + ".",
               "Glass, lamps, plates, and what lies out of sight when doors and lids are shut, "
               "unless it is named above."});
        items("GOOD TO KNOW",
              {covered.seams.empty() ? ""
                                     : "A seam shows on: " + listed(covered.seams) +
                                           ". The film is not wide enough "
                                           "to cover it in one piece.",
               covered.parts_off.empty()
                   ? ""
                   : "These parts come off and go back: " + listed(covered.parts_off) + ".",
               covered.parts_on.empty() ? ""
                                        : "These parts stay on, and the film ends at them: " +
                                              listed(covered.parts_on) + ".",
               row_.for_customer.notes});
    }

    void price() {
        const Price& price = row_.quote->price;
        add(Heading{"PRICE"});
        if (is_guessed(row_))
            return price_range();
        Table table{{{"", Align::left, true}, {price.currency, Align::right}}, {}};
        const auto row = [&](const std::string& name, const std::optional<Money>& money) {
            if (money)
                table.rows.push_back({name, to_string(*money, price.digits)});
        };
        row("film and work, without tax", price.net);
        for (const TaxLine& tax : price.taxes)
            row(tax.name, tax.amount);
        row("to pay", price.total);
        if (!price.total)
            line("On request.");
        else
            add(std::move(table));
    }

    /// No table: what is not measured has no net and no tax to print to the cent.
    void price_range() {
        const std::string range = range_of_money(*row_.quote->range, price_of_row());
        if (!row_.quote->range->low_total || !row_.quote->range->high_total)
            line("On request.");
        else
            add(Big{{range + ", tax included"}});
        line("The vehicle was not measured: its sizes are taken from one that is like it. The "
             "price is settled when it is measured.");
    }
    const Price& price_of_row() const { return row_.quote->price; }

    void days_and_terms() {
        const Days& days = row_.quote->days;
        const std::string in_days = days.working_days == 1
                                        ? "one working day"
                                        : std::to_string(days.working_days) + " working days";
        items(
            "WHEN",
            {"We need the vehicle for " + in_days + ".",
             days.ready_on ? "It is expected to be ready on " + to_string(*days.ready_on) + "."
                           : "",
             "We look over the edges about a week later" +
                 (days.look_over ? ", on " + to_string(*days.look_over) : std::string()) + ".",
             is_guessed(row_) ? ""
                              : "This quote is valid for " + std::to_string(shop_.valid_days) +
                                    " days from its date.",
             shop_.terms});
    }

    void not_included() {
        items("WHAT THE PRICE DOES NOT INCLUDE",
              {"Paint that lifts: old, fresh or repaired paint may come off with film, also with "
               "film that is there now.",
               row_.condition.empty() ? ""
                                      : "Resprayed or rusty, so this may happen there: " +
                                            listed(row_.condition) + ".",
               "Repairs of dents, rust and scratches; film follows them and shows them.",
               "What the law asks of a change of color, such as telling the registration office: "
               "that is for the owner to do."});
        items("CARE OF THE FILM",
              {"No washing for a week. Then by hand, or without brushes; no high pressure close to "
               "the edges.",
               "Fuel, bird droppings and resin come off at once, with water and a soft cloth.",
               "The film maker's sheet comes first."});
    }

    /// Nobody signs an estimate.
    void sign() {
        if (is_guessed(row_))
            return;
        line(" ");
        line("Agreed, place and date: ________________________   Signed: ________________________");
    }

    const QuoteRow& row_;
    const Shop& shop_;
    const QuotePages& pages_;
    Document document_;
};

} // namespace

Document customers_page(const QuoteRow& row, const Shop& shop, const QuotePages& pages) {
    return CustomersPage(row, shop, pages).written();
}

std::string to_pdf(const std::vector<QuoteRow>& rows, const Shop& shop, const QuotePages& pages,
                   Paper size) {
    constexpr double plain_type = 3.2;
    const paper::PaperLetters letters;
    paper::Flow flow(paper::size_of(size), plain_type, letters);
    bool is_first = true;
    for (const QuoteRow& row : rows) {
        if (!is_first)
            flow.new_page();
        is_first = false;
        flow.add(pages.inside ? inside_page(row, pages.unit) : customers_page(row, shop, pages));
    }
    std::vector<draw::Picture> sheets = std::move(flow).pages();
    paper::add_page_numbers(sheets);
    return paper::to_pdf(sheets, "Quotes");
}

} // namespace pelt::report
