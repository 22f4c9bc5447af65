// SPDX-License-Identifier: MIT
// The files that jobs name: found beside the jobs file or among the installed ones, films read once
// for all jobs. Inside cli/ only.
#pragma once

#include "cli/world.hpp"
#include "read/read.hpp"

#include <map>
#include <mutex>
#include <optional>
#include <string>

namespace pelt::cli {

/// May be asked by several threads at once.
class JobFiles {
public:
    /// `jobs_file`: as messages call it; "-" is standard input, whose files lie in the working
    /// folder.
    JobFiles(const World& world, const std::string& jobs_file);

    std::optional<Vehicle> vehicle(const std::string& name, const Place& place, Faults& faults);
    std::optional<Film> film(const std::string& name, const Place& place, Faults& faults);
    std::optional<Stock> stock(const std::string& name, const Place& place, Faults& faults);

private:
    /// The text of a file that a job names. One out of the jobs file's folder is a fault, as a scan
    /// out of a vehicle file's folder is.
    std::shared_ptr<const Source> source(const std::string& name, bool is_film,
                                         bool may_be_installed, const Place& place, Faults& faults);

    const World& world_;
    std::string folder_;
    std::mutex mutex_;
    std::map<std::string, read::Reading<Film>> films_;
};

} // namespace pelt::cli
