// SPDX-License-Identifier: MIT
#include "cli/statuses.hpp"

#include <algorithm>

namespace pelt::cli {
namespace {

int status_of(Severity severity) {
    switch (severity) {
    case Severity::note:
    case Severity::remark:
    case Severity::warning:
        return status::done;
    case Severity::usage:
        return status::wrong_command_line;
    case Severity::file:
        return status::wrong_file;
    case Severity::access:
        return status::no_access;
    case Severity::job:
        return status::cannot_be_met;
    }
    return status::failed;
}

} // namespace

const std::vector<StatusRow>& statuses() {
    static const std::vector<StatusRow> table{
        {status::done, "done"},
        {status::cannot_be_met,
         "the job cannot be met: a piece fits no roll, or what is left is too short"},
        {status::wrong_command_line, "the command line is wrong"},
        {status::wrong_file, "an input file is wrong"},
        {status::no_access, "a file could not be opened, read or written"},
        {status::failed, "pelt itself failed, and printed nothing"},
        {status::stopped, "stopped by Ctrl-C with nothing to show"},
    };
    return table;
}

int status_of(const Faults& faults) {
    const auto worst =
        std::max_element(faults.begin(), faults.end(),
                         [](const Fault& a, const Fault& b) { return a.severity < b.severity; });
    return worst == faults.end() ? status::done : status_of(worst->severity);
}

} // namespace pelt::cli
