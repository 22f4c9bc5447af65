// SPDX-License-Identifier: MIT
#include "cli/csv_wish.hpp"

#include "cli/complaints.hpp"
#include "model/error.hpp"

#include <algorithm>

namespace pelt::cli {
namespace {

report::CsvDialect dialect_called(const std::string& word) {
    if (word == "comma")
        return report::CsvDialect::comma;
    if (word == "semicolon")
        return report::CsvDialect::semicolon;
    if (word == "rfc4180")
        return report::CsvDialect::rfc4180;
    throw ProgramError("no CSV is called " + word);
}

bool is_csv(const Target& target) {
    return target.format == Format::csv;
}

} // namespace

void set_dialect(const Arguments& arguments, std::vector<Target>& targets, Faults& faults) {
    const auto asked = arguments.value(Opt::csv);
    if (!asked)
        return;
    const report::CsvDialect dialect = dialect_called(*asked);
    for (Target& target : targets)
        target.csv = dialect;
    if (faults.empty() && std::none_of(targets.begin(), targets.end(), is_csv))
        faults.push_back(usage("--csv goes with CSV only",
                               *arguments.command == Command::list
                                   ? "end the name of --out in .csv"
                                   : "add '--format csv', or end the name of --out in .csv"));
}

std::string as_wanted(std::string bytes, const Target& target) {
    return is_csv(target) ? report::in_dialect(bytes, target.csv) : std::move(bytes);
}

} // namespace pelt::cli
