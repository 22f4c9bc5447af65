// SPDX-License-Identifier: MIT
#include "cli/why.hpp"

#include "cli/formats.hpp"
#include "cli/request.hpp"
#include "order/what_if.hpp"
#include "report/numbers.hpp"
#include "report/words.hpp"

#include <string>

namespace pelt::cli {
namespace {

void note(const std::string& text, const Context& context) {
    context.messages.tell(Fault{Severity::note, {}, "", text, ""});
}

std::string binding_pieces(const order::Outcome& outcome) {
    const Job& job = outcome.plan->job();
    std::string text;
    for (const PieceId& id : outcome.binding.pieces) {
        text += (text.empty() ? "" : "; ") + report::label_of(job, id);
        if (id.side != Side::centre)
            text += " (" + std::string(name_of(id.side)) + ")";
    }
    return text;
}

/// "14.2 m, 0.665 m less", and the price where it differs.
std::string compared(const order::Outcome& other, const order::Outcome& with,
                     const report::Measures& measures) {
    const Um length = order::new_length_of(*other.plan);
    const Um before = order::new_length_of(*with.plan);
    std::string text = measures.film(length) + " of new film";
    if (length < before)
        text += ", " + measures.film(before - length, report::Rounding::down) + " less";
    else
        text += length > before ? ", which is no less" : ", just as much";
    if (other.order.total && with.order.total && *other.order.total < *with.order.total)
        text += "; " +
                report::money(*with.order.total - *other.order.total,
                              with.plan->job().film.money_digits, with.order.currency) +
                " less at this film's prices";
    return text;
}

} // namespace

void tell_why(const order::Request& request, const order::Outcome& outcome,
              const Context& context) {
    const report::Measures measures(unit_of(context.arguments));
    if (!outcome.binding.pieces.empty())
        note("the length hangs on these pieces, one behind the other from the free end: " +
                 binding_pieces(outcome),
             context);
    for (order::WhatIf& what_if : order::what_ifs(request, outcome)) {
        const Searched found = search(std::move(what_if.request), context);
        if (found.interrupted)
            return;
        note(what_if.what + ": " +
                 (found.outcome.plan ? compared(found.outcome, outcome, measures)
                                     : "it cannot be done"),
             context);
    }
}

} // namespace pelt::cli
