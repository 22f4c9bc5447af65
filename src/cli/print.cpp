// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/output.hpp"
#include "cli/statuses.hpp"

namespace pelt::cli {

int print(const std::string& text, const Messages& messages) {
    const auto fault = write_standard_output(text);
    if (fault)
        messages.tell(*fault);
    return fault ? status_of({*fault}) : status::done;
}

} // namespace pelt::cli
