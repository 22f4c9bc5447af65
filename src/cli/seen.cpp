// SPDX-License-Identifier: MIT
#include "cli/seen.hpp"

#include <algorithm>

namespace pelt::cli {

Faults not_seen_on_the_page(Faults faults, const std::vector<Target>& targets, const World& world,
                            PageHas has) {
    const bool seen = world.output_is_terminal && world.errors_are_terminal &&
                      std::any_of(targets.begin(), targets.end(), [](const Target& target) {
                          return target.is_standard_output() && target.format == Format::table;
                      });
    if (seen)
        std::erase_if(faults, [&](const Fault& fault) {
            return fault.severity == Severity::warning ||
                   (fault.severity == Severity::remark && has == PageHas::warnings_and_remarks);
        });
    return faults;
}

} // namespace pelt::cli
