// SPDX-License-Identifier: MIT
// The files that jobs name: found beside the jobs file or among the installed ones, films read once
// for all jobs. Inside cli/ only.
#pragma once

#include "cli/installed.hpp"
#include "cli/world.hpp"
#include "model/jobs.hpp"
#include "read/read.hpp"

#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace pelt::cli {

/// Files may be asked for by several threads at once.
class JobFiles {
public:
    /// `jobs_file`: as messages call it; "-" is standard input, whose files lie in the working
    /// folder.
    JobFiles(const World& world, const std::string& jobs_file);

    /// The files that the jobs will read, but for scans that a vehicle file names.
    std::vector<read::InputFile> wanted_by(const Jobs& jobs) const;
    /// All files that were read so far.
    const std::vector<read::InputFile>& inputs() const { return inputs_; }

    std::optional<Vehicle> vehicle(const std::string& name, const Place& place, Faults& faults);
    std::optional<Film> film(const std::string& name, const Place& place, Faults& faults);
    std::optional<Stock> stock(const std::string& name, const Place& place, Faults& faults);

private:
    /// Stock files are never installed.
    using Kind = std::optional<Wanted>;

    bool lies_beside(const std::string& name) const;
    std::shared_ptr<const Source> source(const std::string& name, Kind kind, const Place& place,
                                         Faults& faults);
    template <class T>
    std::optional<T> value_of(read::Reading<T> reading, Faults& faults);

    const World& world_;
    std::string folder_;
    std::mutex films_mutex_;
    std::map<std::string, read::Reading<Film>> films_;
    std::mutex inputs_mutex_;
    std::vector<read::InputFile> inputs_;
};

} // namespace pelt::cli
