// SPDX-License-Identifier: MIT
// Jobs as a table, a row a job and a column a word, turned into the trees that a YAML file gives,
// so that all rules of the key table hold for them. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/yaml.hpp"

#include <memory>
#include <vector>

namespace pelt::read {

/// A job, and what its row says that no job can.
struct JobRow {
    Node job;
    Faults faults;
};

struct JobsTable {
    std::vector<JobRow> rows;
    bool demonstration = false;
};

/// Places are cells. What is wrong with the table itself goes to `context`.
JobsTable jobs_table(const std::shared_ptr<const Source>& source, Context& context);

} // namespace pelt::read
