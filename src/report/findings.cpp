// SPDX-License-Identifier: MIT
#include "report/findings.hpp"

#include <algorithm>

namespace pelt::report {

std::vector<Finding> findings_of(const Sheet& sheet) {
    std::vector<Finding> findings;
    for (const Fault& fault : sheet.warnings) {
        if (fault.severity != Severity::warning)
            continue;
        const Finding finding{fault.panel,
                              fault.remedy.empty() ? fault.what : fault.what + "; " + fault.remedy};
        if (std::find(findings.begin(), findings.end(), finding) == findings.end())
            findings.push_back(finding);
    }
    return findings;
}

} // namespace pelt::report
