// SPDX-License-Identifier: MIT
#include "verify/verify.hpp"

#include "verify/checks.hpp"

namespace pelt::verify {

class Seal {
public:
    static Plan on(std::shared_ptr<const Job> job, Layout layout) {
        return Plan(std::move(job), std::move(layout));
    }
};

Verdict verify(std::shared_ptr<const Job> job, Layout layout) {
    Verdict verdict;
    if (!sane(*job, layout, verdict.faults))
        return verdict;
    check_measured(*job, verdict.faults);
    check_complete(*job, layout, verdict.faults);
    check_pieces(*job, verdict.faults);
    check_places(*job, layout, verdict.faults);
    check_batches(*job, layout, verdict.faults);
    check_cuts(*job, layout, verdict.faults);
    check_bound(*job, layout, verdict.faults);
    if (verdict.faults.empty())
        verdict.plan = Seal::on(std::move(job), std::move(layout));
    return verdict;
}

} // namespace pelt::verify
