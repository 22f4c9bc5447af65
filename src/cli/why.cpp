// SPDX-License-Identifier: MIT
#include "cli/why.hpp"

#include "cli/request.hpp"

#include <optional>
#include <string>
#include <utility>

namespace pelt::cli {
namespace {

void note(const std::string& text, const Context& context) {
    context.messages.tell(Fault{Severity::note, {}, "", text, ""});
}

report::Sheet sheet_of(const Searched& found, const report::Sheet& like) {
    report::Sheet sheet{.plan = *found.outcome.plan, .order = found.outcome.order, .warnings = {}};
    sheet.unit = like.unit;
    return sheet;
}

/// Along outlines what is compared is laid out quickly, and so is the job itself. None: stopped.
std::optional<report::Sheet> compared_with(const order::Request& request,
                                           const report::Sheet& sheet, const RunTime& time,
                                           const Context& context) {
    if (request.by != CutBy::contour)
        return sheet;
    const Searched quick = search(order::to_compare(request), time.left(), context);
    if (quick.interrupted || !quick.outcome.plan)
        return std::nullopt;
    report::Sheet out = sheet_of(quick, sheet);
    note("to compare changes, the job and each change are laid out quickly: the job as it is "
         "takes " +
             report::length_of_new_film(out) + " of new film then",
         context);
    return out;
}

std::string compared(const Searched& found, const report::Sheet& than) {
    if (!found.outcome.plan)
        return "it cannot be done";
    return report::what_it_saves(sheet_of(found, than), than);
}

} // namespace

void tell_why(const order::Request& request, const order::Outcome& outcome,
              const report::Sheet& sheet, const RunTime& time, const Context& context) {
    if (const std::string pieces = report::what_binds(sheet); !pieces.empty())
        note("these pieces, end to end from the free end, set the length: " + pieces,
             context);
    std::vector<order::WhatIf> all = order::what_ifs(request, outcome);
    if (all.empty())
        return;
    if (time.is_over())
        return note("what changes would save is not weighed: the time was up", context);
    const auto than = compared_with(request, sheet, time, context);
    if (!than)
        return;
    for (order::WhatIf& what_if : all) {
        const std::string what = what_if.what;
        const Searched found = search(std::move(what_if.request), time.left(), context);
        if (found.interrupted)
            return;
        if (time.is_over())
            return note("what other changes would save is not weighed: the time was up", context);
        note(what + ": " + compared(found, *than), context);
    }
}

} // namespace pelt::cli
