// SPDX-License-Identifier: MIT
// One job of a file of jobs, planned and quoted. Inside cli/ only.
#pragma once

#include "cli/job_files.hpp"
#include "cli/shop_asked.hpp"
#include "model/jobs.hpp"
#include "nest/nest.hpp"
#include "report/report.hpp"

namespace pelt::cli {

/// What holds for all jobs of a run.
struct QuoteRun {
    const ShopAsked& shop;
    nest::Effort effort;        ///< of one job
    bool demonstration = false; ///< the jobs are invented
};

/// Never throws for what is wrong with the job: its row says it.
report::QuoteRow quoted(const ReadJob& read, JobFiles& files, const QuoteRun& run);

} // namespace pelt::cli
