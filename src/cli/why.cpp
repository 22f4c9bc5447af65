// SPDX-License-Identifier: MIT
#include "cli/why.hpp"

#include "cli/request.hpp"

#include <string>
#include <utility>

namespace pelt::cli {
namespace {

void note(const std::string& text, const Context& context) {
    context.messages.tell(Fault{Severity::note, {}, "", text, ""});
}

std::string compared(const Searched& found, const report::Sheet& sheet) {
    if (!found.outcome.plan)
        return "it cannot be done";
    return report::what_it_saves(
        report::Sheet{.plan = *found.outcome.plan, .order = found.outcome.order, .warnings = {}},
        sheet);
}

} // namespace

void tell_why(const order::Request& request, const order::Outcome& outcome,
              const report::Sheet& sheet, const Context& context) {
    if (const std::string pieces = report::what_binds(sheet); !pieces.empty())
        note("the length hangs on these pieces, one behind the other from the free end: " + pieces,
             context);
    for (order::WhatIf& what_if : order::what_ifs(request, outcome)) {
        const std::string what = what_if.what;
        const Searched found = search(std::move(what_if.request), context);
        if (found.interrupted)
            return;
        note(what + ": " + compared(found, sheet), context);
    }
}

} // namespace pelt::cli
