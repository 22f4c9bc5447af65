// SPDX-License-Identifier: MIT
// A sheet of any kind in the format that is asked for. Inside cli/ only.
#pragma once

#include "cli/formats.hpp"
#include "model/error.hpp"
#include "report/report.hpp"

#include <string>

namespace pelt::cli {

/// Which formats a command offers is refused before, in `targets_of`: a format that the sheet has
/// not is a ProgramError.
template <class AnySheet>
std::string rendered(const Target& target, const AnySheet& sheet, const Context& context) {
    switch (target.format) {
    case Format::table:
        return report::to_table(sheet, style_for(target, context));
    case Format::csv:
        return report::to_csv(sheet);
    case Format::json:
        return report::to_json(sheet);
    case Format::markdown:
        return report::to_markdown(sheet);
    case Format::svg:
        if constexpr (requires { report::to_svg(sheet); })
            return report::to_svg(sheet);
        break;
    case Format::pdf:
        if constexpr (requires { report::to_pdf(sheet, report::Paper{}); })
            return report::to_pdf(sheet, paper_of(context.arguments));
        break;
    }
    throw ProgramError("this command makes nothing as " + std::string(name_of(target.format)));
}

} // namespace pelt::cli
