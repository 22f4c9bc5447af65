// SPDX-License-Identifier: MIT
// Why the film is as long as it is.
#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/words.hpp"

namespace pelt::report {

std::string what_binds(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    std::string text;
    for (const PieceId& id : sheet.binding.pieces) {
        text += (text.empty() ? "" : "; ") + label_of(job, id);
        if (id.side != Side::centre)
            text += " (" + std::string(name_of(id.side)) + ")";
    }
    return text;
}

std::string length_of_new_film(const Sheet& sheet) {
    return Measures(sheet.unit).film(new_length_of(sheet.plan));
}

std::string what_it_saves(const Sheet& other, const Sheet& than) {
    const Measures measures(than.unit);
    const Um length = new_length_of(other.plan);
    const Um before = new_length_of(than.plan);
    std::string text = measures.film(length) + " of new film";
    if (length < before)
        text += ", " + measures.film(before - length, Rounding::down) + " less";
    else
        text += length > before ? ", which is no less" : ", just as much";
    if (other.order.total && than.order.total && *other.order.total < *than.order.total)
        text += "; " +
                money(*than.order.total - *other.order.total, than.plan.job().film.money_digits,
                      than.order.currency) +
                " less at this film's prices";
    return text;
}

} // namespace pelt::report
