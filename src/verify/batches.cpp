// SPDX-License-Identifier: MIT
#include "verify/checks.hpp"

#include <algorithm>
#include <set>

namespace pelt::verify {
namespace {

/// All new film is one batch, unless a batch is asked for; a roll from stock whose batch is not
/// known is one of its own.
std::string batch_of(const Roll& roll) {
    if (roll.is_new && roll.batch.empty())
        return "new film";
    return roll.batch.empty() ? "unknown: " + roll.name : "batch " + roll.batch;
}

bool is_batch_free(const Job& job, const PieceId& id) {
    return job.vehicles[static_cast<std::size_t>(id.vehicle)]
        .panels[static_cast<std::size_t>(id.panel)]
        .batch_free;
}

} // namespace

void check_batches(const Job& job, const Layout& layout, Sentences& faults) {
    std::set<std::string> batches;
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& p : used.placements)
            if (!is_batch_free(job, job.pieces[p.piece].ids[p.copy]))
                batches.insert(batch_of(job.rolls[used.roll]));
    if (batches.size() > 1)
        faults.push_back("the job comes from several batches: " + *batches.begin() + " and " +
                         *batches.rbegin());
}

} // namespace pelt::verify
