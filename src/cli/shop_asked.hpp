// SPDX-License-Identifier: MIT
// The shop of --shop: its figures, those of its log for them, and what a sheet says by them. Inside
// cli/ only.
#pragma once

#include "cli/context.hpp"
#include "cli/files.hpp"
#include "order/order.hpp"

#include <memory>
#include <optional>

namespace pelt::cli {

/// The shop, its pace that of its log where it keeps one.
struct ShopAsked {
    Shop shop;
    std::shared_ptr<const Learnt> learnt; ///< none: it keeps no log
    std::optional<Day> start;             ///< of --start

    /// Puts its spare, where the request has none, its log and its files into a request.
    void add_to(order::Request& request) const;
    /// Of one film's outcome. None for work that is half done: its hours are not known.
    std::optional<Quote> quote(const order::FilmToQuote& film) const;
};

/// Reads the shop file. None without --shop; false where something is wrong, which has been told.
bool read_shop(Files& files, const Arguments& arguments, std::optional<ShopAsked>& shop);

/// A name that nobody in the log has is a slip, told as one of usage.
Faults not_in_the_log(const Shop& shop, const std::vector<std::string>& who);

/// Money of two currencies cannot be added up: no fault where they agree or one is not given.
Faults faults_of_currencies(const Shop& shop, const Film& film);

} // namespace pelt::cli
