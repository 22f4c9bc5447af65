// SPDX-License-Identifier: MIT
#include "cli/shop_asked.hpp"

#include "cli/complaints.hpp"
#include "cli/values.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {
Faults not_in_the_log(const Shop& shop, const std::vector<std::string>& who) {
    Faults out;
    for (const std::string& name : who) {
        const bool known =
            shop.log && std::any_of(shop.log->rows.begin(), shop.log->rows.end(),
                                    [&](const LogRow& row) { return row.who == name; });
        if (!known)
            out.push_back(
                usage("--who: " + (shop.log ? "the shop's log has no row of " + in_quotes(name)
                                            : "the shop keeps no log"),
                      shop.log ? "write the name as the log has it"
                               : "name a log in the shop file, pelt-shop(5)"));
    }
    return out;
}

void ShopAsked::add_to(order::Request& request) const {
    if (!request.sure_percent)
        request.sure_percent = shop.sure_percent;
    request.learnt = learnt;
    if (shop.place.source)
        request.also_read.push_back(shop.place.source);
    if (learnt)
        request.also_read.push_back(learnt->log);
}

std::optional<Quote> ShopAsked::quote(const order::FilmToQuote& film) const {
    if (film.job->half_done.any())
        return std::nullopt;
    order::QuoteWishes wishes;
    wishes.start = start;
    return order::quote({film}, shop, wishes);
}

bool read_shop(Files& files, const Arguments& arguments, std::optional<ShopAsked>& shop) {
    const auto path = arguments.value(Opt::shop);
    const std::vector<std::string> who = arguments.names(Opt::who);
    if (!path) {
        Faults faults;
        if (!who.empty())
            faults.push_back(
                usage("--who chooses rows of a shop's log", "give --shop FILE as well"));
        if (arguments.count(Opt::start) > 0 && arguments.command != Command::quote)
            faults.push_back(
                usage("--start tells when the shop begins", "give --shop FILE as well"));
        files.tell(faults);
        return faults.empty();
    }
    const auto text = files.value_of(read::load(*path), *path);
    auto read = text ? files.value_of(read::shop(*text), *path) : std::nullopt;
    if (!read)
        return false;
    const Faults faults = not_in_the_log(*read, who);
    files.tell(faults);
    if (stops(faults))
        return false;
    ShopAsked out{*std::move(read), nullptr, std::nullopt};
    out.learnt = order::learnt_from(out.shop, who);
    if (out.learnt)
        out.shop.pace = out.learnt->pace.pace;
    if (const auto start = arguments.value(Opt::start))
        out.start = day_in(*start);
    shop = std::move(out);
    return true;
}

Faults faults_of_currencies(const Shop& shop, const Film& film) {
    if (shop.currency.empty() || film.currency.empty() || shop.currency == film.currency)
        return {};
    return {{Severity::file, film.place, "",
             "the film's prices are in " + film.currency + ", the shop's in " + shop.currency,
             "give both in one currency"}};
}

} // namespace pelt::cli
